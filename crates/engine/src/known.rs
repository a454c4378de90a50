//! What was worked out last, kept as long as it is asked of the same build.

use std::rc::Rc;

use fitup_core::build::Build;
use fitup_core::dimension::ShortestRamp;
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::search::{Headline, RankedCheck, Reachable, SetOrder, Sets, checks};
use fitup_view::{Away, Here, Options, Reader, Remedies, Sort, Step};

/// A value and what it was worked out of.
#[derive(Debug)]
pub struct Kept<K, T>(Option<(K, T)>);

impl<K, T> Default for Kept<K, T> {
    fn default() -> Self {
        Self(None)
    }
}

impl<K: PartialEq, T: Clone> Kept<K, T> {
    /// The value, if it was worked out of the same.
    pub fn of(&self, key: &K) -> Option<T> {
        self.0.as_ref().filter(|(known, _)| known == key).map(|(_, value)| value.clone())
    }

    /// Keeps a value in place of the one before.
    pub fn keep(&mut self, key: K, value: T) -> T {
        self.0 = Some((key, value.clone()));
        value
    }
}

/// Where the options of a build lead, and what stands over it.
#[derive(Debug, Clone)]
pub struct Led {
    /// What each option leads to.
    pub reach: Rc<Reachable>,
    /// The headline.
    pub headline: Option<Rc<Headline>>,
}

/// The shortest ramps forwards and backwards.
pub type Shortest = [Option<ShortestRamp>; 2];

/// Of what a list of options was made.
pub type ListKey = (Build, Reader, Step, String, Sort, u32);

/// What was worked out last.
#[derive(Debug, Default)]
pub struct Known {
    answer: Kept<Build, Rc<Answer>>,
    /// Where the options lead.
    pub led: Kept<Build, Led>,
    ranked: Kept<Build, Rc<[RankedCheck]>>,
    /// The list of options.
    pub list: Kept<ListKey, Options>,
    /// The shortest ramps.
    pub shortest: Kept<Build, Shortest>,
    /// The best complete sets of a build, by what they are ordered by.
    pub sets: Kept<(Build, SetOrder), Rc<Sets>>,
    /// What would help.
    pub remedies: Kept<(Build, Reader), Remedies>,
    /// What is taken along.
    pub away: Kept<(Build, Reader, Here), Away>,
    /// The build and reader that the page was last told of.
    pub told: Option<(Build, Reader)>,
}

impl Known {
    /// The answer to a build.
    pub fn answer(&mut self, desk: &Desk, build: &Build) -> Rc<Answer> {
        self.answer.of(build).unwrap_or_else(|| self.answer.keep(build.clone(), Rc::new(judge(desk, build))))
    }

    /// What would settle what is open of a build.
    pub fn ranked(&mut self, desk: &Desk, build: &Build, answer: &Answer) -> Rc<[RankedCheck]> {
        self.ranked.of(build).unwrap_or_else(|| self.ranked.keep(build.clone(), checks(desk, build, answer).into()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_kept_for_what_it_was_made_of_and_nothing_else() {
        let mut kept = Kept::default();
        assert_eq!(kept.of(&1), None);
        assert_eq!(kept.keep(1, "one"), "one");
        assert_eq!((kept.of(&1), kept.of(&2)), (Some("one"), None));
    }
}
