//! Marks of the verdicts: each with a shape of its own, so that none rests on colour alone.
//!
//! Bolts up: a disc with a tick. Bolts up with work: a square with a plus. Check first: a diamond
//! with a question mark drawn in lines. Won't mount: a cross of two bars without anything round it.

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
    let tone = Tone::Verdict(verdict);
    let on = |x: f64, y: f64| at + Point::new(x, y) * reach;
    let halo = Look::new(Pen::Halo, tone);
    let glyph = Look::fill(Tone::Paper);
    match verdict {
        Verdict::BoltsUp => vec![
            ink::circle(halo, at, reach * 0.95),
            ink::polygon(
                glyph,
                &[on(-0.52, 0.02), on(-0.35, -0.15), on(-0.12, 0.1), on(0.37, -0.42), on(0.54, -0.25), on(-0.12, 0.44)],
            ),
        ],
        Verdict::BoltsUpWithWork => {
            let (w, l) = (0.14, 0.52);
            vec![
                ink::polygon(halo, &[on(-0.85, -0.85), on(0.85, -0.85), on(0.85, 0.85), on(-0.85, 0.85)]),
                ink::polygon(glyph, &[on(-w, -l), on(w, -l), on(w, l), on(-w, l)]),
                ink::polygon(glyph, &[on(-l, -w), on(l, -w), on(l, w), on(-l, w)]),
            ]
        }
        Verdict::CheckFirst => vec![
            ink::polygon(halo, &[on(0.0, -1.15), on(1.15, 0.0), on(0.0, 1.15), on(-1.15, 0.0)]),
            ink::polygon(
                glyph,
                &[
                    on(-0.36, -0.2),
                    on(-0.32, -0.46),
                    on(0.0, -0.66),
                    on(0.32, -0.46),
                    on(0.36, -0.2),
                    on(0.12, 0.06),
                    on(0.12, 0.2),
                    on(-0.12, 0.2),
                    on(-0.12, -0.02),
                    on(0.11, -0.24),
                    on(0.0, -0.42),
                    on(-0.12, -0.34),
                    on(-0.14, -0.2),
                ],
            ),
            ink::circle(glyph, on(0.0, 0.46), reach * 0.15),
        ],
        Verdict::WontMount => {
            let (a, b) = (0.72, 0.26);
            let bars = [
                on(-a - b, -a + b),
                on(-a + b, -a - b),
                on(0.0, -2.0 * b),
                on(a - b, -a - b),
                on(a + b, -a + b),
                on(2.0 * b, 0.0),
                on(a + b, a - b),
                on(a - b, a + b),
                on(0.0, 2.0 * b),
                on(-a + b, a + b),
                on(-a - b, a - b),
                on(-2.0 * b, 0.0),
            ];
            vec![ink::polygon(halo, &bars)]
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
