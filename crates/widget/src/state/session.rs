//! One widget's state and what each action makes of it.

use std::rc::Rc;

use fitup_catalogue::link::{self, LinkError};
use fitup_catalogue::{BuildFile, Unresolved};
use fitup_core::build::{Build, Step};
use fitup_core::finding::Subject;
use fitup_core::fit::Desk;
use fitup_words::{Lang, Units};

use super::{Action, Address, DrawingView, History, Notice, Sort, Theme, Trouble, View};

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

/// Everything one widget remembers.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Session {
    /// The catalogue, laid out; a failed reload leaves the last good one.
    pub desk: Option<Rc<Desk>>,
    /// How far the catalogue has come.
    pub supply: Supply,
    /// Why the last load failed.
    pub trouble: Option<Trouble>,
    /// Builds.
    pub history: History,
    /// The link the page came with, while there is no catalogue to read it against, and after
    /// that while not all of it could be read and nothing has been edited since: the address then
    /// keeps it, so that nothing is lost.
    pub kept: Option<String>,
    /// Something to tell.
    pub notice: Option<Notice>,
    /// The open step.
    pub step: Option<Step>,
    /// The view.
    pub view: View,
    /// How the machine is looked at.
    pub drawing: DrawingView,
    /// What of the answer is opened.
    pub opened: Option<Subject>,
    /// Search in the open step.
    pub search: String,
    /// Order of the options.
    pub sort: Sort,
    /// Colours.
    pub theme: Theme,
    /// Language, if the reader chose one.
    pub lang: Option<Lang>,
    /// Units, if the reader chose some.
    pub units: Option<Units>,
    /// Whether the drawing is folded in where there is little room.
    pub folded: bool,
}

impl Session {
    /// The build at hand.
    pub const fn build(&self) -> &Rc<Build> {
        self.history.present()
    }

    /// Where the page should stand.
    pub fn address(&self) -> Address {
        let build = self.build();
        let link = self.kept.clone().or_else(|| {
            self.desk
                .as_ref()
                .filter(|_| **build != Build::default())
                .map(|desk| link::write(&BuildFile::of(desk.catalogue(), build)))
        });
        Address { link, step: self.step, view: self.view }
    }

    /// The session after an action.
    #[must_use]
    pub fn after(&self, action: Action) -> Self {
        let mut next = self.clone();
        next.react(action);
        next
    }

    fn react(&mut self, action: Action) {
        match action {
            Action::Loading => self.supply = Supply::Loading(0, None),
            Action::Progress(so_far, of) => self.supply = Supply::Loading(so_far, of),
            Action::Loaded(desk) => self.take_catalogue(desk),
            Action::Failed(trouble) => {
                self.supply = Supply::Settled;
                self.trouble = Some(trouble);
            }
            Action::Arrive(address) => self.arrive(address),
            Action::Edit(edit) => {
                if let Some(desk) = &self.desk {
                    let build = edit.apply(desk.catalogue(), self.history.present());
                    self.kept = None;
                    self.history.go_on(build);
                }
            }
            Action::Undo => {
                self.kept = None;
                self.history.undo();
            }
            Action::Redo => {
                self.kept = None;
                self.history.redo();
            }
            Action::OpenStep(step) => {
                if self.step != step {
                    self.search.clear();
                }
                self.step = step;
            }
            Action::Turn(view) => self.view = view,
            Action::Look(drawing) => self.drawing = drawing,
            Action::Open(subject) => self.opened = subject,
            Action::Search(search) => self.search = search,
            Action::Order(sort) => self.sort = sort,
            Action::Theme(theme) => self.theme = theme,
            Action::Speak(lang) => self.lang = Some(lang),
            Action::Unspoken(lang) => {
                // English from now on, so that choosing the language again asks for it again.
                self.lang = Some(Lang::En);
                self.notice = Some(Notice::Unspoken(lang));
            }
            Action::MeasureIn(units) => self.units = Some(units),
            Action::Fold(folded) => self.folded = folded,
            Action::Tell(notice) => self.notice = notice,
        }
    }

    /// Takes a catalogue in. A build made against the one before is carried over by its ids.
    fn take_catalogue(&mut self, desk: Rc<Desk>) {
        self.supply = Supply::Settled;
        self.trouble = None;
        if let Some(before) = self.desk.replace(desk) {
            let file = BuildFile::of(before.catalogue(), self.build());
            self.open(&file, true);
        }
        if let Some(link) = self.kept.take() {
            self.open_link(&link);
        }
    }

    /// Stands where an address says; without a catalogue, as soon as there is one.
    fn arrive(&mut self, address: Address) {
        let unchanged = address.link == self.address().link;
        self.step = address.step;
        self.view = address.view;
        if unchanged {
            return;
        }
        self.kept = None;
        match address.link {
            link if self.desk.is_none() => self.kept = link,
            None => self.history.go_on(Build::default()),
            Some(link) => self.open_link(&link),
        }
    }

    fn open_link(&mut self, link: &str) {
        match link::read(link) {
            Ok(file) => self.open(&file, false),
            Err(error) => self.notice = Some(Notice::Link(error)),
        }
        if self.notice.is_some() {
            self.kept = Some(link.to_owned());
        }
    }

    fn open(&mut self, file: &BuildFile, afresh: bool) {
        let Some(desk) = &self.desk else { return };
        let (build, missing) = file.resolve(desk.catalogue());
        self.notice = (!missing.is_empty()).then_some(Notice::Missing(missing));
        // Before the first build there is nothing to go back to.
        let is_first = **self.build() == Build::default() && !self.history.can_undo();
        if afresh || is_first {
            // Ids in older builds point into the catalogue that is gone.
            self.history = History::beginning_with(build);
        } else {
            self.history.go_on(build);
        }
    }
}

/// What the notice of a link says was missing, for the tests and the views.
impl Notice {
    /// The things that this catalogue does not have.
    pub fn missing(&self) -> &[Unresolved] {
        match self {
            Self::Missing(missing) => missing,
            Self::Link(_) | Self::Unspoken(_) => &[],
        }
    }

    /// Why the link could not be read.
    pub const fn link_error(&self) -> Option<LinkError> {
        match self {
            Self::Link(error) => Some(*error),
            Self::Missing(_) | Self::Unspoken(_) => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::item::{Body, Catalogue, Frame, FrameId};

    use super::super::{Edit, Pick};
    use super::*;

    fn desk(ids: &[&str]) -> Rc<Desk> {
        let frames = ids
            .iter()
            .map(|id| Frame {
                body: Body { id: (*id).into(), label: (*id).into(), ..Body::default() },
                stations: Vec::new(),
                excludes: Vec::new(),
                requires: Vec::new(),
            })
            .collect();
        Rc::new(Desk::new(Catalogue { frames, ..Catalogue::default() }))
    }

    fn run(actions: impl IntoIterator<Item = Action>) -> Session {
        actions.into_iter().fold(Session::default(), |session, action| session.after(action))
    }

    fn choose(frame: usize) -> Action {
        Action::Edit(Edit::Choose(Pick { step: Step::Frame, option: frame + 1 }))
    }

    fn frame_of(session: &Session) -> Option<FrameId> {
        session.build().carrying.frame()
    }

    #[test]
    fn an_address_waits_for_the_catalogue_and_then_opens() {
        let made = run([Action::Loaded(desk(&["a", "b"])), choose(1), Action::OpenStep(Some(Step::Seat))]);
        let address = made.address();
        let waiting = run([Action::Arrive(address.clone())]);
        assert_eq!(waiting.address(), address, "nothing of the address is lost while it waits");
        let opened = waiting.after(Action::Loaded(desk(&["a", "b"])));
        assert_eq!(frame_of(&opened), Some(FrameId(1)));
        assert_eq!(opened.step, Some(Step::Seat));
        assert!(!opened.history.can_undo(), "a page that opens with a build has none before it");
        let other = run([Action::Loaded(desk(&["a", "b"])), choose(0)]).address();
        assert_eq!(frame_of(&opened.after(Action::Arrive(other)).after(Action::Undo)), Some(FrameId(1)));
    }

    #[test]
    fn a_cut_link_leaves_the_build_and_says_so() {
        let made = run([Action::Loaded(desk(&["a"])), choose(0)]);
        let mut address = made.address();
        address.link = address.link.map(|link| link[..link.len() - 3].to_owned());
        let opened = run([Action::Loaded(desk(&["a"])), Action::Arrive(address)]);
        assert_eq!(opened.notice.as_ref().and_then(Notice::link_error), Some(LinkError::CutOff));
        assert_eq!(**opened.build(), Build::default());
        assert!(opened.address().link.is_some(), "the address keeps the link until something is edited");
        assert_eq!(opened.after(choose(0)).kept, None);
    }

    #[test]
    fn an_unknown_id_is_listed_and_the_rest_opens() {
        let made = run([Action::Loaded(desk(&["a", "b"])), choose(1)]);
        let opened = run([Action::Loaded(desk(&["a"])), Action::Arrive(made.address())]);
        let missing = opened.notice.as_ref().map_or(&[][..], Notice::missing);
        assert_eq!(missing.iter().map(|m| m.text.as_str()).collect::<Vec<_>>(), ["b"]);
        assert_eq!(frame_of(&opened), None);
    }

    #[test]
    fn another_catalogue_keeps_the_build_by_its_ids() {
        let session = run([Action::Loaded(desk(&["a", "b"])), choose(1), Action::Loaded(desk(&["b", "c"]))]);
        assert_eq!(frame_of(&session), Some(FrameId(0)));
        assert!(!session.history.can_undo(), "older builds point into the catalogue that is gone");
    }

    #[test]
    fn a_failed_reload_keeps_what_was_there() {
        let session = run([Action::Loaded(desk(&["a"])), choose(0), Action::Failed(Trouble::NoAddress)]);
        assert!(session.desk.is_some());
        assert_eq!(frame_of(&session), Some(FrameId(0)));
        assert_eq!(session.trouble, Some(Trouble::NoAddress));
        assert_eq!(session.after(Action::Loaded(desk(&["a"]))).trouble, None);
    }

    #[test]
    fn a_language_that_is_not_to_be_had_leaves_english_and_says_so() {
        let session = run([Action::Speak(Lang::De), Action::Unspoken(Lang::De)]);
        assert_eq!(session.lang, Some(Lang::En));
        assert_eq!(session.notice, Some(Notice::Unspoken(Lang::De)));
    }

    #[test]
    fn going_back_in_the_page_can_be_undone() {
        let session = run([Action::Loaded(desk(&["a"])), choose(0), Action::Arrive(Address::default())]);
        assert_eq!(frame_of(&session), None);
        assert_eq!(frame_of(&session.after(Action::Undo)), Some(FrameId(0)));
    }

    #[test]
    fn edits_before_there_is_a_catalogue_do_nothing() {
        assert_eq!(run([choose(0)]), Session::default());
    }
}
