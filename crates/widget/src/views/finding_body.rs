//! One finding in full: for the shopper, for the workshop, its evidence, its checks.

use fitup_core::fit::Answer;
use fitup_words::LineRole;
use yew::prelude::*;

use super::verdict::VerdictWord;
use crate::ctx::use_ctx;
use crate::same::Same;
use crate::say;

#[derive(Properties, PartialEq)]
pub struct FindingBodyProps {
    /// Which finding of the answer.
    pub index: usize,
    /// The answer.
    pub answer: Same<Answer>,
}

/// The finding in full.
#[component]
pub fn FindingBody(props: &FindingBodyProps) -> Html {
    let ctx = use_ctx();
    let Some(finding) = props.answer.findings.get(props.index) else { return Html::default() };
    let class = |role| match role {
        LineRole::Sentence => "finding-says",
        LineRole::Check => "finding-check",
        LineRole::Evidence | LineRole::Step | LineRole::Parts | LineRole::Caution => "finding-rests",
    };
    html! {
        <div class="finding">
            <VerdictWord verdict={finding.verdict} />
            for (at, (role, said)) in say::workshop(&ctx, finding).into_iter().enumerate() {
                <p key={at} class={class(role)}>{ said }</p>
            }
        </div>
    }
}
