//! What all builds of one assembly have in common.

use crate::build::{Assembly, Step, assembly};
use crate::finding::Verdict;
use crate::fit::desk::Desk;
use crate::fit::judge::unanswered_verdict;
use crate::fit::rule::RULES;

use super::small::{self, Table};
use super::{Blocks, Choice, Joined, JoinedTable, PAIRS, Terms, joints, with};

impl Terms {
    /// Works out the assembly of builds with one option of each of four blocks.
    pub(super) fn join(&mut self, desk: &Desk, block: Blocks) -> Joined {
        let first = self.first_of(block);
        let build = with(&self.given, first);
        let assembly = assembly(desk.catalogue(), &build);
        let mut floor = unanswered_verdict(assembly.unplaced());
        let mut alone = self.alone(block);
        let mut between: [Vec<usize>; 6] = Default::default();
        for index in 0..assembly.unplaced().joints.len() {
            let step_of = |at: usize| Step::of(assembly.unplaced().placed[at].item).map(|(step, _)| step as usize);
            let joint = assembly.unplaced().joints[index];
            match (step_of(joint.carrier.0), step_of(joint.carried.0)) {
                (Some(a), Some(b)) => {
                    let pair = (a.min(b), a.max(b));
                    let pair = PAIRS.iter().position(|&known| known == pair).expect("two of the four steps");
                    between[pair].push(index);
                }
                (None, None) => floor = floor.max(joints::judge(desk, &self.given, &assembly, index, first)),
                // An adapter stays: the joint depends on the one option.
                (Some(step), None) | (None, Some(step)) => {
                    for &option in &self.blocks[step][block[step]] {
                        let mut choice = first;
                        choice[step] = option;
                        let verdict = self.joints.verdict(desk, &self.ports, &self.given, &assembly, index, choice);
                        alone[step][option] = alone[step][option].max(verdict);
                    }
                }
            }
        }
        let mut pairs = [0; 6];
        for (pair, joints) in between.iter().enumerate() {
            pairs[pair] = self.pair_of(desk, pair, block, &assembly, joints);
        }
        let (mut tables, mut plain_tables, mut whole) = (Vec::new(), Vec::new(), self.whole.clone());
        for rule in 0..self.of_assembly.len() {
            match self.joined_table(desk, rule, block, &assembly) {
                None => whole.push(self.of_assembly[rule].0),
                Some(table) => {
                    for (step, alone) in alone.iter_mut().enumerate() {
                        let best = table.table.best_by_class(step);
                        for &option in &self.blocks[step][block[step]] {
                            let class = self.of_assembly[rule].1.of(step, option);
                            alone[option] = alone[option].max(best[table.place[step][class]]);
                        }
                    }
                    if table.table.is_silent() {
                        continue;
                    }
                    if table.table.looks_at().count() > 1 {
                        self.refine(&table, &mut pairs);
                        tables.push(table);
                    } else {
                        plain_tables.push(table);
                    }
                }
            }
        }
        let places = self.of_places.terms(desk, &self.blocks, block, &assembly);
        Joined { assembly, floor, alone, pairs, tables, plain_tables, places, whole }
    }

    /// Lets the pairs of one assembly know what a rule says of two steps beyond what it says of each.
    fn refine(&mut self, table: &JoinedTable, pairs: &mut [usize; 6]) {
        for (pair, &(a, b)) in PAIRS.iter().enumerate() {
            let best = table.table.best(a, b);
            let (of_a, of_b) = (table.table.best_by_class(a), table.table.best_by_class(b));
            let count = table.table.counts()[b];
            let says_more = |(at, &verdict): (usize, &Verdict)| verdict > of_a[at / count].max(of_b[at % count]);
            if best.iter().enumerate().any(says_more) {
                let classes = &self.of_assembly[table.rule].1;
                let place = |step: usize, option: usize| table.place[step][classes.of(step, option)];
                let refined = self.pairs[pairs[pair]].with(|x, y| best[place(a, x) * count + place(b, y)]);
                self.pairs.push(refined);
                pairs[pair] = self.pairs.len() - 1;
            }
        }
    }

    /// The best verdict of each option of the blocks as far as the small rules say.
    fn alone(&self, block: Blocks) -> [Vec<Verdict>; 4] {
        [0, 1, 2, 3].map(|step| {
            let mut alone = vec![Verdict::BoltsUp; self.options[step]];
            for rule in &self.small {
                let best = rule.table.best_by_class(step);
                for &option in &self.blocks[step][block[step]] {
                    alone[option] = alone[option].max(best[rule.classes.of(step, option)]);
                }
            }
            alone
        })
    }

    /// The table of a rule for one assembly; `None` if there are too many combinations.
    pub(super) fn joined_table(
        &self,
        desk: &Desk,
        rule: usize,
        block: Blocks,
        assembly: &Assembly,
    ) -> Option<JoinedTable> {
        let (index, classes) = &self.of_assembly[rule];
        let mut place: [Vec<usize>; 4] = classes.counts().map(|count| vec![usize::MAX; count]);
        let mut firsts: [Vec<usize>; 4] = Default::default();
        for step in 0..4 {
            for &option in &self.blocks[step][block[step]] {
                let place = &mut place[step][classes.of(step, option)];
                if *place == usize::MAX {
                    *place = firsts[step].len();
                    firsts[step].push(option);
                }
            }
        }
        let counts = [0, 1, 2, 3].map(|step| firsts[step].len());
        if counts.iter().product::<usize>() > small::MOST_COMBINATIONS {
            return None;
        }
        let table = Table::new(counts, |combination| {
            let build = with(&self.given, Choice([0, 1, 2, 3].map(|step| firsts[step][combination[step]])));
            small::judge(desk, &build, &self.given, RULES[*index], assembly.stand(&build, &self.given.units.at(desk)))
        });
        Some(JoinedTable { rule, place, table })
    }
}
