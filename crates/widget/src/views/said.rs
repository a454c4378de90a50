//! Sentences with what stands out in them.

use fitup_view::Span;
use yew::prelude::*;

/// A sentence with figures kept in one piece and part numbers set apart.
pub fn said(spans: &[Span]) -> Html {
    spans
        .iter()
        .map(|span| match span {
            Span::Text(text) => html! { { text.clone() } },
            Span::Figure(text) => html! { <span class="said-figure">{ text.clone() }</span> },
            Span::Part(number) => html! { <span class="part-number">{ number.clone() }</span> },
            Span::Item(label) => html! { <span class="said-item">{ label.clone() }</span> },
        })
        .collect()
}
