//! What a turn sweeps, against a footprint turned in steps.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{Block, swing, turned};
use fitup_core::plane::Point;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;
use std::f64::consts::FRAC_PI_2;

fn runner() -> TestRunner {
    let config = Config { cases: 10_000, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

/// Points round a block's rectangle, so many on each side, and the side points abreast of the axle.
fn around(block: Block, steps: u32) -> Vec<(f64, f64)> {
    let mut points = Vec::new();
    for i in 0..=steps {
        let t = f64::from(i) / f64::from(steps);
        let (x, y) = (block.rear + (block.front - block.rear) * t, block.half_width * (2.0 * t - 1.0));
        points.extend([(x, block.half_width), (x, -block.half_width), (block.rear, y), (block.front, y)]);
    }
    if block.rear <= 0.0 && block.front >= 0.0 {
        points.extend([(0.0, block.half_width), (0.0, -block.half_width)]);
    }
    points
}

fn blocks() -> impl Strategy<Value = (Block, Option<Block>)> {
    let body = (0.0..1.5_f64, 0.1..2.5_f64, 0.3..0.9_f64).prop_map(|(rear, front, half_width)| Block {
        rear: -rear,
        front,
        half_width,
    });
    let second = (-2.5..2.5_f64, 0.1..1.0_f64, 0.1..1.1_f64).prop_map(|(rear, length, half_width)| Block {
        rear,
        front: rear + length,
        half_width,
    });
    (body, prop::option::of(second))
}

#[test]
fn radii_and_swing_out_agree_with_a_footprint_turned_in_steps() {
    let worst = Cell::new(0.0_f64);
    runner()
        .run(&(blocks(), 0.0..4.0_f64, prop::option::of(0.0..1.5_f64)), |((body, second), radius, heading)| {
            let found = swing(radius, heading, body, second).expect("sound");
            let blocks: Vec<Block> = std::iter::once(body).chain(second).collect();
            let points: Vec<(f64, f64)> = blocks.iter().flat_map(|b| around(*b, 40)).collect();
            let distance = |(x, y): (f64, f64)| x.hypot(y - radius);
            let outer = points.iter().map(|p| distance(*p)).fold(0.0, f64::max);
            let covers = blocks.iter().any(|b| b.rear <= 0.0 && b.front >= 0.0 && b.half_width >= radius);
            let inner = points.iter().map(|p| distance(*p)).fold(f64::INFINITY, f64::min);
            prop_assert!((found.outer_radius - outer).abs() < 1e-12);
            // A corner or an abreast point is among the samples wherever it is the nearest; otherwise a side is.
            let inner = if covers { 0.0 } else { inner };
            prop_assert!(found.inner_radius <= inner + 1e-12 && inner - found.inner_radius < 0.03);
            prop_assert!((found.swept_width() - (found.outer_radius - found.inner_radius)).abs() < 1e-15);

            // Turn every right corner behind the axle in steps and see how far right it comes.
            let half = blocks.iter().map(|b| b.half_width).fold(0.0, f64::max);
            let end = heading.unwrap_or(FRAC_PI_2);
            let steps = 400_u32;
            let mut reach = f64::NEG_INFINITY;
            let corners = blocks.iter().flat_map(|b| [(b.rear, -b.half_width), (b.front, -b.half_width)]);
            for (x, y) in corners.filter(|c| c.0 < 0.0) {
                for i in 0..=steps {
                    let (sin, cos) = (end * f64::from(i) / f64::from(steps)).sin_cos();
                    reach = reach.max(-(radius + x * sin + (y - radius) * cos));
                }
            }
            let out = (reach - half).max(0.0);
            let off = found.swing_out - out;
            prop_assert!(off > -1e-12 && off < 5e-5, "{} against {out}", found.swing_out);
            worst.set(worst.get().max(off));
            Ok(())
        })
        .expect("all agree");
    println!("swing-out, 10000 footprints, 401 headings: greatest disagreement {:.1e} m", worst.get());
}

#[test]
fn swing_out_falls_with_the_radius_and_vanishes_without_overhang() {
    runner()
        .run(&(blocks(), 0.0..4.0_f64, 0.0..2.0_f64), |((body, _), radius, more)| {
            let out = |radius, body| swing(radius, None, body, None).expect("sound").swing_out;
            prop_assert!(out(radius + more, body) <= out(radius, body) + 1e-12);
            let short = Block { rear: 0.0, ..body };
            prop_assert!(out(radius, short).abs() < 1e-300);
            Ok(())
        })
        .expect("all hold");
}

/// Least corridor by driving sampled points through and trying inner corners all along.
fn driven(radius: f64, body: Block, second: Option<Block>) -> f64 {
    let points: Vec<(f64, f64)> = std::iter::once(body).chain(second).flat_map(|b| around(b, 10)).collect();
    let mut swept: Vec<Point> = Vec::new();
    for i in 0..=60 {
        let heading = FRAC_PI_2 * f64::from(i) / 60.0;
        swept.extend(points.iter().map(|&(x, y)| turned(Point::new(x, y), radius, heading)));
    }
    let lowest = swept.iter().map(|p| p.y).fold(f64::INFINITY, f64::min);
    let farthest = swept.iter().map(|p| p.x).fold(f64::NEG_INFINITY, f64::max);
    // Straight in and straight out: what passes far away on either side.
    let inner = std::iter::once(body).chain(second).map(|b| b.half_width).fold(0.0, f64::max);
    swept.push(Point::new(-100.0, inner));
    swept.push(Point::new(radius - inner, 100.0));
    swept.sort_by(|a, b| a.x.total_cmp(&b.x));
    // An inner corner at x lies above everything to its left.
    let (mut above, mut width) = (f64::NEG_INFINITY, f64::INFINITY);
    for p in &swept {
        width = width.min((above - lowest).max(farthest - p.x));
        above = above.max(p.y);
    }
    width
}

#[test]
fn the_corridor_agrees_with_points_driven_through_it() {
    let worst = Cell::new(0.0_f64);
    let tried = Cell::new(0);
    runner()
        .run(&(blocks(), 0.0..4.0_f64), |((body, second), radius)| {
            let Some(corridor) = swing(radius, None, body, second).expect("sound").corridor else {
                let wide = second.is_some_and(|b| b.half_width > body.half_width);
                prop_assert!(wide || radius < body.half_width);
                return Ok(());
            };
            let (width, driven) = (corridor.width(), driven(radius, body, second));
            let off = width - driven;
            // Sampled points let the corner reach a little further in.
            prop_assert!(off > -1e-9 && off < 0.08, "{width} against {driven}");
            worst.set(worst.get().max(off));
            tried.set(tried.get() + 1);
            let gate = corridor.gateway(width).expect("wide enough");
            prop_assert!((gate - width).abs() < 1e-9 || gate < width);
            prop_assert!(corridor.gateway(width + 0.1).expect("wide enough") <= gate);
            Ok(())
        })
        .expect("all agree");
    println!("corridor, {} footprints driven through: greatest disagreement {:.1e} m", tried.get(), worst.get());
    assert!(tried.get() > 4000);
}
