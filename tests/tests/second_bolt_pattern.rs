//! The best lay of two bolt patterns against every pairing, every turn and a convex shift.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::fit::mating::bolt_pattern::{Face, Flip, Hole, HoleKind, Lay, Slot, lay_on};
use std::f64::consts::{FRAC_PI_2, PI, TAU};

const BOLT: f64 = 0.012;
/// How far below the true best the second method may stop, metres: a thousandth of a millimetre.
const STOP: f64 = 1e-6;
/// How far the two methods may differ, metres: a hundredth of a millimetre.
const AGREE: f64 = 1e-5;

#[test]
fn the_lay_found_is_the_best_of_every_pairing_at_every_turn() {
    let cases = std::env::var("PROPTEST_CASES").map_or(600, |cases| cases.parse().expect("a number of cases"));
    let (mut greatest, mut fits, mut slotted, mut impossible, mut flipped) = (0.0_f64, 0_u64, 0_u64, 0_u64, 0_u64);
    for case in 0..cases {
        let Plates { a, b, required, flip } = Draw(case).plates();
        let laid = lay_on(&a, &b, BOLT, required, flip).expect("sound patterns");
        let second = best(&a, &b, required, flip);
        let Some(lay) = laid.found() else {
            assert_eq!(second, None, "case {case}: {a:?} {b:?} {required} {flip:?}");
            impossible += 1;
            continue;
        };
        let second = second.unwrap_or_else(|| panic!("case {case}: no pairing, but {lay:?}"));
        let apart = (lay.margin - second).abs();
        assert!(apart < AGREE, "case {case}: {} against {second}: {a:?} {b:?} {required} {flip:?}", lay.margin);
        holds_what_it_says(lay, &a, &b, required, flip);
        greatest = greatest.max(apart);
        fits += u64::from(lay.fits());
        flipped += u64::from(lay.motion.face == Face::Flipped);
        slotted += u64::from(a.iter().chain(&b).any(|hole| hole.slot.is_some_and(|slot| slot.travel > 0.0)));
    }
    println!(
        "bolt patterns, {cases} pairs: greatest disagreement {:.6} mm; {fits} fit, {slotted} with slots, {flipped} flipped, \
         {impossible} without a pairing",
        greatest * 1e3
    );
    assert!(fits * 10 > cases && slotted * 10 > cases && flipped * 20 > cases && impossible > 0, "one-sided patterns");
}

/// The lay's own motion and pairs give its margin, and they are allowed.
fn holds_what_it_says(lay: &Lay, a: &[Hole], b: &[Hole], required: usize, flip: Flip) {
    assert_eq!(lay.pairs.len(), required);
    assert!(flip == Flip::Allowed || lay.motion.face == Face::AsDrawn);
    for (i, pair) in lay.pairs.iter().enumerate() {
        assert!(lay.pairs[..i].iter().all(|other| other.a != pair.a && other.b != pair.b), "a hole twice: {lay:?}");
    }
    let pairs: Vec<Pair> = lay
        .pairs
        .iter()
        .map(|pair| pair_of(&a[pair.a], &b[pair.b], lay.motion.face).expect("a pair that takes the bolt"))
        .collect();
    let worst = pairs
        .iter()
        .map(|pair| pair.placed(lay.motion.turn, [0.0; 2]).excess([lay.motion.shift_u, lay.motion.shift_v]).0)
        .fold(f64::NEG_INFINITY, f64::max);
    assert!((worst + lay.margin).abs() < 1e-9, "{worst} against {lay:?}");
}

/// The greatest least margin: every pairing, the most promising first, and every turn of it that can still better the best.
fn best(a: &[Hole], b: &[Hole], required: usize, flip: Flip) -> Option<f64> {
    let faces: &[Face] = if flip == Flip::Allowed { &[Face::AsDrawn, Face::Flipped] } else { &[Face::AsDrawn] };
    let mut open: Vec<(f64, Vec<Pair>)> = Vec::new();
    for &face in faces {
        pairings(a, b, required, face, &mut Vec::new(), &mut vec![false; b.len()], 0, &mut open);
    }
    open.sort_by(|one, two| two.0.total_cmp(&one.0));
    let mut best = None;
    for (most, pairs) in &open {
        if best.is_none_or(|best| *most > best) {
            best = Some(best_turn(pairs, best.unwrap_or(f64::NEG_INFINITY)));
        }
    }
    best
}

/// All ways to choose `required` pairs, each with a margin that it cannot exceed.
#[allow(clippy::too_many_arguments, reason = "a recursion carries its state")]
fn pairings(
    a: &[Hole],
    b: &[Hole],
    required: usize,
    face: Face,
    chosen: &mut Vec<Pair>,
    used: &mut Vec<bool>,
    next: usize,
    into: &mut Vec<(f64, Vec<Pair>)>,
) {
    if chosen.len() == required {
        into.push((most(chosen), chosen.clone()));
        return;
    }
    for i in next..a.len() {
        for j in 0..b.len() {
            if used[j] {
                continue;
            }
            if let Some(pair) = pair_of(&a[i], &b[j], face) {
                used[j] = true;
                chosen.push(pair);
                pairings(a, b, required, face, chosen, used, i + 1, into);
                chosen.pop();
                used[j] = false;
            }
        }
    }
}

/// No lay gives more: each pair's own allowance, and for two pairs half of what their different distances leave.
fn most(pairs: &[Pair]) -> f64 {
    let mut most = f64::INFINITY;
    for (i, p) in pairs.iter().enumerate() {
        most = most.min(p.allowance);
        for q in &pairs[..i] {
            let strain = (distance(p.a, q.a) - distance(p.b, q.b)).abs();
            let travel = norm(p.slot_a) + norm(p.slot_b) + norm(q.slot_a) + norm(q.slot_b);
            most = most.min((p.allowance + q.allowance + travel - strain) / 2.0);
        }
    }
    most
}

/// The best margin over all turns, or `least` when none is better by more than [`STOP`]. A turn by δ moves no hole and no slot's
/// end by more than its distance from the middle times δ, so a stretch of turns is done with once the margin
/// in its middle and that movement together do not better the best.
fn best_turn(pairs: &[Pair], least: f64) -> f64 {
    let middle = [0, 1].map(|axis| pairs.iter().map(|pair| pair.b[axis]).sum::<f64>() / pairs.len() as f64);
    let reach = pairs.iter().map(|pair| distance(pair.b, middle) + norm(pair.slot_b)).fold(0.0, f64::max);
    let mut best = least;
    let mut open = vec![(0.0, PI)];
    while let Some((turn, half)) = open.pop() {
        let placed: Vec<Placed> = pairs.iter().map(|pair| pair.placed(turn, middle)).collect();
        let (reached, at_most) = best_shift(&placed, best + STOP - reach * half);
        best = best.max(reached);
        if at_most + reach * half > best + STOP {
            open.push((turn - half / 2.0, half / 2.0));
            open.push((turn + half / 2.0, half / 2.0));
        }
    }
    best
}

/// A margin that a shift reaches, and one that none exceeds: they differ by little, unless the second is already not above `wanted`.
///
/// The greatest excess is convex in the shift. An ellipse that holds the best shift is cut through its middle
/// along the slope there and drawn anew around the rest.
fn best_shift(pairs: &[Placed], wanted: f64) -> (f64, f64) {
    let n = pairs.len() as f64;
    let mut x = [0, 1].map(|axis| -pairs.iter().map(|pair| pair.offset[axis]).sum::<f64>() / n);
    // Holds the best shift: further away than this, some pair is worse than the worst pair at `x`.
    let spread = pairs.iter().map(|pair| distance(x, [-pair.offset[0], -pair.offset[1]]) + pair.travel()).sum::<f64>()
        + pairs.iter().map(|pair| pair.allowance.abs()).sum::<f64>()
        + 1e-6;
    let mut p = [spread * spread, 0.0, spread * spread];
    let (mut reached, mut at_most) = (f64::NEG_INFINITY, f64::INFINITY);
    for _ in 0..400 {
        let (excess, slope) =
            pairs.iter().map(|pair| pair.excess(x)).max_by(|one, two| one.0.total_cmp(&two.0)).expect("a pair");
        reached = reached.max(-excess);
        let along = [p[0] * slope[0] + p[1] * slope[1], p[1] * slope[0] + p[2] * slope[1]];
        let size = (along[0] * slope[0] + along[1] * slope[1]).max(0.0).sqrt();
        at_most = at_most.min(size - excess);
        if at_most - reached < STOP / 10.0 || at_most <= wanted || size == 0.0 {
            break;
        }
        let unit = along.map(|x| x / size);
        x = [x[0] - unit[0] / 3.0, x[1] - unit[1] / 3.0];
        let shrink = |p: f64, one: f64, two: f64| 4.0 / 3.0 * (p - 2.0 / 3.0 * one * two);
        p = [shrink(p[0], unit[0], unit[0]), shrink(p[1], unit[0], unit[1]), shrink(p[2], unit[1], unit[1])];
    }
    (reached, at_most)
}

/// Two holes that are to share a bolt; slots as half their travel.
#[derive(Clone)]
struct Pair {
    a: [f64; 2],
    slot_a: [f64; 2],
    b: [f64; 2],
    slot_b: [f64; 2],
    allowance: f64,
}

/// The pair, unless the bolt cannot go through it.
fn pair_of(a: &Hole, b: &Hole, face: Face) -> Option<Pair> {
    let blocks = |hole: &Hole| hole.kind == HoleKind::Plain && hole.diameter < BOLT;
    if (a.kind == HoleKind::Tapped && b.kind == HoleKind::Tapped) || blocks(a) || blocks(b) {
        return None;
    }
    let play = |hole: &Hole| if hole.kind == HoleKind::Plain { (hole.diameter - BOLT) / 2.0 } else { 0.0 };
    let half = |hole: &Hole| {
        hole.slot.map_or([0.0; 2], |slot| [slot.direction.cos(), slot.direction.sin()].map(|x| x * slot.travel / 2.0))
    };
    let mirror = |[u, v]: [f64; 2]| if face == Face::Flipped { [-u, v] } else { [u, v] };
    Some(Pair {
        a: [a.u, a.v],
        slot_a: half(a),
        b: mirror([b.u, b.v]),
        slot_b: mirror(half(b)),
        allowance: play(a) + play(b),
    })
}

impl Pair {
    /// After turning the second plate about `middle`, which then lies at the origin.
    fn placed(&self, turn: f64, middle: [f64; 2]) -> Placed {
        let (sin, cos) = turn.sin_cos();
        let turned = |[u, v]: [f64; 2]| [cos * u - sin * v, sin * u + cos * v];
        let b = turned([self.b[0] - middle[0], self.b[1] - middle[1]]);
        Placed {
            offset: [b[0] - self.a[0], b[1] - self.a[1]],
            slots: [self.slot_a, turned(self.slot_b)],
            allowance: self.allowance,
        }
    }
}

/// A pair whose turn is settled.
struct Placed {
    offset: [f64; 2],
    slots: [[f64; 2]; 2],
    allowance: f64,
}

impl Placed {
    fn travel(&self) -> f64 {
        norm(self.slots[0]) + norm(self.slots[1])
    }

    /// How much the offset after a shift exceeds the allowance, and the direction it grows in.
    fn excess(&self, shift: [f64; 2]) -> (f64, [f64; 2]) {
        let offset = [self.offset[0] + shift[0], self.offset[1] + shift[1]];
        let nearest = nearest_in_parallelogram(offset, self.slots);
        let over = [offset[0] - nearest[0], offset[1] - nearest[1]];
        let far = norm(over);
        (far - self.allowance, if far > 0.0 { over.map(|x| x / far) } else { [0.0; 2] })
    }
}

/// The point nearest to `p` of all s·u + t·v with s and t from −1 to 1: `p` itself, or one on the rim.
fn nearest_in_parallelogram(p: [f64; 2], [u, v]: [[f64; 2]; 2]) -> [f64; 2] {
    if u == [0.0; 2] && v == [0.0; 2] {
        return [0.0; 2];
    }
    let area = cross(u, v);
    if area.abs() > 1e-15 && (cross(p, v) / area).abs() <= 1.0 && (cross(u, p) / area).abs() <= 1.0 {
        return p;
    }
    let on_side = |side: f64, across: [f64; 2], along: [f64; 2]| {
        let from = across.map(|x| side * x);
        let square = along[0] * along[0] + along[1] * along[1];
        let share = if square > 0.0 {
            (((p[0] - from[0]) * along[0] + (p[1] - from[1]) * along[1]) / square).clamp(-1.0, 1.0)
        } else {
            0.0
        };
        [from[0] + share * along[0], from[1] + share * along[1]]
    };
    [on_side(1.0, u, v), on_side(-1.0, u, v), on_side(1.0, v, u), on_side(-1.0, v, u)]
        .into_iter()
        .min_by(|one, two| distance(*one, p).total_cmp(&distance(*two, p)))
        .expect("four sides")
}

fn cross(u: [f64; 2], v: [f64; 2]) -> f64 {
    u[0] * v[1] - u[1] * v[0]
}

fn norm(v: [f64; 2]) -> f64 {
    v[0].hypot(v[1])
}

fn distance(p: [f64; 2], q: [f64; 2]) -> f64 {
    norm([p[0] - q[0], p[1] - q[1]])
}

struct Plates {
    a: Vec<Hole>,
    b: Vec<Hole>,
    required: usize,
    flip: Flip,
}

/// A plain generator of random numbers (`SplitMix64`): the same case is the same patterns everywhere.
struct Draw(u64);

impl Draw {
    fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.share()
    }

    /// A whole number below `n`.
    fn below(&mut self, n: usize) -> usize {
        let place = self.share() * n as f64;
        (1..n).filter(|i| place >= *i as f64).count()
    }

    fn one_of<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())]
    }

    /// A second plate drilled after the first, more or less exactly; sometimes one that has nothing to do with it.
    fn plates(mut self) -> Plates {
        // Neighbouring seeds start far apart.
        self.0 = self.0.wrapping_mul(0xd134_2543_de82_ef95);
        let count = self.one_of(&[1, 2, 3, 4, 4, 5, 6]);
        let even = self.share() < 0.4;
        let round = |x: f64| if even { (x / 0.02).round() * 0.02 } else { x };
        let first: Vec<[f64; 2]> =
            (0..count).map(|_| [round(self.between(-0.15, 0.15)), round(self.between(-0.1, 0.1))]).collect();
        let error = self.one_of(&[0.0, 0.0003, 0.001, 0.003, 0.02, 0.1]);
        let (turn, away) = (self.one_of(&[0.0, FRAC_PI_2, 3.0]) + self.between(0.0, 0.2), self.between(-2.0, 2.0));
        let mirrored = self.share() < 0.4;
        let (sin, cos) = turn.sin_cos();
        let mut second: Vec<[f64; 2]> = Vec::new();
        for &[u, v] in &first {
            let (u, v) = (u + self.between(-error, error), v + self.between(-error, error));
            let u = if mirrored { -u } else { u };
            second.insert(self.below(second.len() + 1), [cos * u - sin * v + away, sin * u + cos * v - away]);
        }
        let required = 1 + self.below(count);
        let keep = required + self.below(count - required + 1);
        if self.share() < 0.5 {
            second.truncate(keep);
        }
        let tapped = self.one_of(&[[0.0, 0.0], [1.0, 0.0], [0.0, 1.0], [0.3, 0.0], [0.3, 0.3]]);
        let slots = self.one_of(&[0.0, 0.0, 0.3, 1.0]);
        let mut drill = |at: &[[f64; 2]], tapped: f64| {
            at.iter()
                .map(|&[u, v]| {
                    let kind = if self.share() < tapped { HoleKind::Tapped } else { HoleKind::Plain };
                    let small = self.share() < 0.03;
                    let diameter = if small { 0.011 } else { self.one_of(&[0.012, 0.013, 0.0135, 0.0145, 0.016]) };
                    let slot = (self.share() < slots).then(|| Slot {
                        travel: self.one_of(&[0.0, 0.004, 0.01, 0.03]),
                        direction: self.one_of(&[0.0, FRAC_PI_2, 1.0, 2.5]) + self.one_of(&[0.0, 0.3, TAU]),
                    });
                    Hole { u, v, diameter, kind, slot }
                })
                .collect()
        };
        let (a, b): (Vec<Hole>, Vec<Hole>) = (drill(&first, tapped[0]), drill(&second, tapped[1]));
        let flip = if self.share() < 0.5 { Flip::Allowed } else { Flip::Forbidden };
        if self.share() < 0.3 { Plates { a: b, b: a, required, flip } } else { Plates { a, b, required, flip } }
    }
}
