//! The headline: the answer to a build, or the best that a partial one can still come to.

use std::ops::Deref;

use super::Searcher;
use crate::build::Build;
use crate::finding::{Finding, Question, Verdict};
use crate::fit::{Answer, Desk, judge};

/// What stands over the answer, the same on every surface.
#[derive(Debug, Clone, PartialEq)]
pub struct Headline {
    /// Whether all four steps are answered. Where they are not, the rest is the best still reachable and no answer yet.
    pub is_decided: bool,
    /// The build it speaks of: the build itself, or its nearest completion.
    pub build: Build,
    /// The answer of that build.
    pub answer: Answer,
}

impl Headline {
    /// The headline of a complete build: its own answer.
    pub const fn decided(build: Build, answer: Answer) -> Self {
        Self { is_decided: true, build, answer }
    }

    /// The worse of fit and work.
    pub const fn verdict(&self) -> Verdict {
        self.answer.verdict
    }

    /// Which of fit and work decides.
    pub fn question(&self) -> Question {
        self.answer.deciding().question
    }

    /// Why it is no better; `None` where it is a plain yes.
    pub fn reason(&self) -> Option<&Finding> {
        self.answer.reason()
    }
}

/// The headline of a build. For a partial build it is that of its nearest completion: the best verdict still reachable, and
/// the nearest obstacle to a better one. `None` if some step has no option to complete the build with.
///
/// # Examples
/// ```
/// use fitup_core::{build::Build, fit::Desk, item::Catalogue, search::{Searcher, headline}};
/// let desk = Desk::new(Catalogue::default());
/// assert!(headline(&mut Searcher::new(&desk), &Build::default()).is_none());
/// ```
pub fn headline<D: Deref<Target = Desk>>(searcher: &mut Searcher<D>, build: &Build) -> Option<Headline> {
    let is_decided = build.is_complete();
    let build = if is_decided { build.clone() } else { searcher.nearest(build)?.build };
    let answer = judge(searcher.desk(), &build);
    Some(Headline { is_decided, build, answer })
}
