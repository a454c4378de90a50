//! A few names to choose one of, or none.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::ctx::Ctx;

/// The choice: the key of what is chosen, the names, which of them is chosen, and what chooses another.
pub fn choose(
    ctx: &Ctx,
    key: &str,
    names: Vec<String>,
    chosen: Option<usize>,
    choose: Callback<Option<usize>>,
) -> Html {
    let changed = move |event: Event| {
        if let Some(select) = event.target_dyn_into::<HtmlSelectElement>() {
            choose.emit(select.value().parse().ok());
        }
    };
    html! {
        <label class="choose">
            <span>{ ctx.text(key) }</span>
            <select class="entry" onchange={changed}>
                <option value="" selected={chosen.is_none()}>{ ctx.text("ui-none") }</option>
                for (at, name) in names.into_iter().enumerate() {
                    <option key={at} value={at.to_string()} selected={chosen == Some(at)}>{ name }</option>
                }
            </select>
        </label>
    }
}
