//! Turning radius from the steering angle.

use super::input::{InputError, between, not_negative, positive};

/// What the front wheels' geometry gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steering {
    /// Radius the rear axle's centre turns on, metres.
    pub rear_axle_radius: f64,
    /// Angle of the outer front wheel, radians.
    pub outer_angle: f64,
    /// Radius of the outer front wheel's kingpin, metres.
    pub outer_radius: f64,
    /// Angle of one wheel in the middle that would turn on the same radius, radians.
    pub middle_angle: f64,
}

/// Turning radius at the rear axle from the greatest angle of the inner front wheel, with all wheels rolling about one point.
///
/// Shape: `wheelbase`, kingpin track and the inner wheel's angle from straight ahead. Units: metres, radians.
/// Frame: plan. Valid for: angles above 0 and up to 85°; no slip, steering that follows the geometry exactly.
/// Accuracy: closed form.
///
/// # Errors
/// A wheelbase not above zero, a negative track, or an angle outside 0.01° to 85°.
///
/// # Source
/// Ackermann's condition, cot outer − cot inner = track / wheelbase; handbook geometry.
///
/// # Examples
/// At 45° with no track the radius is the wheelbase.
/// ```
/// use fitup_core::dimension::steering;
/// let found = steering(1.5, 0.0, 45_f64.to_radians()).unwrap();
/// assert!((found.rear_axle_radius - 1.5).abs() < 1e-12);
/// ```
pub fn steering(wheelbase: f64, kingpin_track: f64, inner_angle: f64) -> Result<Steering, InputError> {
    positive("wheelbase", wheelbase)?;
    not_negative("kingpin-track", kingpin_track)?;
    between("inner-angle", inner_angle, LEAST, GREATEST)?;
    let rear_axle_radius = wheelbase / libm::tan(inner_angle) + kingpin_track / 2.0;
    let outer = rear_axle_radius + kingpin_track / 2.0;
    Ok(Steering {
        rear_axle_radius,
        outer_angle: libm::atan2(wheelbase, outer),
        outer_radius: libm::hypot(wheelbase, outer),
        middle_angle: libm::atan2(wheelbase, rear_axle_radius),
    })
}

/// Smallest angle that is a turn at all, radians: 0.01°. Common practice, no source.
const LEAST: f64 = 0.01 * core::f64::consts::PI / 180.0;

/// Greatest angle, radians: 85°, beyond any steered axle. Common practice, no source.
const GREATEST: f64 = 85.0 * core::f64::consts::PI / 180.0;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_outer_wheel_turns_less_and_the_middle_lies_between() {
        let found = steering(1.65, 0.95, 0.9).expect("sound");
        assert!(found.outer_angle < found.middle_angle && found.middle_angle < 0.9);
        let cot = |angle: f64| 1.0 / libm::tan(angle);
        assert!((cot(found.outer_angle) - cot(0.9) - 0.95 / 1.65).abs() < 1e-12);
        assert!((found.outer_radius * libm::sin(found.outer_angle) - 1.65).abs() < 1e-12);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |w, t, a| steering(w, t, a).expect_err("unsound").what;
        assert_eq!(what(0.0, 0.9, 0.5), "wheelbase");
        assert_eq!(what(1.5, -0.1, 0.5), "kingpin-track");
        assert_eq!(what(1.5, 0.9, 0.0), "inner-angle");
        assert_eq!(what(1.5, 0.9, 1.6), "inner-angle");
        assert_eq!(what(1.5, 0.9, f64::NAN), "inner-angle");
    }
}
