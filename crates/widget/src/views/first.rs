//! The first screen: what this is for and the four steps, painted before there is an engine or a catalogue.

use fitup_view::{Mode, Step, View};
use yew::prelude::*;

use super::jobs::jobs;
use crate::ctx::Ctx;
use crate::state::{Action, Session};

/// The first screen.
pub fn first(ctx: &Ctx, session: &Session) -> Html {
    html! {
        <main class="first">
            <p class="first-says">{ ctx.text("ui-start-says") }</p>
            <ol class="first-steps" aria-label={ctx.text("ui-steps")}>
                for (at, step) in Step::ALL.iter().enumerate() {
                    <li key={step.name()}>
                        <span class="balloon" aria-hidden="true">{ at + 1 }</span>
                        { ctx.text(&format!("ui-step-{}", step.name())) }
                    </li>
                }
            </ol>
            { jobs(ctx, session) }
            { stories(ctx) }
        </main>
    }
}

/// The same over an empty sheet: what this is for, examples to begin with, and the way in with a unit without papers.
pub fn begin(ctx: &Ctx, session: &Session) -> Html {
    // Jobs come first where there are some, or where they are what one comes for.
    let with_jobs = ctx.mode == Mode::Yard || !session.jobs().is_empty() || session.deleted().is_some();
    html! {
        <div class="begin">
            <p class="first-says">{ ctx.text("ui-start-says") }</p>
            if with_jobs {
                { jobs(ctx, session) }
            }
            { stories(ctx) }
            <div class="begin-ways">
                <button
                    type="button" class="button"
                    onclick={ctx.act.reform(|_: MouseEvent| Action::Turn(View::Identify))}
                >
                    { ctx.text("ui-view-identify") }
                </button>
                if !with_jobs {
                    { jobs(ctx, session) }
                }
            </div>
        </div>
    }
}

/// Where the page's own examples stand as long as nothing is chosen: children of the element, a slot for each language.
fn stories(ctx: &Ctx) -> Html {
    html! { <div class="stories"><slot name={format!("stories-{}", ctx.reader.lang.name())}></slot></div> }
}
