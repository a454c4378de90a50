//! Tells a screen reader when the verdict changes.

use fitup_core::fit::Answer;
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::say;

/// The live region: always there, spoken when its words change.
pub fn live(ctx: &Ctx, answer: &Answer, begun: bool) -> Html {
    let said = if begun {
        let verdict = ctx.words.verdict(answer.verdict);
        match answer.findings.first() {
            Some(worst) => format!("{verdict}. {}", say::short(ctx, worst)),
            None => verdict,
        }
    } else {
        String::new()
    };
    html! { <p class="unseen" role="status" aria-live="polite">{ said }</p> }
}
