//! Whether and how the tip can come to a point.

use super::{DiggingArm, check};
use crate::dimension::input::{InputError, sound};
use crate::plane::{Circle, Point};

/// An attitude of the arm, radians.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Attitude {
    /// Boom's elevation above level.
    pub boom: f64,
    /// Dipper against the boom's direction.
    pub dipper: f64,
    /// Bucket against the dipper's direction.
    pub bucket: f64,
}

/// An attitude that puts the tip on a point, within the joints' limits; `None` when none does.
///
/// Shape, units and frame as for [`digging`](super::super::digging). Angles may differ from the limits by whole turns. Accuracy: closed
/// form. Of many attitudes, one with the bucket in line with the boom foot is preferred, then one with a joint at a limit.
///
/// # Errors
/// As for [`digging`](super::super::digging), and a point that is not finite.
///
/// # Examples
/// ```
/// use fitup_core::dimension::{DiggingArm, Swivel, attitude};
/// use fitup_core::plane::Point;
/// let any = Swivel { least: -3.2, greatest: 3.2 };
/// let arm = DiggingArm { foot: Point::ORIGIN, boom: 3.0, dipper: 4.0, bucket: 1.0,
///     boom_elevation: any, dipper_relative: any, bucket_relative: any };
/// let found = attitude(&arm, Point::new(6.0, 0.0)).unwrap().unwrap();
/// // A triangle of 3, 4 and 5: the boom and the dipper stand at right angles.
/// assert!((found.dipper.abs().to_degrees() - 90.0).abs() < 1e-9);
/// assert_eq!(attitude(&arm, Point::new(8.1, 0.0)), Ok(None));
/// ```
pub fn attitude(arm: &DiggingArm, tip: Point) -> Result<Option<Attitude>, InputError> {
    check(arm)?;
    sound("tip", tip.x)?;
    sound("tip", tip.y)?;
    Ok(attitudes(arm, tip).next())
}

/// Whether some allowed attitude puts the tip on the point.
pub(super) fn reaches(arm: &DiggingArm, tip: Point) -> bool {
    attitudes(arm, tip).next().is_some()
}

impl Attitude {
    /// Where the tip then is.
    pub fn tip(&self, arm: &DiggingArm) -> Point {
        let (dipper, bucket) = (self.boom + self.dipper, self.boom + self.dipper + self.bucket);
        arm.foot
            + Point::unit(self.boom) * arm.boom
            + Point::unit(dipper) * arm.dipper
            + Point::unit(bucket) * arm.bucket
    }

    fn is_allowed(&self, arm: &DiggingArm) -> bool {
        arm.boom_elevation.allows(self.boom)
            && arm.dipper_relative.allows(self.dipper)
            && arm.bucket_relative.allows(self.bucket)
    }
}

/// Attitudes that put the tip on the point; at least one of all there are, if there are any.
///
/// The attitudes that do form curves. A curve either ends where a joint meets a limit, or closes
/// on itself; on a closed one the dipper's angle has a greatest value, and there boom foot, bucket pivot and tip are in
/// line. So it is enough to try each joint at each limit and the bucket in line with the boom foot.
fn attitudes(arm: &DiggingArm, tip: Point) -> impl Iterator<Item = Attitude> {
    let tries =
        bucket_in_line(arm, tip).chain(bucket_held(arm, tip)).chain(dipper_held(arm, tip)).chain(boom_held(arm, tip));
    tries.filter(|attitude| attitude.is_allowed(arm))
}

fn bucket_in_line(arm: &DiggingArm, tip: Point) -> impl Iterator<Item = Attitude> {
    let to = tip - arm.foot;
    let distance = to.norm();
    let lengths = if distance > 0.0 { [Some(arm.bucket), Some(-arm.bucket)] } else { [None; 2] };
    lengths.into_iter().flatten().flat_map(move |length| {
        let pivot = tip - to * (length / distance);
        common(arm.foot, arm.boom, pivot, arm.dipper).map(move |elbow| posed(arm, elbow, pivot, tip))
    })
}

fn bucket_held(arm: &DiggingArm, tip: Point) -> impl Iterator<Item = Attitude> {
    arm.bucket_relative.limits().into_iter().flat_map(move |bucket| {
        let link = Point::new(arm.dipper, 0.0) + Point::unit(bucket) * arm.bucket;
        common(arm.foot, arm.boom, tip, link.norm()).map(move |elbow| {
            let boom = angle(elbow - arm.foot);
            Attitude { boom, dipper: angle(tip - elbow) - angle(link) - boom, bucket }
        })
    })
}

fn dipper_held(arm: &DiggingArm, tip: Point) -> impl Iterator<Item = Attitude> {
    arm.dipper_relative.limits().into_iter().flat_map(move |dipper| {
        let link = Point::new(arm.boom, 0.0) + Point::unit(dipper) * arm.dipper;
        common(arm.foot, link.norm(), tip, arm.bucket).map(move |pivot| {
            let boom = angle(pivot - arm.foot) - angle(link);
            Attitude { boom, dipper, bucket: angle(tip - pivot) - (boom + dipper) }
        })
    })
}

fn boom_held(arm: &DiggingArm, tip: Point) -> impl Iterator<Item = Attitude> {
    arm.boom_elevation.limits().into_iter().flat_map(move |boom| {
        let elbow = arm.foot + Point::unit(boom) * arm.boom;
        common(elbow, arm.dipper, tip, arm.bucket).map(move |pivot| posed(arm, elbow, pivot, tip))
    })
}

fn posed(arm: &DiggingArm, elbow: Point, pivot: Point, tip: Point) -> Attitude {
    let (boom, dipper, bucket) = (angle(elbow - arm.foot), angle(pivot - elbow), angle(tip - pivot));
    Attitude { boom, dipper: dipper - boom, bucket: bucket - dipper }
}

fn common(a: Point, ra: f64, b: Point, rb: f64) -> impl Iterator<Item = Point> {
    let points = Circle::new(a, ra).cut_circle(Circle::new(b, rb));
    points.map_or([None; 2], |(p, q)| [Some(p), Some(q)]).into_iter().flatten()
}

fn angle(way: Point) -> f64 {
    libm::atan2(way.y, way.x)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{deg, usual};
    use super::*;

    #[test]
    fn what_an_attitude_gives_is_reached_and_the_attitude_found_leads_back() {
        let arm = usual();
        for i in 0..=12 {
            for j in 0..=12 {
                for k in 0..=12 {
                    let share = |swivel: super::super::Swivel, n: i32| {
                        swivel.least + (swivel.greatest - swivel.least) * f64::from(n) / 12.0
                    };
                    let given = Attitude {
                        boom: share(arm.boom_elevation, i),
                        dipper: share(arm.dipper_relative, j),
                        bucket: share(arm.bucket_relative, k),
                    };
                    let tip = given.tip(&arm);
                    let found = attitude(&arm, tip).expect("sound").unwrap_or_else(|| panic!("{i} {j} {k}"));
                    assert!(found.is_allowed(&arm) && found.tip(&arm).distance(tip) < 1e-9);
                }
            }
        }
    }

    #[test]
    fn what_is_too_far_too_near_or_beyond_a_limit_is_not() {
        let arm = usual();
        assert!(!reaches(&arm, Point::new(2.9, 0.5)));
        assert!(!reaches(&arm, Point::new(-2.0, 0.5)));
        assert!(!reaches(&arm, arm.foot));
        let free = DiggingArm { boom_elevation: deg(-180.0, 180.0), bucket: 0.0, ..arm };
        let shortest = libm::sqrt(1.2 * 1.2 + 0.9 * 0.9 + 2.0 * 1.2 * 0.9 * libm::cos(150_f64.to_radians()));
        assert!(reaches(&free, arm.foot + Point::new(0.0, shortest + 1e-6)));
        assert!(!reaches(&free, arm.foot + Point::new(0.0, shortest - 1e-6)));
        assert_eq!(attitude(&arm, Point::new(f64::NAN, 0.0)).expect_err("unsound").what, "tip");
    }
}
