//! Figures of a view, each with what it is held against.

use fitup_view::Fact;
use yew::prelude::*;

use crate::ctx::verdict_class;

/// The figures in cells.
pub fn facts(figures: &[Fact]) -> Html {
    html! {
        <dl class="facts">
            for (at, figure) in figures.iter().enumerate() {
                <div key={at} class={classes!(figure.out.map(|verdict| classes!("is-out", verdict_class(Some(verdict)))))}>
                    <dt>{ figure.name.clone() }</dt>
                    <dd>
                        { figure.value.clone().unwrap_or_else(|| "–".to_owned()) }
                        <span class="change">{ figure.against.clone() }</span>
                    </dd>
                </div>
            }
        </dl>
    }
}
