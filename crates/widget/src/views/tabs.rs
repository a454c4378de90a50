//! The views on the build, as the sheets of one set.

use fitup_view::View;
use web_sys::{HtmlElement, KeyboardEvent};
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::state::Action;

/// What the tabs are of.
#[derive(PartialEq, Properties)]
pub struct Props {
    /// The view that is shown.
    pub shown: View,
}

/// The tabs: one tab stop; the arrow keys turn. Where they do not all fit in, the one that is shown is brought in.
#[component(Tabs)]
pub fn tabs(&Props { shown }: &Props) -> Html {
    let ctx = use_ctx();
    let list = use_node_ref();
    use_effect_with((shown, list.clone()), |(_, list)| {
        let tab = list.cast::<HtmlElement>().and_then(|list| {
            let tab = list.query_selector("[aria-selected=true]").ok().flatten()?;
            Some((wasm_bindgen::JsCast::dyn_into::<HtmlElement>(tab).ok()?, list))
        });
        if let Some((tab, list)) = tab {
            list.set_scroll_left(
                tab.offset_left() - list.offset_left() - (list.client_width() - tab.offset_width()) / 2,
            );
        }
    });
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
        <div ref={list} class="tabs" role="tablist" aria-label={ctx.text("ui-views")} onkeydown={turn}>
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
