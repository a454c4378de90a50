//! Breakover angle: how sharp a crest the machine passes between its axles.

use super::departure::tangent_angle;
use super::input::{InputError, positive, sound_points};
use crate::plane::{Circle, Point};

/// Both wheels in the side view, standing on level ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wheels {
    /// Static loaded radius of the rear tyre, metres.
    pub rear: f64,
    /// Static loaded radius of the front tyre, metres.
    pub front: f64,
    /// Wheelbase, metres.
    pub wheelbase: f64,
}

/// A breakover angle and the point that governs it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Breakover {
    /// The angle, radians: the sum of the two parts.
    pub angle: f64,
    /// Angle of the tangent to the rear tyre to the ground, radians.
    pub rear_part: f64,
    /// Angle of the tangent to the front tyre to the ground, radians.
    pub front_part: f64,
    /// Index of the line that governs it.
    pub line: usize,
    /// The point that governs it, often inside an edge.
    pub point: Point,
}

/// How far above the true least angle the search may stop, radians: six digits below a second of arc, well
/// above rounding. Smaller costs time only. Common practice, no source.
const CLOSE_ENOUGH: f64 = 1e-12;

/// Far more than rounding amounts to in an angle, radians, or in a radius, as a share. Own choice.
const WELL_ABOVE_ROUNDING: f64 = 1e-9;

/// Share of an edge below which a stretch of it is rounding, not a stretch: it keeps an edge that ends exactly where a
/// tyre stands from counting as outside that tyre. Own choice.
const SLIVER: f64 = 1e-9;

/// Breakover angle: supplement of the widest angle two lines make that touch the front and the rear
/// tyre's arc and meet at a point of the underside.
///
/// Shape: `lines` are open polylines of the underside, (x, z); a line of one point is that point.
/// Units: metres, radians. Frame: the machine's. Valid for: any radii and wheelbase above zero.
/// Accuracy: 10⁻¹² rad. The least inside an edge is found by halving with two lower bounds that
/// hold for certain: each part has its least over a stretch at the stretch's ends, and its second
/// derivative is at most (1 + r/L)/L² with L the length of the tangent.
///
/// Edges are cut at the axles and at the tyres; what lies inside a tyre limits nothing. `None` when nothing
/// lies between the tyres.
///
/// # Errors
/// A radius or wheelbase not above zero, or a number that is not finite or beyond
/// [`LARGEST`](super::LARGEST).
///
/// # Source
/// 49 CFR 523.2, "breakover angle" (2015 annual edition).
///
/// # Examples
/// A point midway, on the level of both wheel centres: each part has sin a = 0.5 / 1.
/// ```
/// use fitup_core::dimension::{Wheels, breakover};
/// use fitup_core::plane::Point;
/// let wheels = Wheels { rear: 0.5, front: 0.5, wheelbase: 2.0 };
/// let found = breakover(wheels, &[[Point::new(1.0, 0.5)]]).unwrap().unwrap();
/// assert!((found.angle.to_degrees() - 60.0).abs() < 1e-12);
/// ```
pub fn breakover<L: AsRef<[Point]>>(wheels: Wheels, lines: &[L]) -> Result<Option<Breakover>, InputError> {
    positive("rear-radius", wheels.rear)?;
    positive("front-radius", wheels.front)?;
    positive("wheelbase", wheels.wheelbase)?;
    sound_points("underside", lines)?;
    let mut least = None;
    // From each point in turn; `None` beyond an axle or within a tyre.
    let mut seen = Vec::new();
    for (line, points) in lines.iter().map(AsRef::as_ref).enumerate() {
        for &point in points {
            let rear = tangent_angle(point.x, point.y, wheels.rear);
            let front = tangent_angle(wheels.wheelbase - point.x, point.y, wheels.front);
            let sight = rear.zip(front).map(|(rear, front)| Sight { rear, front });
            if let Some(sight) = sight {
                keep(&mut least, sight, line, point);
            }
            seen.push(sight);
        }
    }
    let mut first = 0;
    for (line, points) in lines.iter().map(AsRef::as_ref).enumerate() {
        for (pair, ends) in points.windows(2).zip(seen[first..].windows(2)) {
            let edge = Edge { wheels, a: pair[0], b: pair[1] };
            if edge.is_beaten(ends, least.as_ref()) {
                continue;
            }
            for (from, to) in edge.stretches() {
                search(edge, from, to, line, &mut least);
            }
        }
        first += points.len();
    }
    Ok(least)
}

/// The two tangent angles seen from one point.
#[derive(Clone, Copy)]
struct Sight {
    rear: f64,
    front: f64,
}

fn keep(least: &mut Option<Breakover>, sight: Sight, line: usize, point: Point) {
    let angle = sight.rear + sight.front;
    if least.is_none_or(|known| angle < known.angle) {
        *least = Some(Breakover { angle, rear_part: sight.rear, front_part: sight.front, line, point });
    }
}

/// Halves the stretch until no part of it can hold an angle noticeably below the least known.
fn search(edge: Edge, from: f64, to: f64, line: usize, least: &mut Option<Breakover>) {
    let (at_from, at_to) = (edge.sight(from), edge.sight(to));
    keep(least, at_from, line, edge.point(from));
    keep(least, at_to, line, edge.point(to));
    let mut open = vec![(from, at_from, to, at_to)];
    while let Some((from, at_from, to, at_to)) = open.pop() {
        let known = least.map_or(f64::INFINITY, |known| known.angle);
        let middle = f64::midpoint(from, to);
        if edge.lower_bound(from, at_from, to, at_to) >= known - CLOSE_ENOUGH || middle <= from || middle >= to {
            continue;
        }
        let at_middle = edge.sight(middle);
        keep(least, at_middle, line, edge.point(middle));
        open.push((middle, at_middle, to, at_to));
        open.push((from, at_from, middle, at_middle));
    }
}

/// One edge of the underside, seen from both wheels. Places on it are shares of its length.
#[derive(Clone, Copy)]
struct Edge {
    wheels: Wheels,
    a: Point,
    b: Point,
}

impl Edge {
    fn point(self, t: f64) -> Point {
        self.a.lerp(self.b, t)
    }

    fn rear_wheel(self) -> Circle {
        Circle::new(Point::new(0.0, self.wheels.rear), self.wheels.rear)
    }

    fn front_wheel(self) -> Circle {
        Circle::new(Point::new(self.wheels.wheelbase, self.wheels.front), self.wheels.front)
    }

    /// The parts of the edge between the axles and outside both tyres.
    fn stretches(self) -> Vec<(f64, f64)> {
        let run = self.b.x - self.a.x;
        let (mut from, mut to) = (0.0_f64, 1.0_f64);
        if run == 0.0 {
            if self.a.x <= 0.0 || self.a.x >= self.wheels.wheelbase {
                return Vec::new();
            }
        } else {
            let (rear, front) = (-self.a.x / run, (self.wheels.wheelbase - self.a.x) / run);
            from = from.max(rear.min(front));
            to = to.min(rear.max(front));
        }
        let mut free = vec![(from, to)];
        for wheel in [self.rear_wheel(), self.front_wheel()] {
            if let Some((enters, leaves)) = wheel.cut_line(self.a, self.b) {
                free = free.into_iter().flat_map(|(f, t)| [(f, t.min(enters)), (f.max(leaves), t)]).collect();
            }
        }
        free.retain(|(from, to)| to - from > SLIVER);
        free
    }

    /// Whether the angles seen from its ends show that nothing on it comes near the least known: an edge clear of both tyres is
    /// one stretch, and each part of the angle has its least at an end of it.
    fn is_beaten(self, ends: &[Option<Sight>], least: Option<&Breakover>) -> bool {
        let (&[Some(a), Some(b)], Some(least)) = (ends, least) else { return false };
        let beside = |wheel: Circle| {
            let reach = wheel.radius * (1.0 + WELL_ABOVE_ROUNDING);
            let (low, high) = (self.a.y.min(self.b.y), self.a.x.max(self.b.x));
            low > wheel.centre.y + reach
                || high < wheel.centre.x - reach
                || self.a.x.min(self.b.x) > wheel.centre.x + reach
        };
        a.rear.min(b.rear) + a.front.min(b.front) > least.angle + WELL_ABOVE_ROUNDING
            && beside(self.rear_wheel())
            && beside(self.front_wheel())
    }

    /// The two angles; at a cut with a tyre or an axle, their limit from outside.
    fn sight(self, t: f64) -> Sight {
        let p = self.point(t);
        let angle = |d: f64, r: f64| {
            let (d, square) = (d.max(0.0), d * d + p.y * (p.y - 2.0 * r));
            2.0 * libm::atan2(p.y, d + square.max(0.0).sqrt())
        };
        Sight { rear: angle(p.x, self.wheels.rear), front: angle(self.wheels.wheelbase - p.x, self.wheels.front) }
    }

    /// A value that the angle nowhere between the two places goes below.
    fn lower_bound(self, from: f64, at_from: Sight, to: f64, at_to: Sight) -> f64 {
        let at_ends = at_from.rear.min(at_to.rear) + at_from.front.min(at_to.front);
        let chord = (at_from.rear + at_from.front).min(at_to.rear + at_to.front);
        let width = (to - from) * self.a.distance(self.b);
        let bend = self.most_bend(self.rear_wheel(), from, to) + self.most_bend(self.front_wheel(), from, to);
        at_ends.max(chord - bend * width * width / 8.0)
    }

    /// Greatest second derivative, per unit of length, of the angle of the tangent to `wheel`.
    fn most_bend(self, wheel: Circle, from: f64, to: f64) -> f64 {
        let along = self.b - self.a;
        let nearest = (wheel.centre - self.a).dot(along) / along.dot(along);
        let square = wheel.power(self.point(nearest.max(from).min(to)));
        if square > 0.0 { (1.0 + wheel.radius / square.sqrt()) / square } else { f64::INFINITY }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const WHEELS: Wheels = Wheels { rear: 0.38, front: 0.28, wheelbase: 1.5 };

    fn at(points: &[(f64, f64)]) -> Option<Breakover> {
        let line: Vec<Point> = points.iter().map(|&p| p.into()).collect();
        breakover(WHEELS, &[line]).expect("the numbers are sound")
    }

    #[test]
    fn the_least_of_a_flat_belly_lies_inside_the_edge() {
        let found = at(&[(0.4, 0.3), (1.2, 0.3)]).expect("limits");
        assert!(found.point.x > 0.41 && found.point.x < 1.19);
        let ends = at(&[(0.4, 0.3)]).expect("limits").angle.min(at(&[(1.2, 0.3)]).expect("limits").angle);
        assert!(found.angle < ends - 0.01);
    }

    #[test]
    fn the_mirrored_machine_has_the_same_angle_with_its_parts_exchanged() {
        let line = [Point::new(0.2, 0.25), Point::new(1.1, 0.31)];
        let one = breakover(WHEELS, &[line]).expect("sound").expect("limits");
        let turned = Wheels { rear: 0.28, front: 0.38, wheelbase: 1.5 };
        let other = breakover(turned, &[line.map(|p| Point::new(1.5 - p.x, p.y))]).expect("sound").expect("limits");
        assert!((one.angle - other.angle).abs() < 1e-11);
        assert!((one.rear_part - other.front_part).abs() < 1e-5);
    }

    #[test]
    fn what_lies_outside_the_axles_or_in_a_tyre_limits_nothing() {
        assert_eq!(at(&[(-1.0, 0.1), (-0.5, 0.1)]), None);
        assert_eq!(at(&[(0.1, 0.3), (0.2, 0.4)]), None);
        assert_eq!(at(&[(0.0, 0.8), (0.0, 0.9)]), None);
        assert_eq!(at(&[(1.5, 0.8)]), None);
        assert_eq!(at(&[]), None);
        assert_eq!(breakover::<Vec<Point>>(WHEELS, &[]), Ok(None));
    }

    #[test]
    fn an_edge_is_cut_at_the_axles_and_at_the_tyres() {
        let whole = at(&[(-0.8, 0.3), (2.4, 0.3)]).expect("limits");
        let part = at(&[(0.5, 0.3), (1.1, 0.3)]).expect("limits");
        assert!((whole.angle - part.angle).abs() < 1e-11);
        // An edge wholly beyond the axles but for a tip between them.
        let tip = at(&[(-0.5, -0.05), (0.1, 0.01)]).expect("limits");
        assert!(tip.point.x <= 0.1 && tip.point.x > -1e-12);
    }

    #[test]
    fn an_edge_that_ends_where_a_tyre_stands_ends_inside_that_tyre() {
        let wheels = Wheels {
            rear: 0.627_214_625_664_401_9,
            front: 0.627_214_625_664_401_9,
            wheelbase: 1.539_425_890_705_850_6,
        };
        let line = [Point::new(1.539_425_890_705_850_6, 0.007_929_926_135_895_947), Point::ORIGIN];
        let found = breakover(wheels, &[line]).expect("sound").expect("limits");
        assert!(found.angle > 0.1_f64.to_radians(), "{found:?}");
    }

    #[test]
    fn an_upright_edge_and_one_without_length_are_points() {
        let upright = at(&[(0.7, 0.9), (0.7, 0.2)]).expect("limits");
        let point = at(&[(0.7, 0.2)]).expect("limits");
        assert!((upright.angle - point.angle).abs() < 1e-15);
        let doubled = at(&[(0.7, 0.2), (0.7, 0.2)]).expect("limits");
        assert!((doubled.angle - point.angle).abs() < 1e-15);
    }

    #[test]
    fn on_the_ground_it_is_nothing_and_below_it_negative() {
        assert_eq!(at(&[(0.7, 0.0)]).map(|found| found.angle), Some(0.0));
        assert!(at(&[(0.7, -0.1)]).expect("limits").angle < 0.0);
    }

    #[test]
    fn of_tied_lines_the_first_is_named() {
        let line = [Point::new(0.5, 0.3), Point::new(0.9, 0.3)];
        assert_eq!(breakover(WHEELS, &[line, line]).expect("sound").expect("limits").line, 0);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |wheels| breakover(wheels, &[[Point::new(0.7, 0.2)]]).expect_err("unsound").what;
        assert_eq!(what(Wheels { rear: 0.0, ..WHEELS }), "rear-radius");
        assert_eq!(what(Wheels { front: -1.0, ..WHEELS }), "front-radius");
        assert_eq!(what(Wheels { wheelbase: f64::NAN, ..WHEELS }), "wheelbase");
        let error = breakover(WHEELS, &[[Point::new(f64::NAN, 0.2)]]).expect_err("unsound");
        assert_eq!(error.what, "underside");
    }
}
