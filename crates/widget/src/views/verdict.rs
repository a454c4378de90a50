//! A verdict: its shape, its colour and its word, always together.

use fitup_view::Verdict;
use yew::prelude::*;

use crate::ctx::verdict_class;

/// The shape of a verdict: a seated bolt head, a bolt head with a hole centre to drill, a diamond
/// that asks, a block that stops, a dashed ring for none yet. The word has to stand beside it.
pub fn verdict_mark(verdict: Option<Verdict>) -> Html {
    mark(verdict, verdict_class(verdict))
}

fn mark(verdict: Option<Verdict>, class: &'static str) -> Html {
    let shape = match verdict {
        Some(Verdict::BoltsUp) => html! {
            <>
                <path d="M6.8 3h10.4L22.4 12l-5.2 9H6.8L1.6 12z" fill="currentColor" />
                <circle class="cut" cx="12" cy="12" r="3.5" />
            </>
        },
        Some(Verdict::BoltsUpWithWork) => html! {
            <path
                d="M7.4 4.1h9.2L21.2 12l-4.6 7.9H7.4L2.8 12zM12 7.6v8.8M7.6 12h8.8"
                fill="none" stroke="currentColor" stroke-width="2.3"
            />
        },
        Some(Verdict::CheckFirst) => html! {
            <>
                <path d="M12 2.1 21.9 12 12 21.9 2.1 12z" fill="none" stroke="currentColor" stroke-width="2.3" />
                <path d="M12 6.9v6.2" stroke="currentColor" stroke-width="2.5" />
                <circle cx="12" cy="16.5" r="1.5" fill="currentColor" />
            </>
        },
        Some(Verdict::WontMount) => html! {
            <>
                <path d="M3 3h18v18H3z" fill="currentColor" />
                <path class="cut-line" d="m7.6 7.6 8.8 8.8m0-8.8-8.8 8.8" stroke-width="2.6" />
            </>
        },
        None => html! {
            <circle
                cx="12" cy="12" r="9.4" fill="none" stroke="currentColor"
                stroke-width="1.8" stroke-dasharray="3.2 2.7"
            />
        },
    };
    html! {
        <svg class={classes!("verdict-mark", class)} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
            { shape }
        </svg>
    }
}

/// The shape and the word.
pub fn verdict_word(verdict: Option<Verdict>, word: String) -> Html {
    worded(verdict, verdict_class(verdict), word)
}

/// What an option still leads to: only what is `coloured` has the colour of an answer.
pub fn reached_word(verdict: Option<Verdict>, coloured: bool, word: String) -> Html {
    worded(verdict, verdict_class(verdict.filter(|_| coloured)), word)
}

fn worded(verdict: Option<Verdict>, class: &'static str, word: String) -> Html {
    html! {
        <span class={classes!("verdict", class)}>
            { mark(verdict, class) }
            <span>{ word }</span>
        </span>
    }
}
