//! Areas that overlap or stand apart, against a general geometry library, over ten thousand random pairs.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::plane::{Bounds, between_x, gap, overlap, overlap_somewhere};
use geo::{Area, BooleanOps, BoundingRect, Distance, Euclidean, LineString, Polygon, Rect, coord};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

const CASES: u32 = 10_000;
/// Pairs that touch within rounding are left to the tests of exact figures.
const TOUCH: f64 = 1e-6;

fn runner() -> TestRunner {
    let config = Config { cases: CASES, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

/// A closed run round a centre, hollow or bulging, that does not cross itself; either way round.
fn area(spread: f64) -> impl Strategy<Value = Vec<(f64, f64)>> {
    let reach = prop::collection::vec(0.2..1.5_f64, 3..12);
    (-spread..spread, -spread..spread, reach, any::<bool>()).prop_map(|(x, y, reach, turned)| {
        let step = std::f64::consts::TAU / reach.len() as f64;
        let mut run: Vec<(f64, f64)> = reach
            .iter()
            .enumerate()
            .map(|(i, r)| {
                let (sin, cos) = (step * (i as f64 + 0.3)).sin_cos();
                (x + r * cos, y + r * sin)
            })
            .collect();
        run.push(run[0]);
        if turned {
            run.reverse();
        }
        run
    })
}

fn polygon(run: &[(f64, f64)]) -> Polygon {
    Polygon::new(LineString::from(run.to_vec()), Vec::new())
}

#[test]
fn gaps_and_overlaps_are_those_of_polygons() {
    let (apart, deep) = (Cell::new(0.0_f64), Cell::new(0.0_f64));
    let (overlapping, hollow) = (Cell::new(0_u32), Cell::new(0_u32));
    runner()
        .run(&(area(0.6), area(2.2)), |(a, b)| {
            let (first, second) = (polygon(&a), polygon(&b));
            let common = first.intersection(&second);
            let distance = Euclidean.distance(&first, &second);
            if common.unsigned_area() < TOUCH && distance < TOUCH {
                return Ok(());
            }
            let bounds = |run: &[(f64, f64)]| Bounds::of(run.iter().copied()).expect("it has points");
            let boxes_meet = bounds(&a).common(bounds(&b), 0.0).is_some();
            prop_assert_eq!(overlap_somewhere(&a, &b), distance == 0.0);
            if distance > 0.0 {
                hollow.set(hollow.get() + u32::from(boxes_meet));
                let got = gap(&a, &b, 10.0).expect("nearer than that");
                apart.set(apart.get().max((got - distance).abs()));
                prop_assert!((got - distance).abs() < 1e-12, "{got} against {distance}");
                prop_assert_eq!(gap(&a, &b, distance * 0.999), None);
                prop_assert_eq!(overlap(&a, &b), 0.0);
            } else {
                overlapping.set(overlapping.get() + 1);
                prop_assert_eq!(gap(&a, &b, 0.0), Some(0.0));
                let rect = common.bounding_rect().expect("it has an area");
                let (got, least) = (overlap(&a, &b), rect.width().min(rect.height()));
                deep.set(deep.get().max((got - least).abs()));
                // The library lays its points on a grid of its own.
                prop_assert!((got - least).abs() < 1e-6, "{got} against {least}");
            }
            prop_assert!((overlap(&a, &b) - overlap(&b, &a)).abs() < 1e-12);
            Ok(())
        })
        .unwrap();
    assert!(overlapping.get() > 1000 && hollow.get() > 500, "one-sided pairs: {overlapping:?}, {hollow:?}");
    println!(
        "areas, {CASES} pairs, {} overlapping: greatest disagreement gap {:.1e}, overlap {:.1e}",
        overlapping.get(),
        apart.get(),
        deep.get()
    );
}

#[test]
fn a_strip_is_the_part_between_two_lines() {
    let worst = Cell::new(0.0_f64);
    runner()
        .run(&(area(0.5), -1.5..1.5_f64, 0.05..1.5_f64), |(run, from, wide)| {
            let strip = Rect::new(coord! { x: from, y: -9.0 }, coord! { x: from + wide, y: 9.0 }).to_polygon();
            let expected = polygon(&run).intersection(&strip).unsigned_area();
            let got = between_x(&run, from, from + wide);
            let got = if got.is_empty() { 0.0 } else { polygon(&got).unsigned_area() };
            worst.set(worst.get().max((got - expected).abs()));
            prop_assert!((got - expected).abs() < 1e-6, "{got} against {expected}");
            Ok(())
        })
        .unwrap();
    println!("strips, {CASES} areas: greatest disagreement {:.1e}", worst.get());
}
