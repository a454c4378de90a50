//! Two or three ways side by side, one of which is taken.

use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct SwitchProps {
    /// What is chosen between.
    pub name: String,
    /// The ways.
    pub ways: Vec<String>,
    /// Which of them is taken.
    pub taken: usize,
    /// Takes another.
    pub take: Callback<usize>,
}

/// The switch.
#[component]
pub fn Switch(props: &SwitchProps) -> Html {
    html! {
        <div class="switch" role="group" aria-label={props.name.clone()}>
            for (at, way) in props.ways.iter().enumerate() {
                <button
                    key={at} type="button" aria-pressed={(at == props.taken).to_string()}
                    onclick={{ let take = props.take.clone(); move |_| take.emit(at) }}
                >
                    { way.clone() }
                </button>
            }
        </div>
    }
}
