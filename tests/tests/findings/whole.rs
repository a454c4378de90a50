//! The build as a whole: loads, hydraulics, drive, seat, station and what goes on or comes off.

use fitup_core::build::Carrying;
use fitup_core::finding::{Value, Verdict};
use fitup_core::item::{ImplementId, ItemRef, SeatKind, Serials, Station, SuppliedWith};
use fitup_core::quantity::{Flow, Mass, Power, Pressure};
use fitup_yard::{ARM, FLAIL, FRAME, MACHINE, SPACER, Yard, mm};

fn flail(yard: &mut Yard) {
    *yard = Yard::new().with_flail();
}

fn heavy(yard: &mut Yard, kg: f64) {
    yard.implement().body.mass.as_mut().expect("it has a mass").value = Mass::from_kg(kg);
}

crate::case::findings! {
    adapter_goes_in: "adapter-goes-in", |yard| yard.build.side.adapters.push(SPACER), "work, work 1.50 h, item spacer", "Rack spacer goes in between.";
    adapter_not_needed: "adapter-not-needed",
        |yard| {
            flail(yard);
            yard.build.side.adapters.push(SPACER);
        },
        "up, item spacer", "Rack spacer is not needed here.",
        unless |yard| yard.build.side.adapters.push(SPACER);
    arm_on_hitch: "arm-on-hitch",
        |yard| {
            flail(yard);
            yard.implement().kind = fitup_core::item::ImplementKind::DiggingArm;
        },
        "check, item flail", "Do not dig with Flail hung on the three-point hitch alone: it can be forced up and over and crush the operator. Fit a frame, or the maker’s own brace where the manual allows it.", unless |yard| flail(yard);
    axle_overloaded: "axle-overloaded", |yard| yard.machine().rear.rated = Some(Mass::from_kg(600.0)), "wont, axle 'rear', load 917.5 kg, rated 600.0 kg, over 317.5 kg", "The rear axle would carry 317\u{a0}kg more than it is rated for.";
    axle_within_rating: "axle-within-rating", |_| {}, "up, axle 'front', load 395.5 kg, rated 1200.0 kg, left 804.5 kg", "The front axle carries its load within its rating.",
        unless |yard| {
            yard.machine().rear.rated = Some(Mass::from_kg(100.0));
            yard.machine().front.rated = Some(Mass::from_kg(100.0));
        };
    load_near_rating: "load-near-rating", |yard| yard.machine().rear.rated = Some(Mass::from_kg(917.0)), "check, bearer 'rear-axle', load 917.5 kg, rated 917.0 kg, off 23.7 kg", "The rear axle is so near to its rating that it has to be weighed.";
    front_axle_near_least: "front-axle-near-least", |yard| heavy(yard, 520.0), "work, share 0.200, least 0.200, rule 'front-share-of-unladen', off 14.8 kg, ballast 12.2 kg, ballast-at 1760.00 mm", "The front wheels may get too light to steer safely: the masses may be off by more than is left. Weigh the front axle, or fit at least 13\u{a0}kg of front ballast.";
    front_share_of_total_low: "front-share-of-total-low", |yard| heavy(yard, 450.0), "up, share 0.150, least 0.200, ballast 78.3 kg, ballast-at 1760.00 mm", "The front wheels carry 15% of everything that stands on the wheels. Common practice, without a source, is 20%: at least 79\u{a0}kg of front ballast reaches it.";
    frame_idle: "frame-idle", |yard| yard.build.choices.implement = Some(ImplementId(1)), "check, item long-frame, other flail", "Long frame stays empty: Flail hangs on the three-point hitch behind it.";
    front_axle_heavy_enough: "front-axle-heavy-enough", |_| {}, "up, share 0.404, least 0.200, rule 'front-share-of-unladen'", "Enough weight stays on the front wheels to steer: 40%, at least 20% is needed.", unless |yard| heavy(yard, 900.0);
    front_axle_light: "front-axle-light", |yard| heavy(yard, 600.0), "work, share 0.152, least 0.200, rule 'front-share-of-unladen', ballast 52.4 kg, ballast-at 1760.00 mm", "The front wheels get too light to steer safely. At least 53\u{a0}kg of front ballast is needed.";
    front_axle_lifts: "front-axle-lifts", |yard| heavy(yard, 900.0), "wont, lift 26.5 kg, ballast 202.8 kg, ballast-at 1760.00 mm", "The front wheels would lift off the ground. Do not drive it so: at least 203\u{a0}kg of front ballast is needed.";
    hydraulics_flow_high: "hydraulics-flow-high",
        |yard| yard.machine().hydraulics.flow = Some(Flow::from_l_min(40.0)),
        "check, flow 40.0 L/min, most 30.0 L/min", "The machine pumps more oil than the implement may take.";
    hydraulics_flow_short: "hydraulics-flow-short",
        |yard| yard.machine().hydraulics.flow = Some(Flow::from_l_min(10.0)),
        "wont, flow 10.0 L/min, least 15.0 L/min, time-ratio 1.500", "The machine pumps 10\u{a0}L/min of oil, less than the 15\u{a0}L/min with which the implement works.";
    hydraulics_match: "hydraulics-match", |_| {}, "up, flow 24.0 L/min, pressure 160 bar, power 6.40 kW", "The machine’s hydraulics suit the implement.", unless |yard| flail(yard);
    hydraulics_no_power_beyond: "hydraulics-no-power-beyond",
        |yard| {
            yard.machine().hydraulics.power_beyond = Some(false);
            yard.implement().hydraulics.as_mut().expect("the arm has hydraulics").power_beyond = Some(true);
        },
        "work", "The implement needs its own feed from the pump (power beyond), and the machine has none yet.",
        unless |yard| yard.machine().hydraulics.power_beyond = Some(false);
    hydraulics_outlets_short: "hydraulics-outlets-short", |yard| yard.machine().hydraulics.outlets = Some(0), "work, has 0, need 1", "The machine has too few remote outlets.";
    hydraulics_pressure_high: "hydraulics-pressure-high",
        |yard| yard.machine().hydraulics.relief = Some(Pressure::from_bar(200.0)),
        "wont, pressure 200 bar, most 180 bar", "The machine’s hydraulic pressure is higher than the implement may take. Do not connect it before a workshop has set the relief valve lower.";
    hydraulics_pressure_short: "hydraulics-pressure-short",
        |yard| yard.machine().hydraulics.relief = Some(Pressure::from_bar(100.0)),
        "wont, pressure 100 bar, least 120 bar", "The machine’s hydraulic pressure is 100\u{a0}bar, less than the 120\u{a0}bar with which the implement works.";
    hydraulics_unknown: "hydraulics-unknown", |yard| yard.machine().hydraulics.flow = None, "check, missing 'flow'", "Hydraulic data are missing. Do not connect the implement before pressure and flow are known.";
    implement_own_seat: "implement-own-seat", |yard| yard.seat().kind = SeatKind::ImplementsOwn, "wont", "You chose the implement’s own seat, and this implement has none.",
        unless |yard| {
            yard.seat().kind = SeatKind::ImplementsOwn;
            yard.implement().own_seat = Some(true);
        };
    lift_enough: "lift-enough", |yard| flail(yard), "up, left 350.0 kg, mass 150.0 kg, lift 500.0 kg", "The hitch can lift the implement, with 350\u{a0}kg to spare.";
    lift_short: "lift-short",
        |yard| {
            flail(yard);
            heavy(yard, 600.0);
        },
        "wont, over 100.0 kg, mass 600.0 kg, lift 500.0 kg", "The hitch cannot lift the implement: it is 100\u{a0}kg too heavy.", unless |yard| flail(yard);
    lift_unknown: "lift-unknown",
        |yard| {
            flail(yard);
            let hitch = yard.hitch(MACHINE, "hitch");
            (hitch.lift, hitch.lift_610) = (None, None);
        },
        "check, missing 'lift'", "It is not known whether the hitch can lift the implement.", unless |yard| flail(yard);
    loads_unknown: "loads-unknown", |yard| yard.implement().body.mass = None, "check, missing 'mass', item arm", "Some data are missing, so the axle loads are not known. Do not lift or drive with the implement before they are known.";
    needs_frame: "needs-frame", |yard| yard.build.choices.carrying = Carrying::Hitch, "wont, item arm", "Digging arm needs a mounting frame.",
        unless |yard| {
            // Made for the hitch, it only has nothing to hang on yet.
            flail(yard);
            yard.machine().body.ports.retain(|port| port.role != fitup_core::item::Role::Hitch);
        };
    place_unknown: "place-unknown", |yard| yard.port(ARM, "hooks").pose = None, "check, item arm", "It is not known where Digging arm sits on the machine, so nothing that depends on it can be worked out.";
    power_high: "power-high",
        |yard| {
            flail(yard);
            yard.implement().power_most = Some(Power::from_kw(10.0));
        },
        "check, power 14.00 kW, most 10.00 kW", "The machine has more power than the implement may take.", unless |yard| flail(yard);
    power_short: "power-short",
        |yard| {
            flail(yard);
            yard.implement().power_least = Some(Power::from_kw(20.0));
        },
        "wont, power 14.00 kW, least 20.00 kW", "The machine has too little power for the implement.", unless |yard| flail(yard);
    power_unknown: "power-unknown",
        |yard| {
            flail(yard);
            yard.take_off(MACHINE, "take-off").power = None;
        },
        "check, missing 'power'", "The machine’s PTO power is not known.", unless |yard| flail(yard);
    seat_faces_forward: "seat-faces-forward", |yard| yard.seat().kind = SeatKind::Forward, "wont", "The implement is worked facing the rear, and this seat faces forward only.",
        unless |yard| {
            yard.seat().kind = SeatKind::Forward;
            yard.implement().worked_from_seat = Some(false);
        };
    seat_reach_far: "seat-reach-far", |yard| yard.seat().greatest_reach = Some(mm(500.0)), "check, distance 550.00 mm, most 500.00 mm", "The levers are too far from the seat to be reached well: 550\u{a0}mm, at most 500\u{a0}mm.";
    room_close: "room-close", |yard| yard.seat().least_room = Some(mm(551.0)), "check, room 550.00 mm, least 551.00 mm, off 3.00 mm", "The room between seat and levers is just about what is needed: 550\u{a0}mm, at least 551\u{a0}mm. Measure it.";
    seat_room: "seat-room", |_| {}, "up, room 550.00 mm, least 450.00 mm", "There is room for the knees between seat and levers: 550\u{a0}mm, at least 450\u{a0}mm is needed.", unless |yard| yard.implement().worked_from_seat = Some(false);
    seat_room_short: "seat-room-short", |yard| yard.seat().least_room = Some(mm(600.0)), "wont, room 550.00 mm, least 600.00 mm, short 50.00 mm", "There is 50\u{a0}mm too little room between seat and levers.";
    seat_room_unknown: "seat-room-unknown", |yard| yard.implement().console = None, "check, missing 'console'", "It is not known how much room there is at the seat.";
    hydraulic_lines_unknown: "hydraulic-lines-unknown", |yard| yard.machine().hydraulics.outlets = None, "check, missing 'outlets'", "It is not known whether the hydraulic lines can be joined, because data are missing.";
    seat_reach_unknown: "seat-reach-unknown", |yard| yard.seat().greatest_reach = None, "check, missing 'reach'", "It is not known how far the levers are from the seat.";
    seat_station_unknown: "seat-station-unknown", |yard| yard.seat().stations.clear(), "check", "It is not known whether this seat is for open machines or for cabs.";
    seat_station_differs: "seat-station-differs", |yard| yard.seat().stations = vec![Station::Cab], "wont, station 'open'", "This seat is not made for an open machine.",
        unless |yard| yard.seat().stations = vec![Station::Open];
    seat_switch_missing: "seat-switch-missing", |yard| yard.seat().presence_switch = Some(false), "work", "This seat has no seat switch, which tells the machine that somebody is sitting there. Have one fitted as the maker’s manual says. Do not bridge it.";
    seat_switch_unknown: "seat-switch-unknown", |yard| yard.seat().presence_switch = None, "check", "It is not known whether this seat has a seat switch, which tells the machine that somebody is sitting there.";
    seat_turns_not: "seat-turns-not", |yard| yard.seat().kind = SeatKind::Turning, "wont", "The operator’s seat of this machine does not turn round.",
        unless |yard| {
            yard.seat().kind = SeatKind::Turning;
            yard.machine().operator_seat.as_mut().expect("the machine has a seat").turns = true;
        };
    seat_without_its_supplier: "seat-without-its-supplier",
        |yard| {
            yard.seat().supplied_with = SuppliedWith::Frame;
            yard.seat().body.listed_with = vec!["short-frame".into()];
        },
        "check, supplier 'frame'", "This seat comes only with another frame.",
        unless |yard| {
            yard.seat().supplied_with = SuppliedWith::Frame;
            yard.seat().body.listed_with = vec!["long-frame".into()];
        };
    serial_of_another: "serial-of-another",
        |yard| {
            yard.machine().body.serials = Serials { first: Some(100), last: Some(199) };
            yard.build.side.serials.insert(MACHINE, 200);
        },
        "check, serial '200', item hedge", "The serial number 200 does not belong to Hedge tractor as listed here. Check which unit it is.",
        unless |yard| {
            yard.machine().body.serials = Serials { first: Some(100), last: Some(199) };
            yard.build.side.serials.insert(MACHINE, 199);
        };
    station_differs: "station-differs", |yard| yard.frame().stations = vec![Station::Cab], "check, station 'open'", "This frame is not made for an open machine.";
    station_unknown: "station-unknown", |yard| yard.frame().stations.clear(), "check", "It is not known whether this frame is for open machines or for cabs.";
    tyre_overloaded: "tyre-overloaded", |yard| yard.machine().rear.tyre_rated = Some(Mass::from_kg(300.0)), "wont, axle 'rear', load 458.7 kg, rated 300.0 kg, over 158.7 kg", "Each rear tyre would carry 159\u{a0}kg more than it is rated for.";
}

#[test]
fn the_flail_is_on_the_hitch() {
    let mut yard = Yard::new();
    flail(&mut yard);
    assert!(yard.judge().stack.placement(FLAIL).is_some());
}

#[test]
fn what_has_no_known_place_is_not_measured_with() {
    let changes: [fn(&mut Yard); 6] = [
        |yard| yard.port(ARM, "hooks").pose = None,
        |yard| yard.port(FRAME, "rack").pose = None,
        |yard| yard.port(FRAME, "axle plate").pose = None,
        |yard| yard.implement().body.ports.clear(),
        |yard| {
            flail(yard);
            yard.implement().body.ports.clear();
        },
        |yard| {
            yard.build.side.adapters.push(SPACER);
            yard.body(ItemRef::Adapter(SPACER)).ports[1].pose = None;
            yard.body(ItemRef::Adapter(SPACER)).shapes = yard.body(FRAME).shapes.clone();
        },
    ];
    for (at, change) in changes.into_iter().enumerate() {
        let mut yard = Yard::new();
        change(&mut yard);
        yard.trailer();
        yard.site();
        let answer = yard.judge();
        for code in ["ramp-clears", "ramp-drags", "gate-passes", "ground-carries", "trailer-carries"] {
            assert!(answer.findings.iter().all(|finding| finding.code != code), "{at}: {code}");
        }
        // It is the place that is missing, and nothing of the machine's.
        let missing: Vec<_> = answer.findings.iter().filter_map(|finding| finding.figure("missing")).collect();
        assert!(missing.contains(&&Value::Word("pose")), "{at}: {missing:?}");
        assert!(["width", "outline"].iter().all(|what| !missing.contains(&&Value::Word(what))), "{at}");
        let told: Vec<_> = answer.findings.iter().filter(|finding| finding.code == "place-unknown").collect();
        assert!(!told.is_empty() && answer.verdict >= Verdict::CheckFirst, "{at}");
        let footprint = &answer.footprint;
        assert_eq!((footprint.length, footprint.mass, footprint.departure), (None, None, None), "{at}");
        assert!(footprint.wheelbase.is_some() && answer.bare.length.is_some(), "{at}");
        assert!(!answer.findings.iter().any(|finding| finding.code == "front-axle-heavy-enough"), "{at}");
    }
    // Joined all the same: that the hooks hold has nothing to do with where they are.
    let mut yard = Yard::new();
    yard.port(ARM, "hooks").pose = None;
    assert!(yard.judge().findings.iter().any(|finding| finding.code == "hooks-hold"));
}
