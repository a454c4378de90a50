//! Rules whose verdict depends on few classes of items: judged once for each combination.

use std::collections::BTreeSet;

use crate::build::{Build, Stack, Step};
use crate::finding::Verdict;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::fit::rule::AnyRule;

use super::classes::{Choice, Classes, Combination};
use super::{Given, PAIRS, with};

/// Combinations of classes judged at most for one rule; a rule with more is judged build by build.
pub(super) const MOST_COMBINATIONS: usize = 50_000;

/// The verdicts of a rule by the classes of the four options.
#[derive(Debug)]
pub(super) struct Table {
    counts: [usize; 4],
    verdicts: Vec<Verdict>,
    /// The best verdict of any combination with a class of a step, by step and class.
    best_by_class: [Vec<Verdict>; 4],
}

impl Table {
    /// Asks `verdict` for every combination of classes.
    pub fn new(counts: [usize; 4], mut verdict: impl FnMut(Combination) -> Verdict) -> Self {
        let mut verdicts = Vec::with_capacity(counts.iter().product());
        let mut best_by_class = counts.map(|count| vec![Verdict::WontMount; count]);
        for m in 0..counts[0] {
            for c in 0..counts[1] {
                for s in 0..counts[2] {
                    for i in 0..counts[3] {
                        let verdict = verdict(Combination([m, c, s, i]));
                        verdicts.push(verdict);
                        for (best, class) in best_by_class.iter_mut().zip([m, c, s, i]) {
                            best[class] = best[class].min(verdict);
                        }
                    }
                }
            }
        }
        Self { counts, verdicts, best_by_class }
    }

    pub fn at(&self, Combination([m, c, s, i]): Combination) -> Verdict {
        let [_, cs, ss, is] = self.counts;
        self.verdicts[((m * cs + c) * ss + s) * is + i]
    }

    /// Whether it says nothing but *bolts up*.
    pub fn is_silent(&self) -> bool {
        self.verdicts.iter().all(|&verdict| verdict == Verdict::BoltsUp)
    }

    /// Number of classes of each step.
    pub const fn counts(&self) -> [usize; 4] {
        self.counts
    }

    /// The steps whose class matters.
    pub fn looks_at(&self) -> impl Iterator<Item = usize> {
        let counts = self.counts;
        (0..4).filter(move |&step| counts[step] > 1)
    }

    /// The best verdict of any combination with these classes of two steps, row by row.
    pub fn best(&self, a: usize, b: usize) -> Vec<Verdict> {
        let mut best = vec![Verdict::WontMount; self.counts[a] * self.counts[b]];
        let mut at = 0;
        for m in 0..self.counts[0] {
            for c in 0..self.counts[1] {
                for s in 0..self.counts[2] {
                    for i in 0..self.counts[3] {
                        let classes = [m, c, s, i];
                        let known = &mut best[classes[a] * self.counts[b] + classes[b]];
                        *known = (*known).min(self.verdicts[at]);
                        at += 1;
                    }
                }
            }
        }
        best
    }

    /// The best verdict of any combination with this class of a step, by class.
    pub fn best_by_class(&self, step: usize) -> &[Verdict] {
        &self.best_by_class[step]
    }
}

/// A rule that does not ask how the stack is joined, judged for every combination of classes.
#[derive(Debug)]
pub(super) struct SmallRule {
    pub classes: Classes,
    pub table: Table,
    /// For each pair of steps that matter both, the best verdict by their classes.
    pairs: [Option<Vec<Verdict>>; 6],
}

impl SmallRule {
    pub fn new(desk: &Desk, given: &Given, rule: &dyn AnyRule, classes: Classes) -> Self {
        let table = Table::new(classes.counts(), |combination| {
            let choice = Choice([0, 1, 2, 3].map(|step| classes.first(step, combination[step])));
            judge(desk, &with(given, choice), given, rule, Stack::default())
        });
        let looks_at: Vec<usize> = table.looks_at().collect();
        let pairs = PAIRS.map(|(a, b)| (looks_at.contains(&a) && looks_at.contains(&b)).then(|| table.best(a, b)));
        Self { classes, table, pairs }
    }

    /// Whether pairs of steps do not tell the whole verdict.
    pub fn needs_more_than_pairs(&self) -> bool {
        self.table.looks_at().count() > 2
    }

    /// Whether it says anything of a pair of steps.
    pub fn tells_of(&self, pair: usize) -> bool {
        self.pairs[pair].is_some()
    }

    /// The best verdict with these classes of a pair of steps.
    pub fn of_pair(&self, pair: usize, a: usize, b: usize) -> Verdict {
        let count = self.classes.counts()[PAIRS[pair].1];
        self.pairs[pair].as_ref().map_or(Verdict::BoltsUp, |best| best[a * count + b])
    }

    pub fn verdict(&self, choice: Choice) -> Verdict {
        self.table.at(Combination([0, 1, 2, 3].map(|step| self.classes.of(step, choice[step]))))
    }
}

/// What one rule says of a build that has been placed.
pub(super) fn judge(desk: &Desk, build: &Build, given: &Given, rule: &dyn AnyRule, stack: Stack) -> Verdict {
    let context = Context::placed(desk, build, &given.units, stack);
    let mut findings = Vec::new();
    rule.judge(&context, &mut findings);
    findings.iter().map(|finding| finding.verdict).max().unwrap_or_default()
}

/// Classes of options before a rule; `None` if there are too many combinations.
pub(super) fn classes(
    desk: &Desk,
    options: [usize; 4],
    apart: &BTreeSet<(Step, usize)>,
    rule: &dyn AnyRule,
) -> Option<Classes> {
    let alike = Step::ALL.map(|step| rule.alike(desk, step));
    let classes = Classes::new(options, apart, |step, a, b| alike[step as usize](a, b));
    let combinations = classes.counts().iter().try_fold(1, |all: usize, &count| all.checked_mul(count));
    combinations.is_some_and(|all| all <= MOST_COMBINATIONS).then_some(classes)
}
