//! The digging arm against its own attitudes, gone through in steps.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{DiggingArm, Swivel, attitude, digging, loading};
use fitup_core::plane::Point;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;
use std::f64::consts::{FRAC_PI_2, PI};

fn runner(cases: u32) -> TestRunner {
    let config = Config { cases, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

fn swivel(least: std::ops::Range<f64>, span: std::ops::Range<f64>) -> impl Strategy<Value = Swivel> {
    (least, span).prop_map(|(least, span)| Swivel { least: least.to_radians(), greatest: (least + span).to_radians() })
}

fn arms() -> impl Strategy<Value = DiggingArm> {
    (
        (-0.3..0.5_f64, 0.2..1.0_f64),
        (0.6..2.0_f64, 0.5..1.6_f64, prop_oneof![Just(0.0), 0.2..0.9_f64]),
        (swivel(-80.0..10.0, 0.0..150.0), swivel(-170.0..-60.0, 0.0..180.0), swivel(-140.0..0.0, 0.0..200.0)),
    )
        .prop_map(|((u, z), (boom, dipper, bucket), (b, d, g))| DiggingArm {
            foot: Point::new(u, z),
            boom,
            dipper,
            bucket,
            boom_elevation: b,
            dipper_relative: d,
            bucket_relative: g,
        })
}

fn tip(arm: &DiggingArm, [b, d, g]: [f64; 3]) -> (f64, f64) {
    let at = |length: f64, angle: f64| (length * angle.cos(), length * angle.sin());
    let (one, two, three) = (at(arm.boom, b), at(arm.dipper, b + d), at(arm.bucket, b + d + g));
    (arm.foot.x + one.0 + two.0 + three.0, arm.foot.y + one.1 + two.1 + three.1)
}

fn swivels(arm: &DiggingArm) -> [Swivel; 3] {
    [arm.boom_elevation, arm.dipper_relative, arm.bucket_relative]
}

fn step(swivel: Swivel, share: f64) -> f64 {
    swivel.least + (swivel.greatest - swivel.least) * share
}

fn within(swivel: Swivel, angle: f64) -> bool {
    let past = (angle - swivel.least).rem_euclid(2.0 * PI);
    past <= swivel.greatest - swivel.least
}

/// Greatest of a value over all attitudes: a grid, then the best few, and the best with each joint anywhere or at either of
/// its limits and held there, moved a little and a little less.
fn greatest(arm: &DiggingArm, value: impl Fn([f64; 3]) -> f64) -> f64 {
    let n = 11_u32;
    let share = |i: u32| f64::from(i) / f64::from(n - 1);
    let mut grid = Vec::new();
    for i in 0..n {
        for j in 0..n {
            for k in 0..n {
                let shares = [share(i), share(j), share(k)];
                grid.push((value(angles(arm, shares)), shares));
            }
        }
    }
    grid.sort_by(|a, b| b.0.total_cmp(&a.0));
    let held = [None, Some(0.0), Some(1.0)];
    let limits = (0..27).map(|at| [held[at % 3], held[at / 3 % 3], held[at / 9]]);
    let is_at = |shares: &[f64; 3], limits: &[Option<f64>; 3]| {
        shares.iter().zip(limits).all(|(share, limit)| limit.is_none_or(|limit| limit == *share))
    };
    let at_limits: Vec<(f64, [f64; 3], [Option<f64>; 3])> = limits
        .filter_map(|limits| {
            let (value, shares) = grid.iter().find(|(_, shares)| is_at(shares, &limits))?;
            Some((*value, *shares, limits))
        })
        .collect();
    // A joint that cannot move gives each value eleven times: they are one place to start from.
    grid.dedup_by(|a, b| (a.0 - b.0).abs() < 1e-12);
    let mut best = f64::NEG_INFINITY;
    let best_few = grid.into_iter().take(6).map(|(value, shares)| (value, shares, [None; 3]));
    for (mut here, mut shares, limits) in best_few.chain(at_limits) {
        let mut width = 0.1;
        while width > 1e-9 {
            let mut moved = false;
            for joint in (0..3).filter(|&joint| limits[joint].is_none()) {
                for sign in [1.0, -1.0] {
                    let mut next = shares;
                    next[joint] = (next[joint] + sign * width).clamp(0.0, 1.0);
                    let there = value(angles(arm, next));
                    if there > here {
                        (here, shares, moved) = (there, next, true);
                    }
                }
            }
            if !moved {
                width /= 2.0;
            }
        }
        best = best.max(here);
    }
    best
}

fn angles(arm: &DiggingArm, shares: [f64; 3]) -> [f64; 3] {
    let [b, d, g] = swivels(arm);
    [step(b, shares[0]), step(d, shares[1]), step(g, shares[2])]
}

#[test]
fn depth_and_height_are_the_extremes_of_all_attitudes() {
    let worst = Cell::new(0.0_f64);
    runner(10_000)
        .run(&arms(), |arm| {
            let found = digging(&arm, None).expect("sound");
            let deepest = greatest(&arm, |a| -tip(&arm, a).1);
            let highest = greatest(&arm, |a| tip(&arm, a).1);
            for (got, stepped) in [(found.depth, deepest), (found.height, highest)] {
                prop_assert!(stepped <= got + 1e-9, "an attitude goes beyond: {stepped} against {got}");
                prop_assert!(stepped >= got - 1e-6, "no attitude found near: {stepped} against {got}");
                worst.set(worst.get().max((got - stepped).abs()));
            }
            Ok(())
        })
        .expect("all agree");
    println!("arm depth and height, 10000 arms: greatest disagreement {:.1e} m", worst.get());
}

#[test]
fn reach_at_a_height_is_attained_and_never_exceeded() {
    let worst = Cell::new(0.0_f64);
    let reached = Cell::new(0);
    runner(10_000)
        .run(&(arms(), -1.5..2.5_f64), |(arm, height)| {
            let found = digging(&arm, None).expect("sound").reach_at(height);
            // Two joints in steps, the third turned until the tip has the height.
            let mut stepped = f64::NEG_INFINITY;
            let n = 24;
            for i in 0..=n {
                for j in 0..=n {
                    let (s, t) = (f64::from(i) / f64::from(n), f64::from(j) / f64::from(n));
                    for joint in 0..3 {
                        let mut at = angles(&arm, [s, if joint == 0 { s } else { t }, t]);
                        if joint == 0 {
                            at[1] = step(arm.dipper_relative, s);
                        }
                        for angle in turned_to(&arm, at, joint, height) {
                            at[joint] = angle;
                            stepped = stepped.max(tip(&arm, at).0);
                        }
                    }
                }
            }
            match found {
                None => prop_assert!(stepped == f64::NEG_INFINITY, "an attitude comes there: {stepped}"),
                Some(found) => {
                    prop_assert!(stepped <= found + 1e-9, "an attitude reaches farther: {stepped} against {found}");
                    let at = attitude(&arm, Point::new(found, height)).expect("sound");
                    let at = at.expect("the reach is within reach");
                    prop_assert!(at.tip(&arm).distance(Point::new(found, height)) < 1e-6);
                    if stepped.is_finite() {
                        worst.set(worst.get().max(found - stepped));
                        reached.set(reached.get() + 1);
                    }
                }
            }
            Ok(())
        })
        .expect("all agree");
    println!(
        "arm reach, 10000 arms and heights ({} within reach): steps of a twenty-fourth fall short by at most {:.1e} m, none goes beyond",
        reached.get(),
        worst.get()
    );
    assert!(reached.get() > 3000);
}

/// Angles of one joint that bring the tip to a height, the other two held.
fn turned_to(arm: &DiggingArm, at: [f64; 3], joint: usize, height: f64) -> Vec<f64> {
    let mut zeroed = at;
    zeroed[joint] = 0.0;
    let before: f64 = at[..joint].iter().sum();
    let pivot = match joint {
        0 => (arm.foot.x, arm.foot.y),
        1 => (arm.foot.x + arm.boom * at[0].cos(), arm.foot.y + arm.boom * at[0].sin()),
        _ => {
            let two = at[0] + at[1];
            (
                arm.foot.x + arm.boom * at[0].cos() + arm.dipper * two.cos(),
                arm.foot.y + arm.boom * at[0].sin() + arm.dipper * two.sin(),
            )
        }
    };
    let end = tip(arm, zeroed);
    let (along, up) = (end.0 - pivot.0, end.1 - pivot.1);
    let (length, off) = (along.hypot(up), up.atan2(along) - before);
    let sine = (height - pivot.1) / length;
    if sine.abs() > 1.0 || length == 0.0 {
        return Vec::new();
    }
    let up = sine.asin();
    [up, PI - up].into_iter().map(|a| a - off - before).filter(|a| within(swivels(arm)[joint], *a)).collect()
}

/// Whether a point is reached with some direction of the bucket, gone through in steps.
fn scanned(arm: &DiggingArm, point: (f64, f64), steps: u32) -> bool {
    (0..steps).any(|i| {
        let direction = 2.0 * PI * f64::from(i) / f64::from(steps);
        let wrist = (point.0 - arm.bucket * direction.cos(), point.1 - arm.bucket * direction.sin());
        let (x, z) = (wrist.0 - arm.foot.x, wrist.1 - arm.foot.y);
        let square = x * x + z * z;
        let cosine = (square - arm.boom * arm.boom - arm.dipper * arm.dipper) / (2.0 * arm.boom * arm.dipper);
        if cosine.abs() > 1.0 {
            return false;
        }
        [cosine.acos(), -cosine.acos()].into_iter().any(|d| {
            let b = z.atan2(x) - (arm.dipper * d.sin()).atan2(arm.boom + arm.dipper * d.cos());
            within(arm.boom_elevation, b)
                && within(arm.dipper_relative, d)
                && (arm.bucket == 0.0 || within(arm.bucket_relative, direction - b - d))
        })
    })
}

#[test]
fn attitudes_found_lead_to_the_point_and_none_is_missed() {
    let (both, worst) = (Cell::new(0), Cell::new(0.0_f64));
    runner(10_000)
        .run(&(arms(), -2.0..4.0_f64, -2.5..3.5_f64), |(arm, u, z)| {
            let point = Point::new(u, z);
            match attitude(&arm, point).expect("sound") {
                Some(found) => {
                    prop_assert!(found.tip(&arm).distance(point) < 1e-6);
                    worst.set(worst.get().max(found.tip(&arm).distance(point)));
                    both.set(both.get() + 1);
                }
                None => prop_assert!(!scanned(&arm, (u, z), 1440), "scanning finds an attitude"),
            }
            Ok(())
        })
        .expect("all agree");
    println!(
        "arm attitude, 10000 points ({} within reach): tip off by at most {:.1e} m, none missed",
        both.get(),
        worst.get()
    );
    assert!(both.get() > 500);
}

#[test]
fn no_deeper_flat_bottom_is_found_by_scanning() {
    let cut = Cell::new(0);
    runner(10_000)
        .run(&(arms(), 0.1..1.2_f64, prop::array::uniform2(0.001..1.0_f64)), |(arm, length, shares)| {
            let found = digging(&arm, Some(length)).expect("sound");
            let from = found.flat_depth.unwrap_or(0.0);
            let cell = length / 12.0;
            let run = |depth: f64, reached: &dyn Fn((f64, f64)) -> bool| {
                let (mut most, mut now) = (0, 0);
                for i in -50..50 {
                    now = if reached((f64::from(i) * cell, -depth)) { now + 1 } else { 0 };
                    most = most.max(now);
                }
                most
            };
            // Deeper than found, no run of cells is longer than the length.
            for share in shares {
                let depth = from + (found.depth - from) * share + 1e-4;
                if found.depth > 0.0 {
                    let most = run(depth, &|p| scanned(&arm, p, 72));
                    prop_assert!(most <= 13, "{most} cells of a twelfth at {depth}, found {from}");
                }
            }
            // No length asks for no stretch.
            let point = digging(&arm, Some(0.0)).expect("sound").flat_depth;
            let deepest = (found.depth > 0.0).then_some(found.depth);
            prop_assert!(point.unwrap_or(0.0) - deepest.unwrap_or(0.0) < 1e-9 && point.is_some() == deepest.is_some());
            if let Some(depth) = found.flat_depth {
                prop_assert!(depth <= found.depth + 1e-9);
                let reached = |(u, z): (f64, f64)| attitude(&arm, Point::new(u, z)).is_ok_and(|found| found.is_some());
                let most = run(depth, &reached);
                prop_assert!(most >= 11 || 50.0 * cell < 4.0, "only {most} cells of a twelfth at {depth}");
                cut.set(cut.get() + 1);
            }
            Ok(())
        })
        .expect("all agree");
    println!("flat depth, 10000 arms ({} that cut): no scanned depth goes deeper", cut.get());
    assert!(cut.get() > 1000);
}

#[test]
fn no_attitude_loads_higher() {
    let hangs = Cell::new(0);
    runner(10_000)
        .run(&arms(), |arm| {
            let found = loading(&arm).expect("sound");
            let mut stepped = f64::NEG_INFINITY;
            for i in 0..=40 {
                for j in 0..=40 {
                    let (b, d) =
                        (step(arm.boom_elevation, f64::from(i) / 40.0), step(arm.dipper_relative, f64::from(j) / 40.0));
                    let g = -FRAC_PI_2 - b - d;
                    if within(arm.bucket_relative, g) {
                        stepped = stepped.max(tip(&arm, [b, d, g]).1);
                    }
                }
            }
            match found {
                None => prop_assert!(stepped == f64::NEG_INFINITY),
                Some(found) => {
                    prop_assert!(stepped <= found.height + 1e-9);
                    let g = -FRAC_PI_2 - found.boom - found.dipper;
                    let at = tip(&arm, [found.boom, found.dipper, g]);
                    prop_assert!((at.1 - found.height).abs() < 1e-12 && (at.0 - found.reach).abs() < 1e-12);
                    hangs.set(hangs.get() + 1);
                }
            }
            Ok(())
        })
        .expect("all agree");
    println!("loading height, 10000 arms ({} that hang the bucket): no attitude is higher", hangs.get());
}
