//! The engine as a page uses it: it is asked, and answers part by part, the quick part first.

use std::rc::Rc;

use fitup_catalogue::{Code, Problem, json, read_bytes};
use fitup_core::build::Build;
use fitup_core::finding::Verdict;
use fitup_core::fit::{Answer, Desk, shortest_ramps};
use fitup_core::item::Catalogue;
use fitup_core::search::{Headline, Searcher, SetOrder, headline};
use fitup_view::{Ask, Edit, Notice, Outcome, Part, Reached, Reply, Step, Supplied, View};
use fitup_words::{Lang, Units, Words};

use crate::api::ProblemReport;
use crate::change::{edited, step_of};
use crate::known::{Known, Led};
use crate::link;
use crate::shown::{self, Came, Ctx, Shown};
use crate::spoken::Spoken;

/// The engine.
pub struct Engine {
    spoken: Spoken,
    desk: Rc<Desk>,
    searcher: Searcher<Rc<Desk>>,
    has_catalogue: bool,
    problems: Vec<Problem>,
    known: Known,
    work: Option<Work>,
}

/// A request that is being answered.
struct Work {
    ask: Ask,
    words: Rc<Words>,
    build: Build,
    tried: Build,
    answer: Rc<Answer>,
    next: Stage,
}

/// What comes next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Stage {
    Reached,
    Sets,
    Facts,
    Remedies,
    Change,
    Away,
    Done,
}

impl Default for Engine {
    fn default() -> Self {
        let desk = Rc::new(Desk::new(Catalogue::default()));
        Self {
            spoken: Spoken::default(),
            searcher: Searcher::new(Rc::clone(&desk)),
            desk,
            has_catalogue: false,
            problems: Vec::new(),
            known: Known::default(),
            work: None,
        }
    }
}

impl Engine {
    /// Learns a language from its texts; false for one that is not known.
    pub fn teach(&mut self, lang: &str, texts: String) -> bool {
        self.spoken.teach(lang, texts)
    }

    /// Reads a catalogue. One that cannot be used leaves the one before in use.
    pub fn read(&mut self, bytes: &[u8]) -> Supplied {
        let reading = read_bytes(bytes);
        let reports: Vec<ProblemReport> = reading.problems.iter().map(ProblemReport::of).collect();
        let supplied = Supplied {
            is_usable: reading.catalogue.is_some(),
            is_newer: reading.problems.iter().any(|problem| problem.code == Code::NewerFormat),
            problems: json(&reports),
        };
        self.work = None;
        match reading.catalogue {
            Some(catalogue) => {
                self.desk = Rc::new(Desk::new(catalogue));
                self.searcher = Searcher::new(Rc::clone(&self.desk));
                self.known = Known::default();
                self.has_catalogue = true;
                self.problems.clear();
            }
            None => self.problems = reading.problems,
        }
        supplied
    }

    /// Takes a request up in place of the one before, and gives the first part of the answer: the sheet. Nothing as long as
    /// no language has been taught.
    pub fn ask(&mut self, ask: Ask) -> Option<Reply> {
        self.work = None;
        let words = self.spoken.words(lang_of(ask.reader.lang), units_of(ask.reader.units))?;
        let catalogue = self.desk.catalogue();
        let opened = link::opened(catalogue, &ask.build);
        let notice = match opened.trouble {
            Some(trouble) => Some(Notice::Link(trouble)),
            None if opened.missing.is_empty() => None,
            None => Some(Notice::Missing(opened.missing.into_iter().map(|id| not_here(&words, id)).collect())),
        };
        let opened_text = link::text_of(catalogue, &opened.build);
        let mut build = opened.build;
        let mut outcomes = Vec::new();
        for edit in &ask.edits {
            let mut refusal = None;
            match edited(self.desk.standing(&build.side), &words, &ask.look, &build, edit) {
                Ok(after) => build = after,
                Err(refused) => refusal = Some(refused.shown()),
            }
            outcomes.push(Outcome { build: link::text_of(catalogue, &build), refusal });
        }
        let tried = ask
            .tried
            .as_ref()
            .and_then(|edit| edited(self.desk.standing(&build.side), &words, &ask.look, &build, edit).ok());
        let answer = self.known.answer(&self.desk, &build);
        let problems = (!self.problems.is_empty()).then(|| shown::problems(&words, &self.problems));
        let number = ask.number;
        // A slider that moves is answered with the picture alone.
        let next = if ask.tried.is_some() { Stage::Done } else { Stage::Reached };
        let work = Work { words, tried: tried.unwrap_or_else(|| build.clone()), build, answer, ask, next };
        let part = self.sheet(&work, Came { opened: opened_text, outcomes, notice, problems });
        self.work = self.has_catalogue.then_some(work);
        Some(Reply { number, part })
    }

    /// The next part of the answer; `None` once there is nothing more to say.
    pub fn step(&mut self) -> Option<Reply> {
        let mut work = self.work.take()?;
        loop {
            let (stage, number) = (work.next, work.ask.number);
            let (part, next) = match stage {
                Stage::Reached => (self.reached(&work), Stage::Sets),
                Stage::Sets => (self.sets(&work), Stage::Facts),
                Stage::Facts => (self.facts(&work), Stage::Remedies),
                Stage::Remedies => (self.remedies(&work), Stage::Change),
                Stage::Change => (self.change(&work), Stage::Away),
                Stage::Away => (self.away(&work), Stage::Done),
                Stage::Done => return None,
            };
            work.next = next;
            if let Some(part) = part {
                self.work = Some(work);
                return Some(Reply { number, part });
            }
        }
    }

    fn sheet(&mut self, work: &Work, came: Came) -> Part {
        let Work { ask, words, build, tried, answer, .. } = work;
        let ctx = Ctx { words, desk: self.desk.standing(&build.side) };
        let led = self.known.led.of(build);
        let decided = answer.complete.then(|| Headline::decided(build.clone(), Answer::clone(answer)));
        // They are tried one by one, which takes its time: only where they are looked at.
        let is_asked = ask.look.opened.is_some() || ask.look.view == View::Measure;
        let ranked = if is_asked { self.known.ranked(&self.desk, build, answer) } else { Rc::default() };
        let sets = self.known.sets.of(&self.set_key(work));
        let headline = led.as_ref().and_then(|led| led.headline.as_deref()).or(decided.as_ref());
        let shown = Shown {
            build,
            tried,
            answer,
            look: &ask.look,
            reach: led.as_ref().map(|led| &*led.reach),
            headline,
            ranked: &ranked,
            shortest: self.known.shortest.of(build),
            sets: sets.as_deref(),
        };
        let mut sheet = shown::sheet(ctx, &shown, came);
        if let (Some(led), None) = (&led, &ask.tried) {
            sheet.options = self.options(work, led);
        }
        Part::Sheet(Box::new(sheet))
    }

    /// The options of the open step.
    fn options(&mut self, work: &Work, led: &Led) -> Option<fitup_view::Options> {
        let (look, reader) = (&work.ask.look, work.ask.reader);
        let step = look.step?;
        let key = (work.build.clone(), reader, step, look.search.clone(), look.sort, look.cards);
        Some(self.known.list.of(&key).unwrap_or_else(|| {
            let ctx = Ctx { words: &work.words, desk: self.desk.standing(&work.build.side) };
            let reached = shown::Reached { reach: Some(&led.reach), headline: led.headline.as_deref() };
            let options = shown::options(ctx, &work.build, step_of(step), look, reached);
            self.known.list.keep(key, options)
        }))
    }

    fn reached(&mut self, work: &Work) -> Option<Part> {
        if self.known.led.of(&work.build).is_some() {
            return None;
        }
        let reach = Rc::new(self.searcher.reachable(&work.build));
        let best = headline(&mut self.searcher, &work.build).map(Rc::new);
        let led = self.known.led.keep(work.build.clone(), Led { reach, headline: best });
        let options = self.options(work, &led);
        let ctx = Ctx { words: &work.words, desk: self.desk.standing(&work.build.side) };
        let begun = work.build != Build::default();
        let stands = !work.answer.stack.placed.is_empty();
        let is_drawn = matches!(work.ask.look.view, View::Fit | View::Parts);
        Some(Part::Reached(Reached {
            headline: begun.then(|| ctx.headline(led.headline.as_deref())),
            options,
            ghost: (is_drawn && !stands)
                .then(|| shown::drawing(ctx, &work.build, &work.answer, &work.ask.look, Some(&led.reach))),
        }))
    }

    /// Of which build the sets are, and what they are ordered by.
    fn set_key(&self, work: &Work) -> (Build, SetOrder) {
        let look = &work.ask.look;
        let free = |build: Build, &step: &Step| {
            edited(&self.desk, &work.words, look, &build, &Edit::Clear(step)).unwrap_or(build)
        };
        (look.set_free.iter().fold(work.build.clone(), free), shown::ordered(look.set_order))
    }

    fn sets(&mut self, work: &Work) -> Option<Part> {
        if work.ask.look.view != View::Sets {
            return None;
        }
        let key = self.set_key(work);
        if self.known.sets.of(&key).is_some() {
            return None;
        }
        let found = Rc::new(self.searcher.sets(&key.0, key.1));
        let found = self.known.sets.keep(key, found);
        let ctx = Ctx { words: &work.words, desk: &self.desk };
        Some(Part::Sets(Box::new(shown::sets(ctx, &work.build, &work.ask.look, Some(&found)))))
    }

    fn facts(&mut self, work: &Work) -> Option<Part> {
        if work.ask.look.view != View::Loading || self.known.shortest.of(&work.build).is_some() {
            return None;
        }
        let shortest = self.known.shortest.keep(work.build.clone(), shortest_ramps(&self.desk, &work.build));
        let ctx = Ctx { words: &work.words, desk: self.desk.standing(&work.build.side) };
        shown::later_facts(ctx, &work.build, &work.ask.look, shortest).map(Part::Facts)
    }

    fn remedies(&mut self, work: &Work) -> Option<Part> {
        if work.answer.findings.is_empty()
            || work.answer.rank().1 == Verdict::BoltsUp
            || work.ask.look.view == View::Parts
        {
            return None;
        }
        let key = (work.build.clone(), work.ask.reader);
        let found = self.known.remedies.of(&key).unwrap_or_else(|| {
            let found =
                shown::remedies(Ctx { words: &work.words, desk: self.desk.standing(&work.build.side) }, &work.build);
            self.known.remedies.keep(key, found)
        });
        Some(Part::Remedies(found))
    }

    fn change(&mut self, work: &Work) -> Option<Part> {
        let key = Some((work.build.clone(), work.ask.reader));
        if self.known.told == key {
            return None;
        }
        self.known.told = key;
        let led = self.known.led.of(&work.build)?;
        let ctx = Ctx { words: &work.words, desk: self.desk.standing(&work.build.side) };
        Some(Part::Change(shown::change(ctx, &work.build, &work.answer, led.headline.as_deref())))
    }

    /// What is made of a build to be taken along comes last: nothing on the screen waits for it.
    fn away(&mut self, work: &Work) -> Option<Part> {
        let here = work.ask.look.here.as_ref()?;
        let led = self.known.led.of(&work.build).filter(|_| work.build != Build::default())?;
        let key = (work.build.clone(), work.ask.reader, here.clone());
        let ranked = self.known.ranked(&self.desk, &work.build, &work.answer);
        let made = self.known.away.of(&key).unwrap_or_else(|| {
            let ctx = Ctx { words: &work.words, desk: self.desk.standing(&work.build.side) };
            let headline = led.headline.as_deref();
            let taken = shown::Taken { build: &work.build, answer: &work.answer, headline, ranked: &ranked, here };
            self.known.away.keep(key, shown::away(ctx, taken))
        });
        Some(Part::Away(Box::new(made)))
    }
}

fn not_here(words: &Words, id: String) -> String {
    words.ui("ui-not-in-catalogue", &[("id", id.into())])
}

fn lang_of(lang: fitup_view::Lang) -> Lang {
    Lang::from_tag(lang.name()).unwrap_or_default()
}

fn units_of(units: fitup_view::Units) -> Units {
    Units::from_name(units.name()).unwrap_or_default()
}
