//! How far builds are from bolting up, counted term by term.
//!
//! The count of a build is a sum, and each term of it looks at few of the four steps. What is said of one option alone, or of
//! two together, is counted when it is first asked for and kept. The sum over the steps that are decided already is never
//! more than that of the whole build, so that most builds are passed over early.

use crate::build::{Stack, Step, is_mountable};
use crate::finding::Verdict;
use crate::fit::desk::Desk;
use crate::fit::judge::unanswered_role;
use crate::fit::rule::{RULES, Reads};
use crate::item::{ItemRef, Role};

use super::{Blocks, Choice, JoinedTable, PAIRS, Terms, joints, small};

/// How far a build is from bolting up; less is nearer.
///
/// Compared in this order: the verdict; the ports that must be answered and are not, the items to be mounted that stand nowhere,
/// and a frame that the implement hangs past; the joints and rules whose worst finding is *won't mount*, then those with *check first*, then those with work. A line without
/// an answer, which the workshop runs, counts as a joint with work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub(crate) struct Distance {
    pub verdict: Verdict,
    pub gaps: u32,
    /// Joints and rules at *won't mount*, *check first*, *with work*.
    pub counts: [u32; 3],
}

impl Distance {
    /// With a joint or rule more that comes to `verdict`.
    pub fn count(&mut self, verdict: Verdict) {
        self.verdict = self.verdict.max(verdict);
        match verdict {
            Verdict::WontMount => self.counts[0] += 1,
            Verdict::CheckFirst => self.counts[1] += 1,
            Verdict::BoltsUpWithWork => self.counts[2] += 1,
            Verdict::BoltsUp => {}
        }
    }

    /// With a port more that nothing answers.
    pub fn open(&mut self, role: Role) {
        match unanswered_role(role) {
            Verdict::WontMount => {
                self.verdict = Verdict::WontMount;
                self.gaps += 1;
            }
            less => self.count(less),
        }
    }

    fn add(&mut self, other: Counted) {
        self.verdict = self.verdict.max(other.verdict);
        for (count, more) in self.counts.iter_mut().zip(other.counts) {
            *count += u32::from(more);
        }
    }
}

/// What some terms come to, small enough to be kept for every two options.
#[derive(Debug, Clone, Copy, Default)]
struct Counted {
    known: bool,
    verdict: Verdict,
    counts: [u8; 3],
}

impl From<Distance> for Counted {
    fn from(Distance { verdict, counts, .. }: Distance) -> Self {
        // There are far fewer rules and joints of two items.
        Self { known: true, verdict, counts: counts.map(|count| u8::try_from(count).unwrap_or(u8::MAX)) }
    }
}

/// A term of the count.
#[derive(Debug, Clone, Copy)]
enum Term {
    /// Joint of the assembly, by index.
    Joint(usize),
    /// Rule judged by classes of items, by index.
    Small(usize),
    /// Rule that asks which ports meet, by index in the tables of the assembly.
    Table(usize),
}

/// The terms of the builds of one assembly by the steps they look at, and what of their sums is known.
#[derive(Debug)]
pub(crate) struct Weights {
    /// What all builds of the assembly have in common.
    pub base: Distance,
    alone: [Vec<Term>; 4],
    pairs: [Vec<Term>; 6],
    /// Terms that look at more steps, with the steps.
    more: Vec<([bool; 4], Term)>,
    /// By step and place in the block.
    of_one: [Vec<Counted>; 4],
    /// By pair and places in both blocks.
    of_two: [Vec<Counted>; 6],
    /// How many options each block has.
    sizes: [usize; 4],
}

impl Terms {
    /// What all builds of an assembly have in common.
    pub fn base(&mut self, desk: &Desk, joined: usize, block: Blocks) -> Distance {
        if !self.weights.contains_key(&joined) {
            let weights = self.make_weights(desk, joined, block);
            self.weights.insert(joined, weights);
        }
        self.weights[&joined].base
    }

    /// The weights of an assembly whose base has been asked for, to be given back to [`Terms::put_back`].
    pub fn take_weights(&mut self, joined: usize) -> Option<Weights> {
        self.weights.remove(&joined)
    }

    /// Keeps the weights of an assembly for the next time.
    pub fn put_back(&mut self, joined: usize, weights: Weights) {
        self.weights.insert(joined, weights);
    }

    fn make_weights(&self, desk: &Desk, joined: usize, block: Blocks) -> Weights {
        let of = &self.joined[joined];
        let first = self.first_of(block);
        let sizes = [0, 1, 2, 3].map(|step| self.blocks[step][block[step]].len());
        let stack = of.assembly.unplaced();
        let mut base = Distance::default();
        stack.open.iter().for_each(|open| base.open(open.role));
        let nowhere = stack.loose.iter().filter(|&&item| asks_for_a_place(desk, item)).count();
        base.gaps += u32::try_from(nowhere).unwrap_or(u32::MAX) + u32::from(is_passed_by(stack));
        let mut weights = Weights {
            base,
            alone: Default::default(),
            pairs: Default::default(),
            more: Vec::new(),
            of_one: sizes.map(|size| vec![Counted::default(); size]),
            of_two: PAIRS.map(|(a, b)| vec![Counted::default(); sizes[a] * sizes[b]]),
            sizes,
        };
        for (index, joint) in stack.joints.iter().enumerate() {
            let mut looks_at = [false; 4];
            for (at, _) in [joint.carrier, joint.carried] {
                if let Some((step, _)) = Step::of(stack.placed[at].item) {
                    looks_at[step as usize] = true;
                }
            }
            if looks_at == [false; 4] {
                weights.base.count(joints::judge(desk, &self.given, &of.assembly, index, first));
            }
            weights.take(Term::Joint(index), looks_at);
        }
        for (index, rule) in self.small.iter().enumerate() {
            let looks_at = steps_of(rule.table.looks_at());
            if looks_at == [false; 4] {
                weights.base.count(rule.verdict(first));
            }
            weights.take(Term::Small(index), looks_at);
        }
        for (index, table) in of.tables.iter().chain(&of.plain_tables).enumerate() {
            let looks_at = steps_of(table.table.looks_at());
            if looks_at == [false; 4] {
                weights.base.count(self.of_table(table, first));
            }
            weights.take(Term::Table(index), looks_at);
        }
        weights
    }

    /// The place of an option in its block.
    fn place(&self, step: usize, option: usize) -> usize {
        self.place_in_block[step][option]
    }

    /// What one more step decided adds: what is said of its option alone, and with the options of steps decided before.
    pub fn add_step(
        &mut self,
        desk: &Desk,
        joined: usize,
        weights: &mut Weights,
        (choice, decided): (Choice, [bool; 4]),
        step: usize,
        distance: &mut Distance,
    ) {
        let place = self.place(step, choice[step]);
        if !weights.of_one[step][place].known {
            weights.of_one[step][place] = self.sum(desk, joined, &weights.alone[step], choice).into();
        }
        distance.add(weights.of_one[step][place]);
        for (pair, &(a, b)) in PAIRS.iter().enumerate() {
            if !(a == step && decided[b] || b == step && decided[a]) || weights.pairs[pair].is_empty() {
                continue;
            }
            let at = self.place(a, choice[a]) * weights.sizes[b] + self.place(b, choice[b]);
            if !weights.of_two[pair][at].known {
                weights.of_two[pair][at] = self.sum(desk, joined, &weights.pairs[pair], choice).into();
            }
            distance.add(weights.of_two[pair][at]);
        }
        for &(looks_at, term) in &weights.more {
            if looks_at[step] && (0..4).all(|other| other == step || !looks_at[other] || decided[other]) {
                distance.count(self.term(desk, joined, term, choice));
            }
        }
    }

    fn sum(&mut self, desk: &Desk, joined: usize, terms: &[Term], choice: Choice) -> Distance {
        let mut sum = Distance::default();
        for &term in terms {
            sum.count(self.term(desk, joined, term, choice));
        }
        sum
    }

    fn term(&mut self, desk: &Desk, joined: usize, term: Term, choice: Choice) -> Verdict {
        let of = &self.joined[joined];
        match term {
            Term::Small(index) => self.small[index].verdict(choice),
            Term::Table(index) => {
                let tables = of.tables.iter().chain(&of.plain_tables);
                let table: Option<&JoinedTable> = tables.into_iter().nth(index);
                table.map_or(Verdict::BoltsUp, |table| self.of_table(table, choice))
            }
            Term::Joint(index) => self.joints.verdict(desk, &self.ports, &self.given, &of.assembly, index, choice),
        }
    }

    /// What the rules add that are judged build by build, and those that ask where items stand.
    pub fn add_rest(&mut self, desk: &Desk, joined: usize, choice: Choice, distance: &mut Distance) {
        for place in 0..self.joined[joined].places.len() {
            let term = self.joined[joined].places[place];
            let better = Verdict::ALL.into_iter().take(3);
            let mut verdict = Verdict::WontMount;
            for than in better {
                if !self.is_worse(desk, joined, term, choice, than) {
                    verdict = than;
                    break;
                }
            }
            distance.count(verdict);
        }
        let of = &self.joined[joined];
        super::choose(&mut self.whole_build, choice);
        let (catalogue, build) = (desk.catalogue(), &self.whole_build);
        of.assembly.place(build, &self.given.units.at(desk), &mut self.placed);
        for &rule in &of.whole {
            distance.count(match RULES[rule].reads() {
                Reads::Whole(Some(verdict)) => verdict(catalogue, build, &self.placed),
                _ => small::judge(
                    desk,
                    build,
                    &self.given,
                    RULES[rule],
                    of.assembly.stand(build, &self.given.units.at(desk)),
                ),
            });
        }
    }
}

impl Weights {
    fn take(&mut self, term: Term, looks_at: [bool; 4]) {
        let mut steps = (0..4).filter(|&step| looks_at[step]);
        match (steps.next(), steps.next(), steps.next()) {
            (None, ..) => {}
            (Some(step), None, _) => self.alone[step].push(term),
            (Some(a), Some(b), None) => {
                let pair = PAIRS.iter().position(|&pair| pair == (a, b)).expect("two of the four steps, in order");
                self.pairs[pair].push(term);
            }
            _ => self.more.push((looks_at, term)),
        }
    }
}

/// Whether an item would have to be mounted; the machine's own driving seat would not.
fn asks_for_a_place(desk: &Desk, item: ItemRef) -> bool {
    !matches!(item, ItemRef::Seat(_)) || is_mountable(desk.catalogue().body(item))
}

/// Whether the implement hangs past the frame, on the machine's own hitch.
fn is_passed_by(stack: &Stack) -> bool {
    let mut items = stack.placed.iter().map(|placed| placed.item);
    let frame = items.clone().find(|item| matches!(item, ItemRef::Frame(_)));
    let implement = items.find(|item| matches!(item, ItemRef::Implement(_)));
    frame.zip(implement).is_some_and(|(frame, implement)| !stack.carries(frame, implement))
}

fn steps_of(steps: impl Iterator<Item = usize>) -> [bool; 4] {
    let mut looks_at = [false; 4];
    steps.for_each(|step| looks_at[step] = true);
    looks_at
}
