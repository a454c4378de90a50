//! The answer at a glance, kept on top where there is no room for the title block beside.

use fitup_view::{Headline, Sheet};
use yew::prelude::*;

use super::answers::answer_marks;
use super::icon::{Glyph, icon};
use super::verdict::verdict_word;
use crate::ctx::{Ctx, verdict_class};
use crate::state::Action;

/// The figures that matter most in passing.
const SHOWN: [&str; 2] = ["length", "departure"];

/// The bar with verdict and figures.
pub fn glance(ctx: &Ctx, sheet: &Sheet, told: Option<&Headline>, folded: bool) -> Html {
    let verdict = told.and_then(|told| told.verdict);
    let word = told.map_or_else(|| ctx.text("ui-verdict-open"), |told| told.word.clone());
    let fold = {
        let act = ctx.act.clone();
        move |_: MouseEvent| act.emit(Action::Fold(!folded))
    };
    html! {
        <section class={classes!("glance", verdict_class(verdict))} aria-label={ctx.text("ui-answer")}>
            <div class="glance-answer">
                { verdict_word(verdict, word) }
                if told.is_some() {
                    { answer_marks(&sheet.answers) }
                }
            </div>
            <dl>
                for figure in sheet.figures.iter().filter(|figure| SHOWN.contains(&figure.name.as_str())) {
                    <div key={figure.name.clone()}>
                        <dt>{ ctx.text(&format!("ui-short-{}", figure.name)) }</dt>
                        <dd>{ figure.value.clone().unwrap_or_else(|| "–".to_owned()) }</dd>
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
