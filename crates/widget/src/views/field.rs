//! The drawing field: views, drawing, figures.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::drawing::Drawing;
use super::figures::figures;
use super::tabs::tabs;
use super::whole::switch::switch;
use super::whole::{Digging, Loading, Site, Weight};
use crate::ctx::Ctx;
use crate::same::Same;
use crate::state::{Action, DrawingView, Session, View};

/// The drawing field.
pub fn field(
    ctx: &Ctx,
    session: &Session,
    answer: &Same<Answer>,
    build: &Same<Build>,
    reach: Option<&Same<Reachable>>,
) -> Html {
    let sides = DrawingView::ALL.iter().map(|side| ctx.text(&format!("ui-look-{}", side.name()))).collect();
    let taken = DrawingView::ALL.iter().position(|side| *side == session.drawing).unwrap_or_default();
    let look = ctx.act.reform(|at: usize| Action::Look(DrawingView::ALL[at]));
    html! {
        <>
            <section
                class="field" id="drawing" aria-label={ctx.text("ui-drawing")} data-folded={session.folded.to_string()}
            >
                <div class="views">
                    { tabs(ctx, session.view) }
                    if matches!(session.view, View::Fit | View::Parts) {
                        { switch(ctx.text("ui-look-from"), sides, taken, &look) }
                    }
                </div>
                {
                    match session.view {
                        View::Loading => html! { <Loading answer={answer.clone()} build={build.clone()} /> },
                        View::Weight => html! { <Weight answer={answer.clone()} build={build.clone()} /> },
                        View::Digging => html! { <Digging answer={answer.clone()} build={build.clone()} /> },
                        View::Site => html! { <Site answer={answer.clone()} build={build.clone()} /> },
                        View::Fit | View::Parts => html! {
                            <Drawing
                                answer={answer.clone()} build={build.clone()} drawing={session.drawing}
                                reach={reach.cloned()}
                            />
                        },
                    }
                }
            </section>
            { figures(ctx, answer) }
        </>
    }
}
