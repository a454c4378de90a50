//! Two holes taken together, and what their distance says before any motion is tried.

/// A vector or point of the plane.
pub(in crate::fit::mating) type P = [f64; 2];

pub(super) fn dot(a: P, b: P) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

pub(super) fn cross(a: P, b: P) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

pub(super) fn minus(a: P, b: P) -> P {
    [a[0] - b[0], a[1] - b[1]]
}

pub(super) fn length(a: P) -> f64 {
    dot(a, a).sqrt()
}

pub(super) fn turned(a: P, sin: f64, cos: f64) -> P {
    [cos * a[0] - sin * a[1], sin * a[0] + cos * a[1]]
}

/// A hole of the first pattern taken with a hole of the second.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    /// Index in the first pattern.
    pub row: usize,
    /// Index in the second pattern.
    pub col: usize,
    /// Centre in the first pattern, from that pattern's middle.
    pub a: P,
    /// Centre in the second pattern, from that pattern's middle, flipped where the plate is.
    pub b: P,
    /// What the round holes allow.
    pub allowance: f64,
    /// Half travel of the first hole.
    pub slot_a: P,
    /// Half travel of the second hole, flipped where the plate is.
    pub slot_b: P,
}

/// A stretch of the circle of turns, `half` to either side of `mid`; `half >= PI` is the whole circle.
#[derive(Clone, Copy, Debug)]
pub(super) struct Arc {
    pub mid: f64,
    pub half: f64,
}

impl Arc {
    /// Whether a turn lies in it.
    pub(super) fn holds(self, turn: f64) -> bool {
        self.half >= core::f64::consts::PI
            || libm::remainder(turn - self.mid, core::f64::consts::TAU).abs() <= self.half
    }

    /// An arc that contains everything both contain; `None` when they share nothing.
    ///
    /// Two arcs that together go round the circle may share two stretches; the narrower arc is then kept whole.
    pub(super) fn meet(self, other: Arc) -> Option<Arc> {
        use core::f64::consts::{FRAC_PI_2, PI, TAU};
        if self.half >= FRAC_PI_2 || other.half >= FRAC_PI_2 {
            let (narrow, wide) = if self.half <= other.half { (self, other) } else { (other, self) };
            let apart = libm::remainder(narrow.mid - wide.mid, TAU).abs();
            return (wide.half >= PI || apart <= narrow.half + wide.half).then_some(narrow);
        }
        let offset = libm::remainder(other.mid - self.mid, TAU);
        let lo = (-self.half).max(offset - other.half);
        let hi = self.half.min(offset + other.half);
        (lo <= hi).then_some(Arc { mid: self.mid + 0.5 * (lo + hi), half: 0.5 * (hi - lo) })
    }
}

/// The greatest least margin that two pairs can have together, whatever the motion.
///
/// A rigid motion keeps distances, so the difference between the two hole distances has to be taken up by the two
/// allowances and the travels.
pub(super) fn joint_margin_bound(p: &Pair, q: &Pair) -> f64 {
    let apart = (length(minus(q.a, p.a)) - length(minus(q.b, p.b))).abs();
    (0.5 * (reach(p, q) - apart)).min(p.allowance).min(q.allowance)
}

/// The turns at which two pairs can both have a margin above `margin`; `None` when no turn does it.
pub(super) fn joint_arc(p: &Pair, q: &Pair, margin: f64) -> Option<Arc> {
    let (da, db) = (minus(q.a, p.a), minus(q.b, p.b));
    let (la, lb) = (length(da), length(db));
    let play = reach(p, q) - 2.0 * margin;
    if (la - lb).abs() > play {
        return None;
    }
    // The turned second vector must end within `play` of the first one: law of cosines.
    let mid = aligned(p, q);
    let cos = (la * la + lb * lb - play * play) / (2.0 * la * lb);
    if cos.is_nan() || cos <= -1.0 {
        return Some(Arc { mid, half: core::f64::consts::PI });
    }
    // The last term covers rounding of the cosine near 1, where the angle is most sensitive to it.
    let half = libm::acos(cos.min(1.0)) + 3e-8;
    Some(Arc { mid, half })
}

/// The turn that lays the line between two second holes along the line between their first holes.
pub(super) fn aligned(p: &Pair, q: &Pair) -> f64 {
    let (da, db) = (minus(q.a, p.a), minus(q.b, p.b));
    libm::atan2(cross(db, da), dot(db, da))
}

/// Sum of both allowances and all travels: how much the two offsets can differ at margin 0.
fn reach(p: &Pair, q: &Pair) -> f64 {
    p.allowance + q.allowance + length(p.slot_a) + length(p.slot_b) + length(q.slot_a) + length(q.slot_b)
}

/// Distance from `x` to the parallelogram of all `i s + j r` with `i`, `j` in −1..1, and the outward unit normal there (zero
/// when `x` lies within). One or both of `s`, `r` may be zero.
pub(in crate::fit::mating) fn beyond(x: P, s: P, r: P) -> (f64, P) {
    let no_s = s == [0.0, 0.0];
    let no_r = r == [0.0, 0.0];
    if no_s && no_r {
        return from_point(x);
    }
    if no_r {
        return from_segment(x, s);
    }
    if no_s {
        return from_segment(x, r);
    }
    let area = cross(s, r);
    if area.abs() <= 1e-12 * length(s) * length(r) {
        let sign = if dot(s, r) < 0.0 { -1.0 } else { 1.0 };
        return from_segment(x, [s[0] + sign * r[0], s[1] + sign * r[1]]);
    }
    let along_s = cross(x, r) / area;
    let along_r = cross(s, x) / area;
    let mut nearest = (f64::INFINITY, [0.0, 0.0]);
    if along_s.abs() > 1.0 {
        let side = along_s.signum();
        nearest = from_segment([x[0] - side * s[0], x[1] - side * s[1]], r);
    }
    if along_r.abs() > 1.0 {
        let side = along_r.signum();
        let other = from_segment([x[0] - side * r[0], x[1] - side * r[1]], s);
        if other.0 < nearest.0 {
            nearest = other;
        }
    }
    if nearest.0 == f64::INFINITY { (0.0, [0.0, 0.0]) } else { nearest }
}

fn from_segment(x: P, half: P) -> (f64, P) {
    let along = (dot(x, half) / dot(half, half)).clamp(-1.0, 1.0);
    from_point([x[0] - along * half[0], x[1] - along * half[1]])
}

fn from_point(x: P) -> (f64, P) {
    let d = length(x);
    if d > 0.0 { (d, [x[0] / d, x[1] / d]) } else { (0.0, [0.0, 0.0]) }
}

#[cfg(test)]
pub(super) mod tests {
    use core::f64::consts::{PI, TAU};

    use super::super::shift::{StillRoom, Until, best_shift};
    use super::*;
    use crate::search::tests::chance::Chance;

    /// A number from −1 to 1.
    fn spot(chance: &Chance) -> f64 {
        chance.below(2_000_001) as f64 / 1e6 - 1.0
    }

    fn point(chance: &Chance) -> P {
        [spot(chance), spot(chance)]
    }

    /// Pairs of holes up to a decimetre off the middle, half of them slotted in one pattern, the other or both.
    pub fn pairs(chance: &Chance, count: usize) -> Vec<Pair> {
        let slot = |is_slotted: bool| if is_slotted { point(chance).map(|x| 0.01 * x) } else { [0.0, 0.0] };
        let kinds = chance.below(4);
        let pair = |index: usize| Pair {
            row: index,
            col: index,
            a: point(chance).map(|x| 0.1 * x),
            b: point(chance).map(|x| 0.1 * x),
            allowance: 0.001 + 0.001 * spot(chance),
            slot_a: slot(kinds & 1 == 1 && chance.once_in(2)),
            slot_b: slot(kinds & 2 == 2 && chance.once_in(2)),
        };
        (0..count).map(pair).collect()
    }

    /// The least worst excess at a turn.
    pub fn least(pairs: &[Pair], turn: f64) -> f64 {
        let (turn, below) = (libm::sincos(turn), f64::NEG_INFINITY);
        let mut room = StillRoom::default();
        best_shift(pairs, turn, None, below, f64::INFINITY, Until::Best, &mut room, &mut 0).worst
    }

    fn holds(arc: Arc, turn: f64) -> bool {
        libm::remainder(turn - arc.mid, TAU).abs() <= arc.half
    }

    #[test]
    fn the_distance_beyond_two_slots_is_that_of_their_outermost_line_along_its_normal() {
        for seed in 0..3_000 {
            let chance = &Chance::new(seed);
            let x = point(chance).map(|x| 3.0 * x);
            let any = |chance: &Chance| if chance.once_in(5) { [0.0, 0.0] } else { point(chance) };
            let s = any(chance);
            let along = spot(chance);
            let r = if chance.once_in(3) { s.map(|x| along * x) } else { any(chance) };
            let (distance, normal) = beyond(x, s, r);
            // No point of the parallelogram is nearer, and some is hardly farther.
            let steps = 24;
            let at = |step: i32| f64::from(step) / f64::from(steps);
            let to = |i: i32, j: i32| length([0, 1].map(|k| x[k] - at(i) * s[k] - at(j) * r[k]));
            let nearest = (-steps..=steps).flat_map(|i| (-steps..=steps).map(move |j| to(i, j))).fold(9.0, f64::min);
            assert!(distance <= nearest + 1e-12, "{seed}: {distance} is farther than {nearest}");
            assert!(distance >= nearest - (length(s) + length(r)) / f64::from(steps), "{seed}: {distance}, {nearest}");
            if distance > 0.0 {
                assert!((length(normal) - 1.0).abs() < 1e-12);
                let outermost = dot(normal, x) - dot(normal, s).abs() - dot(normal, r).abs();
                assert!((outermost - distance).abs() < 1e-9, "{seed}: {outermost}, {distance}");
            }
        }
    }

    #[test]
    fn two_pairs_have_a_margin_at_the_turns_of_their_arc_and_none_beyond_their_bound() {
        let (mut inside, mut outside, mut never) = (0, 0, 0);
        for seed in 0..400 {
            let chance = &Chance::new(seed);
            let two = pairs(chance, 2);
            let [p, q] = [&two[0], &two[1]];
            let is_round = two.iter().all(|pair| pair.slot_a == [0.0, 0.0] && pair.slot_b == [0.0, 0.0]);
            let margin = 0.002 * spot(chance) - 0.02 * f64::from(u8::from(chance.once_in(2)));
            let arc = joint_arc(p, q, margin);
            let bound = joint_margin_bound(p, q);
            for step in 0..48 {
                let turn = PI * f64::from(step) / 24.0 + spot(chance);
                let found = -least(&two, turn);
                assert!(found <= bound + 1e-9, "{seed}");
                match arc {
                    None => never += 1,
                    Some(arc) if holds(arc, turn) => inside += 1,
                    Some(_) => outside += 1,
                }
                let is_in = arc.is_some_and(|arc| holds(arc, turn));
                assert!(is_in || found <= margin + 1e-9, "{seed}: {found} at a turn that is left out");
                // Round holes take up a difference in any direction, so that there the arc is exact.
                let least = margin.min(p.allowance).min(q.allowance);
                assert!(!is_round || !is_in || found >= least - 1e-8, "{seed}: {found} at a turn of the arc");
            }
            let at_best = -least(&two, aligned(p, q));
            assert!(!is_round || (at_best - bound).abs() < 1e-9, "{seed}: {at_best}, not {bound}");
        }
        assert!(inside > 500 && outside > 1_000 && never > 1_000, "{inside} {outside} {never}");
    }

    #[test]
    fn two_arcs_meet_in_what_both_contain() {
        for seed in 0..2_000 {
            let chance = &Chance::new(seed);
            let arc = || Arc { mid: 7.0 * spot(chance), half: spot(chance).abs() * PI };
            let (one, other) = (arc(), arc());
            let met = one.meet(other);
            for step in 0..90 {
                let turn = TAU * f64::from(step) / 90.0;
                let both = holds(one, turn) && holds(other, turn);
                assert!(!both || met.is_some_and(|met| holds(Arc { half: met.half + 1e-9, ..met }, turn)), "{seed}");
            }
            if let Some(met) = met {
                assert!(met.half <= one.half.min(other.half) + 1e-12);
                if one.half < 1.5 && other.half < 1.5 {
                    let [lo, hi] = [-1.0, 1.0].map(|end| met.mid + end * (met.half - 1e-9).max(0.0));
                    let near = |arc: Arc, turn| holds(Arc { half: arc.half + 1e-9, ..arc }, turn);
                    assert!([lo, hi].iter().all(|&end| near(one, end) && near(other, end)), "{seed}");
                }
            }
        }
        let whole = Arc { mid: 0.0, half: PI };
        let narrow = Arc { mid: 3.0, half: 0.1 };
        assert!(whole.meet(narrow).is_some_and(|met| met.mid.to_bits() == 3.0_f64.to_bits()));
    }
}
