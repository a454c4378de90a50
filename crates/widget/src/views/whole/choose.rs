//! A few names to choose one of, or none.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::ctx::use_ctx;

#[derive(Properties, PartialEq)]
pub struct ChooseProps {
    /// What is chosen.
    pub name: String,
    /// The names.
    pub labels: Vec<String>,
    /// Which of them is chosen.
    pub chosen: Option<usize>,
    /// Chooses another.
    pub choose: Callback<Option<usize>>,
}

/// The choice.
#[component]
pub fn Choose(props: &ChooseProps) -> Html {
    let ctx = use_ctx();
    let choose = props.choose.clone();
    let changed = move |event: Event| {
        if let Some(select) = event.target_dyn_into::<HtmlSelectElement>() {
            choose.emit(select.value().parse().ok());
        }
    };
    html! {
        <label class="choose">
            <span>{ props.name.clone() }</span>
            <select class="entry" onchange={changed}>
                <option value="" selected={props.chosen.is_none()}>{ ctx.text("ui-none") }</option>
                for (at, label) in props.labels.iter().enumerate() {
                    <option key={at} value={at.to_string()} selected={props.chosen == Some(at)}>{ label.clone() }</option>
                }
            </select>
        </label>
    }
}
