//! A point or free vector of the plane.

use std::ops::{Add, Mul, Neg, Sub};

/// A point or free vector of the plane.
///
/// # Examples
/// ```
/// use fitup_core::plane::Point;
/// let a = Point::new(3.0, 4.0);
/// assert_eq!(a.norm(), 5.0);
/// assert_eq!((a + Point::new(-3.0, -4.0)).norm(), 0.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point {
    /// First axis.
    pub x: f64,
    /// Second axis.
    pub y: f64,
}

impl Point {
    /// The origin.
    pub const ORIGIN: Self = Self { x: 0.0, y: 0.0 };

    /// A point from its two numbers.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// The unit vector at `angle` radians, counter-clockwise from the first axis.
    #[must_use]
    pub fn unit(angle: f64) -> Self {
        let (sin, cos) = libm::sincos(angle);
        Self::new(cos, sin)
    }

    /// Scalar product.
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// Third component of the vector product: positive when `other` lies counter-clockwise.
    pub fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    /// Length.
    pub fn norm(self) -> f64 {
        libm::hypot(self.x, self.y)
    }

    /// Distance to another point.
    pub fn distance(self, other: Self) -> f64 {
        (self - other).norm()
    }

    /// A quarter turn counter-clockwise.
    #[must_use]
    pub const fn quarter_turn(self) -> Self {
        Self::new(-self.y, self.x)
    }

    /// Turned so that the first axis comes to lie along the unit vector `direction`.
    #[must_use]
    pub fn turned(self, direction: Self) -> Self {
        Self::new(self.x * direction.x - self.y * direction.y, self.x * direction.y + self.y * direction.x)
    }

    /// The point at share `t` of the way to `other`.
    #[must_use]
    pub fn lerp(self, other: Self, t: f64) -> Self {
        self + (other - self) * t
    }

    /// Whether both numbers are finite.
    pub const fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }
}

impl From<(f64, f64)> for Point {
    fn from((x, y): (f64, f64)) -> Self {
        Self::new(x, y)
    }
}

impl Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }
}

impl Neg for Point {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.x, -self.y)
    }
}

impl Mul<f64> for Point {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self::new(self.x * factor, self.y * factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn turning_by_a_unit_vector_equals_turning_by_its_angle() {
        let p = Point::new(2.0, 1.0).turned(Point::unit(core::f64::consts::FRAC_PI_2));
        assert!((p - Point::new(-1.0, 2.0)).norm() < 1e-15);
        assert_eq!(Point::new(2.0, 1.0).quarter_turn(), Point::new(-1.0, 2.0));
    }

    #[test]
    fn cross_is_positive_counter_clockwise() {
        assert!(Point::new(1.0, 0.0).cross(Point::new(0.0, 1.0)) > 0.0);
        assert!(Point::new(0.0, 1.0).cross(Point::new(1.0, 0.0)) < 0.0);
    }

    #[test]
    fn lerp_meets_both_ends() {
        let (a, b) = (Point::new(1.0, 2.0), Point::new(-3.0, 8.0));
        assert_eq!(a.lerp(b, 0.0), a);
        assert_eq!(a.lerp(b, 1.0), b);
        assert_eq!(a.lerp(b, 0.5), Point::new(-1.0, 5.0));
    }

    #[test]
    fn not_a_number_is_not_finite() {
        assert!(!Point::new(f64::NAN, 0.0).is_finite());
        assert!(!Point::new(0.0, f64::INFINITY).is_finite());
        assert!(Point::ORIGIN.is_finite());
    }
}
