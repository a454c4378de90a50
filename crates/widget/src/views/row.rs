//! One subject of the answer: its verdict, its worst finding, its evidence; opened, the rest.

use fitup_core::build::Build;
use fitup_core::finding::Subject;
use fitup_core::fit::Answer;
use yew::prelude::*;

use super::evidence::evidence;
use super::finding_body::finding_body;
use super::icon::{Glyph, icon};
use super::joint_body::joint_body;
use super::verdict::verdict_mark;
use crate::ctx::Ctx;
use crate::same::Same;
use crate::say;
use crate::state::{Action, Row};

/// What stands in the row.
pub fn row_body(ctx: &Ctx, row: &Row, answer: &Same<Answer>, build: &Same<Build>, open: bool) -> Html {
    let worst = row.findings.first().and_then(|&index| answer.findings.get(index));
    let toggle = {
        let (act, to) = (ctx.act.clone(), (!open).then_some(row.subject));
        move |_: MouseEvent| act.emit(Action::Open(to))
    };
    let between = match row.subject {
        Subject::Joint(_, a, b) | Subject::Clearance(a, b) => Some(format!("{} ↔ {}", ctx.label(a), ctx.label(b))),
        _ => None,
    };
    html! {
        <>
            <h3>
                <button type="button" class="joint-head" aria-expanded={open.to_string()} onclick={toggle}>
                    { verdict_mark(Some(row.verdict)) }
                    <span class="unseen">{ ctx.words.verdict(row.verdict) }{ ": " }</span>
                    <span class="joint-text">
                        <span class="joint-name">{ worst.map(|finding| say::subject(ctx, finding)) }</span>
                        if let Some(between) = between {
                            <span class="joint-between">{ between }</span>
                        }
                        <span class="joint-line">{ worst.map(|finding| say::sentence(ctx, finding)) }</span>
                    </span>
                    if let Some(worst) = worst {
                        { evidence(ctx, worst.evidence.grade) }
                    }
                    { icon(Glyph::Chevron) }
                </button>
            </h3>
            if open {
                <div class="joint-body">
                    for index in row.findings.iter().copied() {
                        { answer.findings.get(index).map(|finding| finding_body(ctx, finding)) }
                    }
                    if let Some(joint) = row.joint {
                        { joint_body(ctx, joint, answer, build) }
                    }
                </div>
            }
        </>
    }
}
