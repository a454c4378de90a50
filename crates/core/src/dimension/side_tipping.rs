//! Tipping load over the side while digging.

use super::input::{InputError, not_negative, sound};
use super::moment::{PointMass, moment, span, without_rounding};

/// Where the machine stands while its arm is swung to the left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SideStand {
    /// x of the rear supports, metres: the stabilisers' feet, or 0 for the rear tyres.
    pub line: f64,
    /// y of the left rear support, metres.
    pub rear: f64,
    /// Wheelbase, metres.
    pub wheelbase: f64,
    /// y of the left front support, metres: the tyre's, or 0 for an axle that swings about its pivot.
    pub front: f64,
}

/// A mass and where over the ground its centre of gravity lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroundMass {
    /// Mass, kilograms.
    pub mass: f64,
    /// x of its centre of gravity, metres.
    pub x: f64,
    /// y of its centre of gravity, metres.
    pub y: f64,
}

/// Load that tips the machine over the line from the left rear to the left front support, kilograms.
///
/// Shape: `bodies` are every mass of the machine, the arm's own parts included where they stand in that pose; the load
/// hangs at `load`, (x, y). Negative when the machine has tipped already, `None` when the load lies on or inside the
/// line and tips nothing. Units: metres, kilograms. Frame: the machine's, y to the left. Valid for: standing still on
/// firm level ground; soft ground, slopes and motion tip earlier. Accuracy: closed form, rounding only.
///
/// With d the distance inside the line: tipping load = Σ m d / −d(load).
///
/// # Errors
/// Rear supports less than a millimetre behind the front axle, a negative mass or half width, or a number that is not
/// finite.
///
/// # Source
/// Moment balance about the line of two supports.
///
/// # Examples
/// 1000 kg in the middle, supports 1 m to the left of it; the load hangs 2 m farther out: 500 kg tip.
/// ```
/// use fitup_core::dimension::{GroundMass, SideStand, side_tipping};
/// let stand = SideStand { line: 0.0, rear: 1.0, wheelbase: 1.5, front: 1.0 };
/// let bodies = [GroundMass { mass: 1000.0, x: 0.7, y: 0.0 }];
/// assert_eq!(side_tipping(stand, &bodies, [-0.5, 3.0]).unwrap(), Some(500.0));
/// ```
pub fn side_tipping(
    stand: SideStand,
    bodies: &[GroundMass],
    [load_x, load_y]: [f64; 2],
) -> Result<Option<f64>, InputError> {
    let SideStand { line, rear, wheelbase, front } = stand;
    not_negative("rear-half", rear)?;
    not_negative("front-half", front)?;
    span("wheelbase", wheelbase - sound("tipping-line", line)?)?;
    let (along, across) = (wheelbase - line, front - rear);
    let length = libm::hypot(along, across);
    // What lies on the line on paper lies on it.
    let inside = |x: f64, y: f64| {
        let terms = [(rear - y) * along, (x - line) * across];
        without_rounding(terms.iter().sum(), terms) / length
    };
    for body in bodies {
        not_negative("mass", body.mass)?;
        sound("mass-x", body.x)?;
        sound("mass-y", body.y)?;
    }
    let outside = -inside(sound("load-x", load_x)?, sound("load-y", load_y)?);
    let inward: Vec<PointMass> =
        bodies.iter().map(|body| PointMass { mass: body.mass, x: inside(body.x, body.y) }).collect();
    Ok((outside > 0.0).then(|| moment(&inward, 0.0) / outside))
}

#[cfg(test)]
mod tests {
    use super::*;

    const STAND: SideStand = SideStand { line: -0.5, rear: 0.8, wheelbase: 1.5, front: 0.0 };
    const BODY: GroundMass = GroundMass { mass: 500.0, x: 0.5, y: 0.0 };

    /// From (−0.5, 0.8) to (1.5, 0): a place lies (2 (0.8 − y) − 0.8 (x + 0.5)) / √4.64 inside.
    #[test]
    fn a_slanting_line_is_nearer_than_its_rear_end() {
        // Body: 0.8 / √4.64 inside. Load at (−0.5, 2): 2.4 / √4.64 outside. 500 × 0.8 / 2.4.
        let tipping = side_tipping(STAND, &[BODY], [-0.5, 2.0]).unwrap().unwrap();
        assert!((tipping - 500.0 / 3.0).abs() < 1e-9, "{tipping}");
        // A body ahead of the pivot's line and to the left takes away from it: (1, 0.2) lies exactly on the line.
        let on_line = GroundMass { mass: 300.0, x: 1.0, y: 0.2 };
        let tipping = side_tipping(STAND, &[BODY, on_line], [-0.5, 2.0]).unwrap().unwrap();
        assert!((tipping - 500.0 / 3.0).abs() < 1e-9, "{tipping}");
    }

    #[test]
    fn a_load_inside_the_line_tips_nothing_and_a_tipped_machine_has_a_negative_load() {
        assert_eq!(side_tipping(STAND, &[BODY], [-0.5, 0.8]), Ok(None));
        assert_eq!(side_tipping(STAND, &[BODY], [-0.5, 0.0]), Ok(None));
        assert_eq!(side_tipping(STAND, &[BODY], [1.0, 0.2]), Ok(None), "on the line, but for rounding");
        let beside = GroundMass { y: 3.0, ..BODY };
        assert!(side_tipping(STAND, &[beside], [-0.5, 2.0]).unwrap().unwrap() < 0.0);
    }

    #[test]
    fn what_means_nothing_is_named() {
        let what = |stand, bodies: &[GroundMass], load| side_tipping(stand, bodies, load).unwrap_err().what;
        assert_eq!(what(SideStand { rear: -0.1, ..STAND }, &[BODY], [0.0, 2.0]), "rear-half");
        assert_eq!(what(SideStand { front: f64::NAN, ..STAND }, &[BODY], [0.0, 2.0]), "front-half");
        assert_eq!(what(SideStand { line: f64::INFINITY, ..STAND }, &[BODY], [0.0, 2.0]), "tipping-line");
        assert_eq!(what(SideStand { line: 1.5, ..STAND }, &[BODY], [0.0, 2.0]), "wheelbase");
        assert_eq!(what(STAND, &[GroundMass { mass: -1.0, ..BODY }], [0.0, 2.0]), "mass");
        assert_eq!(what(STAND, &[GroundMass { y: f64::NAN, ..BODY }], [0.0, 2.0]), "mass-y");
        assert_eq!(what(STAND, &[BODY], [f64::NAN, 2.0]), "load-x");
        assert_eq!(what(STAND, &[BODY], [0.0, f64::INFINITY]), "load-y");
    }
}
