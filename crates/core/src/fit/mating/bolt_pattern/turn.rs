//! The best turn for given pairs: an arc of turns is cut down by proofs until nothing better can hide in it.
//!
//! The best shift at one turn comes with a [`Support`]: a few normals that balance. They still balance at every other turn,
//! held still or turned along with the second pattern, and give an explicit wave below the least worst excess. Where such a wave
//! lies above the best value found so far, the turns are done with; the rest is tried again from a better place.

use crate::order;
use core::f64::consts::{FRAC_PI_2, PI, TAU};

use super::pair::{Arc, P, Pair, cross, dot, turned};
use super::shift::{CLOSED, Shifted, StillRoom, Support, Until, best_shift};

/// An improvement smaller than this, in metres, is not looked for.
///
/// A fifth of the accuracy promised for the margin; smaller costs time at ties, larger costs digits.
pub(super) const WORTH: f64 = 2e-10;

/// A narrower stretch of turns than this, radians, cannot hold an improvement: it moves a hole 10 m away by 1e-12 m.
const NARROW: f64 = 1e-13;

/// What choosing a turn and shutting out those about it costs, in single hole-to-hole comparisons. Own choice.
const TURNING: u64 = 16;

/// A turn and shift with the worst excess there.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pose {
    pub turn: f64,
    pub shift: P,
    pub worst: f64,
    pub support: Option<Support>,
}

/// Rooms kept between calls.
#[derive(Debug, Default)]
pub(super) struct Rooms {
    still: StillRoom,
    stack: Vec<Stretch>,
}

#[derive(Clone, Copy, Debug)]
struct Stretch {
    lo: f64,
    hi: f64,
    left: Option<Proof>,
    right: Option<Proof>,
}

/// The least worst excess of `pairs` over the turns of `arc`, if it may be below `mark`.
///
/// Turns are excluded where the excess is at least `mark`, but any pose clearly below `mark + WORTH`, the best so far, is taken:
/// what is excluded at a turn then always has some way to the mark, so that its neighbours are excluded with it.
///
/// `near`: where to try first. `until`: [`Until::Better`] ends at the first pose below the mark.
/// Ends without an answer once `work` passes `limit`.
#[expect(clippy::too_many_arguments, reason = "the state of one search step, passed on unbundled")]
pub(super) fn best_turn(
    pairs: &[Pair],
    arc: Arc,
    near: &Pose,
    mark: f64,
    until: Until,
    rooms: &mut Rooms,
    work: &mut u64,
    limit: u64,
) -> Option<Pose> {
    // No pair can do better than its own allowance, at any turn.
    let floor = pairs.iter().map(|pair| -pair.allowance).fold(f64::NEG_INFINITY, f64::max);
    let mut mark = mark;
    let mut best = None;
    let mut warm = near.support;
    let half = arc.half.min(PI);
    let (lo, hi) = (arc.mid - half, arc.mid + half);
    rooms.stack.clear();
    rooms.stack.push(Stretch { lo, hi, left: None, right: None });
    let near = arc.mid + libm::remainder(near.turn - arc.mid, TAU);
    let mut first = Some(near.max(lo).min(hi));
    while let Some(stretch) = rooms.stack.pop() {
        if *work > limit || floor >= mark {
            return best;
        }
        *work += TURNING;
        let Stretch { lo, hi, left, right } = stretch;
        let turn = first.take().unwrap_or_else(|| next_turn(&stretch));
        let (sin, cos) = libm::sincos(turn);
        let goal = mark + (WORTH - 2.0 * CLOSED);
        let found: Shifted = best_shift(pairs, (sin, cos), warm.as_ref(), floor, goal, until, &mut rooms.still, work);
        if found.worst < goal {
            best = Some(Pose { turn, shift: found.shift, worst: found.worst, support: Some(found.support) });
            if until == Until::Better {
                return best;
            }
            mark = found.worst - WORTH;
        }
        warm = Some(found.support);
        let proof = Proof::of(pairs, &found.support, turn);
        // The half with the lower wave is pushed last, so that it is looked at first.
        let step = 1e-7;
        let rising =
            proof.of_turn(sin + step * cos, cos - step * sin) >= proof.of_turn(sin - step * cos, cos + step * sin);
        let below = Stretch { lo, hi: turn, left, right: Some(proof) };
        let above = Stretch { lo: turn, hi, left: Some(proof), right };
        for part in if rising { [above, below] } else { [below, above] } {
            push_open(&mut rooms.stack, &part, &proof, mark);
        }
    }
    best
}

/// Where to look next in a stretch: where the waves from its two ends cross, else the middle.
fn next_turn(stretch: &Stretch) -> f64 {
    let Stretch { lo, hi, left, right } = *stretch;
    let middle = 0.5 * (lo + hi);
    let (Some(left), Some(right)) = (left, right) else { return middle };
    let gap = |turn| {
        let (sin, cos) = libm::sincos(turn);
        left.of_turn(sin, cos) - right.of_turn(sin, cos)
    };
    let (mut a, mut b) = (lo, hi);
    let (ga, gb) = (gap(a), gap(b));
    let crosses = ga > 0.0 && gb < 0.0;
    if !crosses {
        return middle;
    }
    // A few steps of regula falsi with halving: the waves are nearly straight over a short stretch.
    let (mut fa, mut fb) = (ga, gb);
    for _ in 0..4 {
        let turn = a + (b - a) * fa / (fa - fb);
        let g = gap(turn);
        if g > 0.0 {
            (a, fa, fb) = (turn, g, 0.5 * fb);
        } else {
            (b, fb, fa) = (turn, g, 0.5 * fa);
        }
    }
    let turn = if fa.abs() < fb.abs() { a } else { b };
    let edge = 1e-3 * (hi - lo);
    if turn > lo + edge && turn < hi - edge { turn } else { middle }
}

/// One or two waves below the least worst excess at every turn.
#[derive(Clone, Copy, Debug)]
struct Proof {
    wave: Wave,
    other: Option<Wave>,
}

impl Proof {
    /// Waves that lose nothing to first order near the turn at which the support was found.
    ///
    /// A contact along the side of a slot keeps its normal square to the slot: still for a slot of the first pattern, turning
    /// for one of the second. With slots of both kinds each wave serves one kind; without any, the wave is taken that curves
    /// upwards, so that it shuts out more: the turning one where the second pattern is the wider one.
    fn of(pairs: &[Pair], support: &Support, turn: f64) -> Self {
        let held = |slot: fn(&Pair) -> P| support.planes.iter().any(|plane| slot(&pairs[plane.pair]) != [0.0, 0.0]);
        let still = || Wave::still(pairs, support);
        let turning = || Wave::turning(pairs, support, turn);
        match (held(|pair| pair.slot_a), held(|pair| pair.slot_b)) {
            (false, false) if outward(pairs, support) > 0.0 => Self { wave: turning(), other: None },
            (_, false) => Self { wave: still(), other: None },
            (false, true) => Self { wave: turning(), other: None },
            (true, true) => Self { wave: turning(), other: Some(still()) },
        }
    }

    /// The value at the turn with this sine and cosine.
    fn of_turn(&self, sin: f64, cos: f64) -> f64 {
        let value = self.wave.of_turn(sin, cos);
        self.other.map_or(value, |other| value.max(other.of_turn(sin, cos)))
    }
}

/// How far the normals point away from the middle of the first pattern, weighed: above zero where the second is wider.
fn outward(pairs: &[Pair], support: &Support) -> f64 {
    support
        .planes
        .iter()
        .zip(support.weights)
        .map(|(plane, weight)| weight * dot(plane.normal, pairs[plane.pair].a))
        .sum()
}

/// A wave below the least worst excess at every turn.
///
/// Value: `level + cosine cos + sine sin − Σ |slot_cosine cos + slot_sine sin|`.
#[derive(Clone, Copy, Debug)]
struct Wave {
    level: f64,
    cosine: f64,
    sine: f64,
    slots: [[f64; 2]; 3],
}

impl Wave {
    /// The normals stay as they are.
    fn still(pairs: &[Pair], support: &Support) -> Self {
        let mut wave = Wave { level: 0.0, cosine: 0.0, sine: 0.0, slots: [[0.0; 2]; 3] };
        for (index, (plane, weight)) in support.planes.iter().zip(support.weights).enumerate() {
            let pair = &pairs[plane.pair];
            let n = plane.normal;
            wave.level -= weight * (dot(n, pair.a) + dot(n, pair.slot_a).abs() + pair.allowance);
            wave.cosine += weight * dot(n, pair.b);
            wave.sine += weight * cross(pair.b, n);
            wave.slots[index] = [weight * dot(n, pair.slot_b), weight * cross(pair.slot_b, n)];
        }
        wave
    }

    /// The normals turn with the second pattern, away from the turn at which they were found: seen from it, the first
    /// pattern turns the other way.
    fn turning(pairs: &[Pair], support: &Support, turn: f64) -> Self {
        let (sin, cos) = libm::sincos(turn);
        let mut wave = Wave { level: 0.0, cosine: 0.0, sine: 0.0, slots: [[0.0; 2]; 3] };
        for (index, (plane, weight)) in support.planes.iter().zip(support.weights).enumerate() {
            let pair = &pairs[plane.pair];
            // The normal in the second pattern's own axes.
            let n = turned(plane.normal, -sin, cos);
            wave.level += weight * (dot(n, pair.b) - dot(n, pair.slot_b).abs() - pair.allowance);
            wave.cosine -= weight * dot(n, pair.a);
            wave.sine -= weight * cross(n, pair.a);
            wave.slots[index] = [weight * dot(n, pair.slot_a), weight * cross(n, pair.slot_a)];
        }
        wave
    }

    fn of_turn(&self, sin: f64, cos: f64) -> f64 {
        let mut value = self.level + self.cosine * cos + self.sine * sin;
        for slot in &self.slots {
            if slot[0] != 0.0 || slot[1] != 0.0 {
                value -= (slot[0] * cos + slot[1] * sin).abs();
            }
        }
        value
    }
}

/// Pushes the parts of a stretch where every wave lies below the mark.
fn push_open(stack: &mut Vec<Stretch>, stretch: &Stretch, proof: &Proof, mark: f64) {
    open_parts(&proof.wave, stretch.lo, stretch.hi, mark, &mut |lo, hi| match &proof.other {
        None => stack.push(Stretch { lo, hi, ..*stretch }),
        Some(other) => {
            open_parts(other, lo, hi, mark, &mut |lo, hi| stack.push(Stretch { lo, hi, ..*stretch }));
        }
    });
}

/// Hands on the parts of a stretch where the wave lies below the mark.
fn open_parts(wave: &Wave, lo: f64, hi: f64, mark: f64, part: &mut dyn FnMut(f64, f64)) {
    // Between the turns at which a slot lies along its normal the wave is one plain sinusoid.
    let mut cuts = [lo; 16];
    let mut count = 1;
    for slot in &wave.slots {
        if slot[0] == 0.0 && slot[1] == 0.0 {
            continue;
        }
        let mut kink = libm::atan2(slot[1], slot[0]) + FRAC_PI_2;
        kink += PI * libm::ceil((lo - kink) / PI);
        while kink < hi && count < 15 {
            if kink > lo {
                cuts[count] = kink;
                count += 1;
            }
            kink += PI;
        }
    }
    order::sort(&mut cuts[1..count], f64::total_cmp);
    cuts[count] = hi;
    for piece in cuts[..=count].windows(2) {
        below(wave, piece[0], piece[1], mark, part);
    }
}

/// The same on a piece without a kink.
fn below(wave: &Wave, lo: f64, hi: f64, mark: f64, part: &mut dyn FnMut(f64, f64)) {
    let (mut cosine, mut sine) = (wave.cosine, wave.sine);
    if wave.slots != [[0.0; 2]; 3] {
        let (sin, cos) = libm::sincos(0.5 * (lo + hi));
        for slot in &wave.slots {
            let sign = if slot[0] * cos + slot[1] * sin < 0.0 { -1.0 } else { 1.0 };
            cosine -= sign * slot[0];
            sine -= sign * slot[1];
        }
    }
    let mut push = |lo: f64, hi: f64| {
        if hi - lo > NARROW {
            part(lo, hi);
        }
    };
    // The wave is at or above the mark where amplitude * cos(turn − crest) >= needed.
    let amplitude = (cosine * cosine + sine * sine).sqrt();
    let needed = mark - wave.level;
    if needed > amplitude || amplitude == 0.0 && needed > 0.0 || mark == f64::INFINITY {
        return push(lo, hi);
    }
    if needed <= -amplitude {
        return;
    }
    let crest = libm::atan2(sine, cosine);
    let shut = libm::acos((needed / amplitude).clamp(-1.0, 1.0));
    let mut from = lo;
    let mut centre = crest + TAU * libm::ceil((lo - shut - crest) / TAU);
    while from < hi {
        let (shut_lo, shut_hi) = (centre - shut, centre + shut);
        if shut_lo >= hi {
            break;
        }
        push(from, shut_lo.min(hi));
        from = from.max(shut_hi);
        centre += TAU;
    }
    push(from, hi);
}

#[cfg(test)]
mod tests {
    use super::super::pair::tests::{least, pairs};
    use super::*;
    use crate::search::tests::chance::Chance;

    fn unit(chance: &Chance) -> f64 {
        chance.below(1_000_001) as f64 / 1e6
    }

    #[test]
    fn a_proof_is_exact_at_its_turn_and_below_the_least_excess_at_every_other() {
        let mut with_two_waves = 0;
        for seed in 0..600 {
            let chance = &Chance::new(seed);
            let pairs = pairs(chance, 2 + chance.below(4));
            let turn = TAU * unit(chance);
            let (sin, cos) = libm::sincos(turn);
            let (floor, mark) = (f64::NEG_INFINITY, f64::INFINITY);
            let mut room = StillRoom::default();
            let found = best_shift(&pairs, (sin, cos), None, floor, mark, Until::Best, &mut room, &mut 0);
            let proof = Proof::of(&pairs, &found.support, turn);
            with_two_waves += u32::from(proof.other.is_some());
            assert!((proof.of_turn(sin, cos) - found.worst).abs() < 1e-9, "{seed}: not exact where it was found");
            for wave in [Wave::still(&pairs, &found.support), Wave::turning(&pairs, &found.support, turn)] {
                assert!((wave.of_turn(sin, cos) - found.worst).abs() < 1e-9, "{seed}");
                for step in 0..60 {
                    let other = turn + TAU * f64::from(step) / 60.0;
                    let (sin, cos) = libm::sincos(other);
                    assert!(wave.of_turn(sin, cos) <= least(&pairs, other) + 1e-9, "{seed}: above at {other}");
                }
            }
        }
        assert!(with_two_waves > 20, "{with_two_waves}");
    }

    #[test]
    fn the_open_parts_are_where_the_wave_lies_below_the_mark() {
        let (mut open_turns, mut shut_turns) = (0, 0);
        for seed in 0..2_000 {
            let chance = &Chance::new(seed);
            let signed = |size: f64| size * (2.0 * unit(chance) - 1.0);
            let mut wave = Wave { level: signed(1.0), cosine: signed(1.0), sine: signed(1.0), slots: [[0.0; 2]; 3] };
            let slotted = chance.below(4);
            wave.slots[..slotted].fill_with(|| [signed(0.5), signed(0.5)]);
            let (lo, mark) = (signed(4.0), signed(1.5));
            let hi = lo + TAU * unit(chance);
            let mut parts = Vec::new();
            open_parts(&wave, lo, hi, mark, &mut |lo, hi| parts.push((lo, hi)));
            assert!(parts.iter().all(|&(from, to)| lo <= from && from < to && to <= hi), "{seed}: {parts:?}");
            for step in 0..200 {
                let turn = lo + (hi - lo) * (f64::from(step) + 0.5) / 200.0;
                let (sin, cos) = libm::sincos(turn);
                let above = wave.of_turn(sin, cos) - mark;
                if above.abs() > 1e-6 {
                    let is_open = parts.iter().any(|&(from, to)| from <= turn && turn <= to);
                    assert_eq!(is_open, above < 0.0, "{seed}: {above} at {turn}, open {parts:?}");
                    if is_open { open_turns += 1 } else { shut_turns += 1 }
                }
            }
        }
        assert!(open_turns > 50_000 && shut_turns > 50_000, "{open_turns} {shut_turns}");
    }

    #[test]
    fn no_turn_of_the_arc_is_better_than_the_best() {
        for seed in 0..120 {
            let chance = &Chance::new(seed);
            let pairs = pairs(chance, 2 + chance.below(4));
            let arc = Arc { mid: 3.0 * unit(chance), half: if chance.once_in(3) { PI } else { unit(chance) } };
            let near = Pose { turn: 6.0 * unit(chance), shift: [0.0, 0.0], worst: f64::INFINITY, support: None };
            let mark = f64::INFINITY;
            let best =
                best_turn(&pairs, arc, &near, mark, Until::Best, &mut Rooms::default(), &mut 0, u64::MAX).unwrap();
            assert!((least(&pairs, best.turn) - best.worst).abs() < 1e-9, "{seed}");
            assert!(libm::remainder(best.turn - arc.mid, TAU).abs() <= arc.half + 1e-12, "{seed}");
            let sampled = (0..=720).map(|step| least(&pairs, arc.mid + arc.half * (f64::from(step) / 360.0 - 1.0)));
            let sampled = sampled.fold(f64::INFINITY, f64::min);
            assert!(best.worst <= sampled + 1e-9, "{seed}: {} but {sampled} is there", best.worst);
            let just_below = best.worst - 1e-9;
            let again = best_turn(&pairs, arc, &near, just_below, Until::Best, &mut Rooms::default(), &mut 0, u64::MAX);
            assert!(again.is_none_or(|again| again.worst >= just_below - WORTH), "{seed}: nothing is better");
        }
    }
}
