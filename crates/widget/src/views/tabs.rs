//! The views on the build, as the sheets of one set.

use web_sys::{HtmlElement, KeyboardEvent};
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::state::{Action, View};

#[derive(Properties, PartialEq)]
pub struct TabsProps {
    /// The view that is turned to.
    pub view: View,
}

/// The tabs: one tab stop; the arrow keys turn.
#[component]
pub fn Tabs(props: &TabsProps) -> Html {
    let ctx = use_ctx();
    let list = use_node_ref();
    let at = View::ALL.iter().position(|&view| view == props.view).unwrap_or_default();
    let turn = {
        let (act, list) = (ctx.act.clone(), list.clone());
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
            let tab = list.cast::<HtmlElement>().and_then(|list| {
                let index = u32::try_from(to).ok()?;
                wasm_bindgen::JsCast::dyn_into::<HtmlElement>(list.children().item(index)?).ok()
            });
            if let Some(tab) = tab {
                let _ = tab.focus();
            }
        }
    };
    html! {
        <div class="tabs" role="tablist" aria-label={ctx.text("ui-views")} ref={list} onkeydown={turn}>
            for view in View::ALL.iter().copied() {
                <button
                    key={view.name()} type="button" role="tab" aria-selected={(view == props.view).to_string()}
                    aria-controls="details" tabindex={if view == props.view { "0" } else { "-1" }}
                    onclick={{ let act = ctx.act.clone(); move |_| act.emit(Action::Turn(view)) }}
                >
                    { ctx.text(&format!("ui-view-{}", view.name())) }
                </button>
            }
        </div>
    }
}
