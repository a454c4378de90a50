//! Departure and approach angle: how steep a rise the machine's ends clear.

use super::input::{InputError, positive, sound, sound_points};
use super::moment::without_rounding;
use crate::plane::Point;

/// How little a point may fall short of the tyre's own length and still count as beyond it, metres: a nanometre. It only
/// keeps the rounding of a unit from losing a point that stands exactly at the tyre's end. Own choice.
const ROUNDING: f64 = 1e-9;

/// The wheel an end angle is measured from, in the side view.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EndWheel {
    /// x of the axle, metres.
    pub axle: f64,
    /// Static loaded radius, metres: the height of the wheel centre above level ground.
    pub radius: f64,
}

/// An end angle and the point that governs it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EndAngle {
    /// The angle, radians: least over every point beyond the axle, also those under the tyre.
    pub angle: f64,
    /// Index of the line that governs it.
    pub line: usize,
    /// The point that governs it.
    pub point: Point,
    /// The angle by the strict reading, radians: only what lies beyond the tyre's own length
    /// counts. `None` when nothing does.
    pub strict: Option<f64>,
}

/// Departure angle: level ground and the line from the rear tyre's arc up to the first thing it meets behind.
///
/// Shape: `lines` are open polylines of the underside, (x, z); a line of one point is that point.
/// Units: metres, radians. Frame: the machine's. Valid for: any radius above zero; points below
/// the ground give a negative angle; the angle is not capped at a right angle.
/// Accuracy: closed form, rounding only.
///
/// Points ahead of the axle and points inside the tyre's circle limit nothing; `None` when no
/// point limits. The least over an edge lies at one of its ends, since what lies above a line is
/// convex.
///
/// # Errors
/// A radius not above zero, or a number that is not finite or beyond [`LARGEST`](super::LARGEST).
///
/// # Source
/// 49 CFR 523.2, "departure angle" and "static loaded radius arc" (2015 annual edition).
///
/// # Examples
/// A point on the level of the wheel centre, 1 m behind it, with a wheel of 0.5 m: sin a = 0.5 / 1.
/// ```
/// use fitup_core::dimension::{EndWheel, departure};
/// use fitup_core::plane::Point;
/// let wheel = EndWheel { axle: 0.0, radius: 0.5 };
/// let found = departure(wheel, &[[Point::new(-1.0, 0.5)]]).unwrap().unwrap();
/// assert!((found.angle.to_degrees() - 30.0).abs() < 1e-12);
/// ```
pub fn departure<L: AsRef<[Point]>>(wheel: EndWheel, lines: &[L]) -> Result<Option<EndAngle>, InputError> {
    end_angle(wheel, lines, -1.0)
}

/// Approach angle: as [`departure`], in front of the front tyre.
///
/// # Errors
/// As [`departure`].
///
/// # Source
/// 49 CFR 523.2, "approach angle" (2015 annual edition).
///
/// # Examples
/// ```
/// use fitup_core::dimension::{EndWheel, approach};
/// use fitup_core::plane::Point;
/// let wheel = EndWheel { axle: 1.5, radius: 0.5 };
/// let found = approach(wheel, &[[Point::new(2.5, 0.5)]]).unwrap().unwrap();
/// assert!((found.angle.to_degrees() - 30.0).abs() < 1e-12);
/// ```
pub fn approach<L: AsRef<[Point]>>(wheel: EndWheel, lines: &[L]) -> Result<Option<EndAngle>, InputError> {
    end_angle(wheel, lines, 1.0)
}

/// Angle of the lower outer tangent from a point `d` beyond the axle and `z` above the ground to
/// a wheel of radius `r` on the ground; `None` on the other side of the axle or inside the wheel.
///
/// It is the smaller root of d sin a + (r − z) cos a = r, in the half-angle form that keeps its
/// accuracy for low points: tan(a / 2) = z / (d + √(d² + (r − z)² − r²)). A point exactly on the wheel's circle lies
/// outside it, whatever the unit rounds to.
pub(super) fn tangent_angle(d: f64, z: f64, r: f64) -> Option<f64> {
    let square = without_rounding(d * d + z * (z - 2.0 * r), [d * d, z * z, r * r]);
    if d > 0.0 && square >= 0.0 { Some(2.0 * libm::atan2(z, d + square.sqrt())) } else { None }
}

fn end_angle<L: AsRef<[Point]>>(wheel: EndWheel, lines: &[L], outward: f64) -> Result<Option<EndAngle>, InputError> {
    sound("axle", wheel.axle)?;
    positive("radius", wheel.radius)?;
    sound_points("underside", lines)?;
    let r = wheel.radius;
    let beyond = |point: Point| outward * (point.x - wheel.axle);
    let mut found: Option<EndAngle> = None;
    let mut strict: Option<f64> = None;
    let mut narrow = |d: f64, z: f64| {
        if let Some(angle) = tangent_angle(d, z, r) {
            strict = Some(strict.map_or(angle, |least| least.min(angle)));
        }
    };
    for (line, points) in lines.iter().map(AsRef::as_ref).enumerate() {
        for &point in points {
            let d = beyond(point);
            if d >= r - ROUNDING {
                narrow(d, point.y);
            }
            if let Some(angle) = tangent_angle(d, point.y, r)
                && found.is_none_or(|least| angle < least.angle)
            {
                found = Some(EndAngle { angle, line, point, strict: None });
            }
        }
        for pair in points.windows(2) {
            let (a, b) = (beyond(pair[0]), beyond(pair[1]));
            if (a < r) != (b < r) {
                narrow(r, pair[0].lerp(pair[1], (r - a) / (b - a)).y);
            }
        }
    }
    Ok(found.map(|found| EndAngle { strict, ..found }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::Fault;

    const WHEEL: EndWheel = EndWheel { axle: 0.0, radius: 0.38 };

    #[test]
    fn a_point_exactly_at_the_tyres_end_counts_in_the_strict_reading() {
        // 0.967 − 0.8 rounds to less than 0.167.
        let wheel = EndWheel { axle: 0.8, radius: 0.167 };
        let found = approach(wheel, &[[Point::new(0.967, 0.05)]]).unwrap().unwrap();
        assert_eq!(found.strict, Some(found.angle));
    }

    #[test]
    fn a_point_exactly_on_the_tyre_counts() {
        // 0.6 − 0.253 rounds to less than 0.347: level with the wheel's centre, at its rearmost point.
        let wheel = EndWheel { axle: 0.6, radius: 0.347 };
        let found = departure(wheel, &[[Point::new(0.253, 0.347)]]).unwrap().unwrap();
        assert!((found.angle.to_degrees() - 90.0).abs() < 1e-5, "{found:?}");
    }

    fn at(points: &[(f64, f64)]) -> Option<EndAngle> {
        let line: Vec<Point> = points.iter().map(|&p| p.into()).collect();
        departure(WHEEL, &[line]).expect("the numbers are sound")
    }

    #[test]
    fn a_point_on_the_ground_gives_nothing_and_one_below_gives_a_negative_angle() {
        assert_eq!(at(&[(-1.2, 0.0)]).map(|a| a.angle), Some(0.0));
        assert!(at(&[(-1.2, -0.1)]).expect("limits").angle < 0.0);
    }

    #[test]
    fn points_ahead_at_the_axle_or_in_the_tyre_limit_nothing() {
        assert_eq!(at(&[(0.5, 0.01)]), None);
        assert_eq!(at(&[(0.0, -0.01)]), None);
        assert_eq!(at(&[(-0.1, 0.3)]), None);
        assert_eq!(at(&[]), None);
        assert_eq!(departure::<Vec<Point>>(WHEEL, &[]), Ok(None));
    }

    #[test]
    fn a_point_on_the_tyre_gives_its_own_tangent() {
        // The rearmost point of the tyre stands upright.
        let upright = at(&[(-0.38, 0.38)]).expect("limits").angle;
        assert!((upright - core::f64::consts::FRAC_PI_2).abs() < 1e-15);
    }

    #[test]
    fn high_points_are_not_capped_at_a_right_angle() {
        assert!(at(&[(-0.1, 2.0)]).expect("limits").angle > core::f64::consts::FRAC_PI_2);
    }

    #[test]
    fn the_strict_reading_leaves_out_what_lies_under_the_tyre_and_keeps_the_cut() {
        let found = at(&[(-0.3, 0.02), (-0.6, 0.3)]).expect("limits");
        assert_eq!(found.point, Point::new(-0.3, 0.02));
        let cut = 0.02 + 0.28 * (0.08 / 0.3);
        let strict = found.strict.expect("the edge passes the tyre");
        assert!((strict - tangent_angle(0.38, cut, 0.38).expect("outside")).abs() < 1e-12);
        assert!(strict > found.angle);
        assert_eq!(at(&[(-0.3, 0.02)]).expect("limits").strict, None);
    }

    #[test]
    fn of_tied_points_the_first_is_named() {
        let line = [Point::new(-0.9, 0.2)];
        let found = departure(WHEEL, &[line, line]).expect("sound").expect("limits");
        assert_eq!(found.line, 0);
    }

    #[test]
    fn the_mirrored_machine_has_its_approach_where_its_departure_was() {
        let rear = [Point::new(-0.9, 0.25), Point::new(-1.4, 0.31)];
        let front = rear.map(|p| Point::new(1.5 - p.x, p.y));
        let a = departure(WHEEL, &[rear]).expect("sound").expect("limits");
        let b = approach(EndWheel { axle: 1.5, ..WHEEL }, &[front]).expect("sound").expect("limits");
        assert!((a.angle - b.angle).abs() < 1e-14);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let fault = |wheel, point| departure(wheel, &[[point]]).expect_err("unsound").what;
        let good = Point::new(-1.0, 0.2);
        assert_eq!(fault(EndWheel { axle: f64::NAN, radius: 0.4 }, good), "axle");
        assert_eq!(fault(EndWheel { axle: 0.0, radius: 0.0 }, good), "radius");
        assert_eq!(fault(WHEEL, Point::new(f64::INFINITY, 0.0)), "underside");
        let error = departure(EndWheel { axle: 0.0, radius: -0.1 }, &[[good]]).expect_err("negative radius");
        assert_eq!(error.fault, Fault::NotPositive);
    }

    #[test]
    fn scaling_all_lengths_leaves_the_angle() {
        let small = at(&[(-0.9, 0.2)]).expect("limits").angle;
        let big = EndWheel { axle: 0.0, radius: 0.38 * 1024.0 };
        let far = departure(big, &[[Point::new(-0.9 * 1024.0, 0.2 * 1024.0)]]).expect("sound").expect("limits");
        assert!((far.angle - small).abs() < 1e-15);
    }
}
