//! One finding in full: for the shopper, for the workshop, its evidence, its checks.

use fitup_core::fit::Answer;
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
    html! {
        <div class="finding">
            <VerdictWord verdict={finding.verdict} />
            <p>{ say::workshop(&ctx, finding) }</p>
            for (at, line) in say::evidence(&ctx, finding).into_iter().enumerate() {
                <p key={at} class="soft">{ line }</p>
            }
            if !finding.checks.is_empty() {
                <ul class="checks" aria-label={ctx.text("ui-checks")}>
                    for (at, check) in finding.checks.iter().enumerate() {
                        <li key={at}>{ say::check(&ctx, check) }</li>
                    }
                </ul>
            }
        </div>
    }
}
