//! The ramp roll against an independent sweep: wheel centres from the highest of all profile points face by
//! face, the leading wheel by bisection, the drive sampled densely and the lowest samples narrowed.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{
    Facing, LoadingJob, Ramp, Rider, Wheels, ramp_corners, ramp_gap, ramp_roll, ramp_stand, shortest_ramp,
};
use fitup_core::plane::Point;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

/// A machine on a ramp, all in metres and radians, seen forward: backward cases are mirrored beforehand.
#[derive(Debug, Clone)]
struct Case {
    wheels: Wheels,
    lines: Vec<Vec<Point>>,
    ramp: Ramp,
    facing: Facing,
}

/// Profile from the definition: ground, ramp, tail, deck, as points with far ends.
fn profile(ramp: &Ramp) -> Vec<(f64, f64)> {
    let mut points = vec![(-100.0, 0.0), (0.0, 0.0)];
    for (angle, length) in [(ramp.angle, ramp.length), (ramp.beaver_angle, ramp.beaver_length)] {
        let (x, z) = points[points.len() - 1];
        points.push((x + length * angle.cos(), z + length * angle.sin()));
    }
    let (x, z) = points[points.len() - 1];
    points.push((x + 100.0, z));
    points
}

fn height(profile: &[(f64, f64)], x: f64) -> f64 {
    for pair in profile.windows(2) {
        let ((ax, az), (bx, bz)) = (pair[0], pair[1]);
        if x <= bx && bx > ax {
            return az + (bz - az) * (x - ax) / (bx - ax);
        }
    }
    profile[profile.len() - 1].1
}

/// Highest centre any point of the profile asks for over `x`.
fn centre(profile: &[(f64, f64)], r: f64, x: f64) -> f64 {
    let mut highest = f64::NEG_INFINITY;
    for pair in profile.windows(2) {
        let ((ax, az), (bx, bz)) = (pair[0], pair[1]);
        if bx <= ax || bx < x - r || ax > x + r {
            continue;
        }
        let m = (bz - az) / (bx - ax);
        let best = (x + r * m / (1.0 + m * m).sqrt()).clamp(ax.max(x - r), bx.min(x + r));
        highest = highest.max(az + m * (best - ax) + (r * r - (best - x) * (best - x)).max(0.0).sqrt());
    }
    highest
}

struct Sweep {
    profile: Vec<(f64, f64)>,
    /// Trailing and leading radius, wheelbase.
    radii: (f64, f64),
    wheelbase: f64,
    /// Points from the trailing contact on level ground, in the direction of travel.
    lines: Vec<Vec<(f64, f64)>>,
}

impl Sweep {
    fn new(case: &Case) -> Self {
        let w = case.wheels.wheelbase;
        let (radii, turn): (_, fn(f64, f64) -> f64) = match case.facing {
            Facing::Forward => ((case.wheels.rear, case.wheels.front), |x, _| x),
            Facing::Backward => ((case.wheels.front, case.wheels.rear), |x, w| w - x),
        };
        let lines = case.lines.iter().map(|line| line.iter().map(|p| (turn(p.x, w), p.y)).collect()).collect();
        Self { profile: profile(&case.ramp), radii, wheelbase: w, lines }
    }

    /// Trailing centre, leading centre and turn from level with the trailing wheel over `x`.
    fn stand(&self, x: f64) -> ((f64, f64), (f64, f64), f64) {
        let (rt, rl) = self.radii;
        let trailing = (x, centre(&self.profile, rt, x));
        let distance = self.wheelbase.hypot(rl - rt);
        let (mut near, mut far) = (x, x + distance);
        for _ in 0..46 {
            let middle = 0.5 * (near + far);
            let gap = (middle - trailing.0).hypot(centre(&self.profile, rl, middle) - trailing.1);
            if gap < distance { near = middle } else { far = middle }
        }
        let leading = (near, centre(&self.profile, rl, near));
        let turn = (leading.1 - trailing.1).atan2(leading.0 - trailing.0) - (rl - rt).atan2(self.wheelbase);
        (trailing, leading, turn)
    }

    fn world(&self, x: f64) -> Vec<Vec<(f64, f64)>> {
        let (trailing, _, turn) = self.stand(x);
        let (sin, cos) = turn.sin_cos();
        let place = |&(px, pz): &(f64, f64)| {
            let up = pz - self.radii.0;
            (trailing.0 + px * cos - up * sin, trailing.1 + px * sin + up * cos)
        };
        self.lines.iter().map(|line| line.iter().map(place).collect()).collect()
    }

    fn vertical(&self, x: f64) -> f64 {
        let mut least = f64::INFINITY;
        for line in self.world(x) {
            for &(px, pz) in &line {
                least = least.min(pz - height(&self.profile, px));
            }
            for pair in line.windows(2) {
                let ((ax, az), (bx, bz)) = (pair[0], pair[1]);
                for &(kx, kz) in &self.profile {
                    let t = (kx - ax) / (bx - ax);
                    if (0.0..=1.0).contains(&t) {
                        least = least.min(az + t * (bz - az) - kz);
                    }
                }
            }
        }
        least
    }

    /// Least distance, by every end against every piece of the other.
    fn shortest(&self, x: f64) -> f64 {
        let to_piece = |p: (f64, f64), a: (f64, f64), b: (f64, f64)| {
            let (ux, uz) = (b.0 - a.0, b.1 - a.1);
            let square = ux * ux + uz * uz;
            let t = if square > 0.0 { ((p.0 - a.0) * ux + (p.1 - a.1) * uz) / square } else { 0.0 };
            let t = t.clamp(0.0, 1.0);
            (p.0 - a.0 - t * ux).hypot(p.1 - a.1 - t * uz)
        };
        let mut least = f64::INFINITY;
        for line in self.world(x) {
            for &p in &line {
                for pair in self.profile.windows(2) {
                    least = least.min(to_piece(p, pair[0], pair[1]));
                }
            }
            for pair in line.windows(2) {
                for &corner in &self.profile {
                    least = least.min(to_piece(corner, pair[0], pair[1]));
                }
            }
        }
        least
    }

    /// Least of a function over the drive: samples, then the lowest few narrowed by thirds.
    fn least(&self, samples: u32, f: impl Fn(f64) -> f64) -> f64 {
        let xs: Vec<f64> = self.lines.iter().flatten().map(|p| p.0).chain([-0.6, self.wheelbase + 0.6]).collect();
        let (back, ahead) = xs.iter().fold((0.0_f64, 0.0_f64), |(b, a), x| (b.min(*x), a.max(*x)));
        let deck = self.profile[self.profile.len() - 2].0;
        let (from, to) = (-ahead - 0.01, deck - back + 0.01);
        let step = (to - from) / f64::from(samples);
        let values: Vec<(f64, f64)> = (0..=samples).map(|i| from + step * f64::from(i)).map(|x| (f(x), x)).collect();
        let mut lows: Vec<(f64, f64)> = (1..values.len() - 1)
            .filter(|&i| values[i].0 <= values[i - 1].0 && values[i].0 <= values[i + 1].0)
            .map(|i| values[i])
            .collect();
        lows.push(values[0]);
        lows.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut least = f64::INFINITY;
        for &(value, x) in lows.iter().take(3) {
            least = least.min(value);
            let (mut a, mut b) = (x - step, x + step);
            for _ in 0..40 {
                let (p, q) = (a + (b - a) / 3.0, b - (b - a) / 3.0);
                let (fp, fq) = (f(p), f(q));
                least = least.min(fp).min(fq);
                if fp < fq { b = q } else { a = p }
            }
        }
        least
    }
}

fn cases() -> impl Strategy<Value = Case> {
    let point = (-1.8..3.2_f64, 0.1..0.6_f64).prop_map(|(x, z)| Point::new(x, z));
    let line = prop::collection::vec(point, 1..5);
    (
        (0.2..0.6_f64, 0.2..0.6_f64, 1.0..2.2_f64),
        prop::collection::vec(line, 1..4),
        (0.01..1.05_f64, 0.02..4.0_f64, prop::bool::ANY, 0.0..0.5_f64, 0.0..1.5_f64),
        prop::bool::ANY,
    )
        .prop_map(
            |((rear, front, wheelbase), lines, (angle, length, tail, beaver_angle, beaver_length), forward)| Case {
                wheels: Wheels { rear, front, wheelbase },
                lines,
                ramp: Ramp {
                    angle,
                    length,
                    beaver_angle: if tail { beaver_angle } else { 0.0 },
                    beaver_length: if tail { beaver_length } else { 0.0 },
                },
                facing: if forward { Facing::Forward } else { Facing::Backward },
            },
        )
}

fn runner(cases: u32) -> TestRunner {
    let config = Config { cases, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

#[test]
fn the_roll_agrees_with_a_dense_sweep_over_ten_thousand_machines() {
    let (vertical, shortest) = (Cell::new(0.0_f64), Cell::new(0.0_f64));
    let pitch = Cell::new(0.0_f64);
    runner(10_000)
        .run(&cases(), |case| {
            let rider = Rider { wheels: case.wheels, lines: &case.lines };
            let roll = ramp_roll(&rider, &case.ramp, case.facing).expect("these machines roll");
            let nearest = roll.nearest.expect("there is an underside");
            let gap =
                ramp_gap(&rider, &case.ramp, case.facing).expect("these machines roll").expect("has an underside");
            let sweep = Sweep::new(&case);
            let stand = ramp_stand(case.wheels, &case.ramp, case.facing, nearest.rear_axle).expect("sound");
            let stand = stand.expect("stands there");
            let trailing = if case.facing == Facing::Forward { stand.rear.x } else { stand.front.x };
            // The sweep never goes below the least, and at the place reported it finds the same.
            let swept = sweep.least(220, |x| sweep.vertical(x));
            prop_assert!(swept >= nearest.vertical - 1e-8, "missed {swept} below {}", nearest.vertical);
            let there = sweep.vertical(trailing);
            prop_assert!((there - nearest.vertical).abs() < 1e-8, "sweep {there}, roll {}", nearest.vertical);
            vertical.set(vertical.get().max((there.min(swept) - nearest.vertical).abs()));
            if nearest.vertical > 0.001 {
                // Few samples may step over a narrow dip; many do not.
                let samples = [150, 20_000].map(|samples| (samples, gap + 1e-6));
                let mut swept = f64::INFINITY;
                for (samples, enough) in samples {
                    if swept > enough {
                        swept = sweep.least(samples, |x| sweep.shortest(x)).min(sweep.shortest(trailing));
                    }
                }
                let (off, got) = (swept - gap, gap);
                prop_assert!((-1e-8..=1e-6).contains(&off), "sweep {swept}, roll {got}");
                shortest.set(shortest.get().max(off.abs()));
            } else if nearest.vertical <= 0.0 {
                prop_assert!(gap.abs() < 1e-300);
            }
            // The point reported stands at the place reported.
            prop_assert!((stand.pitch - nearest.pitch).abs() < 1e-6);
            prop_assert!(stand.place(nearest.point).distance(nearest.place) < 1e-6);
            let under = nearest.place.y - height(&sweep.profile, nearest.place.x);
            prop_assert!((under - nearest.vertical).abs() < 1e-7, "{under} at the place, {}", nearest.vertical);
            let sign = if case.facing == Facing::Forward { 1.0 } else { -1.0 };
            let turns = |f: fn(f64, f64) -> f64, start: f64| {
                (0..120).map(|i| sign * sweep.stand(-3.0 + f64::from(i) * 0.06).2).fold(start, f)
            };
            let (low, high) = (turns(f64::min, f64::INFINITY), turns(f64::max, f64::NEG_INFINITY));
            prop_assert!(low >= roll.least_pitch - 1e-9 && high <= roll.greatest_pitch + 1e-9);
            pitch.set(pitch.get().max(low - roll.least_pitch).max(roll.greatest_pitch - high));
            Ok(())
        })
        .expect("all agree");
    println!(
        "ramp roll, 10000 machines: greatest disagreement vertical {:.1e} m, shortest {:.1e} m, pitch (sampled each 60 mm) {:.1e} rad",
        vertical.get(),
        shortest.get(),
        pitch.get()
    );
}

#[test]
fn stands_agree_with_the_sweeps_along_the_whole_drive() {
    let worst = Cell::new(0.0_f64);
    runner(2_000)
        .run(&cases(), |case| {
            let sweep = Sweep::new(&case);
            for i in 0..40 {
                let (trailing, leading, turn) = sweep.stand(-3.0 + f64::from(i) * 0.23);
                let (rear, front, pitch) = match case.facing {
                    Facing::Forward => (trailing, leading, turn),
                    Facing::Backward => (leading, trailing, -turn),
                };
                let stand = ramp_stand(case.wheels, &case.ramp, case.facing, rear.0).expect("sound").expect("stands");
                let off = stand
                    .rear
                    .distance(rear.into())
                    .max(stand.front.distance(front.into()))
                    .max((stand.pitch - pitch).abs());
                prop_assert!(off < 1e-8, "off by {off} at {}", rear.0);
                worst.set(worst.get().max(off));
            }
            Ok(())
        })
        .expect("all agree");
    println!("ramp stand, 80000 stands: greatest disagreement {:.1e}", worst.get());
}

#[test]
fn the_shortest_ramp_just_clears_and_every_longer_one_too() {
    let worst = Cell::new(0.0_f64);
    let found = Cell::new(0);
    runner(200)
        .run(&(cases(), 0.2..1.0_f64, 0.0..1.0_f64), |(case, deck, share)| {
            let rider = Rider { wheels: case.wheels, lines: &case.lines };
            let level = case.lines.iter().flatten().map(|p| p.y).fold(f64::INFINITY, f64::min);
            let job = LoadingJob {
                deck_height: deck,
                clearance: level * share - 0.05,
                beaver_angle: case.ramp.beaver_angle.min(0.2),
                beaver_length: case.ramp.beaver_length.min(0.5),
                longest: 30.0,
                facing: case.facing,
            };
            let rise = deck - job.beaver_length * job.beaver_angle.sin();
            let swept = |length: f64| {
                let ramp = Ramp {
                    angle: (rise / length).asin(),
                    length,
                    beaver_angle: job.beaver_angle,
                    beaver_length: job.beaver_length,
                };
                let sweep = Sweep::new(&Case { ramp, ..case.clone() });
                sweep.least(300, |x| sweep.vertical(x))
            };
            let Some(shortest) = shortest_ramp(&rider, &job).expect("sound") else {
                prop_assert!(swept(30.0) < job.clearance + 1e-6);
                return Ok(());
            };
            prop_assert!((shortest.length * shortest.angle.sin() - rise).abs() < 1e-9);
            prop_assert!(swept(shortest.length) >= job.clearance - 1e-6);
            for k in 1..20 {
                let length = shortest.length * (30.0 / shortest.length).powf(f64::from(k) / 20.0);
                prop_assert!(swept(length) >= job.clearance - 1e-6, "not clear at {length}");
            }
            if shortest.angle < 1.047 {
                let over = swept(shortest.length - 2e-5) - job.clearance;
                prop_assert!(over < 1e-7, "a shorter one would clear by {over}");
                worst.set(worst.get().max((swept(shortest.length) - job.clearance).abs()));
                found.set(found.get() + 1);
            }
            Ok(())
        })
        .expect("all agree");
    println!("shortest ramp, {} with a limit: greatest difference from the margin {:.1e} m", found.get(), worst.get());
    assert!(found.get() > 100);
}

#[test]
fn the_profile_in_the_pictures_is_the_profile_driven_over() {
    let ramp = Ramp { angle: 0.3, length: 2.0, beaver_angle: 0.1, beaver_length: 1.0 };
    let corners = ramp_corners(&ramp).expect("sound");
    for (corner, own) in corners.iter().zip(&profile(&ramp)[1..4]) {
        assert!(corner.distance((*own).into()) < 1e-12);
    }
}
