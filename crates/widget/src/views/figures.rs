//! The footprint's figures with their change against the bare machine.

use fitup_core::fit::{Answer, footprint_figures};
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::say;

/// The figures that the sheet shows; the rest stand in the weight view and on the fit sheet.
const SHOWN: [&str; 7] = ["length", "width", "height", "ground-clearance", "departure", "mass", "front-load"];

/// The figures of an answer.
pub fn figures(ctx: &Ctx, answer: &Answer) -> Html {
    let figures = footprint_figures(&answer.footprint, &answer.bare);
    html! {
        <dl class="figures" aria-label={ctx.text("ui-footprint")}>
            for name in SHOWN {
                <div key={name}>
                    <dt>{ ctx.text(&format!("ui-short-{name}")) }</dt>
                    {
                        match figures.iter().find(|figure| figure.name == name) {
                            Some(figure) => html! {
                                <dd>
                                    { figure.value.as_ref().map_or_else(|| "–".to_owned(), |v| say::value(ctx, v)) }
                                    <span class="change">
                                        { figure.change.as_ref().map(|change| say::change(ctx, change)) }
                                    </span>
                                </dd>
                            },
                            None => html! { <dd>{ "–" }</dd> },
                        }
                    }
                </div>
            }
        </dl>
    }
}
