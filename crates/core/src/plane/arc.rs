//! Arcs of circles.

use super::{Circle, Point};

/// Slack in angle for a point to count as on an arc, radians: a thousandth of a micrometre at a metre. Smaller loses
/// points that rounding puts just beyond an end.
const SLACK: f64 = 1e-9;

/// A full turn.
const TURN: f64 = 2.0 * core::f64::consts::PI;

/// An arc: part of a circle, counter-clockwise from one angle over a sweep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arc {
    /// Its circle.
    pub circle: Circle,
    /// Angle of its first end, radians.
    pub from: f64,
    /// Angle it covers, radians, not negative; a full turn or more is the whole circle.
    pub sweep: f64,
}

impl Arc {
    /// The point at an angle.
    pub fn at(&self, angle: f64) -> Point {
        self.circle.centre + Point::unit(angle) * self.circle.radius
    }

    /// Both ends.
    pub fn ends(&self) -> [Point; 2] {
        [self.at(self.from), self.at(self.from + self.sweep)]
    }

    /// How far along the sweep the angle comes, radians from the first end; `None` when the arc does not reach it.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::plane::{Arc, Circle, Point};
    /// let half = Arc { circle: Circle::new(Point::ORIGIN, 1.0), from: 3.0, sweep: 3.2 };
    /// assert!((half.along(4.0).unwrap() - 1.0).abs() < 1e-12);
    /// assert!((half.along(-2.283_185_307_179_586).unwrap() - 1.0).abs() < 1e-12);
    /// assert_eq!(half.along(0.0), None);
    /// ```
    pub fn along(&self, angle: f64) -> Option<f64> {
        let turns = (angle - self.from) / TURN;
        let past = (turns - turns.floor()) * TURN;
        if past <= self.sweep + SLACK {
            Some(past.min(self.sweep))
        } else if past >= TURN - SLACK {
            Some(0.0)
        } else {
            None
        }
    }

    /// Whether a point of the circle lies on the arc.
    pub fn holds(&self, point: Point) -> bool {
        let to = point - self.circle.centre;
        self.along(libm::atan2(to.y, to.x)).is_some()
    }

    /// Lowest and highest point.
    pub fn lowest_and_highest(&self) -> [Point; 2] {
        let upright = core::f64::consts::FRAC_PI_2;
        let [a, b] = self.ends();
        let pick = |angle: f64, below: bool| match self.along(angle) {
            Some(_) => self.at(angle),
            None if (a.y <= b.y) == below => a,
            None => b,
        };
        [pick(-upright, true), pick(upright, false)]
    }

    /// Firsts axes' values of the points at a height.
    pub fn at_height(&self, height: f64) -> impl Iterator<Item = f64> + use<> {
        let up = height - self.circle.centre.y;
        let square = (self.circle.radius - up) * (self.circle.radius + up);
        let slack = SLACK * SLACK * self.circle.radius * self.circle.radius;
        let aside = if square >= -slack { square.max(0.0).sqrt() } else { f64::NAN };
        let arc = *self;
        [aside, -aside].into_iter().filter_map(move |aside| {
            let on = aside.is_finite() && arc.along(libm::atan2(up, aside)).is_some();
            on.then_some(arc.circle.centre.x + aside)
        })
    }

    /// Points common to two arcs.
    pub fn cut(&self, other: &Self) -> impl Iterator<Item = Point> + use<> {
        let (one, two) = (*self, *other);
        let points = self.circle.cut_circle(other.circle).map_or([None; 2], |(p, q)| [Some(p), Some(q)]);
        points.into_iter().flatten().filter(move |point| one.holds(*point) && two.holds(*point))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::{FRAC_PI_2, PI};

    fn arc(from: f64, sweep: f64) -> Arc {
        Arc { circle: Circle::new(Point::new(1.0, 2.0), 0.5), from, sweep }
    }

    fn near(a: Point, b: Point) {
        assert!(a.distance(b) < 1e-12, "{a:?} against {b:?}");
    }

    #[test]
    fn lowest_and_highest_are_the_circles_or_the_ends() {
        let [low, high] = arc(0.1, 9.0).lowest_and_highest();
        near(low, Point::new(1.0, 1.5));
        near(high, Point::new(1.0, 2.5));
        let rising = arc(-0.5, 1.0);
        let [low, high] = rising.lowest_and_highest();
        near(low, rising.at(-0.5));
        near(high, rising.at(0.5));
        let falling = arc(PI - 0.5, 1.0);
        let [low, high] = falling.lowest_and_highest();
        near(low, falling.at(PI + 0.5));
        near(high, falling.at(PI - 0.5));
    }

    #[test]
    fn a_height_cuts_an_arc_where_it_reaches() {
        let whole: Vec<f64> = arc(0.0, 7.0).at_height(2.3).collect();
        assert_eq!(whole.len(), 2);
        assert!((whole[0] - 1.4).abs() < 1e-12 && (whole[1] - 0.6).abs() < 1e-12);
        assert_eq!(arc(-FRAC_PI_2, PI).at_height(2.3).count(), 1);
        assert_eq!(arc(0.0, 7.0).at_height(2.6).count(), 0);
        assert!(arc(0.0, 7.0).at_height(2.5).count() >= 1);
        assert_eq!(arc(0.0, 7.0).at_height(f64::NAN).count(), 0);
    }

    #[test]
    fn arcs_meet_only_where_both_reach() {
        let one = Arc { circle: Circle::new(Point::ORIGIN, 1.0), from: 0.0, sweep: PI };
        let other = Arc { circle: Circle::new(Point::new(1.0, 0.0), 1.0), from: 0.0, sweep: 7.0 };
        let points: Vec<Point> = one.cut(&other).collect();
        assert_eq!(points.len(), 1);
        near(points[0], Point::new(0.5, 0.75_f64.sqrt()));
    }

    #[test]
    fn ends_are_on_the_arc_in_spite_of_rounding() {
        for k in 0..200 {
            let a = arc(f64::from(k) * 0.37 - 30.0, 0.7);
            for end in a.ends() {
                assert!(a.holds(end));
            }
            assert!(!a.holds(a.at(a.from - 0.01)) && !a.holds(a.at(a.from + 0.71)));
        }
    }

    #[test]
    fn an_arc_of_no_sweep_is_its_point() {
        let a = arc(0.3, 0.0);
        let [low, high] = a.lowest_and_highest();
        near(low, high);
        assert!(a.holds(a.at(0.3)));
    }
}
