//! What is wrong with a catalogue, in words.

use fitup_catalogue::{Code, Problem, Severity};
use fitup_view as view;
use fitup_words::Words;

/// Problems listed at most; the rest are counted.
const LISTED: usize = 50;

/// The mistakes of a catalogue; of one of a newer format, only that it is.
pub fn problems(words: &Words, all: &[Problem]) -> view::Problems {
    let newer = all.iter().find(|problem| problem.code == Code::NewerFormat);
    let errors: Vec<&Problem> = match newer {
        Some(problem) => vec![problem],
        None => all.iter().filter(|problem| problem.code.severity() == Severity::Error).collect(),
    };
    let one = |problem: &&Problem| {
        let told = words.problem(problem);
        view::Problem { place: told.place, sentence: told.sentence, mend: told.mend }
    };
    let more = errors.len().checked_sub(LISTED).filter(|&more| more > 0);
    view::Problems {
        newer: newer.is_some(),
        listed: errors.iter().take(LISTED).map(one).collect(),
        more: more.map(|more| words.ui("ui-more-problems", &[("count", more.into())])),
    }
}
