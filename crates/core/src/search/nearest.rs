//! The nearest miss: of all completions of a build, the one that is the least away from bolting up.

use super::eliminate::eliminate;
use super::terms::{Blocks, Choice, Distance, Terms, Weights};
use crate::build::{Build, Step};
use crate::finding::Verdict;
use crate::fit::Desk;
use crate::order;

/// Builds weighed at most, by their joints and by the rules that have tables. Where there are more, the open step with the most
/// options keeps what the completions found.
pub(super) const MOST_WEIGHED: usize = 200_000;

/// Builds of those asked at most where their items stand and what they weigh. Some milliseconds; common practice, no source.
pub(super) const MOST_PLACED: usize = 256;

/// A complete build with what it comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Nearest {
    /// Its verdict: the best of any completion.
    pub verdict: Verdict,
    /// The build.
    pub build: Build,
}

/// What bounds a search for the nearest.
#[derive(Debug, Clone, Copy)]
pub(super) struct Bounds {
    pub weighed: usize,
    pub placed: usize,
}

impl Default for Bounds {
    fn default() -> Self {
        Self { weighed: MOST_WEIGHED, placed: MOST_PLACED }
    }
}

/// The nearest build through each option of `step`, which is taken for open; the chosen steps stay.
pub(super) fn nearest_through(
    desk: &Desk,
    terms: &mut Terms,
    build: &Build,
    step: Step,
    bounds: Bounds,
) -> Vec<Option<Nearest>> {
    let mut fixed = Step::ALL.map(|step| step.chosen(build));
    fixed[step as usize] = None;
    let best = eliminate(desk, terms, fixed, &[step as usize]);
    let through = best[step as usize].iter().enumerate().map(|(option, best)| {
        let mut fixed = fixed;
        fixed[step as usize] = Some(option);
        let choice = Search::new(desk, terms, (best.verdict, best.choice), bounds).nearest(fixed);
        Some(Nearest { verdict: best.verdict, build: completed(build, choice) })
    });
    through.collect()
}

/// The nearest of all completions of a build.
pub(super) fn nearest(desk: &Desk, terms: &mut Terms, build: &Build, bounds: Bounds) -> Nearest {
    let fixed = Step::ALL.map(|step| step.chosen(build));
    // Every completion goes through some option of each step.
    let any = (0..4).find(|&step| fixed[step].is_none()).unwrap_or_default();
    let best = eliminate(desk, terms, fixed, &[any]);
    let options = best[any].iter().enumerate().filter(|(option, _)| fixed[any].is_none_or(|it| it == *option));
    let best = options.map(|(_, best)| best).min_by_key(|best| best.verdict).expect("every step has an option");
    let choice = Search::new(desk, terms, (best.verdict, best.choice), bounds).nearest(fixed);
    Nearest { verdict: best.verdict, build: completed(build, choice) }
}

fn completed(build: &Build, choice: Choice) -> Build {
    let mut completed = build.clone();
    for step in Step::ALL {
        step.choose(&mut completed, choice[step as usize]);
    }
    completed
}

struct Search<'a> {
    desk: &'a Desk,
    terms: &'a mut Terms,
    /// What the completions found.
    found: (Verdict, Choice),
    bounds: Bounds,
    /// The nearest so far, and how far it is.
    best: Option<(Distance, Choice)>,
}

/// One assembly on the way through the steps.
struct Way<'a> {
    joined: usize,
    members: [&'a [usize]; 4],
    /// The open steps that are left, in the order they are decided.
    open: &'a [usize],
    choice: Choice,
    decided: [bool; 4],
}

impl<'a> Search<'a> {
    fn new(desk: &'a Desk, terms: &'a mut Terms, found: (Verdict, Choice), bounds: Bounds) -> Self {
        Self { desk, terms, found, bounds, best: None }
    }

    /// The nearest of the builds with these steps fixed.
    fn nearest(mut self, mut fixed: [Option<usize>; 4]) -> Choice {
        let options = self.terms.options();
        loop {
            let open = (0..4).filter(|&step| fixed[step].is_none());
            if open.clone().fold(1_usize, |all, step| all.saturating_mul(options[step])) <= self.bounds.weighed {
                break;
            }
            let most = open.max_by_key(|&step| options[step]).expect("no step at all is one build");
            fixed[most] = Some(self.found.1[most]);
        }
        let domains = [0, 1, 2, 3].map(|step| {
            let blocks = self.terms.blocks()[step].iter().enumerate();
            let within = blocks.map(|(block, members)| {
                let members = members.iter().copied();
                (block, members.filter(|&at| fixed[step].is_none_or(|it| it == at)).collect::<Vec<_>>())
            });
            within.filter(|(_, members)| !members.is_empty()).collect::<Vec<_>>()
        });
        let open: Vec<usize> = (0..4).filter(|&step| fixed[step].is_none()).collect();
        let mut assemblies = Vec::new();
        for m in &domains[0] {
            for c in &domains[1] {
                for s in &domains[2] {
                    for i in &domains[3] {
                        let four = [m, c, s, i];
                        let block = Blocks(four.map(|(block, _)| *block));
                        let joined = self.terms.joined(self.desk, block);
                        let base = self.terms.base(self.desk, joined, block);
                        assemblies.push((base, joined, four.map(|(_, members)| members.as_slice())));
                    }
                }
            }
        }
        order::sort_by_key(&mut assemblies, |(base, ..)| *base);
        for (base, joined, members) in assemblies {
            if base.verdict > self.found.0 || self.best.is_some_and(|(best, _)| base > best) {
                break;
            }
            let Some(mut weights) = self.terms.take_weights(joined) else { continue };
            let mut way =
                Way { joined, members, open: &open, choice: Choice(members.map(|all| all[0])), decided: [false; 4] };
            let mut distance = base;
            for step in (0..4).filter(|step| !open.contains(step)) {
                self.decide(&mut way, &mut weights, step, &mut distance);
            }
            self.go(&mut way, &mut weights, &distance);
            self.terms.put_back(joined, weights);
        }
        self.best.map_or(self.found.1, |(_, choice)| choice)
    }

    fn decide(&mut self, way: &mut Way, weights: &mut Weights, step: usize, distance: &mut Distance) {
        self.terms.add_step(self.desk, way.joined, weights, (way.choice, way.decided), step, distance);
        way.decided[step] = true;
    }

    /// Decides the open steps that are left, the nearest options first.
    fn go(&mut self, way: &mut Way, weights: &mut Weights, so_far: &Distance) {
        if !self.may_be_nearer(so_far, way) {
            return;
        }
        let Some((&step, left)) = way.open.split_first() else {
            self.place(way, *so_far);
            return;
        };
        let mut options = Vec::with_capacity(way.members[step].len());
        for &option in way.members[step] {
            let mut distance = *so_far;
            way.choice[step] = option;
            self.decide(way, weights, step, &mut distance);
            way.decided[step] = false;
            if distance.verdict <= self.found.0 {
                options.push((distance, option));
            }
        }
        order::sort(&mut options, Ord::cmp);
        let open = std::mem::replace(&mut way.open, left);
        way.decided[step] = true;
        for (distance, option) in options {
            if self.best.is_some_and(|(best, _)| distance > best) {
                break;
            }
            way.choice[step] = option;
            self.go(way, weights, &distance);
        }
        way.decided[step] = false;
        way.open = open;
    }

    /// Whether a build that comes to so much so far may still be nearer than the nearest, or as near and before it in the tables.
    fn may_be_nearer(&self, so_far: &Distance, way: &Way) -> bool {
        let Some((best, choice)) = self.best else { return true };
        if so_far.verdict > self.found.0 || *so_far > best {
            return false;
        }
        // As near at best: only one that stands before it counts.
        let decided = (0..4).take_while(|&step| way.decided[step]);
        let order = decided.map(|step| way.choice[step].cmp(&choice[step])).find(|order| order.is_ne());
        *so_far < best || order.is_none_or(std::cmp::Ordering::is_lt)
    }

    fn place(&mut self, way: &Way, mut distance: Distance) {
        if self.bounds.placed == 0 {
            return;
        }
        self.bounds.placed -= 1;
        self.terms.add_rest(self.desk, way.joined, way.choice, &mut distance);
        if distance.verdict == self.found.0 && self.best.is_none_or(|best| (distance, way.choice) < best) {
            self.best = Some((distance, way.choice));
        }
    }
}
