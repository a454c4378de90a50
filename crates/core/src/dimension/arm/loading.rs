//! Loading height: over what side the bucket is emptied.

use super::{DiggingArm, check};
use crate::dimension::input::InputError;
use crate::plane::Point;

/// The highest place the bucket can be emptied from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loading {
    /// Height of the tip above the ground, metres.
    pub height: f64,
    /// Reach of the tip from the swing centre then, metres.
    pub reach: f64,
    /// Boom's elevation then, radians.
    pub boom: f64,
    /// Dipper against the boom then, radians.
    pub dipper: f64,
}

/// Greatest height of the tip with the bucket hanging straight down, and the reach there: what side of a truck it clears.
///
/// Shape and units as for [`digging`](super::super::digging). `None` when the bucket can nowhere hang straight down.
/// Accuracy: closed form; every attitude in which the height is stationary is tried.
///
/// # Errors
/// As for [`digging`](super::super::digging).
///
/// # Source
/// Name as in SAE J49 (from memory: the standard's text was not read); taken here with the bucket straight down. Of
/// equal heights the farther reach is told.
///
/// # Examples
/// ```
/// use fitup_core::dimension::{DiggingArm, Swivel, loading};
/// use fitup_core::plane::Point;
/// let any = Swivel { least: -3.2, greatest: 3.2 };
/// let arm = DiggingArm { foot: Point::new(0.0, 0.5), boom: 1.0, dipper: 1.0, bucket: 0.5,
///     boom_elevation: any, dipper_relative: any, bucket_relative: any };
/// assert!((loading(&arm).unwrap().unwrap().height - 2.0).abs() < 1e-12);
/// ```
pub fn loading(arm: &DiggingArm) -> Result<Option<Loading>, InputError> {
    check(arm)?;
    let upright = core::f64::consts::FRAC_PI_2;
    // Directions of the dipper that let the bucket hang at one of its limits.
    let held = arm.bucket_relative.limits().map(|g| -upright - g);
    let mut trials: Vec<(f64, f64)> = Vec::new();
    for boom in [upright, arm.boom_elevation.least, arm.boom_elevation.greatest] {
        // Dipper straight up, at one of its limits, or where the bucket is at one of its own.
        let directions = [upright].into_iter().chain(held);
        trials.extend(directions.map(|direction| (boom, direction - boom)));
        trials.extend(arm.dipper_relative.limits().map(|dipper| (boom, dipper)));
    }
    for dipper in arm.dipper_relative.limits() {
        // Boom and dipper as one link, straight up, or turned to where the bucket is at a limit.
        let link = Point::new(arm.boom, 0.0) + Point::unit(dipper) * arm.dipper;
        trials.push((upright - libm::atan2(link.y, link.x), dipper));
        trials.extend(held.map(|direction| (direction - dipper, dipper)));
    }
    let best = trials.into_iter().filter_map(|(boom, dipper)| stand(arm, boom, dipper));
    Ok(best.fold(None, |best: Option<Loading>, next| match best {
        Some(best) if (best.height, best.reach) >= (next.height, next.reach) => Some(best),
        _ => Some(next),
    }))
}

fn stand(arm: &DiggingArm, boom: f64, dipper: f64) -> Option<Loading> {
    let direction = boom + dipper;
    let allowed = arm.boom_elevation.allows(boom)
        && arm.dipper_relative.allows(dipper)
        && arm.bucket_relative.allows(-core::f64::consts::FRAC_PI_2 - direction);
    allowed.then(|| {
        let pivot = arm.foot + Point::unit(boom) * arm.boom + Point::unit(direction) * arm.dipper;
        Loading { height: pivot.y - arm.bucket, reach: pivot.x, boom, dipper }
    })
}

#[cfg(test)]
mod tests {
    use super::super::tests::{deg, usual};
    use super::*;

    /// Highest by stepping through all attitudes with the bucket hanging.
    fn stepped(arm: &DiggingArm) -> Option<f64> {
        let steps = 400;
        let share =
            |s: super::super::Swivel, n: i32| s.least + (s.greatest - s.least) * f64::from(n) / f64::from(steps);
        let mut best = None;
        for i in 0..=steps {
            for j in 0..=steps {
                if let Some(found) = stand(arm, share(arm.boom_elevation, i), share(arm.dipper_relative, j)) {
                    best = Some(best.map_or(found.height, |best: f64| best.max(found.height)));
                }
            }
        }
        best
    }

    #[test]
    fn it_is_the_highest_of_all_attitudes_with_the_bucket_hanging() {
        for arm in [
            usual(),
            DiggingArm { bucket_relative: deg(-60.0, 10.0), ..usual() },
            DiggingArm {
                boom_elevation: deg(-50.0, 120.0),
                dipper_relative: deg(-20.0, 30.0),
                bucket_relative: deg(-200.0, -100.0),
                ..usual()
            },
            DiggingArm { boom_elevation: deg(-50.0, 10.0), ..usual() },
        ] {
            let found = loading(&arm).expect("sound").expect("hangs somewhere").height;
            let stepped = stepped(&arm).expect("hangs somewhere");
            assert!(found >= stepped - 1e-12 && found < stepped + 0.02, "{found} against {stepped}");
        }
    }

    #[test]
    fn a_bucket_that_never_hangs_has_none() {
        let arm = DiggingArm {
            boom_elevation: deg(0.0, 1.0),
            dipper_relative: deg(-10.0, -5.0),
            bucket_relative: deg(0.0, 5.0),
            ..usual()
        };
        assert_eq!(loading(&arm), Ok(None));
        assert_eq!(stepped(&arm), None);
    }

    #[test]
    fn unsound_numbers_are_named() {
        assert_eq!(loading(&DiggingArm { boom: f64::NAN, ..usual() }).expect_err("unsound").what, "boom");
    }
}
