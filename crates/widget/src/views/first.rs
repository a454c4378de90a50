//! The first screen: what this is for and the four steps, painted before there is an engine or a catalogue.

use fitup_view::{Step, View};
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
    html! {
        <div class="begin">
            <p class="first-says">{ ctx.text("ui-start-says") }</p>
            { jobs(ctx, session) }
            { stories(ctx) }
            <button
                type="button" class="button begin-identify"
                onclick={ctx.act.reform(|_: MouseEvent| Action::Turn(View::Identify))}
            >
                { ctx.text("ui-view-identify") }
            </button>
        </div>
    }
}

/// Where the page's own examples stand as long as nothing is chosen: children of the element, a slot for each language.
fn stories(ctx: &Ctx) -> Html {
    html! { <div class="stories"><slot name={format!("stories-{}", ctx.reader.lang.name())}></slot></div> }
}
