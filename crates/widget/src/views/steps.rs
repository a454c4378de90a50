//! The item list: the four steps, one open at a time.

use fitup_core::build::{Build, Step};
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::also::also;
use super::step::{StepRow, step_body};
use crate::ctx::Ctx;
use crate::same::Same;
use crate::state::{Pick, Session};

/// The item list.
pub fn steps(ctx: &Ctx, session: &Session, build: &Same<Build>, reach: Option<&Same<Reachable>>) -> Html {
    let unanswered = |step: &Step| step.chosen(build).is_none();
    let next_after = |step: Step| {
        let at = step as usize + 1;
        let around = Step::ALL[at..].iter().chain(&Step::ALL[..at - 1]);
        around.copied().find(unanswered)
    };
    let row = |step: Step| {
        let chosen = Pick::of(build, step);
        StepRow {
            step,
            chosen,
            on_hand: chosen.and_then(Pick::item).is_some_and(|item| build.on_hand.contains(&item)),
            open: session.step == Some(step),
            roomy: session.step.is_none(),
            next: next_after(step),
        }
    };
    html! {
        <>
        <ol class="steps" aria-label={ctx.text("ui-steps")}>
            for row in Step::ALL.map(row) {
                <li
                    key={row.step.name()} class="step" data-open={row.open.then_some("")}
                    data-chosen={row.chosen.map(|_| "")}
                >
                    { step_body(ctx, &row, session, build, reach) }
                </li>
            }
        </ol>
        { also(ctx, build) }
        </>
    }
}
