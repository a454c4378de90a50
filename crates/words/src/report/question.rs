//! The answers to the four questions and the headline as plain data.

use fitup_core::finding::Question;
use fitup_core::fit::Answer;
use fitup_core::item::Catalogue;
use fitup_core::search::Headline;
use serde::Serialize;

use super::finding::verdict_name;
use crate::Words;

/// The answer to one question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct QuestionReport {
    /// `fit`, `work`, `travel`, `site`.
    pub question: &'static str,
    /// The question in a word.
    pub question_text: String,
    /// The worst verdict of its findings; nothing as long as it is not decided.
    pub verdict: Option<&'static str>,
    /// The answer in the question's own words.
    pub answer: String,
    /// Index of the finding that decides in `findings`, counted from 0.
    pub finding: Option<usize>,
    /// The answer in a few words, with its figure.
    pub line: Option<String>,
}

/// What stands over the answer: for a complete build its own answer, otherwise the best still reachable.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct HeadlineReport {
    /// Whether it is an answer; otherwise it is only what can still come of it.
    pub decided: bool,
    /// The worse of fit and work; nothing if nothing completes the build.
    pub verdict: Option<&'static str>,
    /// Which of `fit` and `work` decides.
    pub question: Option<&'static str>,
    /// Code of the finding that keeps it from being better.
    pub finding: Option<&'static str>,
    /// The answer in a word or two.
    pub text: String,
    /// Why, in a few words.
    pub reason: String,
}

pub(super) fn answers(words: &Words, catalogue: &Catalogue, answer: &Answer) -> Vec<QuestionReport> {
    let report = |question: Question| {
        let told = answer.to(question);
        QuestionReport {
            question: question.word(),
            question_text: words.question(question),
            verdict: told.verdict().map(verdict_name),
            answer: words.answer_of(answer, question),
            finding: told.finding.filter(|_| told.is_decided),
            line: words.question_line(catalogue, answer, question),
        }
    };
    Question::ALL.map(report).into()
}

pub(super) fn headline(words: &Words, catalogue: &Catalogue, headline: Option<&Headline>) -> HeadlineReport {
    let told = words.headline(catalogue, headline);
    HeadlineReport {
        decided: headline.is_some_and(|headline| headline.is_decided),
        verdict: headline.map(|headline| verdict_name(headline.verdict())),
        question: headline.map(|headline| headline.question().word()),
        finding: headline.and_then(Headline::reason).map(|finding| finding.code),
        text: told.word,
        reason: told.reason,
    }
}
