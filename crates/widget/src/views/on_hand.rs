//! Says that an item is on hand and need not be bought.

use fitup_core::item::ItemRef;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::state::{Action, Edit};

#[derive(Properties, PartialEq)]
pub struct OnHandProps {
    /// The item.
    pub item: ItemRef,
    /// Whether it is on hand.
    pub on_hand: bool,
}

/// A box to tick.
#[component]
pub fn OnHand(props: &OnHandProps) -> Html {
    let ctx = use_ctx();
    let item = props.item;
    let act = ctx.act.clone();
    let toggled = move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            act.emit(Action::Edit(Edit::OnHand(item, input.checked())));
        }
    };
    html! {
        <label class="tick">
            <input type="checkbox" checked={props.on_hand} onchange={toggled} />
            <span>{ ctx.text("ui-on-hand") }<span class="unseen">{ ": " }{ ctx.label(item) }</span></span>
        </label>
    }
}
