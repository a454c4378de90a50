//! Two or three ways side by side, one of which is taken.

use yew::prelude::*;

/// The switch: what is chosen between, the ways, which of them is taken, and what takes another.
pub fn switch(name: String, ways: Vec<String>, taken: usize, take: &Callback<usize>) -> Html {
    html! {
        <div class="switch" role="group" aria-label={name}>
            for (at, way) in ways.into_iter().enumerate() {
                <button
                    key={at} type="button" aria-pressed={(at == taken).to_string()}
                    onclick={{ let take = take.clone(); move |_| take.emit(at) }}
                >
                    { way }
                </button>
            }
        </div>
    }
}
