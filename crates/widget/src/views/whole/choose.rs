//! A few names to choose one of, or none.

use yew::prelude::*;

use crate::ctx::Ctx;
use crate::views::select::{Choice, select};

/// The choice: the key of what is chosen, the names, which of them is chosen, and what chooses another.
pub fn choose(
    ctx: &Ctx,
    key: &str,
    names: Vec<String>,
    chosen: Option<usize>,
    choose: &Callback<Option<usize>>,
) -> Html {
    let none = Choice { value: String::new(), shown: ctx.text("ui-none"), lang: None, chosen: chosen.is_none() };
    let named = names.into_iter().enumerate().map(|(at, shown)| Choice {
        value: at.to_string(),
        shown,
        lang: None,
        chosen: chosen == Some(at),
    });
    let choices = std::iter::once(none).chain(named).collect();
    html! {
        <label class="choose">
            <span>{ ctx.text(key) }</span>
            { select(None, choices, choose.reform(|value: String| value.parse().ok())) }
        </label>
    }
}
