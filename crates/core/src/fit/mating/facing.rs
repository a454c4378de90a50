//! Two faces that look at each other, and where the joint puts what is carried.
//!
//! Faces that meet look opposite ways, with their v axes alike; so u of the one points against u of the other, and a pattern
//! seen from its own face is the mirror image of the one it meets.

use crate::space::{RigidMotion, Rotation, Vector, angle_between, cross, dot, minus, plus, times};

use super::LARGEST;
use super::bolt_pattern::{Face, Motion};

/// A port's face in space.
///
/// # Units
/// Metres.
///
/// # Frame
/// Any right-handed frame. In the face: v is `up`, and u points to the right of one who looks at the face with v upwards, so
/// that (u, v, face) are right-handed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PortFrame {
    at: Vector,
    axes: Rotation,
}

impl PortFrame {
    /// A face at a place that looks along `faces`, with `up` upwards; `None` unless both are unit vectors and square to each
    /// other and the place is of numbers up to [`LARGEST`].
    ///
    /// # Examples
    /// A face that looks to the rear: its right is the machine's left.
    /// ```
    /// use fitup_core::fit::mating::facing::PortFrame;
    /// let rear = PortFrame::new([-0.5, 0.0, 0.4], [-1.0, 0.0, 0.0], [0.0, 0.0, 1.0]).expect("square");
    /// assert_eq!(rear.right(), [0.0, -1.0, 0.0].map(|part: f64| part + 0.0));
    /// ```
    pub fn new(at: Vector, faces: Vector, up: Vector) -> Option<Self> {
        let known = at.iter().all(|part| part.abs() <= LARGEST);
        let axes = Rotation::to_axes(cross(up, faces), up, faces)?;
        known.then_some(Self { at, axes })
    }

    /// The reference point.
    pub const fn at(&self) -> Vector {
        self.at
    }

    /// The way the face looks.
    pub const fn faces(&self) -> Vector {
        self.axes.axes()[2]
    }

    /// The way v points.
    pub const fn up(&self) -> Vector {
        self.axes.axes()[1]
    }

    /// The way u points: to the right as one looks at the face.
    pub const fn right(&self) -> Vector {
        self.axes.axes()[0]
    }

    /// A point of the face in space: `u`, `v` and `out`, how far before the face.
    pub fn point(&self, u: f64, v: f64, out: f64) -> Vector {
        plus(self.at, self.axes.applied([u, v, out]))
    }

    /// A point of space as the face has it: u, v, and how far before the face.
    pub fn seen(&self, point: Vector) -> Vector {
        self.axes.inverse().applied(minus(point, self.at))
    }

    /// A free vector as the face has it.
    pub fn seen_direction(&self, direction: Vector) -> Vector {
        self.axes.inverse().applied(direction)
    }

    /// The same face after a motion.
    #[must_use]
    pub fn moved(&self, by: &RigidMotion) -> Self {
        Self { at: by.point(self.at), axes: by.rotation.after(&self.axes) }
    }

    /// The face square to pins that lie along u: it looks along them, with the same v. Pins leave their item free in this
    /// face's plane, as bolts do in the plate's.
    ///
    /// # Examples
    /// Height keeps its place; what lies before the old face is to the left in the new one.
    /// ```
    /// use fitup_core::fit::mating::facing::PortFrame;
    /// let rear = PortFrame::new([0.0; 3], [-1.0, 0.0, 0.0], [0.0, 0.0, 1.0]).expect("square");
    /// let [u, v, _] = rear.along_pins().seen(rear.point(0.0, 0.2, 0.1));
    /// assert_eq!((u, v), (-0.1, 0.2));
    /// ```
    #[must_use]
    pub fn along_pins(&self) -> Self {
        let [u, v, n] = self.axes.axes();
        let axes = Rotation::to_axes(times(n, -1.0), v, u).expect("a quarter turn of axes is a rotation");
        Self { at: self.at, axes }
    }
}

/// The motion that brings a carried item to its carrier: from the carried item's axes into those that the carrier's face is
/// given in.
///
/// `lay` is the lay of the carried pattern, seen through its back ([`facing_pattern`](super::bolt_pattern::facing_pattern)), in
/// the carrier's u and v: its shift and turn are part of the place. With [`Face::Flipped`] the plate lies with its back to
/// the carrier, its face looking the same way as the carrier's. `apart` is how far before the carrier's face the carried one
/// comes to lie: 0 face on face, a spacer's thickness, the plate's own where it is turned over.
///
/// # Units
/// Metres and radians.
///
/// # Examples
/// A frame's side plate that looks to the right meets a machine's that looks to the left: nothing turns, and the frame lies
/// where its holes put it, 20 mm further forward.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::Motion;
/// use fitup_core::fit::mating::facing::{PortFrame, joined};
/// let up = [0.0, 0.0, 1.0];
/// let machine = PortFrame::new([0.1, 0.3, 0.4], [0.0, 1.0, 0.0], up).expect("square");
/// let frame = PortFrame::new([0.0; 3], [0.0, -1.0, 0.0], up).expect("square");
/// // The machine's u points to the rear: −x.
/// let lay = Motion { shift_u: -0.02, ..Motion::NONE };
/// let place = joined(&machine, &frame, &lay, 0.0);
/// let origin = place.point([0.0; 3]);
/// assert!((origin[0] - 0.12).abs() < 1e-12 && (origin[1] - 0.3).abs() < 1e-12);
/// assert_eq!(place.rotation.tilt(), 0.0);
/// ```
pub fn joined(carrier: &PortFrame, carried: &PortFrame, lay: &Motion, apart: f64) -> RigidMotion {
    // Half a turn round v, so that the faces look at each other; none for a plate with its back to the carrier.
    let half_round = match lay.face {
        Face::AsDrawn => Rotation::HALF_ROUND_Y,
        Face::Flipped => Rotation::NONE,
    };
    // Most patterns lie straight, and a search asks for thousands of places.
    let is_turned = lay.turn != 0.0;
    let in_plane = if is_turned { Rotation::about([0.0, 0.0, 1.0], lay.turn).after(&half_round) } else { half_round };
    let rotation = carrier.axes.after(&in_plane).after(&carried.axes.inverse());
    let target = carrier.point(lay.shift_u, lay.shift_v, apart);
    RigidMotion { rotation, shift: minus(target, rotation.applied(carried.at)) }
}

/// How two placed faces lie to each other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meeting {
    /// The carried reference point along the carrier's u, metres.
    pub u: f64,
    /// The carried reference point along the carrier's v, metres.
    pub v: f64,
    /// The carried reference point before the carrier's face, metres: the gap; negative: behind it.
    pub gap: f64,
    /// How far from looking straight at each other the faces are, 0 to π radians.
    pub tilt: f64,
    /// Turn of the carried up against the carrier's within the carrier's face, −π to π radians from u towards v.
    pub turn: f64,
}

/// How two faces lie to each other, both placed in one frame.
///
/// # Units
/// Metres and radians.
///
/// # Examples
/// What [`joined`] puts together meets without gap, tilt or turn.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::Motion;
/// use fitup_core::fit::mating::facing::{PortFrame, joined, meeting};
/// let deck = PortFrame::new([-0.3, 0.0, 0.9], [0.0, 0.0, 1.0], [1.0, 0.0, 0.0]).expect("square");
/// let seat = PortFrame::new([0.0; 3], [0.0, 0.0, -1.0], [1.0, 0.0, 0.0]).expect("square");
/// let met = meeting(&deck, &seat.moved(&joined(&deck, &seat, &Motion::NONE, 0.0)));
/// assert_eq!((met.u, met.v, met.gap, met.tilt, met.turn), (0.0, 0.0, 0.0, 0.0, 0.0));
/// ```
pub fn meeting(carrier: &PortFrame, carried: &PortFrame) -> Meeting {
    let [u, v, gap] = carrier.seen(carried.at);
    let up = carrier.seen_direction(carried.up());
    // 0 − x and not −x: no minus zero.
    let tilt = angle_between(carrier.faces(), times(carried.faces(), -1.0));
    Meeting { u, v, gap, tilt, turn: libm::atan2(0.0 - up[0], up[1]) }
}

/// How far an item leans when its face looks straight at a carrier's, both ways up alike: 0 to π radians.
///
/// Faces can always be brought to look at each other by turning the item; but an item that has to lie on its side for it
/// does not stand there. A carrier that looks up and an item whose face looks forward lean by a quarter turn.
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::facing::{PortFrame, lean};
/// let (up, front) = ([0.0, 0.0, 1.0], [1.0, 0.0, 0.0]);
/// let deck = PortFrame::new([0.0; 3], up, front).expect("square");
/// let hooks = PortFrame::new([0.0; 3], front, up).expect("square");
/// assert_eq!(lean(&deck, &hooks), core::f64::consts::FRAC_PI_2);
/// ```
pub fn lean(carrier: &PortFrame, carried: &PortFrame) -> f64 {
    joined(carrier, carried, &Motion::NONE, 0.0).rotation.tilt()
}

/// Whether two faces look straight enough at each other: tilt and turn both at most `limit` radians.
pub fn agree(met: &Meeting, limit: f64) -> bool {
    met.tilt <= limit && met.turn.abs() <= limit
}

/// How far a plane point of the carrier lies before its face where the carried face is: the gap there, metres; `None` where
/// the carried face stands square to the carrier's.
pub fn gap_at(carrier: &PortFrame, carried: &PortFrame, [u, v]: [f64; 2]) -> Option<f64> {
    let slope = dot(carried.faces(), carrier.faces());
    let foot = carrier.point(u, v, 0.0);
    (slope.abs() > 1e-9).then(|| dot(carried.faces(), minus(carried.at, foot)) / slope)
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use core::f64::consts::{FRAC_PI_2, PI};

    use super::*;
    use crate::space::norm;

    const DIRECTIONS: [Vector; 6] =
        [[1.0, 0.0, 0.0], [-1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, -1.0, 0.0], [0.0, 0.0, 1.0], [0.0, 0.0, -1.0]];

    /// Every face along the axes: six ways to look, four ways up each.
    fn every_face() -> Vec<PortFrame> {
        let pairs = DIRECTIONS.iter().flat_map(|&faces| DIRECTIONS.iter().map(move |&up| (faces, up)));
        pairs.filter_map(|(faces, up)| PortFrame::new([0.3, -0.2, 0.7], faces, up)).collect()
    }

    fn close(a: Vector, b: Vector) -> bool {
        norm(minus(a, b)) < 1e-12
    }

    #[test]
    fn there_are_four_ways_up_for_each_of_six_ways_to_look() {
        assert_eq!(every_face().len(), 24);
        assert!(PortFrame::new([0.0; 3], [1.0, 0.0, 0.0], [1.0, 0.0, 0.0]).is_none());
        assert!(PortFrame::new([f64::NAN, 0.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]).is_none());
        assert!(PortFrame::new([0.0; 3], [0.0; 3], [0.0, 0.0, 1.0]).is_none());
    }

    #[test]
    fn whatever_is_joined_looks_at_its_carrier_the_same_way_up_with_the_rights_opposed() {
        for carrier in every_face() {
            for carried in every_face() {
                let motion = joined(&carrier, &carried, &Motion::NONE, 0.0);
                let placed = carried.moved(&motion);
                assert_eq!(placed.faces(), times(carrier.faces(), -1.0).map(|part| part + 0.0));
                assert_eq!(placed.up(), carrier.up());
                assert!(close(placed.right(), times(carrier.right(), -1.0)));
                assert!(close(placed.at(), carrier.at()));
                assert!(agree(&meeting(&carrier, &placed), 0.0));
            }
        }
    }

    #[test]
    fn shift_and_turn_of_the_lay_move_the_carried_item_in_the_carriers_plane() {
        for carrier in every_face() {
            for carried in every_face() {
                let lay = Motion { face: Face::AsDrawn, turn: 0.2, shift_u: 0.3, shift_v: -0.05 };
                let placed = carried.moved(&joined(&carrier, &carried, &lay, 0.01));
                let met = meeting(&carrier, &placed);
                assert!((met.u - 0.3).abs() < 1e-12 && (met.v + 0.05).abs() < 1e-12 && (met.gap - 0.01).abs() < 1e-12);
                assert!((met.turn - 0.2).abs() < 1e-12 && met.tilt < 1e-12);
            }
        }
    }

    #[test]
    fn a_point_of_the_carried_face_lies_where_the_lay_has_it_seen_through_its_back() {
        for face in [Face::AsDrawn, Face::Flipped] {
            let lay = Motion { face, turn: -0.4, shift_u: 0.11, shift_v: 0.07 };
            for carrier in every_face() {
                for carried in every_face() {
                    let place = joined(&carrier, &carried, &lay, 0.0);
                    let (u, v) = (0.04, 0.09);
                    let expected = lay.applied([-u, v]);
                    let seen = carrier.seen(place.point(carried.point(u, v, 0.0)));
                    assert!(close(seen, [expected[0], expected[1], 0.0]), "{face:?}");
                }
            }
        }
    }

    #[test]
    fn a_plate_turned_over_looks_the_way_its_carrier_does() {
        let side = PortFrame::new([0.0; 3], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]).unwrap();
        let lay = Motion { face: Face::Flipped, ..Motion::NONE };
        let placed = side.moved(&joined(&side, &side, &lay, 0.012));
        assert_eq!((placed.faces(), placed.up()), (side.faces(), side.up()));
        assert!((meeting(&side, &placed).tilt - PI).abs() < 1e-12);
        assert!((placed.at()[1] - 0.012).abs() < 1e-15);
    }

    #[test]
    fn items_lean_where_their_face_looks_another_way_than_the_carrier_can_meet() {
        let face = |faces, up| PortFrame::new([0.0; 3], faces, up).unwrap();
        let (front, rear, left, right, up) =
            ([1.0, 0.0, 0.0], [-1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, -1.0, 0.0], [0.0, 0.0, 1.0]);
        assert_eq!(lean(&face(left, up), &face(right, up)), 0.0);
        assert_eq!(lean(&face(left, up), &face(front, up)), 0.0, "turned round the vertical, it still stands");
        assert_eq!(lean(&face(left, up), &face(up, left)), FRAC_PI_2);
        assert_eq!(lean(&face(rear, up), &face(front, [0.0, 0.0, -1.0])), PI);
    }

    #[test]
    fn the_gap_opens_along_a_tilted_face() {
        let carrier = PortFrame::new([0.0; 3], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]).unwrap();
        let straight = PortFrame::new([0.0, 0.02, 0.0], [0.0, -1.0, 0.0], [0.0, 0.0, 1.0]).unwrap();
        let tilted = straight.moved(&RigidMotion { rotation: Rotation::about([0.0, 0.0, 1.0], 0.1), shift: [0.0; 3] });
        assert_eq!(gap_at(&carrier, &straight, [0.3, 0.2]), Some(0.02));
        let (near, far) =
            (gap_at(&carrier, &tilted, [0.0, 0.0]).unwrap(), gap_at(&carrier, &tilted, [0.1, 0.0]).unwrap());
        assert!(((near - far).abs() - 0.1 * libm::tan(0.1)).abs() < 1e-9);
        let square = PortFrame::new([0.0; 3], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]).unwrap();
        assert_eq!(gap_at(&carrier, &square, [0.0, 0.0]), None);
    }
}
