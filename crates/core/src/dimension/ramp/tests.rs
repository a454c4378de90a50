//! The roll as a whole.

use super::*;
use crate::dimension::Fault;

const WHEELS: Wheels = Wheels { rear: 0.38, front: 0.28, wheelbase: 1.5 };
const RAMP: Ramp = Ramp { angle: 0.26, length: 2.5, beaver_angle: 0.0, beaver_length: 0.0 };

/// A drive over a ramp with a beaver tail, each way, and the pieces of a wavy underside.
pub(super) fn wavy_drives() -> [(rolling::Rolling, Vec<gap::Piece>); 2] {
    let wheels = Wheels { rear: 0.5, front: 0.3, wheelbase: 1.6 };
    let ramp = Ramp { angle: 0.4, length: 1.5, beaver_angle: 0.2, beaver_length: 0.6 };
    let point = |k: u32| Point::new(-1.5 + 0.1 * f64::from(k), 0.25 + 0.1 * libm::sin(f64::from(k)));
    [Facing::Forward, Facing::Backward].map(|facing| {
        let rolling = rolling::Rolling::new(wheels, &ramp, facing, (-1.5, 2.4)).expect("sound");
        let piece = |k| gap::Piece { line: 0, ends: [point(k), point(k + 1)].map(|end| rolling.seen(end)) };
        let pieces = (0..39).map(piece).collect();
        (rolling, pieces)
    })
}

fn line(points: &[(f64, f64)]) -> Vec<Point> {
    points.iter().map(|&p| p.into()).collect()
}

fn usual() -> Vec<Vec<Point>> {
    vec![
        line(&[(0.3, 0.26), (1.25, 0.26)]),
        line(&[(-0.4, 0.3), (-0.9, 0.28), (-1.0, 0.6)]),
        line(&[(1.6, 0.35), (2.0, 0.32), (2.05, 0.7)]),
    ]
}

fn roll(wheels: Wheels, lines: &[Vec<Point>], ramp: &Ramp, facing: Facing) -> RampRoll {
    ramp_roll(&Rider { wheels, lines }, ramp, facing).expect("sound")
}

fn nearest(lines: &[Vec<Point>], ramp: &Ramp, facing: Facing) -> Nearest {
    roll(WHEELS, lines, ramp, facing).nearest.expect("there is an underside")
}

fn gap(lines: &[Vec<Point>], ramp: &Ramp, facing: Facing) -> f64 {
    ramp_gap(&Rider { wheels: WHEELS, lines }, ramp, facing).expect("sound").expect("there is an underside")
}

#[test]
fn without_an_underside_nothing_is_near() {
    assert_eq!(roll(WHEELS, &[], &RAMP, Facing::Forward).nearest, None);
    assert_eq!(roll(WHEELS, &[vec![]], &RAMP, Facing::Forward).nearest, None);
}

#[test]
fn on_the_level_the_least_is_the_lowest_point() {
    for ramp in [Ramp::default(), Ramp { length: 3.0, ..Ramp::default() }, Ramp { angle: 0.3, ..Ramp::default() }] {
        let rolled = roll(WHEELS, &usual(), &ramp, Facing::Forward);
        let found = rolled.nearest.expect("there is an underside");
        assert!((found.vertical - 0.26).abs() < 1e-12);
        assert!((gap(&usual(), &ramp, Facing::Forward) - 0.26).abs() < 1e-12);
        assert!(found.pitch.abs() < 1e-12 && rolled.least_pitch.abs() < 1e-12 && rolled.greatest_pitch.abs() < 1e-12);
    }
}

#[test]
fn nothing_is_nearer_than_on_the_level_unless_it_is_found_so() {
    let found = nearest(&usual(), &RAMP, Facing::Forward);
    assert!(found.vertical < 0.26);
    // A point right under the rear axle never comes nearer than on the level: the wheel carries it.
    let middle = [line(&[(0.0, 0.38)])];
    let high = nearest(&middle, &RAMP, Facing::Forward);
    assert!(high.vertical > 0.37 && gap(&middle, &RAMP, Facing::Forward) <= high.vertical);
}

#[test]
fn backward_is_forward_for_the_mirrored_machine() {
    let mirrored: Vec<Vec<Point>> =
        usual().iter().map(|line| line.iter().map(|p| Point::new(1.5 - p.x, p.y)).collect()).collect();
    let turned = Wheels { rear: 0.28, front: 0.38, wheelbase: 1.5 };
    let ramp = Ramp { beaver_angle: 0.12, beaver_length: 0.8, ..RAMP };
    let (a, b) = (roll(WHEELS, &usual(), &ramp, Facing::Backward), roll(turned, &mirrored, &ramp, Facing::Forward));
    let (near_a, near_b) = (a.nearest.expect("has"), b.nearest.expect("has"));
    assert!((near_a.vertical - near_b.vertical).abs() < 1e-12);
    let gap_b = ramp_gap(&Rider { wheels: turned, lines: &mirrored }, &ramp, Facing::Forward).expect("sound");
    assert!((gap(&usual(), &ramp, Facing::Backward) - gap_b.expect("has")).abs() < 1e-9);
    assert!((near_a.pitch + near_b.pitch).abs() < 1e-9);
    assert!((a.least_pitch + b.greatest_pitch).abs() < 1e-12 && (a.greatest_pitch + b.least_pitch).abs() < 1e-12);
    assert!(near_a.point.distance(Point::new(1.5 - near_b.point.x, near_b.point.y)) < 1e-9);
    assert!(near_a.place.distance(near_b.place) < 1e-9);
    assert_eq!(near_a.line, near_b.line);
}

#[test]
fn the_pitch_goes_from_level_to_the_ramps_and_back() {
    let forward = roll(WHEELS, &[], &RAMP, Facing::Forward);
    assert!(forward.least_pitch.abs() < 1e-12 && (forward.greatest_pitch - 0.26).abs() < 1e-12);
    let backward = roll(WHEELS, &[], &RAMP, Facing::Backward);
    assert!(backward.greatest_pitch.abs() < 1e-12 && (backward.least_pitch + 0.26).abs() < 1e-12);
}

#[test]
fn a_steep_tail_tips_the_machine_further_than_the_ramp() {
    // The front wheel goes over the steep tail's crest while the rear one still climbs the ramp:
    // the pitch is greatest inside a stage, where the crest's slope equals the ramp's.
    let ramp = Ramp { angle: 0.1, length: 3.0, beaver_angle: 0.6, beaver_length: 0.5 };
    let rolled = roll(WHEELS, &[], &ramp, Facing::Forward);
    let stepped = (0..4000).map(|i| f64::from(i) * 0.001 - 1.0).fold(0.0_f64, |most, x| {
        let stand = ramp_stand(WHEELS, &ramp, Facing::Forward, x).expect("sound").expect("stands");
        most.max(stand.pitch)
    });
    assert!(rolled.greatest_pitch >= stepped - 1e-12 && rolled.greatest_pitch < stepped + 1e-6);
    assert!(rolled.greatest_pitch > 0.15);
}

#[test]
fn lone_points_doubled_points_and_upright_edges_are_taken_as_they_are() {
    let lone = nearest(&[line(&[(-0.9, 0.28)])], &RAMP, Facing::Forward);
    for lines in [
        vec![line(&[(-0.9, 0.28), (-0.9, 0.28)])],
        vec![line(&[(-0.9, 0.6), (-0.9, 0.28)])],
        vec![line(&[(-0.9, 0.28)]), line(&[(-0.9, 0.28)])],
    ] {
        let same = nearest(&lines, &RAMP, Facing::Forward);
        assert!((same.vertical - lone.vertical).abs() < 1e-9, "{lines:?}");
        assert_eq!(same.line, 0);
        assert!(same.point.distance(lone.point) < 1e-6);
    }
}

#[test]
fn a_crest_under_an_edge_counts_though_both_ends_clear() {
    let belly = vec![line(&[(0.3, 0.2), (1.2, 0.2)])];
    let ends = vec![line(&[(0.3, 0.2)]), line(&[(1.2, 0.2)])];
    let (edge, ends) = (nearest(&belly, &RAMP, Facing::Forward), nearest(&ends, &RAMP, Facing::Forward));
    assert!(edge.vertical < ends.vertical - 0.02);
    assert!(edge.point.x > 0.31 && edge.point.x < 1.19);
    // It hangs over the crest.
    let crest = ramp_corners(&RAMP).expect("sound")[1];
    assert!((edge.place.x - crest.x).abs() < 1e-9 && (edge.place.y - crest.y - edge.vertical).abs() < 1e-9);
    // The shortest way to the crest is at right angles to the edge.
    let shortest = gap(&belly, &RAMP, Facing::Forward);
    assert!(shortest < edge.vertical && shortest > edge.vertical * 0.9);
}

#[test]
fn what_goes_below_is_negative_one_way_and_nothing_the_other() {
    let deep = vec![line(&[(-0.5, 0.35), (-1.5, 0.25)])];
    let found = nearest(&deep, &RAMP, Facing::Forward);
    assert!(found.vertical < -0.05);
    assert!(gap(&deep, &RAMP, Facing::Forward).abs() < 1e-300);
}

#[test]
fn a_longer_ramp_than_the_shortest_clears_and_a_shorter_one_does_not() {
    let lines = usual();
    let rider = Rider { wheels: WHEELS, lines: &lines };
    for facing in [Facing::Forward, Facing::Backward] {
        let job = LoadingJob {
            deck_height: 0.6,
            clearance: 0.05,
            beaver_angle: 0.1,
            beaver_length: 0.5,
            longest: 30.0,
            facing,
        };
        let shortest = shortest_ramp(&rider, &job).expect("sound").expect("some ramp clears");
        let rise = 0.6 - 0.5 * libm::sin(0.1);
        let clearance = |length: f64| {
            let ramp = Ramp { angle: libm::asin(rise / length), length, beaver_angle: 0.1, beaver_length: 0.5 };
            nearest(&lines, &ramp, facing).vertical
        };
        assert!((clearance(shortest.length) - 0.05).abs() < 1e-7);
        assert!(clearance(shortest.length + 0.01) > 0.05 && clearance(shortest.length - 0.01) < 0.05);
    }
}

#[test]
fn the_shortest_ramp_may_be_the_steepest_considered_or_none() {
    let lines = vec![line(&[(0.75, 3.0)])];
    let rider = Rider { wheels: WHEELS, lines: &lines };
    let job = LoadingJob {
        deck_height: 0.6,
        clearance: 0.05,
        beaver_angle: 0.0,
        beaver_length: 0.0,
        longest: 30.0,
        facing: Facing::Forward,
    };
    let steep = shortest_ramp(&rider, &job).expect("sound").expect("clears at once");
    assert!((steep.angle.to_degrees() - 60.0).abs() < 1e-9);
    let wide = shortest_ramp::<Vec<Point>>(&Rider { wheels: WHEELS, lines: &[] }, &job).expect("sound");
    assert_eq!(wide, Some(steep));
    let none = |job: LoadingJob| shortest_ramp(&rider, &job).expect("sound");
    assert_eq!(none(LoadingJob { clearance: 3.1, ..job }), None);
    assert_eq!(none(LoadingJob { longest: 0.6, ..job }), None);
    // The longest allowed is just the steepest considered: 0.6 / sin 60°.
    let just = LoadingJob { longest: steep.length, ..job };
    assert_eq!(none(just).map(|ramp| ramp.length), Some(steep.length));
    assert_eq!(none(LoadingJob { longest: steep.length - 1e-9, ..job }), None);
}

#[test]
fn a_margin_of_exactly_the_level_clearance_is_met_where_nothing_comes_nearer() {
    // Right over the rear axle, backward: the point never comes nearer than on the level.
    let lines = vec![line(&[(0.0, 0.3)])];
    let rider = Rider { wheels: WHEELS, lines: &lines };
    let level = nearest(&lines, &Ramp { angle: 0.02, length: 30.0, ..RAMP }, Facing::Backward).vertical;
    let job = LoadingJob {
        deck_height: 0.6,
        clearance: level,
        beaver_angle: 0.0,
        beaver_length: 0.0,
        longest: 30.0,
        facing: Facing::Backward,
    };
    assert!(shortest_ramp(&rider, &job).expect("sound").is_some());
}

#[test]
fn a_stand_before_and_after_the_ramp_is_level() {
    for facing in [Facing::Forward, Facing::Backward] {
        for (x, height) in [(-50.0, 0.0), (70.0, 2.5 * libm::sin(0.26))] {
            let stand = ramp_stand(WHEELS, &RAMP, facing, x).expect("sound").expect("stands");
            assert!(stand.pitch.abs() < 1e-12);
            assert!((stand.rear.x - x).abs() < 1e-12 && (stand.rear.y - height - 0.38).abs() < 1e-12);
            let nose = stand.place(Point::new(2.0, 0.3));
            let side = if facing == Facing::Forward { 2.0 } else { -2.0 };
            assert!(nose.distance(Point::new(x + side, height + 0.3)) < 1e-12);
        }
    }
}

#[test]
fn unsound_numbers_are_named() {
    let lines = usual();
    let fault =
        |wheels, ramp: Ramp| ramp_roll(&Rider { wheels, lines: &lines }, &ramp, Facing::Forward).expect_err("unsound");
    assert_eq!(fault(Wheels { rear: 0.0, ..WHEELS }, RAMP).what, "rear-radius");
    assert_eq!(fault(Wheels { front: f64::NAN, ..WHEELS }, RAMP).what, "front-radius");
    assert_eq!(fault(Wheels { wheelbase: -1.0, ..WHEELS }, RAMP).what, "wheelbase");
    assert_eq!(fault(WHEELS, Ramp { angle: 1.6, ..RAMP }).what, "ramp-angle");
    let bad = vec![line(&[(0.0, f64::NAN)])];
    let rider = Rider { wheels: WHEELS, lines: &bad };
    assert_eq!(ramp_roll(&rider, &RAMP, Facing::Forward).expect_err("unsound").what, "underside");
    assert_eq!(ramp_stand(WHEELS, &RAMP, Facing::Forward, f64::NAN).expect_err("unsound").what, "rear-axle");
    assert_eq!(ramp_corners(&Ramp { length: -1.0, ..RAMP }).expect_err("unsound").what, "ramp-length");
}

#[test]
fn wheels_that_would_turn_over_each_other_are_refused() {
    let odd = Wheels { rear: 0.9, front: 0.2, wheelbase: 0.1 };
    let steep = Ramp { angle: 1.0, ..RAMP };
    let error = ramp_roll(&Rider { wheels: odd, lines: &usual() }, &steep, Facing::Forward).expect_err("cannot roll");
    assert_eq!((error.what, error.fault), ("wheelbase", Fault::TooShort));
}

#[test]
fn unsound_jobs_are_named() {
    let lines = usual();
    let rider = Rider { wheels: WHEELS, lines: &lines };
    let job = LoadingJob {
        deck_height: 0.6,
        clearance: 0.05,
        beaver_angle: 0.0,
        beaver_length: 0.0,
        longest: 30.0,
        facing: Facing::Forward,
    };
    let what = |job: LoadingJob| shortest_ramp(&rider, &job).expect_err("unsound").what;
    assert_eq!(what(LoadingJob { deck_height: 0.0, ..job }), "deck-height");
    assert_eq!(what(LoadingJob { clearance: f64::NAN, ..job }), "clearance");
    assert_eq!(what(LoadingJob { beaver_angle: -0.1, ..job }), "beaver-angle");
    assert_eq!(what(LoadingJob { beaver_length: -0.1, ..job }), "beaver-length");
    assert_eq!(what(LoadingJob { longest: 0.0, ..job }), "longest");
    let high_tail = LoadingJob { beaver_angle: 0.5, beaver_length: 2.0, ..job };
    let error = shortest_ramp(&rider, &high_tail).expect_err("the tail is higher than the deck");
    assert_eq!(error.fault, Fault::Below(2.0 * libm::sin(0.5)));
}
