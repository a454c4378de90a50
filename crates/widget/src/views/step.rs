//! One step of the item list.

use fitup_view::{Edit, Step, StepHead};
use yew::prelude::*;

use super::icon::{Glyph, icon};
use super::on_hand::on_hand_box;
use super::options::OptionList;
use crate::ctx::{Ctx, svg};
use crate::focus;
use crate::state::{Action, Session};

/// A row of the item list; opened, its options. `next` is the step that is open to answer after this one.
pub fn step_body(ctx: &Ctx, session: &Session, head: &StepHead, at: usize, next: Option<Step>) -> Html {
    let step = head.step;
    let name = step.name();
    let open = session.step() == Some(step);
    let toggle = {
        let (act, to) = (ctx.act.clone(), (!open).then_some(step));
        move |_: MouseEvent| act.emit(Action::OpenStep(to))
    };
    html! {
        <>
            <h2>
                <button
                    type="button" class="step-head" id={format!("step-{name}")} aria-expanded={open.to_string()}
                    aria-controls={format!("options-{name}")} onclick={toggle}
                >
                    <span class="balloon" aria-hidden="true">{ at + 1 }</span>
                    <span class="step-text">
                        <span class="step-name">{ ctx.text(&format!("ui-step-{name}")) }</span>
                        <span class="step-choice">
                            { head.chosen.clone().unwrap_or_else(|| ctx.text("ui-step-choose")) }
                        </span>
                    </span>
                    if session.step().is_none() && !head.shape.is_empty() {
                        <span class="step-shape">
                            <div class="card-shape" aria-hidden="true">{ svg(&head.shape) }</div>
                        </span>
                    }
                    <span class="step-aside">{ head.aside.clone() }</span>
                    { icon(Glyph::Chevron) }
                </button>
            </h2>
            if open {
                <div class="step-body" id={format!("options-{name}")}>
                    <OptionList
                        {step} options={session.options.clone()} search={AttrValue::from(session.look.search.clone())}
                        sort={session.sort()} {next}
                    />
                    { foot(ctx, head, next) }
                </div>
            }
        </>
    }
}

/// What can be said of the pick, and the way on.
fn foot(ctx: &Ctx, head: &StepHead, next: Option<Step>) -> Html {
    let (step, name) = (head.step, head.step.name());
    let go_on = next.map(|next| {
        let act = ctx.act.clone();
        let go = move |event: MouseEvent| {
            focus::go_on_at(&event, &format!("step-{}", next.name()));
            act.emit(Action::OpenStep(Some(next)));
        };
        (next, go)
    });
    let take_out = {
        let act = ctx.act.clone();
        move |event: MouseEvent| {
            focus::go_on_at(&event, &format!("step-{name}"));
            act.emit(Action::Edit(Edit::Clear(step)));
        }
    };
    html! {
        <div class="step-foot">
            if let (Some(id), Some(label)) = (&head.item, &head.chosen) {
                { on_hand_box(ctx, id, label, head.on_hand) }
            }
            if head.chosen.is_some() {
                <button type="button" class="button bare" onclick={take_out}>
                    { ctx.text("ui-take-out") }
                </button>
                if let Some((next, go)) = go_on {
                    <button type="button" class="button firm" onclick={go}>
                        { ctx.text(&format!("ui-step-{}", next.name())) }
                        { icon(Glyph::Next) }
                    </button>
                } else {
                    { take_away(ctx) }
                }
            }
        </div>
    }
}

/// The end of the way.
pub fn take_away(ctx: &Ctx) -> Html {
    let open = ctx.act.reform(|_: MouseEvent| Action::TakeAway(true));
    html! {
        <button type="button" class="button firm" onclick={open}>
            { ctx.text("ui-take-away") }
            { icon(Glyph::Away) }
        </button>
    }
}
