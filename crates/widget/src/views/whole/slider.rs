//! A slider with its value beside its name.

use fitup_core::quantity::shortest;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A slider.
pub struct Slider {
    /// What it sets.
    pub name: String,
    /// The value with its unit.
    pub shown: String,
    /// Its two ends.
    pub range: (f64, f64),
    /// The step between two values.
    pub step: f64,
    /// The value.
    pub value: f64,
    /// While it moves.
    pub live: Callback<f64>,
    /// When it is let go.
    pub done: Callback<f64>,
}

/// The slider.
pub fn slider(of: Slider) -> Html {
    let tell = |to: Callback<f64>| move |value: Option<f64>| value.into_iter().for_each(|value| to.emit(value));
    let (live, done) = (tell(of.live), tell(of.done));
    html! {
        <label class="slider">
            <span>{ of.name }</span>
            <output>{ of.shown.clone() }</output>
            <input
                type="range" min={shortest(of.range.0)} max={shortest(of.range.1)}
                step={shortest(of.step)} value={shortest(of.value)} aria-valuetext={of.shown}
                oninput={move |event: InputEvent| live(event.target_dyn_into().as_ref().and_then(number))}
                onchange={move |event: Event| done(event.target_dyn_into().as_ref().and_then(number))}
            />
        </label>
    }
}

fn number(input: &HtmlInputElement) -> Option<f64> {
    Some(input.value_as_number()).filter(|value| value.is_finite())
}
