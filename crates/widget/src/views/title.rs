//! The title block: what the sheet says, in its lower right corner.

use fitup_view::{Headline, Sheet};
use yew::prelude::*;

use super::answers::answers;
use super::step::take_away;
use super::verdict::verdict_mark;
use crate::ctx::{Ctx, verdict_class};

/// The title block; `told` is nothing as long as nothing is chosen.
pub fn title(ctx: &Ctx, sheet: &Sheet, told: Option<&Headline>) -> Html {
    let verdict = told.and_then(|told| told.verdict);
    let word = told.map_or_else(|| ctx.text("ui-verdict-open"), |told| told.word.clone());
    let why = told.map_or_else(|| ctx.text("ui-verdict-open.meaning"), |told| told.reason.clone());
    let cells = [
        ("ui-standing", &sheet.title.standing),
        ("ui-to-buy", &sheet.title.to_buy),
        ("ui-work-time", &sheet.title.work),
    ];
    html! {
        <div class="title">
            <div class={classes!("title-verdict", verdict_class(verdict))}>
                { verdict_mark(verdict) }
                <div>
                    <p class="title-word">{ word }</p>
                    <p class="title-why">{ why }</p>
                </div>
            </div>
            if sheet.begun {
                { answers(&sheet.answers) }
            }
            if sheet.begun {
                <dl class="title-cells">
                    for (key, shown) in cells {
                        <div {key}><dt>{ ctx.text(key) }</dt><dd>{ shown.clone() }</dd></div>
                    }
                </dl>
            }
            if sheet.steps.iter().all(|step| step.chosen.is_some()) {
                <div class="title-on">{ take_away(ctx) }</div>
            }
        </div>
    }
}
