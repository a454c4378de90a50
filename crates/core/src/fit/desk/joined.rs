//! Where a joint puts what is carried, by the poses of its two ports and the lay of their patterns.

use super::Desk;
use super::plate_pair::PlatePair;
use crate::build::Placement;
use crate::fit::mating::bolt_pattern::{Face, Motion};
use crate::fit::mating::facing::{PortFrame, joined};
use crate::fit::mating::pins::{PinPoint, Pinned, pinned};
use crate::item::{self, ItemRef, Pins, Point3, Port, PortKind, Pose};
use crate::quantity::{Angle, Length};
use crate::space::RigidMotion;

/// How far an item may lean or turn aside and still be drawn in the side view and the plan, radians: a degree and a half. Own
/// choice: above what bolts in their holes leave. Within it the item is placed as if it stood straight, since a place has a pitch
/// and no other angle: its far end, a metre from the joint, is then up to 26 mm beside where it is drawn. The closure, which has to
/// meet, moves the frame in space and leaves nothing out.
const ASIDE: f64 = 0.026;

/// A port's face in its item's axes; `None` if its up is not square to the way it looks.
pub(crate) fn frame(pose: &Pose) -> Option<PortFrame> {
    let at = pose.at.point();
    PortFrame::new([at.x.m(), at.y.m(), at.z.m()], pose.faces.unit(), pose.up.unit())
}

/// A pinned point as its joint compares it. Where nothing tells more it is in the middle, at the height of the port.
pub(crate) fn place(point: &item::PinPoint) -> PinPoint {
    let length = |stated: Option<crate::quantity::Stated<Length>>| stated.map(|stated| stated.value.m());
    PinPoint {
        across: length(point.across).unwrap_or_default(),
        height: length(point.height).unwrap_or_default(),
        diameter: length(point.diameter),
        width: length(point.width),
    }
}

/// Where pins let what they hold rest, whose points are elsewhere on their port than the carrier's.
pub(crate) fn hangs(carrier: &Pins, carried: &Pins) -> Motion {
    let places = |pins: &Pins| -> Vec<PinPoint> {
        pins.points.iter().map(|point| PinPoint { diameter: None, width: None, ..place(point) }).collect()
    };
    match pinned(&places(carried), &places(carrier)) {
        Some(Pinned::Paired(joint)) => {
            let [shift_u, shift_v] = joint.shift.map(|part| part + 0.0);
            Motion { shift_u, shift_v, ..Motion::NONE }
        }
        _ => Motion::NONE,
    }
}

/// Where the lay of two patterns lets the carried plate rest, and how far before the carrier's face.
fn rests(carrier: &Port, carried: &Port, pair: Option<&PlatePair>) -> (Motion, f64) {
    match (pair, &carrier.kind, &carried.kind) {
        (Some(pair), ..) => {
            let thickness = pair.plate.map_or(0.0, Length::m);
            (pair.rests, if pair.rests.face == Face::Flipped { thickness } else { 0.0 })
        }
        (None, PortKind::Pins(carrier), PortKind::Pins(carried)) => (hangs(carrier, carried), 0.0),
        _ => (Motion::NONE, 0.0),
    }
}

/// The motion from the carried item's axes into its carrier's, with the lay of their patterns; `None` if a port does not say
/// where it is.
pub(crate) fn brought(carrier: &Port, carried: &Port, pair: Option<&PlatePair>) -> Option<RigidMotion> {
    let (base, on) = (carrier.pose?, carried.pose?);
    let (lay, apart) = rests(carrier, carried, pair);
    Some(joined(&frame(&base)?, &frame(&on)?, &lay, apart))
}

impl Desk {
    /// All of a port that says where it puts what it joins: ports of one number do it alike, if they sit alike.
    pub(crate) fn lays_as(&self, port: (ItemRef, usize)) -> Option<usize> {
        self.plate_pairs.number(port)
    }
}

/// A motion as a place in the side view; `None` where the item would lie on its side or on its head.
pub(crate) fn stands(motion: &RigidMotion) -> Option<Placement> {
    let [x, _, z] = motion.rotation.axes();
    let reversed = x[0] < 0.0;
    // Nose up, what stood upright leans back, turned half round or not.
    let pitch = libm::atan2(-z[0], z[2]);
    let aside = x[1].abs().max(z[1].abs());
    if aside > ASIDE || z[2] <= 0.0 {
        return None;
    }
    let [at_x, at_y, at_z] = motion.shift.map(|part| Length::from_m(part + 0.0));
    let pitch = if pitch == 0.0 { Angle::ZERO } else { Angle::from_rad(pitch) };
    Some(Placement { at: Point3 { x: at_x, y: at_y, z: at_z }, pitch, reversed })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::space::Rotation;

    fn turned(axis: [f64; 3], angle: f64) -> RigidMotion {
        RigidMotion { rotation: Rotation::about(axis, angle), shift: [0.2, 0.0, 0.1] }
    }

    #[test]
    fn what_tips_its_nose_up_is_placed_so_and_what_lies_on_its_side_is_not_placed() {
        let pitched = stands(&turned([0.0, -1.0, 0.0], 0.05)).expect("it stands");
        assert!((pitched.pitch.rad() - 0.05).abs() < 1e-12 && !pitched.reversed);
        let half_round = turned([0.0, 0.0, 1.0], core::f64::consts::PI);
        let both = turned([0.0, -1.0, 0.0], 0.05).after(&half_round);
        let placed = stands(&both).expect("it stands");
        let [x, y, z] = both.point([1.0, 0.3, 0.5]);
        let [a, b, c] = [1.0, 0.3, 0.5].map(Length::from_m);
        let at = placed.point(Point3 { x: a, y: b, z: c });
        let off = [at.x.m() - x, at.y.m() - y, at.z.m() - z];
        assert!(placed.reversed && off.iter().all(|part| part.abs() < 1e-12), "{off:?}");
        for axis in [[1.0, 0.0, 0.0], [0.0, 0.0, 1.0]] {
            assert_eq!(stands(&turned(axis, 0.5)), None);
        }
        assert_eq!(stands(&turned([1.0, 0.0, 0.0], core::f64::consts::PI)), None, "on its head");
    }

    #[test]
    fn a_place_on_a_carrier_that_is_turned_and_pitched_is_the_place_of_the_place() {
        let place = |x, degrees, reversed| Placement {
            at: Point3 { x: Length::from_m(x), y: Length::from_m(0.1), z: Length::from_m(0.4) },
            pitch: Angle::from_deg(degrees),
            reversed,
        };
        let p = Point3 { x: Length::from_m(0.7), y: Length::from_m(-0.2), z: Length::from_m(0.3) };
        for (carrier, carried) in [(false, true), (true, false), (true, true), (false, false)] {
            let (carrier, carried) = (place(1.0, 7.0, carrier), place(-0.4, -3.0, carried));
            let (once, twice) = (carried.on(&carrier).point(p), carrier.point(carried.point(p)));
            let off = [once.x - twice.x, once.y - twice.y, once.z - twice.z];
            assert!(off.iter().all(|part| part.m().abs() < 1e-12), "{off:?}");
        }
    }
}
