//! Whether a closed run of straight pieces crosses itself.

use fitup_core::order;

/// A point of a run.
type Point = (f64, f64);

/// What is left of the work that the checks of one file may take, in pairs of pieces compared.
#[derive(Debug)]
pub struct Budget(usize);

impl Budget {
    /// For one file. A detailed outline of 400 pieces takes some 2,000 comparisons; this is a
    /// fraction of a second. No source.
    pub const fn new() -> Self {
        Self(20_000_000)
    }
}

/// What came of looking.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Crossing {
    /// Nowhere.
    None,
    /// Here, for one.
    At(Point),
    /// There is more to compare than the budget holds.
    TooMuch,
}

/// Where a closed run crosses itself, if it does.
///
/// Shape: a run of points that ends where it begins. Pieces that only touch do not cross. Method:
/// pieces sorted by their least first coordinate; each is compared with those that begin before it ends.
pub fn crossing(run: &[Point], budget: &mut Budget) -> Crossing {
    let mut pieces: Vec<(usize, Point, Point)> =
        run.windows(2).enumerate().filter(|(_, ends)| ends[0] != ends[1]).map(|(i, e)| (i, e[0], e[1])).collect();
    order::sort(&mut pieces, |a, b| least(a).total_cmp(&least(b)).then(a.0.cmp(&b.0)));
    for (first, piece) in pieces.iter().enumerate() {
        let end = piece.1.0.max(piece.2.0);
        for other in &pieces[first + 1..] {
            if least(other) > end {
                break;
            }
            if budget.0 == 0 {
                return Crossing::TooMuch;
            }
            budget.0 -= 1;
            if let Some(at) = cross(piece, other) {
                return Crossing::At(at);
            }
        }
    }
    Crossing::None
}

fn least(piece: &(usize, Point, Point)) -> f64 {
    piece.1.0.min(piece.2.0)
}

/// Where two pieces cross, each going from one side of the other to the other side.
fn cross(&(_, a, b): &(usize, Point, Point), &(_, c, d): &(usize, Point, Point)) -> Option<Point> {
    let (side_c, side_d) = (side(a, b, c), side(a, b, d));
    let (side_a, side_b) = (side(c, d, a), side(c, d, b));
    if side_c * side_d < 0.0 && side_a * side_b < 0.0 {
        let along = side_a / (side_a - side_b);
        Some((a.0 + along * (b.0 - a.0), a.1 + along * (b.1 - a.1)))
    } else {
        None
    }
}

/// Twice the area of the triangle: positive when `p` is to the left of the line from `a` to `b`.
/// Distances below a micrometre from the line count as on it.
fn side(a: Point, b: Point, p: Point) -> f64 {
    let (along, across) = ((b.0 - a.0, b.1 - a.1), (p.0 - a.0, p.1 - a.1));
    let area = along.0 * across.1 - along.1 * across.0;
    let length = along.0.abs().max(along.1.abs());
    if area.abs() <= 1e-6 * length { 0.0 } else { area }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(run: &[Point]) -> Crossing {
        crossing(run, &mut Budget::new())
    }

    #[test]
    fn a_bow_tie_crosses_in_its_middle() {
        let Crossing::At((x, y)) = of(&[(0.0, 0.0), (2.0, 2.0), (2.0, 0.0), (0.0, 2.0), (0.0, 0.0)]) else {
            panic!("it crosses")
        };
        assert!((x - 1.0).abs() < 1e-12 && (y - 1.0).abs() < 1e-12);
    }

    #[test]
    fn touching_is_not_crossing() {
        assert_eq!(of(&[(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0), (0.0, 0.0)]), Crossing::None);
        // A notch whose tip touches the far side.
        let notch = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (3.0, 2.0), (2.0, 0.0), (1.0, 2.0), (0.0, 2.0), (0.0, 0.0)];
        assert_eq!(of(&notch), Crossing::None);
        assert_eq!(of(&[]), Crossing::None);
        assert_eq!(of(&[(1.0, 1.0), (1.0, 1.0)]), Crossing::None);
    }

    #[test]
    fn a_hostile_outline_ends_with_the_budget() {
        let comb: Vec<Point> = (0..4000).map(|i| (f64::from(i % 2), f64::from(i))).collect();
        assert_eq!(crossing(&comb, &mut Budget(1000)), Crossing::TooMuch);
    }
}

#[cfg(test)]
mod against_brute_force {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Every pair compared, on whole coordinates where the sides are exact.
        #[test]
        fn the_sweep_finds_what_comparing_every_pair_finds(
            points in proptest::collection::vec((0i16..12, 0i16..12), 3..14)
        ) {
            let mut run: Vec<Point> = points.iter().map(|&(x, y)| (f64::from(x), f64::from(y))).collect();
            run.push(run[0]);
            let exact = |a: Point, b: Point, p: Point| (b.0 - a.0) * (p.1 - a.1) - (b.1 - a.1) * (p.0 - a.0);
            let pieces: Vec<_> = run.windows(2).collect();
            let any = pieces.iter().enumerate().any(|(i, p)| pieces[i + 1..].iter().any(|q| {
                exact(p[0], p[1], q[0]) * exact(p[0], p[1], q[1]) < 0.0
                    && exact(q[0], q[1], p[0]) * exact(q[0], q[1], p[1]) < 0.0
            }));
            prop_assert_eq!(matches!(crossing(&run, &mut Budget::new()), Crossing::At(_)), any);
        }
    }
}
