//! A verdict in terms, each of which looks at few items, so that many builds are decided at once.
//!
//! The verdict of a build is the worst of its findings, and each finding depends on less than the
//! whole build:
//!
//! * which ports meet, and so what stays unanswered, depends on the *signatures* of the four items
//!   alone: role, end and kind of each port ([`Assembly`]);
//! * a joint depends on its two ports, which fall into few classes ([`joints`]), the closure on
//!   the two items ([`two`]);
//! * a rule depends on what it reads of each item; items that it reads alike fall into one class
//!   ([`small`]). What it comes to with some classes is never better than the best it comes to
//!   with any classes of the other steps, which gives each option alone and each two options
//!   together a verdict that no completion betters;
//! * a rule that asks where items stand depends on what it reads of them and on the ports by which
//!   they and what carries them are placed; it is judged when it is first asked for ([`places`]);
//! * what is left is judged build by build, last.
//!
//! Everything of a build but its four choices stays the same in a search: its *side*. Items of
//! which the side says something (measured, looked for, changed) are in classes of their own.

mod bits;
mod classes;
mod join;
mod joints;
mod pair;
mod places;
mod ports;
mod signature;
mod small;
#[cfg(test)]
mod tests;
mod two;
mod weigh;

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use crate::build::{Assembly, Build, Placed, Side, Step, options};
use crate::finding::Verdict;
use crate::fit::context::units::Units;
use crate::fit::desk::Desk;
use crate::fit::rule::{RULES, Reads};
use crate::item::{ItemRef, Role};

pub(crate) use bits::Bits;
pub(crate) use classes::{Blocks, Choice};
pub(crate) use pair::Pair;
pub(crate) use weigh::{Distance, Weights};

use classes::{Classes, Combination};
use joints::Joints;
use places::OfPlaces;
use ports::PortClasses;
use small::{SmallRule, Table};

/// Pairs of steps, in the order their tables stand.
pub(crate) const PAIRS: [(usize, usize); 6] = [(0, 1), (0, 2), (0, 3), (1, 2), (1, 3), (2, 3)];

/// What every build of the terms has beside its choices: the side, and the units as it tells of them.
#[derive(Debug)]
struct Given {
    side: Side,
    units: Rc<Units>,
}

impl Given {
    fn of(desk: &Desk, side: Side) -> Self {
        Self { units: Rc::new(Units::of(desk, &side)), side }
    }
}

/// The terms of every build with one side.
#[derive(Debug)]
pub(crate) struct Terms {
    given: Given,
    options: [usize; 4],
    /// Options with equal signatures: each set of four gives one assembly.
    signatures: Classes,
    blocks: [Vec<Vec<usize>>; 4],
    /// By step and option, the place in its block.
    place_in_block: [Vec<usize>; 4],
    ports: PortClasses,
    joints: Joints,
    small: Vec<SmallRule>,
    /// Rules that ask which ports meet, by index, with their classes.
    of_assembly: Vec<(usize, Classes)>,
    /// Rules that ask where items stand.
    of_places: OfPlaces,
    /// Rules judged build by build, by index.
    whole: Vec<usize>,
    joined: Vec<Joined>,
    joined_by_block: BTreeMap<Blocks, usize>,
    pairs: Vec<Pair>,
    pair_by_joints: BTreeMap<PairKey, usize>,
    /// By assembly, how far its builds are from bolting up, as far as it has been asked.
    weights: BTreeMap<usize, Weights>,
    /// The build that is judged as a whole.
    whole_build: Build,
    /// Its items in their places.
    placed: Vec<Placed>,
}

/// Pair of steps, signature of each, and the joints between them: role, whether the first step
/// carries, and the port of each.
type PairKey = (usize, [usize; 2], Vec<(Role, bool, [usize; 2])>);

/// What all builds of one assembly have in common.
#[derive(Debug)]
pub(crate) struct Joined {
    assembly: Assembly,
    /// No build of this assembly is better.
    pub floor: Verdict,
    /// By step and option: no build of this assembly with the option is better.
    pub alone: [Vec<Verdict>; 4],
    pairs: [usize; 6],
    tables: Vec<JoinedTable>,
    /// Those that look at one step at most, which `alone` has said already.
    plain_tables: Vec<JoinedTable>,
    /// Indices in [`Terms::of_places`], those that look at earlier steps first.
    places: Vec<usize>,
    whole: Vec<usize>,
}

/// A rule that asks which ports meet, for one assembly.
#[derive(Debug)]
struct JoinedTable {
    /// Index in [`Terms::of_assembly`].
    rule: usize,
    /// By step, the place in the table of each class.
    place: [Vec<usize>; 4],
    table: Table,
}

/// A build of these terms with these choices.
fn with(given: &Given, choice: Choice) -> Build {
    let mut build = Build { side: given.side.clone(), ..Build::default() };
    choose(&mut build, choice);
    build
}

fn choose(build: &mut Build, choice: Choice) {
    for step in Step::ALL {
        step.choose(build, choice[step as usize]);
    }
}

/// The item of a choice that stands where `item` stands in an assembly.
fn item_at(item: ItemRef, choice: Choice) -> ItemRef {
    let chosen = Step::of(item).and_then(|(step, _)| step.item(choice[step as usize]));
    chosen.unwrap_or(item)
}

/// What goes with the choices of a build, without the pose the arm is shown in, on which no finding rests.
pub(crate) fn side_of(build: &Build) -> Side {
    Side { pose: None, ..build.side.clone() }
}

/// The options of which the side says something.
fn apart(side: &Side) -> BTreeSet<(Step, usize)> {
    side.items().iter().copied().filter_map(Step::of).collect()
}

/// By step and option, its place among the options of its block.
fn places_in(blocks: &[Vec<Vec<usize>>; 4], options: [usize; 4]) -> [Vec<usize>; 4] {
    [0, 1, 2, 3].map(|step| {
        let mut places = vec![0; options[step]];
        for members in &blocks[step] {
            members.iter().enumerate().for_each(|(place, &option)| places[option] = place);
        }
        places
    })
}

impl Terms {
    /// The terms of builds with this side; `None` if some step has no option.
    pub fn new(desk: &Desk, side: Side) -> Option<Self> {
        let options = options(desk.catalogue());
        if options.contains(&0) {
            return None;
        }
        let (apart, given) = (apart(&side), Given::of(desk, side));
        let signatures = signature::signatures(desk, options);
        let blocks = [0, 1, 2, 3].map(|step| signatures.members(step));
        let (mut small, mut of_assembly, mut whole) = (Vec::new(), Vec::new(), Vec::new());
        let mut of_places = OfPlaces::default();
        for (index, rule) in RULES.iter().enumerate() {
            match rule.reads() {
                Reads::Items => match small::classes(desk, options, &apart, *rule) {
                    None => whole.push(index),
                    Some(classes) => small.push(SmallRule::new(desk, &given, *rule, classes)),
                },
                Reads::Joined => match small::classes(desk, options, &apart, *rule) {
                    None => whole.push(index),
                    Some(classes) => of_assembly.push((index, classes)),
                },
                Reads::Placed(asked) => of_places.add(desk, options, &apart, index, asked),
                Reads::Whole(_) => whole.push(index),
            }
        }
        small.retain(|rule| !rule.table.is_silent());
        Some(Self {
            ports: PortClasses::new(desk, &apart),
            place_in_block: places_in(&blocks, options),
            blocks,
            joints: Joints::default(),
            joined: Vec::new(),
            joined_by_block: BTreeMap::new(),
            pairs: Vec::new(),
            pair_by_joints: BTreeMap::new(),
            weights: BTreeMap::new(),
            whole_build: Build { side: given.side.clone(), ..Build::default() },
            placed: Vec::new(),
            given,
            options,
            signatures,
            small,
            of_assembly,
            of_places,
            whole,
        })
    }

    pub const fn side(&self) -> &Side {
        &self.given.side
    }

    /// How many options each step has.
    pub const fn options(&self) -> [usize; 4] {
        self.options
    }

    /// The options of each step in blocks of equal signature.
    pub const fn blocks(&self) -> &[Vec<Vec<usize>>; 4] {
        &self.blocks
    }

    /// The first options of four blocks.
    fn first_of(&self, block: Blocks) -> Choice {
        Choice([0, 1, 2, 3].map(|step| self.blocks[step][block[step]][0]))
    }

    /// The assembly of builds with one option of each of four blocks.
    pub fn joined(&mut self, desk: &Desk, block: Blocks) -> usize {
        if let Some(&known) = self.joined_by_block.get(&block) {
            return known;
        }
        let joined = self.join(desk, block);
        self.joined.push(joined);
        self.joined_by_block.insert(block, self.joined.len() - 1);
        self.joined.len() - 1
    }

    /// The assembly of a complete build.
    fn joined_of(&mut self, desk: &Desk, choice: Choice) -> usize {
        self.joined(desk, Blocks([0, 1, 2, 3].map(|step| self.signatures.of(step, choice[step]))))
    }

    pub fn of_joined(&self, joined: usize) -> &Joined {
        &self.joined[joined]
    }

    /// What goes together at an assembly, for a pair of steps in the order of [`PAIRS`].
    pub fn pair(&self, joined: usize, pair: usize) -> &Pair {
        &self.pairs[self.joined[joined].pairs[pair]]
    }

    /// Whether a build that is no worse than `worst` by its options alone, in pairs, and as its first three steps stand is so
    /// in everything.
    pub fn within(&mut self, desk: &Desk, joined: usize, choice: Choice, worst: Verdict) -> bool {
        let of = &self.joined[joined];
        let small = self.small.iter().filter(|rule| rule.needs_more_than_pairs());
        if small.map(|rule| rule.verdict(choice)).any(|verdict| verdict > worst) {
            return false;
        }
        if of.tables.iter().any(|table| self.of_table(table, choice) > worst) {
            return false;
        }
        if !self.stands(desk, joined, 3, choice, worst) {
            return false;
        }
        let of = &self.joined[joined];
        choose(&mut self.whole_build, choice);
        let (catalogue, build) = (desk.catalogue(), &self.whole_build);
        of.assembly.place(build, &self.given.units.at(desk), &mut self.placed);
        of.whole.iter().all(|&rule| {
            let verdict = match RULES[rule].reads() {
                Reads::Whole(Some(verdict)) => verdict(catalogue, build, &self.placed),
                // It has too many classes.
                _ => small::judge(
                    desk,
                    build,
                    &self.given,
                    RULES[rule],
                    of.assembly.stand(build, &self.given.units.at(desk)),
                ),
            };
            verdict <= worst
        })
    }

    /// The verdict of a complete build.
    pub fn verdict(&mut self, desk: &Desk, choice: Choice) -> Verdict {
        let joined = self.joined_of(desk, choice);
        let of = &self.joined[joined];
        let alone = (0..4).map(|step| of.alone[step][choice[step]]);
        let pairs = PAIRS.iter().zip(of.pairs).map(|(&(a, b), pair)| self.pairs[pair].verdict(choice[a], choice[b]));
        let least = alone.chain(pairs).fold(of.floor, Verdict::max);
        let better = Verdict::ALL.into_iter().filter(|&verdict| least <= verdict && verdict < Verdict::WontMount);
        for verdict in better {
            let stands = (0..3).all(|step| self.stands(desk, joined, step, choice, verdict));
            if stands && self.within(desk, joined, choice, verdict) {
                return verdict;
            }
        }
        Verdict::WontMount
    }

    fn of_table(&self, table: &JoinedTable, choice: Choice) -> Verdict {
        let classes = &self.of_assembly[table.rule].1;
        table.table.at(Combination([0, 1, 2, 3].map(|step| table.place[step][classes.of(step, choice[step])])))
    }
}
