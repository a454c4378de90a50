//! End angles and breakover against dense sampling with another form of the tangent, over random undersides.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{EndWheel, Wheels, approach, breakover, departure};
use fitup_core::plane::Point;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

fn runner() -> TestRunner {
    let config = Config { cases: 10_000, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

/// Tangent angle as asin(r / R) − atan((r − z) / d), R the distance from the wheel's centre.
fn tangent(d: f64, z: f64, r: f64) -> Option<f64> {
    let distance = d.hypot(r - z);
    (d > 0.0 && distance >= r).then(|| (r / distance).asin() - (r - z).atan2(d))
}

fn lines(x: std::ops::Range<f64>, z: std::ops::Range<f64>) -> impl Strategy<Value = Vec<Vec<Point>>> {
    let point = (x, z).prop_map(|(x, z)| Point::new(x, z));
    prop::collection::vec(prop::collection::vec(point, 1..6), 1..5)
}

/// Points along every line, each edge in so many steps.
fn sampled(lines: &[Vec<Point>], steps: u32) -> impl Iterator<Item = Point> + '_ {
    let lone = lines.iter().flatten().copied();
    let along = lines.iter().flat_map(move |line| {
        line.windows(2).flat_map(move |pair| {
            let (a, b) = (pair[0], pair[1]);
            (0..=steps).map(move |i| a.lerp(b, f64::from(i) / f64::from(steps)))
        })
    });
    lone.chain(along)
}

#[test]
fn departure_is_the_least_tangent_over_densely_sampled_undersides() {
    let (worst, strict_worst) = (Cell::new(0.0_f64), Cell::new(0.0_f64));
    // Undersides stay above the ground and below the top of the tyre, as machines do.
    runner()
        .run(&(0.3..0.8_f64, lines(-2.5..0.8, 0.01..0.6)), |(radius, lines)| {
            let found = departure(EndWheel { axle: 0.0, radius }, &lines).expect("sound");
            let angles = sampled(&lines, 200).filter_map(|p| tangent(-p.x, p.y, radius));
            let least = angles.fold(f64::INFINITY, f64::min);
            let Some(found) = found else {
                prop_assert!(least == f64::INFINITY);
                return Ok(());
            };
            prop_assert!((found.angle - least).abs() < 1e-12, "{} against {least}", found.angle);
            worst.set(worst.get().max((found.angle - least).abs()));
            // Never less than the shortcut from the contact point, and zero never passed.
            prop_assert!(found.angle >= found.point.y.atan2(-found.point.x) - 1e-12);
            let beyond = sampled(&lines, 200).filter(|p| -p.x >= radius).filter_map(|p| tangent(-p.x, p.y, radius));
            let least = beyond.fold(f64::INFINITY, f64::min);
            match found.strict {
                // Samples do not meet the cut at the tyre's end exactly.
                Some(strict) => {
                    prop_assert!(strict <= least + 1e-12, "{strict} against {least}");
                    prop_assert!(least == f64::INFINITY || strict > least - 0.2);
                    prop_assert!(strict >= found.angle);
                    let cut = strict_by_cuts(&lines, radius);
                    prop_assert!((strict - cut).abs() < 1e-9, "{strict} against {cut}");
                    strict_worst.set(strict_worst.get().max((strict - cut).abs()));
                }
                None => prop_assert!(least == f64::INFINITY),
            }
            Ok(())
        })
        .expect("all agree");
    println!(
        "departure, 10000 undersides: greatest disagreement {:.1e} rad, strict reading {:.1e} rad",
        worst.get(),
        strict_worst.get()
    );
}

/// The strict reading with each edge first cut by bisection at the tyre's end.
fn strict_by_cuts(lines: &[Vec<Point>], r: f64) -> f64 {
    let mut least = f64::INFINITY;
    let mut look = |p: Point| least = least.min(tangent((-p.x).max(r), p.y, r).unwrap_or(f64::INFINITY));
    for line in lines {
        line.iter().filter(|p| -p.x >= r).for_each(|p| look(*p));
        for pair in line.windows(2) {
            let (mut a, mut b) = (pair[0], pair[1]);
            if (-a.x < r) == (-b.x < r) {
                continue;
            }
            for _ in 0..80 {
                let middle = a.lerp(b, 0.5);
                if (-middle.x < r) == (-a.x < r) { a = middle } else { b = middle }
            }
            look(a);
        }
    }
    least
}

#[test]
fn laws_of_the_departure_angle() {
    runner()
        .run(&(0.2..0.8_f64, 0.9..3.0_f64, 0.0..0.9_f64, 0.0..0.5_f64, 0.1..10.0_f64), |(r, d, z, up, scale)| {
            let at = |r: f64, d: f64, z: f64| {
                let found = departure(EndWheel { axle: 0.0, radius: r }, &[[Point::new(-d, z)]]).expect("sound");
                found.expect("limits").angle
            };
            let a = at(r, d, z);
            prop_assert!(at(r, d, z + up) >= a, "rises with the height");
            prop_assert!(at(r, d + up, z) <= a + 1e-15, "falls with the distance");
            prop_assert!((at(r * scale, d * scale, z * scale) - a).abs() < 1e-12, "scale changes nothing");
            prop_assert!(a >= z.atan2(d) - 1e-15);
            // A point above the tangent moved further up changes nothing.
            let lines = [[Point::new(-d, z)], [Point::new(-d, z + 0.1)]];
            let higher = [[Point::new(-d, z)], [Point::new(-d, z + 0.1 + up)]];
            let wheel = EndWheel { axle: 0.0, radius: r };
            prop_assert_eq!(departure(wheel, &lines), departure(wheel, &higher));
            let front = EndWheel { axle: 1.4, radius: r };
            let mirrored = approach(front, &[[Point::new(1.4 + d, z)]]).expect("sound").expect("limits");
            prop_assert!((mirrored.angle - a).abs() < 1e-12);
            Ok(())
        })
        .expect("all hold");
}

#[test]
fn breakover_is_the_least_sum_over_densely_sampled_undersides() {
    let worst = Cell::new(0.0_f64);
    let inside = Cell::new(0);
    let machine = (0.2..0.7_f64, 0.2..0.7_f64, 1.0..2.4_f64);
    runner()
        .run(&(machine, lines(-0.5..2.8, 0.02..1.2)), |((rear, front, wheelbase), lines)| {
            let wheels = Wheels { rear, front, wheelbase };
            let sum = |p: Point| Some(tangent(p.x, p.y, rear)? + tangent(wheelbase - p.x, p.y, front)?);
            let mut least = f64::INFINITY;
            for p in sampled(&lines, 0).filter_map(sum) {
                least = least.min(p);
            }
            let mut lows = Vec::new();
            let steps = 120_u32;
            for pair in lines.iter().flat_map(|line| line.windows(2)) {
                let at = |t: f64| sum(pair[0].lerp(pair[1], t)).unwrap_or(f64::INFINITY);
                let values: Vec<f64> = (0..=steps).map(|i| at(f64::from(i) / f64::from(steps))).collect();
                for i in 0..values.len() {
                    let beside = |k: usize| values.get(k).copied().unwrap_or(f64::INFINITY);
                    if values[i] <= beside(i.wrapping_sub(1)) && values[i] <= beside(i + 1) && values[i].is_finite() {
                        let t = i as f64 / f64::from(steps);
                        lows.push((values[i], pair, t));
                    }
                }
            }
            lows.sort_by(|a, b| a.0.total_cmp(&b.0));
            for (value, pair, t) in lows.into_iter().take(4) {
                least = least.min(value);
                let at = |t: f64| sum(pair[0].lerp(pair[1], t)).unwrap_or(f64::INFINITY);
                let step = 1.0 / f64::from(steps);
                let (mut a, mut b) = ((t - step).max(0.0), (t + step).min(1.0));
                for _ in 0..60 {
                    let (p, q) = (a + (b - a) / 3.0, b - (b - a) / 3.0);
                    least = least.min(at(p)).min(at(q));
                    if at(p) < at(q) { b = q } else { a = p }
                }
            }
            let found = breakover(wheels, &lines).expect("sound");
            let Some(found) = found else {
                prop_assert!(least == f64::INFINITY);
                return Ok(());
            };
            prop_assert!(found.angle <= least + 1e-11, "sampling goes below: {} against {least}", found.angle);
            // The angle is the one seen from the point told. At an axle or a tyre it is a limit, which the
            // formula of this test does not have, and a slit between two tyres can fall between the samples.
            let shortfall = least - found.angle;
            let near = |x: f64, r: f64, by: f64| (x - found.point.x).hypot(r - found.point.y) < r + by;
            let at_axle = found.point.x < 1e-6 || found.point.x > wheelbase - 1e-6;
            let at_limit = at_axle || near(0.0, rear, 1e-6) || near(wheelbase, front, 1e-6);
            let in_slit = near(0.0, rear, 0.02) && near(wheelbase, front, 0.02);
            if !at_limit {
                let seen = sum(found.point).expect("outside both tyres");
                prop_assert!((seen - found.angle).abs() < 1e-9, "{seen} seen from the point of {}", found.angle);
            }
            prop_assert!(
                shortfall < 1e-9 || at_limit || in_slit,
                "{} against {least} at {:?}",
                found.angle,
                found.point
            );
            if !(at_limit || in_slit) {
                worst.set(worst.get().max(shortfall.abs()));
            }
            prop_assert!((found.rear_part + found.front_part - found.angle).abs() < 1e-15);
            let vertices = sampled(&lines, 0).filter_map(sum).fold(f64::INFINITY, f64::min);
            if found.angle < vertices - 1e-6 {
                inside.set(inside.get() + 1);
            }
            Ok(())
        })
        .expect("all agree");
    println!(
        "breakover, 10000 undersides ({} with the least inside an edge): greatest disagreement {:.1e} rad",
        inside.get(),
        worst.get()
    );
    assert!(inside.get() > 1000);
}
