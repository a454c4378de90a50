//! The lowest point of a convex function within convex limits, in few dimensions.

/// A function's value at a place, and its slope there.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sloped<const N: usize> {
    /// The value.
    pub value: f64,
    /// By how much it grows along each coordinate; any subgradient where it has a kink.
    pub slope: [f64; N],
}

/// What is found at a place.
#[derive(Clone, Copy, Debug)]
pub(super) enum Look<const N: usize> {
    /// A limit is exceeded there, by this much.
    Outside(Sloped<N>),
    /// All limits are kept: the function itself.
    Inside(Sloped<N>),
}

/// The most places looked at. Own choice: from metres to 1e-8 m takes some 700 in four dimensions.
const MOST_LOOKS: usize = 3_000;

/// The lowest place found within `radius` of `start`, and the value there; `None` if no place keeps the limits.
///
/// # Accuracy
/// The value is within `worth` of the lowest, unless [`MOST_LOOKS`] places did not do.
///
/// # Source
/// Ellipsoid method with deep cuts (N. Z. Shor; D. B. Yudin and A. S. Nemirovski): textbook formulas, from memory.
pub(super) fn lowest<const N: usize>(
    start: [f64; N],
    radius: [f64; N],
    worth: f64,
    mut look: impl FnMut(&[f64; N]) -> Look<N>,
) -> Option<([f64; N], f64)> {
    let mut within = Ellipsoid::round(start, radius);
    let mut best: Option<([f64; N], f64)> = None;
    for _ in 0..MOST_LOOKS {
        let at = within.middle;
        let (slope, excess) = match look(&at) {
            Look::Outside(limit) => (limit.slope, limit.value),
            Look::Inside(found) => {
                if best.is_none_or(|(_, least)| found.value < least) {
                    best = Some((at, found.value));
                }
                (found.slope, found.value - best.map_or(found.value, |(_, least)| least) + worth)
            }
        };
        // Nothing within the ellipsoid is lower by `worth`, or nothing within it keeps the limit.
        if !within.cut(&slope, excess) {
            break;
        }
    }
    best
}

/// Whether no place within `radius` of `start` keeps the limits with a value below `bound`; `false` also where [`MOST_LOOKS`] places
/// did not show it.
pub(super) fn none_below<const N: usize>(
    start: [f64; N],
    radius: [f64; N],
    bound: f64,
    mut look: impl FnMut(&[f64; N]) -> Look<N>,
) -> bool {
    let mut within = Ellipsoid::round(start, radius);
    for _ in 0..MOST_LOOKS {
        let (slope, excess) = match look(&within.middle) {
            Look::Inside(found) if found.value >= bound => (found.slope, found.value - bound),
            Look::Inside(_) => return false,
            Look::Outside(limit) => (limit.slope, limit.value),
        };
        if !within.cut(&slope, excess) {
            return true;
        }
    }
    false
}

/// Where the lowest place can still be.
struct Ellipsoid<const N: usize> {
    middle: [f64; N],
    /// A map of the unit ball, which no rounding turns into something that is no ellipsoid.
    shape: [[f64; N]; N],
}

impl<const N: usize> Ellipsoid<N> {
    /// A ball round a box: as many dimensions, so many times its square.
    fn round(middle: [f64; N], radius: [f64; N]) -> Self {
        let mut shape = [[0.0; N]; N];
        for (i, row) in shape.iter_mut().enumerate() {
            row[i] = (N as f64).sqrt() * radius[i];
        }
        Self { middle, shape }
    }

    /// Cuts off where what has this slope at the middle lies less than `excess` lower than there; whether anything is left.
    fn cut(&mut self, slope: &[f64; N], excess: f64) -> bool {
        let n = N as f64;
        let mut across = [0.0; N];
        for (row, slope) in self.shape.iter().zip(slope) {
            for (across, part) in across.iter_mut().zip(row) {
                *across += part * slope;
            }
        }
        let width = across.iter().map(|part| part * part).sum::<f64>().sqrt();
        if width.is_nan() || width <= excess || width == 0.0 {
            return false;
        }
        let depth = excess / width;
        let step = (1.0 + n * depth) / (n + 1.0);
        let shrink = 2.0 * step / (1.0 + depth);
        let grow = n * n * (1.0 - depth * depth) / (n * n - 1.0);
        let across = across.map(|part| part / width);
        let flatten = 1.0 - (1.0 - shrink).max(0.0).sqrt();
        let grow = grow.sqrt();
        for (at, row) in self.middle.iter_mut().zip(&mut self.shape) {
            let along: f64 = row.iter().zip(&across).map(|(part, across)| part * across).sum();
            *at -= step * along;
            for (part, across) in row.iter_mut().zip(&across) {
                *part = grow * (*part - flatten * along * across);
            }
        }
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Distance from `to` in the plane.
    fn distance(at: &[f64; 2], to: [f64; 2]) -> Sloped<2> {
        let off = [at[0] - to[0], at[1] - to[1]];
        let value = libm::hypot(off[0], off[1]);
        let slope = if value > 0.0 { off.map(|part| part / value) } else { [0.0; 2] };
        Sloped { value, slope }
    }

    #[test]
    fn the_nearest_place_of_a_disc_to_a_point_outside_it_is_on_its_rim() {
        let (at, value) = lowest([0.0; 2], [2.0; 2], 1e-9, |at| {
            let rim = distance(at, [0.0; 2]);
            if rim.value > 1.0 {
                Look::Outside(Sloped { value: rim.value - 1.0, ..rim })
            } else {
                Look::Inside(distance(at, [3.0, 4.0]))
            }
        })
        .unwrap();
        assert!((value - 4.0).abs() < 1e-8);
        assert!((at[0] - 0.6).abs() < 1e-3 && (at[1] - 0.8).abs() < 1e-3);
    }

    #[test]
    fn the_middle_of_three_points_is_as_far_from_each() {
        let points = [[0.0, 0.0], [1.0, 0.0], [0.5, 0.75_f64.sqrt()]];
        let (_, value) = lowest([5.0, -3.0], [9.0; 2], 1e-10, |at| {
            let far = points.map(|point| distance(at, point)).into_iter().max_by(|a, b| a.value.total_cmp(&b.value));
            Look::Inside(far.unwrap())
        })
        .unwrap();
        assert!((value - 1.0 / 3.0_f64.sqrt()).abs() < 1e-9);
    }

    #[test]
    fn a_bound_is_held_just_where_the_lowest_lies_above_it() {
        let look = |at: &[f64; 2]| {
            let rim = distance(at, [0.0; 2]);
            if rim.value > 1.0 {
                Look::Outside(Sloped { value: rim.value - 1.0, ..rim })
            } else {
                Look::Inside(distance(at, [3.0, 4.0]))
            }
        };
        assert!(none_below([0.0; 2], [2.0; 2], 3.999, look));
        assert!(!none_below([0.0; 2], [2.0; 2], 4.001, look));
        assert!(!none_below([0.0; 2], [2.0; 2], f64::NAN, look), "what cannot be compared is not shown");
    }

    #[test]
    fn limits_that_no_place_keeps_have_no_lowest() {
        let nowhere = lowest([0.0; 2], [2.0; 2], 1e-9, |at| {
            let far = [[-1.0, 0.0], [1.0, 0.0]].map(|to| distance(at, to)).into_iter();
            let far = far.max_by(|a, b| a.value.total_cmp(&b.value)).unwrap();
            Look::Outside(Sloped { value: far.value - 0.5, ..far })
        });
        assert!(nowhere.is_none());
    }
}
