//! Which request is on its way, and which waits: the latest wins.

use fitup_view::{Ask, Sheet};

/// Requests on their way to the engine.
#[derive(Debug, Default)]
pub struct Queue {
    number: u32,
    /// The latest that was wanted, in the form that its answer gives it.
    wanted: Option<Ask>,
    /// The one whose first part has not come yet.
    sent: Option<Ask>,
    waits: bool,
}

impl Queue {
    /// Wants a request answered; the request to send now, if the way is free. What is answered already is not asked again.
    pub fn want(&mut self, ask: Ask) -> Option<Ask> {
        if self.wanted.as_ref() == Some(&ask) {
            return None;
        }
        self.wanted = Some(ask);
        if self.sent.is_some() {
            self.waits = true;
            return None;
        }
        self.send()
    }

    /// The latest that was wanted, to be sent to an engine that has just begun.
    pub fn again(&mut self) -> Option<Ask> {
        self.sent = None;
        self.send()
    }

    /// Whether a part of an answer is of the latest request that was sent.
    pub const fn is_of_latest(&self, number: u32) -> bool {
        number == self.number
    }

    /// The first part has come: the request that it answers.
    pub fn answered(&mut self, sheet: &Sheet) -> Option<Ask> {
        let ask = self.sent.take()?;
        if !self.waits {
            let build = sheet.outcomes.last().map_or(&sheet.opened, |outcome| &outcome.build);
            self.wanted = Some(Ask { build: build.clone(), edits: Vec::new(), number: 0, ..ask.clone() });
        }
        Some(ask)
    }

    /// What waits, once the way is free.
    pub fn next(&mut self) -> Option<Ask> {
        if self.waits { self.send() } else { None }
    }

    /// Another catalogue: what was answered has to be asked again.
    pub fn forget(&mut self) {
        self.wanted = None;
        self.waits = false;
    }

    /// Whether an answer is still out.
    pub const fn is_out(&self) -> bool {
        self.sent.is_some()
    }

    fn send(&mut self) -> Option<Ask> {
        let ask = self.wanted.clone()?;
        self.number = self.number.wrapping_add(1);
        self.waits = false;
        self.sent = Some(ask.clone());
        Some(Ask { number: self.number, ..ask })
    }
}

#[cfg(test)]
mod tests {
    use fitup_view::{Edit, Field, Outcome, Picture, Step, Title, Verdict};

    use super::*;

    fn of(build: &str, edits: Vec<Edit>) -> Ask {
        Ask { build: build.into(), edits, ..Ask::default() }
    }

    fn sheet(opened: &str, builds: &[&str]) -> Sheet {
        let outcome = |build: &&str| Outcome { build: (*build).into(), refusal: None };
        Sheet {
            opened: opened.into(),
            outcomes: builds.iter().map(outcome).collect(),
            notice: None,
            catalogue: String::new(),
            problems: None,
            begun: false,
            headline: None,
            answers: Vec::new(),
            title: Title::default(),
            figures: Vec::new(),
            steps: Vec::new(),
            also: Vec::new(),
            field: Field::Drawing(Picture::default()),
            options: None,
            rows: Vec::new(),
            worst: Verdict::BoltsUp,
            parts: None,
            cautions: Vec::new(),
            own_notice: String::new(),
        }
    }

    #[test]
    fn of_many_that_wait_only_the_latest_is_sent() {
        let mut queue = Queue::default();
        assert_eq!(queue.want(of("a", vec![])).map(|ask| ask.number), Some(1));
        assert_eq!((queue.want(of("b", vec![])), queue.want(of("c", vec![]))), (None, None));
        assert_eq!(queue.answered(&sheet("a", &[])).map(|ask| ask.build), Some("a".into()));
        let sent = queue.next().expect("one waits");
        assert_eq!((sent.number, sent.build.as_str()), (2, "c"));
        assert!(!queue.is_of_latest(1) && queue.is_of_latest(2));
        assert_eq!(queue.next(), None);
    }

    #[test]
    fn what_an_answer_has_given_is_not_asked_again() {
        let mut queue = Queue::default();
        queue.want(of("a", vec![Edit::Clear(Step::Seat)]));
        queue.answered(&sheet("a", &["b"]));
        assert_eq!(queue.want(of("b", vec![])), None, "the page stands where the answer has put it");
        queue.forget();
        assert!(queue.want(of("b", vec![])).is_some());
    }

    #[test]
    fn a_new_engine_is_asked_for_the_latest_whatever_came_before() {
        let mut queue = Queue::default();
        queue.want(of("a", vec![]));
        queue.want(of("b", vec![]));
        assert_eq!(queue.again().map(|ask| ask.build), Some("b".into()));
        assert!(queue.is_out());
    }
}
