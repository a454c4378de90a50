//! The best complete sets themselves, from any partial build.
//!
//! Sets are taken verdict by verdict from the best. Within one, the pairs of machine and carrying come in the order of the least
//! that a set through them can cost, and what costs more than the last of the sets found is left out: it is no better.
//!
//! A set beats another if it is no worse in its answer and in every measure, and better in one. What beats a set therefore stands
//! before it, by whatever measure they are ordered first: so the sets found tell by themselves which of them nothing beats.

use std::cmp::Ordering;

use super::terms::{Bits, Blocks, Choice, Terms};
use crate::build::{Build, Step};
use crate::finding::Verdict;
use crate::fit::{Answer, ComeBy, Desk, PartsToBuy, bought, judge};
use crate::item::{ItemRef, SuppliedWith};
use crate::order;
use crate::quantity::{Angle, Length, Money, Work};

/// Sets told at most: more nobody reads.
pub const MOST_SETS: usize = 20;

/// Sets judged in full at most for one verdict. Own choice: some seconds.
pub(super) const MOST_JUDGED: usize = 4_096;

/// What sets of one answer are ordered by first; the other measures follow in this order, and last the order of the tables.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum SetOrder {
    /// The cheapest first; a price that is not known comes last.
    #[default]
    Price,
    /// The shortest machine first.
    Length,
    /// The greatest departure angle first.
    Departure,
    /// The fewest hours first; hours that are not all known come last.
    Hours,
    /// The fewest items to buy first.
    OnHand,
}

impl SetOrder {
    /// Every order.
    pub const ALL: [Self; 5] = [Self::Price, Self::Length, Self::Departure, Self::Hours, Self::OnHand];

    /// The word that files and commands write.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Price => "price",
            Self::Length => "length",
            Self::Departure => "departure",
            Self::Hours => "hours",
            Self::OnHand => "on-hand",
        }
    }
}

/// The best complete sets of a partial build.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sets {
    /// The sets, best first.
    pub found: Vec<Set>,
    /// Whether these are shown to be the best: nothing was left out for being too much to look at.
    pub is_exact: bool,
}

/// One complete set.
#[derive(Debug, Clone, PartialEq)]
pub struct Set {
    /// The build.
    pub build: Build,
    /// The worse of fit and work.
    pub verdict: Verdict,
    /// What it is ranked by.
    pub measures: Measures,
    /// Whether no set beats it.
    pub is_unbeaten: bool,
}

/// What sets are ranked by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measures {
    /// What the parts with a price come to, and how many have none.
    pub price: (Money, usize),
    /// Greatest length of the finished machine.
    pub length: Option<Length>,
    /// Its departure angle.
    pub departure: Option<Angle>,
    /// Workshop time as far as it is stated, and whether that is only a part of it.
    pub hours: (Work, bool),
    /// Items to buy.
    pub to_buy: usize,
}

impl Measures {
    fn of(answer: &Answer) -> Self {
        Self {
            price: answer.parts.known(),
            length: answer.footprint.length,
            departure: answer.footprint.departure.map(|end| end.angle),
            hours: answer.strip.total(),
            to_buy: to_buy(&answer.parts),
        }
    }

    /// By [`SetOrder::ALL`], less is better: what is not known, then the figure.
    fn figures(&self) -> [(usize, f64); 5] {
        let (money, open) = self.price;
        let (work, is_least) = self.hours;
        let known = |figure: Option<f64>| figure.map_or((1, 0.0), |figure| (0, figure));
        [
            (open, money.hundredths() as f64),
            known(self.length.map(Length::m)),
            known(self.departure.map(|angle| -angle.rad())),
            (usize::from(is_least), work.s()),
            (0, self.to_buy as f64),
        ]
    }
}

fn to_buy(parts: &PartsToBuy) -> usize {
    let lines = parts.lines.iter().filter(|line| line.come_by == ComeBy::Buy);
    lines.map(|line| line.quantity as usize).sum::<usize>() + parts.fittings.len()
}

fn by_figure(a: &(usize, f64), b: &(usize, f64)) -> Ordering {
    // Minus zero is zero.
    a.0.cmp(&b.0).then_with(|| (a.1 + 0.0).total_cmp(&(b.1 + 0.0)))
}

/// A set with its place in the order.
#[derive(Debug, Clone)]
struct Ranked {
    verdict: Verdict,
    figures: [(usize, f64); 5],
    choice: Choice,
    measures: Measures,
}

impl Ranked {
    fn compare(&self, other: &Self, first: SetOrder) -> Ordering {
        let by = |measure: SetOrder| by_figure(&self.figures[measure as usize], &other.figures[measure as usize]);
        let rest = SetOrder::ALL.into_iter().filter(|measure| *measure != first);
        let measured =
            std::iter::once(first).chain(rest).map(by).find(|order| order.is_ne()).unwrap_or(Ordering::Equal);
        self.verdict.cmp(&other.verdict).then(measured).then_with(|| self.choice.cmp(&other.choice))
    }

    fn beats(&self, other: &Self) -> bool {
        let mut orders = std::iter::once(self.verdict.cmp(&other.verdict))
            .chain(self.figures.iter().zip(&other.figures).map(|(a, b)| by_figure(a, b)))
            .peekable();
        let mut is_better = false;
        orders.all(|order| {
            is_better |= order.is_lt();
            order.is_le()
        }) && is_better
    }
}

/// What is known of the cost of a set before it is judged, in the order it counts; nothing where sets are ordered by what only
/// judging tells.
type Cost = [i64; 3];

fn plus(a: Cost, b: Cost) -> Cost {
    [0, 1, 2].map(|at| a[at].saturating_add(b[at]))
}

fn cost(parts: &PartsToBuy, order: SetOrder) -> Cost {
    let (money, open) = parts.known();
    let count = |count: usize| i64::try_from(count).unwrap_or(i64::MAX);
    match order {
        SetOrder::Price => [count(open), money.hundredths(), 0],
        SetOrder::OnHand => [count(to_buy(parts)), count(open), money.hundredths()],
        SetOrder::Length | SetOrder::Departure | SetOrder::Hours => [0; 3],
    }
}

/// Searches; at most `most_judged` sets of one verdict are judged in full.
pub(super) fn search(desk: &Desk, terms: &mut Terms, build: &Build, order: SetOrder, most_judged: usize) -> Sets {
    let fixed = Step::ALL.map(|step| step.chosen(build));
    let least = [0, 1, 2, 3].map(|step| {
        (0..terms.options()[step]).map(|option| least_cost(desk, build, Step::ALL[step], option, order)).collect()
    });
    let mut search =
        Search { desk, build, order, least, found: Vec::new(), most_judged, left: 0, is_exact: true, terms };
    for worst in [Verdict::BoltsUp, Verdict::BoltsUpWithWork, Verdict::CheckFirst] {
        search.verdict(worst, fixed);
        if search.found.len() >= MOST_SETS {
            break;
        }
    }
    let Search { found, is_exact, .. } = search;
    let is_unbeaten: Vec<bool> = found.iter().map(|set| !found.iter().any(|other| other.beats(set))).collect();
    let sets = found.into_iter().zip(is_unbeaten).map(|(set, is_unbeaten)| Set {
        build: with(build, set.choice),
        verdict: set.verdict,
        measures: set.measures,
        is_unbeaten,
    });
    Sets { found: sets.collect(), is_exact }
}

fn with(build: &Build, choice: Choice) -> Build {
    let mut build = build.clone();
    for step in Step::ALL {
        step.choose(&mut build, choice[step as usize]);
    }
    build
}

/// The least that an option adds to the cost of any set. A seat may come with another item.
fn least_cost(desk: &Desk, build: &Build, step: Step, option: usize, order: SetOrder) -> Cost {
    let Some(item) = step.item(option) else { return [0; 3] };
    if let ItemRef::Seat(id) = item
        && desk.catalogue().seat(id).supplied_with != SuppliedWith::Kit
    {
        return [0; 3];
    }
    let mut alone = Build::default();
    alone.side.on_hand.clone_from(&build.side.on_hand);
    step.choose(&mut alone, option);
    cost(&bought(desk.catalogue(), &alone), order)
}

struct Search<'a> {
    desk: &'a Desk,
    terms: &'a mut Terms,
    build: &'a Build,
    order: SetOrder,
    /// By step and option, the least it costs.
    least: [Vec<Cost>; 4],
    /// The sets found, best first.
    found: Vec<Ranked>,
    most_judged: usize,
    /// Sets of this verdict that may still be judged.
    left: usize,
    is_exact: bool,
}

/// Machine and carrying of one assembly, with the least that a set through them costs.
struct Start {
    least: Cost,
    joined: usize,
    choice: Choice,
    seats: Bits,
    implements: Bits,
}

impl Search<'_> {
    /// Finds the sets that are no worse than `worst`.
    fn verdict(&mut self, worst: Verdict, fixed: [Option<usize>; 4]) {
        self.left = self.most_judged;
        let mut starts = self.starts(worst, fixed);
        order::sort(&mut starts, |a, b| a.least.cmp(&b.least).then_with(|| a.choice.cmp(&b.choice)));
        for start in starts {
            if self.is_too_dear(start.least) {
                return;
            }
            self.complete(worst, start);
        }
    }

    /// Machine and carrying of every assembly that go together, with the seats and implements that go with both.
    fn starts(&mut self, worst: Verdict, fixed: [Option<usize>; 4]) -> Vec<Start> {
        let mut starts = Vec::new();
        let options = self.terms.options();
        let blocks = self.terms.blocks().clone();
        for m in 0..blocks[0].len() {
            for c in 0..blocks[1].len() {
                for s in 0..blocks[2].len() {
                    for i in 0..blocks[3].len() {
                        let block = [m, c, s, i];
                        let mut members = [0, 1, 2, 3].map(|step| {
                            let mut bits = Bits::none(options[step]);
                            let all = blocks[step][block[step]].iter().copied();
                            all.filter(|&at| fixed[step].is_none_or(|it| it == at)).for_each(|at| bits.add(at));
                            bits
                        });
                        if members.iter().any(Bits::is_empty) {
                            continue;
                        }
                        let joined = self.terms.joined(self.desk, Blocks(block));
                        let of = self.terms.of_joined(joined);
                        if of.floor > worst {
                            continue;
                        }
                        for (members, alone) in members.iter_mut().zip(&of.alone) {
                            members.retain(|at| alone[at] <= worst);
                        }
                        if members.iter().all(|members| !members.is_empty()) {
                            self.assembly(worst, joined, &members, &mut starts);
                        }
                    }
                }
            }
        }
        starts
    }

    fn assembly(&mut self, worst: Verdict, joined: usize, members: &[Bits; 4], starts: &mut Vec<Start>) {
        let options = self.terms.options();
        let row = |terms: &Terms, pair: usize, option: usize| terms.pair(joined, pair).row(worst, option).clone();
        for m in members[0].iter() {
            let mut carrying = members[1].clone();
            carrying.intersect_with(&row(self.terms, 0, m));
            for c in carrying.iter() {
                let (mut seats, mut implements) = (Bits::none(options[2]), Bits::none(options[3]));
                seats.set_to_intersection(&row(self.terms, 1, m), &row(self.terms, 3, c), &members[2]);
                implements.set_to_intersection(&row(self.terms, 2, m), &row(self.terms, 4, c), &members[3]);
                let cheapest = |step: usize, of: &Bits| of.iter().map(|at| self.least[step][at]).min();
                let Some((seat, implement)) = cheapest(2, &seats).zip(cheapest(3, &implements)) else { continue };
                let least = [self.least[0][m], self.least[1][c], seat, implement].into_iter().fold([0; 3], plus);
                // Any seat and implement of the assembly stand for the others where these make no difference.
                let [seat, implement] = [&seats, &implements].map(|of| of.iter().next().unwrap_or_default());
                starts.push(Start { least, joined, choice: Choice([m, c, seat, implement]), seats, implements });
            }
        }
    }

    /// Whether a set that costs at least so much is certainly none of the best.
    fn is_too_dear(&self, least: Cost) -> bool {
        self.found.len() >= MOST_SETS && self.found.last().is_some_and(|last| least > self.cost_of(last.choice))
    }

    /// What a set costs, without what every set does.
    fn cost_of(&self, choice: Choice) -> Cost {
        let mut build = with(self.build, choice);
        build.side.adapters.clear();
        cost(&bought(self.desk.catalogue(), &build), self.order)
    }

    fn complete(&mut self, worst: Verdict, start: Start) {
        let Start { joined, mut choice, mut seats, mut implements, .. } = start;
        if !(0..2).all(|step| self.terms.stands(self.desk, joined, step, choice, worst)) {
            return;
        }
        for looks_before in [false, true] {
            self.terms.leave_out_worse(joined, 2, choice, worst, looks_before, &mut seats);
        }
        self.terms.leave_out_worse(joined, 3, choice, worst, false, &mut implements);
        let ordered = |step: usize, of: &Bits, least: &[Vec<Cost>; 4]| {
            let mut all: Vec<usize> = of.iter().collect();
            order::sort_by_key(&mut all, |&at| least[step][at]);
            all
        };
        let (seats, implements) = (ordered(2, &seats, &self.least), ordered(3, &implements, &self.least));
        let base = plus(self.least[0][choice[0]], self.least[1][choice[1]]);
        for &s in &seats {
            choice[2] = s;
            let with_seat = plus(base, self.least[2][s]);
            let mut stands = None;
            for &i in &implements {
                if self.is_too_dear(plus(with_seat, self.least[3][i])) {
                    break;
                }
                choice[3] = i;
                if !self.terms.pair(joined, 5).row(worst, s).holds(i) {
                    continue;
                }
                if !*stands.get_or_insert_with(|| self.terms.stands(self.desk, joined, 2, choice, worst)) {
                    break;
                }
                if self.found.iter().any(|known| known.choice == choice) || self.is_too_dear(self.cost_of(choice)) {
                    continue;
                }
                if self.terms.within(self.desk, joined, choice, worst) {
                    self.add(choice);
                }
            }
        }
    }

    fn add(&mut self, choice: Choice) {
        if self.left == 0 {
            self.is_exact = false;
            return;
        }
        self.left -= 1;
        let answer = judge(self.desk, &with(self.build, choice));
        let measures = Measures::of(&answer);
        let set = Ranked { verdict: answer.verdict, figures: measures.figures(), choice, measures };
        let at = self.found.partition_point(|known| known.compare(&set, self.order).is_lt());
        self.found.insert(at, set);
        self.found.truncate(MOST_SETS);
    }
}
