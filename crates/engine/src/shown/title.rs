//! The title block, the answers, the figures and the cautions.

use fitup_core::finding::Question;
use fitup_core::fit::{Answer, QuestionAnswer, footprint_figures};
use fitup_view::{Answered, Caution, Figure, Title};

use super::ctx::{Ctx, verdict};
use super::say;

/// The figures that the sheet shows; the rest stand in the weight view and on the fit sheet.
const FIGURES: [&str; 7] = ["length", "width", "height", "ground-clearance", "departure", "mass", "front-load"];

/// The title block's cells; figures of parts only once something is chosen.
pub fn title(ctx: Ctx, answer: &Answer, begun: bool) -> Title {
    let so_far = |shown: String| if begun { shown } else { "–".to_owned() };
    let total = answer.parts.total.map_or_else(|| ctx.text("ui-price-on-request"), |total| ctx.money(total));
    Title {
        standing: answer.standing.map_or_else(|| "–".to_owned(), |standing| ctx.words.standing(standing)),
        to_buy: so_far(total),
        work: so_far(ctx.words.strip_total(&answer.strip)),
    }
}

/// Fit and work always; travel with a trailer, site with a site.
pub fn answers(ctx: Ctx, answer: &Answer) -> Vec<Answered> {
    let is_aside = |question| matches!(question, Question::Travel | Question::Site);
    let asked = answer.answers.iter().filter(|told| told.is_decided || !is_aside(told.question));
    let one = |told: &QuestionAnswer| Answered {
        question: ctx.words.question(told.question),
        verdict: told.verdict().map(verdict),
        word: ctx.words.answer_of(answer, told.question),
        line: ctx.words.question_line(ctx.catalogue(), answer, told.question),
    };
    asked.map(one).collect()
}

/// The footprint's figures with their change against the bare machine.
pub fn figures(ctx: Ctx, answer: &Answer) -> Vec<Figure> {
    let known = footprint_figures(&answer.footprint, &answer.bare);
    let one = |name: &str| {
        let figure = known.iter().find(|figure| figure.name == name);
        Figure {
            name: name.to_owned(),
            value: figure.and_then(|figure| figure.value.as_ref()).map(|value| say::value(ctx, value)),
            change: figure.and_then(|figure| figure.change.as_ref()).map(|change| say::change(ctx, change)),
        }
    };
    FIGURES.into_iter().map(one).collect()
}

/// The cautions of the answer, the planning aid first.
pub fn cautions(ctx: Ctx, answer: &Answer) -> Vec<Caution> {
    let one = |&caution| Caution { title: ctx.words.caution_title(caution), body: ctx.words.caution(caution) };
    answer.cautions.iter().map(one).collect()
}
