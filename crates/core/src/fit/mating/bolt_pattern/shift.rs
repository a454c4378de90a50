//! The best shift at a fixed turn: a convex problem, solved by exchanging supporting planes.

use super::pair::{P, Pair, beyond, cross, dot, minus, turned};

/// How close the two bounds on the least worst excess are brought, metres.
///
/// Well above the rounding of coordinates of a few metres and well below anything a gauge can see. Own choice.
pub(super) const CLOSED: f64 = 2e-11;

/// The most exchanges before the bounds are returned as they stand. Own choice; a handful is usual.
const MOST_EXCHANGES: usize = 200;

/// A plane below the excess of one pair: `excess(t) >= normal . t + level` for every shift `t`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plane {
    pub pair: usize,
    pub normal: P,
    level: f64,
}

/// Up to three planes whose normals hold the origin between them, with the weights that balance it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Support {
    pub planes: [Plane; 3],
    pub weights: [f64; 3],
}

/// The least worst excess found at one turn.
#[derive(Clone, Copy, Debug)]
pub(super) struct Shifted {
    /// A shift …
    pub shift: P,
    /// … and the worst excess at it: never below the true optimum.
    pub worst: f64,
    /// The proof that it cannot be much less.
    pub support: Support,
}

/// When a search for the best shift may end early.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Until {
    /// As soon as some shift is better than the mark.
    Better,
    /// Not before the optimum is known, unless it is not better than the mark.
    Best,
}

/// One pair at a fixed turn: `excess(t)` is the distance of `t` from a parallelogram about `centre`, less the allowance.
#[derive(Clone, Copy, Debug)]
struct Still {
    centre: P,
    slot_a: P,
    slot_b: P,
    allowance: f64,
}

/// The shift with the least worst excess, where excess = distance − allowance = −margin.
///
/// `start` is a support found at another turn or for fewer pairs: its normals stay good everywhere, only its levels move.
/// `floor`: no shift can be better than this. `mark`: values at or above it are of no interest, so the search ends once they are all that is left.
#[expect(clippy::too_many_arguments, reason = "the state of one search step, passed on unbundled")]
pub(super) fn best_shift(
    pairs: &[Pair],
    (sin, cos): (f64, f64),
    start: Option<&Support>,
    floor: f64,
    mark: f64,
    until: Until,
    still_room: &mut StillRoom,
    work: &mut u64,
) -> Shifted {
    let still = &mut still_room.0;
    still.clear();
    still.extend(pairs.iter().map(|pair| Still {
        centre: minus(pair.a, turned(pair.b, sin, cos)),
        slot_a: pair.slot_a,
        slot_b: turned(pair.slot_b, sin, cos),
        allowance: pair.allowance,
    }));
    // The distance from a slot counts three times that from a point. Own choice.
    let slotted = |pair: &&Pair| pair.slot_a != [0.0, 0.0] || pair.slot_b != [0.0, 0.0];
    let cost = (pairs.len() + 2 * pairs.iter().filter(slotted).count()) as u64;
    *work += cost;
    let mut support = first_support(still, start);
    let mut best = (f64::INFINITY, [0.0, 0.0]);
    let mut at_least = f64::NEG_INFINITY;
    let mut proof = support;
    for _ in 0..MOST_EXCHANGES {
        let (shift, level) = meeting_point(&mut support);
        if level > at_least {
            at_least = level;
            proof = support;
        }
        if at_least >= mark {
            break;
        }
        *work += cost;
        let (worst, pair, normal) = worst_excess(still, shift);
        if worst < best.0 {
            best = (worst, shift);
        }
        if best.0 - at_least.max(floor) <= CLOSED || (until == Until::Better && best.0 < mark && mark < f64::INFINITY) {
            break;
        }
        let entering = plane(still, pair, normal);
        if !exchange(&mut support, entering) {
            break;
        }
    }
    if best.0 == f64::INFINITY {
        // Ended by the mark before any shift was tried: the value at the meeting point still is a true one.
        let (shift, _) = meeting_point(&mut support);
        best = (worst_excess(still, shift).0, shift);
    }
    Shifted { shift: best.1, worst: best.0, support: proof }
}

/// Room kept between calls, so that trying many turns does not allocate.
#[derive(Debug, Default)]
pub(super) struct StillRoom(Vec<Still>);

fn plane(still: &[Still], pair: usize, normal: P) -> Plane {
    let s = &still[pair];
    let level = -dot(normal, s.centre) - dot(normal, s.slot_a).abs() - dot(normal, s.slot_b).abs() - s.allowance;
    Plane { pair, normal, level }
}

fn worst_excess(still: &[Still], shift: P) -> (f64, usize, P) {
    let mut worst = (f64::NEG_INFINITY, 0, [0.0, 0.0]);
    for (index, s) in still.iter().enumerate() {
        let (distance, normal) = beyond(minus(shift, s.centre), s.slot_a, s.slot_b);
        let excess = distance - s.allowance;
        if excess > worst.0 {
            worst = (excess, index, normal);
        }
    }
    worst
}

/// The given support with its levels taken anew, or three planes of the tightest pair at 120 degrees to each other.
fn first_support(still: &[Still], start: Option<&Support>) -> Support {
    if let Some(start) = start {
        let mut support = *start;
        for p in &mut support.planes {
            *p = plane(still, p.pair, p.normal);
        }
        return support;
    }
    let mut tight = 0;
    for (index, s) in still.iter().enumerate() {
        if s.allowance < still[tight].allowance {
            tight = index;
        }
    }
    let half_root_three = 0.5 * 3.0_f64.sqrt();
    let third = |normal| plane(still, tight, normal);
    let planes = [third([1.0, 0.0]), third([-0.5, half_root_three]), third([-0.5, -half_root_three])];
    Support { planes, weights: [1.0 / 3.0; 3] }
}

/// Where the three planes meet, and at what level; sets the weights that balance the normals.
fn meeting_point(support: &mut Support) -> (P, f64) {
    let [p, q, r] = support.planes;
    let area = cross(minus(p.normal, r.normal), minus(q.normal, r.normal));
    let weights =
        [cross(q.normal, r.normal) / area, cross(r.normal, p.normal) / area, cross(p.normal, q.normal) / area];
    // Rounding may leave a weight a hair below zero; the proof needs them all at or above it.
    let weights = weights.map(|w| w.max(0.0));
    let sum = weights[0] + weights[1] + weights[2];
    support.weights = weights.map(|w| w / sum);
    let level = support.weights[0] * p.level + support.weights[1] * q.level + support.weights[2] * r.level;
    let (e, f) = (minus(p.normal, r.normal), minus(q.normal, r.normal));
    let (ge, gf) = (r.level - p.level, r.level - q.level);
    ([(ge * f[1] - gf * e[1]) / area, (e[0] * gf - f[0] * ge) / area], level)
}

/// Takes a plane in and puts one out so that the normals still hold the origin between them.
///
/// `false` when rounding leaves nothing to put out.
fn exchange(support: &mut Support, entering: Plane) -> bool {
    let [p, q, r] = support.planes.map(|plane| minus(plane.normal, entering.normal));
    let area = cross(minus(p, r), minus(q, r));
    let shares = [cross(q, r) / area, cross(r, p) / area, cross(p, q) / area];
    let mut leaving = None;
    let mut least = f64::INFINITY;
    for (index, share) in shares.iter().enumerate() {
        if *share > 1e-11 {
            let ratio = support.weights[index] / share;
            if ratio < least {
                least = ratio;
                leaving = Some(index);
            }
        }
    }
    let Some(leaving) = leaving else { return false };
    support.planes[leaving] = entering;
    true
}
