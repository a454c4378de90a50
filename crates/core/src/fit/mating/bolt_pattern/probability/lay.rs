//! Whether given pairs go together, and with what best margin, whatever the lay.

use super::super::RESOLUTION;
use super::super::pair::{Arc, P, Pair, cross, dot, joint_arc, joint_margin_bound, length, minus, turned};
use super::super::shift::Until;
use super::super::turn::{Pose, Rooms, best_turn};
use core::f64::consts::PI;

/// Up to so many pairs every two of them are compared before a lay is searched for. Own choice; it decides about time only.
const FEW: usize = 12;

/// A search for a lay ends after about as many looks at all pairs. An ordinary one takes some dozens; only holes that lie within a
/// millionth of a millimetre of each other, so that many turns are nearly as good, take more. Own choice.
const TURNS: u64 = 1_000;

/// Rooms kept between searches.
#[derive(Default)]
pub(super) struct Lays {
    rooms: Rooms,
}

/// Where the second pattern lies on the first.
#[derive(Clone, Copy)]
pub(super) struct Lay {
    sin: f64,
    cos: f64,
    shift: P,
}

impl Lay {
    /// The lay with the least sum of squares: quickly had, and nearly the best.
    pub fn near(pairs: &[Pair]) -> Self {
        let share = 1.0 / pairs.len().max(1) as f64;
        let middle = |of: fn(&Pair) -> P| {
            let sum = pairs.iter().map(of).fold([0.0, 0.0], |sum, at| [sum[0] + at[0], sum[1] + at[1]]);
            [sum[0] * share, sum[1] * share]
        };
        let (middle_a, middle_b) = (middle(|pair| pair.a), middle(|pair| pair.b));
        let (mut cos, mut sin) = (0.0, 0.0);
        for pair in pairs {
            let (a, b) = (minus(pair.a, middle_a), minus(pair.b, middle_b));
            cos += dot(b, a);
            sin += cross(b, a);
        }
        let size = length([cos, sin]);
        (cos, sin) = if size > 0.0 { (cos / size, sin / size) } else { (1.0, 0.0) };
        Self { sin, cos, shift: minus(middle_a, turned(middle_b, sin, cos)) }
    }

    /// The least margin it leaves.
    pub fn margin(&self, pairs: &[Pair]) -> f64 {
        let margin = |pair: &Pair| {
            let to = turned(pair.b, self.sin, self.cos);
            pair.allowance - length([to[0] + self.shift[0] - pair.a[0], to[1] + self.shift[1] - pair.a[1]])
        };
        pairs.iter().map(margin).fold(f64::INFINITY, f64::min)
    }
}

impl Lays {
    /// Whether some lay leaves no pair a margin below zero.
    pub fn all_in(&mut self, pairs: &[Pair]) -> bool {
        self.lay_above(pairs, -RESOLUTION).is_some()
    }

    /// A lay that leaves every pair a margin above `margin`, if there is one.
    pub fn lay_above(&mut self, pairs: &[Pair], margin: f64) -> Option<Lay> {
        let near = Lay::near(pairs);
        if near.margin(pairs) > margin {
            return Some(near);
        }
        if let [p, q] = pairs {
            // Laid along each other, and shifted so that both share what the spans differ by.
            return (joint_margin_bound(p, q) >= margin).then_some(near);
        }
        let apart = |p: &Pair, i: usize| pairs[i + 1..].iter().any(|q| joint_margin_bound(p, q) < margin);
        if pairs.len() <= FEW && pairs.iter().enumerate().any(|(i, p)| apart(p, i)) {
            return None;
        }
        self.search(pairs, &near, margin, Until::Better).map(|pose| {
            let (sin, cos) = libm::sincos(pose.turn);
            Lay { sin, cos, shift: pose.shift }
        })
    }

    /// The greatest least margin of any lay.
    pub fn best_margin(&mut self, pairs: &[Pair]) -> f64 {
        if let [p, q] = pairs {
            return joint_margin_bound(p, q);
        }
        let near = Lay::near(pairs);
        self.search(pairs, &near, f64::NEG_INFINITY, Until::Best).map_or(near.margin(pairs), |pose| -pose.worst)
    }

    fn search(&mut self, pairs: &[Pair], near: &Lay, margin: f64, until: Until) -> Option<Pose> {
        let turn = libm::atan2(near.sin, near.cos);
        let whole = Arc { mid: turn, half: PI };
        let arc = match widest(pairs) {
            Some((p, q)) if margin > f64::NEG_INFINITY => joint_arc(p, q, margin - RESOLUTION)?,
            _ => whole,
        };
        let pose = Pose { turn, shift: near.shift, worst: -near.margin(pairs), support: None };
        // Holes all in one place look the same from every turn.
        let arc = if in_one_place(pairs) { Arc { mid: turn, half: 0.0 } } else { arc };
        let limit = TURNS * (pairs.len() as u64 + 16);
        best_turn(pairs, arc, &pose, -margin, until, &mut self.rooms, &mut 0, limit)
    }
}

/// The pair farthest from the first one, with that one: their holes hold the turn best.
fn widest(pairs: &[Pair]) -> Option<(&Pair, &Pair)> {
    let first = pairs.first()?;
    let far = |pair: &&Pair| length(minus(pair.a, first.a));
    pairs[1..].iter().max_by(|p, q| far(p).total_cmp(&far(q))).map(|last| (first, last))
}

/// Whether all holes of a pattern lie in one place, as far as a margin can tell.
fn in_one_place(pairs: &[Pair]) -> bool {
    let still = |of: fn(&Pair) -> P| pairs.iter().all(|pair| length(minus(of(pair), of(&pairs[0]))) < RESOLUTION / 4.0);
    still(|pair| pair.a) || still(|pair| pair.b)
}
