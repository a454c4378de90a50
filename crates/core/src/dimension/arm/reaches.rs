//! Whether the tip can come to a point.

use super::DiggingArm;
use crate::plane::{Circle, Point};

/// Whether some allowed attitude puts the tip on the point.
///
/// The attitudes that do form curves. A curve either ends where a joint meets a limit, or closes
/// on itself; on a closed one the dipper's angle has a greatest value, and there boom foot, bucket pivot and tip are in
/// line. So it is enough to try each joint at each limit and the bucket in line with the boom foot.
pub(super) fn reaches(arm: &DiggingArm, tip: Point) -> bool {
    bucket_in_line(arm, tip) || bucket_held(arm, tip) || dipper_held(arm, tip) || boom_held(arm, tip)
}

fn bucket_in_line(arm: &DiggingArm, tip: Point) -> bool {
    let to = tip - arm.foot;
    let distance = to.norm();
    if distance <= 0.0 {
        return false;
    }
    [arm.bucket, -arm.bucket].into_iter().any(|length| {
        let pivot = tip - to * (length / distance);
        common(arm.foot, arm.boom, pivot, arm.dipper).any(|elbow| allowed(arm, elbow, pivot, tip))
    })
}

fn bucket_held(arm: &DiggingArm, tip: Point) -> bool {
    arm.bucket_relative.limits().into_iter().any(|g| {
        let link = Point::new(arm.dipper, 0.0) + Point::unit(g) * arm.bucket;
        common(arm.foot, arm.boom, tip, link.norm()).any(|elbow| {
            let boom = angle(elbow - arm.foot);
            let dipper = angle(tip - elbow) - angle(link);
            arm.boom_elevation.allows(boom) && arm.dipper_relative.allows(dipper - boom)
        })
    })
}

fn dipper_held(arm: &DiggingArm, tip: Point) -> bool {
    arm.dipper_relative.limits().into_iter().any(|d| {
        let link = Point::new(arm.boom, 0.0) + Point::unit(d) * arm.dipper;
        common(arm.foot, link.norm(), tip, arm.bucket).any(|pivot| {
            let boom = angle(pivot - arm.foot) - angle(link);
            let bucket = angle(tip - pivot) - (boom + d);
            arm.boom_elevation.allows(boom) && arm.bucket_relative.allows(bucket)
        })
    })
}

fn boom_held(arm: &DiggingArm, tip: Point) -> bool {
    arm.boom_elevation.limits().into_iter().any(|b| {
        let elbow = arm.foot + Point::unit(b) * arm.boom;
        common(elbow, arm.dipper, tip, arm.bucket).any(|pivot| allowed(arm, elbow, pivot, tip))
    })
}

fn allowed(arm: &DiggingArm, elbow: Point, pivot: Point, tip: Point) -> bool {
    let (boom, dipper, bucket) = (angle(elbow - arm.foot), angle(pivot - elbow), angle(tip - pivot));
    arm.boom_elevation.allows(boom)
        && arm.dipper_relative.allows(dipper - boom)
        && arm.bucket_relative.allows(bucket - dipper)
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
    fn what_an_attitude_gives_is_reached() {
        let arm = usual();
        for i in 0..=12 {
            for j in 0..=12 {
                for k in 0..=12 {
                    let share = |swivel: super::super::Swivel, n: i32| {
                        swivel.least + (swivel.greatest - swivel.least) * f64::from(n) / 12.0
                    };
                    let b = share(arm.boom_elevation, i);
                    let d = b + share(arm.dipper_relative, j);
                    let g = d + share(arm.bucket_relative, k);
                    let tip = arm.foot + Point::unit(b) * 1.2 + Point::unit(d) * 0.9 + Point::unit(g) * 0.5;
                    assert!(reaches(&arm, tip), "{i} {j} {k}");
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
    }
}
