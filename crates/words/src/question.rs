//! The four questions and the headline in words.

use fitup_core::finding::{Finding, Question, Verdict};
use fitup_core::fit::Answer;
use fitup_core::item::Catalogue;
use fitup_core::search::Headline;

use crate::tell::Wording;
use crate::{Arg, Span, Words, text};

/// What stands over an answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HeadlineText {
    /// What shape and colour show; `None` as long as nothing is decided.
    pub verdict: Option<Verdict>,
    /// The answer in a word or two, of the question that decides.
    pub word: String,
    /// Why, in a few words.
    pub reason: String,
}

impl Words {
    /// The question in a word: "Fit".
    pub fn question(&self, question: Question) -> String {
        self.ui(&format!("question-{}", question.word()), &[])
    }

    /// The answer to a question in its own words; `None` = not decided yet.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::finding::{Question, Verdict};
    /// use fitup_words::{Lang, Units, Words};
    /// let words = Words::new(Lang::En, Units::Metric);
    /// assert_eq!(words.answer(Question::Travel, Some(Verdict::WontMount)), "Won’t load");
    /// assert_eq!(words.answer(Question::Fit, None), "not decided yet");
    /// ```
    pub fn answer(&self, question: Question, verdict: Option<Verdict>) -> String {
        let Some(verdict) = verdict else { return self.ui("question-open", &[]) };
        let way = match verdict {
            Verdict::BoltsUp => "yes",
            Verdict::BoltsUpWithWork => "with",
            Verdict::CheckFirst => "check",
            Verdict::WontMount => "no",
        };
        self.ui(&format!("{}-{way}", question.word()), &[("what", Arg::Choice("none".to_owned()))])
    }

    /// The answer to a question in its own words, with what it takes: "Fit to work with front ballast".
    pub fn answer_of(&self, answer: &Answer, question: Question) -> String {
        self.answer_with(answer, question, answer.to(question).verdict())
    }

    fn answer_with(&self, answer: &Answer, question: Question, verdict: Option<Verdict>) -> String {
        if verdict != Some(Verdict::BoltsUpWithWork) {
            return self.answer(question, verdict);
        }
        let asks = |finding: &&Finding| finding.question == question && finding.verdict == Verdict::BoltsUpWithWork;
        let mut what: Vec<String> = Vec::new();
        for key in answer.findings.iter().filter(asks).map(|finding| format!("{}.with", finding.code)) {
            let text = if self.has(&key) { self.ui(&key, &[]) } else { continue };
            if !what.contains(&text) {
                what.push(text);
            }
        }
        if what.is_empty() {
            return self.answer(question, verdict);
        }
        self.ui(&format!("{}-with", question.word()), &[("what", self.reader().list(&what).into())])
    }

    /// The word before a single finding, whatever it is about: "In order", "To do".
    pub fn finding_word(&self, verdict: Verdict) -> String {
        let key = match verdict {
            Verdict::BoltsUp => "finding-in-order",
            Verdict::BoltsUpWithWork => "finding-with-work",
            Verdict::CheckFirst => "finding-check",
            Verdict::WontMount => "finding-no",
        };
        self.ui(key, &[])
    }

    /// The answer to a question in a few words with its figure: the finding that decides; where all is in order, what has
    /// the least to spare, and how many points there are. Nothing as long as it is not decided.
    pub fn question_line(&self, catalogue: &Catalogue, answer: &Answer, question: Question) -> Option<String> {
        let told = answer.to(question);
        let verdict = told.verdict()?;
        match told.finding.and_then(|index| answer.findings.get(index)) {
            Some(finding) if verdict > Verdict::BoltsUp => Some(self.why(catalogue, finding)),
            _ => {
                let count = answer.findings.iter().filter(|finding| finding.question == question).count();
                let count = self.ui("question-in-order", &[("count", count.into())]);
                Some(match answer.tightest(question) {
                    Some(tightest) => {
                        let tightest = self.why(catalogue, tightest);
                        self.ui("question-tightest", &[("tightest", tightest.into()), ("count", count.into())])
                    }
                    None => count,
                })
            }
        }
    }

    /// A finding as the reason of an answer, with its figure where it has one: the few words, or the sentence where only that
    /// carries the figure. Without a full stop.
    pub fn why(&self, catalogue: &Catalogue, finding: &Finding) -> String {
        let has_figure = |spans: &[Span]| spans.iter().any(|span| matches!(span, Span::Figure { .. }));
        let few = self.sentence(catalogue, &[finding], Wording::Short);
        if has_figure(&few) {
            return text(&few);
        }
        let sentence = self.sentence(catalogue, &[finding], Wording::Shopper);
        let told = text(if has_figure(&sentence) { &sentence } else { &few });
        told.trim_end_matches('.').to_owned()
    }

    /// What an option of a step, or a build that is not complete, still leads to: "At best: Bolts up". A no is a no.
    pub fn reached(&self, question: Question, verdict: Verdict, is_decided: bool) -> String {
        self.as_reached(self.answer(question, Some(verdict)), verdict, is_decided)
    }

    fn as_reached(&self, word: String, verdict: Verdict, is_decided: bool) -> String {
        if is_decided || verdict == Verdict::WontMount {
            return word;
        }
        self.ui("headline-at-best", &[("verdict", word.into())])
    }

    /// The headline of an answer; `None` if the catalogue has nothing to complete the build with.
    pub fn headline(&self, catalogue: &Catalogue, headline: Option<&Headline>) -> HeadlineText {
        let open = |reason| HeadlineText { verdict: None, word: self.ui("headline-open", &[]), reason };
        let Some(headline) = headline else { return open(self.ui("ui-incomplete", &[])) };
        let (verdict, question) = (headline.verdict(), headline.question());
        let why = headline.reason().map(|finding| self.why(catalogue, finding));
        let word = self.answer_with(&headline.answer, question, Some(verdict));
        let best = self.as_reached(word, verdict, headline.is_decided);
        if headline.is_decided || verdict == Verdict::WontMount {
            let reason = why.unwrap_or_else(|| self.verdict_meaning(verdict));
            return HeadlineText { verdict: Some(verdict), word: best, reason };
        }
        open(why.map_or_else(|| best.clone(), |why| format!("{best}. {why}")))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Lang, Units};

    #[test]
    fn every_question_has_its_own_words_in_every_language() {
        for lang in Lang::ALL {
            let words = Words::new(lang, Units::Metric);
            for question in Question::ALL {
                let mut said = vec![words.question(question), words.answer(question, None)];
                for verdict in Verdict::ALL {
                    said.push(words.answer(question, Some(verdict)));
                    said.push(words.reached(question, verdict, false));
                    said.push(words.finding_word(verdict));
                }
                for text in &said {
                    let is_key = ["question-", "fit-", "work-", "travel-", "site-", "finding-", "headline-"];
                    assert!(!text.is_empty() && !is_key.iter().any(|key| text.starts_with(key)), "{lang:?}: {text}");
                }
            }
            let no = Question::ALL.map(|question| words.answer(question, Some(Verdict::WontMount)));
            assert!((1..4).all(|at| !no[..at].contains(&no[at])), "{lang:?}: {no:?}");
        }
    }

    #[test]
    fn what_is_open_is_told_as_the_best_still_reachable_and_a_no_as_a_no() {
        let words = Words::new(Lang::En, Units::Metric);
        let reached = |verdict, decided| words.reached(Question::Work, verdict, decided);
        assert_eq!(reached(Verdict::BoltsUp, false), "At best: Fit to work");
        assert_eq!(reached(Verdict::BoltsUp, true), "Fit to work");
        assert_eq!(reached(Verdict::WontMount, false), "Not fit to work");
    }
}
