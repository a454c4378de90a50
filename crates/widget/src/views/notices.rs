//! Something to tell once, above the sheet.

use fitup_view as view;
use wasm_bindgen::JsValue;
use yew::prelude::*;

use super::icon::{Glyph, icon_button};
use crate::ctx::Ctx;
use crate::state::{Action, Notice};

/// The notice, until it is put away.
pub fn notice(ctx: &Ctx, notice: &Notice) -> Html {
    let said = match notice {
        Notice::Link(view::Notice::Link(trouble)) => html! { <p>{ ctx.text(trouble.name()) }</p> },
        Notice::Link(view::Notice::Missing(missing)) => html! {
            <>
                <p>{ ctx.text("ui-link-missing") }</p>
                <ul>
                    for (at, one) in missing.iter().enumerate() {
                        <li key={at}>{ one.clone() }</li>
                    }
                </ul>
            </>
        },
        Notice::Unspoken(lang) => html! { <p>{ lang.own_name() }{ ": " }{ ctx.text("ui-language-unspoken") }</p> },
        Notice::Restarted => html! { <p>{ ctx.text("ui-engine-restarted") }</p> },
        Notice::NotKept => html! { <p>{ ctx.text("ui-not-kept") }</p> },
        Notice::JobsTaken(0) => html! { <p>{ ctx.text("ui-jobs-known") }</p> },
        Notice::JobsTaken(_) => html! { <p>{ ctx.text("ui-jobs-taken") }</p> },
        Notice::JobsFile(trouble) => html! { <p>{ ctx.text(trouble.key()) }</p> },
        Notice::NoList => html! { <p>{ ctx.text("ui-lists-no-list") }</p> },
        Notice::Here => html! { <p>{ ctx.text("ui-engine-here") }</p> },
    };
    let close = ctx.act.reform(|_| Action::Tell(None));
    html! {
        <div class="notice" role="alert">
            <div>{ said }</div>
            { icon_button(Glyph::Close, ctx.text("ui-close"), ctx.text("ui-close"), true, close) }
        </div>
    }
}

/// A new version is ready; it is taken when the reader says so.
pub fn update_notice(ctx: &Ctx, take: &Callback<()>) -> Html {
    offer(ctx, html! { ctx.text("ui-update") }, "ui-update-take", take)
}

/// The catalogue is a copy, of `time`, because the network does not answer.
pub fn copy_notice(ctx: &Ctx, time: &str, retry: &Callback<()>) -> Html {
    let told = js_sys::Date::new(&JsValue::from_str(time));
    let told = String::from(told.to_locale_string(ctx.reader.lang.name(), &JsValue::UNDEFINED));
    let said = html! { <>{ ctx.text("ui-copy-kept") }{ " " }<time datetime={time.to_owned()}>{ told }</time></> };
    offer(ctx, said, "ui-try-again", retry)
}

/// A sentence, and what can be done about it.
fn offer(ctx: &Ctx, said: Html, key: &str, done: &Callback<()>) -> Html {
    let onclick = done.reform(|_: MouseEvent| ());
    html! {
        <div class="notice" role="status">
            <p>{ said }</p>
            <button type="button" class="button" {onclick}>{ ctx.text(key) }</button>
        </div>
    }
}
