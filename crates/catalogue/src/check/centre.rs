//! Whether a centre of gravity can be where it is said to be: inside the convex hull of what
//! has the mass.

use fitup_core::order;

/// A point of a view.
type Point = (f64, f64);

/// How far outside the hull a centre may lie, metres: outlines are drawn to a millimetre or so.
/// Common practice, no source.
const ALLOWANCE: f64 = 0.001;

/// Whether a point lies in the convex hull of others, [`ALLOWANCE`] given. No points: yes.
pub fn is_inside(centre: Point, points: &[Point]) -> bool {
    let hull = hull(points);
    match hull.as_slice() {
        [] => true,
        [one] => libm::hypot(centre.0 - one.0, centre.1 - one.1) <= ALLOWANCE,
        _ => (0..hull.len()).all(|i| {
            let (a, b) = (hull[i], hull[(i + 1) % hull.len()]);
            let length = libm::hypot(b.0 - a.0, b.1 - a.1);
            turn(a, b, centre) >= -ALLOWANCE * length
        }),
    }
}

/// The corners of the convex hull, counter-clockwise (Andrew's monotone chain).
fn hull(points: &[Point]) -> Vec<Point> {
    let mut sorted = points.to_vec();
    order::sort(&mut sorted, |a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
    sorted.dedup();
    if sorted.len() < 3 {
        return sorted;
    }
    let chain = |points: &mut dyn Iterator<Item = Point>| {
        let mut chain: Vec<Point> = Vec::new();
        for point in points {
            while chain.len() >= 2 && turn(chain[chain.len() - 2], chain[chain.len() - 1], point) <= 0.0 {
                chain.pop();
            }
            chain.push(point);
        }
        chain.pop();
        chain
    };
    let mut corners = chain(&mut sorted.iter().copied());
    corners.extend(chain(&mut sorted.iter().rev().copied()));
    corners
}

/// Twice the area of the triangle: positive when `c` is to the left of the line from `a` to `b`.
fn turn(a: Point, b: Point, c: Point) -> f64 {
    (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_centre_lies_in_the_hull_of_a_hollow_shape_too() {
        let horseshoe =
            [(0.0, 0.0), (3.0, 0.0), (3.0, 3.0), (2.0, 3.0), (2.0, 1.0), (1.0, 1.0), (1.0, 3.0), (0.0, 3.0)];
        assert!(is_inside((1.5, 2.0), &horseshoe));
        assert!(is_inside((3.0005, 1.0), &horseshoe));
        assert!(!is_inside((3.01, 1.0), &horseshoe));
        assert!(!is_inside((1.5, -0.1), &horseshoe));
    }

    #[test]
    fn few_points_are_judged_too() {
        assert!(is_inside((5.0, 5.0), &[]));
        assert!(is_inside((1.0, 1.0), &[(1.0, 1.0)]));
        assert!(!is_inside((1.0, 2.0), &[(1.0, 1.0)]));
        assert!(!is_inside((1.0, 2.0), &[(0.0, 0.0), (2.0, 0.0)]));
    }
}
