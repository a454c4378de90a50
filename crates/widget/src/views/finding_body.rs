//! One finding in full: for the shopper, for the workshop, its evidence, its checks.

use fitup_core::finding::Finding;
use fitup_words::LineRole;
use yew::prelude::*;

use super::verdict::verdict_word;
use crate::ctx::Ctx;
use crate::say;

/// The finding in full.
pub fn finding_body(ctx: &Ctx, finding: &Finding) -> Html {
    let class = |role| match role {
        LineRole::Sentence => "finding-says",
        LineRole::Check => "finding-check",
        LineRole::Evidence | LineRole::Step | LineRole::Parts | LineRole::Caution => "finding-rests",
    };
    html! {
        <div class="finding">
            { verdict_word(ctx, Some(finding.verdict)) }
            for (at, (role, said)) in say::workshop(ctx, finding).into_iter().enumerate() {
                <p key={at} class={class(role)}>{ said }</p>
            }
        </div>
    }
}
