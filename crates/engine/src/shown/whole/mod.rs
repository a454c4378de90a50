//! The finished machine as a whole, one view a file: each asks the core for its figures and the drawing for its picture.

mod digging;
mod loading;
mod loading_figures;
mod site;
mod weight;

pub use loading::later_facts;

use fitup_core::build::Build;
use fitup_core::finding::Question;
use fitup_core::fit::Answer;
use fitup_view::{Chooser, Look, Picture, Verdict, View, Whole};

use super::ctx::{Ctx, verdict};
use crate::known::Shortest;

/// The view that is looked at; of the two builds the first is at hand and the second tried.
pub fn whole(
    ctx: Ctx,
    (build, tried): (&Build, &Build),
    answer: &Answer,
    look: &Look,
    shortest: Option<Shortest>,
) -> Whole {
    let shown = match look.view {
        View::Weight => weight::weight(ctx, (build, tried), answer, look),
        View::Digging => digging::digging(ctx, (build, tried), answer, look),
        View::Site => site::site(ctx, tried, answer, look),
        _ => loading::loading(ctx, tried, answer, look, shortest),
    };
    Whole { answer: answered(ctx, answer, look.view), ..shown }
}

/// The answer to the question that a view is about, with its figure.
fn answered(ctx: Ctx, answer: &Answer, view: View) -> Option<(Verdict, String, String)> {
    let question = match view {
        View::Loading => Question::Travel,
        View::Site => Question::Site,
        _ => return None,
    };
    let told = answer.to(question).verdict()?;
    let line = ctx.words.question_line(ctx.catalogue(), answer, question).unwrap_or_default();
    Some((verdict(told), ctx.words.answer_of(answer, question), line))
}

/// The view while there is nothing to draw: what is missing, and what can be chosen.
fn bare(ctx: Ctx, missing: &str, chooser: Option<Chooser>) -> Whole {
    let picture = Picture { missing: Some(ctx.text(missing)), ..Picture::default() };
    Whole { picture, chooser, ..Whole::default() }
}
