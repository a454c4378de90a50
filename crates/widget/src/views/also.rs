//! What else is in the build: adapters and work decided on, each to be taken out again.

use fitup_view::{Also, Edit, Extra};
use yew::prelude::*;

use super::icon::{Glyph, icon_button};
use crate::ctx::Ctx;

/// The list; nothing where there is nothing else.
pub fn also(ctx: &Ctx, all: &[Also]) -> Html {
    if all.is_empty() {
        return Html::default();
    }
    let out = |extra: Extra| {
        ctx.on(move || match extra {
            Extra::Adapter(at, of) => Edit::RemoveAdapter { at, of },
            Extra::Change(at, of) => Edit::DropChange { at, of },
        })
    };
    html! {
        <ul class="also" aria-label={ctx.text("ui-also")}>
            for (at, one) in all.iter().enumerate() {
                <li key={at}>
                    <span>{ one.words.clone() }</span>
                    {
                        icon_button(
                            Glyph::Close, ctx.text("ui-take-out"), format!("{}: {}", ctx.text("ui-take-out"), one.words),
                            true, out(one.extra),
                        )
                    }
                </li>
            }
        </ul>
    }
}
