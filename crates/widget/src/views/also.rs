//! What else is in the build: adapters and work decided on, each to be taken out again.

use fitup_core::build::Build;
use fitup_core::item::ItemRef;
use yew::prelude::*;

use super::icon::{Glyph, icon_button};
use crate::ctx::Ctx;
use crate::state::Edit;

/// The list; nothing where there is nothing else.
pub fn also(ctx: &Ctx, build: &Build) -> Html {
    let adapters = build
        .adapters
        .iter()
        .enumerate()
        .map(|(at, &id)| (ctx.label(ItemRef::Adapter(id)).to_owned(), ctx.on(move || Edit::RemoveAdapter(at))));
    let changes = build.changes.iter().map(|change| {
        let dropped = change.clone();
        (ctx.words.change(ctx.catalogue(), change), ctx.on(move || Edit::Drop(dropped.clone())))
    });
    let all: Vec<(String, Callback<MouseEvent>)> = adapters.chain(changes).collect();
    if all.is_empty() {
        return Html::default();
    }
    html! {
        <ul class="also" aria-label={ctx.text("ui-also")}>
            for (at, (words, out)) in all.into_iter().enumerate() {
                <li key={at}>
                    <span>{ words.clone() }</span>
                    {
                        icon_button(
                            Glyph::Close, ctx.text("ui-take-out"), format!("{}: {words}", ctx.text("ui-take-out")), true, out,
                        )
                    }
                </li>
            }
        </ul>
    }
}
