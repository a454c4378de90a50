//! What is on the machine as it stands, to be put on and taken off.

use fitup_view::{Edit, EquipmentLine};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::Action;

/// A box to tick for each piece of equipment that is for the machine.
pub fn on_machine(ctx: &Ctx, equipment: &[EquipmentLine]) -> Html {
    if equipment.is_empty() {
        return Html::default();
    }
    let one = |piece: &EquipmentLine| {
        let (act, id) = (ctx.act.clone(), piece.id.clone());
        let toggled = move |event: Event| {
            if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
                act.emit(Action::Edit(Edit::Equip(id.clone(), input.checked())));
            }
        };
        html! {
            <li key={piece.id.clone()}>
                <label class="tick">
                    <input type="checkbox" checked={piece.is_on} onchange={toggled} />
                    <span>{ piece.label.clone() }</span>
                </label>
            </li>
        }
    };
    html! {
        <>
            <h2>{ ctx.text("ui-on-machine") }</h2>
            <ul class="on-machine">{ for equipment.iter().map(one) }</ul>
        </>
    }
}
