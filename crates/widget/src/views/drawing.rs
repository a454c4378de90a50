//! The drawing of the build, to scale.

use fitup_core::build::{Build, Step, place};
use fitup_core::fit::Answer;
use fitup_core::search::{Reach, Reachable};
use fitup_drawing::{Sheet, Subject, plan, side};
use web_sys::Element;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::hooks::use_room;
use crate::picture::{self, Lettering, PIXELS_PER_MM};
use crate::same::Same;
use crate::state::{Action, DrawingView};

#[derive(Properties, PartialEq)]
pub struct DrawingProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
    /// How the machine is looked at.
    pub drawing: DrawingView,
    /// What can be reached, for a ghost to begin with.
    pub reach: Option<Same<Reachable>>,
}

/// The drawing, or what to do to get one. Touching a joint's marker opens the joint, touching an
/// item its step.
#[component]
pub fn Drawing(props: &DrawingProps) -> Html {
    let ctx = use_ctx();
    let node = use_node_ref();
    let room = use_room(&node);
    let drawn = {
        let begun = !props.answer.stack.placed.is_empty();
        let reach = props.reach.clone().filter(|_| !begun);
        let key = (ctx.clone(), props.answer.clone(), props.build.clone(), props.drawing, room, reach);
        use_memo(key, move |(ctx, answer, build, view, room, reach)| {
            let (width, height) = (*room)?;
            let lettering = Lettering(&ctx.words);
            let sheet = Sheet::new(f64::from(width) / PIXELS_PER_MM, f64::from(height) / PIXELS_PER_MM, &lettering);
            let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
            let draw = match view {
                DrawingView::Side => side,
                DrawingView::Plan => plan,
            };
            if !begun {
                // What could come of it, in pale lines; the words beside it say so.
                let build = &best(reach.as_deref()?)?.build;
                let stack = place(ctx.catalogue(), build);
                let scene = draw(&subject, None, Some(&Subject::new(ctx.catalogue(), build, &stack)), &sheet);
                return Some(picture::svg(&scene, &ctx.text("ui-drawing-none")));
            }
            let scene = draw(&subject, Some(answer), None, &sheet);
            let told = picture::told(ctx, answer, &scene);
            Some(picture::svg(&scene, &told))
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
        <div class="drawing-box" ref={node} onclick={touched}>
            { (*drawn).clone() }
            if props.answer.stack.placed.is_empty() {
                <p class="drawing-none">{ ctx.text("ui-drawing-none") }</p>
            }
        </div>
    }
}

/// The best that can be reached from nothing, with a frame if there is one: it shows the most.
fn best(reachable: &Reachable) -> Option<&Reach> {
    let framed = reachable.carrying.iter().skip(1).flatten();
    framed.chain(reachable.machines.iter().flatten()).min_by_key(|reach| reach.verdict)
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
