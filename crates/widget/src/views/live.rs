//! Tells a screen reader when the verdict changes.

use fitup_view::Headline;
use yew::prelude::*;

/// The live region: always there, spoken when its words change.
pub fn live(told: Option<&Headline>) -> Html {
    // The same words as the title block's.
    let said = told.map(|told| format!("{}. {}", told.word, told.reason));
    html! { <p class="unseen" role="status" aria-live="polite">{ said }</p> }
}
