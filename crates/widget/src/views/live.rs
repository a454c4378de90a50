//! Tells a screen reader when the verdict changes.

use fitup_core::fit::Answer;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::same::Same;
use crate::say;

#[derive(Properties, PartialEq)]
pub struct LiveProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// Whether anything is chosen.
    pub begun: bool,
}

/// The live region: always there, spoken when its words change.
#[component]
pub fn Live(props: &LiveProps) -> Html {
    let ctx = use_ctx();
    let said = if props.begun {
        let verdict = ctx.words.verdict(props.answer.verdict);
        match props.answer.findings.first() {
            Some(worst) => format!("{verdict}. {}", say::short(&ctx, worst)),
            None => verdict,
        }
    } else {
        String::new()
    };
    html! { <p class="unseen" role="status" aria-live="polite">{ said }</p> }
}
