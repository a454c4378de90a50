//! One finding in full: for the shopper, for the workshop, its evidence, its checks.

use fitup_view::{Finding, LineRole};
use yew::prelude::*;

use super::said::said;
use super::verdict::verdict_word;

/// The finding in full.
pub fn finding_body(finding: &Finding) -> Html {
    let class = |role| match role {
        LineRole::Says => "finding-says",
        LineRole::Check => "finding-check",
        LineRole::Rests => "finding-rests",
    };
    html! {
        <div class="finding">
            <p class="finding-question">{ finding.question.clone() }</p>
            { verdict_word(Some(finding.verdict), finding.word.clone()) }
            for (at, line) in finding.lines.iter().enumerate() {
                <p key={at} class={class(line.role)}>{ said(&line.said) }</p>
            }
        </div>
    }
}
