//! Says that an item is on hand and need not be bought.

use fitup_view::Edit;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::Action;

/// A box to tick, for the item of this id and label.
pub fn on_hand_box(ctx: &Ctx, id: &str, label: &str, is_on_hand: bool) -> Html {
    let (act, id) = (ctx.act.clone(), id.to_owned());
    let toggled = move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            act.emit(Action::Edit(Edit::OnHand(id.clone(), input.checked())));
        }
    };
    html! {
        <label class="tick">
            <input type="checkbox" checked={is_on_hand} onchange={toggled} />
            <span>{ ctx.text("ui-on-hand") }<span class="unseen">{ ": " }{ label.to_owned() }</span></span>
        </label>
    }
}
