//! The best least margin when every error is as bad as it may be.

use super::super::pair::{P, Pair};
use super::Joint;
use super::lay::{Lay, Lays};

/// Up to so many holes the worst case is searched out; beyond, it is bounded. Four holes have 65,536 corners of their errors' ranges, and each
/// hole more has sixteen times as many.
pub const MOST_EXACT: usize = 4;

/// The least best margin over all errors within their ranges, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WorstMargin {
    /// It is this, to 0.01 mm.
    Is(f64),
    /// It is not below this.
    AtLeast(f64),
}

/// Where along a coordinate's range the margin is looked at besides its ends. Own choice.
const BETWEEN: [f64; 5] = [-0.75, -0.4, 0.0, 0.4, 0.75];

/// How often every coordinate is gone through again. Own choice; the second time seldom finds anything.
const SWEEPS: usize = 3;

/// Halvings of the step about a lower place between the ends: to a thousandth of the range.
const HALVINGS: usize = 9;

/// Lays kept that did for a corner lately. Own choice; it decides about time only.
const RECENT: usize = 12;

/// A change smaller than this is none, metres: a ten-thousandth of a millimetre.
const WORTH: f64 = 1e-7;

pub(super) fn worst_margin(joint: &Joint, lays: &mut Lays) -> WorstMargin {
    let tightest = joint.with_play(-joint.errors.diameter);
    let (place_a, place_b) = (joint.errors.place_a, joint.errors.place_b);
    match tightest[..] {
        [only] => WorstMargin::Is(only.allowance),
        [p, q] => WorstMargin::Is(of_two(&p, &q, place_a, place_b)),
        _ if place_a == 0.0 && place_b == 0.0 => WorstMargin::Is(lays.best_margin(&tightest)),
        _ if tightest.len() <= MOST_EXACT => {
            WorstMargin::Is(Corners { nominal: tightest, place_a, place_b, lays }.worst())
        }
        // The lay that is best without errors still is a lay.
        _ => WorstMargin::AtLeast(lays.best_margin(&tightest) - joint.most_moved()),
    }
}

/// Two pairs share what their spans differ by.
fn of_two(p: &Pair, q: &Pair, place_a: f64, place_b: f64) -> f64 {
    let span = |from: P, to: P, half_range: f64| {
        let [along, across] = [(to[0] - from[0]).abs(), (to[1] - from[1]).abs()];
        let both = 2.0 * half_range;
        let least = libm::hypot((along - both).max(0.0), (across - both).max(0.0));
        (least, libm::hypot(along + both, across + both))
    };
    let ((least_a, most_a), (least_b, most_b)) = (span(p.a, q.a, place_a), span(p.b, q.b, place_b));
    let apart = (most_a - least_b).max(most_b - least_a);
    (0.5 * (p.allowance + q.allowance - apart)).min(p.allowance).min(q.allowance)
}

/// The ranges of all errors, as a box whose corners are gone through.
///
/// Were turns small, the best margin would be concave in the errors, and least at a corner. Turns and spans bend that by the square of
/// the errors over the span, so that the least may lie on an edge nearby: from the least corner every coordinate
/// is gone along.
struct Corners<'a> {
    nominal: Vec<Pair>,
    place_a: f64,
    place_b: f64,
    lays: &'a mut Lays,
}

impl Corners<'_> {
    fn worst(&mut self) -> f64 {
        let count = self.nominal.len();
        let corners = 1_usize << (4 * count);
        let mut pairs = self.nominal.clone();
        let mut errors = vec![0.0; 4 * count];
        // A lay quickly had bounds each corner from below; the lowest bound gives a first mark.
        let mut bounds = Vec::with_capacity(corners);
        for corner in 0..corners {
            set_corner(&mut errors, corner);
            self.put(&mut pairs, &errors);
            bounds.push(Lay::near(&pairs).margin(&pairs));
        }
        let lowest = (0..corners).min_by(|i, j| bounds[*i].total_cmp(&bounds[*j])).unwrap_or(0);
        set_corner(&mut errors, lowest);
        self.put(&mut pairs, &errors);
        let mut least = (self.lays.best_margin(&pairs), lowest);
        let mut recent: Vec<Lay> = Vec::with_capacity(RECENT);
        let mut next = 0;
        // From corner to corner along one edge (Gray's order), so that a lay that did for one mostly does for the next.
        for corner in (0..corners).map(|count| count ^ (count >> 1)) {
            let mark = least.0 - WORTH;
            if bounds[corner] >= mark {
                continue;
            }
            set_corner(&mut errors, corner);
            self.put(&mut pairs, &errors);
            if recent.iter().any(|lay| lay.margin(&pairs) > mark) {
                continue;
            }
            match self.lays.lay_above(&pairs, mark) {
                Some(lay) if recent.len() < RECENT => recent.push(lay),
                Some(lay) => {
                    recent[next] = lay;
                    next = (next + 1) % RECENT;
                }
                None => least = (self.lays.best_margin(&pairs), corner),
            }
        }
        set_corner(&mut errors, least.1);
        self.along_edges(&mut errors, least.0)
    }

    /// The least margin found by going along every coordinate in turn.
    fn along_edges(&mut self, errors: &mut [f64], mut least: f64) -> f64 {
        let mut pairs = self.nominal.clone();
        for _ in 0..SWEEPS {
            let before = least;
            for at in 0..errors.len() {
                let mut best = errors[at];
                let mut look = |value: f64, least: &mut f64, best: &mut f64| {
                    errors[at] = value;
                    self.put(&mut pairs, errors);
                    if self.lays.lay_above(&pairs, *least - WORTH).is_some() {
                        return;
                    }
                    let margin = self.lays.best_margin(&pairs);
                    if margin < *least {
                        (*least, *best) = (margin, value);
                    }
                };
                for value in BETWEEN {
                    look(value, &mut least, &mut best);
                }
                let mut step = 0.2;
                for _ in 0..if best.abs() < 1.0 { HALVINGS } else { 0 } {
                    for value in [best - step, best + step] {
                        look(value.clamp(-1.0, 1.0), &mut least, &mut best);
                    }
                    step *= 0.5;
                }
                errors[at] = best;
            }
            if least > before - WORTH {
                break;
            }
        }
        least
    }

    /// Puts every hole off by its errors, given in half ranges.
    fn put(&self, pairs: &mut [Pair], errors: &[f64]) {
        for ((pair, nominal), by) in pairs.iter_mut().zip(&self.nominal).zip(errors.chunks_exact(4)) {
            pair.a = [nominal.a[0] + self.place_a * by[0], nominal.a[1] + self.place_a * by[1]];
            pair.b = [nominal.b[0] + self.place_b * by[2], nominal.b[1] + self.place_b * by[3]];
        }
    }
}

/// The errors at a corner: each bit says to which end of its range one goes.
fn set_corner(errors: &mut [f64], corner: usize) {
    for (bit, error) in errors.iter_mut().enumerate() {
        *error = if corner >> bit & 1 == 0 { -1.0 } else { 1.0 };
    }
}
