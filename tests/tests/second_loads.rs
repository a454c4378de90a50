//! Axle loads, tip angles, tipping, trailer, tie-downs and hydraulics against second methods, over random inputs:
//! linear systems solved by elimination, tilting by bisection, searches and counting.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{
    Article, Cargo, Cylinder, DigStand, FrontSupport, GroundMass, Heading, LiftCylinder, PointMass, ShareOf, SideStand,
    Stance, Stroke, Tie, TieRun, TipEdge, TrailerBed, Travel, axle_loads, cycle_time, cylinder_lift, dig_loads,
    hydraulic_power, line_velocity, nose_window, shaft_power, side_tipping, tie_downs, tip_angles, trailer_loads,
};
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use std::cell::Cell;

const CASES: u32 = 10_000;

/// The greatest disagreement met so far.
struct Greatest(&'static str, Cell<f64>);

impl Greatest {
    fn new(what: &'static str) -> Self {
        Self(what, Cell::new(0.0))
    }

    /// Notes two values' disagreement, relative to the larger of them and `size`.
    fn near(&self, a: f64, b: f64, size: f64, allowed: f64) -> Result<(), TestCaseError> {
        let off = (a - b).abs() / a.abs().max(b.abs()).max(size);
        self.1.set(self.1.get().max(off));
        prop_assert!(off <= allowed, "{}: {a} against {b}, off by {off:e}", self.0);
        Ok(())
    }

    fn tell(&self) {
        println!("{}, {CASES} inputs: greatest disagreement {:.1e}", self.0, self.1.get());
    }
}

fn runner() -> TestRunner {
    TestRunner::new_with_rng(
        Config { cases: CASES, failure_persistence: None, ..Config::default() },
        proptest::test_runner::TestRng::deterministic_rng(proptest::test_runner::RngAlgorithm::ChaCha),
    )
}

fn masses() -> impl Strategy<Value = Vec<PointMass>> {
    prop::collection::vec((1.0..2000.0, -4.0..3.0).prop_map(|(mass, x)| PointMass { mass, x }), 1..8)
}

/// Two supports' loads that balance a row of masses: force and moment balance about a far point, by Cramer's rule.
fn two_supports(a: f64, b: f64, bodies: &[PointMass]) -> (f64, f64) {
    const FAR: f64 = 7.0;
    let force: f64 = bodies.iter().map(|body| body.mass).sum();
    let turn: f64 = bodies.iter().map(|body| body.mass * (body.x + FAR)).sum();
    let (ma, mb) = (a + FAR, b + FAR);
    let determinant = mb - ma;
    ((force * mb - turn) / determinant, (turn - force * ma) / determinant)
}

/// Three supports' loads that balance masses over the ground: forces and moments about both axes, by Cramer's rule.
fn three_supports(at: [[f64; 2]; 3], bodies: &[GroundMass]) -> [f64; 3] {
    let sum = |of: fn(&GroundMass) -> f64| -> f64 { bodies.iter().map(|body| body.mass * of(body)).sum() };
    let wanted = [sum(|_| 1.0), sum(|body| body.x), sum(|body| body.y)];
    let determinant = |c: [[f64; 3]; 3]| {
        c[0][0] * (c[1][1] * c[2][2] - c[1][2] * c[2][1]) - c[1][0] * (c[0][1] * c[2][2] - c[0][2] * c[2][1])
            + c[2][0] * (c[0][1] * c[1][2] - c[0][2] * c[1][1])
    };
    let columns = at.map(|[x, y]| [1.0, x, y]);
    let whole = determinant(columns);
    std::array::from_fn(|i| {
        let mut with = columns;
        with[i] = wanted;
        determinant(with) / whole
    })
}

/// Root of a rising function between two ends.
fn bisect(mut low: f64, mut high: f64, above: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if middle <= low || middle >= high {
            break;
        }
        if above(middle) { high = middle } else { low = middle }
    }
    0.5 * (low + high)
}

#[test]
fn axle_loads_balance_and_the_ballast_is_found_by_bisection() {
    let (loads_off, ballast_off) = (Greatest::new("axle loads"), Greatest::new("ballast"));
    let found_some = Cell::new(0);
    runner()
        .run(&(0.8..2.5, masses(), 0.2..4.0, 0.05..0.5), |(w, bodies, xb, share)| {
            let loads = axle_loads(w, &bodies).expect("sound");
            let (rear, front) = two_supports(0.0, w, &bodies);
            loads_off.near(loads.front, front, loads.total, 1e-11)?;
            loads_off.near(loads.rear, rear, loads.total, 1e-11)?;
            for of in [ShareOf::Total, ShareOf::Bare(900.0)] {
                let met = |ballast: f64| {
                    let mut with = bodies.clone();
                    with.push(PointMass { mass: ballast, x: xb });
                    let total: f64 = with.iter().map(|body| body.mass).sum();
                    let of = if let ShareOf::Bare(mass) = of { mass } else { total };
                    two_supports(0.0, w, &with).1 >= share * of
                };
                match loads.ballast(xb, share, of).expect("sound") {
                    Some(0.0) => prop_assert!(met(1e-6)),
                    None => prop_assert!(!met(0.0) && !met(1e5)),
                    Some(ballast) if ballast < 1e5 => {
                        found_some.set(found_some.get() + 1);
                        ballast_off.near(ballast, bisect(0.0, 2e5, met), 1.0, 1e-6)?;
                    }
                    Some(_) => prop_assert!(!met(0.0)),
                }
            }
            Ok(())
        })
        .expect("agree");
    loads_off.tell();
    ballast_off.tell();
    assert!(found_some.get() > 1000);
}

type V3 = [f64; 3];

fn sub(a: V3, b: V3) -> V3 {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn dot(a: V3, b: V3) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn cross(a: V3, b: V3) -> V3 {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/// The two supports of an edge, counter-clockwise seen from above.
fn supports(stance: &Stance, side: TipEdge) -> (V3, V3) {
    let (t, w) = (stance.rear_track / 2.0, stance.wheelbase);
    let ((l, r), (fl, fr)) = match stance.front {
        FrontSupport::Fixed { track } => {
            let pair = ([w, track / 2.0, 0.0], [w, -track / 2.0, 0.0]);
            (pair, pair)
        }
        FrontSupport::Pivot { height } => (([w, 0.0, height], [w, 0.0, height]), ([w, 0.4, 0.0], [w, -0.4, 0.0])),
    };
    match side {
        TipEdge::Rear => ([0.0, t, 0.0], [0.0, -t, 0.0]),
        TipEdge::Right => ([0.0, -t, 0.0], r),
        TipEdge::Front => (fr, fl),
        TipEdge::Left => (l, [0.0, t, 0.0]),
    }
}

/// Whether gravity on ground leaning by `b` downhill along the heading `psi` turns the body over the edge.
fn tips(stance: &Stance, side: TipEdge, psi: f64, b: f64) -> bool {
    let (from, to) = supports(stance, side);
    let gravity = [b.sin() * psi.cos(), b.sin() * psi.sin(), -b.cos()];
    // Moment of the weight about the edge: positive turns the inside up.
    dot(cross(sub(stance.centre, from), gravity), sub(to, from)) > 0.0
}

const HEADINGS: [(TipEdge, f64); 4] = [
    (TipEdge::Rear, std::f64::consts::PI),
    (TipEdge::Left, std::f64::consts::FRAC_PI_2),
    (TipEdge::Right, -std::f64::consts::FRAC_PI_2),
    (TipEdge::Front, 0.0),
];

/// Slope along a heading at which the edge gives way, from just short of level to just short of upright.
fn tilt(stance: &Stance, side: TipEdge, psi: f64) -> Option<f64> {
    let steep = std::f64::consts::FRAC_PI_2 - 1e-9;
    (!tips(stance, side, psi, 0.0) && tips(stance, side, psi, steep))
        .then(|| bisect(0.0, steep, |b| tips(stance, side, psi, b)))
}

fn stance() -> impl Strategy<Value = Stance> {
    let front = prop_oneof![
        (0.6..1.6).prop_map(|track| FrontSupport::Fixed { track }),
        (0.0..0.7).prop_map(|height| FrontSupport::Pivot { height }),
    ];
    (0.7..1.8, 1.0..2.4, front, -0.2..1.4, -0.5..0.5, 0.2..1.2)
        .prop_map(|(rear_track, wheelbase, front, x, y, z)| Stance { rear_track, wheelbase, front, centre: [x, y, z] })
}

#[test]
fn tip_angles_are_where_tilting_the_ground_turns_the_body_over() {
    let off = Greatest::new("tip angles");
    let least_off = Greatest::new("least tip angle over every heading");
    let stable = Cell::new(0);
    runner()
        .run(&stance(), |stance| {
            let found = tip_angles(&stance).expect("sound");
            let stands = TipEdge::ALL.iter().all(|&side| !tips(&stance, side, 0.0, 0.0));
            prop_assert_eq!(found.stable_on_level, stands);
            for (to, psi) in HEADINGS {
                let first = TipEdge::ALL.iter().filter_map(|&side| tilt(&stance, side, psi)).min_by(f64::total_cmp);
                match (found.slope(to), first.filter(|_| stands)) {
                    (Some(a), Some(b)) => off.near(a, b, 1.0, 1e-8)?,
                    (a, b) => prop_assert_eq!(a, b),
                }
                if let (Some(a), Some(b)) = (found.edge(to).own_slope, tilt(&stance, to, psi)) {
                    off.near(a, b, 1.0, 1e-8)?;
                }
                // Turned about the edge by the rotation found, the centre stands straight above it.
                let (from, end) = supports(&stance, to);
                let e = sub(end, from);
                let length = dot(e, e).sqrt();
                let e = e.map(|part| part / length);
                let arm = sub(stance.centre, from);
                let (sin, cos) = found.edge(to).rotation.sin_cos();
                let turned: V3 = {
                    let (side, along) = (cross(e, arm), dot(e, arm) * (1.0 - cos));
                    std::array::from_fn(|i| arm[i] * cos + side[i] * sin + e[i] * along)
                };
                let level = cross(e, turned)[2];
                off.near(level, 0.0, 1.0, 1e-9)?;
                let foot = dot(turned, e);
                prop_assert!(turned[2] >= foot * e[2] - 1e-9, "it stands above, not below");
            }
            if stands {
                stable.set(stable.get() + 1);
                // No heading of a fine fan tips earlier, and the best of them comes as near as the fan is fine.
                for side in TipEdge::ALL {
                    let turn = std::f64::consts::TAU / 24.0;
                    let fan = (0..24).filter_map(|i| tilt(&stance, side, f64::from(i) * turn).map(|b| (b, i)));
                    let (_, best) = fan.min_by(|a, b| a.0.total_cmp(&b.0)).expect("some heading tips");
                    let (mut low, mut high) = (f64::from(best - 1) * turn, f64::from(best + 1) * turn);
                    let at = |psi| tilt(&stance, side, psi).unwrap_or(2.0);
                    for _ in 0..30 {
                        let third = (high - low) / 3.0;
                        if at(low + third) < at(high - third) { high -= third } else { low += third }
                    }
                    least_off.near(found.edge(side).least, at(0.5 * (low + high)), 1.0, 1e-8)?;
                }
            }
            Ok(())
        })
        .expect("agree");
    off.tell();
    least_off.tell();
    assert!(stable.get() > 1000, "{} stand", stable.get());
}

#[test]
fn tipping_loads_take_all_load_off_the_far_support() {
    let off = Greatest::new("tipping");
    let inputs = (0.8..2.5, masses(), -2.0..=0.0, -5.0..0.7, 0.0..900.0, 0.05..0.6, 0.5..4.0);
    runner()
        .run(&inputs, |(wheelbase, bodies, line, load, hydraulic, lever, reach)| {
            let total: f64 = bodies.iter().map(|body| body.mass).sum();
            let found = dig_loads(DigStand { line, load, wheelbase }, &bodies, Some(hydraulic)).expect("sound");
            let (_, front) = two_supports(line, wheelbase, &bodies);
            off.near(found.front_unloaded, front, total, 1e-10)?;
            prop_assert_eq!(found.tipped_without_load(), front < 0.0);
            match found.tipping {
                Some(tipping) => {
                    let mut with = bodies.clone();
                    with.push(PointMass { mass: tipping, x: load });
                    let (_, front) = two_supports(line, wheelbase, &with);
                    off.near(front, 0.0, total + tipping.abs(), 1e-10)?;
                    let (rated, _) = found.rated().expect("both known");
                    prop_assert!(rated <= 0.75 * tipping + 1e-9 && rated <= 0.87 * hydraulic + 1e-9);
                    prop_assert!((rated - 0.75 * tipping).abs() < 1e-9 || (rated - 0.87 * hydraulic).abs() < 1e-9);
                }
                None => prop_assert!(load >= line),
            }
            let push = found.lifting_push.expect("the load lies behind the front axle");
            let mut with = bodies.clone();
            with.push(PointMass { mass: -push, x: load });
            let (at_line, _) = two_supports(line, wheelbase, &with);
            off.near(at_line, 0.0, total + push.abs(), 1e-10)?;

            let force = hydraulic * 100.0;
            let lift = cylinder_lift(LiftCylinder { force, lever, load_distance: reach }, &bodies).expect("sound");
            // In newtons and newton metres about the foot.
            let arm: f64 = bodies.iter().map(|part| 9.80665 * part.mass * part.x).sum();
            let left = force * lever - arm - 9.80665 * lift * reach;
            off.near(left, 0.0, force * lever + arm.abs() + 1.0, 1e-10)
        })
        .expect("agree");
    off.tell();
}

#[test]
fn a_load_over_the_side_takes_all_load_off_the_support_across() {
    let off = Greatest::new("tipping over the side");
    let told = Cell::new(0_u32);
    let body = (1.0..2000.0, -3.0..3.0, -1.5..1.5).prop_map(|(mass, x, y)| GroundMass { mass, x, y });
    let bodies = prop::collection::vec(body, 1..8);
    let inputs = (0.8..2.5, bodies, -2.0..=0.0, 0.3..1.5, 0.0..1.0, (-4.0..2.0, 0.0..5.0));
    runner()
        .run(&inputs, |(wheelbase, bodies, line, rear, front, (x, y))| {
            let stand = SideStand { line, rear, wheelbase, front };
            let supports = [[line, rear], [wheelbase, front], [line, -rear]];
            let across = |bodies: &[GroundMass]| three_supports(supports, bodies)[2];
            let Some(tipping) = side_tipping(stand, &bodies, [x, y]).expect("sound") else {
                // Any load there only adds to the support across.
                let added = across(&[GroundMass { mass: 1.0, x, y }]);
                prop_assert!(added >= -1e-12, "{added}");
                return Ok(());
            };
            told.set(told.get() + 1);
            let mut with = bodies.clone();
            with.push(GroundMass { mass: tipping, x, y });
            let total = bodies.iter().map(|body| body.mass).sum::<f64>() + tipping.abs();
            off.near(across(&with), 0.0, total, 1e-10)
        })
        .expect("agree");
    assert!(told.get() > CASES / 4 && told.get() < CASES, "loads outside and inside the line: {}", told.get());
    off.tell();
}

#[test]
fn a_trailer_balances_on_coupler_and_axle_and_its_window_is_where_the_share_passes() {
    let off = Greatest::new("trailer");
    let inputs = (
        (0.0..1500.0, -0.8..0.8, 1.5..6.0),
        (1.0..900.0, 1.0..1500.0, 0.9..2.2),
        any::<bool>(),
        -3.0..3.0,
        (0.0..0.3, 0.0..0.3),
    );
    runner()
        .run(&inputs, |((mass, centre, coupler), (front, rear, wheelbase), back, at, (p, q))| {
            let heading = if back { Heading::Backward } else { Heading::Forward };
            let bed = TrailerBed { mass, centre, coupler };
            let cargo = Cargo { front, rear, wheelbase, heading };
            let bodies = |at: f64| {
                let ahead = if back { at - wheelbase } else { at + wheelbase };
                [(mass, centre), (rear, at), (front, ahead)].map(|(mass, x)| PointMass { mass, x })
            };
            let loads = trailer_loads(bed, cargo, at).expect("sound");
            let (axle, nose) = two_supports(0.0, coupler, &bodies(at));
            off.near(loads.axle, axle, loads.total, 1e-10)?;
            off.near(loads.nose, nose, loads.total, 1e-10)?;
            let (least, most) = (f64::min(p, q), f64::max(p, q));
            let window = nose_window(bed, cargo, least, most).expect("sound").expect("has mass");
            for (share, end) in [(least, window.low), (most, window.high)] {
                let reached = |at: f64| two_supports(0.0, coupler, &bodies(at)).1 >= share * loads.total;
                if end.abs() < 900.0 {
                    off.near(end, bisect(-1000.0, 1000.0, reached), 1.0, 1e-8)?;
                }
            }
            Ok(())
        })
        .expect("agree");
    off.tell();
}

/// Tie-downs counted by laying them out one after another, in whole tenths of a millimetre.
fn counted(tenths: u32, kilograms: u32, blocked: bool, heavy: bool) -> u32 {
    let mut count;
    let mut held;
    if blocked {
        (count, held) = (0, 0);
    } else if tenths <= 15_200 && kilograms <= 500 {
        (count, held) = (1, 15_200);
    } else {
        (count, held) = (2, 30_400);
    }
    while held < tenths {
        count += 1;
        held += 30_400;
    }
    if heavy || kilograms >= 4536 { count.max(4) } else { count }
}

#[test]
fn tie_downs_are_counted_as_if_laid_out() {
    let off = Greatest::new("tie-downs, aggregate");
    let length = prop_oneof![1..200_000_u32, (1..14_u32, 0..3_u32).prop_map(|(k, d)| k * 15_200 + d - 1)];
    let mass = prop_oneof![1..12_000_u32, 499..502_u32, 4535..4538_u32];
    let tie = (0..4000_u32, prop::option::of(0..4000_u32), 0..3_usize);
    let ties = prop::collection::vec(tie, 0..9);
    runner()
        .run(&(length, mass, any::<bool>(), any::<bool>(), ties), |(tenths, kilograms, blocked, heavy, ties)| {
            let article = Article {
                mass: f64::from(kilograms),
                length: f64::from(tenths) * 0.1 * 0.001,
                blocked_forward: blocked,
                as_heavy_machinery: heavy,
            };
            let runs = [TieRun::Direct, TieRun::SameSide, TieRun::Over];
            let as_tie = |&(limit, anchor, run): &(u32, Option<u32>, usize)| Tie {
                limit: f64::from(limit),
                anchor_limit: anchor.map(f64::from),
                run: runs[run],
            };
            let found = tie_downs(article, &ties.iter().map(as_tie).collect::<Vec<_>>()).expect("sound");
            let needed = counted(tenths, kilograms, blocked, heavy);
            prop_assert_eq!(found.needed, needed, "{} tenths of a millimetre", tenths);
            prop_assert_eq!(found.count_suffices, ties.len() >= needed as usize);
            // In whole half kilograms, so that equality is exact.
            let halves: u32 = ties
                .iter()
                .map(|&(limit, anchor, run)| anchor.map_or(limit, |a| a.min(limit)) * if run == 2 { 2 } else { 1 })
                .sum();
            off.near(found.aggregate, f64::from(halves) / 2.0, 1.0, 1e-12)?;
            prop_assert_eq!(found.strength_suffices(), halves >= kilograms);
            Ok(())
        })
        .expect("agree");
    off.tell();
}

#[test]
fn hydraulics_agree_with_work_volume_and_workshop_constants() {
    let off = Greatest::new("hydraulics");
    let stroke = (30.0..120.0, 0.1..0.8, 50.0..1200.0, any::<bool>(), prop::option::of(2.0..80.0), 1..4_u32);
    let inputs = (10.0..350.0, 1.0..120.0, 0.3..1.0, 4.0..40.0, prop::collection::vec(stroke, 1..6), 2.0..60.0);
    runner()
        .run(&inputs, |(bar, flow, efficiency, line, strokes, supply)| {
            let si = |l_min: f64| l_min / 60_000.0;
            let power = hydraulic_power(bar * 1e5, si(flow)).expect("sound");
            off.near(power / 1000.0, bar * flow / 600.0, 0.0, 1e-12)?;
            off.near(shaft_power(power, efficiency).expect("sound") * efficiency, power, 0.0, 1e-12)?;
            // 21.2206591 = 4e6 / (60 000 π) in L/min and mm.
            let velocity = line_velocity(si(flow), line / 1000.0).expect("sound");
            off.near(velocity, 21.220_659_078_919_38 * flow / line / line, 0.0, 1e-12)?;
            let mut minutes = 0.0;
            let mut built = Vec::new();
            for (bore, share, length, extend, clip, count) in strokes {
                let rod = bore * share;
                let travel = if extend { Travel::Extend } else { Travel::Retract };
                let cylinder = Cylinder::new(bore / 1000.0, rod / 1000.0).expect("sound");
                // Litres of the bore's cylinder less the rod's own volume.
                let round = |d: f64| std::f64::consts::PI * (d / 200.0).powi(2) * length / 100.0;
                let litres = if extend { round(bore) } else { round(bore) - round(rod) };
                let through = clip.map_or(supply, |clip: f64| clip.min(supply));
                minutes += f64::from(count) * litres / through;
                // Force times speed is the power that goes in.
                let force = cylinder.force(travel, bar * 1e5).expect("sound");
                let speed = cylinder.speed(travel, si(flow)).expect("sound");
                off.near(force * speed, power, 0.0, 1e-12)?;
                off.near(speed * litres / flow * 60.0, length / 1000.0, 0.0, 1e-11)?;
                built.push(Stroke {
                    cylinder,
                    length: length / 1000.0,
                    travel,
                    most_flow: clip.map(si),
                    count: f64::from(count),
                });
            }
            let time = cycle_time(&built, si(supply)).expect("sound");
            off.near(time, minutes * 60.0, 0.0, 1e-11)
        })
        .expect("agree");
    off.tell();
}
