//! Every limit from both sides: what just keeps it is not told of, what just breaks it is; and what the yard measures.
//!
//! Where a limit is kept at equality, the values are chosen so that it is met exactly: twice and once the same number.

use fitup_core::build::Change;
use fitup_core::finding::Value;
use fitup_core::fit::{Answer, Desk, access, loading, on_trailer, tip, weight};
use fitup_core::item::{FrontAxle, FrontSeatEffect, ItemRef, PinForm, RampSize, ThreePoint};
use fitup_core::quantity::{Angle, Flow, Length, Mass, Power, Pressure};
use fitup_yard::{ARM, FLAIL, FRAME, MACHINE, SLEEVE, Yard, drawn, hitch, mm, point};

/// A code, a change to the yard by a value, the value that keeps the limit, and one that breaks it.
type Limit = (&'static str, fn(&mut Yard, f64), f64, f64);

fn says(yard: &Yard, code: &str) -> bool {
    yard.judge().findings.iter().any(|finding| finding.code == code)
}

fn hold(start: &Yard, limits: &[Limit]) {
    for &(code, turn, keeps, breaks) in limits {
        for (value, told) in [(keeps, false), (breaks, true)] {
            let mut yard = start.clone();
            turn(&mut yard, value);
            assert_eq!(says(&yard, code), told, "{code} at {value}");
        }
    }
}

fn of_machine(yard: &Yard) -> Desk {
    Desk::new(yard.catalogue.clone())
}

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
                500.1,
            ),
            // At the points the rating at the points counts, 1,220 mm behind them half of that 610 mm behind.
            (
                "lift-short",
                |y, v| {
                    y.implement().body.centre_of_gravity = Some(point(0.0, 0.0, 0.0));
                    y.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(v);
                },
                700.0,
                700.1,
            ),
            (
                "lift-short",
                |y, v| {
                    y.implement().body.centre_of_gravity = Some(point(-1220.0, 0.0, 0.0));
                    y.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(v);
                },
                249.9,
                250.1,
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
            (
                "pins-need-sleeve",
                |y, v| {
                    y.build.adapters.push(SLEEVE);
                    pinned(y, [v, 25.0, 30.0, 33.0, 500.0, 500.0]);
                },
                29.2,
                29.4,
            ),
            (
                "pins-need-sleeve",
                |y, v| {
                    y.build.adapters.push(SLEEVE);
                    pinned(y, [v, 25.0, 30.0, 33.0, 500.0, 500.0]);
                },
                27.8,
                27.7,
            ),
            (
                "pins-need-sleeve",
                |y, v| {
                    y.build.adapters.push(SLEEVE);
                    pinned(y, [28.0, v, 30.0, 33.0, 500.0, 500.0]);
                },
                23.8,
                23.6,
            ),
            (
                "pins-need-sleeve",
                |y, v| {
                    y.build.adapters.push(SLEEVE);
                    pinned(y, [28.0, v, 30.0, 33.0, 500.0, 500.0]);
                },
                25.2,
                25.3,
            ),
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
        let told = ["carrier", "carried", "over"].map(|name| length(&answer, "pins-will-not-enter", name).mm());
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
            ("hooks-misfit", |y, v| hooked(y, "diameter", 3.0, v), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "diameter", 3.0, v), 3.0, 2.9),
            ("hooks-misfit", |y, v| hooked(y, "latch", v, 3.0), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "latch", v, 3.0), 3.0, 2.9),
            ("hooks-misfit", |y, v| hooked(y, "spread", v, 3.0), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "drop", 3.0, v), 6.0, 6.1),
            ("hooks-misfit", |y, v| hooked(y, "setback", 3.0, v), 6.0, 6.1),
        ],
    );
}

#[test]
fn what_is_as_large_as_its_limit_keeps_it() {
    let told = Yard::new().judge();
    let room = length(&told, "seat-room", "room");
    let load = mass(&told, "axle-within-rating", "load");
    let equal: [(&str, &dyn Fn(&mut Yard, f64)); 4] = [
        ("seat-room-short", &|y, share| y.seat().least_room = Some(room * share)),
        ("seat-reach-far", &|y, share| y.seat().greatest_reach = Some(room / share)),
        ("axle-overloaded", &|y, share| y.machine().front.rated = Some(load / share)),
        ("tyre-overloaded", &|y, share| y.machine().front.tyre_rated = Some(load / 2.0 / share)),
    ];
    for (code, turn) in equal {
        for (share, broken) in [(1.0, false), (1.0001, true)] {
            let mut yard = Yard::new();
            turn(&mut yard, share);
            assert_eq!(says(&yard, code), broken, "{code} at {share}");
        }
    }
}

#[test]
fn trailer_and_site() {
    let mut start = Yard::new();
    start.trailer();
    start.site();
    let told = start.judge();
    let (height, width) = (told.footprint.height.expect("it is drawn"), told.footprint.width.expect("it is drawn"));
    let on = on_trailer(&of_machine(&start), &start.build).expect("it stands on one");
    let (total, axle) = (on.total.load.expect("it is stated"), on.axles(on.better()).load.expect("it is stated"));
    let over_tyres = mm(1750.0) - on.side_room.expect("it is stated");
    assert!((over_tyres.mm() - 1080.0).abs() < 1e-9);
    let ground = mass(&told, "ground-carries", "load");
    let equal: [(&str, &dyn Fn(&mut Yard, f64)); 8] = [
        ("gate-narrow", &|y, share| y.site().gate_width = Some(width / share)),
        ("gate-low", &|y, share| y.site().gate_height = Some(height / share)),
        ("ground-overloaded", &|y, share| y.site().greatest_axle_load = Some(ground / share)),
        ("trailer-overloaded", &|y, share| y.trailer().rated_total = Some(total / share)),
        ("trailer-overloaded", &|y, share| y.trailer().rated_axle = Some(axle / share)),
        ("trailer-narrow", &|y, share| y.trailer().deck_width = Some((mm(860.0) + mm(220.0)) / share)),
        ("trailer-short", &|y, share| y.trailer().deck_length = Some(mm(1450.0) / share)),
        ("corner-tight", &|y, share| y.site().path_width = Some(wanted(&told) / share)),
    ];
    for (code, turn) in equal {
        for (share, broken) in [(1.0, false), (1.0001, true)] {
            let mut yard = start.clone();
            turn(&mut yard, share);
            assert_eq!(says(&yard, code), broken, "{code} at {share}");
        }
    }
}

fn wanted(told: &Answer) -> Length {
    length(told, "corner-clears", "wanted")
}

fn close(found: Option<Length>, millimetres: f64) {
    let found = found.expect("it is known").mm();
    assert!((found - millimetres).abs() < 1e-6, "{found} against {millimetres}");
}

#[test]
fn the_bare_machine_measures_what_is_drawn_of_it() {
    let bare = Yard::new().judge().bare;
    // Tyres of 390 mm radius at 0 and 1,450 mm; 860 mm of track and 220 mm of tyre; the bar up; the bonnet's lower edge.
    close(bare.rear_overhang, 390.0);
    close(bare.front_overhang, 390.0);
    close(bare.length, 2230.0);
    close(bare.width, 1080.0);
    close(bare.height, 1880.0);
    close(bare.ground_clearance, 440.0);
    let (rear, front) = bare.extent_x.expect("it is drawn");
    close(Some(rear), -390.0);
    close(Some(front), 1840.0);
    assert_eq!(bare.mass.map(Mass::kg), Some(980.0));
    assert_eq!((bare.front_load, bare.rear_load), (Some(Mass::from_kg(480.0)), Some(Mass::from_kg(500.0))));
}

#[test]
fn the_build_measures_what_stands_on_it() {
    let mut yard = Yard::new();
    let now = yard.judge().footprint;
    // The frame stands at (100, 400), its rack 500 mm behind and 200 mm up; the boom reaches 800 mm behind that.
    close(now.rear_overhang, 1200.0);
    close(now.length, 1200.0 + 1840.0);
    close(now.ground_clearance, 340.0);
    // Machine, frame, seat, arm, operator.
    assert_eq!(now.mass.map(Mass::kg), Some(980.0 + 60.0 + 18.0 + 180.0 + 75.0));
    yard.implement().transport_width = Some(mm(1400.0));
    close(yard.judge().footprint.width, 1400.0);
    close(yard.judge().bare.width, 1080.0);
    // The arm's boom stands 600 + 900 mm high, less than the bar up and more than the bar folded.
    close(now.height, 1880.0);
    yard.build.changes.push(Change::FoldRollOverBar);
    close(yard.judge().footprint.height, 1500.0);
    close(yard.judge().bare.height, 1880.0);
    // Without a radius the tyre takes no part; the other radius stands in for the overall one.
    yard.machine().front.overall_radius = None;
    close(yard.judge().bare.front_overhang, 375.0);
    yard.machine().front.static_loaded_radius = None;
    close(yard.judge().bare.front_overhang, 310.0);
}

#[test]
fn moments_about_the_rear_axle_give_the_front_load() {
    let mut yard = Yard::new();
    yard.build.changes.push(Change::Ballast { mass: Mass::from_kg(50.0), x: mm(1800.0) });
    let desk = of_machine(&yard);
    let found = weight(&desk, &yard.build, None).expect("there is a machine");
    // Front axle 480 kg at 1,450; operator at 210; frame at 100 + 200; arm at -400 - 450; seat at -150 - 30; ballast.
    let moment = 480.0 * 1.45 + 75.0 * 0.21 + 60.0 * 0.3 - 180.0 * 0.85 - 18.0 * 0.18 + 50.0 * 1.8;
    let loads = found.loads.as_ref().expect("everything is stated");
    assert!((loads.front.kg() - moment / 1.45).abs() < 1e-9);
    let total = 480.0 + 500.0 + 75.0 + 60.0 + 180.0 + 18.0 + 50.0;
    assert!((loads.total.kg() - total).abs() < 1e-9);
    assert!((loads.front_share() - moment / 1.45 / total).abs() < 1e-12);
    assert!((found.front_tyre.load.expect("it is known").kg() - moment / 2.9).abs() < 1e-9);
    assert!((found.rear_tyre.load.expect("it is known").kg() - (total - moment / 1.45) / 2.0).abs() < 1e-9);
    assert!(found.rules.iter().all(|rule| rule.is_met()));
    close(found.ballast_at, 1760.0);
    assert!((loads.without_operator().total.kg() - total + 75.0).abs() < 1e-9);
    // Where no seat is stated the operator sits over the rear axle.
    yard.machine().operator_seat = None;
    let found = weight(&of_machine(&yard), &yard.build, None).and_then(|found| found.loads).expect("it is stated");
    assert!((found.front.kg() - (moment - 75.0 * 0.21) / 1.45).abs() < 1e-9);
}

#[test]
fn the_rear_axle_turns_inside_of_the_outer_front_wheel() {
    let mut yard = Yard::new();
    let turning = |yard: &Yard| access(&of_machine(yard), &yard.build).expect("there is a machine").turning_radius;
    close(turning(&yard), f64::sqrt(2200.0 * 2200.0 - 1450.0 * 1450.0) - 430.0);
    // A circle no larger than the wheelbase is none that it turns on.
    yard.machine().turning_radius = Some(mm(1450.0));
    assert_eq!(turning(&yard), None);
    let site = access(&of_machine(&yard), &yard.build).expect("there is a machine");
    assert_eq!((site.gate, site.path, site.right_angle_turn), (None, None, false));
    close(site.height_folded, 1500.0);
}

#[test]
fn a_ramp_stated_by_its_angle_is_the_one_of_its_length() {
    let mut yard = Yard::new();
    yard.trailer();
    let drive = |yard: &Yard| loading(&of_machine(yard), &yard.build).expect("it is carried");
    let level = drive(&yard).ramp.expect("it is stated");
    assert!((level.angle.sin() - 0.48 / 2.4).abs() < 1e-12 && level.length == 2.4);
    yard.trailer().ramp = Some(RampSize::Angle(Angle::from_rad(level.angle)));
    assert!((drive(&yard).ramp.expect("it is stated").length - 2.4).abs() < 1e-9);
    // A beaver tail of 0.4 m at 30° takes 0.2 m of the height.
    yard.trailer().beaver_length = Some(mm(400.0));
    assert_eq!(drive(&yard).ramp, None);
    yard.trailer().beaver_angle = Some(Angle::from_deg(30.0));
    yard.trailer().ramp = Some(RampSize::Length(mm(560.0)));
    let tailed = drive(&yard).ramp.expect("it is stated");
    assert!((tailed.angle.sin() - 0.28 / 0.56).abs() < 1e-9);
    // Too short to reach the deck, and a tail that is higher than the deck.
    yard.trailer().ramp = Some(RampSize::Length(mm(279.0)));
    assert_eq!(drive(&yard).ramp, None);
    yard.trailer().ramp = Some(RampSize::Length(mm(560.0)));
    yard.trailer().beaver_length = Some(mm(960.1));
    assert_eq!(drive(&yard).ramp, None);
}

#[test]
fn the_machine_tips_sideways_over_its_tyres_on_a_fixed_axle() {
    let mut yard = Yard::new();
    yard.machine().front_axle = FrontAxle::Fixed;
    let found = tip(&of_machine(&yard), &yard.build).expect("there is a machine");
    let (_, y, z) = found.centre.expect("every height is stated");
    assert!(y.m().abs() < 1e-12);
    // 980 kg at 560, operator 75 at 760, frame 60 at 400, arm 180 at 600 + 300, seat 18 at 550 + 200 mm.
    let moment = 980.0 * 560.0 + 75.0 * 760.0 + 60.0 * 400.0 + 180.0 * 900.0 + 18.0 * 750.0;
    close(Some(z), moment / (980.0 + 75.0 + 60.0 + 180.0 + 18.0));
    let left = found.angles.and_then(|angles| angles.slope(fitup_core::dimension::Side::Left)).expect("it tips");
    // Half of 860 mm of track beside, the centre above.
    assert!((left.tan() - 0.43 / z.m()).abs() < 1e-9, "{left}");
    yard.machine().front_axle = FrontAxle::Unknown;
    let unknown = tip(&of_machine(&yard), &yard.build).expect("there is a machine");
    assert!(unknown.angles.is_none() && unknown.missing.iter().any(|missing| missing.what == "front-axle"));
}
