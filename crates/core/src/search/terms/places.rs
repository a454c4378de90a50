//! Rules that ask where items stand, judged once for each combination of classes, and only when that is asked for.
//!
//! Where an item stands depends on the poses and patterns of the ports by which it is placed, and what carries it, and so on to the machine.
//! Options are alike before such a rule if it reads the same of them and these ports sit alike. There may be far too many
//! combinations to judge them all, but a search asks for few: each is judged when it first comes into question, and kept.

use std::collections::{BTreeMap, BTreeSet};

use crate::build::{Assembly, Step};
use crate::finding::Verdict;
use crate::fit::desk::Desk;
use crate::fit::rule::{Asked, RULES};
use crate::item::{AdapterId, ItemRef, Pose, Role, Towards};

use super::bits::Bits;
use super::classes::{Blocks, Choice, Classes};
use super::{Terms, choose, small};

/// What is known of rules that ask where items stand.
#[derive(Debug, Default)]
pub(super) struct OfPlaces {
    rules: Vec<PlacedRule>,
    by_step: Vec<StepClasses>,
    known_by_step: BTreeMap<StepKey, usize>,
    terms: Vec<Term>,
    known_terms: BTreeMap<TermKey, usize>,
}

/// Rule, step, block, and the ports that place something.
type StepKey = (usize, usize, usize, Vec<usize>);

/// Rule, by step the classes it looks at, how the items it asks of are placed, and the roles it asks for of which ports meet.
type TermKey = (usize, [Option<usize>; 4], Vec<Chain>, Vec<Role>);

#[derive(Debug)]
struct PlacedRule {
    /// Index in [`RULES`].
    index: usize,
    stand: Vec<Step>,
    meet: Vec<Role>,
    /// Options of which the rule reads the same.
    classes: Classes,
}

/// Options of one step and block that are alike before a rule, some of whose ports place something.
#[derive(Debug)]
struct StepClasses {
    /// By option; of those in the block alone.
    of: Vec<usize>,
    members: Vec<Vec<usize>>,
}

/// The joints that place one item, from its own on; `None` if nothing places it.
type Chain = Option<Vec<[(PlacedItem, usize); 2]>>;

/// An item of an assembly, whichever option it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum PlacedItem {
    Step(usize),
    Adapter(AdapterId, usize),
}

/// A rule before builds whose items are placed by the same joints.
#[derive(Debug)]
struct Term {
    /// Index in [`RULES`].
    rule: usize,
    /// By step, index in [`OfPlaces::by_step`]; `None` where all options of the block are alike.
    by_step: [Option<usize>; 4],
    /// The last step that it looks at.
    last: usize,
    rows: Rows,
}

/// What is known, by the classes of the steps before the last.
#[derive(Debug)]
struct Rows {
    /// How many classes the second and the third step have.
    counts: [usize; 2],
    /// By the class of the first step, once it is asked for: by those of the others, one more than the place in `known`.
    of: Vec<Vec<usize>>,
    known: Vec<Row>,
}

impl Rows {
    /// None yet of so many classes.
    fn new(counts: [usize; 3]) -> Self {
        Self { counts: [counts[1], counts[2]], of: vec![Vec::new(); counts[0]], known: Vec::new() }
    }

    fn get(&self, [first, second, third]: [usize; 3]) -> Option<&Row> {
        let at = *self.of[first].get(second * self.counts[1] + third)?;
        at.checked_sub(1).map(|at| &self.known[at])
    }

    fn or_insert_with(&mut self, [first, second, third]: [usize; 3], row: impl FnOnce() -> Row) -> &mut Row {
        let of = &mut self.of[first];
        if of.is_empty() {
            of.resize(self.counts[0] * self.counts[1], 0);
        }
        let at = &mut of[second * self.counts[1] + third];
        if *at == 0 {
            self.known.push(row());
            *at = self.known.len();
        }
        &mut self.known[*at - 1]
    }
}

/// What is known of the options of the last step.
#[derive(Debug)]
struct Row {
    judged: Bits,
    /// Those judged to be worse than *bolts up*, *bolts up with work*, *check first*.
    worse: [Bits; 3],
}

impl OfPlaces {
    /// The rule of a term, by its index.
    #[cfg(test)]
    pub fn rule(&self, term: usize) -> usize {
        self.terms[term].rule
    }

    /// Takes a rule on, by its index.
    pub fn add(
        &mut self,
        desk: &Desk,
        options: [usize; 4],
        apart: &BTreeSet<(Step, usize)>,
        index: usize,
        Asked { stand, listed, meet, .. }: Asked,
    ) {
        let alike = Step::ALL.map(|step| RULES[index].alike(desk, step));
        let partners = listed.map(|steps| (steps, partners(desk, options, steps)));
        let classes = Classes::new(options, apart, |step, a, b| {
            alike[step as usize](a, b)
                && partners.iter().all(|(steps, partners)| {
                    let of = steps.iter().zip(partners).filter(|(of, _)| **of == step);
                    of.map(|(_, partners)| partners).all(|partners| partners[a] == partners[b])
                })
        });
        self.rules.push(PlacedRule { index, stand, meet, classes });
    }

    /// The terms of builds with one option of each of four blocks, those that look at earlier steps first.
    pub fn terms(
        &mut self,
        desk: &Desk,
        blocks: &[Vec<Vec<usize>>; 4],
        block: Blocks,
        assembly: &Assembly,
    ) -> Vec<usize> {
        let mut terms: Vec<usize> =
            (0..self.rules.len()).map(|rule| self.term(desk, blocks, block, assembly, rule)).collect();
        terms.sort_by_key(|&term| self.terms[term].last);
        terms
    }

    fn term(
        &mut self,
        desk: &Desk,
        blocks: &[Vec<Vec<usize>>; 4],
        block: Blocks,
        assembly: &Assembly,
        rule: usize,
    ) -> usize {
        let chains = chains(assembly, &self.rules[rule].stand);
        let classes = [0, 1, 2, 3].map(|step| {
            let ends = chains.iter().flatten().flatten().flatten();
            let mut ports: Vec<usize> =
                ends.filter(|(item, _)| *item == PlacedItem::Step(step)).map(|(_, port)| *port).collect();
            ports.sort_unstable();
            ports.dedup();
            // Where the rule looks at nothing it makes no difference of which block an option is.
            let looks = !ports.is_empty() || self.rules[rule].classes.counts()[step] > 1;
            looks.then(|| self.classes(desk, &blocks[step][block[step]], rule, step, block[step], ports))
        });
        let meets = |role: &Role| assembly.unplaced().joints.iter().any(|joint| joint.role == *role);
        let joined = self.rules[rule].meet.iter().copied().filter(meets).collect();
        let key = (rule, classes, chains, joined);
        if let Some(&known) = self.known_terms.get(&key) {
            return known;
        }
        let by_step = classes.map(|at| at.filter(|&at| self.by_step[at].members.len() > 1));
        let last = (0..4).rev().find(|&step| by_step[step].is_some()).unwrap_or_default();
        let counts = [0, 1, 2].map(|step| match by_step[step] {
            Some(at) if step < last => self.by_step[at].members.len(),
            _ => 1,
        });
        self.terms.push(Term { rule: self.rules[rule].index, by_step, last, rows: Rows::new(counts) });
        self.known_terms.insert(key, self.terms.len() - 1);
        self.terms.len() - 1
    }

    /// The classes of the options of a block, by what a rule reads of them and how some of their ports sit.
    fn classes(
        &mut self,
        desk: &Desk,
        options: &[usize],
        rule: usize,
        step: usize,
        block: usize,
        ports: Vec<usize>,
    ) -> usize {
        let key = (rule, step, block, ports);
        if let Some(&known) = self.known_by_step.get(&key) {
            return known;
        }
        let mut of = vec![usize::MAX; options.last().map_or(0, |last| last + 1)];
        let mut members: Vec<Vec<usize>> = Vec::new();
        let mut numbers: BTreeMap<(usize, Vec<Option<Sits>>), usize> = BTreeMap::new();
        for &option in options {
            let item = Step::ALL[step].item(option);
            let sits = |&port: &usize| item.and_then(|item| sits(desk, item, port));
            let class = (self.rules[rule].classes.of(step, option), key.3.iter().map(sits).collect());
            let number = *numbers.entry(class).or_insert_with(|| members.len());
            if number == members.len() {
                members.push(Vec::new());
            }
            members[number].push(option);
            of[option] = number;
        }
        self.by_step.push(StepClasses { of, members });
        self.known_by_step.insert(key, self.by_step.len() - 1);
        self.by_step.len() - 1
    }

    /// The classes of a choice as far as a term looks at them before its last step.
    fn key(&self, term: &Term, choice: Choice) -> [usize; 3] {
        [0, 1, 2].map(|step| match term.by_step[step] {
            Some(at) if step < term.last => self.by_step[at].of[choice[step]],
            _ => 0,
        })
    }
}

impl Terms {
    /// Whether the rules that ask where items stand, and of the steps look at `last` last, let a build of an assembly be no worse
    /// than `worst`. What is chosen at later steps makes no difference to them.
    pub fn stands(&mut self, desk: &Desk, joined: usize, last: usize, choice: Choice, worst: Verdict) -> bool {
        (0..self.joined[joined].places.len()).all(|place| {
            let term = self.joined[joined].places[place];
            self.of_places.terms[term].last != last || !self.is_worse(desk, joined, term, choice, worst)
        })
    }

    /// Whether a term is worse than `worst` for a choice: as it was judged, or is now.
    pub(super) fn is_worse(&mut self, desk: &Desk, joined: usize, at: usize, choice: Choice, worst: Verdict) -> bool {
        let term = &self.of_places.terms[at];
        let (key, option) = (self.of_places.key(term, choice), choice[term.last]);
        if let Some(row) = term.rows.get(key).filter(|row| row.judged.holds(option)) {
            return row.worse[worst as usize].holds(option);
        }
        choose(&mut self.whole_build, choice);
        let stack = self.joined[joined].assembly.stand(&self.whole_build, &self.given.units.at(desk));
        let verdict = small::judge(desk, &self.whole_build, &self.given, RULES[term.rule], stack);
        self.of_places.keep(at, key, self.options[term.last], option, verdict);
        verdict > worst
    }

    /// Takes out the options of step `last` that are known to be worse where they stand, as far as terms say that look at the
    /// step before it, or those that do not.
    pub fn leave_out_worse(
        &self,
        joined: usize,
        last: usize,
        choice: Choice,
        worst: Verdict,
        looks_before: bool,
        options: &mut Bits,
    ) {
        for &at in &self.joined[joined].places {
            let term = &self.of_places.terms[at];
            if term.last == last
                && term.by_step[last - 1].is_some() == looks_before
                && let Some(row) = term.rows.get(self.of_places.key(term, choice))
            {
                options.difference_with(&row.worse[worst as usize]);
            }
        }
    }
}

impl OfPlaces {
    /// Keeps what a term comes to with one option of its last step, and so with all that are alike to it.
    fn keep(&mut self, term: usize, key: [usize; 3], options: usize, option: usize, verdict: Verdict) {
        let term = &mut self.terms[term];
        let none = || Bits::none(options);
        let row = term.rows.or_insert_with(key, || Row { judged: none(), worse: [none(), none(), none()] });
        let alike = term.by_step[term.last].map(|at| {
            let classes = &self.by_step[at];
            classes.members[classes.of[option]].as_slice()
        });
        // A term that looks at nothing comes to the same with every option.
        let every: Vec<usize> = if alike.is_none() { (0..options).collect() } else { Vec::new() };
        for &option in alike.unwrap_or(&every) {
            row.judged.add(option);
            for (worse, than) in row.worse.iter_mut().zip(Verdict::ALL) {
                if verdict > than {
                    worse.add(option);
                }
            }
        }
    }
}

/// How a port sits and lays what it joins, as a key: equal if the poses are, bit for bit, and the patterns.
type Sits = ([u64; 3], Towards, Towards, Option<usize>);

fn sits(desk: &Desk, item: ItemRef, port: usize) -> Option<Sits> {
    desk.catalogue().body(item).ports[port].pose.map(|Pose { at, faces, up }| {
        let at = at.point();
        ([at.x, at.y, at.z].map(|length| length.m().to_bits()), faces, up, desk.lays_as((item, port)))
    })
}

/// By what joints the items of some steps, and the adapters, are placed.
fn chains(assembly: &Assembly, stand: &[Step]) -> Vec<Chain> {
    let placed = &assembly.unplaced().placed;
    let item = |at: usize| match placed[at].item {
        ItemRef::Adapter(id) => PlacedItem::Adapter(id, placed[at].copy),
        item => PlacedItem::Step(Step::of(item).map_or(0, |(step, _)| step as usize)),
    };
    let chain = |at: usize| {
        let ends = |joint: crate::build::StackJoint| [joint.carried, joint.carrier].map(|(at, port)| (item(at), port));
        assembly.placing(at).map(ends).collect()
    };
    let asked = stand.iter().map(|&step| (0..placed.len()).find(|&at| item(at) == PlacedItem::Step(step as usize)));
    let adapters = (0..placed.len()).filter(|&at| matches!(placed[at].item, ItemRef::Adapter(_))).map(Some);
    asked.chain(adapters).map(|at| at.map(chain)).collect()
}

/// For each option of two steps, the options of the other that it is listed with, in order.
fn partners(desk: &Desk, options: [usize; 4], steps: [Step; 2]) -> [Vec<Vec<usize>>; 2] {
    let [mut of_first, mut of_second] = steps.map(|step| vec![Vec::new(); options[step as usize]]);
    for (option, partners) in of_first.iter_mut().enumerate() {
        *partners = super::two::listed_with(desk, steps.map(|step| step as usize), option);
        for &partner in partners.iter() {
            of_second[partner].push(option);
        }
    }
    [of_first, of_second]
}
