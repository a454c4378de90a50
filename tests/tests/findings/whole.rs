//! The build as a whole: loads, hydraulics, drive, seat, station and what goes on or comes off.

use fitup_core::build::Carrying;
use fitup_core::finding::Verdict;
use fitup_core::item::{FrontSeatEffect, ImplementId, ItemRef, SeatKind, Serials, Station, SuppliedWith};
use fitup_core::quantity::{Flow, Mass, Power, Pressure};
use fitup_yard::{ARM, FLAIL, FRAME, MACHINE, SPACER, Yard, mm};

fn flail(yard: &mut Yard) {
    *yard = Yard::new().with_flail();
}

fn heavy(yard: &mut Yard, kg: f64) {
    yard.implement().body.mass.as_mut().expect("it has a mass").value = Mass::from_kg(kg);
}

crate::case::findings! {
    adapter_goes_in: "adapter-goes-in", |yard| yard.build.adapters.push(SPACER), "work, work 1.50 h, item spacer", "Rack spacer goes in between.";
    adapter_not_needed: "adapter-not-needed",
        |yard| {
            flail(yard);
            yard.build.adapters.push(SPACER);
        },
        "up, item spacer", "Rack spacer is not needed here.",
        unless |yard| yard.build.adapters.push(SPACER);
    arm_on_hitch: "arm-on-hitch",
        |yard| {
            flail(yard);
            yard.implement().kind = fitup_core::item::ImplementKind::DiggingArm;
        },
        "check, item flail", "A digging arm on a bare three-point hitch can be forced up towards the operator. Ask whether its maker offers a stay for it.", unless |yard| flail(yard);
    axle_overloaded: "axle-overloaded", |yard| yard.machine().rear.rated = Some(Mass::from_kg(600.0)), "wont, axle 'rear', load 917.5 kg, rated 600.0 kg, over 317.5 kg", "The rear axle would carry more than it is rated for.";
    axle_within_rating: "axle-within-rating", |_| {}, "up, axle 'front', load 395.5 kg, rated 1200.0 kg, left 804.5 kg", "The front axle carries its load within its rating.",
        unless |yard| {
            yard.machine().rear.rated = Some(Mass::from_kg(100.0));
            yard.machine().front.rated = Some(Mass::from_kg(100.0));
        };
    frame_idle: "frame-idle", |yard| yard.build.implement = Some(ImplementId(1)), "check, item long-frame, other flail", "Long frame stays empty: Flail hangs on the three-point hitch behind it.";
    front_axle_heavy_enough: "front-axle-heavy-enough", |_| {}, "up, share 0.404, least 0.200, rule 'front-share-of-unladen'", "Enough weight stays on the front wheels to steer.", unless |yard| heavy(yard, 900.0);
    front_axle_light: "front-axle-light", |yard| heavy(yard, 600.0), "work, share 0.152, least 0.200, rule 'front-share-of-unladen', ballast 38.5 kg, ballast-at 1760.00 mm", "The front wheels get too light to steer safely. About 38\u{a0}kg of front ballast would bring them up.";
    front_axle_lifts: "front-axle-lifts", |yard| heavy(yard, 900.0), "wont, lift 26.5 kg, ballast 183.3 kg, ballast-at 1760.00 mm", "The front wheels would come off the ground.";
    front_seat_in_the_way: "front-seat-in-the-way",
        |yard| yard.seat().front_seat = FrontSeatEffect::SlidesForward(mm(200.0)),
        "wont, need 200.00 mm, has 120.00 mm", "The operator’s seat would have to slide forward farther than it can.",
        unless |yard| yard.seat().front_seat = FrontSeatEffect::SlidesForward(mm(100.0));
    hydraulics_flow_high: "hydraulics-flow-high",
        |yard| yard.machine().hydraulics.flow = Some(Flow::from_l_min(40.0)),
        "check, flow 40.0 L/min, most 30.0 L/min", "The machine pumps more oil than the implement is made for.";
    hydraulics_flow_short: "hydraulics-flow-short",
        |yard| yard.machine().hydraulics.flow = Some(Flow::from_l_min(10.0)),
        "check, flow 10.0 L/min, least 15.0 L/min, time-ratio 1.500", "The machine pumps less oil than the implement wants, so it works slowly.";
    hydraulics_match: "hydraulics-match", |_| {}, "up, flow 24.0 L/min, pressure 160 bar, power 6.40 kW", "The machine’s hydraulics suit the implement.", unless |yard| flail(yard);
    hydraulics_no_power_beyond: "hydraulics-no-power-beyond",
        |yard| {
            yard.machine().hydraulics.power_beyond = Some(false);
            yard.implement().hydraulics.as_mut().expect("the arm has hydraulics").power_beyond = true;
        },
        "work", "The implement wants its own feed from the pump (power beyond), and the machine has none yet.",
        unless |yard| yard.machine().hydraulics.power_beyond = Some(false);
    hydraulics_outlets_short: "hydraulics-outlets-short", |yard| yard.machine().hydraulics.outlets = Some(0), "work, has 0, need 1", "The machine has too few hydraulic outlets.";
    hydraulics_pressure_high: "hydraulics-pressure-high",
        |yard| yard.machine().hydraulics.relief = Some(Pressure::from_bar(200.0)),
        "wont, pressure 200 bar, most 180 bar", "The machine’s hydraulic pressure is more than the implement stands.";
    hydraulics_pressure_short: "hydraulics-pressure-short",
        |yard| yard.machine().hydraulics.relief = Some(Pressure::from_bar(100.0)),
        "check, pressure 100 bar, least 120 bar", "The machine’s hydraulic pressure is low for the implement, so it digs or lifts with less force.";
    hydraulics_unknown: "hydraulics-unknown", |yard| yard.machine().hydraulics.flow = None, "check, missing 'flow'", "Not everything is stated about the machine’s hydraulics.";
    implement_own_seat: "implement-own-seat", |yard| yard.seat().kind = SeatKind::ImplementsOwn, "wont", "This seat comes with an implement, and the chosen implement brings none.",
        unless |yard| {
            yard.seat().kind = SeatKind::ImplementsOwn;
            yard.implement().own_seat = true;
        };
    lift_enough: "lift-enough", |yard| flail(yard), "up, left 350.0 kg, mass 150.0 kg, lift 500.0 kg", "The hitch can lift the implement.";
    lift_short: "lift-short",
        |yard| {
            flail(yard);
            heavy(yard, 600.0);
        },
        "wont, over 100.0 kg, mass 600.0 kg, lift 500.0 kg", "The hitch cannot lift the implement.", unless |yard| flail(yard);
    lift_unknown: "lift-unknown",
        |yard| {
            flail(yard);
            let hitch = yard.hitch(MACHINE, "hitch");
            (hitch.lift, hitch.lift_610) = (None, None);
        },
        "check, missing 'lift'", "It is not stated whether the hitch can lift the implement.", unless |yard| flail(yard);
    loads_unknown: "loads-unknown", |yard| yard.implement().body.mass = None, "check, missing 'mass', item arm", "The axle loads are not known, because something they depend on is not stated.";
    must_come_off: "must-come-off",
        |yard| {
            yard.frame().excludes.push("belly mower".into());
            yard.machine().fitted.push("belly mower".into());
        },
        "work, what 'belly mower', item long-frame", "Belly mower has to come off the machine.",
        unless |yard| yard.frame().excludes.push("belly mower".into());
    must_go_on: "must-go-on", |yard| yard.frame().requires.push("loader base".into()), "work, what 'loader base', item long-frame", "Loader base has to be on the machine.",
        unless |yard| {
            yard.frame().requires.push("loader base".into());
            yard.machine().fitted.push("loader base".into());
        };
    needs_frame: "needs-frame", |yard| yard.build.carrying = Carrying::Hitch, "wont, item arm", "Digging arm needs a mounting frame.",
        unless |yard| {
            // Made for the hitch, it only has nothing to hang on yet.
            flail(yard);
            yard.machine().body.ports.retain(|port| port.role != fitup_core::item::Role::Hitch);
        };
    place_unknown: "place-unknown", |yard| yard.port(ARM, "hooks").pose = None, "check, item arm", "Where Digging arm stands on the machine is not stated, so nothing that depends on it can be worked out.";
    power_high: "power-high",
        |yard| {
            flail(yard);
            yard.implement().power_most = Some(Power::from_kw(10.0));
        },
        "check, power 14.00 kW, most 10.00 kW", "The machine has more power than the implement is made for.", unless |yard| flail(yard);
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
        "check, missing 'power'", "The machine’s power at the take-off is not stated.", unless |yard| flail(yard);
    seat_faces_forward: "seat-faces-forward", |yard| yard.seat().kind = SeatKind::Forward, "wont", "The implement is worked facing the rear, and this seat faces forward only.",
        unless |yard| {
            yard.seat().kind = SeatKind::Forward;
            yard.implement().worked_from_seat = false;
        };
    seat_reach_far: "seat-reach-far", |yard| yard.seat().greatest_reach = Some(mm(500.0)), "check, distance 550.00 mm, most 500.00 mm", "The levers are too far from the seat to be reached well.";
    seat_room: "seat-room", |_| {}, "up, room 550.00 mm, least 450.00 mm", "There is room for the knees between seat and levers.", unless |yard| yard.implement().worked_from_seat = false;
    seat_room_short: "seat-room-short", |yard| yard.seat().least_room = Some(mm(600.0)), "wont, room 550.00 mm, least 600.00 mm, short 50.00 mm", "There is too little room between seat and levers.";
    seat_room_unknown: "seat-room-unknown", |yard| yard.implement().console = None, "check, missing 'console'", "It is not stated how much room there is at the seat.";
    seat_station_differs: "seat-station-differs", |yard| yard.seat().stations = vec![Station::Cab], "wont, station 'open'", "This seat is not made for an open machine.",
        unless |yard| yard.seat().stations = vec![Station::Open];
    seat_switch_missing: "seat-switch-missing", |yard| yard.seat().presence_switch = Some(false), "work", "The seat has no switch that tells the machine somebody is sitting there. One has to be fitted as the maker’s manual says.";
    seat_switch_unknown: "seat-switch-unknown", |yard| yard.seat().presence_switch = None, "check", "It is not stated whether the seat has a switch that tells the machine somebody is sitting there.";
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
            yard.build.serials.insert(MACHINE, 200);
        },
        "check, serial '200', item hedge", "The serial number 200 is not one of Hedge tractor as listed here. Look again which one it is.",
        unless |yard| {
            yard.machine().body.serials = Serials { first: Some(100), last: Some(199) };
            yard.build.serials.insert(MACHINE, 199);
        };
    station_differs: "station-differs", |yard| yard.frame().stations = vec![Station::Cab], "wont, station 'open'", "This frame is not made for an open machine.";
    station_unknown: "station-unknown", |yard| yard.frame().stations.clear(), "check", "It is not stated whether this frame is for open machines or for cabs.";
    tyre_overloaded: "tyre-overloaded", |yard| yard.machine().rear.tyre_rated = Some(Mass::from_kg(300.0)), "wont, axle 'rear', load 458.7 kg, rated 300.0 kg, over 158.7 kg", "The rear tyres would carry more than they are rated for.";
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
            yard.build.adapters.push(SPACER);
            yard.body(ItemRef::Adapter(SPACER)).ports[1].pose = None;
        },
    ];
    for (at, change) in changes.into_iter().enumerate() {
        let mut yard = Yard::new();
        change(&mut yard);
        let answer = yard.judge();
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
