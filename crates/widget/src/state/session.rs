//! One widget's state and what each action makes of it.

mod jobs;
mod pins;

use std::rc::Rc;

use fitup_view::{
    Ask, Away, Desk, DrawingView, Edit, Field, Headline, Lang, Look, Observed, Options, Part, Problems, Reader,
    Remedies, Sheet, Slide, Sort, Step, View, Way,
};

use super::{Action, Address, Bench, EngineTrouble, History, Job, Memo, Notice, Point, Preferences, Refused, Trouble};

/// Cards that are laid out at first, and that are added each time the list is scrolled to its end.
const BATCH: u32 = 40;

/// How far the catalogue has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Supply {
    /// Nothing asked for yet.
    #[default]
    Idle,
    /// On its way: bytes so far, and of how many if that is known.
    Loading(u64, Option<u64>),
    /// Settled, well or badly.
    Settled,
}

/// A build that is about to be opened.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Arriving {
    /// As a link carries it.
    link: Rc<str>,
    /// Whether what came before it is forgotten.
    afresh: bool,
    /// What is written to it, if that is known already.
    memo: Option<Rc<Memo>>,
}

/// Everything one widget remembers.
#[derive(Debug, Clone, PartialEq, Default)]
#[expect(clippy::struct_excessive_bools, reason = "each is a matter of its own, and they go together in any way")]
pub struct Session {
    /// How far the catalogue has come.
    pub supply: Supply,
    /// Whether there is a catalogue to work with; a failed reload leaves the last good one.
    pub usable: bool,
    /// How many catalogues were read.
    pub read: u32,
    /// Why the last load failed.
    pub trouble: Option<Trouble>,
    /// What is wrong with the catalogue that was read last.
    pub problems: Option<Problems>,
    /// Why there is no engine.
    pub no_engine: Option<EngineTrouble>,
    /// When the copy of the catalogue came that stands in for an answer of the network.
    pub kept_copy: Option<String>,
    /// Builds.
    pub history: History,
    /// What was done to the build and has not been answered yet.
    pending: Vec<Edit>,
    /// The build that is about to be opened, once there is a catalogue to read it against.
    arriving: Option<Arriving>,
    /// The link the page came with, while not all of it could be read and nothing has been edited since: the address then
    /// keeps it, so that nothing is lost.
    kept: Option<Rc<str>>,
    /// What is tried while a slider moves.
    tried: Option<Edit>,
    /// The last entry, if it did nothing.
    pub refused: Option<Refused>,
    /// What stays in hand from one measurement to the next.
    pub bench: Bench,
    /// Something to tell.
    pub notice: Option<Notice>,
    /// What is looked at.
    pub look: Look,
    /// What the reader chose for the eyes.
    pub preferences: Preferences,
    /// The language shown while the one that is wanted could not be loaded.
    pub stand_in: Option<Lang>,
    /// Whether a comparison shows only what differs.
    pub differences_only: bool,
    /// Whether the drawing is folded in where there is little room.
    pub folded: bool,
    /// The jobs on the device, newest last.
    jobs: Vec<Job>,
    /// The job that was deleted last.
    deleted: Option<Job>,
    /// The last id that was given out; `None` where no jobs are kept.
    next_id: Option<u64>,
    /// Whether it was said that the device keeps no more.
    told_not_kept: bool,
    /// Whether what is taken along is open.
    pub taking: bool,
    /// What is taken along, as it was made last.
    away: Option<Rc<Away>>,
    /// What the engine said last: the sheet …
    pub sheet: Option<Rc<Sheet>>,
    /// … what stands over the answer …
    pub headline: Option<Headline>,
    /// … the options of the open step …
    pub options: Option<Rc<Options>>,
    /// … and what would help.
    pub remedies: Rc<Remedies>,
}

impl Session {
    /// A session that begins with what the reader chose at an earlier visit.
    pub fn beginning_with(preferences: Preferences) -> Self {
        Self { preferences, look: Look { cards: BATCH, ..Look::default() }, ..Self::default() }
    }

    /// The language to show, if the reader chose one that is to be had.
    pub fn lang(&self) -> Option<Lang> {
        self.stand_in.or(self.preferences.lang)
    }

    /// Where the page should stand.
    pub fn address(&self) -> Address {
        let link = match (&self.kept, &self.arriving) {
            (Some(kept), _) => kept,
            (None, Some(arriving)) => &arriving.link,
            (None, None) => self.history.present(),
        };
        Address { link: (!link.is_empty()).then(|| link.to_string()), step: self.look.step, view: self.look.view }
    }

    /// What the engine is asked; of an engine without a catalogue only what is wrong with the one that was read.
    pub fn ask(&self, reader: Reader) -> Ask {
        if !self.usable {
            return Ask { reader, ..Ask::default() };
        }
        Ask {
            number: 0,
            reader,
            build: self.base().to_string(),
            edits: self.pending.clone(),
            tried: self.tried.clone(),
            look: self.look.clone(),
        }
    }

    /// The remedies, if they are for the build at hand.
    pub fn remedies_at_hand(&self) -> Option<&Rc<Remedies>> {
        Some(&self.remedies).filter(|remedies| *remedies.of == **self.history.present())
    }

    /// What is taken along, once it is made of the build at hand.
    pub fn away_at_hand(&self) -> Option<&Rc<Away>> {
        self.away.as_ref().filter(|away| *away.of == **self.history.present())
    }

    /// Where a slider is held: as it is tried, as it was let go and not answered yet, or as it moves what is looked at.
    pub fn held(&self, slide: Slide) -> Option<f64> {
        let slid = |edit: &Edit| match *edit {
            Edit::Slide(one, value) if one == slide => Some(value),
            _ => None,
        };
        let tried = self.tried.as_ref().and_then(slid);
        tried.or_else(|| self.pending.iter().rev().find_map(slid)).or_else(|| self.look.place(slide))
    }

    /// The session after an action.
    #[must_use]
    pub fn after(&self, action: Action) -> Self {
        let mut next = self.clone();
        next.react(action);
        next
    }

    /// The build that what is done is done to.
    fn base(&self) -> &Rc<str> {
        self.arriving.as_ref().map_or(self.history.present(), |arriving| &arriving.link)
    }

    fn react(&mut self, action: Action) {
        match action {
            Action::Loading => self.supply = Supply::Loading(0, None),
            Action::Progress(so_far, of) => self.supply = Supply::Loading(so_far, of),
            Action::Kept(copy) => self.kept_copy = copy,
            Action::Clear => self.clear(),
            Action::Read(address, read) => {
                self.supply = Supply::Settled;
                self.read += 1;
                let broken = || Trouble::Broken { address, problems: read.problems, is_newer: read.is_newer };
                self.trouble = (!read.is_usable).then(broken);
                if read.is_usable {
                    self.take_catalogue();
                }
            }
            Action::Failed(trouble) => {
                self.supply = Supply::Settled;
                self.trouble = Some(trouble);
            }
            Action::Said(part, asked) => self.hear(part, &asked),
            Action::NoEngine(trouble) => self.no_engine = Some(trouble),
            Action::Retry => self.no_engine = None,
            Action::Arrive(address) => self.arrive(address),
            Action::Edit(edit) => {
                self.tried = None;
                self.refused = None;
                if matches!(edit, Edit::Enter { .. }) {
                    self.go_on();
                }
                if self.usable {
                    self.pending.push(edit);
                }
            }
            Action::Try(edit) => self.tried = Some(edit),
            Action::Undo => self.go(History::undo),
            Action::Redo => self.go(History::redo),
            Action::Theme(theme) => self.preferences.theme = Some(theme),
            Action::Speak(lang) => {
                self.preferences.lang = Some(lang);
                self.stand_in = None;
            }
            Action::Unspoken(lang) => {
                // English from now on, so that choosing the language again asks for it again.
                self.stand_in = Some(Lang::En);
                self.notice = Some(Notice::Unspoken(lang));
            }
            Action::MeasureIn(units) => self.preferences.units = Some(units),
            Action::Fold(folded) => self.folded = folded,
            Action::With(tool) => self.bench.tool = Some(tool),
            Action::In(unit) => self.bench.unit = Some(unit),
            Action::Observe(at, kind, found) => {
                self.go_on();
                self.look.observed.take(at, kind, found);
            }
            Action::Recognise(edit) => {
                self.react(Action::Edit(edit));
                self.react(Action::Turn(View::Fit));
            }
            Action::Pin => self.pin(self.history.present().to_string()),
            Action::PinLink(link) => self.pin(link),
            Action::DifferencesOnly => self.differences_only = !self.differences_only,
            Action::Correct => self.refused = None,
            Action::Task(task) => {
                self.refused = None;
                self.look.tasks = vec![task];
            }
            Action::TakeAway(open) => self.taking = open,
            Action::KnowJobs(jobs, seed) => self.know_jobs(jobs, seed),
            Action::JobKept(job) => self.job_kept(job),
            Action::OpenJob(id) => self.open_job(&id),
            Action::DeleteJob(id) => self.delete_job(&id),
            Action::BringBack => self.bring_back(),
            Action::TakeJobs(read) => self.take_jobs(read),
            Action::Write(memo) => self.write(memo),
            Action::KeepBuild => self.keep_build(),
            Action::DropBuild(at) => self.drop_build(at),
            // Once is enough: every change would say it again.
            Action::Tell(Some(Notice::NotKept)) if std::mem::replace(&mut self.told_not_kept, true) => {}
            Action::Tell(notice) => self.notice = notice,
            looking => self.turn(looking),
        }
    }

    /// Looks elsewhere: nothing of the build changes.
    fn turn(&mut self, action: Action) {
        let look = &mut self.look;
        match action {
            Action::OpenStep(step) => {
                if look.step != step {
                    look.search.clear();
                    look.cards = BATCH;
                    self.options = None;
                }
                look.step = step;
            }
            Action::Place(slide, value) => look.move_to(slide, Some(value)),
            Action::Way(way) => match way {
                Way::Forwards | Way::Backwards => {
                    look.backwards = Some(way == Way::Backwards);
                    look.move_to(Slide::RampPlace, None);
                }
                Way::OnRamp | Way::OnDeck => look.on_deck = way == Way::OnDeck,
            },
            Action::Room(room) => look.room = Some(room),
            Action::Overlay(room) => look.overlay = Some(room),
            Action::Bench(room) => look.bench = Some(room),
            Action::Mark(photo) => look.photo = photo,
            Action::Connects(kind) => {
                look.tasks.clear();
                look.observed = Observed { kind, found: Vec::new() };
            }
            Action::Unobserve(at, kind) => look.observed.forget(&at, kind),
            Action::List(at, from) => {
                if let Some(list) = look.lists.get_mut(at) {
                    *list = from;
                }
            }
            Action::SetsBy(order) => look.set_order = order,
            Action::Keep(step, is_kept) => {
                look.set_free.retain(|&free| free != step);
                look.set_free.extend((!is_kept).then_some(step));
            }
            Action::Unpin(at) if at < look.pinned.len() => {
                look.pinned.remove(at);
            }
            Action::More => look.cards += BATCH,
            Action::Turn(view) => {
                self.tried = None;
                self.refused = None;
                look.tasks.clear();
                look.view = view;
            }
            Action::Look(drawing) => look.drawing = drawing,
            Action::Open(row) => {
                self.refused = None;
                look.tasks.clear();
                look.opened = row;
            }
            Action::Search(search) => {
                look.cards = BATCH;
                look.search = search;
            }
            Action::Order(sort) => {
                look.cards = BATCH;
                look.sort = sort;
            }
            _ => {}
        }
    }

    /// Once what is at hand on the desk is done, it goes on to what follows.
    fn go_on(&mut self) {
        let Some(sheet) = &self.sheet else { return };
        let opened = || sheet.rows.iter().find_map(|row| row.joint.as_ref()?.desk.as_ref());
        let desk = match &sheet.field {
            Field::Desk(desk) => Some(&**desk),
            Field::Identify(view) => Some(&view.desk),
            _ => opened(),
        };
        self.look.tasks = desk.map(Desk::from_here).unwrap_or_default();
    }

    /// One build back or forward. What has not been answered yet is taken back first.
    fn go(&mut self, way: fn(&mut History)) {
        self.kept = None;
        self.tried = None;
        if self.pending.pop().is_none() {
            way(&mut self.history);
        }
    }

    /// Takes a catalogue in. A build made against the one before is carried over by its ids.
    fn take_catalogue(&mut self) {
        if std::mem::replace(&mut self.usable, true) {
            let link = Rc::clone(self.base());
            let memo = Some(Rc::clone(self.history.memo()));
            self.arriving = Some(Arriving { link, afresh: true, memo });
        }
    }

    /// Whether nothing has been done and nothing chosen since the beginning.
    pub fn is_untouched(&self) -> bool {
        let Look { room, overlay, bench, .. } = self.look;
        let begun = Look { cards: BATCH, room, overlay, bench, ..Look::default() };
        let empty = self.history.present().is_empty() && !self.history.can_undo() && !self.history.can_redo();
        empty && self.pending.is_empty() && self.preferences == Preferences::default() && self.look == begun
    }

    /// Forgets everything but the catalogue and the engine.
    fn clear(&mut self) {
        let Self { supply, usable, read, trouble, problems, no_engine, kept_copy, look, .. } = std::mem::take(self);
        *self = Self {
            supply,
            usable,
            read,
            trouble,
            problems,
            no_engine,
            kept_copy,
            ..Self::beginning_with(Preferences::default())
        };
        self.look.room = look.room;
        self.look.overlay = look.overlay;
        self.look.bench = look.bench;
    }

    /// Stands where an address says; without a catalogue, as soon as there is one.
    fn arrive(&mut self, address: Address) {
        let unchanged = address.link == self.address().link;
        self.look.step = address.step;
        self.look.view = address.view;
        if !unchanged {
            self.kept = None;
            self.pending.clear();
            self.tried = None;
            let link = address.link.unwrap_or_default().into();
            self.arriving = Some(Arriving { link, afresh: false, memo: None });
        }
    }

    /// Takes in what the engine says, unless it speaks of a build that is no longer at hand.
    fn hear(&mut self, part: Part, asked: &Ask) {
        match part {
            Part::Sheet(sheet) if !self.usable => self.problems = sheet.problems,
            Part::Sheet(sheet) => self.show(*sheet, asked),
            Part::Reached(reached) => {
                self.headline = reached.headline;
                self.options = reached.options.map(Rc::new).or(self.options.take());
                let sheet = self.sheet.as_mut().map(Rc::make_mut);
                if let (Some(ghost), Some(sheet)) = (reached.ghost, sheet) {
                    sheet.field = Field::Drawing(ghost);
                }
            }
            Part::Facts(facts) => {
                if let Some(Field::Whole(whole)) = self.sheet.as_mut().map(|sheet| &mut Rc::make_mut(sheet).field) {
                    whole.facts = facts;
                }
            }
            Part::Sets(sets) => {
                if let Some(Field::Sets(shown)) = self.sheet.as_mut().map(|sheet| &mut Rc::make_mut(sheet).field) {
                    *shown = sets;
                }
            }
            Part::Remedies(remedies) => self.remedies = Rc::new(remedies),
            Part::Away(away) => self.away = Some(Rc::new(*away)),
            Part::Change(_) => {}
        }
    }

    fn show(&mut self, mut sheet: Sheet, asked: &Ask) {
        if *asked.build != **self.base() || !self.pending.starts_with(&asked.edits) {
            return;
        }
        self.problems = sheet.problems.take();
        if let Some(arriving) = self.arriving.take() {
            let told = sheet.notice.take().map(Notice::Link);
            self.kept = told.is_some().then_some(arriving.link);
            if told.is_some() || matches!(self.notice, Some(Notice::Link(_))) {
                self.notice = told;
            }
            // Before the first build there is nothing to go back to.
            let is_first = self.history.present().is_empty() && !self.history.can_undo();
            let memo = arriving.memo.unwrap_or_else(|| self.memo_of(&sheet.opened));
            let point = Point { build: sheet.opened.as_str().into(), memo };
            if arriving.afresh || is_first {
                self.history = History::beginning_with(point);
            } else {
                self.history.go_to(point);
            }
        }
        for (outcome, edit) in sheet.outcomes.iter().zip(&asked.edits) {
            self.kept = None;
            let refusal = outcome.refusal.clone();
            self.refused = refusal.map(|refusal| Refused { edit: edit.clone(), refusal });
            if outcome.build.is_empty() {
                // Another job begins where everything was taken out.
                self.history.go_to(Point::bare(""));
            } else {
                self.history.go_on(&outcome.build);
            }
        }
        if !sheet.outcomes.is_empty() {
            self.begin_job_if_none();
        }
        self.pending.drain(..asked.edits.len());
        self.headline = sheet.headline.take();
        self.options = sheet.options.take().map(Rc::new).or(self.options.take());
        self.sheet = Some(Rc::new(sheet));
    }

    /// How the machine is looked at.
    pub const fn drawing(&self) -> DrawingView {
        self.look.drawing
    }

    /// The view.
    pub const fn view(&self) -> View {
        self.look.view
    }

    /// The open step.
    pub const fn step(&self) -> Option<Step> {
        self.look.step
    }

    /// The order of the options.
    pub const fn sort(&self) -> Sort {
        self.look.sort
    }
}

#[cfg(test)]
mod tests;
