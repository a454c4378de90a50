//! The answer at a glance, kept on top where there is no room for the title block beside.

use fitup_core::fit::{Answer, footprint_figures};
use yew::prelude::*;

use super::icon::{Glyph, icon};
use super::verdict::verdict_word;
use crate::ctx::{Ctx, verdict_class};
use crate::say;
use crate::state::Action;

/// The figures that matter most in passing.
const SHOWN: [&str; 2] = ["length", "departure"];

/// The bar with verdict and figures.
pub fn glance(ctx: &Ctx, answer: &Answer, begun: bool, folded: bool) -> Html {
    let verdict = begun.then_some(answer.verdict);
    let figures = footprint_figures(&answer.footprint, &answer.bare);
    let fold = {
        let act = ctx.act.clone();
        move |_: MouseEvent| act.emit(Action::Fold(!folded))
    };
    html! {
        <section class={classes!("glance", verdict_class(verdict))} aria-label={ctx.text("ui-answer")}>
            { verdict_word(ctx, verdict) }
            <dl>
                for figure in figures.iter().filter(|figure| SHOWN.contains(&figure.name)) {
                    <div key={figure.name}>
                        <dt>{ ctx.text(&format!("ui-short-{}", figure.name)) }</dt>
                        <dd>
                            { figure.value.as_ref().map_or_else(|| "–".to_owned(), |value| say::value(ctx, value)) }
                        </dd>
                    </div>
                }
            </dl>
            <button
                type="button" class="button bare fold" aria-expanded={(!folded).to_string()}
                aria-controls="drawing" aria-label={ctx.text("ui-drawing")} title={ctx.text("ui-drawing")}
                onclick={fold}
            >
                { icon(Glyph::Drawing) }
            </button>
        </section>
    }
}
