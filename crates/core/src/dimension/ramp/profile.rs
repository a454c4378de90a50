//! Ground, ramp, beaver tail and deck as one line.

use crate::dimension::input::{InputError, between, not_negative};
use crate::plane::Point;

/// A loading ramp from level ground at x = 0 up to a level deck.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Ramp {
    /// Angle of the ramp to the ground, radians.
    pub angle: f64,
    /// Length of the ramp along its slope, metres.
    pub length: f64,
    /// Angle of the beaver tail between ramp and deck, radians.
    pub beaver_angle: f64,
    /// Length of the beaver tail along its slope, metres; 0 for none.
    pub beaver_length: f64,
}

/// Steepest slope that is computed, radians: 85°. Steeper than any ramp; a wheel on an upright face would have no
/// one place for an x. Common practice, no source.
const STEEPEST: f64 = 85.0 * core::f64::consts::PI / 180.0;

/// Slopes nearer than this are one slope: no corner stands between them.
const SAME_SLOPE: f64 = 1e-12;

/// A stretch of the profile between two corners. The first and the last reach without end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stretch {
    pub from: f64,
    pub to: f64,
    pub slope: f64,
    /// A point on it: its first corner, or its last where it has no first.
    pub base: Point,
}

impl Stretch {
    pub fn height(&self, x: f64) -> f64 {
        self.base.y + self.slope * (x - self.base.x)
    }
}

/// A corner of the profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Corner {
    pub at: Point,
    /// Slope before it and after it.
    pub slopes: (f64, f64),
}

impl Corner {
    /// Whether the profile turns down here, so that a wheel pivots on it and an edge can rest on it.
    pub fn is_crest(&self) -> bool {
        self.slopes.1 < self.slopes.0
    }
}

/// The line that is driven over, from level ground to level deck.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Profile {
    pub stretches: Vec<Stretch>,
    pub corners: Vec<Corner>,
    /// Greatest slope.
    pub steepest: f64,
}

impl Profile {
    /// # Errors
    /// A negative length, or an angle below 0 or above 85°.
    pub fn new(ramp: &Ramp) -> Result<Self, InputError> {
        between("ramp-angle", ramp.angle, 0.0, STEEPEST)?;
        not_negative("ramp-length", ramp.length)?;
        between("beaver-angle", ramp.beaver_angle, 0.0, STEEPEST)?;
        not_negative("beaver-length", ramp.beaver_length)?;
        let mut stretches = vec![Stretch { from: f64::NEG_INFINITY, to: 0.0, slope: 0.0, base: Point::ORIGIN }];
        let mut end = Point::ORIGIN;
        for (angle, length) in [(ramp.angle, ramp.length), (ramp.beaver_angle, ramp.beaver_length)] {
            let (sin, cos) = libm::sincos(angle);
            let next = end + Point::new(cos, sin) * length;
            if next.x > end.x {
                push(&mut stretches, Stretch { from: end.x, to: next.x, slope: sin / cos, base: end });
                end = next;
            }
        }
        push(&mut stretches, Stretch { from: end.x, to: f64::INFINITY, slope: 0.0, base: end });
        let corner = |pair: &[Stretch]| Corner { at: pair[1].base, slopes: (pair[0].slope, pair[1].slope) };
        let corners = stretches.windows(2).map(corner).collect();
        let steepest = stretches.iter().map(|stretch| stretch.slope).fold(0.0, f64::max);
        Ok(Self { stretches, corners, steepest })
    }

    /// Index of the stretch over `x`.
    pub fn stretch_at(&self, x: f64) -> usize {
        self.corners.iter().take_while(|corner| corner.at.x <= x).count()
    }

    /// Height over `x`; nowhere less than over any lesser `x`.
    pub fn height(&self, x: f64) -> f64 {
        self.stretches[self.stretch_at(x)].height(x)
    }
}

fn push(stretches: &mut Vec<Stretch>, next: Stretch) {
    match stretches.last_mut() {
        Some(last) if (last.slope - next.slope).abs() < SAME_SLOPE => last.to = next.to,
        _ => stretches.push(next),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::Fault;

    fn of(ramp: &Ramp) -> Profile {
        Profile::new(ramp).expect("sound")
    }

    #[test]
    fn a_ramp_with_a_beaver_tail_has_a_valley_and_two_crests() {
        let profile = of(&Ramp { angle: 0.3, length: 2.0, beaver_angle: 0.1, beaver_length: 1.0 });
        assert_eq!(profile.corners.iter().map(Corner::is_crest).collect::<Vec<_>>(), [false, true, true]);
        let deck = profile.stretches[3].base;
        assert!((deck.y - (2.0 * libm::sin(0.3) + libm::sin(0.1))).abs() < 1e-15);
        assert_eq!([-1.0, 0.0, 1.0, 2.5, 9.0].map(|x| profile.stretch_at(x)), [0, 1, 1, 2, 3]);
        for corner in &profile.corners {
            let before = profile.stretches[profile.stretch_at(corner.at.x) - 1];
            assert!((before.height(corner.at.x) - corner.at.y).abs() < 1e-15);
        }
    }

    #[test]
    fn what_does_not_turn_has_no_corner() {
        assert!(of(&Ramp::default()).corners.is_empty());
        assert!(of(&Ramp { length: 2.0, beaver_length: 1.0, ..Ramp::default() }).corners.is_empty());
        let straight = of(&Ramp { angle: 0.2, length: 2.0, beaver_angle: 0.2, beaver_length: 1.0 });
        assert_eq!(straight.corners.len(), 2);
        assert!((straight.corners[1].at.norm() - 3.0).abs() < 1e-15);
        let only_tail = of(&Ramp { angle: 0.2, length: 0.0, beaver_angle: 0.1, beaver_length: 1.0 });
        assert_eq!(only_tail.corners.len(), 2);
        assert!((only_tail.steepest - libm::tan(0.1)).abs() < 1e-15);
    }

    #[test]
    fn a_tail_steeper_than_the_ramp_makes_a_second_valley() {
        let profile = of(&Ramp { angle: 0.1, length: 2.0, beaver_angle: 0.3, beaver_length: 1.0 });
        assert_eq!(profile.corners.iter().map(Corner::is_crest).collect::<Vec<_>>(), [false, false, true]);
    }

    #[test]
    fn unsound_ramps_are_named() {
        let fault = |ramp: Ramp| Profile::new(&ramp).expect_err("unsound");
        assert_eq!(fault(Ramp { angle: -0.1, ..Ramp::default() }).fault, Fault::Below(0.0));
        assert_eq!(fault(Ramp { angle: 1.5, ..Ramp::default() }).what, "ramp-angle");
        assert_eq!(fault(Ramp { length: -1.0, ..Ramp::default() }).what, "ramp-length");
        assert_eq!(fault(Ramp { beaver_angle: f64::NAN, ..Ramp::default() }).what, "beaver-angle");
        assert_eq!(fault(Ramp { beaver_length: f64::INFINITY, ..Ramp::default() }).what, "beaver-length");
    }
}
