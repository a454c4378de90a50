//! What a joint leaves free: how far a bolted plate can still be shifted and turned, how a pinned item swings.

use core::f64::consts::PI;

use crate::space::{RigidMotion, Rotation, Vector, cross, minus, norm, plus, times};

use super::LARGEST;
use super::bolt_pattern::{Hole, Lay, allowance, beyond};
use super::facing::PortFrame;
use super::lowest::{Look, Sloped, lowest, none_below};

/// A bolt or pin that holds two faces to each other.
///
/// # Units
/// Metres.
///
/// # Frame
/// Each place in its own face's u and v, as one looks at that face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// Centre on the carrier.
    pub carrier: [f64; 2],
    /// Half the travel of a slot there; zero for a round hole.
    pub carrier_slot: [f64; 2],
    /// Centre on the carried face.
    pub carried: [f64; 2],
    /// Half the travel of a slot there.
    pub carried_slot: [f64; 2],
    /// How far apart the centres may lie.
    pub play: f64,
}

impl Held {
    /// A bolt or pin in round holes.
    pub const fn round(carrier: [f64; 2], carried: [f64; 2], play: f64) -> Self {
        Self { carrier, carrier_slot: [0.0; 2], carried, carried_slot: [0.0; 2], play }
    }

    fn is_known(&self) -> bool {
        let figures = [self.carrier, self.carrier_slot, self.carried, self.carried_slot, [self.play; 2]];
        figures.iter().flatten().all(|part| part.abs() <= LARGEST)
    }
}

/// Two faces held to each other, both placed in one frame.
///
/// The carried item stays in the plane of the carrier's face. Pins lie square to that plane: for pins across the machine, take
/// [`PortFrame::along_pins`] of both ports.
#[derive(Clone, Debug, PartialEq)]
pub struct Anchor {
    /// The carrier's face.
    pub carrier: PortFrame,
    /// The carried face where it comes to lie.
    pub carried: PortFrame,
    /// The bolts or pins.
    pub held: Vec<Held>,
}

impl Anchor {
    /// The anchor of a lay: `a` and `b` as each is written in its own face, `lay` that of `b` seen through its back.
    pub fn bolted(carrier: PortFrame, carried: PortFrame, [a, b]: [&[Hole]; 2], bolt: f64, lay: &Lay) -> Self {
        let held = lay.pairs.iter().filter_map(|pair| {
            let (a, b) = (a.get(pair.a)?, b.get(pair.b)?);
            Some(Held {
                carrier: [a.u, a.v],
                carrier_slot: a.half_travel(),
                carried: [b.u, b.v],
                carried_slot: b.half_travel(),
                play: allowance(a, b, bolt)?,
            })
        });
        Self { carrier, carried, held: held.collect() }
    }

    /// The offset of each bolt or pin in the carrier's plane with its slots, after a motion of the carried item.
    pub(super) fn offsets(&self, by: &RigidMotion) -> impl Iterator<Item = Offset> {
        let placed = self.carried.moved(by);
        self.held.iter().map(move |held| {
            let at = placed.point(held.carried[0], held.carried[1], 0.0);
            let slot = minus(placed.point(held.carried_slot[0], held.carried_slot[1], 0.0), placed.at());
            let seen = self.carrier.seen(at);
            let slot = self.carrier.seen_direction(slot);
            Offset {
                at,
                seen: [seen[0], seen[1]],
                off: [seen[0] - held.carrier[0], seen[1] - held.carrier[1]],
                before: seen[2],
                slots: [held.carrier_slot, [slot[0], slot[1]]],
                play: held.play,
            }
        })
    }
}

/// A bolt's or pin's place after a motion.
#[derive(Clone, Copy, Debug)]
pub(super) struct Offset {
    /// The carried centre in space.
    pub at: Vector,
    /// The same in the carrier's plane.
    pub seen: [f64; 2],
    /// The carried centre less the carrier's, in the carrier's plane.
    pub off: [f64; 2],
    /// The carried centre before the carrier's face.
    pub before: f64,
    /// Half travels in the carrier's plane.
    pub slots: [[f64; 2]; 2],
    /// What the centres may lie apart.
    pub play: f64,
}

impl Offset {
    /// By how much the bolt is short of going in when moved by `more`, and the way it would have to go back.
    pub fn short(&self, more: [f64; 2]) -> (f64, [f64; 2]) {
        let (apart, way) = beyond([self.off[0] + more[0], self.off[1] + more[1]], self.slots[0], self.slots[1]);
        (apart - self.play, way)
    }
}

/// Below this a difference is none, metres: a hundredth of a micrometre. Own choice, far below any measurement.
pub(super) const WORTH: f64 = 1e-8;

/// The ways a carried item can still move.
///
/// Coordinates of the search: turn about the pivot times the lever, shift along the carrier's u and v, shift along its face.
pub(super) struct Ways {
    /// About what the item turns: the middle of its bolts.
    pivot: Vector,
    plane: PortFrame,
    anchor: Anchor,
    /// Play along the face's normal, either way.
    along: f64,
    /// By how much the bolts are out of their play where the item was placed: they are taken to be let in there.
    loosened: f64,
    /// A length that makes a turn comparable with a shift.
    lever: f64,
    /// The most that is worth trying of each coordinate.
    reach: [f64; 4],
    /// Whether nothing holds its attitude.
    pub swings: bool,
}

/// How much of an item a turn bends: the longest arm of a point, and the longest half travel of a slot that turns with it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bent {
    /// Greatest distance from the pivot, metres.
    pub arm: f64,
    /// Greatest half travel, metres.
    pub slot: f64,
}

/// How far bolts let an item turn at the most, 0 to π radians.
///
/// Two bolts stay as far from each other as they are. What both give square to the line between them lets it turn by the arc sine, as
/// long as they do not give its whole length along it.
fn turns_at_most(placed: &[Offset], loosened: f64) -> f64 {
    let mut most = PI;
    for (i, a) in placed.iter().enumerate() {
        for b in &placed[..i] {
            let between = minus(a.at, b.at);
            let length = norm(between);
            // Where the item was placed both are within their play, and after the turn again.
            let gives = 2.0 * (a.play.max(0.0) + b.play.max(0.0) + 2.0 * loosened);
            let line = [a.seen[0] - b.seen[0], a.seen[1] - b.seen[1]].map(|part| part / length);
            let slots = |towards: [f64; 2]| -> f64 {
                let fixed = |slot: [f64; 2]| (slot[0] * towards[0] + slot[1] * towards[1]).abs();
                // A slot of the item may have turned any way.
                let turned = |slot: [f64; 2]| libm::hypot(slot[0], slot[1]);
                [a, b].map(|bolt| 2.0 * (fixed(bolt.slots[0]) + turned(bolt.slots[1]))).iter().sum()
            };
            let (along, square) = (gives + slots(line), gives + slots([-line[1], line[0]]));
            if along < length && square < length {
                most = most.min(libm::asin(square / length));
            }
        }
    }
    most
}

/// A function of the item's four ways to move.
pub(super) type Moved = Sloped<4>;

impl Ways {
    /// `None` without a bolt or pin, or when a figure is not a number up to [`LARGEST`].
    pub fn of(anchor: &Anchor, along: f64, lever: f64) -> Option<Self> {
        let known = anchor.held.iter().all(Held::is_known) && (0.0..=LARGEST).contains(&along);
        if anchor.held.is_empty() || !known || !(lever > 0.0 && lever <= LARGEST) {
            return None;
        }
        let placed: Vec<Offset> = anchor.offsets(&RigidMotion::NONE).collect();
        let count = placed.len() as f64;
        let pivot = times(placed.iter().fold([0.0; 3], |sum, bolt| plus(sum, bolt.at)), 1.0 / count);
        let arm = placed.iter().map(|bolt| norm(minus(bolt.at, pivot))).fold(0.0, f64::max);
        let loosened = placed.iter().map(|bolt| bolt.short([0.0; 2]).0).fold(0.0, f64::max);
        let most = placed.iter().map(|bolt| {
            let slots: f64 = bolt.slots.iter().map(|slot| libm::hypot(slot[0], slot[1])).sum();
            bolt.play.max(0.0) + loosened + slots
        });
        let shift = 2.0 * most.fold(0.0, f64::max) + WORTH;
        let swings = arm <= 1e-6;
        // Both ends of an arm give way at once.
        let turn = if swings { PI } else { (2.0 * shift / arm).min(turns_at_most(&placed, loosened)) };
        Some(Self {
            pivot,
            plane: anchor.carrier,
            anchor: anchor.clone(),
            along,
            loosened,
            lever,
            reach: [turn * lever, shift, shift, along + WORTH],
            swings,
        })
    }

    /// The motion of a turn about the pivot and shifts in the carrier's axes.
    pub fn motion(&self, turn: f64, shift: [f64; 3]) -> RigidMotion {
        let rotation = Rotation::about(self.plane.faces(), turn);
        let about = minus(self.pivot, rotation.applied(self.pivot));
        let moved = minus(self.plane.point(shift[0], shift[1], shift[2]), self.plane.at());
        RigidMotion { rotation, shift: plus(about, moved) }
    }

    /// Whether what a goal asks is out of reach by more than `short`, however the item moves: `goal` is the function of the four
    /// coordinates where the item was placed, and `at_most` how far its points lie from the pivot and how long its slots are.
    ///
    /// Says `false` where nothing holds the attitude, and where it takes more looks to show.
    ///
    /// # Source
    /// Own derivation: a turn by θ differs from the straight one by no more than θ²/2 of the arm, and a slot that turns with the item
    /// by θ of its length. So much is added to what the bolts may be off by, and taken off the goal.
    pub fn fall_short(&self, short: f64, at_most: Bent, goal: impl Fn(&[f64; 4]) -> Moved) -> bool {
        if self.swings {
            return false;
        }
        let most = self.reach[0] / self.lever;
        let bent = |by: Bent| 0.5 * most * most * by.arm + most * by.slot;
        let bolts = self.bolts(&RigidMotion::NONE);
        let slack = bolts.iter().map(|(bolt, ..)| {
            bent(Bent { arm: norm(minus(bolt.at, self.pivot)), slot: norm([bolt.slots[1][0], bolt.slots[1][1], 0.0]) })
        });
        let slack = slack.fold(0.0, f64::max);
        none_below([0.0; 4], self.reach, short + bent(at_most) + WORTH, |at| match self.limit(&bolts, at, slack) {
            Some(limit) => Look::Outside(limit),
            None => Look::Inside(goal(at)),
        })
    }

    /// How far from the pivot a point is.
    pub fn arm(&self, at: Vector) -> f64 {
        norm(minus(at, self.pivot))
    }

    /// The bolts after a motion, and how each goes with the turn along the carrier's u and v.
    fn bolts(&self, motion: &RigidMotion) -> Vec<(Offset, f64, f64)> {
        let turning = |bolt: Offset| {
            let turning = self.plane.seen_direction(self.ways_of(bolt.at)[0]);
            (bolt, turning[0], turning[1])
        };
        self.anchor.offsets(motion).map(turning).collect()
    }

    /// How a point of the carried item goes with each of the four coordinates.
    pub fn ways_of(&self, at: Vector) -> [Vector; 4] {
        let turning = times(cross(self.plane.faces(), minus(at, self.pivot)), 1.0 / self.lever);
        [turning, self.plane.right(), self.plane.up(), self.plane.faces()]
    }

    /// The lowest value of what `value` builds, among the motions that the joint leaves: turn, shift and value.
    ///
    /// `value` is handed a motion and gives back the function of the four coordinates beyond it, which has to be convex. The
    /// turn is taken as straight near the motion, found anew there, and again, until it or the value stays.
    pub fn lowest<F: Fn(&[f64; 4]) -> Moved>(
        &self,
        from: f64,
        value: impl Fn(&RigidMotion) -> F,
    ) -> Option<(f64, [f64; 3], f64)> {
        let mut turn = from;
        let mut reach = self.reach;
        if self.swings {
            reach[0] = 0.1 * self.lever;
        }
        let mut found: Option<(f64, [f64; 3], f64)> = None;
        let mut held = from;
        for _ in 0..60 {
            let motion = self.motion(turn, [0.0; 3]);
            let bolts = self.bolts(&motion);
            let goal = value(&motion);
            let stepped = lowest([0.0; 4], reach, WORTH, |at| match self.limit(&bolts, at, 0.0) {
                Some(limit) => Look::Outside(limit),
                None => Look::Inside(goal(at)),
            });
            // A step too far, past where a turned slot lets go: half of it.
            let Some((at, least)) = stepped else {
                if (turn - held).abs() <= 0.0 {
                    break;
                }
                turn = if (turn - held).abs() * self.lever <= WORTH { held } else { 0.5 * (turn + held) };
                reach[0] = ((turn - held).abs() * self.lever).max(WORTH);
                continue;
            };
            held = turn;
            turn = libm::remainder(turn + at[0] / self.lever, core::f64::consts::TAU);
            // Where the turn does not matter it need not come to rest.
            let stays = found.is_some_and(|(_, _, before)| (least - before).abs() <= WORTH);
            found = Some((turn, [at[1], at[2], at[3]], least));
            if stays || at[0].abs() <= WORTH {
                break;
            }
            reach[0] = (4.0 * at[0].abs()).max(1e-5 * self.lever).min(reach[0]);
        }
        found
    }

    /// The limit that is exceeded most by more than `slack`, if one is.
    fn limit(&self, bolts: &[(Offset, f64, f64)], at: &[f64; 4], slack: f64) -> Option<Moved> {
        let mut worst: Option<Moved> = None;
        let mut note = |value: f64, slope: [f64; 4]| {
            if value > WORTH && worst.is_none_or(|worst| value > worst.value) {
                worst = Some(Sloped { value: value - WORTH, slope });
            }
        };
        for (bolt, turn_u, turn_v) in bolts {
            let (short, way) = bolt.short([at[1] + at[0] * turn_u, at[2] + at[0] * turn_v]);
            note(short - self.loosened - slack, [way[0] * turn_u + way[1] * turn_v, way[0], way[1], 0.0]);
        }
        note(at[3].abs() - self.along, [0.0, 0.0, 0.0, if at[3] < 0.0 { -1.0 } else { 1.0 }]);
        worst
    }
}

/// How far a joint's bolts or pins let the carried item move in its plane, from where it is placed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Freedom {
    /// Least and greatest turn, radians from u towards v of the carrier; −π to π where it swings freely.
    pub turn: [f64; 2],
    /// Least and greatest shift of the middle of the bolts along the carrier's u, metres.
    pub u: [f64; 2],
    /// The same along its v.
    pub v: [f64; 2],
}

/// How far a joint lets the carried item move; `None` without a bolt or pin, or when a figure is not a number up to
/// [`LARGEST`].
///
/// Where the bolts do not go in as the item is placed, they are taken to be let in just there (opened up, drilled).
///
/// # Units
/// Metres and radians.
///
/// # Accuracy
/// 1e-7 m, and as much over the distance of the bolts for the turn.
///
/// # Examples
/// Two M12 bolts 100 mm apart in 13.5 mm holes: each gives 1.5 mm either way, so the plate turns by asin(3 / 100).
/// ```
/// use fitup_core::fit::mating::facing::PortFrame;
/// use fitup_core::fit::mating::freedom::{Anchor, Held, freedom};
/// let (left, right, up) = ([0.0, 1.0, 0.0], [0.0, -1.0, 0.0], [0.0, 0.0, 1.0]);
/// let carrier = PortFrame::new([0.0; 3], left, up).expect("square");
/// let carried = PortFrame::new([0.0; 3], right, up).expect("square");
/// let held = vec![Held::round([0.05, 0.0], [-0.05, 0.0], 0.0015), Held::round([-0.05, 0.0], [0.05, 0.0], 0.0015)];
/// let free = freedom(&Anchor { carrier, carried, held }).expect("two bolts");
/// assert!((free.turn[1] - (0.0015_f64 / 0.05).asin()).abs() < 1e-5);
/// assert!((free.u[1] - 0.0015).abs() < 1e-6);
/// ```
pub fn freedom(anchor: &Anchor) -> Option<Freedom> {
    let ways = Ways::of(anchor, 0.0, 1.0)?;
    // One way at a time: the lowest of plus or minus that coordinate.
    let end = |way: usize, sign: f64| {
        ways.lowest(0.0, |motion: &RigidMotion| {
            let turned = motion.rotation;
            let before = match way {
                0 => {
                    let up = ways.plane.seen_direction(turned.applied(ways.plane.up()));
                    libm::atan2(0.0 - up[0], up[1])
                }
                _ => 0.0,
            };
            move |at: &[f64; 4]| {
                let mut slope = [0.0; 4];
                slope[way] = sign;
                Sloped { value: sign * (before + at[way]), slope }
            }
        })
        .map(|(_, _, value)| sign * value)
    };
    let range = |way| Some([end(way, 1.0)?, end(way, -1.0)?]);
    Some(Freedom { turn: if ways.swings { [-PI, PI] } else { range(0)? }, u: range(1)?, v: range(2)? })
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;

    const UP: Vector = [0.0, 0.0, 1.0];

    fn anchor(held: Vec<Held>) -> Anchor {
        let carrier = PortFrame::new([0.1, 0.3, 0.4], [0.0, 1.0, 0.0], UP).unwrap();
        let carried = PortFrame::new([0.1, 0.3, 0.4], [0.0, -1.0, 0.0], UP).unwrap();
        Anchor { carrier, carried, held }
    }

    fn bolts(places: &[[f64; 2]], play: f64) -> Anchor {
        anchor(places.iter().map(|&[u, v]| Held::round([u, v], [-u, v], play)).collect())
    }

    fn close(a: [f64; 2], b: [f64; 2], within: f64) -> bool {
        (a[0] - b[0]).abs() < within && (a[1] - b[1]).abs() < within
    }

    #[test]
    fn a_rectangle_of_four_turns_by_its_play_over_its_half_diagonal() {
        let free = freedom(&bolts(&[[0.05, 0.03], [-0.05, 0.03], [-0.05, -0.03], [0.05, -0.03]], 0.0015)).unwrap();
        let turn = 2.0 * libm::asin(0.5 * 0.0015 / libm::hypot(0.05, 0.03));
        assert!(close(free.turn, [-turn, turn], 1e-5), "{free:?} against {turn}");
        assert!(close(free.u, [-0.0015, 0.0015], 1e-6) && close(free.v, [-0.0015, 0.0015], 1e-6));
    }

    #[test]
    fn a_single_pin_swings_all_round() {
        let free = freedom(&bolts(&[[0.02, 0.0]], 0.0004)).unwrap();
        assert_eq!(free.turn, [-PI, PI]);
        assert!(close(free.u, [-0.0004, 0.0004], 1e-6));
    }

    #[test]
    fn bolts_without_play_leave_nothing() {
        let free = freedom(&bolts(&[[0.05, 0.0], [-0.05, 0.0]], 0.0)).unwrap();
        for range in [free.turn, free.u, free.v] {
            assert!(close(range, [0.0, 0.0], 1e-6), "{free:?}");
        }
    }

    #[test]
    fn slots_leave_their_travel_along_themselves() {
        let slot = |held: Held| Held { carrier_slot: [0.01, 0.0], ..held };
        let plain = bolts(&[[0.05, 0.0], [-0.05, 0.0]], 0.001);
        let free = freedom(&anchor(plain.held.into_iter().map(slot).collect())).unwrap();
        assert!(close(free.u, [-0.011, 0.011], 1e-6) && close(free.v, [-0.001, 0.001], 1e-6), "{free:?}");
    }

    #[test]
    fn a_carried_slot_turns_with_its_face() {
        let slot = |held: Held| Held { carried_slot: [0.0, 0.01], ..held };
        let plain = bolts(&[[0.05, 0.0], [-0.05, 0.0]], 0.001);
        let free = freedom(&anchor(plain.held.into_iter().map(slot).collect())).unwrap();
        assert!(close(free.v, [-0.011, 0.011], 1e-5), "{free:?}");
        // One up, one down by 11 mm, the one pulled in by the other.
        assert!(free.turn[1] > 0.2 && free.turn[1] < 0.23, "{free:?}");
    }

    #[test]
    fn bolts_that_do_not_go_in_are_taken_to_be_let_in_where_the_item_is_placed() {
        let mut off = bolts(&[[0.05, 0.0], [-0.05, 0.0]], 0.001);
        off.held[0].carrier[1] += 0.003;
        let free = freedom(&off).unwrap();
        assert!(free.v[0] <= 1e-7 && free.v[1] >= -1e-7, "{free:?}");
    }

    #[test]
    fn without_bolts_or_with_figures_that_are_none_there_is_no_freedom() {
        assert_eq!(freedom(&anchor(Vec::new())), None);
        assert_eq!(freedom(&bolts(&[[f64::NAN, 0.0]], 0.001)), None);
        assert_eq!(freedom(&bolts(&[[1e9, 0.0]], 0.001)), None);
        assert!(freedom(&bolts(&[[0.0, 0.0], [0.1, 0.0]], -0.001)).is_some(), "a bolt too large is let in as well");
    }
}
