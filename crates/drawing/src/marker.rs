//! Marks of the verdicts: each with a shape of its own, so that none rests on colour alone.
//!
//! Bolts up: a seated bolt head. Bolts up with work: a bolt head in outline with a centre to drill. Check
//! first: a diamond that calls out. Won't mount: a block that stops.

use fitup_core::finding::Verdict;
use fitup_core::plane::Point;

use crate::ink;
use crate::look::{Look, Pen, Tone};
use crate::scene::{Node, Scene};

/// The mark of a verdict on a sheet of its own, `size` millimetres wide and high.
pub fn mark(verdict: Verdict, size: f64) -> Scene {
    let nodes = shape(verdict, Point::new(size / 2.0, size / 2.0), size / 2.2);
    Scene { width: size, height: size, scale: 1.0, nodes, facts: Vec::new() }
}

/// The mark of a verdict, `reach` from its middle to its edge.
pub(crate) fn shape(verdict: Verdict, at: Point, reach: f64) -> Vec<Node> {
    let on = |x: f64, y: f64| at + Point::new(x, y) * reach;
    let solid = Look::new(Pen::Halo, Tone::Verdict(verdict));
    let hollow = Look::new(Pen::Verdict(verdict), Tone::Paper);
    let cut = Look::fill(Tone::Paper);
    let hexagon = |size: f64| {
        [(1.0, 0.0), (0.5, 0.87), (-0.5, 0.87), (-1.0, 0.0), (-0.5, -0.87), (0.5, -0.87)]
            .map(|(x, y)| on(x * size, y * size))
    };
    let bar = |a: Point, b: Point, width: f64| {
        let side = (b - a).quarter_turn() * (width * reach / (2.0 * a.distance(b)));
        [a + side, b + side, b - side, a - side]
    };
    match verdict {
        Verdict::BoltsUp => {
            vec![ink::polygon(solid, &hexagon(1.05)), ink::circle(cut, at, reach * 0.36)]
        }
        Verdict::BoltsUpWithWork => {
            let ink_cut = Look::fill(Tone::Verdict(verdict));
            vec![
                ink::polygon(Look::new(Pen::Halo, Tone::Paper), &hexagon(1.2)),
                ink::polygon(hollow, &hexagon(0.95)),
                ink::polygon(ink_cut, &bar(on(-0.45, 0.0), on(0.45, 0.0), 0.22)),
                ink::polygon(ink_cut, &bar(on(0.0, -0.45), on(0.0, 0.45), 0.22)),
            ]
        }
        Verdict::CheckFirst => {
            let ink_cut = Look::fill(Tone::Verdict(verdict));
            let diamond = |size: f64| [on(0.0, -size), on(size, 0.0), on(0.0, size), on(-size, 0.0)];
            vec![
                ink::polygon(Look::new(Pen::Halo, Tone::Paper), &diamond(1.25)),
                ink::polygon(hollow, &diamond(1.05)),
                ink::polygon(ink_cut, &bar(on(0.0, -0.52), on(0.0, 0.12), 0.22)),
                ink::circle(ink_cut, on(0.0, 0.42), reach * 0.14),
            ]
        }
        Verdict::WontMount => {
            let block = [on(-0.88, -0.88), on(0.88, -0.88), on(0.88, 0.88), on(-0.88, 0.88)];
            vec![
                ink::polygon(solid, &block),
                ink::polygon(cut, &bar(on(-0.45, -0.45), on(0.45, 0.45), 0.25)),
                ink::polygon(cut, &bar(on(0.45, -0.45), on(-0.45, 0.45), 0.25)),
            ]
        }
    }
}

/// Places for marks of `reach` that would otherwise lie over one another: each keeps its place if it
/// can, else it moves along the next free step of a circle round it. Deterministic.
pub(crate) fn spread(places: &[Point], reach: f64) -> Vec<Point> {
    let apart = reach * 2.3;
    let mut out: Vec<Point> = Vec::with_capacity(places.len());
    for &place in places {
        let is_free = |at: Point, out: &[Point]| out.iter().all(|other| other.distance(at) >= apart - 1e-9);
        let mut candidates = vec![place];
        for ring in 1..=6 {
            let radius = apart * 0.5 * f64::from(ring);
            candidates.extend((0..12).map(|i| {
                let angle = core::f64::consts::FRAC_PI_2 + core::f64::consts::FRAC_PI_6 * f64::from(i);
                let unit = Point::unit(angle);
                place + Point::new(unit.x, -unit.y) * radius
            }));
        }
        let found = candidates.into_iter().find(|&at| is_free(at, &out));
        out.push(found.unwrap_or(place));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_verdict_has_a_shape_of_its_own() {
        let outlines: Vec<String> = Verdict::ALL
            .iter()
            .map(|&v| format!("{:?}", mark(v, 10.0).nodes[0]).replace(&format!("{v:?}"), ""))
            .collect();
        for (i, a) in outlines.iter().enumerate() {
            assert!(outlines[i + 1..].iter().all(|b| a != b));
        }
    }

    #[test]
    fn marks_at_one_place_are_moved_apart_and_the_first_stays() {
        let at = Point::new(5.0, 5.0);
        let places = spread(&[at; 5], 2.0);
        assert_eq!(places[0], at);
        for (i, a) in places.iter().enumerate() {
            assert!(places[i + 1..].iter().all(|b| a.distance(*b) >= 4.6 - 1e-6));
        }
    }
}
