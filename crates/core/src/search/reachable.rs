//! Completions: the best verdict still reachable through each option of each step.

use super::eliminate::{Best, eliminate, enumerate};
use super::terms::{Choice, Terms};
use crate::build::{Build, Step};
use crate::finding::{Finding, Verdict};
use crate::fit::{Desk, judge};

/// What one option still leads to.
#[derive(Debug, Clone, PartialEq)]
pub struct Reach {
    /// The best verdict of any completed build through this option.
    pub verdict: Verdict,
    /// One completed build that has it.
    pub build: Build,
    /// Number of completed builds at each verdict, best first; `None` if there are so many that
    /// counting them would take longer than a choice may.
    pub counts: Option<[u64; 4]>,
}

impl Reach {
    /// The finding that decides the build that is reached, unless fit and work are a plain yes: the reason why
    /// nothing better is reachable.
    pub fn reason(&self, desk: &Desk) -> Option<Finding> {
        if self.verdict == Verdict::BoltsUp {
            return None;
        }
        judge(desk, &self.build).reason().cloned()
    }
}

/// What every option of every step still leads to, in the order of the tables; the hitch stands
/// before the frames. An entry is `None` when some step has no option at all.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Reachable {
    /// Machines.
    pub machines: Vec<Option<Reach>>,
    /// The hitch, then the frames.
    pub carrying: Vec<Option<Reach>>,
    /// Seat arrangements.
    pub seats: Vec<Option<Reach>>,
    /// Implements.
    pub implements: Vec<Option<Reach>>,
}

impl Reachable {
    /// What an option of a step leads to.
    pub fn through(&self, step: Step, option: usize) -> Option<&Reach> {
        let options = match step {
            Step::Machine => &self.machines,
            Step::Frame => &self.carrying,
            Step::Seat => &self.seats,
            Step::Implement => &self.implements,
        };
        options.get(option)?.as_ref()
    }
}

/// Completed builds counted at most for the options of one step.
pub(super) const MOST_COUNTED: usize = 4_096;

/// By step and option.
pub(super) type Rows = [Vec<Option<Reach>>; 4];

/// Searches; up to `most_counted` builds a step are all judged and counted.
pub(super) fn search(desk: &Desk, terms: &mut Terms, build: &Build, most_counted: usize) -> Rows {
    let mut rows = Rows::default();
    let chosen = Step::ALL.map(|step| step.chosen(build));
    let free: Vec<usize> = (0..4).filter(|&step| chosen[step].is_none()).collect();
    // The options of all free steps are completed by the same builds; those of a step that is
    // chosen, by builds in which it is free as well.
    let freed = (0..4).filter(|&step| chosen[step].is_some()).map(|step| {
        let mut others = chosen;
        others[step] = None;
        (others, vec![step])
    });
    let searches = std::iter::once((chosen, free.clone())).filter(|_| !free.is_empty()).chain(freed);
    for (fixed, asked) in searches {
        let options = terms.options();
        let open = (0..4).filter(|&step| fixed[step].is_none());
        let builds = open.fold(1_usize, |all, step| all.saturating_mul(options[step]));
        let best =
            if builds <= most_counted { enumerate(desk, terms, fixed) } else { eliminate(desk, terms, fixed, &asked) };
        for step in asked {
            rows[step] = best[step].iter().map(|best| Some(reach(build, best))).collect();
        }
    }
    rows
}

fn reach(build: &Build, best: &Best) -> Reach {
    let mut completed = build.clone();
    let choice: Choice = best.choice;
    for step in Step::ALL {
        step.choose(&mut completed, choice[step as usize]);
    }
    Reach { verdict: best.verdict, build: completed, counts: best.counts }
}
