//! A rotation of space.

use super::{Vector, angle_between, cross, dot, plus, times};

/// How far three directions may be from unit length and from right angles and still count as axes. Own choice: above
/// rounding, far below what anyone states.
const SQUARENESS: f64 = 1e-9;

/// A rotation about the origin: a proper one, never a mirroring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rotation {
    /// What becomes of the x, y and z axes.
    axes: [Vector; 3],
}

impl Default for Rotation {
    fn default() -> Self {
        Self::NONE
    }
}

impl Rotation {
    /// No rotation.
    pub const NONE: Self = Self { axes: [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]] };

    /// Half a turn round y.
    pub const HALF_ROUND_Y: Self = Self { axes: [[-1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, -1.0]] };

    /// The rotation that brings x, y and z to these directions; `None` unless they are unit vectors, square to each other and
    /// right-handed.
    ///
    /// # Examples
    /// A mirroring is none.
    /// ```
    /// use fitup_core::space::Rotation;
    /// assert!(Rotation::to_axes([0.0, 1.0, 0.0], [-1.0, 0.0, 0.0], [0.0, 0.0, 1.0]).is_some());
    /// assert!(Rotation::to_axes([0.0, 1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]).is_none());
    /// ```
    pub fn to_axes(x: Vector, y: Vector, z: Vector) -> Option<Self> {
        // The square of a length near 1 is off by twice as much.
        let unit = |a: Vector| (dot(a, a) - 1.0).abs() <= 2.0 * SQUARENESS;
        let square = |a: Vector, b: Vector| dot(a, b).abs() <= SQUARENESS;
        let proper = unit(x) && unit(y) && unit(z) && square(x, y) && square(y, z) && square(z, x);
        (proper && dot(cross(x, y), z) > 0.0).then_some(Self { axes: [x, y, z] })
    }

    /// The rotation by `angle` radians about a unit vector, right-handed.
    ///
    /// # Examples
    /// Pitching nose up lifts what lies ahead: about −y, as y points left.
    /// ```
    /// use fitup_core::space::Rotation;
    /// let up = Rotation::about([0.0, -1.0, 0.0], 0.1).applied([1.0, 0.0, 0.0]);
    /// assert!((up[2] - 0.1_f64.sin()).abs() < 1e-15);
    /// ```
    pub fn about(axis: Vector, angle: f64) -> Self {
        // No turn is exactly none, so that what stands square keeps its figures.
        let (sin, cos) = if angle == 0.0 { (0.0, 1.0) } else { libm::sincos(angle) };
        let turned =
            |v: Vector| plus(plus(times(v, cos), times(cross(axis, v), sin)), times(axis, dot(axis, v) * (1.0 - cos)));
        Self { axes: Self::NONE.axes.map(turned) }
    }

    /// What becomes of the x, y and z axes.
    pub const fn axes(&self) -> [Vector; 3] {
        self.axes
    }

    /// A vector after the rotation.
    pub fn applied(&self, v: Vector) -> Vector {
        let [x, y, z] = self.axes;
        plus(plus(times(x, v[0]), times(y, v[1])), times(z, v[2]))
    }

    /// The rotation that undoes this one.
    #[must_use]
    pub fn inverse(&self) -> Self {
        let [x, y, z] = self.axes;
        Self { axes: [[x[0], y[0], z[0]], [x[1], y[1], z[1]], [x[2], y[2], z[2]]] }
    }

    /// `first`, then this one.
    #[must_use]
    pub fn after(&self, first: &Self) -> Self {
        Self { axes: first.axes.map(|axis| self.applied(axis)) }
    }

    /// How far the z axis leans out of the vertical, 0 to π radians.
    pub fn tilt(&self) -> f64 {
        angle_between(self.axes[2], [0.0, 0.0, 1.0])
    }
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use core::f64::consts::{FRAC_PI_2, PI};

    use super::*;
    use crate::space::{minus, norm};

    fn close(a: Vector, b: Vector) -> bool {
        norm(minus(a, b)) < 1e-12
    }

    #[test]
    fn a_quarter_turn_about_each_axis_is_right_handed() {
        let [x, y, z] = Rotation::NONE.axes();
        assert!(close(Rotation::about(z, FRAC_PI_2).applied(x), y));
        assert!(close(Rotation::about(x, FRAC_PI_2).applied(y), z));
        assert!(close(Rotation::about(y, FRAC_PI_2).applied(z), x));
    }

    #[test]
    fn the_inverse_undoes_and_the_order_matters() {
        let (a, b) = (Rotation::about([0.6, 0.0, 0.8], 0.7), Rotation::about([0.0, 1.0, 0.0], -1.2));
        let v = [0.3, -2.0, 5.0];
        assert!(close(a.inverse().applied(a.applied(v)), v));
        assert!(close(a.after(&b).applied(v), a.applied(b.applied(v))));
        assert!(!close(a.after(&b).applied(v), b.after(&a).applied(v)));
    }

    #[test]
    fn mirrorings_and_skewed_axes_are_not_rotations() {
        let [x, y, z] = Rotation::NONE.axes();
        assert!(Rotation::to_axes(y, x, z).is_none(), "mirrored");
        assert!(Rotation::to_axes(x, [0.1, 1.0, 0.0], z).is_none(), "not square");
        assert!(Rotation::to_axes([2.0, 0.0, 0.0], y, z).is_none(), "not of unit length");
        assert!(Rotation::to_axes([f64::NAN, 0.0, 0.0], y, z).is_none());
        assert_eq!(Rotation::to_axes(x, y, z), Some(Rotation::NONE));
    }

    #[test]
    fn the_tilt_is_that_of_the_vertical_axis_alone() {
        assert_eq!(Rotation::about([0.0, 0.0, 1.0], 2.0).tilt(), 0.0);
        assert!((Rotation::about([1.0, 0.0, 0.0], -0.3).tilt() - 0.3).abs() < 1e-12);
        assert!((Rotation::about([0.0, 1.0, 0.0], PI).tilt() - PI).abs() < 1e-12);
    }
}
