//! Hydraulics, seat, frame, axles, trailer and site.

use fitup_core::finding::Value;
use fitup_core::fit::{Answer, Desk, on_trailer};
use fitup_core::item::FrontSeatEffect;
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

/// A code and a change by the share of the limit that is used: all of it keeps it, a little more breaks it.
type Shared<'a> = (&'a str, &'a dyn Fn(&mut Yard, f64));

fn hold_shares(start: &Yard, limits: &[Shared]) {
    for (code, turn) in limits {
        for (share, broken) in [(1.0, false), (1.0001, true)] {
            let mut yard = start.clone();
            turn(&mut yard, share);
            assert_eq!(says(&yard, code), broken, "{code} at {share}");
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
            ("front-seat-in-the-way", |y, v| y.seat().front_seat = FrontSeatEffect::SlidesForward(mm(v)), 120.0, 120.1),
            (
                "hydraulics-unknown",
                |y, v| {
                    let need = y.implement().hydraulics.as_mut().expect("the arm has hydraulics");
                    (need.flow_min, need.flow_max) = (None, None);
                    if v > 0.0 {
                        need.flow_max = Some(Flow::from_l_min(30.0));
                    }
                    y.machine().hydraulics.flow = None;
                },
                0.0,
                1.0,
            ),
            (
                "hydraulics-unknown",
                |y, v| {
                    let need = y.implement().hydraulics.as_mut().expect("the arm has hydraulics");
                    (need.pressure_min, need.pressure_max) = (None, None);
                    if v > 0.0 {
                        need.pressure_min = Some(Pressure::from_bar(120.0));
                    }
                    y.machine().hydraulics.relief = None;
                },
                0.0,
                1.0,
            ),
            (
                "hydraulics-unknown",
                |y, v| {
                    y.implement().hydraulics.as_mut().expect("the arm has hydraulics").outlets = u32::from(v > 0.0);
                    y.machine().hydraulics.outlets = None;
                },
                0.0,
                1.0,
            ),
            (
                "hydraulics-unknown",
                |y, v| {
                    y.implement().hydraulics.as_mut().expect("the arm has hydraulics").power_beyond = v > 0.0;
                    y.machine().hydraulics.power_beyond = None;
                },
                0.0,
                1.0,
            ),
            // The frame's rails are 60 mm below its plates, which are 400 mm up less what it hangs lower.
            ("frame-low", |y, v| y.frame().body.underside = vec![vec![(mm(0.0), mm(-400.0 + v))]], 100.1, 99.9),
            ("frame-in-the-ground", |y, v| y.frame().body.underside = vec![vec![(mm(0.0), mm(-400.0 + v))]], 0.1, -0.1),
        ],
    );
}

#[test]
fn what_is_as_large_as_its_limit_keeps_it() {
    let told = Yard::new().judge();
    let room = length(&told, "seat-room", "room");
    let load = mass(&told, "axle-within-rating", "load");
    let equal: [Shared; 4] = [
        ("seat-room-short", &|y, share| y.seat().least_room = Some(room * share)),
        ("seat-reach-far", &|y, share| y.seat().greatest_reach = Some(room / share)),
        ("axle-overloaded", &|y, share| y.machine().front.rated = Some(load / share)),
        ("tyre-overloaded", &|y, share| y.machine().front.tyre_rated = Some(load / 2.0 / share)),
    ];
    hold_shares(&Yard::new(), &equal);
}

#[test]
fn trailer_and_site() {
    let mut start = Yard::new();
    start.trailer();
    start.site();
    let told = start.judge();
    let (height, width) = (told.footprint.height.expect("it is drawn"), told.footprint.width.expect("it is drawn"));
    let on = on_trailer(&Desk::new(start.catalogue.clone()), &start.build).expect("it stands on one");
    let (total, axle) = (on.total.load.expect("it is stated"), on.axles(on.better()).load.expect("it is stated"));
    let over_tyres = mm(1750.0) - on.side_room.expect("it is stated");
    assert!((over_tyres.mm() - 1080.0).abs() < 1e-9);
    let ground = mass(&told, "ground-carries", "load");
    let equal: [Shared; 8] = [
        ("gate-narrow", &|y, share| y.site().gate_width = Some(width / share)),
        ("gate-low", &|y, share| y.site().gate_height = Some(height / share)),
        ("ground-overloaded", &|y, share| y.site().greatest_axle_load = Some(ground / share)),
        ("trailer-overloaded", &|y, share| y.trailer().rated_total = Some(total / share)),
        ("trailer-overloaded", &|y, share| y.trailer().rated_axle = Some(axle / share)),
        ("trailer-narrow", &|y, share| y.trailer().deck_width = Some((mm(860.0) + mm(220.0)) / share)),
        ("trailer-short", &|y, share| y.trailer().deck_length = Some(mm(1450.0) / share)),
        ("corner-tight", &|y, share| y.site().path_width = Some(wanted(&told) / share)),
    ];
    hold_shares(&start, &equal);
}

fn wanted(told: &Answer) -> Length {
    length(told, "corner-clears", "wanted")
}
