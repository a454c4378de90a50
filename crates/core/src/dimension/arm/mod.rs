//! Digging: where the tip of a boom, dipper and bucket can come.
//!
//! The tip's edge of reach is made of arcs: with one joint moving and the others at their limits, or with several
//! moving and the links after the first of them in line with it. Every figure here is read off these arcs, in closed
//! form.

mod edge;
mod flat;
mod loading;
mod reaches;
mod swing_arc;

pub use loading::{Loading, loading};
pub use reaches::{Attitude, attitude};
pub use swing_arc::{ArmPlan, SwingReach, swing_arc};

use super::input::{Fault, InputError, not_negative, positive, sound};
use crate::plane::{Arc, Point};

/// The two ends of what a joint allows, radians.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Swivel {
    /// Least angle.
    pub least: f64,
    /// Greatest angle.
    pub greatest: f64,
}

/// A digging arm in its own plane: u outward from the swing centre, z up from the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiggingArm {
    /// Boom foot (u, z), metres.
    pub foot: Point,
    /// Boom foot to dipper pivot, metres.
    pub boom: f64,
    /// Dipper pivot to bucket pivot, metres.
    pub dipper: f64,
    /// Bucket pivot to tip, metres.
    pub bucket: f64,
    /// Boom's elevation above level.
    pub boom_elevation: Swivel,
    /// Dipper against the boom's direction: 0 straight on, negative folded down.
    pub dipper_relative: Swivel,
    /// Bucket against the dipper's direction.
    pub bucket_relative: Swivel,
}

/// What an arm reaches.
#[derive(Debug, Clone, PartialEq)]
pub struct Digging {
    /// Greatest depth of the tip below the ground, metres; negative when it stays above.
    pub depth: f64,
    /// Greatest height of the tip, metres.
    pub height: f64,
    /// Greatest reach of the tip from the swing centre at ground level, metres.
    pub reach_at_ground: Option<f64>,
    /// Greatest depth at which a flat bottom of the asked length can be cut, metres.
    pub flat_depth: Option<f64>,
    /// The edge of the tip's reach, arc by arc, in no order.
    pub edge: Vec<Arc>,
    arcs: Vec<Arc>,
}

impl Digging {
    /// Greatest reach from the swing centre with the tip at a height above the ground, metres; `None`
    /// when the tip cannot come to that height.
    pub fn reach_at(&self, height: f64) -> Option<f64> {
        greatest(self.arcs.iter().flat_map(|arc| arc.at_height(height)))
    }
}

/// What a digging arm reaches with its tip, the machine standing still and the arm not swung.
///
/// Shape: three links in a plane, each joint within its limits. `flat_length` is the length of the flat bottom for
/// [`Digging::flat_depth`], `None` to leave that out. Units: metres, radians.
/// Valid for: any limits; limits a full turn apart are no limits.
/// Accuracy: closed form, 10⁻⁹ m. Flat depth: every depth at which the reachable stretch can
/// just have the length, or can begin to be interrupted, is tried from the deepest up.
///
/// The flat bottom is cut by the tip alone, in any attitude of the bucket; the stretch may lie inboard.
///
/// # Errors
/// A boom or dipper not above zero, a negative bucket or flat length, limits in the wrong order, or
/// a number that is not finite.
///
/// # Source
/// Names of the dimensions as in SAE J49 (from memory: the standard's text was not read); the numbers are plane
/// kinematics.
///
/// # Examples
/// An arm that can stretch straight down from 0.5 m reaches 2.5 m deep with links of 1 m.
/// ```
/// use fitup_core::dimension::{DiggingArm, Swivel, digging};
/// use fitup_core::plane::Point;
/// let any = Swivel { least: -3.2, greatest: 3.2 };
/// let arm = DiggingArm { foot: Point::new(0.0, 0.5), boom: 1.0, dipper: 1.0, bucket: 1.0,
///     boom_elevation: any, dipper_relative: any, bucket_relative: any };
/// let found = digging(&arm, None).unwrap();
/// assert!((found.depth - 2.5).abs() < 1e-12);
/// assert!((found.reach_at(0.5).unwrap() - 3.0).abs() < 1e-12);
/// ```
pub fn digging(arm: &DiggingArm, flat_length: Option<f64>) -> Result<Digging, InputError> {
    check(arm)?;
    let flat_length = flat_length.map(|length| not_negative("flat-length", length)).transpose()?;
    let arcs = edge::critical(arm);
    let ends = arcs.iter().map(Arc::lowest_and_highest);
    let (depth, height) =
        ends.fold((f64::NEG_INFINITY, f64::NEG_INFINITY), |(d, h), [low, high]| (d.max(-low.y), h.max(high.y)));
    let flat_depth = flat_length.and_then(|length| flat::depth(arm, &arcs, length));
    let edge = edge::outline(arm, &arcs);
    let reach_at_ground = greatest(arcs.iter().flat_map(|arc| arc.at_height(0.0)));
    Ok(Digging { depth, height, reach_at_ground, flat_depth, edge, arcs })
}

fn greatest(values: impl Iterator<Item = f64>) -> Option<f64> {
    values.fold(None, |most, value| Some(most.map_or(value, |most: f64| most.max(value))))
}

fn check(arm: &DiggingArm) -> Result<(), InputError> {
    sound("boom-foot", arm.foot.x)?;
    sound("boom-foot", arm.foot.y)?;
    positive("boom", arm.boom)?;
    positive("dipper", arm.dipper)?;
    not_negative("bucket", arm.bucket)?;
    let limits = [
        ("boom-elevation", arm.boom_elevation),
        ("dipper-relative", arm.dipper_relative),
        ("bucket-relative", arm.bucket_relative),
    ];
    for (what, swivel) in limits {
        sound(what, swivel.least)?;
        sound(what, swivel.greatest)?;
        if swivel.least > swivel.greatest {
            return Err(InputError { what, fault: Fault::Unordered });
        }
    }
    Ok(())
}

impl Swivel {
    /// The arc a point at `from_joint`, seen from the joint in the frame before it, runs on over the whole swivel.
    fn arc(self, joint: Point, turned: f64, from_joint: Point) -> Arc {
        let circle = crate::plane::Circle::new(joint, from_joint.norm());
        let offset = turned + libm::atan2(from_joint.y, from_joint.x);
        Arc { circle, from: self.least + offset, sweep: self.greatest - self.least }
    }

    /// Whether an angle lies within the swivel, whole turns apart or not.
    fn allows(self, angle: f64) -> bool {
        let unit = crate::plane::Circle::new(Point::ORIGIN, 1.0);
        Arc { circle: unit, from: self.least, sweep: self.greatest - self.least }.along(angle).is_some()
    }

    const fn limits(self) -> [f64; 2] {
        [self.least, self.greatest]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    pub(super) fn deg(least: f64, greatest: f64) -> Swivel {
        Swivel { least: least.to_radians(), greatest: greatest.to_radians() }
    }

    pub(super) fn usual() -> DiggingArm {
        DiggingArm {
            foot: Point::new(0.15, 0.5),
            boom: 1.2,
            dipper: 0.9,
            bucket: 0.5,
            boom_elevation: deg(-50.0, 70.0),
            dipper_relative: deg(-150.0, -25.0),
            bucket_relative: deg(-120.0, 40.0),
        }
    }

    #[test]
    fn a_stiff_arm_is_one_point() {
        let stiff = DiggingArm {
            boom_elevation: deg(0.0, 0.0),
            dipper_relative: deg(-90.0, -90.0),
            bucket_relative: deg(0.0, 0.0),
            ..usual()
        };
        let found = digging(&stiff, Some(0.0)).expect("sound");
        assert!((found.depth - 0.9).abs() < 1e-12 && (found.height + 0.9).abs() < 1e-12);
        assert!((found.reach_at(-0.9).expect("its own height") - 1.35).abs() < 1e-9);
        assert_eq!(found.reach_at_ground, None);
        assert!((found.flat_depth.expect("no length is wanted") - 0.9).abs() < 1e-9);
        assert_eq!(digging(&stiff, Some(0.1)).expect("sound").flat_depth, None);
    }

    #[test]
    fn an_arm_that_stays_above_ground_has_a_negative_depth_and_cuts_nothing() {
        let high = DiggingArm { foot: Point::new(0.0, 5.0), ..usual() };
        let found = digging(&high, Some(0.1)).expect("sound");
        assert!(found.depth < 0.0);
        assert_eq!((found.flat_depth, found.reach_at_ground), (None, None));
    }

    #[test]
    fn limits_a_whole_turn_away_are_the_same_limits() {
        let turned = DiggingArm {
            boom_elevation: deg(310.0, 430.0),
            dipper_relative: deg(-510.0, -385.0),
            bucket_relative: deg(240.0, 400.0),
            ..usual()
        };
        let (a, b) = (digging(&usual(), Some(0.61)).expect("sound"), digging(&turned, Some(0.61)).expect("sound"));
        assert!((a.depth - b.depth).abs() < 1e-9 && (a.height - b.height).abs() < 1e-9);
        assert!((a.flat_depth.expect("cuts") - b.flat_depth.expect("cuts")).abs() < 1e-9);
    }

    #[test]
    fn more_freedom_never_reaches_less() {
        let narrow = digging(&usual(), Some(0.61)).expect("sound");
        let wide = DiggingArm { dipper_relative: deg(-160.0, 0.0), bucket_relative: deg(-150.0, 60.0), ..usual() };
        let wide = digging(&wide, Some(0.61)).expect("sound");
        assert!(wide.depth >= narrow.depth && wide.height >= narrow.height);
        assert!(wide.reach_at_ground >= narrow.reach_at_ground);
        assert!(wide.flat_depth.expect("cuts") >= narrow.flat_depth.expect("cuts") - 1e-9);
    }

    #[test]
    fn the_edge_of_an_unlimited_arm_is_its_longest_and_shortest_circle() {
        let any = deg(-180.0, 180.0);
        let arm =
            DiggingArm { boom_elevation: any, dipper_relative: any, bucket_relative: any, bucket: 0.1, ..usual() };
        let found = digging(&arm, None).expect("sound");
        let mut radii: Vec<f64> = found.edge.iter().map(|arc| arc.circle.radius).collect();
        radii.sort_by(f64::total_cmp);
        radii.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        assert_eq!(radii.len(), 2);
        assert!((radii[0] - 0.2).abs() < 1e-12 && (radii[1] - 2.2).abs() < 1e-12);
        let around: f64 = found.edge.iter().filter(|arc| arc.circle.radius > 1.0).map(|arc| arc.sweep).sum();
        assert!((around - 2.0 * core::f64::consts::PI).abs() < 1e-6);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |arm: DiggingArm| digging(&arm, None).expect_err("unsound").what;
        assert_eq!(what(DiggingArm { foot: Point::new(f64::NAN, 0.0), ..usual() }), "boom-foot");
        assert_eq!(what(DiggingArm { foot: Point::new(0.0, f64::NAN), ..usual() }), "boom-foot");
        assert_eq!(what(DiggingArm { boom: 0.0, ..usual() }), "boom");
        assert_eq!(what(DiggingArm { dipper: -1.0, ..usual() }), "dipper");
        assert_eq!(what(DiggingArm { bucket: -0.1, ..usual() }), "bucket");
        assert_eq!(what(DiggingArm { boom_elevation: deg(70.0, -50.0), ..usual() }), "boom-elevation");
        assert_eq!(what(DiggingArm { dipper_relative: deg(f64::NAN, 0.0), ..usual() }), "dipper-relative");
        assert_eq!(what(DiggingArm { bucket_relative: deg(0.0, f64::INFINITY), ..usual() }), "bucket-relative");
        assert_eq!(digging(&usual(), Some(-0.1)).expect_err("negative").what, "flat-length");
    }
}
