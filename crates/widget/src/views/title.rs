//! The title block: what the sheet says, in its lower right corner.

use fitup_core::fit::Answer;
use yew::prelude::*;

use super::verdict::verdict_mark;
use crate::ctx::{Ctx, verdict_class};
use crate::say;

/// The title block.
pub fn title(ctx: &Ctx, answer: &Answer, begun: bool) -> Html {
    let verdict = begun.then_some(answer.verdict);
    let word = verdict.map_or_else(|| ctx.text("ui-verdict-open"), |verdict| ctx.words.verdict(verdict));
    let why = match (verdict, answer.findings.first()) {
        (None, _) => ctx.text("ui-verdict-open.meaning"),
        (Some(verdict), Some(worst))
            if worst.verdict == verdict && verdict != fitup_core::finding::Verdict::BoltsUp =>
        {
            say::short(ctx, worst)
        }
        (Some(_), _) if !answer.complete => ctx.text("ui-so-far"),
        (Some(verdict), _) => ctx.words.verdict_meaning(verdict),
    };
    let standing = answer.standing.map_or_else(|| "–".to_owned(), |standing| ctx.words.standing(standing));
    let so_far = |shown: String| if begun { shown } else { "–".to_owned() };
    let to_buy = so_far(answer.parts.total.map_or_else(|| ctx.text("ui-price-on-request"), |total| ctx.money(total)));
    let work = so_far(ctx.words.reader().work(answer.parts.work));
    let cells = [("ui-standing", standing), ("ui-to-buy", to_buy), ("ui-work-time", work)];
    html! {
        <div class="title">
            <div class={classes!("title-verdict", verdict_class(verdict))}>
                { verdict_mark(verdict) }
                <div>
                    <p class="title-word">{ word }</p>
                    <p class="title-why">{ why }</p>
                </div>
            </div>
            <dl class="title-cells">
                for (key, shown) in cells {
                    <div {key}><dt>{ ctx.text(key) }</dt><dd>{ shown }</dd></div>
                }
            </dl>
        </div>
    }
}
