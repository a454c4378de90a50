//! A rigid motion of space.

use super::{Rotation, Vector, minus, plus};

/// A rigid motion: a rotation about the origin, then a shift. Maps the points of one frame into another.
///
/// # Examples
/// ```
/// use fitup_core::space::{RigidMotion, Rotation};
/// let half_round = Rotation::to_axes([-1.0, 0.0, 0.0], [0.0, -1.0, 0.0], [0.0, 0.0, 1.0]).expect("half a turn round z");
/// let motion = RigidMotion { rotation: half_round, shift: [5.0, 0.0, 1.0] };
/// assert_eq!(motion.point([2.0, 3.0, 4.0]), [3.0, -3.0, 5.0]);
/// assert_eq!(motion.inverse().point([3.0, -3.0, 5.0]), [2.0, 3.0, 4.0]);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct RigidMotion {
    /// The rotation, first.
    pub rotation: Rotation,
    /// The shift, after it: where the origin comes to lie.
    pub shift: Vector,
}

impl RigidMotion {
    /// No motion.
    pub const NONE: Self = Self { rotation: Rotation::NONE, shift: [0.0; 3] };

    /// Where a point comes to lie.
    pub fn point(&self, p: Vector) -> Vector {
        plus(self.rotation.applied(p), self.shift)
    }

    /// What becomes of a free vector, which no shift changes.
    pub fn direction(&self, v: Vector) -> Vector {
        self.rotation.applied(v)
    }

    /// `first`, then this one.
    #[must_use]
    pub fn after(&self, first: &Self) -> Self {
        Self { rotation: self.rotation.after(&first.rotation), shift: self.point(first.shift) }
    }

    /// The motion that undoes this one.
    #[must_use]
    pub fn inverse(&self) -> Self {
        let back = self.rotation.inverse();
        Self { rotation: back, shift: minus([0.0; 3], back.applied(self.shift)) }
    }
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;
    use crate::space::norm;

    #[test]
    fn composition_is_one_after_the_other_and_the_inverse_undoes_both() {
        let a = RigidMotion { rotation: Rotation::about([0.6, 0.0, 0.8], 0.7), shift: [1.0, 2.0, -0.5] };
        let b = RigidMotion { rotation: Rotation::about([0.0, 1.0, 0.0], -1.2), shift: [-3.0, 0.0, 0.1] };
        let p = [0.4, -0.7, 2.0];
        assert!(norm(minus(a.after(&b).point(p), a.point(b.point(p)))) < 1e-12);
        let back = b.inverse().after(&a.inverse());
        assert!(norm(minus(back.point(a.after(&b).point(p)), p)) < 1e-12);
    }

    #[test]
    fn a_motion_keeps_distances_and_shifts_no_direction() {
        let a = RigidMotion { rotation: Rotation::about([0.0, 0.6, 0.8], 2.0), shift: [1.0, 2.0, -0.5] };
        let (p, q) = ([0.4, -0.7, 2.0], [1.0, 1.0, 1.0]);
        assert!((norm(minus(a.point(p), a.point(q))) - norm(minus(p, q))).abs() < 1e-12);
        assert!(norm(minus(a.direction(minus(p, q)), minus(a.point(p), a.point(q)))) < 1e-12);
    }

    #[test]
    fn no_motion_leaves_every_figure_as_it_is() {
        let p = [0.1, 0.3, 123.456];
        assert_eq!(RigidMotion::NONE.point(p), p);
        assert_eq!(RigidMotion::NONE.after(&RigidMotion::NONE), RigidMotion::NONE);
        assert_eq!(RigidMotion::default(), RigidMotion::NONE);
    }
}
