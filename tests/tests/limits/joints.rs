//! Pins, hooks and hitches, and what hangs on a hitch.

use fitup_core::finding::Value;
use fitup_core::item::{ItemRef, PinForm, ThreePoint};
use fitup_core::quantity::{Length, Mass, Power};
use fitup_yard::{ARM, FLAIL, FRAME, MACHINE, SLEEVE, Yard, drawn, hitch, point};

use crate::hold;

#[test]
fn hitch_and_drive() {
    let flail = Yard::new().with_flail();
    hold(
        &flail,
        &[
            ("power-short", |y, v| y.implement().power_least = Some(Power::from_kw(v)), 14.0, 14.1),
            ("power-high", |y, v| y.implement().power_most = Some(Power::from_kw(v)), 14.0, 13.9),
            (
                "lift-short",
                |y, v| y.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(v),
                500.0,
                530.0,
            ),
            // At the points the rating at the points counts, 1,220 mm behind them half of that 610 mm behind.
            (
                "lift-short",
                |y, v| {
                    y.implement().body.centre_of_gravity = Some(point(0.0, 0.0, 0.0));
                    y.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(v);
                },
                700.0,
                740.0,
            ),
            (
                "lift-short",
                |y, v| {
                    y.implement().body.centre_of_gravity = Some(point(-1220.0, 0.0, 0.0));
                    y.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(v);
                },
                249.9,
                270.0,
            ),
            (
                "lift-unknown",
                |y, v| {
                    let hitch = y.hitch(MACHINE, "hitch");
                    (hitch.lift, hitch.lift_610) = (None, (v > 0.0).then_some(Mass::from_kg(500.0)));
                },
                1.0,
                0.0,
            ),
            (
                "hitch-dimension-misfits",
                |y, v| {
                    *y.hitch(MACHINE, "hitch") = ThreePoint { lower_pin: drawn(22.0), ..hitch("1") };
                    *y.hitch(FLAIL, "mast") = ThreePoint { lower_pin: drawn(v), ..hitch("1") };
                    exact(y, [(MACHINE, "hitch"), (FLAIL, "mast")]);
                },
                22.0,
                22.1,
            ),
            (
                "hitch-dimension-misfits",
                |y, v| {
                    *y.hitch(MACHINE, "hitch") = ThreePoint { upper_pin: drawn(19.0), ..hitch("1") };
                    *y.hitch(FLAIL, "mast") = ThreePoint { upper_pin: drawn(v), ..hitch("1") };
                    exact(y, [(MACHINE, "hitch"), (FLAIL, "mast")]);
                },
                19.0,
                19.1,
            ),
            // A pin of its nominal size goes into a ball whose size is not stated, though either may be a little off.
            (
                "hitch-dimension-open",
                |y, v| {
                    *y.hitch(FLAIL, "mast") = ThreePoint { lower_pin: drawn(v), ..hitch("1") };
                },
                22.0,
                22.1,
            ),
            (
                "hitch-dimension-open",
                |y, v| {
                    y.hitch(MACHINE, "hitch").lower_pin = (v < 0.0).then_some(drawn(22.0).expect("it is stated"));
                    *y.hitch(FLAIL, "mast") = ThreePoint { lower_pin: drawn(22.0), ..hitch("1") };
                },
                1.0,
                -1.0,
            ),
            (
                "hitch-dimension-misfits",
                |y, v| {
                    *y.hitch(MACHINE, "hitch") = ThreePoint { span: drawn(v), quick_attach: true, ..hitch("1") };
                    *y.hitch(FLAIL, "mast") = ThreePoint { span: drawn(1.5), ..hitch("1") };
                    exact(y, [(MACHINE, "hitch"), (FLAIL, "mast")]);
                },
                3.0,
                3.1,
            ),
            (
                "hitch-dimension-misfits",
                |y, v| {
                    *y.hitch(MACHINE, "hitch") = ThreePoint { mast: drawn(1.5), quick_attach: true, ..hitch("1") };
                    *y.hitch(FLAIL, "mast") = ThreePoint { mast: drawn(v), ..hitch("1") };
                    exact(y, [(MACHINE, "hitch"), (FLAIL, "mast")]);
                },
                3.0,
                3.1,
            ),
        ],
    );
}

/// Two ports of which every dimension is exactly as stated.
fn exact(yard: &mut Yard, ports: [(ItemRef, &str); 2]) {
    for (item, name) in ports {
        yard.port(item, name).tolerance = Some(Length::ZERO);
    }
}

const RACK: [(ItemRef, &str); 2] = [(FRAME, "rack"), (ARM, "hooks")];

/// The first pin, lug and gap, and the spread of both: bore, pin, lug, gap, spread of clevis and lug.
fn pinned(yard: &mut Yard, [bore, pin, lug, gap, clevis_spread, lug_spread]: [f64; 6]) {
    yard.pinned();
    exact(yard, RACK);
    let clevis = yard.pins(FRAME, "rack");
    (clevis.points[0].diameter, clevis.points[0].width, clevis.spread) = (drawn(pin), drawn(gap), drawn(clevis_spread));
    let lugs = yard.pins(ARM, "hooks");
    (lugs.points[0].diameter, lugs.points[0].width, lugs.spread) = (drawn(bore), drawn(lug), drawn(lug_spread));
}

/// The first bore and pin with the sleeve set between them.
fn sleeved(yard: &mut Yard, bore: f64, pin: f64) {
    yard.build.side.adapters.push(SLEEVE);
    pinned(yard, [bore, pin, 30.0, 33.0, 500.0, 500.0]);
}

#[test]
fn pins() {
    let yard = Yard::new();
    hold(
        &yard,
        &[
            ("pins-need-sleeve", |y, v| pinned(y, [3.0, v, 30.0, 33.0, 500.0, 500.0]), 1.5, 1.4),
            ("pins-will-not-enter", |y, v| pinned(y, [v, 25.0, 30.0, 33.0, 500.0, 500.0]), 25.0, 24.9),
            ("pins-will-not-enter", |y, v| pinned(y, [25.5, 25.0, 30.0, v, 500.0, 500.0]), 30.0, 29.9),
            ("pins-side-play", |y, v| pinned(y, [25.5, 25.0, 6.0, v, 500.0, 500.0]), 12.0, 12.1),
            ("pins-spread-off", |y, v| pinned(y, [25.5, 25.0, 30.0, 33.0, v, 2.0]), 4.0, 4.1),
            ("pins-spread-off", |y, v| pinned(y, [25.5, 25.0, 30.0, 33.0, 2.0, v]), 4.0, 4.1),
            // The sleeve set is 27.8 mm outside and 25.2 mm inside: it lines 27.8 to 29.3 mm for 23.7 to 25.2 mm.
            ("pins-need-sleeve", |y, v| sleeved(y, v, 25.0), 29.2, 29.4),
            ("pins-need-sleeve", |y, v| sleeved(y, v, 25.0), 27.8, 27.7),
            ("pins-need-sleeve", |y, v| sleeved(y, 28.0, v), 23.8, 23.6),
            ("pins-need-sleeve", |y, v| sleeved(y, 28.0, v), 25.2, 25.3),
        ],
    );
    // The lug carried or carrying: its bore is the outer of the two, its width the inner.
    let (mut carried, mut carrying) = (yard.clone(), yard);
    pinned(&mut carried, [24.0, 25.0, 30.0, 33.0, 500.0, 500.0]);
    pinned(&mut carrying, [24.0, 25.0, 30.0, 33.0, 500.0, 500.0]);
    let (a, b) = (carrying.pins(FRAME, "rack").clone(), carrying.pins(ARM, "hooks").clone());
    (*carrying.pins(FRAME, "rack"), *carrying.pins(ARM, "hooks")) = (b, a);
    assert_eq!(carrying.pins(FRAME, "rack").form, PinForm::Lug);
    for (yard, carrier, lug) in [(carried, 25.0, 24.0), (carrying, 24.0, 25.0)] {
        let answer = yard.judge();
        let found = answer.findings.iter().find(|finding| finding.code == "pins-will-not-enter").expect("it is told");
        let told = ["carrier", "carried", "over"].map(|name| match found.figure(name) {
            Some(Value::Length(length)) => length.mm(),
            other => panic!("{name}: {other:?}"),
        });
        assert!(told.iter().zip([carrier, lug, 1.0]).all(|(a, b)| (a - b).abs() < 1e-9), "{told:?}");
    }
}

/// Hook and bar with one dimension of each set.
fn hooked(yard: &mut Yard, dimension: &str, bar: f64, hook: f64) {
    exact(yard, RACK);
    for ((item, port), value) in RACK.into_iter().zip([bar, hook]) {
        let rack = yard.rack(item, port);
        let slot = match dimension {
            "diameter" => &mut rack.diameter,
            "spread" => &mut rack.spread,
            "drop" => &mut rack.drop,
            "latch" => &mut rack.latch,
            _ => &mut rack.setback,
        };
        *slot = drawn(value);
    }
}

#[test]
fn hooks() {
    hold(
        &Yard::new(),
        &[
            ("hooks-need-bush", |y, v| hooked(y, "diameter", 3.0, v), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "diameter", 3.0, v), 12.9, 13.1),
            ("hooks-misfit", |y, v| hooked(y, "diameter", 3.0, v), 3.0, 2.9),
            ("hooks-need-bush", |y, v| hooked(y, "latch", v, 3.0), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "latch", v, 3.0), 12.9, 13.1),
            ("hooks-misfit", |y, v| hooked(y, "latch", v, 3.0), 3.0, 2.9),
            ("hooks-misfit", |y, v| hooked(y, "spread", v, 3.0), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "drop", 3.0, v), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "setback", 3.0, v), 6.0, 6.1),
        ],
    );
}
