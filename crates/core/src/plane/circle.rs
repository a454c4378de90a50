//! Circles: tangents from points, cuts with lines and other circles.

use super::Point;

/// A circle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circle {
    /// Centre.
    pub centre: Point,
    /// Radius, not negative.
    pub radius: f64,
}

impl Circle {
    /// A circle from centre and radius.
    pub const fn new(centre: Point, radius: f64) -> Self {
        Self { centre, radius }
    }

    /// Square of the length of the tangents from `point`; negative inside the circle.
    pub fn power(self, point: Point) -> f64 {
        let to = point - self.centre;
        to.x * to.x + (to.y - self.radius) * (to.y + self.radius)
    }

    /// Shares t at which the line a + t (b − a) crosses the circle, smaller first; `None` when it
    /// stays outside, touches or has no length.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::plane::{Circle, Point};
    /// let unit = Circle::new(Point::ORIGIN, 1.0);
    /// assert_eq!(unit.cut_line(Point::new(-2.0, 0.0), Point::new(2.0, 0.0)), Some((0.25, 0.75)));
    /// assert_eq!(unit.cut_line(Point::new(-2.0, 1.5), Point::new(2.0, 1.5)), None);
    /// ```
    pub fn cut_line(self, a: Point, b: Point) -> Option<(f64, f64)> {
        let (along, from) = (b - a, a - self.centre);
        let length = along.dot(along);
        // Half the squared chord, from the distance of the line: no difference of large squares.
        let off = from.cross(along);
        let square = self.radius * self.radius * length - off * off;
        if length > 0.0 && square > 0.0 {
            let (middle, half) = (-from.dot(along) / length, square.sqrt() / length);
            Some((middle - half, middle + half))
        } else {
            None
        }
    }

    /// Points common to two circles: the one to the left of the way from this centre to the
    /// other's first. Circles that touch within rounding share that one point twice; `None` when
    /// they do not meet or have the same centre.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::plane::{Circle, Point};
    /// let a = Circle::new(Point::ORIGIN, 5.0);
    /// let b = Circle::new(Point::new(6.0, 0.0), 5.0);
    /// assert_eq!(a.cut_circle(b), Some((Point::new(3.0, 4.0), Point::new(3.0, -4.0))));
    /// ```
    pub fn cut_circle(self, other: Self) -> Option<(Point, Point)> {
        let between = other.centre - self.centre;
        let distance = between.norm();
        if distance <= 0.0 || !distance.is_finite() {
            return None;
        }
        let along = f64::midpoint(distance, (self.radius - other.radius) * (self.radius + other.radius) / distance);
        let square = (self.radius - along) * (self.radius + along);
        let slack = 1e-12 * (self.radius * self.radius + along * along);
        if square < -slack {
            return None;
        }
        let unit = between * (1.0 / distance);
        let foot = self.centre + unit * along;
        let aside = unit.quarter_turn() * square.max(0.0).sqrt();
        Some((foot + aside, foot - aside))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn power_is_the_squared_tangent_length_and_negative_inside() {
        let c = Circle::new(Point::new(1.0, 1.0), 3.0);
        assert!((c.power(Point::new(6.0, 1.0)) - 16.0).abs() < 1e-15);
        assert!(c.power(Point::new(2.0, 2.0)) < 0.0);
        assert!(c.power(Point::new(1.0, 4.0)).abs() < 1e-15);
    }

    #[test]
    fn a_line_of_no_length_or_a_tangent_one_does_not_cut() {
        let c = Circle::new(Point::ORIGIN, 1.0);
        assert_eq!(c.cut_line(Point::ORIGIN, Point::ORIGIN), None);
        assert_eq!(c.cut_line(Point::new(-1.0, 1.0), Point::new(1.0, 1.0)), None);
    }

    #[test]
    fn cut_points_lie_on_both_circles() {
        let (a, b) = (Circle::new(Point::new(0.2, -0.3), 0.7), Circle::new(Point::new(0.9, 0.4), 0.5));
        let (p, q) = a.cut_circle(b).expect("these two overlap");
        for point in [p, q] {
            assert!((point.distance(a.centre) - a.radius).abs() < 1e-15);
            assert!((point.distance(b.centre) - b.radius).abs() < 1e-15);
        }
        assert!((b.centre - a.centre).cross(p - a.centre) > 0.0);
    }

    #[test]
    fn touching_circles_share_one_point_and_distant_or_concentric_ones_none() {
        let a = Circle::new(Point::ORIGIN, 1.0);
        let (p, q) = a.cut_circle(Circle::new(Point::new(3.0, 0.0), 2.0)).expect("they touch");
        assert!(p.distance(Point::new(1.0, 0.0)) < 1e-6 && q.distance(p) < 1e-6);
        assert_eq!(a.cut_circle(Circle::new(Point::new(3.1, 0.0), 2.0)), None);
        assert_eq!(a.cut_circle(Circle::new(Point::new(0.1, 0.0), 2.0)), None);
        assert_eq!(a.cut_circle(Circle::new(Point::ORIGIN, 1.0)), None);
        assert_eq!(a.cut_circle(Circle::new(Point::new(f64::NAN, 0.0), 1.0)), None);
    }
}
