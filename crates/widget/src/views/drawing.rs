//! The drawing of the build, to scale.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_drawing::{Sheet, Subject, plan, side};
use web_sys::Element;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::hooks::use_room;
use crate::picture::{self, Lettering, PIXELS_PER_MM};
use crate::same::Same;
use crate::state::{Action, DrawingView, Step};

#[derive(Properties, PartialEq)]
pub struct DrawingProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
    /// How the machine is looked at.
    pub drawing: DrawingView,
}

/// The drawing, or what to do to get one. Touching a joint's marker opens the joint, touching an
/// item its step.
#[component]
pub fn Drawing(props: &DrawingProps) -> Html {
    let ctx = use_ctx();
    let node = use_node_ref();
    let room = use_room(&node);
    let drawn = {
        let key = (ctx.clone(), props.answer.clone(), props.build.clone(), props.drawing, room);
        use_memo(key, |(ctx, answer, build, view, room)| {
            let (width, height) = (*room)?;
            if answer.stack.placed.is_empty() {
                return None;
            }
            let lettering = Lettering(&ctx.words);
            let sheet = Sheet::new(f64::from(width) / PIXELS_PER_MM, f64::from(height) / PIXELS_PER_MM, &lettering);
            let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
            let scene = match view {
                DrawingView::Side => side(&subject, Some(answer), None, &sheet),
                DrawingView::Plan => plan(&subject, Some(answer), None, &sheet),
            };
            let told = picture::told(ctx, answer, &scene);
            Some(picture::html(&scene, &told))
        })
    };
    let touched = {
        let (ctx, answer) = (ctx.clone(), props.answer.clone());
        move |event: MouseEvent| {
            let target = event.target_dyn_into::<Element>().and_then(|at| at.closest("[data-target]").ok().flatten());
            if let Some(action) = target.and_then(|at| at.get_attribute("data-target")).and_then(|t| opens(&t, &answer))
            {
                ctx.act(action);
            }
        }
    };
    html! {
        <div class="drawing-box" id="drawing" ref={node} onclick={touched}>
            {
                match &*drawn {
                    Some(drawn) => drawn.clone(),
                    None if props.answer.stack.placed.is_empty() => {
                        html! { <p class="drawing-none">{ ctx.text("ui-drawing-none") }</p> }
                    }
                    None => Html::default(),
                }
            }
        </div>
    }
}

/// What touching a part of the drawing opens.
fn opens(target: &str, answer: &Answer) -> Option<Action> {
    let (kind, name) = target.split_once('-')?;
    match kind {
        "joint" => {
            let joint = answer.joints.get(name.parse::<usize>().ok()?)?;
            let finding = answer.findings.get(*joint.findings.first()?)?;
            Some(Action::Open(Some(finding.subject)))
        }
        "item" => Step::named(name).map(|step| Action::OpenStep(Some(step))),
        _ => None,
    }
}
