//! The drawing field: views, drawing, figures.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::drawing::Drawing;
use super::figures::Figures;
use super::tabs::Tabs;
use super::whole::{Digging, Loading, Site, Weight};
use crate::ctx::use_ctx;
use crate::same::Same;
use crate::state::{Action, DrawingView, View};

#[derive(Properties, PartialEq)]
pub struct FieldProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
    /// The view.
    pub view: View,
    /// How the machine is looked at.
    pub drawing: DrawingView,
    /// What can be reached, for a ghost to begin with.
    pub reach: Option<Same<Reachable>>,
    /// Whether the drawing is folded in where there is little room.
    pub folded: bool,
}

/// The drawing field.
#[component]
pub fn Field(props: &FieldProps) -> Html {
    let ctx = use_ctx();
    let FieldProps { answer, build, view, drawing, reach, folded } = props;
    html! {
        <>
            <section class="field" id="drawing" aria-label={ctx.text("ui-drawing")} data-folded={folded.to_string()}>
                <div class="views">
                    <Tabs view={*view} />
                    if matches!(view, View::Fit | View::Parts) {
                        <div class="switch" role="group" aria-label={ctx.text("ui-look-from")}>
                            for side in DrawingView::ALL.iter().copied() {
                                <button
                                    key={side.name()} type="button" aria-pressed={(side == *drawing).to_string()}
                                    onclick={{ let act = ctx.act.clone(); move |_| act.emit(Action::Look(side)) }}
                                >
                                    { ctx.text(&format!("ui-look-{}", side.name())) }
                                </button>
                            }
                        </div>
                    }
                </div>
                {
                    match view {
                        View::Loading => html! { <Loading answer={answer.clone()} build={build.clone()} /> },
                        View::Weight => html! { <Weight answer={answer.clone()} build={build.clone()} /> },
                        View::Digging => html! { <Digging answer={answer.clone()} build={build.clone()} /> },
                        View::Site => html! { <Site answer={answer.clone()} build={build.clone()} /> },
                        View::Fit | View::Parts => html! {
                            <Drawing
                                answer={answer.clone()} build={build.clone()} drawing={*drawing} reach={reach.clone()}
                            />
                        },
                    }
                }
            </section>
            <Figures answer={answer.clone()} />
        </>
    }
}
