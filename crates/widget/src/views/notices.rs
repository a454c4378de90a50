//! Something to tell once, above the sheet.

use fitup_catalogue::link::LinkError;
use yew::prelude::*;

use super::icon::{Glyph, icon_button};
use crate::ctx::Ctx;
use crate::state::{Action, Notice};

/// The notice, until it is put away.
pub fn notice(ctx: &Ctx, notice: &Notice) -> Html {
    let said = match notice {
        Notice::Link(error) => html! {
            <p>
                {
                    ctx.text(match error {
                        LinkError::CutOff => "ui-link-cut-off",
                        LinkError::Newer(_) => "ui-link-newer",
                        LinkError::TooLong | LinkError::NotALink | LinkError::NotABuild => "ui-link-not-ours",
                    })
                }
            </p>
        },
        Notice::Unspoken(lang) => html! {
            <p>{ ctx.text_with("ui-language-missing", &[("language", lang.own_name().into())]) }</p>
        },
        Notice::Missing(missing) => html! {
            <>
                <p>{ ctx.text("ui-link-missing") }</p>
                <ul>
                    for (at, one) in missing.iter().enumerate() {
                        <li key={at}>
                            { ctx.text_with("ui-not-in-catalogue", &[("id", one.text.clone().into())]) }
                        </li>
                    }
                </ul>
            </>
        },
    };
    let close = ctx.act.reform(|_| Action::Tell(None));
    html! {
        <div class="notice" role="alert">
            <div>{ said }</div>
            { icon_button(Glyph::Close, ctx.text("ui-close"), ctx.text("ui-close"), true, close) }
        </div>
    }
}
