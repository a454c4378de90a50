//! The views on the build, as the sheets of one set.

use fitup_view::View;
use web_sys::{HtmlElement, KeyboardEvent};
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::Action;

/// The tabs: one tab stop; the arrow keys turn.
pub fn tabs(ctx: &Ctx, shown: View) -> Html {
    let at = View::ALL.iter().position(|&view| view == shown).unwrap_or_default();
    let turn = {
        let act = ctx.act.clone();
        move |event: KeyboardEvent| {
            let count = View::ALL.len();
            let to = match event.key().as_str() {
                "ArrowRight" => (at + 1) % count,
                "ArrowLeft" => (at + count - 1) % count,
                "Home" => 0,
                "End" => count - 1,
                _ => return,
            };
            event.prevent_default();
            act.emit(Action::Turn(View::ALL[to]));
            let tab = event.target_dyn_into::<HtmlElement>().and_then(|from| {
                let index = u32::try_from(to).ok()?;
                wasm_bindgen::JsCast::dyn_into::<HtmlElement>(from.parent_element()?.children().item(index)?).ok()
            });
            if let Some(tab) = tab {
                let _ = tab.focus();
            }
        }
    };
    html! {
        <div class="tabs" role="tablist" aria-label={ctx.text("ui-views")} onkeydown={turn}>
            for view in View::ALL.iter().copied() {
                <button
                    key={view.name()} type="button" role="tab" aria-selected={(view == shown).to_string()}
                    aria-controls="details" tabindex={if view == shown { "0" } else { "-1" }}
                    onclick={{ let act = ctx.act.clone(); move |_| act.emit(Action::Turn(view)) }}
                >
                    { ctx.text(&format!("ui-view-{}", view.name())) }
                </button>
            }
        </div>
    }
}
