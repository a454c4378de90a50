//! The item list: the four steps, one open at a time.

use fitup_view::{Sheet, Step};
use yew::prelude::*;

use super::also::also;
use super::step::step_body;
use crate::ctx::Ctx;
use crate::state::Session;

/// The item list.
pub fn steps(ctx: &Ctx, session: &Session, sheet: &Sheet) -> Html {
    // The step that is open to answer after one: the next without a pick, round the list.
    let next_after = |at: usize| -> Option<Step> {
        let (before, after) = sheet.steps.split_at_checked(at + 1)?;
        let around = after.iter().chain(&before[..at]);
        around.into_iter().find(|head| head.chosen.is_none()).map(|head| head.step)
    };
    html! {
        <>
        <ol class="steps" aria-label={ctx.text("ui-steps")}>
            for (at, head) in sheet.steps.iter().enumerate() {
                <li
                    key={head.step.name()} class="step" data-open={(session.step() == Some(head.step)).then_some("")}
                    data-chosen={head.chosen.as_ref().map(|_| "")}
                >
                    { step_body(ctx, session, head, at, next_after(at)) }
                </li>
            }
        </ol>
        { also(ctx, &sheet.also) }
        </>
    }
}
