//! What the answer says, subject by subject, worst first.

use fitup_core::build::Build;
use fitup_core::finding::{Subject, Verdict};
use fitup_core::fit::Answer;
use yew::prelude::*;

use super::remedies::Remedies;
use super::row::RowItem;
use crate::ctx::use_ctx;
use crate::same::Same;
use crate::state::rows;

#[derive(Properties, PartialEq)]
pub struct DetailsProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
    /// What is opened.
    pub opened: Option<Subject>,
}

/// Joints first, then what lies beyond them; remedies on top where something is open.
#[component]
pub fn Details(props: &DetailsProps) -> Html {
    let ctx = use_ctx();
    let DetailsProps { answer, build, opened } = props;
    if answer.findings.is_empty() {
        return html! { <p class="details-none soft">{ ctx.text("ui-details-none") }</p> };
    }
    let (joints, beyond): (Vec<_>, Vec<_>) = rows(answer).into_iter().partition(|row| row.joint.is_some());
    let list = |key: &str, rows: Vec<crate::state::Row>| {
        html! {
            if !rows.is_empty() {
                <h2>{ ctx.text(key) }</h2>
                <ul class="rows">
                    for row in rows {
                        <RowItem
                            key={format!("{:?}", row.subject)} open={*opened == Some(row.subject)}
                            row={row.clone()} answer={answer.clone()} build={build.clone()}
                        />
                    }
                </ul>
            }
        }
    };
    html! {
        <>
            if answer.verdict > Verdict::BoltsUpWithWork {
                <Remedies build={build.clone()} />
            }
            { list("ui-joints", joints) }
            { list("ui-beyond-joints", beyond) }
        </>
    }
}
