//! A slider with its value beside its name.

use fitup_view::{Edit, Slider};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::Action;

/// The slider: while it moves the build is tried, when it is let go it is taken. One that moves only what is looked at is never
/// taken. `held` is where the finger holds it, ahead of what has been answered.
pub fn slider(ctx: &Ctx, of: &Slider, held: Option<f64>) -> Html {
    let (sets, looks_only) = (of.sets, of.looks_only);
    let (live, done) = (ctx.act.clone(), ctx.act.clone());
    let moved = move |value: f64| {
        live.emit(if looks_only { Action::Place(sets, value) } else { Action::Try(Edit::Slide(sets, value)) });
    };
    let let_go = move |value: f64| {
        if !looks_only {
            done.emit(Action::Edit(Edit::Slide(sets, value)));
        }
    };
    html! {
        <label class="slider" key={of.name.clone()}>
            <span>{ of.name.clone() }</span>
            <output>{ of.shown.clone() }</output>
            <input
                type="range" min={of.least.to_string()} max={of.most.to_string()}
                step={of.step.to_string()} value={held.unwrap_or(of.value).to_string()} aria-valuetext={of.shown.clone()}
                oninput={move |event: InputEvent| with_number(event.target_dyn_into(), &moved)}
                onchange={move |event: Event| with_number(event.target_dyn_into(), &let_go)}
            />
        </label>
    }
}

fn with_number(input: Option<HtmlInputElement>, take: &impl Fn(f64)) {
    let value = input.map(|input| input.value_as_number()).filter(|value| value.is_finite());
    value.into_iter().for_each(take);
}
