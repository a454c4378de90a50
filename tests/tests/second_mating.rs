//! Closure and tolerance against second methods, over ten thousand random inputs each: the frame is pushed and turned
//! about until nothing gets better; the box of errors is looked at corner by corner, and its bell curve summed up.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::fit::mating::closure::{Allowances, Anchors, closure};
use fitup_core::fit::mating::tolerance::{Contribution, Standing, assess};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

const CASES: u32 = 10_000;

fn runner() -> TestRunner {
    let config = Config { cases: CASES, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

fn note(worst: &Cell<f64>, a: f64, b: f64, allowed: f64) -> Result<(), TestCaseError> {
    let off = (a - b).abs();
    worst.set(worst.get().max(off));
    prop_assert!(off <= allowed, "{a} against {b}, off by {off:e}");
    Ok(())
}

/// The greatest value of a function with one hill, by thirds.
fn highest(mut low: f64, mut high: f64, steps: u32, value: impl Fn(f64) -> f64) -> f64 {
    for _ in 0..steps {
        let third = (high - low) / 3.0;
        if value(low + third) < value(high - third) { low += third } else { high -= third }
    }
    value(0.5 * (low + high))
}

type V = [f64; 2];

fn less(a: V, b: V) -> V {
    [a[0] - b[0], a[1] - b[1]]
}

fn turned(v: V, angle: f64) -> V {
    let (sin, cos) = angle.sin_cos();
    [v[0] * cos - v[1] * sin, v[0] * sin + v[1] * cos]
}

/// What is left at the front anchor, the frame turned by `angle` about its axle anchor and shifted by `shift`.
fn front_gap(frame: V, machine: V, slot: f64, angle: f64, shift: V) -> f64 {
    let off = less(turned(frame, angle), machine);
    ((off[0] + shift[0]).abs() - 0.5 * slot).max(0.0).hypot(off[1] + shift[1])
}

/// Least margin of both anchors, best over all shifts at this angle.
fn best_shift(frame: V, machine: V, a: &Allowances, angle: f64) -> f64 {
    let reach = 0.1;
    highest(-reach, reach, 60, |x| {
        highest(-reach, reach, 60, |z| {
            let front = a.front - front_gap(frame, machine, a.front_slot, angle, [x, z]);
            front.min(a.axle - x.hypot(z))
        })
    })
}

#[test]
fn no_push_and_no_turn_closes_a_frame_better() {
    let (level, pinned, turning) = (Cell::new(0.0), Cell::new(0.0), Cell::new(0.0));
    let near = || [-0.02..0.02_f64, -0.02..0.02_f64];
    let slot = prop_oneof![Just(0.0), 0.0..0.03_f64];
    runner()
        .run(
            &(0.6..1.8_f64, -0.3..0.3_f64, near(), -0.002..0.006_f64, -0.002..0.006_f64, slot),
            |(x, z, off, axle, front, front_slot)| {
                let (of_machine, of_frame) = ([x, z], [x + off[0], z + off[1]]);
                let machine = Anchors { axle: [0.0, 0.4], front: [x, 0.4 + z] };
                let frame = Anchors { axle: [-0.3, 0.1], front: [of_frame[0] - 0.3, of_frame[1] + 0.1] };
                let allowances = Allowances { axle, front, front_slot };
                let closed = closure(&frame, &machine, allowances).expect("plain figures");
                note(&level, closed.margin_level, best_shift(of_frame, of_machine, &allowances, 0.0), 1e-8)?;
                let met = front - front_gap(of_frame, of_machine, front_slot, 0.0, [0.0; 2]);
                note(&pinned, closed.margin_level_pinned, met, 1e-12)?;
                prop_assert_eq!(closed.turning.is_some(), front_slot == 0.0);
                let Some(turned_in) = closed.turning else { return Ok(()) };
                // Frame and machine point nearly alike here, so the best turn is a small one.
                let best =
                    highest(-0.2, 0.2, 70, |angle| front - front_gap(of_frame, of_machine, 0.0, angle, [0.0; 2]));
                note(&turning, turned_in.margin_pinned, best, 1e-9)?;
                // Both anchors share what is left over along the span.
                let apart = front - best;
                let shared = highest(0.0, 1.0, 70, |share| {
                    (axle - share * apart).min(front - (1.0 - share) * apart).min(axle.min(front))
                });
                note(&turning, turned_in.margin, shared, 1e-9)?;
                let at_turn = front - front_gap(of_frame, of_machine, 0.0, turned_in.turn, [0.0; 2]);
                note(&turning, turned_in.margin_pinned, at_turn, 1e-12)
            },
        )
        .unwrap();
    println!(
        "closure, {CASES} frames: greatest disagreement level {:.1e} m, pinned {:.1e} m, turning {:.1e} m",
        level.get(),
        pinned.get(),
        turning.get()
    );
}

/// Margins at every corner of the box that the errors span: least and greatest.
fn corners(margin: f64, figures: &[Contribution], scale: impl Fn(usize) -> f64) -> (f64, f64) {
    let mut range = (f64::INFINITY, f64::NEG_INFINITY);
    for corner in 0..1u32 << figures.len() {
        let at = figures.iter().enumerate().fold(margin, |sum, (i, figure)| {
            let sign = if corner >> i & 1 == 0 { 1.0 } else { -1.0 };
            sum + sign * figure.sensitivity * figure.half_range * scale(i)
        });
        range = (range.0.min(at), range.1.max(at));
    }
    range
}

/// The factor up to `most` at which a corner just crosses over, by halving; `None` if one has crossed at nothing.
fn crossing(most: f64, crossed: impl Fn(f64) -> bool) -> Option<f64> {
    if crossed(0.0) {
        return None;
    }
    let (mut low, mut high) = (0.0, most);
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if crossed(middle) { high = middle } else { low = middle }
    }
    Some(low)
}

/// Share of the bell curve below `x`, by Simpson's rule.
fn below(x: f64) -> f64 {
    let (end, panels) = (x.abs().min(12.0), 1000);
    let step = end / f64::from(panels);
    let density = |t: f64| (-0.5 * t * t).exp() / std::f64::consts::TAU.sqrt();
    let sum: f64 = (0..panels)
        .map(|i| {
            let from = step * f64::from(i);
            step / 6.0 * (density(from) + 4.0 * density(from + 0.5 * step) + density(from + step))
        })
        .sum();
    0.5 + sum.copysign(x)
}

#[test]
fn a_margin_stands_as_the_corners_of_its_errors_and_the_bell_curve_say() {
    let (worst, probability, settling) = (Cell::new(0.0), Cell::new(0.0), Cell::new(0.0));
    let seen = [const { Cell::new(0u32) }; 5];
    let figure =
        (0.0..1.5_f64, -2.0..2.0_f64).prop_map(|(half_range, sensitivity)| Contribution { half_range, sensitivity });
    runner()
        .run(&(-6.0..6.0_f64, prop::collection::vec(figure, 1..6)), |(margin, figures)| {
            let got = assess(margin, &figures).expect("plain figures");
            let (least, most) = corners(margin, &figures, |_| 1.0);
            note(&worst, got.worst_case, margin - least, 1e-12)?;
            note(&worst, got.worst_case, most - margin, 1e-12)?;
            // The variance of the margin is the sum of what each figure alone brings.
            let alone = |i: usize| corners(0.0, &figures[i..=i], |_| 1.0).1;
            let spread = (0..figures.len()).fold(0.0_f64, |sum, i| sum.hypot(alone(i)));
            note(&worst, got.root_sum_square, spread, 1e-12)?;
            let expected = match () {
                () if least >= 0.0 => Standing::CertainFit,
                () if most < 0.0 => Standing::CertainMisfit,
                () if margin >= spread => Standing::ProbableFit,
                () if margin < -spread => Standing::ProbableMisfit,
                () => Standing::Undecided,
            };
            prop_assert_eq!(got.standing, expected);
            seen[got.standing as usize].set(seen[got.standing as usize].get() + 1);
            note(&probability, got.fit_probability, below(3.0 * margin / spread), 1e-9)?;

            let crossed = |range: (f64, f64)| if margin >= 0.0 { range.0 < 0.0 } else { range.1 > 0.0 };
            let scale = crossing(1.0, |scale| crossed(corners(margin, &figures, |_| scale)));
            note(&settling, got.common_scale.expect("it has effects"), scale.expect("exact figures settle it"), 1e-12)?;
            for (i, figure) in figures.iter().enumerate() {
                let scaled = |by: f64| move |at: usize| if at == i { by } else { 1.0 };
                let found = crossing(1e6, |by| crossed(corners(margin, &figures, scaled(by))));
                match (got.settling_worst_case[i], found) {
                    (Some(got), Some(by)) if by < 1e5 => {
                        note(&settling, got, by * figure.half_range, 1e-8)?;
                    }
                    (got, found) => prop_assert!(got.is_some() == found.is_some() || found.is_some_and(|by| by < 1e-9)),
                }
                let others = (0..figures.len()).filter(|at| *at != i).fold(0.0_f64, |sum, at| sum.hypot(alone(at)));
                let rest = margin.abs() - others;
                prop_assert_eq!(got.settling_root_sum_square[i].is_some(), rest > 0.0);
                if let Some(half_range) = got.settling_root_sum_square[i] {
                    // With that half range the likely error is just the margin.
                    let likely = others.hypot(half_range * figure.sensitivity);
                    note(&settling, likely, margin.abs(), 1e-9)?;
                }
            }
            Ok(())
        })
        .unwrap();
    assert!(seen.iter().all(|count| count.get() > 100), "one-sided margins: {seen:?}");
    println!(
        "tolerance, {CASES} margins: greatest disagreement worst case {:.1e}, probability {:.1e}, settling {:.1e}",
        worst.get(),
        probability.get(),
        settling.get()
    );
}
