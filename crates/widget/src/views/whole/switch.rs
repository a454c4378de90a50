//! Two or three ways side by side, one of which is taken.

use yew::prelude::*;

/// The switch: what is chosen between, the ways with their names, which of them is taken, and what takes another.
pub fn switch<T: Copy + PartialEq + 'static>(
    name: String,
    ways: impl IntoIterator<Item = (T, String)>,
    taken: T,
    take: &Callback<T>,
) -> Html {
    html! {
        <div class="switch" role="group" aria-label={name}>
            for (at, (way, shown)) in ways.into_iter().enumerate() {
                <button
                    key={at} type="button" aria-pressed={(way == taken).to_string()}
                    onclick={{ let take = take.clone(); move |_| take.emit(way) }}
                >
                    { shown }
                </button>
            }
        </div>
    }
}
