//! Does the front of a frame meet the machine, once the axle anchor has placed it?
//!
//! The axle anchor's bolts or pins leave a little freedom. Within it the front anchor has to meet its mounting: along the
//! machine, in height, sideways, with the faces looking at each other the same way up.

use core::f64::consts::TAU;

use crate::space::{RigidMotion, Vector, dot};

use super::LARGEST;
use super::facing::{Meeting, agree, meeting};
use super::freedom::{Anchor, Bent, Held, Moved, Offset, WORTH, Ways};

/// What the front anchor may be off by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowed {
    /// Least and greatest gap between the faces, metres: negative as far as the frame springs, positive as far as it is
    /// shimmed.
    pub gap: [f64; 2],
    /// The most that faces and ups may be out of line, radians.
    pub facing: f64,
    /// Side play of the axle anchor along its own face's normal, either way, metres: 0 for bolted plates.
    pub axle_side_play: f64,
}

/// What keeps the front anchor from more margin.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Limit {
    /// The faces do not look at each other, or not the same way up.
    Facing,
    /// The frame is too near or too far sideways: before the machine's face or behind it.
    Gap,
    /// The bolts are off along the face's u.
    Across,
    /// The bolts are off along the face's v.
    Height,
}

/// How the front anchor meets the machine at the best that the axle anchor leaves free.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Met {
    /// The lesser of `bolts` and `gap`, metres; negative: it does not meet by this much.
    ///
    /// Says nothing where [`Met::limit`] is [`Limit::Facing`].
    pub margin: f64,
    /// What is left of the play of the bolt or pin that has least left, metres.
    pub bolts: f64,
    /// What is left of the allowed gap, metres.
    pub gap: f64,
    /// Least and greatest gap at the bolts, metres; negative: the faces cross.
    pub gaps: [f64; 2],
    /// Offset of the bolt that has least left, along u and v of the machine's face, metres.
    pub offset: [f64; 2],
    /// How the two faces lie to each other there.
    pub meeting: Meeting,
    /// What keeps it from more.
    pub limit: Limit,
    /// The motion of the frame from where it was placed.
    pub motion: RigidMotion,
}

/// The best that the front anchor can come to within what the axle anchor leaves free; `None` where an anchor has neither bolt
/// nor pin, or a figure is not a number up to [`LARGEST`].
///
/// The frame's ports are given where the axle anchor's lay places them. Bolts of the axle anchor that do not go in there are
/// taken to be let in there.
///
/// # Units
/// Metres and radians.
///
/// # Frame
/// Both anchors in one frame, the machine's.
///
/// # Valid for
/// Rigid frames and machines. The axle anchor's faces stay in contact, so that the frame moves in their plane (and along
/// the side play of pins).
///
/// # Accuracy
/// 1e-6 m where the axle anchor is a plate with play of millimetres. A frame that swings about one pin is first swung round in
/// whole degrees, so that of several attitudes that nearly meet the best one is found.
///
/// # Source
/// Own derivation: for a given turn the offsets go straight with the shifts, so the least worst offset is a convex problem;
/// the turn is taken as straight near a turn, found anew there, and again.
///
/// # Examples
/// An axle plate with two M12 bolts 100 mm apart in 13.5 mm holes, and a front bolt 800 mm ahead: it can be 120 mm off in height
/// no more than the plate turns and lifts.
/// ```
/// use fitup_core::fit::mating::closure_in_space::{Allowed, Limit, front_met};
/// use fitup_core::fit::mating::facing::PortFrame;
/// use fitup_core::fit::mating::freedom::{Anchor, Held};
/// let face = |x, z, side| PortFrame::new([x, 0.3, z], [0.0, side, 0.0], [0.0, 0.0, 1.0]).expect("square");
/// let bolts = vec![Held::round([0.05, 0.0], [-0.05, 0.0], 0.0015), Held::round([-0.05, 0.0], [0.05, 0.0], 0.0015)];
/// let axle = Anchor { carrier: face(0.1, 0.4, 1.0), carried: face(0.1, 0.4, -1.0), held: bolts };
/// let front = |height| Anchor {
///     carrier: face(0.9, 0.4, 1.0),
///     carried: face(0.9, 0.4 + height, -1.0),
///     held: vec![Held::round([0.0, 0.0], [0.0, 0.0], 0.0015)],
/// };
/// let allowed = Allowed { gap: [-0.0005, 0.003], facing: 0.1, axle_side_play: 0.0 };
/// let level = front_met(&axle, &front(0.0), &allowed).expect("bolts");
/// assert!((level.bolts - 0.0015).abs() < 1e-6);
/// let high = front_met(&axle, &front(0.12), &allowed).expect("bolts");
/// assert!(high.margin < -0.09);
/// assert_eq!(high.limit, Limit::Height);
/// ```
pub fn front_met(axle: &Anchor, front: &Anchor, allowed: &Allowed) -> Option<Met> {
    let met = best_met(axle, front, allowed)?;
    // Faces that look at each other as the frame is placed are not what keeps bolts out that miss however it is turned.
    let is_missed = met.limit == Limit::Facing && met.bolts < 0.0;
    if is_missed && agree(&meeting(&front.carrier, &front.carried), allowed.facing) {
        return Some(Met { limit: limit_of(met.bolts, met.gap, met.offset), ..met });
    }
    Some(met)
}

/// Whether some bolt of the front anchor is out of its play by more than `by` metres, however the frame moves that the axle anchor
/// holds: a quick no, without the best that [`front_met`] looks for. `false` where the frame swings, where [`front_met`] has no answer,
/// and where it is not shown quickly.
///
/// # Units
/// Metres.
pub fn misses_by_more_than(by: f64, axle: &Anchor, front: &Anchor, allowed: &Allowed) -> bool {
    let Some(ways) = ways(axle, front, allowed) else { return false };
    let bolts_alone = Allowed { gap: [-LARGEST, LARGEST], ..*allowed };
    let bent = front.offsets(&RigidMotion::NONE).fold(Bent { arm: 0.0, slot: 0.0 }, |most, bolt| Bent {
        arm: most.arm.max(ways.arm(bolt.at)),
        slot: most.slot.max(libm::hypot(bolt.slots[1][0], bolt.slots[1][1])),
    });
    ways.fall_short(by, bent, shortfall(&ways, front, &bolts_alone, &RigidMotion::NONE, None))
}

/// How the front meets as the frame is placed, unmoved.
pub fn met_as_placed(front: &Anchor, allowed: &Allowed) -> Met {
    met(front, allowed, RigidMotion::NONE)
}

/// The ways that the axle anchor leaves the frame; `None` where [`front_met`] has no answer.
fn ways(axle: &Anchor, front: &Anchor, allowed: &Allowed) -> Option<Ways> {
    let figures = [allowed.gap[0], allowed.gap[1], allowed.facing];
    let known = front.held.iter().flat_map(places).chain(figures).all(|figure| figure.abs() <= LARGEST);
    if front.held.is_empty() || !known {
        return None;
    }
    let lever = front
        .offsets(&RigidMotion::NONE)
        .flat_map(|bolt| axle.offsets(&RigidMotion::NONE).map(move |other| (bolt.at, other.at)))
        .map(|(a, b)| crate::space::norm(crate::space::minus(a, b)))
        .fold(0.1, f64::max);
    Ways::of(axle, allowed.axle_side_play, lever)
}

fn best_met(axle: &Anchor, front: &Anchor, allowed: &Allowed) -> Option<Met> {
    let ways = ways(axle, front, allowed)?;
    let from = if ways.swings { nearest_turn(&ways, front, allowed) } else { 0.0 };
    if keeps_its_gap(&ways, front, allowed) {
        // Only the bolts can come to more, up to their whole play.
        let placed = met(front, allowed, ways.motion(from, [0.0; 3]));
        let most = front.held.iter().map(|held| held.play).fold(f64::INFINITY, f64::min);
        if placed.bolts >= most - WORTH {
            return Some(placed);
        }
    }
    let (turn, shift, least) = ways.lowest(from, |motion| shortfall(&ways, front, allowed, motion, None))?;
    let both = met(front, allowed, ways.motion(turn, shift));
    if both.bolts <= both.gap {
        return Some(both);
    }
    // The gap keeps the margin low: the bolts may still do better beside it.
    let beside = ways.lowest(turn, |motion| shortfall(&ways, front, allowed, motion, Some(least)));
    let beside = beside.map(|(turn, shift, _)| met(front, allowed, ways.motion(turn, shift)));
    Some(beside.filter(|beside| beside.bolts > both.bolts).unwrap_or(both))
}

fn places(held: &Held) -> [f64; 9] {
    let [a, b] = held.carrier;
    let [c, d] = held.carrier_slot;
    let [e, f] = held.carried;
    let [g, h] = held.carried_slot;
    [a, b, c, d, e, f, g, h, held.play]
}

/// Whether no way to move brings the front plates nearer to each other or apart: the axle's face lies along the front's.
fn keeps_its_gap(ways: &Ways, front: &Anchor, allowed: &Allowed) -> bool {
    let along_the_face = |way: &Vector| front.carrier.seen_direction(*way)[2].abs() <= 1e-12;
    let moves_along = |bolt: Offset| ways.ways_of(bolt.at)[..3].iter().all(along_the_face);
    allowed.axle_side_play <= 0.0 && front.offsets(&RigidMotion::NONE).all(moves_along)
}

/// The turn of a swinging frame, in whole degrees, at which the front meets best.
fn nearest_turn(ways: &Ways, front: &Anchor, allowed: &Allowed) -> f64 {
    let turns = (0..360).map(|degree| f64::from(degree) * TAU / 360.0);
    let worst = |turn: f64| {
        let met = met(front, allowed, ways.motion(turn, [0.0; 3]));
        // Of attitudes that meet alike the one that stands the right way up.
        (-met.margin, met.meeting.turn.abs() + met.meeting.tilt)
    };
    let best =
        turns.map(|turn| (worst(turn), turn)).min_by(|(a, _), (b, _)| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
    best.map_or(0.0, |(_, turn)| turn)
}

/// How many times over a gap short of what is asked is held against the bolts: more than any lever makes of it. Own choice.
const GAP_WEIGHT: f64 = 1e3;

/// The worst shortfall of the front anchor, as it goes with the four coordinates beyond a motion.
///
/// Without `kept` that of gap and bolts alike; else that of the bolts alone, the gap's being kept at that.
fn shortfall(
    ways: &Ways,
    front: &Anchor,
    allowed: &Allowed,
    motion: &RigidMotion,
    kept: Option<f64>,
) -> impl Fn(&[f64; 4]) -> Moved + use<> {
    let face = front.carrier;
    let bolts: Vec<(Offset, [Vector; 4])> =
        front.offsets(motion).map(|bolt| (bolt, ways.ways_of(bolt.at).map(|way| face.seen_direction(way)))).collect();
    let [least, greatest] = allowed.gap;
    move |at: &[f64; 4]| {
        let none = Moved { value: f64::NEG_INFINITY, slope: [0.0; 4] };
        let (mut in_plane, mut sideways) = (none, none);
        let note = |worst: &mut Moved, value: f64, slope: [f64; 4]| {
            if value > worst.value {
                *worst = Moved { value, slope };
            }
        };
        for (bolt, ways) in &bolts {
            let along = |part: usize| ways.iter().zip(at).map(|(way, by)| way[part] * by).sum::<f64>();
            let (short, way) = bolt.short([along(0), along(1)]);
            note(&mut in_plane, short, ways.map(|step| dot(step, [way[0], way[1], 0.0])));
            let before = bolt.before + along(2);
            note(&mut sideways, before - greatest, ways.map(|step| step[2]));
            note(&mut sideways, least - before, ways.map(|step| -step[2]));
        }
        match kept {
            None if sideways.value > in_plane.value => sideways,
            None => in_plane,
            Some(kept) => {
                let over = sideways.value - kept - 2.0 * WORTH;
                if over > 0.0 {
                    in_plane.value += GAP_WEIGHT * over;
                    for (slope, more) in in_plane.slope.iter_mut().zip(sideways.slope) {
                        *slope += GAP_WEIGHT * more;
                    }
                }
                in_plane
            }
        }
    }
}

/// How the front meets after a motion.
fn met(front: &Anchor, allowed: &Allowed, motion: RigidMotion) -> Met {
    let mut gaps = [f64::INFINITY, f64::NEG_INFINITY];
    let mut worst: Option<(f64, [f64; 2])> = None;
    for bolt in front.offsets(&motion) {
        gaps = [gaps[0].min(bolt.before), gaps[1].max(bolt.before)];
        let left = -bolt.short([0.0; 2]).0;
        if worst.is_none_or(|(least, _)| left < least) {
            worst = Some((left, bolt.off));
        }
    }
    let (bolts, offset) = worst.unwrap_or((f64::INFINITY, [0.0; 2]));
    let gap = (gaps[0] - allowed.gap[0]).min(allowed.gap[1] - gaps[1]);
    let meeting = meeting(&front.carrier, &front.carried.moved(&motion));
    let is_turned = !agree(&meeting, allowed.facing);
    let limit = if is_turned { Limit::Facing } else { limit_of(bolts, gap, offset) };
    Met { margin: bolts.min(gap), bolts, gap, gaps, offset, meeting, limit, motion }
}

/// What keeps faces that look at each other from more.
fn limit_of(bolts: f64, gap: f64, [across, height]: [f64; 2]) -> Limit {
    if gap < bolts {
        Limit::Gap
    } else if across.abs() > height.abs() {
        Limit::Across
    } else {
        Limit::Height
    }
}

#[cfg(test)]
mod tests {
    use super::super::facing::PortFrame;
    use super::*;

    const UP: Vector = [0.0, 0.0, 1.0];
    const ALLOWED: Allowed = Allowed { gap: [-0.0005, 0.003], facing: 0.1, axle_side_play: 0.0 };

    fn face(at: Vector, side: f64) -> PortFrame {
        PortFrame::new(at, [0.0, side, 0.0], UP).unwrap()
    }

    fn plate(at: Vector, places: &[[f64; 2]]) -> Anchor {
        let held = places.iter().map(|&[u, v]| Held::round([u, v], [-u, v], 0.0015)).collect();
        Anchor { carrier: face(at, 1.0), carried: face(at, -1.0), held }
    }

    const FOUR: [[f64; 2]; 4] = [[0.05, 0.03], [-0.05, 0.03], [-0.05, -0.03], [0.05, -0.03]];
    const TWO: [[f64; 2]; 2] = [[0.04, 0.0], [-0.04, 0.0]];

    fn axle() -> Anchor {
        plate([0.1, 0.3, 0.4], &FOUR)
    }

    /// The front anchor with the frame's plate off by this much.
    fn front(off: Vector) -> Anchor {
        let mut front = plate([0.9, 0.3, 0.42], &TWO);
        front.carried = face([0.9 + off[0], 0.3 + off[1], 0.42 + off[2]], -1.0);
        front
    }

    fn of(off: Vector) -> Met {
        front_met(&axle(), &front(off), &ALLOWED).unwrap()
    }

    #[test]
    fn what_is_said_to_miss_is_missed_by_the_best_that_is_found() {
        let chance = &crate::search::tests::chance::Chance::new(7);
        let off = |most: f64| (chance.below(2_001) as f64 / 1e3 - 1.0) * most;
        let (mut missed, mut shown, mut near) = (0, 0, 0);
        for at in 0..600 {
            let most = [0.004, 0.03, 0.3][at % 3];
            let mut front = front([off(most), off(0.003), off(most)]);
            front.held[0].carried_slot = [off(0.01), 0.0];
            let mut axle = axle();
            if at % 2 == 0 {
                for held in &mut axle.held {
                    held.carrier_slot = [0.01, 0.0];
                }
            }
            let met = front_met(&axle, &front, &ALLOWED).expect("bolts");
            let by = 0.0004;
            let is_shown = misses_by_more_than(by, &axle, &front, &ALLOWED);
            assert!(!is_shown || met.bolts < -by, "{at}: {met:?}");
            if met.bolts < -by {
                missed += 1;
            } else {
                near += 1;
            }
            shown += usize::from(is_shown);
        }
        // Those within what a turn bends are left to the search.
        assert!(near > 100 && missed > 300 && 5 * shown > 4 * missed, "{near} {missed} {shown}");
    }

    #[test]
    fn a_true_frame_keeps_the_whole_play_of_its_front_bolts() {
        let met = of([0.0; 3]);
        assert!((met.bolts - 0.0015).abs() < 1e-6 && (met.gap - 0.0005).abs() < 1e-7);
        assert_eq!(met.limit, Limit::Gap);
        assert!(met.gaps.iter().all(|gap| gap.abs() < 1e-7));
    }

    #[test]
    fn a_plate_of_four_bolts_takes_up_some_height_at_the_front_and_not_120_millimetres() {
        // 25.7 mrad over 800 mm and its own play: some 20 mm at the front bolts' own height.
        assert!(of([0.0, 0.0, 0.015]).bolts > 0.0);
        let high = of([0.0, 0.0, 0.12]);
        assert!(high.margin < -0.09 && high.limit == Limit::Height, "{high:?}");
    }

    #[test]
    fn what_is_off_along_the_machine_is_left_over_but_for_both_plays() {
        let long = of([0.01, 0.0, 0.0]);
        // 1.5 mm at the axle, 1.5 mm at the front.
        assert!((long.bolts + 0.007).abs() < 1e-4, "{long:?}");
        assert_eq!(long.limit, Limit::Across);
    }

    #[test]
    fn sideways_the_frame_has_to_be_shimmed_or_crosses_the_machine() {
        let out = of([0.0, 0.06, 0.0]);
        assert!((out.gap - (0.003 - 0.06)).abs() < 1e-7 && out.limit == Limit::Gap);
        assert!((out.gaps[1] - 0.06).abs() < 1e-7);
        let into = of([0.0, -0.002, 0.0]);
        assert!((into.gap + 0.0015).abs() < 1e-7 && into.limit == Limit::Gap);
    }

    #[test]
    fn a_face_that_looks_up_or_stands_on_its_head_does_not_meet() {
        let mut looks_up = front([0.0; 3]);
        looks_up.carried = PortFrame::new([0.9, 0.3, 0.42], UP, [1.0, 0.0, 0.0]).unwrap();
        assert_eq!(front_met(&axle(), &looks_up, &ALLOWED).unwrap().limit, Limit::Facing);
        let mut on_its_head = front([0.0; 3]);
        on_its_head.carried = PortFrame::new([0.9, 0.3, 0.42], [0.0, -1.0, 0.0], [0.0, 0.0, -1.0]).unwrap();
        assert_eq!(front_met(&axle(), &on_its_head, &ALLOWED).unwrap().limit, Limit::Facing);
        let mut away = front([0.0; 3]);
        away.carried = face([0.9, 0.3, 0.42], 1.0);
        assert_eq!(front_met(&axle(), &away, &ALLOWED).unwrap().limit, Limit::Facing);
    }

    /// An axle anchor of one pin across the machine.
    fn pinned(play: f64) -> Anchor {
        Anchor {
            carrier: face([0.1, 0.3, 0.4], 1.0),
            carried: face([0.1, 0.3, 0.4], -1.0),
            held: vec![Held::round([0.0; 2], [0.0; 2], play)],
        }
    }

    #[test]
    fn a_single_pin_lets_the_frame_swing_to_any_height_at_its_own_reach() {
        let mut front = front([0.0; 3]);
        front.held = vec![Held::round([0.0; 2], [0.0; 2], 0.0015)];
        // The frame as it was drawn hangs a quarter turn down.
        front.carried = PortFrame::new([0.12, 0.3, -0.4], [0.0, -1.0, 0.0], [1.0, 0.0, 0.0]).unwrap();
        let met = front_met(&pinned(0.0002), &front, &ALLOWED).unwrap();
        assert!((met.bolts - 0.0015).abs() < 1e-6, "{met:?}");
        assert!(met.meeting.turn.abs() < 0.01 && met.limit == Limit::Gap);
    }

    #[test]
    fn a_pin_does_not_make_a_frame_longer_and_gives_way_sideways_as_far_as_it_has_play() {
        let mut long = front([0.01, 0.004, 0.0]);
        long.held = vec![Held::round([0.0; 2], [0.0; 2], 0.0015)];
        let met = front_met(&pinned(0.0002), &long, &Allowed { axle_side_play: 0.002, ..ALLOWED }).unwrap();
        let spans = libm::hypot(0.81, 0.02) - libm::hypot(0.8, 0.02);
        assert!((met.bolts - (0.0015 + 0.0002 - spans)).abs() < 1e-6, "{met:?}");
        assert!((met.gaps[1] - 0.002).abs() < 0.0021);
    }

    #[test]
    fn an_axle_plate_that_looks_down_lets_the_front_go_sideways_by_its_turn() {
        let down = |at: Vector, way: f64| PortFrame::new(at, [0.0, 0.0, way], [1.0, 0.0, 0.0]).unwrap();
        let at = [0.1, 0.3, 0.4];
        let held = FOUR.iter().map(|&[u, v]| Held::round([u, v], [-u, v], 0.0015)).collect();
        let axle = Anchor { carrier: down(at, -1.0), carried: down(at, 1.0), held };
        let off = |y: f64| front_met(&axle, &front([0.0, y, 0.0]), &ALLOWED).unwrap();
        assert!(off(0.01).margin > 0.0, "{:?}", off(0.01));
        assert!(off(0.06).margin < -0.02 && off(0.06).limit == Limit::Gap);
        // The height is not taken up by a plate that stays in its plane.
        let high = front_met(&axle, &front([0.0, 0.0, 0.005]), &ALLOWED).unwrap();
        assert!((high.bolts - (0.0015 - 0.005)).abs() < 1e-5 && high.limit == Limit::Height);
    }

    #[test]
    fn figures_that_are_none_meet_nothing() {
        assert!(front_met(&Anchor { held: Vec::new(), ..axle() }, &front([0.0; 3]), &ALLOWED).is_none());
        assert!(front_met(&axle(), &Anchor { held: Vec::new(), ..front([0.0; 3]) }, &ALLOWED).is_none());
        let mut bad = front([0.0; 3]);
        bad.held[0].play = f64::NAN;
        assert!(front_met(&axle(), &bad, &ALLOWED).is_none());
        assert!(front_met(&axle(), &front([0.0; 3]), &Allowed { facing: f64::INFINITY, ..ALLOWED }).is_none());
        assert!(front_met(&axle(), &front([0.0; 3]), &Allowed { axle_side_play: -1.0, ..ALLOWED }).is_none());
    }
}
