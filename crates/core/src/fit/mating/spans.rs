//! A pattern of points by the distances between them, as a tape or caliper takes them on the plate.

use super::LARGEST;

/// A distance between two points of a pattern.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The two points, from 0.
    pub between: [usize; 2],
    /// Centre to centre.
    pub length: f64,
    /// How far that may be off.
    pub half_range: f64,
}

/// A pattern as its distances have it.
#[derive(Clone, Debug, PartialEq)]
pub struct Spanned {
    /// The points, moved from where they were by no more than the distances ask for.
    pub points: Vec<[f64; 2]>,
    /// How far each coordinate may be off, a common shift and turn of the whole pattern left out.
    pub half_ranges: Vec<[f64; 2]>,
    /// How much of that comes from where the points were said to be, and not from the distances.
    pub from_before: Vec<[f64; 2]>,
}

/// Weight of where a point was said to be against a distance. Own choice: far below what a distance weighs, and enough for what
/// no distance tells to stay as it was.
const BEFORE: f64 = 1e-5;

/// Steps at most; a plate needs three or four.
const MOST_STEPS: usize = 30;

/// Moves points so that they are as far apart as was measured; `None` if a number is none or a span has no two points.
///
/// # Shape
/// As many half ranges as points; any number of spans, also too few or more than are needed.
///
/// # Units
/// One unit throughout, metres.
///
/// # Accuracy
/// First order in the half ranges: they are small against the pattern. Where distances do not agree among themselves the points
/// lie so that the squares of what is left over are least.
///
/// # Source
/// Least squares after Gauss and Newton; the bounds are those of a sum of effects, each at its worst, textbook practice.
///
/// # Examples
/// Two holes drawn 100 mm apart and measured at 100.4 mm: each moves by half of the difference.
/// ```
/// use fitup_core::fit::mating::spans::{Span, by_spans};
/// let span = Span { between: [0, 1], length: 0.1004, half_range: 0.0001 };
/// let found = by_spans(&[[0.0, 0.0], [0.1, 0.0]], &[[0.001, 0.001]; 2], &[span]).unwrap();
/// assert!((found.points[0][0] + 0.0002).abs() < 1e-8 && (found.points[1][0] - 0.1002).abs() < 1e-8);
/// assert!(found.half_ranges.iter().flatten().all(|half| *half < 0.0001));
/// ```
pub fn by_spans(points: &[[f64; 2]], half_ranges: &[[f64; 2]], spans: &[Span]) -> Option<Spanned> {
    let in_range = |value: &f64| value.abs() <= LARGEST;
    let is_span = |span: &Span| {
        let [a, b] = span.between;
        a != b && a.max(b) < points.len() && span.length > 0.0 && in_range(&span.length) && in_range(&span.half_range)
    };
    let is_known = points.iter().chain(half_ranges).flatten().all(in_range) && points.len() == half_ranges.len();
    if !is_known || !spans.iter().all(is_span) {
        return None;
    }
    let mut at: Vec<f64> = points.iter().flatten().copied().collect();
    for _ in 0..MOST_STEPS {
        let (rows, off) = effects(&at, spans)?;
        let gain = gain(&rows, at.len())?;
        let step: Vec<f64> = gain.iter().map(|row| row.iter().zip(&off).map(|(g, r)| g * r).sum()).collect();
        at.iter_mut().zip(&step).for_each(|(at, step)| *at += step);
        if step.iter().all(|step| step.abs() < 1e-10) {
            break;
        }
    }
    let (rows, _) = effects(&at, spans)?;
    let gain = gain(&rows, at.len())?;
    let before: Vec<f64> = half_ranges.iter().flatten().map(|half| half.abs()).collect();
    let kept = kept(&gain, &rows, &motions(&at));
    let of = |row: &[f64], halves: &[f64]| row.iter().zip(halves).map(|(g, half)| g.abs() * half).sum::<f64>();
    let measured: Vec<f64> = spans.iter().map(|span| span.half_range.abs()).collect();
    let pairs = |values: Vec<f64>| values.chunks(2).map(|pair| [pair[0], pair[1]]).collect::<Vec<_>>();
    let from_before: Vec<f64> = kept.iter().map(|row| of(row, &before)).collect();
    let halves = gain.iter().zip(&from_before).map(|(row, before)| of(row, &measured) + before).collect();
    Some(Spanned { points: pairs(at), half_ranges: pairs(halves), from_before: pairs(from_before) })
}

type Matrix = Vec<Vec<f64>>;

/// By how much each distance grows with each coordinate, and by how much it is short; `None` where two points coincide.
fn effects(at: &[f64], spans: &[Span]) -> Option<(Matrix, Vec<f64>)> {
    let mut rows = Vec::new();
    let mut off = Vec::new();
    for Span { between: [a, b], length, .. } in spans {
        let (u, v) = (at[2 * b] - at[2 * a], at[2 * b + 1] - at[2 * a + 1]);
        let apart = libm::hypot(u, v);
        if apart <= 0.0 {
            return None;
        }
        let mut row = vec![0.0; at.len()];
        (row[2 * a], row[2 * a + 1], row[2 * b], row[2 * b + 1]) = (-u / apart, -v / apart, u / apart, v / apart);
        rows.push(row);
        off.push(length - apart);
    }
    Some((rows, off))
}

/// By how much each coordinate follows each distance: `(JᵀJ + ε)⁻¹ Jᵀ`.
fn gain(rows: &Matrix, count: usize) -> Option<Matrix> {
    let mut left: Matrix = vec![vec![0.0; count]; count];
    for row in rows {
        for (i, x) in row.iter().enumerate().filter(|(_, x)| **x != 0.0) {
            for (j, y) in row.iter().enumerate() {
                left[i][j] += x * y;
            }
        }
    }
    (0..count).for_each(|i| left[i][i] += BEFORE);
    let mut right: Matrix = (0..count).map(|i| rows.iter().map(|row| row[i]).collect()).collect();
    // Symmetric and above zero: no exchange of rows is needed.
    for i in 0..count {
        let pivot = left[i][i];
        if pivot.is_nan() || pivot <= 0.0 {
            return None;
        }
        for j in (0..count).filter(|&j| j != i) {
            let factor = left[j][i] / pivot;
            if factor != 0.0 {
                let (row, of) = (left[i].clone(), right[i].clone());
                left[j].iter_mut().zip(&row).for_each(|(x, y)| *x -= factor * y);
                right[j].iter_mut().zip(&of).for_each(|(x, y)| *x -= factor * y);
            }
        }
    }
    for (i, row) in right.iter_mut().enumerate() {
        for x in row {
            *x /= left[i][i];
        }
    }
    Some(right)
}

/// The ways in which a pattern moves as a whole: two shifts and a turn, square to each other and of length one.
fn motions(at: &[f64]) -> [Vec<f64>; 3] {
    let points = at.len() / 2;
    #[allow(clippy::cast_precision_loss, reason = "counts of holes are far below 2^52")]
    let count = points as f64;
    let middle = |axis: usize| at.iter().skip(axis).step_by(2).sum::<f64>() / count;
    let (u, v) = (middle(0), middle(1));
    let shift = |axis: usize| (0..at.len()).map(|i| if i % 2 == axis { 1.0 } else { 0.0 }).collect::<Vec<f64>>();
    let turn = at.chunks(2).flat_map(|point| [v - point[1], point[0] - u]).collect();
    [shift(0), shift(1), turn].map(|mode: Vec<f64>| {
        let size = mode.iter().map(|x| x * x).sum::<f64>().sqrt();
        if size > 0.0 { mode.iter().map(|x| x / size).collect() } else { mode }
    })
}

/// What is kept of where the points were: (I − gain · effects), motions of the whole left out.
fn kept(gain: &Matrix, rows: &Matrix, motions: &[Vec<f64>; 3]) -> Matrix {
    let count = gain.len();
    let mut kept: Matrix = (0..count).map(|i| (0..count).map(|j| f64::from(u8::from(i == j))).collect()).collect();
    for (row, of) in kept.iter_mut().zip(gain) {
        for (g, effect) in of.iter().zip(rows) {
            row.iter_mut().zip(effect).for_each(|(x, e)| *x -= g * e);
        }
    }
    for mode in motions {
        let along: Vec<f64> =
            (0..count).map(|j| mode.iter().zip(&kept).map(|(m, row)| m * row[j]).sum::<f64>()).collect();
        for (row, m) in kept.iter_mut().zip(mode) {
            row.iter_mut().zip(&along).for_each(|(x, a)| *x -= m * a);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLATE: [[f64; 2]; 4] = [[0.0, 0.0], [0.12, 0.0], [0.12, 0.08], [0.0, 0.08]];
    const DRAWN: [[f64; 2]; 4] = [[0.0015, 0.0015]; 4];

    fn apart(points: &[[f64; 2]], [a, b]: [usize; 2]) -> f64 {
        libm::hypot(points[a][0] - points[b][0], points[a][1] - points[b][1])
    }

    fn all(points: &[[f64; 2]], half_range: f64) -> Vec<Span> {
        let pairs = (0..points.len()).flat_map(|a| (a + 1..points.len()).map(move |b| [a, b]));
        pairs.map(|between| Span { between, length: apart(points, between), half_range }).collect()
    }

    #[test]
    fn every_distance_comes_out_as_measured_where_they_agree() {
        let real = [[0.001, -0.0005], [0.1195, 0.0008], [0.1212, 0.0801], [-0.0007, 0.0795]];
        let spans = all(&real, 0.0001);
        let found = by_spans(&PLATE, &DRAWN, &spans).unwrap();
        for span in &spans {
            assert!((apart(&found.points, span.between) - span.length).abs() < 1e-8);
        }
        assert!(found.from_before.iter().flatten().all(|before| *before < 1e-6), "{:?}", found.from_before);
        assert!(found.half_ranges.iter().flatten().all(|half| *half < 0.0002), "{:?}", found.half_ranges);
    }

    #[test]
    fn what_no_distance_tells_stays_as_unsure_as_it_was() {
        // Three sides of a rectangle leave it free to lean over.
        let spans: Vec<Span> =
            all(&PLATE, 0.0001).into_iter().filter(|span| span.between[0] + 1 == span.between[1]).collect();
        let found = by_spans(&PLATE, &DRAWN, &spans).unwrap();
        let most = found.from_before.iter().flatten().fold(0.0, |a: f64, &b| a.max(b));
        assert!(most > 0.0005, "{most}");
        let none = by_spans(&PLATE, &DRAWN, &[]).unwrap();
        assert_eq!(none.points, PLATE);
        let line = [[0.0, 0.0], [0.05, 0.0], [0.1, 0.0]];
        let row = by_spans(&line, &[[0.001; 2]; 3], &all(&line, 0.0001)).unwrap();
        assert!(row.from_before[1][1] > 0.0005 && row.from_before[1][0] < 1e-6, "across the row nothing is told");
    }

    #[test]
    fn no_plate_within_the_measured_distances_is_farther_off_than_said() {
        // Each distance off by all it may, every way round.
        let exact = all(&PLATE, 0.0002);
        let middle = by_spans(&PLATE, &DRAWN, &exact).unwrap();
        for signs in 0..64_u32 {
            let spans: Vec<Span> = exact
                .iter()
                .enumerate()
                .map(|(at, span)| Span {
                    length: span.length + if signs >> at & 1 == 1 { 0.0002 } else { -0.0002 },
                    ..*span
                })
                .collect();
            let found = by_spans(&PLATE, &DRAWN, &spans).unwrap();
            for (point, (from, half)) in found.points.iter().zip(PLATE.iter().zip(&middle.half_ranges)) {
                for axis in 0..2 {
                    assert!((point[axis] - from[axis]).abs() <= half[axis] + 2e-6, "{signs}");
                }
            }
        }
    }

    #[test]
    fn what_is_no_span_is_refused() {
        let span = |between, length| Span { between, length, half_range: 0.0001 };
        for bad in [span([0, 0], 0.1), span([0, 4], 0.1), span([0, 1], 0.0), span([0, 1], f64::NAN)] {
            assert_eq!(by_spans(&PLATE, &DRAWN, &[bad]), None, "{bad:?}");
        }
        assert_eq!(by_spans(&[[0.0; 2]; 2], &[[0.001; 2]; 2], &[span([0, 1], 0.1)]), None, "two points in one place");
        assert_eq!(by_spans(&PLATE, &[], &[]), None);
    }
}
