//! Where two items clash: the place at which their outlines overlap, or come nearest to each other, from the side.

use fitup_core::finding::{Subject as About, Verdict};
use fitup_core::fit::Answer;
use fitup_core::item::{ItemRef, View};
use fitup_core::plane::Point;

use crate::outline::{Laid, LaidShape, extent, lay};
use crate::scene::PathStep;
use crate::subject::Subject;
use crate::tyre;

/// Distance between the points of an outline that are compared, metres.
const STEP: f64 = 0.02;

/// Each finding of a clash, by its index in the answer, with its place, metres in the machine's axes.
pub(crate) fn clashes(subject: &Subject, answer: &Answer) -> Vec<(usize, Point)> {
    let laid = lay(subject, View::Side);
    let mut found: Vec<(usize, Point)> = Vec::new();
    let mut subjects = Vec::new();
    for (index, finding) in answer.findings.iter().enumerate() {
        let About::Clearance(a, b) = finding.subject else { continue };
        if finding.verdict < Verdict::CheckFirst || subjects.contains(&finding.subject) {
            continue;
        }
        subjects.push(finding.subject);
        let [a, b] = [a, b].map(|item| outlines(subject, &laid, item));
        found.extend(place(&a, &b).map(|at| (index, at)));
    }
    found
}

/// The closed outlines of an item, points close together; of the machine with its wheels.
fn outlines(subject: &Subject, laid: &[Laid], item: ItemRef) -> Vec<Vec<Point>> {
    let shapes = laid.iter().filter(|laid| laid.item == item).flat_map(|laid| &laid.shapes);
    let closed = shapes.filter(|shape| shape.steps.contains(&PathStep::Close) && extent([*shape]).is_some());
    let mut all: Vec<Vec<Point>> = closed.map(points).collect();
    if let (ItemRef::Machine(_), Some((_, machine))) = (item, subject.machine()) {
        for wheel in tyre::wheels(machine) {
            let turns = (0..48_u32).map(|at| f64::from(at) / 48.0 * core::f64::consts::TAU);
            let middle = Point::new(wheel.x, wheel.loaded);
            all.push(turns.map(|turn| middle + Point::unit(turn) * wheel.radius).collect());
        }
    }
    all
}

fn points(shape: &LaidShape) -> Vec<Point> {
    let mut points: Vec<Point> = Vec::new();
    for step in &shape.steps {
        let last = points.last().copied();
        match (*step, last) {
            (PathStep::Move(to), _) | (PathStep::Line(to), None) => points.push(to),
            (PathStep::Line(to), Some(from)) => along(&mut points, from, to),
            (PathStep::Cubic([a, b, to]), Some(from)) => {
                for at in [0.25, 0.5, 0.75, 1.0] {
                    let left = 1.0 - at;
                    let on = from * (left * left * left)
                        + a * (3.0 * left * left * at)
                        + b * (3.0 * left * at * at)
                        + to * (at * at * at);
                    let from = points.last().copied().unwrap_or(on);
                    along(&mut points, from, on);
                }
            }
            (PathStep::Close, Some(from)) => {
                if let Some(&first) = points.first() {
                    along(&mut points, from, first);
                }
            }
            (PathStep::Cubic(_) | PathStep::Close, None) => {}
        }
    }
    points
}

/// Goes on to a point in steps.
fn along(points: &mut Vec<Point>, from: Point, to: Point) {
    let pieces = (1..=200_u32).find(|&pieces| from.distance(to) <= STEP * f64::from(pieces)).unwrap_or(200);
    points.extend((1..=pieces).map(|piece| from.lerp(to, f64::from(piece) / f64::from(pieces))));
}

/// The middle of what of each lies in the other; else the middle of where they are nearest.
fn place(a: &[Vec<Point>], b: &[Vec<Point>]) -> Option<Point> {
    let inside = |these: &[Vec<Point>], those: &[Vec<Point>]| -> Vec<Point> {
        these.iter().flatten().filter(|&&at| those.iter().any(|outline| holds(outline, at))).copied().collect()
    };
    let common: Vec<Point> = [inside(a, b), inside(b, a)].concat();
    if let Some(&first) = common.first() {
        let sum = common.iter().skip(1).fold(first, |sum, &at| sum + at);
        return Some(sum * (1.0 / common.len() as f64));
    }
    let pairs = a.iter().flatten().flat_map(|&one| b.iter().flatten().map(move |&other| (one, other)));
    pairs.min_by(|x, y| x.0.distance(x.1).total_cmp(&y.0.distance(y.1))).map(|(one, other)| one.lerp(other, 0.5))
}

/// Whether a point lies inside a closed outline: a ray from it crosses the outline an odd number of times.
fn holds(outline: &[Point], at: Point) -> bool {
    let mut is_inside = false;
    let Some(mut from) = outline.last().copied() else { return false };
    for &to in outline {
        if (from.y > at.y) != (to.y > at.y) && at.x < from.x + (at.y - from.y) / (to.y - from.y) * (to.x - from.x) {
            is_inside = !is_inside;
        }
        from = to;
    }
    is_inside
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(x: f64, y: f64) -> Vec<Point> {
        [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)].map(|(dx, dy)| Point::new(x + dx, y + dy)).to_vec()
    }

    #[test]
    fn two_outlines_clash_in_the_middle_of_what_they_share() {
        let at = place(&[square(0.0, 0.0)], &[square(0.8, 0.8)]).expect("they overlap");
        assert!((at - Point::new(0.9, 0.9)).norm() < 0.2, "{at:?}");
    }

    #[test]
    fn outlines_apart_are_marked_between_their_nearest_points() {
        let at = place(&[square(0.0, 0.0)], &[square(3.0, 0.0)]).expect("both are there");
        assert!((at.x - 2.0).abs() < 1e-9, "{at:?}");
        assert_eq!(place(&[], &[square(0.0, 0.0)]), None);
    }
}
