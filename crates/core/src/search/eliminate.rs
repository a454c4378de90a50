//! The best verdict of each option over all builds, by leaving out what cannot be better.

use std::collections::BTreeMap;

use super::terms::{Bits, Blocks, Choice, PAIRS, Terms};
use crate::build::Step;
use crate::finding::Verdict;
use crate::fit::Desk;

/// The best that an option leads to.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Best {
    pub verdict: Verdict,
    pub choice: Choice,
    pub counts: Option<[u64; 4]>,
}

/// By step and option.
pub(super) type Reached = [Vec<Best>; 4];

/// The options of a step that a search may take.
fn domain(fixed: Option<usize>, count: usize) -> std::ops::Range<usize> {
    fixed.map_or(0..count, |option| option..option + 1)
}

/// Judges every build and counts.
pub(super) fn enumerate(desk: &Desk, terms: &mut Terms, fixed: [Option<usize>; 4]) -> Reached {
    let mut found = nothing_better(terms.options(), fixed);
    let [machines, carrying, seats, implements] = [0, 1, 2, 3].map(|step| domain(fixed[step], terms.options()[step]));
    found.iter_mut().flatten().for_each(|best| best.counts = Some([0; 4]));
    for m in machines {
        for c in carrying.clone() {
            for s in seats.clone() {
                for i in implements.clone() {
                    let choice = Choice([m, c, s, i]);
                    let verdict = terms.verdict(desk, choice);
                    for step in 0..4 {
                        let best = &mut found[step][choice[step]];
                        if let Some(counts) = &mut best.counts {
                            counts[verdict as usize] += 1;
                        }
                        if verdict < best.verdict {
                            (best.verdict, best.choice) = (verdict, choice);
                        }
                    }
                }
            }
        }
    }
    found
}

/// Every option with some build through it, said not to mount.
fn nothing_better(options: [usize; 4], fixed: [Option<usize>; 4]) -> Reached {
    let first = fixed.map(Option::unwrap_or_default);
    [0, 1, 2, 3].map(|step| {
        let best = |option| {
            let mut choice = Choice(first);
            choice[step] = option;
            Best { verdict: Verdict::WontMount, choice, counts: None }
        };
        (0..options[step]).map(best).collect()
    })
}

/// Finds, verdict by verdict from the best, the options through which some build has it.
///
/// For each verdict and assembly it keeps the options whose own findings reach the verdict, then the pairs of machine and
/// carrying that reach it together. For such a pair it intersects the sets of seats, and of implements, that go with both, and
/// strikes out the implements that go with none of these seats and those known to be worse where they stand. A build that is
/// left is judged in full only if one of its options has no build yet that shows this verdict for it.
pub(super) fn eliminate(desk: &Desk, terms: &mut Terms, fixed: [Option<usize>; 4], asked: &[usize]) -> Reached {
    let options = terms.options();
    let mut search = Search {
        desk,
        found: nothing_better(options, fixed),
        open: [0, 1, 2, 3].map(|step| {
            Bits::of(options[step], |option| {
                asked.contains(&step) && domain(fixed[step], options[step]).contains(&option)
            })
        }),
        terms,
    };
    let domains = [0, 1, 2, 3].map(|step| {
        let domain = domain(fixed[step], options[step]);
        let blocks = search.terms.blocks()[step].iter();
        let within = blocks.map(|block| block.iter().copied().filter(|option| domain.contains(option)).collect());
        within.collect::<Vec<Vec<usize>>>()
    });
    for worst in [Verdict::BoltsUp, Verdict::BoltsUpWithWork, Verdict::CheckFirst] {
        for (m, machines) in domains[0].iter().enumerate() {
            for (c, carrying) in domains[1].iter().enumerate() {
                for (s, seats) in domains[2].iter().enumerate() {
                    for (i, implements) in domains[3].iter().enumerate() {
                        search.assembly(worst, Blocks([m, c, s, i]), [machines, carrying, seats, implements]);
                    }
                }
            }
        }
    }
    search.found
}

struct Search<'a> {
    desk: &'a Desk,
    terms: &'a mut Terms,
    found: Reached,
    /// By step, the options that nothing has answered for yet.
    open: [Bits; 4],
}

impl Search<'_> {
    /// Looks for builds of one assembly that are no worse than `worst`.
    fn assembly(&mut self, worst: Verdict, block: Blocks, members: [&Vec<usize>; 4]) {
        let is_open = |step: usize| members[step].iter().any(|&option| self.open[step].holds(option));
        if members.iter().any(|members| members.is_empty()) || !(0..4).any(is_open) {
            return;
        }
        let joined = self.terms.joined(self.desk, block);
        let of = self.terms.of_joined(joined);
        if of.floor > worst {
            return;
        }
        let options = self.terms.options();
        let alone = [0, 1, 2, 3].map(|step| {
            let mut bits = Bits::none(options[step]);
            members[step].iter().filter(|&&at| of.alone[step][at] <= worst).for_each(|&at| bits.add(at));
            bits
        });
        if alone.iter().any(Bits::is_empty) || !(0..4).any(|step| alone[step].meets(&self.open[step])) {
            return;
        }
        let mut carrying = Bits::none(options[1]);
        let (mut seats, mut implements) = (Bits::none(options[2]), Bits::none(options[3]));
        let (mut asked_seats, mut asked_implements) = (seats.clone(), implements.clone());
        // By seats, the implements that go with one of them.
        let mut with_any = BTreeMap::new();
        let [.., seat, implement] = members.map(|members| members[0]);
        for m in alone[0].iter() {
            carrying.set_to_intersection(self.row(joined, worst, 0, m), &alone[1], &alone[1]);
            asked_seats.set_to_intersection(self.row(joined, worst, 1, m), &alone[2], &self.open[2]);
            asked_implements.set_to_intersection(self.row(joined, worst, 2, m), &alone[3], &self.open[3]);
            let [any_seats, any_implements] = [&asked_seats, &asked_implements].map(|asked| !asked.is_empty());
            for c in carrying.iter() {
                // Most ask nothing, and that is seen soonest by these sets.
                let asks = self.open[0].holds(m)
                    || self.open[1].holds(c)
                    || any_seats && asked_seats.meets(self.row(joined, worst, 3, c))
                    || any_implements && asked_implements.meets(self.row(joined, worst, 4, c));
                if !asks {
                    continue;
                }
                seats.set_to_intersection(self.row(joined, worst, 1, m), self.row(joined, worst, 3, c), &alone[2]);
                implements.set_to_intersection(self.row(joined, worst, 2, m), self.row(joined, worst, 4, c), &alone[3]);
                implements.intersect_with(
                    with_any.entry(seats.clone()).or_insert_with(|| self.with_any(joined, worst, &seats)),
                );
                if !self.asks([m, c], &seats, &implements) {
                    continue;
                }
                let choice = Choice([m, c, seat, implement]);
                if !(0..2).all(|step| self.terms.stands(self.desk, joined, step, choice, worst)) {
                    continue;
                }
                for looks_before in [false, true] {
                    self.terms.leave_out_worse(joined, 2, choice, worst, looks_before, &mut seats);
                }
                self.terms.leave_out_worse(joined, 3, choice, worst, false, &mut implements);
                if self.asks([m, c], &seats, &implements) {
                    self.complete(joined, worst, choice, &seats, &implements);
                }
            }
        }
    }

    /// Whether something is to be answered for by machine and carrying with some of these seats and implements.
    fn asks(&self, [m, c]: [usize; 2], seats: &Bits, implements: &Bits) -> bool {
        let asks = self.open[0].holds(m) || self.open[1].holds(c) || seats.meets(&self.open[2]);
        (asks || implements.meets(&self.open[3])) && !seats.is_empty() && !implements.is_empty()
    }

    fn row(&self, joined: usize, worst: Verdict, pair: usize, option: usize) -> &Bits {
        self.terms.pair(joined, pair).row(worst, option)
    }

    /// The implements that go with any of these seats.
    fn with_any(&self, joined: usize, worst: Verdict, seats: &Bits) -> Bits {
        let mut any = Bits::none(self.terms.options()[3]);
        seats.iter().for_each(|s| any.union_with(self.row(joined, worst, 5, s)));
        any
    }

    /// Completes machine and carrying by seats and implements that go with both, as long as
    /// there is something to answer for.
    fn complete(&mut self, joined: usize, worst: Verdict, choice: Choice, seats: &Bits, implements: &Bits) {
        let Choice([m, c, _, implement]) = choice;
        let mut unanswered = implements.clone();
        unanswered.intersect_with(&self.open[3]);
        let mut with = Bits::none(self.terms.options()[3]);
        for s in seats.iter() {
            let choice = Choice([m, c, s, implement]);
            // Any implement answers for the others.
            let any = self.open[0].holds(m) || self.open[1].holds(c) || self.open[2].holds(s);
            let asked = if any { implements } else { &unanswered };
            if !asked.meets(self.row(joined, worst, 5, s)) || !self.terms.stands(self.desk, joined, 2, choice, worst) {
                continue;
            }
            with.set_to_intersection(asked, self.row(joined, worst, 5, s), asked);
            self.terms.leave_out_worse(joined, 3, choice, worst, true, &mut with);
            let mut is_asked = any;
            for i in with.iter() {
                let build = Choice([m, c, s, i]);
                if (is_asked || self.open[3].holds(i)) && self.terms.within(self.desk, joined, build, worst) {
                    self.answer(worst, build);
                    unanswered.remove(i);
                    is_asked = false;
                }
            }
        }
    }

    fn answer(&mut self, verdict: Verdict, choice: Choice) {
        for (step, option) in choice.0.into_iter().enumerate() {
            if self.open[step].holds(option) {
                self.open[step].remove(option);
                self.found[step][option] = Best { verdict, choice, counts: None };
            }
        }
    }
}

const _: () = assert!(PAIRS[0].1 == Step::Frame as usize && PAIRS[5].0 == Step::Seat as usize);
