//! A list to choose one of.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// One of the list.
pub struct Choice {
    /// What it hands over.
    pub value: String,
    /// What is seen.
    pub shown: String,
    /// The language of what is seen, if it is not the reader's.
    pub lang: Option<&'static str>,
    /// Whether it is chosen.
    pub chosen: bool,
}

/// The list; `spoken` is its name where no label says it.
pub fn select(spoken: Option<String>, choices: Vec<Choice>, take: Callback<String>) -> Html {
    let changed = move |event: Event| {
        if let Some(select) = event.target_dyn_into::<HtmlSelectElement>() {
            take.emit(select.value());
        }
    };
    html! {
        <select class="entry" aria-label={spoken} onchange={changed}>
            for choice in choices {
                <option key={choice.value.clone()} value={choice.value} lang={choice.lang} selected={choice.chosen}>
                    { choice.shown }
                </option>
            }
        </select>
    }
}
