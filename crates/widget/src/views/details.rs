//! What the answer says, subject by subject, worst first.

use fitup_core::build::Build;
use fitup_core::finding::{Subject, Verdict};
use fitup_core::fit::Answer;
use yew::prelude::*;

use super::remedies::Remedies;
use super::row::row_body;
use crate::ctx::Ctx;
use crate::same::Same;
use crate::state::rows;

/// Joints first, then what lies beyond them; remedies on top where something is open, last where only work is left.
pub fn details(ctx: &Ctx, answer: &Same<Answer>, build: &Same<Build>, opened: Option<Subject>) -> Html {
    if answer.findings.is_empty() {
        return html! { <p class="details-none soft">{ ctx.text("ui-details-none") }</p> };
    }
    let (joints, beyond): (Vec<_>, Vec<_>) = rows(answer).into_iter().partition(|row| row.joint.is_some());
    let list = |key: &str, rows: Vec<crate::state::Row>| {
        html! {
            if !rows.is_empty() {
                <h2>{ ctx.text(key) }</h2>
                <ul class="rows">
                    for row in rows.iter() {
                        <li key={format!("{:?}", row.subject)} class="joint">
                            { row_body(ctx, row, answer, build, opened == Some(row.subject)) }
                        </li>
                    }
                </ul>
            }
        }
    };
    html! {
        <>
            if answer.verdict > Verdict::BoltsUpWithWork {
                <Remedies build={build.clone()} is_open=true />
            }
            { list("ui-joints", joints) }
            { list("ui-beyond-joints", beyond) }
            if answer.verdict == Verdict::BoltsUpWithWork {
                <Remedies build={build.clone()} is_open=false />
            }
        </>
    }
}
