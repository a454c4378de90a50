//! Making primitives in few words.

use fitup_core::plane::Point;

use crate::look::{Letter, Look};
use crate::scene::{Anchor, Circle, Group, Node, Path, PathStep, Target, Text};

/// A path through points, open.
pub(crate) fn polyline(look: Look, points: &[Point]) -> Node {
    Node::Path(Path { look, steps: steps(points) })
}

/// A path through points, closed.
pub(crate) fn polygon(look: Look, points: &[Point]) -> Node {
    let mut steps = steps(points);
    steps.push(PathStep::Close);
    Node::Path(Path { look, steps })
}

/// A straight line.
pub(crate) fn line(look: Look, a: Point, b: Point) -> Node {
    polyline(look, &[a, b])
}

/// A circle.
pub(crate) const fn circle(look: Look, centre: Point, radius: f64) -> Node {
    Node::Circle(Circle { look, centre, radius })
}

/// A level text.
pub(crate) fn text(letter: Letter, at: Point, anchor: Anchor, size: f64, words: impl Into<String>) -> Node {
    Node::Text(Text { letter, at, anchor, turn: 0.0, size, words: words.into() })
}

/// Nodes that open something when they are touched.
pub(crate) const fn group(target: Target, nodes: Vec<Node>) -> Node {
    Node::Group(Group { target: Some(target), nodes })
}

/// An arc of a circle from one angle to another, radians, counter-clockwise as seen, on the sheet.
pub(crate) fn arc(look: Look, centre: Point, radius: f64, from: f64, to: f64) -> Node {
    Node::Path(Path { look, steps: arc_steps(centre, radius, from, to) })
}

/// Steps of an arc. Each piece of at most a quarter turn is one cubic curve, which leaves the
/// circle by less than 0.03 % of its radius.
pub(crate) fn arc_steps(centre: Point, radius: f64, from: f64, to: f64) -> Vec<PathStep> {
    let on = |angle: f64| {
        let unit = Point::unit(angle);
        centre + Point::new(unit.x * radius, -unit.y * radius)
    };
    let pieces = (1..=8).find(|&n| (to - from).abs() <= f64::from(n) * core::f64::consts::FRAC_PI_2).unwrap_or(8);
    let turn = (to - from) / f64::from(pieces);
    let handle = 4.0 / 3.0 * libm::tan(turn / 4.0) * radius;
    let mut steps = vec![PathStep::Move(on(from))];
    let mut at = from;
    for _ in 0..pieces {
        let next = at + turn;
        let tangent = |angle: f64| {
            let unit = Point::unit(angle);
            Point::new(-unit.y, -unit.x) * handle
        };
        steps.push(PathStep::Cubic([on(at) + tangent(at), on(next) - tangent(next), on(next)]));
        at = next;
    }
    steps
}

fn steps(points: &[Point]) -> Vec<PathStep> {
    let mut steps = Vec::with_capacity(points.len() + 1);
    for (index, &point) in points.iter().enumerate() {
        steps.push(if index == 0 { PathStep::Move(point) } else { PathStep::Line(point) });
    }
    steps
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_arc_goes_up_the_sheet_when_it_turns_counter_clockwise() {
        let steps = arc_steps(Point::ORIGIN, 10.0, 0.0, core::f64::consts::FRAC_PI_2);
        let [PathStep::Move(start), PathStep::Cubic([_, _, end])] = steps[..] else { panic!("one piece") };
        assert!((start - Point::new(10.0, 0.0)).norm() < 1e-9);
        assert!((end - Point::new(0.0, -10.0)).norm() < 1e-9);
    }

    #[test]
    fn the_middle_of_an_arc_lies_on_its_circle() {
        let steps = arc_steps(Point::new(1.0, 1.0), 5.0, 0.3, 1.5);
        let [PathStep::Move(a), PathStep::Cubic([b, c, d])] = steps[..] else { panic!("one piece") };
        let middle = (a + d) * 0.125 + (b + c) * 0.375;
        assert!((middle.distance(Point::new(1.0, 1.0)) - 5.0).abs() < 0.002);
    }
}
