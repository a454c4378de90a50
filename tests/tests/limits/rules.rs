//! Hydraulics, seat, frame, axles, trailer and site.

use fitup_core::build::Change;
use fitup_core::finding::Value;
use fitup_core::fit::{Answer, Desk, on_trailer, stand_after, way_up};
use fitup_core::item::{FrontSeatEffect, SeatState};
use fitup_core::quantity::{Flow, Length, Mass, Pressure};
use fitup_yard::{Yard, mm};

use crate::{hold, says};

fn figure(answer: &Answer, code: &str, name: &str) -> Value {
    let found = answer.findings.iter().find(|finding| finding.code == code);
    found.and_then(|finding| finding.figure(name)).unwrap_or_else(|| panic!("no {name} of {code}")).clone()
}

fn length(answer: &Answer, code: &str, name: &str) -> Length {
    match figure(answer, code, name) {
        Value::Length(length) => length,
        other => panic!("{other:?}"),
    }
}

fn mass(answer: &Answer, code: &str, name: &str) -> Mass {
    match figure(answer, code, name) {
        Value::Mass(mass) => mass,
        other => panic!("{other:?}"),
    }
}

/// A code, that of being near, and a change by the share of the limit that is used.
///
/// All of it keeps a limit that has nothing near, a little more breaks it. Near others are loads and lengths that may be off:
/// a tenth beyond is broken for certain, a tenth short of it is kept for certain.
type Shared<'a> = (&'a str, Option<&'a str>, &'a dyn Fn(&mut Yard, f64));

fn hold_shares(start: &Yard, limits: &[Shared]) {
    for (code, near, turn) in limits {
        let at = |share: f64| {
            let mut yard = start.clone();
            turn(&mut yard, share);
            [Some(*code), *near].map(|code| code.is_some_and(|code| says(&yard, code)))
        };
        let told: &[(f64, [bool; 2])] = if near.is_some() {
            &[(0.9, [false, false]), (1.0, [false, true]), (1.0001, [false, true]), (1.1, [true, false])]
        } else {
            &[(1.0, [false, false]), (1.0001, [true, false])]
        };
        for &(share, told) in told {
            assert_eq!(at(share), told, "{code} and {near:?} at {share}");
        }
    }
}

#[test]
fn oil_seat_and_frame() {
    hold(
        &Yard::new(),
        &[
            ("hydraulics-flow-short", |y, v| y.machine().hydraulics.flow = Some(Flow::from_l_min(v)), 15.0, 14.9),
            ("hydraulics-flow-high", |y, v| y.machine().hydraulics.flow = Some(Flow::from_l_min(v)), 30.0, 30.1),
            (
                "hydraulics-pressure-short",
                |y, v| y.machine().hydraulics.relief = Some(Pressure::from_bar(v)),
                120.0,
                119.0,
            ),
            (
                "hydraulics-pressure-high",
                |y, v| y.machine().hydraulics.relief = Some(Pressure::from_bar(v)),
                180.0,
                181.0,
            ),
            ("hydraulics-outlets-short", |y, v| y.machine().hydraulics.outlets = Some(u32::from(v > 0.0)), 1.0, 0.0),
            (
                "driver-seat-cannot",
                |y, v| {
                    y.seat().front_seat = FrontSeatEffect::SlidesForward(mm(v));
                    y.build.side.changes.push(Change::DriverSeat(SeatState::Slid));
                },
                120.0,
                120.1,
            ),
            // A need that is not stated is asked for, whatever the machine gives.
            (
                "hydraulics-unknown",
                |y, v| {
                    let need = y.implement().hydraulics.as_mut().expect("the arm has hydraulics");
                    if v > 0.0 {
                        (need.flow_min, need.flow_max) = (None, None);
                    }
                },
                0.0,
                1.0,
            ),
            (
                "hydraulics-unknown",
                |y, v| y.machine().hydraulics.relief = (v < 1.0).then_some(Pressure::from_bar(150.0)),
                0.0,
                1.0,
            ),
            (
                "hydraulic-lines-unknown",
                |y, v| {
                    y.implement().hydraulics.as_mut().expect("the arm has hydraulics").outlets = u32::from(v > 0.0);
                    y.machine().hydraulics.outlets = None;
                },
                0.0,
                1.0,
            ),
            (
                "hydraulic-lines-unknown",
                |y, v| {
                    y.implement().hydraulics.as_mut().expect("the arm has hydraulics").power_beyond = Some(v > 0.0);
                    y.machine().hydraulics.power_beyond = None;
                },
                0.0,
                1.0,
            ),
            // The frame's rails are 60 mm below its plates, which are 400 mm up less what it hangs lower.
            ("frame-low", |y, v| y.frame().body.underside = vec![vec![(mm(0.0), mm(-400.0 + v))]], 100.1, 99.9),
            (
                "frame-in-the-ground",
                |y, v| y.frame().body.underside = vec![vec![(mm(0.0), mm(-400.0 + v))]],
                0.1,
                -20.0,
            ),
        ],
    );
}

#[test]
fn what_is_as_large_as_its_limit_keeps_it() {
    let told = Yard::new().judge();
    let room = length(&told, "seat-room", "room");
    let load = mass(&told, "axle-within-rating", "load");
    let near = Some("load-near-rating");
    let equal: [Shared; 3] = [
        ("seat-room-short", Some("room-close"), &|y, share| y.seat().least_room = Some(room * share)),
        ("axle-overloaded", near, &|y, share| y.machine().front.rated = Some(load / share)),
        ("tyre-overloaded", near, &|y, share| y.machine().front.tyre_rated = Some(load / 2.0 / share)),
    ];
    hold_shares(&Yard::new(), &equal);
    // Levers are asked about where they may be out of reach.
    let reach = |share: f64| {
        let mut yard = Yard::new();
        yard.seat().greatest_reach = Some(room / share);
        says(&yard, "seat-reach-far")
    };
    assert_eq!([reach(0.9), reach(1.0), reach(1.1)], [false, true, true]);
}

#[test]
fn trailer_and_site() {
    let mut start = Yard::new();
    start.trailer();
    start.site();
    let told = start.judge();
    let (height, width) = (told.footprint.height.expect("it is drawn"), told.footprint.width.expect("it is drawn"));
    let on = on_trailer(&Desk::new(start.catalogue.clone()), &start.build).expect("it stands on one");
    let (total, axle) = (
        on.total.load.expect("it is stated"),
        on.axles(stand_after(&on, way_up(&[None, None], Some(&on), |_| false))).load.expect("it is stated"),
    );
    let over_tyres = mm(1750.0) - on.side_room.expect("it is stated");
    assert!((over_tyres.mm() - 1080.0).abs() < 1e-9);
    let ground = mass(&told, "ground-carries", "load");
    let equal: [Shared; 7] = [
        ("gate-narrow", Some("gate-close"), &|y, share| y.site().gate_width = Some(width / share)),
        ("ground-overloaded", Some("ground-load-near"), &|y, share| y.site().greatest_axle_load = Some(ground / share)),
        ("trailer-overloaded", Some("trailer-load-near"), &|y, share| y.trailer().rated_total = Some(total / share)),
        ("trailer-overloaded", Some("trailer-load-near"), &|y, share| y.trailer().rated_axle = Some(axle / share)),
        ("trailer-narrow", Some("deck-close"), &|y, share| {
            y.trailer().deck_width = Some((mm(860.0) + mm(220.0)) / share);
        }),
        ("trailer-short", Some("deck-close"), &|y, share| y.trailer().deck_length = Some(mm(1450.0) / share)),
        ("corner-tight", None, &|y, share| y.site().path_width = Some(wanted(&told) / share)),
    ];
    hold_shares(&start, &equal);
    // A bar that folds is folded where it may be too high.
    let low = |share: f64| {
        let mut yard = start.clone();
        yard.site().gate_height = Some(height / share);
        [says(&yard, "gate-low"), says(&yard, "gate-close")]
    };
    assert_eq!([0.9, 1.0, 1.1].map(low), [[false, false], [true, false], [true, false]]);
}

fn wanted(told: &Answer) -> Length {
    length(told, "corner-clears", "wanted")
}
