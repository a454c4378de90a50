//! One subject of the answer: its verdict, its worst finding, its evidence; opened, the rest.

use fitup_view::Row;
use yew::prelude::*;

use super::evidence::evidence;
use super::finding_body::finding_body;
use super::icon::{Glyph, icon};
use super::joint_body::joint_body;
use super::said::said;
use super::verdict::verdict_mark;
use crate::ctx::Ctx;
use crate::focus;
use crate::state::{Action, Session};

/// The id of a row's head.
pub fn row_id(row: u64) -> String {
    format!("row-{row}")
}

/// What stands in the row.
pub fn row_body(ctx: &Ctx, session: &Session, row: &Row) -> Html {
    let open = session.look.opened == Some(row.key);
    let toggle = {
        let (act, to) = (ctx.act.clone(), (!open).then_some(row.key));
        move |_: MouseEvent| act.emit(Action::Open(to))
    };
    html! {
        <>
            <h3>
                <button type="button" class="joint-head" id={row_id(row.key)} aria-expanded={open.to_string()} onclick={toggle}>
                    { verdict_mark(Some(row.verdict)) }
                    <span class="unseen">{ row.word.clone() }{ ": " }</span>
                    <span class="joint-text">
                        <span class="joint-name">
                            { row.name.clone() }
                            <span class="joint-question">{ row.question.clone() }</span>
                        </span>
                        if let Some(between) = row.between.clone() {
                            <span class="joint-between">{ between }</span>
                        }
                        <span class="joint-line">{ said(&row.line) }</span>
                    </span>
                    { evidence(&row.evidence) }
                    { icon(Glyph::Chevron) }
                </button>
            </h3>
            if open && !row.findings.is_empty() {
                <div class="joint-body">
                    <button type="button" class="button bare to-drawing" onclick={|event: MouseEvent| focus::show(&event, "drawing")}>
                        { icon(Glyph::Drawing) }
                        { ctx.text("ui-to-drawing") }
                    </button>
                    for finding in &row.findings {
                        { finding_body(finding) }
                    }
                    if let Some(joint) = &row.joint {
                        { joint_body(ctx, session, joint) }
                    }
                </div>
            }
        </>
    }
}
