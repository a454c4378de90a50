//! The best verdict of each option over all builds, by leaving out what cannot be better.

use crate::build::Step;
use crate::finding::Verdict;
use crate::fit::{Bits, Choice, Desk, PAIRS, Terms};

/// The best that an option leads to.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Best {
    pub verdict: Verdict,
    pub choice: Choice,
    pub counts: Option<[u64; 4]>,
}

/// By step and option.
pub(super) type Found = [Vec<Best>; 4];

/// The options of a step that a search may take.
fn domain(fixed: Option<usize>, count: usize) -> std::ops::Range<usize> {
    fixed.map_or(0..count, |option| option..option + 1)
}

/// Judges every build and counts.
pub(super) fn enumerate(desk: &Desk, terms: &mut Terms, fixed: [Option<usize>; 4]) -> Found {
    let mut found = nothing_better(terms.options(), fixed);
    let [machines, carrying, seats, implements] = [0, 1, 2, 3].map(|step| domain(fixed[step], terms.options()[step]));
    found.iter_mut().flatten().for_each(|best| best.counts = Some([0; 4]));
    for m in machines {
        for c in carrying.clone() {
            for s in seats.clone() {
                for i in implements.clone() {
                    let choice = [m, c, s, i];
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
fn nothing_better(options: [usize; 4], fixed: [Option<usize>; 4]) -> Found {
    let first = fixed.map(Option::unwrap_or_default);
    [0, 1, 2, 3].map(|step| {
        let best = |option| {
            let mut choice = first;
            choice[step] = option;
            Best { verdict: Verdict::WontMount, choice, counts: None }
        };
        (0..options[step]).map(best).collect()
    })
}

/// Finds, verdict by verdict from the best, the options through which some build has it.
///
/// At each verdict and linkage only options that are no worse alone are looked at, and only
/// machine and carrying that are no worse together; what goes with both is the intersection of
/// two sets of seats and of two sets of implements. Of what is left, a build is judged in full
/// only if it would answer for an option that nothing has answered for yet.
pub(super) fn eliminate(desk: &Desk, terms: &mut Terms, fixed: [Option<usize>; 4], asked: &[usize]) -> Found {
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
                        search.linkage(worst, [m, c, s, i], [machines, carrying, seats, implements]);
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
    found: Found,
    /// By step, the options that nothing has answered for yet.
    open: [Bits; 4],
}

impl Search<'_> {
    /// Looks for builds of one linkage that are no worse than `worst`.
    fn linkage(&mut self, worst: Verdict, block: [usize; 4], members: [&Vec<usize>; 4]) {
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
        let (mut seats, mut implements) = (Bits::none(options[2]), Bits::none(options[3]));
        let mut carrying = Bits::none(options[1]);
        for m in alone[0].iter() {
            carrying.set_to_common(self.row(joined, worst, 0, m), &alone[1], &alone[1]);
            for c in carrying.iter() {
                seats.set_to_common(self.row(joined, worst, 1, m), self.row(joined, worst, 3, c), &alone[2]);
                implements.set_to_common(self.row(joined, worst, 2, m), self.row(joined, worst, 4, c), &alone[3]);
                if !seats.is_empty() && !implements.is_empty() {
                    self.complete(joined, worst, [m, c], &seats, &implements);
                }
            }
        }
    }

    fn row(&self, joined: usize, worst: Verdict, pair: usize, option: usize) -> &Bits {
        self.terms.pair(joined, pair).row(worst, option)
    }

    /// Completes machine and carrying by seats and implements that go with both, as long as
    /// there is something to answer for.
    fn complete(&mut self, joined: usize, worst: Verdict, [m, c]: [usize; 2], seats: &Bits, implements: &Bits) {
        let asks = self.open[0].holds(m) || self.open[1].holds(c) || seats.meets(&self.open[2]);
        if !asks && !implements.meets(&self.open[3]) {
            return;
        }
        let mut with = Bits::none(self.terms.options()[3]);
        for s in seats.iter() {
            let mut after = None;
            if self.open[0].holds(m) || self.open[1].holds(c) || self.open[2].holds(s) {
                // Any implement answers for the others.
                with.set_to_common(implements, self.row(joined, worst, 5, s), implements);
                let fits = |i: &usize| self.terms.within(self.desk, joined, [m, c, s, *i], worst);
                let Some(i) = with.iter().find(fits) else { continue };
                self.answer(worst, [m, c, s, i]);
                after = Some(i);
            }
            with.set_to_common(implements, self.row(joined, worst, 5, s), &self.open[3]);
            for i in with.iter().filter(|&i| after.is_none_or(|after| i > after)) {
                if self.terms.within(self.desk, joined, [m, c, s, i], worst) {
                    self.answer(worst, [m, c, s, i]);
                }
            }
        }
    }

    fn answer(&mut self, verdict: Verdict, choice: Choice) {
        for (step, option) in choice.into_iter().enumerate() {
            if self.open[step].holds(option) {
                self.open[step].remove(option);
                self.found[step][option] = Best { verdict, choice, counts: None };
            }
        }
    }
}

const _: () = assert!(PAIRS[0].1 == Step::Frame as usize && PAIRS[5].0 == Step::Seat as usize);
