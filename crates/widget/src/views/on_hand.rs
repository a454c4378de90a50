//! Says that an item is on hand and need not be bought.

use fitup_core::item::ItemRef;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::{Action, Edit};

/// A box to tick.
pub fn on_hand_box(ctx: &Ctx, item: ItemRef, is_on_hand: bool) -> Html {
    let act = ctx.act.clone();
    let toggled = move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            act.emit(Action::Edit(Edit::OnHand(item, input.checked())));
        }
    };
    html! {
        <label class="tick">
            <input type="checkbox" checked={is_on_hand} onchange={toggled} />
            <span>{ ctx.text("ui-on-hand") }<span class="unseen">{ ": " }{ ctx.label(item) }</span></span>
        </label>
    }
}
