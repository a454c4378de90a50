//! Searching one catalogue again and again.

use std::ops::Deref;

use super::nearest::{Bounds, Nearest, nearest, nearest_through};
use super::reachable::{MOST_COUNTED, Reachable, search};
use super::sets::{self, SetOrder, Sets};
use super::terms::{Terms, side_of};
use crate::build::{Build, Step, options};
use crate::fit::Desk;

/// A desk with what the last search on it worked out.
///
/// The four choices of a build change more often than all the rest of it, its *side*. What depends on the side alone is kept
/// from one search to the next. What is kept changes no answer, only how soon it comes.
///
/// # Examples
/// ```
/// use fitup_core::{build::Build, fit::Desk, item::Catalogue, search::Searcher};
/// let desk = Desk::new(Catalogue::default());
/// let mut searcher = Searcher::new(&desk);
/// assert!(searcher.reachable(&Build::default()).machines.is_empty());
/// ```
#[derive(Debug)]
pub struct Searcher<D> {
    desk: D,
    terms: Option<Terms>,
}

impl<D: Deref<Target = Desk>> Searcher<D> {
    /// A searcher that has not searched yet.
    pub const fn new(desk: D) -> Self {
        Self { desk, terms: None }
    }

    /// The desk it searches.
    pub fn desk(&self) -> &Desk {
        &self.desk
    }

    /// The best verdict still reachable through each option of each step of a partial build.
    ///
    /// For an option of a step, the other steps keep their choices if they have one and are free
    /// otherwise; adapters, measurements and changes of the build stay.
    /// Accuracy: exact; what is left out is shown to be no better. The catalogue is laid out for the
    /// search when its first build is searched, and again when anything but the four choices changes.
    pub fn reachable(&mut self, build: &Build) -> Reachable {
        let found = self.with_terms(build, |desk, terms| search(desk, terms, build, MOST_COUNTED));
        let [machines, carrying, seats, implements] =
            found.unwrap_or_else(|| options(self.desk().catalogue()).map(|count| vec![None; count]));
        Reachable { machines, carrying, seats, implements }
    }

    /// The nearest completion of a build through each option of one step, which is taken for open: a build with the best
    /// verdict, and of those the one that misses *bolts up* by the least. Its findings are the reason why the option leads to
    /// nothing better. `None` where some step has no option.
    ///
    /// Least is, in this order: the ports that must be answered and are not, together with the items to be mounted that stand nowhere and a
    /// frame that the implement hangs past; the joints and rules that come to *won't mount*; those that come to *check first*; those that come to work; the order of
    /// the tables.
    /// Accuracy: the verdicts are exact. The build is the nearest of all where the open steps have up to 200,000 completions
    /// together and at most 256 of these come into question by what the tables of the terms say, before it is asked where
    /// their items stand and what they weigh. Else it is the nearest of 256, or of those that share the longest of the open
    /// steps with what the completions found. The same build gives the same answer.
    pub fn nearest_through(&mut self, build: &Build, step: Step) -> Vec<Option<Nearest>> {
        let bounds = Bounds::default();
        let found = self.with_terms(build, |desk, terms| nearest_through(desk, terms, build, step, bounds));
        found.unwrap_or_else(|| vec![None; options(self.desk().catalogue())[step as usize]])
    }

    /// The nearest completion of a build, as [`Self::nearest_through`] has it; a complete build is its own. `None` if a step
    /// has no option.
    pub fn nearest(&mut self, build: &Build) -> Option<Nearest> {
        let bounds = Bounds::default();
        self.with_terms(build, |desk, terms| nearest(desk, terms, build, bounds))
    }

    /// The best complete sets that a build can still become, at most [`MOST_SETS`](super::MOST_SETS): by answer, then as `order`
    /// says. Sets that do not mount are none.
    ///
    /// Accuracy: exact by price and by what is on hand, unless more than some thousand sets cost the same; by length, departure
    /// and hours as long as no more than these have the answer. `is_exact` of the result tells.
    pub fn sets(&mut self, build: &Build, order: SetOrder) -> Sets {
        let found = self.with_terms(build, |desk, terms| sets::search(desk, terms, build, order, sets::MOST_JUDGED));
        found.unwrap_or_default()
    }

    /// Searches with the terms of a build's side; `None` if some step has no option.
    pub(super) fn with_terms<T>(&mut self, build: &Build, search: impl FnOnce(&Desk, &mut Terms) -> T) -> Option<T> {
        let (desk, side) = (self.desk.standing(&build.side), side_of(build));
        if self.terms.as_ref().is_none_or(|terms| *terms.side() != side) {
            self.terms = Terms::new(desk, side);
        }
        self.terms.as_mut().map(|terms| search(desk, terms))
    }
}
