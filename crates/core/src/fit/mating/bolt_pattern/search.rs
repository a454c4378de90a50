//! Which hole goes with which: pairs are taken one after the other, and a branch is left as soon as no motion lets the
//! pairs taken so far do better than the best full set found.

use crate::order;
use core::f64::consts::PI;

use super::pair::{Arc, P, Pair, aligned, beyond, joint_arc, joint_margin_bound, length, minus, turned};
use super::shift::Until;
use super::turn::{Pose, Rooms, WORTH, best_turn};

/// Two patterns about their own middles, with what each pair of holes allows.
#[derive(Debug)]
pub(super) struct Plates {
    pub rows: Vec<Centre>,
    pub cols: Vec<Centre>,
    /// The second pattern as seen through its back, where flipping is allowed.
    pub flipped_cols: Option<Vec<Centre>>,
    /// Row by row, `None` where no bolt goes through.
    pub allowances: Vec<Option<f64>>,
    pub required: usize,
    /// The turns that count.
    pub turns: Arc,
}

/// A hole's centre and half travel.
#[derive(Clone, Copy, Debug)]
pub(super) struct Centre {
    pub at: P,
    pub half_travel: P,
}

/// The best full set of pairs with its pose.
#[derive(Clone, Debug)]
pub(super) struct Pairing {
    pub flipped: bool,
    pub pose: Pose,
    pub pairs: Vec<Pair>,
}

/// What the search came to.
#[derive(Debug)]
pub(super) struct Searched {
    pub best: Option<Pairing>,
    /// No motion has a least margin above this.
    pub at_most: f64,
    /// The search ended before every branch was settled.
    pub cut_short: bool,
}

/// Bands of the bound on the margin, best first, in metres below the greatest conceivable margin.
///
/// Good sets are found in the first bands and close the later ones. Any values give the same answer.
const BANDS: [f64; 12] = [1e-9, 1e-4, 3e-4, 1e-3, 2e-3, 4e-3, 8e-3, 16e-3, 32e-3, 64e-3, 256e-3, f64::INFINITY];

/// Margins that are shown to be out of reach one after the other, metres. Own choice; any values give the same answer.
const FLOORS: [f64; 6] = [0.0, -1e-3, -4e-3, -16e-3, -64e-3, -256e-3];

/// What laying out a first two pairs costs, in single hole-to-hole evaluations. Own choice.
const SEEDING: u64 = 8;

/// The best way to lay one pattern on the other, if it has a margin above `least`.
///
/// `effort` bounds the work, counted in single hole-to-hole evaluations; what was spent is taken from it.
pub(super) fn search(plates: &Plates, least: f64, effort: &mut u64) -> Searched {
    let limit = *effort;
    let mut search = Search {
        plates,
        order: row_order(&plates.rows),
        ceiling: ceiling(plates),
        cols: &plates.cols,
        flipped: false,
        best: None,
        mark: -least,
        rooms: Rooms::default(),
        used: vec![false; plates.cols.len()],
        taken: Vec::with_capacity(plates.required),
        work: 0,
        limit,
    };
    let mut at_most = search.ceiling;
    if plates.required == 1 {
        search.single();
    } else {
        search.limit = limit / 8;
        search.bands(Stage::Rough);
        search.limit = limit;
        at_most = search.settle();
    }
    let cut_short = search.work > limit;
    *effort = limit.saturating_sub(search.work);
    Searched { best: search.best, at_most, cut_short }
}

struct Search<'a> {
    plates: &'a Plates,
    /// Rows in the order in which they are taken: far ones first.
    order: Vec<usize>,
    ceiling: f64,
    cols: &'a [Centre],
    flipped: bool,
    best: Option<Pairing>,
    /// Only a worst excess below this is of interest.
    mark: f64,
    rooms: Rooms,
    used: Vec<bool>,
    taken: Vec<Pair>,
    work: u64,
    /// The work after which the search gives up.
    limit: u64,
}

/// How thoroughly the sets that begin with two given pairs are looked at.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Stage {
    /// One set each, the nearest holes with the two pairs laid on each other: finds a good set to measure others by.
    Rough,
    /// Every set that may be better than the best one found.
    Full,
}

/// The first two pairs of a set.
#[derive(Clone, Copy)]
struct Seed {
    first: Pair,
    second: Pair,
    /// Place in the row order from which the others are taken.
    next: usize,
    arc: Arc,
}

impl Search<'_> {
    /// One hole: any turn will do.
    fn single(&mut self) {
        let mut best: Option<Pair> = None;
        for row in 0..self.plates.rows.len() {
            for col in 0..self.cols.len() {
                if let Some(pair) = self.pair(row, col)
                    && best.is_none_or(|b| pair.allowance > b.allowance)
                {
                    best = Some(pair);
                }
            }
        }
        if let Some(pair) = best {
            let pose = Pose { turn: 0.0, shift: minus(pair.a, pair.b), worst: -pair.allowance, support: None };
            self.best = Some(Pairing { flipped: false, pose, pairs: vec![pair] });
        }
    }

    /// Looks for the best lay below one floor after the other; the margin that no lay exceeds.
    fn settle(&mut self) -> f64 {
        let mut at_most = self.ceiling;
        let rough = self.mark;
        for floor in FLOORS {
            if -floor >= rough {
                break;
            }
            self.mark = -floor;
            self.bands(Stage::Full);
            if self.work > self.limit || self.mark < -floor {
                return at_most;
            }
            at_most = at_most.min(floor);
        }
        self.mark = rough;
        self.bands(Stage::Full);
        at_most
    }

    fn bands(&mut self, stage: Stage) {
        let mut above = f64::INFINITY;
        for band in BANDS {
            if above <= -self.mark {
                return;
            }
            let lowest = self.ceiling - band;
            for flipped in [false, true] {
                self.flipped = flipped;
                self.cols = match (&self.plates.flipped_cols, flipped) {
                    (_, false) => &self.plates.cols,
                    (Some(cols), true) => cols,
                    (None, true) => continue,
                };
                self.band(lowest, above, stage);
                if self.done() {
                    return;
                }
            }
            above = lowest;
        }
    }

    /// Nothing better is possible, or the work is used up.
    fn done(&self) -> bool {
        self.work > self.limit || -self.mark >= self.ceiling
    }

    /// All sets whose first two pairs bound the margin to `lowest..above`.
    fn band(&mut self, lowest: f64, above: f64, stage: Stage) {
        let skips = self.plates.rows.len() - self.plates.required;
        let mut seeds = Vec::new();
        for first in 0..=skips {
            for second in first + 1..=skips + 1 {
                self.seeds([first, second], lowest, above, &mut seeds);
                // Few seeds are sorted, so that of equal answers the least turned one is found; very many are taken as they come.
                if seeds.len() > 100_000 {
                    self.grow(&mut seeds, stage);
                }
                if self.done() {
                    return;
                }
            }
        }
        self.grow(&mut seeds, stage);
    }

    fn seeds(&mut self, [first, second]: [usize; 2], lowest: f64, above: f64, seeds: &mut Vec<Seed>) {
        let (r, s) = (self.order[first], self.order[second]);
        let count = self.cols.len();
        self.work += (count * count) as u64;
        for c in 0..count {
            let Some(p) = self.pair(r, c) else { continue };
            for d in 0..count {
                if c == d {
                    continue;
                }
                let Some(q) = self.pair(s, d) else { continue };
                let bound = joint_margin_bound(&p, &q);
                if bound >= above || bound < lowest || -bound >= self.mark {
                    continue;
                }
                // An excess at the mark is of no interest; the arc is that of the margins still above it.
                if let Some(arc) = self.arc(&p, &q) {
                    self.work += SEEDING;
                    seeds.push(Seed { first: p, second: q, next: second + 1, arc });
                }
            }
        }
    }

    fn grow(&mut self, seeds: &mut Vec<Seed>, stage: Stage) {
        order::sort(seeds, |a, b| turn_size(a).total_cmp(&turn_size(b)));
        if stage == Stage::Rough {
            self.roughly(seeds);
            seeds.clear();
            return;
        }
        for seed in seeds.drain(..) {
            if self.done() {
                break;
            }
            let Some(arc) = self.arc(&seed.first, &seed.second) else { continue };
            let near = Pose { turn: seed.arc.mid, shift: [0.0, 0.0], worst: f64::INFINITY, support: None };
            self.taken.clear();
            self.taken.extend([seed.first, seed.second]);
            let Some(pose) = self.pose(arc, &near, Until::Better) else { continue };
            self.used[seed.first.col] = true;
            self.used[seed.second.col] = true;
            self.descend(seed.next, arc, &pose);
            self.used[seed.first.col] = false;
            self.used[seed.second.col] = false;
        }
        seeds.clear();
    }

    /// Settles the nearest holes at the most promising of the lays that put the two pairs of a seed on each other.
    fn roughly(&mut self, seeds: &[Seed]) {
        let mut best: Option<(f64, Vec<Pair>, Pose)> = None;
        let mut mark = self.mark;
        for seed in seeds {
            if self.work > self.limit {
                return;
            }
            let pose = laid(&seed.first, &seed.second);
            if !self.plates.turns.holds(pose.turn) {
                continue;
            }
            if let Some(worst) = self.nearest(seed, &pose, mark) {
                mark = worst;
                best = Some((worst, self.taken.clone(), pose));
            }
        }
        let Some((worst, pairs, near)) = best else { return };
        self.taken = pairs;
        self.keep(Pose { worst, ..near });
        // The same pairs, better laid: turns at which two of them cannot both do better are left out from the start.
        let turns = self.plates.turns;
        let mut arc = if turns.half < PI { turns } else { Arc { mid: near.turn, half: PI } };
        for (place, second) in self.taken.iter().enumerate() {
            let first = &self.taken[usize::from(place == 0)];
            let Some(met) = joint_arc(first, second, -self.mark).and_then(|other| arc.meet(other)) else { return };
            arc = met;
        }
        if let Some(pose) = self.pose(arc, &near, Until::Best) {
            self.keep(pose);
        }
    }

    /// Takes the nearest free partner of each row; the worst excess if it stays below the mark.
    fn nearest(&mut self, seed: &Seed, pose: &Pose, mark: f64) -> Option<f64> {
        let (sin, cos) = libm::sincos(pose.turn);
        self.taken.clear();
        self.taken.extend([seed.first, seed.second]);
        self.used.fill(false);
        let mut worst = f64::NEG_INFINITY;
        for pair in [&seed.first, &seed.second] {
            self.used[pair.col] = true;
            worst = worst.max(excess(pair, sin, cos, pose.shift));
        }
        for place in seed.next..self.order.len() {
            let missing = self.plates.required - self.taken.len();
            if worst >= mark || missing > self.order.len() - place {
                break;
            }
            if missing == 0 {
                break;
            }
            let row = self.order[place];
            let mut near: Option<(f64, Pair)> = None;
            for col in 0..self.cols.len() {
                if self.used[col] {
                    continue;
                }
                let Some(pair) = self.pair(row, col) else { continue };
                self.work += 1;
                let excess = excess(&pair, sin, cos, pose.shift);
                if near.is_none_or(|(least, _)| excess < least) {
                    near = Some((excess, pair));
                }
            }
            if let Some((excess, pair)) = near
                && (excess < mark || missing == self.order.len() - place)
            {
                worst = worst.max(excess);
                self.used[pair.col] = true;
                self.taken.push(pair);
            }
        }
        self.used.fill(false);
        (worst < mark && self.taken.len() == self.plates.required).then_some(worst)
    }

    /// The turns that count at which two pairs can both do better than the mark; `None` if there are none.
    fn arc(&self, p: &Pair, q: &Pair) -> Option<Arc> {
        joint_arc(p, q, -self.mark)?.meet(self.plates.turns)
    }

    fn keep(&mut self, pose: Pose) {
        self.mark = pose.worst - WORTH;
        self.best = Some(Pairing { flipped: self.flipped, pose, pairs: self.taken.clone() });
    }

    fn pose(&mut self, arc: Arc, near: &Pose, until: Until) -> Option<Pose> {
        best_turn(&self.taken, arc, near, self.mark, until, &mut self.rooms, &mut self.work, self.limit)
    }

    /// Takes the rows from place `next` on; `pose` holds the pairs taken so far below the mark.
    fn descend(&mut self, next: usize, arc: Arc, pose: &Pose) {
        if self.taken.len() == self.plates.required {
            if let Some(pose) = self.pose(arc, pose, Until::Best) {
                self.keep(pose);
            }
            return;
        }
        let missing = self.plates.required - self.taken.len();
        if self.order.len() - next < missing {
            return;
        }
        for (excess, pair, _) in self.candidates(self.order[next], arc, pose) {
            if self.done() {
                return;
            }
            // The mark may have moved since the candidates were listed.
            let Some(arc) = self.narrowed(&pair, arc) else { continue };
            self.taken.push(pair);
            let held = if excess.max(pose.worst) < self.mark {
                Some(Pose { worst: excess.max(pose.worst), ..*pose })
            } else {
                self.pose(arc, pose, Until::Better)
            };
            if let Some(pose) = held {
                self.used[pair.col] = true;
                self.descend(next + 1, arc, &pose);
                self.used[pair.col] = false;
            }
            self.taken.pop();
        }
        if self.order.len() - next > missing && !self.done() {
            self.descend(next + 1, arc, pose);
        }
    }

    /// The partners a row can still have, nearest first.
    fn candidates(&mut self, row: usize, arc: Arc, pose: &Pose) -> Vec<(f64, Pair, Arc)> {
        let (sin, cos) = libm::sincos(pose.turn);
        let mut list = Vec::new();
        for col in 0..self.cols.len() {
            if self.used[col] {
                continue;
            }
            let Some(pair) = self.pair(row, col) else { continue };
            self.work += 1;
            let Some(arc) = self.narrowed(&pair, arc) else { continue };
            list.push((excess(&pair, sin, cos, pose.shift), pair, arc));
        }
        order::sort(&mut list, |a, b| a.0.total_cmp(&b.0).then(a.1.col.cmp(&b.1.col)));
        list
    }

    /// The turns at which a pair goes with all those taken; `None` if there are none.
    fn narrowed(&mut self, pair: &Pair, arc: Arc) -> Option<Arc> {
        if -pair.allowance >= self.mark {
            return None;
        }
        let mut arc = arc;
        for other in &self.taken {
            self.work += 1;
            arc = arc.meet(joint_arc(other, pair, -self.mark)?)?;
        }
        Some(arc)
    }

    fn pair(&self, row: usize, col: usize) -> Option<Pair> {
        let allowance = self.plates.allowances[row * self.cols.len() + col]?;
        let (a, b) = (&self.plates.rows[row], &self.cols[col]);
        Some(Pair { row, col, a: a.at, b: b.at, allowance, slot_a: a.half_travel, slot_b: b.half_travel })
    }
}

/// How far a pair is from fitting at a pose, less what it allows.
pub(super) fn excess(pair: &Pair, sin: f64, cos: f64, shift: P) -> f64 {
    let offset =
        minus([pair.b[0] * cos - pair.b[1] * sin + shift[0], pair.b[0] * sin + pair.b[1] * cos + shift[1]], pair.a);
    beyond(offset, pair.slot_a, turned(pair.slot_b, sin, cos)).0 - pair.allowance
}

/// The pose that lays the line between two pairs on itself, middle on middle.
fn laid(p: &Pair, q: &Pair) -> Pose {
    let turn = aligned(p, q);
    let (sin, cos) = libm::sincos(turn);
    let (a, b) = ([p.a[0] + q.a[0], p.a[1] + q.a[1]], turned([p.b[0] + q.b[0], p.b[1] + q.b[1]], sin, cos));
    Pose { turn, shift: [0.5 * (a[0] - b[0]), 0.5 * (a[1] - b[1])], worst: f64::INFINITY, support: None }
}

fn turn_size(seed: &Seed) -> f64 {
    libm::remainder(seed.arc.mid, core::f64::consts::TAU).abs()
}

/// The greatest margin that the allowances alone could leave: the `required`-th best row or column, whichever is less.
fn ceiling(plates: &Plates) -> f64 {
    let width = plates.cols.len();
    let nth = |mut best: Vec<f64>| {
        order::sort(&mut best, f64::total_cmp);
        best.len().checked_sub(plates.required).map_or(f64::NEG_INFINITY, |place| best[place])
    };
    let mut rows = vec![f64::NEG_INFINITY; plates.rows.len()];
    let mut cols = vec![f64::NEG_INFINITY; width];
    for (index, allowance) in plates.allowances.iter().enumerate() {
        if let Some(allowance) = allowance {
            rows[index / width] = rows[index / width].max(*allowance);
            cols[index % width] = cols[index % width].max(*allowance);
        }
    }
    nth(rows).min(nth(cols))
}

/// Rows with each as far as possible from those before it, starting from the one farthest from the middle.
fn row_order(rows: &[Centre]) -> Vec<usize> {
    let mut distance: Vec<f64> = rows.iter().map(|row| length(row.at)).collect();
    let mut order = Vec::with_capacity(rows.len());
    let mut taken = vec![false; rows.len()];
    for _ in 0..rows.len() {
        let mut far: Option<usize> = None;
        for index in 0..rows.len() {
            if !taken[index] && far.is_none_or(|far| distance[index] > distance[far]) {
                far = Some(index);
            }
        }
        let Some(next) = far else { break };
        taken[next] = true;
        order.push(next);
        for index in 0..rows.len() {
            let to_next = length(minus(rows[index].at, rows[next].at));
            distance[index] = if order.len() == 1 { to_next } else { distance[index].min(to_next) };
        }
    }
    order
}
