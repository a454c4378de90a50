//! Paths flattened to straight runs.

use super::{PathCommand, Shape};

/// A run of points in a view's two axes, metres.
pub type Run = Vec<(f64, f64)>;

/// Greatest distance between a curve and its flattened run, metres: half a millimetre, below
/// what a tape reads. Smaller costs points, larger shows in a clearance. Common practice, no source.
pub const FLATTENING: f64 = 0.000_5;

/// Share of a number of steps that is no more than its rounding. Own choice.
const ROUNDING: f64 = 1e-9;

/// Points of one curve at most, so that a hostile path cannot fill the memory.
const MOST_POINTS: u32 = 256;

/// A shape's path as straight runs.
///
/// Shape: one run for each start of the path; closed runs end where they began.
/// Units: metres. Frame: the shape's own two axes.
/// Accuracy: no point of a curve is farther than [`FLATTENING`] from its run. A cubic split in n
/// equal parameter steps stays within M / (8 n²) of its chords, with M the greatest length of its
/// second derivative, 6·max(|p₀ − 2p₁ + p₂|, |p₁ − 2p₂ + p₃|).
pub fn flatten(shape: &Shape) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for step in &shape.path {
        match *step {
            PathCommand::Move(a, b) => runs.push(vec![(a.m(), b.m())]),
            PathCommand::Line(a, b) => push(&mut runs, (a.m(), b.m())),
            PathCommand::Cubic(points) => {
                let [p1, p2, p3] = points.map(|(a, b)| (a.m(), b.m()));
                let p0 = runs.last().and_then(|run| run.last()).copied().unwrap_or(p1);
                for point in cubic([p0, p1, p2, p3]) {
                    push(&mut runs, point);
                }
            }
            PathCommand::Close => {
                if let Some(first) = runs.last().and_then(|run| run.first()).copied() {
                    push(&mut runs, first);
                }
            }
        }
    }
    runs
}

fn push(runs: &mut Vec<Run>, point: (f64, f64)) {
    match runs.last_mut() {
        Some(run) if run.last() == Some(&point) => {}
        Some(run) => run.push(point),
        None => runs.push(vec![point]),
    }
}

fn cubic(p: [(f64, f64); 4]) -> impl Iterator<Item = (f64, f64)> {
    let bend = |a: (f64, f64), b: (f64, f64), c: (f64, f64)| libm::hypot(a.0 - 2.0 * b.0 + c.0, a.1 - 2.0 * b.1 + c.1);
    let second = 6.0 * bend(p[0], p[1], p[2]).max(bend(p[1], p[2], p[3]));
    // A curve that takes a whole number of steps takes as many in every unit.
    let wanted = ((second / (8.0 * FLATTENING)).sqrt() * (1.0 - ROUNDING)).ceil();
    let mut count = 1;
    while count < MOST_POINTS && f64::from(count) < wanted {
        count += 1;
    }
    (1..=count).map(move |i| {
        let t = f64::from(i) / f64::from(count);
        let s = 1.0 - t;
        let blend =
            |a: f64, b: f64, c: f64, d: f64| s * s * s * a + 3.0 * s * s * t * b + 3.0 * s * t * t * c + t * t * t * d;
        (blend(p[0].0, p[1].0, p[2].0, p[3].0), blend(p[0].1, p[1].1, p[2].1, p[3].1))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::{Carrier, ShapeRole, View};
    use crate::quantity::Length;

    fn shape(path: Vec<PathCommand>) -> Shape {
        Shape {
            name: String::new(),
            view: View::Side,
            role: ShapeRole::Body,
            carrier: Carrier::Item,
            clearance: true,
            path,
        }
    }

    #[test]
    fn a_quarter_circle_stays_within_the_stated_deviation() {
        let (r, k) = (0.5, 0.552_284_749_8);
        let m = Length::from_m;
        let path = vec![
            PathCommand::Move(m(r), m(0.0)),
            PathCommand::Cubic([(m(r), m(r * k)), (m(r * k), m(r)), (m(0.0), m(r))]),
        ];
        let runs = flatten(&shape(path));
        for pair in runs[0].windows(2) {
            let middle = (f64::midpoint(pair[0].0, pair[1].0), f64::midpoint(pair[0].1, pair[1].1));
            // The cubic itself leaves the circle by less than 0.03 % of its radius.
            assert!((libm::hypot(middle.0, middle.1) - r).abs() < FLATTENING + 0.000_3 * r);
        }
    }

    #[test]
    fn a_closed_square_comes_back_to_its_start_and_an_empty_path_gives_nothing() {
        let m = Length::from_m;
        let path = vec![
            PathCommand::Move(m(0.0), m(0.0)),
            PathCommand::Line(m(1.0), m(0.0)),
            PathCommand::Line(m(1.0), m(1.0)),
            PathCommand::Close,
        ];
        assert_eq!(flatten(&shape(path)), vec![vec![(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 0.0)]]);
        assert!(flatten(&shape(vec![])).is_empty());
    }

    #[test]
    fn a_curve_to_the_end_of_the_world_ends() {
        let far = Length::from_m(f64::MAX);
        let path = vec![PathCommand::Move(far, far), PathCommand::Cubic([(-far, far), (far, -far), (far, far)])];
        assert!(flatten(&shape(path))[0].len() <= 257);
    }
}
