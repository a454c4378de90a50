//! Mating in space against second methods: plates laid as bodies of points, the frame shaken within the play of its axle
//! bolts until nothing gets better, and the limits of its freedom looked for by trying.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, Limits, centred, facing_pattern, lay_on};
use fitup_core::fit::mating::closure_in_space::{Allowed, front_met};
use fitup_core::fit::mating::facing::{PortFrame, joined};
use fitup_core::fit::mating::freedom::{Anchor, Held, freedom};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

fn runner(cases: u32) -> TestRunner {
    let config = Config { cases, failure_persistence: None, max_shrink_iters: 20, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

type V = [f64; 3];

const UP: V = [0.0, 0.0, 1.0];

fn face(at: V, faces: V) -> PortFrame {
    PortFrame::new(at, faces, UP).expect("square")
}

/// A small stream of numbers from 0 to 1, of its own (splitmix64).
struct Draws(u64);

impl Draws {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    fn signed(&mut self) -> f64 {
        2.0 * self.next() - 1.0
    }
}

/// A body of two plates is cut along a plane: what faces what is known from the points in space, not from any convention. A pattern
/// drilled through both, each then written as one looks at its own face, goes on; and the lay puts every hole on its own.
#[test]
fn holes_drilled_through_two_plates_at_once_meet_again() {
    let mirrored_fits = Cell::new(0);
    runner(600)
        .run(
            &(
                proptest::collection::vec((-0.2..0.2_f64, -0.15..0.15_f64), 4..6),
                (-0.3..0.3_f64, -0.3..0.3_f64, -0.2..0.2_f64),
                0..4usize,
            ),
            |(points, (along, up, lift), way)| {
                let looks = [[0.0, 1.0, 0.0], [0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [-1.0, 0.0, 0.0]][way];
                let carrier = face([0.1, 0.2, 0.3], looks);
                // The carried port has its reference point elsewhere on the plate.
                let right = carrier.right();
                let at = [0, 1, 2].map(|i| carrier.at()[i] + along * right[i] + UP[i] * (up + lift));
                let carried = face(at, looks.map(|part: f64| -part));
                let drilled: Vec<V> = points.iter().map(|&(u, v)| carrier.point(u, v, 0.0)).collect();
                let written = |port: &PortFrame| -> Vec<Hole> {
                    drilled.iter().map(|&hole| port.seen(hole)).map(|[u, v, _]| Hole::plain(u, v, 0.0125)).collect()
                };
                let (a, b) = (written(&carrier), written(&carried));
                let back = facing_pattern(&b);
                let registered = lay_on(&a, &back, 0.012, a.len(), Limits::UPRIGHT).expect("plain figures");
                let best = registered.found().expect("few holes");
                prop_assert!(best.fits());
                // The item, wherever its own axes lie, goes back to where it was drilled.
                let lay = centred(&a, &back, 0.012, best);
                let place = joined(&carrier, &carried, &lay, 0.0);
                for &hole in &drilled {
                    let off = place.point(hole);
                    let off = (0..3).map(|i| (off[i] - hole[i]).powi(2)).sum::<f64>().sqrt();
                    prop_assert!(off < 6e-4, "off by {off}");
                }
                // Unmirrored it is another plate, but for patterns that are their own mirror image to within the play.
                let unmirrored = lay_on(&a, &b, 0.012, a.len(), Flip::Forbidden).expect("plain figures");
                mirrored_fits.set(
                    mirrored_fits.get()
                        + u32::from(unmirrored.found().is_some_and(fitup_core::fit::mating::bolt_pattern::Lay::fits)),
                );
                Ok(())
            },
        )
        .unwrap();
    assert!(mirrored_fits.get() < 10, "{} of 600", mirrored_fits.get());
}

/// A frame held at the axle and at the front, as plain figures: a second, flat way to compute where the holes come to lie.
#[derive(Debug, Clone)]
struct Case {
    /// Places of the axle bolts about the axle port, metres; their play.
    axle: Vec<[f64; 2]>,
    axle_play: f64,
    front: Vec<[f64; 2]>,
    front_play: f64,
    /// The frame's front port less the machine's: x, y, z.
    off: V,
    /// Which way the axle faces look: 0 left, 1 down.
    axle_looks: usize,
    slot: f64,
    side_play: f64,
}

const FRONT_AT: V = [0.9, 0.3, 0.42];
const AXLE_AT: V = [0.1, 0.3, 0.4];
const GAP: [f64; 2] = [-0.001, 0.002];

impl Case {
    /// Axle bolt places in space, before any motion.
    fn axle_points(&self) -> Vec<V> {
        let place = |&[a, b]: &[f64; 2]| match self.axle_looks {
            0 => [AXLE_AT[0] + a, AXLE_AT[1], AXLE_AT[2] + b],
            _ => [AXLE_AT[0] + a, AXLE_AT[1] + b, AXLE_AT[2]],
        };
        self.axle.iter().map(place).collect()
    }

    fn front_points(&self) -> Vec<V> {
        self.front.iter().map(|&[a, b]| [FRONT_AT[0] + a, FRONT_AT[1], FRONT_AT[2] + b]).collect()
    }

    fn anchors(&self) -> (Anchor, Anchor) {
        let left = [0.0, 1.0, 0.0];
        let (looks, up) = if self.axle_looks == 0 { (left, UP) } else { ([0.0, 0.0, -1.0], [1.0, 0.0, 0.0]) };
        let port = |at: V, looks: V, up: V| PortFrame::new(at, looks, up).expect("square");
        let minus = |v: V| v.map(|part| -part);
        let hold = |carrier: &PortFrame, on: &PortFrame, points: &[V], carried: &[V], play: f64, slot: f64| {
            points
                .iter()
                .zip(carried)
                .map(|(&a, &b)| {
                    let ([au, av, _], [bu, bv, _]) = (carrier.seen(a), on.seen(b));
                    Held { carrier_slot: [slot, 0.0], ..Held::round([au, av], [bu, bv], play) }
                })
                .collect()
        };
        let (a, b) = (port(AXLE_AT, looks, up), port(AXLE_AT, minus(looks), up));
        let points = self.axle_points();
        let axle = Anchor { carrier: a, carried: b, held: hold(&a, &b, &points, &points, self.axle_play, 0.0) };
        let (c, d) = (port(FRONT_AT, left, UP), port(FRONT_AT, minus(left), UP));
        let points = self.front_points();
        let held = hold(&c, &d, &points, &points, self.front_play, self.slot);
        let placed = port([0, 1, 2].map(|i| FRONT_AT[i] + self.off[i]), minus(left), UP);
        (axle, Anchor { carrier: c, carried: placed, held })
    }

    /// A point of the frame after a turn about the machine's y or z through the middle of the axle bolts, and a shift.
    fn moved(&self, p: V, [turn, a, b, side]: [f64; 4]) -> V {
        let points = self.axle_points();
        let middle = [0, 1, 2].map(|i| points.iter().map(|p| p[i]).sum::<f64>() / points.len() as f64);
        let (sin, cos) = turn.sin_cos();
        let d = [0, 1, 2].map(|i| p[i] - middle[i]);
        let (turned, shift) = match self.axle_looks {
            // Nose up.
            0 => ([d[0] * cos - d[2] * sin, d[1], d[0] * sin + d[2] * cos], [a, side, b]),
            _ => ([d[0] * cos - d[1] * sin, d[0] * sin + d[1] * cos, d[2]], [a, b, side]),
        };
        [0, 1, 2].map(|i| middle[i] + turned[i] + shift[i])
    }

    /// By how much the axle bolts are out of their play after a motion; not above zero where all go in.
    fn out(&self, way: [f64; 4]) -> f64 {
        let far = |p: V| {
            let moved = self.moved(p, way);
            match self.axle_looks {
                0 => (moved[0] - p[0]).hypot(moved[2] - p[2]),
                _ => (moved[0] - p[0]).hypot(moved[1] - p[1]),
            }
        };
        let worst = self.axle_points().into_iter().map(far).fold(0.0, f64::max) - self.axle_play;
        worst.max(way[3].abs() - self.side_play)
    }

    /// Least of what is left of the front bolts' play and of the gap.
    fn margin(&self, way: [f64; 4]) -> f64 {
        let left = |p: V| {
            let placed = [0, 1, 2].map(|i| p[i] + self.off[i]);
            let moved = self.moved(placed, way);
            let along = ((moved[0] - p[0]).abs() - self.slot).max(0.0);
            let bolts = self.front_play - along.hypot(moved[2] - p[2]);
            let gap = moved[1] - FRONT_AT[1];
            bolts.min(gap - GAP[0]).min(GAP[1] - gap)
        };
        self.front_points().into_iter().map(left).fold(f64::INFINITY, f64::min)
    }

    /// The best margin by shaking: random steps that keep the axle bolts in are kept where they are better, and get smaller.
    fn shaken(&self, draws: &mut Draws) -> f64 {
        let mut best = f64::NEG_INFINITY;
        for _ in 0..4 {
            let (mut at, mut value) = ([0.0; 4], self.margin([0.0; 4]));
            let mut step = 0.05_f64;
            for _ in 0..4_000 {
                let mut next = at;
                for (i, part) in next.iter_mut().enumerate() {
                    let reach = [step, 0.08 * step, 0.08 * step, (0.08 * step).min(self.side_play)][i];
                    *part += draws.signed() * reach;
                }
                if self.out(next) <= 0.0 && self.margin(next) > value {
                    (at, value) = (next, self.margin(next));
                    step *= 1.3;
                } else {
                    step = (step * 0.99_f64).max(1e-7);
                }
            }
            best = best.max(value);
        }
        best
    }
}

fn cases() -> impl Strategy<Value = Case> {
    let places = |spread: f64, count| proptest::collection::vec([-spread..spread, -spread..spread], count);
    (
        (places(0.08, 2..5), 0.0002..0.002_f64, places(0.06, 1..4), 0.0005..0.003_f64),
        ([-0.01..0.01_f64, -0.004..0.006_f64, -0.03..0.03_f64], 0..2usize, 0.0..0.01_f64),
        prop_oneof![Just(0.0), 0.0..0.002_f64],
    )
        .prop_map(|((axle, axle_play, front, front_play), (off, axle_looks, slot), side_play)| Case {
            axle,
            axle_play,
            front,
            front_play,
            off,
            axle_looks,
            slot,
            side_play,
        })
        // Bolts on one spot are a pin: such a frame swings all round, which small steps do not.
        .prop_filter("a plate", |case| {
            let far = |p: &[f64; 2]| case.axle.iter().map(|q| (p[0] - q[0]).hypot(p[1] - q[1])).fold(0.0, f64::max);
            case.axle.iter().map(far).fold(0.0, f64::max) > 0.04
        })
}

#[test]
fn no_shaking_within_the_axle_bolts_brings_the_front_nearer() {
    let (over, under, met_by) = (Cell::new(0.0_f64), Cell::new(0.0_f64), Cell::new(0));
    let draws = std::cell::RefCell::new(Draws(7));
    runner(120)
        .run(&cases(), |case| {
            let (axle, front) = case.anchors();
            let allowed = Allowed { gap: GAP, facing: 1.0, axle_side_play: case.side_play };
            let met = front_met(&axle, &front, &allowed).expect("plain figures");
            let shaken = case.shaken(&mut draws.borrow_mut());
            over.set(over.get().max(shaken - met.margin));
            under.set(under.get().max(met.margin - shaken));
            met_by.set(met_by.get() + u32::from(met.margin >= 0.0));
            prop_assert!(met.margin >= shaken - 1e-6, "{} but {shaken} is there", met.margin);
            // Shaking creeps along the rim of the play, so it stays a little behind.
            prop_assert!(met.margin <= shaken + 3e-4, "{} but only {shaken} was found", met.margin);
            // What is said to be the motion is one that the axle bolts allow, and gives what is said.
            for p in case.axle_points() {
                let q = met.motion.point(p);
                let in_plane = if case.axle_looks == 0 { [0, 2] } else { [0, 1] };
                let far = in_plane.iter().map(|&i| (q[i] - p[i]).powi(2)).sum::<f64>().sqrt();
                prop_assert!(far <= case.axle_play + 1e-6, "{far} of {}", case.axle_play);
            }
            Ok(())
        })
        .unwrap();
    println!(
        "closure in space, 120 frames, {} meet: shaking better by at most {:.1e} m, worse by at most {:.1e} m",
        met_by.get(),
        over.get(),
        under.get()
    );
    assert!(met_by.get() > 6 && met_by.get() < 114);
}

#[test]
fn the_limits_of_the_freedom_are_where_trying_finds_them() {
    let worst = Cell::new(0.0_f64);
    runner(16)
        .run(&cases().prop_filter("all in the plane", |case| case.axle_looks == 0), |case| {
            let free = freedom(&case.anchors().0).expect("plain figures");
            let turns = |turn: f64| {
                // Some shift lets all bolts in at this turn: by coordinate-wise thirds, the worst offset has one hill.
                let (mut low, mut high) = (-0.01, 0.01);
                let best_z = |x: f64| {
                    let (mut low, mut high) = (-0.01, 0.01);
                    for _ in 0..45 {
                        let third = (high - low) / 3.0;
                        let better = |z| case.out([turn, x, z, 0.0]);
                        if better(low + third) > better(high - third) { low += third } else { high -= third }
                    }
                    case.out([turn, x, 0.5 * (low + high), 0.0])
                };
                for _ in 0..45 {
                    let third: f64 = (high - low) / 3.0;
                    if best_z(low + third) > best_z(high - third) { low += third } else { high -= third }
                }
                best_z(0.5 * (low + high)) <= 1e-9
            };
            // In the carrier's face u points to the rear and a turn from u to v lowers the nose.
            for (found, sign) in [(free.turn[1], -1.0), (free.turn[0], 1.0)] {
                let (mut inside, mut outside) = (0.0, 3.0);
                for _ in 0..32 {
                    let middle: f64 = 0.5 * (inside + outside);
                    if turns(sign * middle) { inside = middle } else { outside = middle }
                }
                let arm = case.axle.iter().map(|p| p[0].hypot(p[1])).fold(0.0, f64::max);
                if inside < 1.0 {
                    worst.set(worst.get().max((found.abs() - inside).abs() * arm));
                    prop_assert!((found.abs() - inside).abs() * arm < 1e-5, "{found} against {inside}");
                }
            }
            Ok(())
        })
        .unwrap();
    println!("freedom, 16 plates: greatest disagreement at the bolts {:.1e} m", worst.get());
}
