//! Joints: listings, lineage, pins, hooks, hitches, take-offs, couplers and wiring.

use fitup_core::build::Presence;
use fitup_core::item::{Coupler, Electric, FrameId, MachineId, PinForm, PortKind, PtoRotation, Serials, Towards};
use fitup_core::quantity::Tool;
use fitup_yard::{ARM, FLAIL, FRAME, MACHINE, OTHER_MACHINE, SEAT, SLEEVE, Yard, drawn, mm, pins};

/// The second machine is listed with the first frame; both machines' axle plates bear these parts.
fn listed_elsewhere(yard: &mut Yard, own: &str, other: &str) {
    yard.list(MachineId(1), FrameId(0));
    yard.bears(FRAME, "axle plate", &["f1"]);
    yard.bears(MACHINE, "axle plate", &[own]);
    yard.bears(OTHER_MACHINE, "axle plate", &[other]);
}

/// Changes the first pinned point of the arm.
fn first_pin(yard: &mut Yard, diameter: f64) {
    yard.pinned();
    yard.pins(ARM, "hooks").points[0].diameter = drawn(diameter);
}

crate::case::findings! {
    closure_meets: "closure-meets", |_| {}, "up, margin 1.50 mm, worst-case 0.80 mm, off-by 0.00 mm", "Bolted at the rear axle, Long frame also meets the front anchor of Hedge tractor.",
        unless |yard| yard.frame().body.ports.retain(|port| port.name != "front plate");
    closure_misses: "closure-misses",
        |yard| yard.port(FRAME, "front plate").pose.as_mut().unwrap().at.x.value = mm(1206.0),
        "wont, margin -3.00 mm, worst-case 0.80 mm, off-by 6.00 mm, longer 6.00 mm, longer-way 'longer'", "Bolted at the rear axle, Long frame does not meet the front anchor of Hedge tractor: it is 6.0\u{a0}mm too long.";
    closure_height_off: "closure-height-off",
        |yard| yard.port(FRAME, "front plate").pose.as_mut().unwrap().at.z.value = mm(120.0),
        "wont, margin -90.00 mm, worst-case 0.80 mm, off-by 120.00 mm, higher 120.00 mm, higher-way 'higher'", "Bolted at the rear axle, Long frame does not meet the front anchor of Hedge tractor: its front comes 120\u{a0}mm too high.";
    closure_aside: "closure-aside",
        |yard| yard.port(FRAME, "front plate").pose.as_mut().unwrap().at.y = mm(60.0),
        "wont, off-by 60.00 mm, limit 3.00 mm, aside-way 'apart'", "Bolted at the rear axle, Long frame does not meet the front anchor of Hedge tractor: the plates lie 60\u{a0}mm apart.";
    closure_faces_apart: "closure-faces-apart",
        |yard| {
            let pose = yard.port(FRAME, "front plate").pose.as_mut().unwrap();
            (pose.faces, pose.up) = (Towards::Up, Towards::Front);
        },
        "wont", "Bolted at the rear axle, Long frame does not meet the front anchor of Hedge tractor: the plates do not look at each other.";
    closure_open: "closure-open",
        |yard| yard.port(FRAME, "front plate").pose.as_mut().unwrap().at.x.value = mm(1202.8),
        "check, margin 0.20 mm, worst-case 0.80 mm, off-by 2.80 mm, probability 0.933", "The drawings cannot tell whether Long frame meets the front anchor of Hedge tractor. Measure first.";
    closure_unknown: "closure-unknown", |yard| yard.port(FRAME, "front plate").pose = None, "check, missing 'pose'", "It is not known where the front anchor sits, so nobody can say yet whether Long frame meets it.";
    coupler_differs: "coupler-differs",
        |yard| {
            let flat = Coupler { standard: "ISO 16028".into(), size: "12.5".into(), gender: None };
            yard.port(ARM, "pressure hose").kind = PortKind::Coupler(flat);
        },
        "work, line 'pressure', carrier 'ISO 7241-A 12.5', carried 'ISO 16028 12.5'", "The hydraulic couplers differ, so the hose needs a different coupler.";
    coupler_fits: "coupler-fits", |_| {}, "up, line 'pressure', standard 'ISO 7241-A', size '12.5'", "The hydraulic couplers match.", unless |yard| *yard = Yard::new().with_flail();
    coupler_unknown: "coupler-unknown",
        |yard| {
            let unsaid = Coupler { standard: String::new(), size: "12.5".into(), gender: None };
            yard.port(ARM, "return hose").kind = PortKind::Coupler(unsaid);
        },
        "check, missing 'standard', line 'return'", "It is not known which hydraulic coupler one side has.";
    hitch_differs: "hitch-differs",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(FLAIL, "mast").categories = vec!["2".into()];
        },
        "wont, carrier '1', carried '2'", "The three-point hitch is too small for Flail: its pins do not go in.", unless |yard| *yard = Yard::new().with_flail();
    hitch_dimension_misfits: "hitch-dimension-misfits",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(FLAIL, "mast").lower_pin = drawn(25.0);
        },
        "wont, dimension 'lower-pin', carrier 22.00 mm, carried 25.00 mm, limit 0.00 mm, over 3.00 mm", "Flail does not go on the three-point hitch: one dimension is wrong.", unless |yard| *yard = Yard::new().with_flail();
    hitch_dimension_open: "hitch-dimension-open",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(FLAIL, "mast").lower_pin = drawn(22.1);
        },
        "check, dimension 'lower-pin', carrier 22.00 mm, carried 22.10 mm, limit 0.00 mm, probability 0.067, settles 0.10 mm", "The dimensions cannot tell whether Flail goes on the three-point hitch. Measure first.", unless |yard| *yard = Yard::new().with_flail();
    hitch_frame_stiff: "hitch-frame-stiff",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(MACHINE, "hitch").categories = vec!["1N".into()];
            yard.hitch(MACHINE, "hitch").quick_attach = true;
        },
        "wont, carrier '1N', carried '1'", "The hooks of the quick hitch are not at the pin spacing of Flail.", unless |yard| *yard = Yard::new().with_flail();
    hitch_other_span: "hitch-other-span",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(MACHINE, "hitch").categories = vec!["1N".into()];
        },
        "work, carrier '1N', carried '1'", "The lower links have to be set to the pin spacing of Flail.", unless |yard| *yard = Yard::new().with_flail();
    hitch_fits: "hitch-fits", |yard| *yard = Yard::new().with_flail(), "up, category '1'", "The three-point hitch is of the right size.";
    hitch_needs_bushings: "hitch-needs-bushings",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(MACHINE, "hitch").categories = vec!["2".into()];
        },
        "work, carrier '2', carried '1'", "The hitch is one size larger than Flail needs: fit reducing bushings.", unless |yard| *yard = Yard::new().with_flail();
    hitch_unknown: "hitch-unknown",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.hitch(FLAIL, "mast").categories.clear();
        },
        "check, missing 'category'", "The size of a three-point hitch is not known.", unless |yard| *yard = Yard::new().with_flail();
    hooks_hold: "hooks-hold", |_| {}, "up, play 1.50 mm, limit 3.00 mm", "The hooks of Digging arm sit on the bar of Long frame, and the latch pin goes in.", unless |yard| yard.pinned();
    hooks_may_hold: "hooks-may-hold", |yard| yard.rack(ARM, "hooks").drop = drawn(242.8), "check, dimension 'drop', play 2.80 mm, limit 3.00 mm, probability 0.983", "The drawings cannot tell whether the hooks of Digging arm fit Long frame. Measure first.";
    hooks_misfit: "hooks-misfit", |yard| yard.rack(ARM, "hooks").spread = drawn(580.0), "wont, dimension 'spread', carrier 460.00 mm, carried 580.00 mm, off-by 120.00 mm, limit 3.00 mm", "The hooks of Digging arm do not fit Long frame.";
    hooks_need_bush: "hooks-need-bush",
        |yard| yard.rack(ARM, "hooks").diameter = drawn(43.5),
        "work, dimension 'diameter', play 3.50 mm, limit 3.00 mm, carrier 40.00 mm, carried 43.50 mm", "The joint of Digging arm and Long frame is 3.5\u{a0}mm loose. A bush or sleeve takes that up.";
    faces_turned: "faces-turned",
        |yard| yard.port(ARM, "hooks").pose.as_mut().expect("it is placed").faces = Towards::Rear,
        "wont, way 'half-round'", "Joined face to face with Long frame, Digging arm would stand turned half round.";
    measured_against_listing: "measured-against-listing",
        |yard| {
            yard.list(MachineId(0), FrameId(0));
            yard.measure(ARM, "hooks", "spread", 480.0, Tool::Caliper);
        },
        "wont, unit arm, margin -17.00 mm", "The maker lists Long frame and Digging arm together, but what was measured on Digging arm says that they do not join: 17\u{a0}mm short.",
        unless |yard| {
            yard.list(MachineId(0), FrameId(0));
            yard.measure(ARM, "hooks", "spread", 460.5, Tool::Caliper);
        };
    plates_need_shims: "plates-need-shims",
        |yard| yard.holes(FRAME, "axle plate").pair_width = drawn(604.0),
        "work, between 604.00 mm, over 600.00 mm, gap 4.00 mm, limit 6.00 mm", "Long frame is 4.0\u{a0}mm wider between its side plates than Hedge tractor. Shims fill that.";
    plates_too_wide: "plates-too-wide",
        |yard| yard.holes(FRAME, "axle plate").pair_width = drawn(612.0),
        "wont, between 612.00 mm, over 600.00 mm, gap 12.00 mm, limit 6.00 mm", "Long frame is too wide for Hedge tractor: 12\u{a0}mm of gap between its side plates and the machine.";
    plates_too_narrow: "plates-too-narrow",
        |yard| yard.holes(FRAME, "front plate").pair_width = drawn(598.0),
        "wont, between 598.00 mm, over 600.00 mm, short 2.00 mm", "Long frame does not go over Hedge tractor: its side plates are 2.0\u{a0}mm too close together.";
    plates_may_fit: "plates-may-fit",
        |yard| yard.holes(FRAME, "front plate").pair_width = drawn(600.1),
        "check, between 600.10 mm, over 600.00 mm, gap 0.10 mm, limit 6.00 mm, worst-case 0.40 mm, probability 0.856", "The drawings cannot tell whether the side plates of Long frame go over Hedge tractor. Measure first.";
    plates_unknown: "plates-unknown",
        |yard| yard.holes(FRAME, "front plate").pair_width = None,
        "check, missing 'pair-width'", "How wide Hedge tractor is over its faces, or Long frame between its side plates, is not known.";
    hooks_unknown: "hooks-unknown", |yard| yard.rack(ARM, "hooks").setback = None, "check, missing 'setback'", "A dimension of the hooks is not known.";
    joint_listed: "joint-listed", |yard| yard.list(MachineId(0), FrameId(0)), "up, guide 'Yard guide', date '2025-03-01'", "The maker lists Hedge tractor and Long frame together.";
    joint_replaced_part: "joint-replaced-part",
        |yard| {
            listed_elsewhere(yard, "m2", "m1");
            yard.replace("m1", &["m2"], false);
        },
        "up, part 'm2', witness path, witness-other long-frame", "By the maker’s replacement records, Hedge tractor and Long frame join by the same parts as a set in its list.",
        unless |yard| {
            listed_elsewhere(yard, "m2", "m1");
            yard.replace("m2", &["m1"], false);
        };
    joint_same_part: "joint-same-part", |yard| listed_elsewhere(yard, "m1", "m1"), "up, part 'm1', witness path, witness-other long-frame", "Hedge tractor and Long frame join by the same parts as a set that the maker lists.",
        unless |yard| listed_elsewhere(yard, "m2", "m1");
    kinds_differ: "kinds-differ", |yard| yard.port(ARM, "hooks").kind = PortKind::Pins(pins(PinForm::Lug)), "wont, carrier 'hook-rack', carried 'pins'", "Digging arm and Long frame connect in different ways.";
    listing_and_dimensions_disagree: "listing-and-dimensions-disagree",
        |yard| {
            yard.list(MachineId(0), FrameId(0));
            yard.rack(ARM, "hooks").spread = drawn(580.0);
        },
        "check, margin -117.00 mm", "The maker lists Long frame and Digging arm together, but by their dimensions they do not join. One of the two is wrong. Buy nothing before that is settled.",
        unless |yard| yard.list(MachineId(0), FrameId(0));
    nothing_answers: "nothing-answers",
        |yard| yard.frame().body.ports.retain(|port| port.name != "deck"),
        "wont, role 'seat-deck', port 'base'", "Rear seat has no seat deck to stand on.";
    number_read_differs: "number-read-differs",
        |yard| {
            yard.bears(FRAME, "axle plate", &["AX-1104"]);
            yard.read(FRAME, "axle plate", &["AX-1190"]);
        },
        "check, item long-frame, port 'axle plate', read 'AX-1190', listed 'AX-1104', rests 'nothing'", "The part number read on Long frame is not the one the catalogue lists there. What the catalogue says of this joint may not hold on this unit.",
        unless |yard| {
            yard.bears(FRAME, "axle plate", &["AX-1104"]);
            yard.read(FRAME, "axle plate", &["ax 1104"]);
        };
    pins_count_differs: "pins-count-differs",
        |yard| {
            yard.pinned();
            let points = &mut yard.pins(ARM, "hooks").points;
            points.extend(points.clone());
        },
        "wont, carrier 2, carried 4", "Long frame has 2 pinned points, Digging arm has 4.", unless |yard| yard.pinned();
    pins_heights_off: "pins-heights-off",
        |yard| {
            yard.pinned();
            yard.pins(ARM, "hooks").points[1].height = drawn(200.0);
        },
        "wont, off-by 200.00 mm, over 99.75 mm", "The pinned points of Digging arm are not at the heights of those of Long frame.", unless |yard| yard.pinned();
    pins_enter: "pins-enter", |yard| yard.pinned(), "up, running 0.50 mm, limit 1.50 mm, point 'left'", "The pins of Digging arm and Long frame fit.";
    pins_may_enter: "pins-may-enter", |yard| first_pin(yard, 25.2), "check, running 0.20 mm, limit 1.50 mm, point 'left', dimension 'diameter', probability 0.983", "The drawings cannot tell whether the pins of Digging arm and Long frame fit. Measure first.", unless |yard| yard.pinned();
    pins_need_sleeve: "pins-need-sleeve", |yard| first_pin(yard, 28.0), "work, running 3.00 mm, limit 1.50 mm, point 'left', bore 28.00 mm, pin 25.00 mm", "The pin is thinner than its bore. A sleeve takes that up.", unless |yard| yard.pinned();
    pins_side_play: "pins-side-play",
        |yard| {
            yard.pinned();
            yard.pins(ARM, "hooks").points[1].width = drawn(20.0);
        },
        "work, limit 6.00 mm, point 'right', play 13.00 mm", "The joint has side play. Shims or washers take that up.", unless |yard| yard.pinned();
    pins_sleeved: "pins-sleeved",
        |yard| {
            first_pin(yard, 28.0);
            yard.build.side.adapters.push(SLEEVE);
        },
        "work, bore 28.00 mm, pin 25.00 mm, item sleeve", "Sleeve set fits the pin to its bore.", unless |yard| first_pin(yard, 28.0);
    pins_spread_off: "pins-spread-off",
        |yard| {
            yard.pinned();
            yard.pins(ARM, "hooks").spread = drawn(520.0);
        },
        "wont, carrier 500.00 mm, carried 520.00 mm, off-by 20.00 mm, limit 2.00 mm", "The lugs of Digging arm are 20\u{a0}mm too far apart for Long frame.", unless |yard| yard.pinned();
    pins_unknown: "pins-unknown",
        |yard| {
            yard.pinned();
            yard.pins(ARM, "hooks").points[0].diameter = None;
        },
        "check, missing 'point-1-diameter', point 'left'", "A dimension of the pins is not known.", unless |yard| yard.pinned();
    pins_will_not_enter: "pins-will-not-enter", |yard| first_pin(yard, 24.0), "wont, dimension 'diameter', point 'left', carrier 25.00 mm, carried 24.00 mm, over 1.00 mm", "A pin is too thick for its bore.", unless |yard| yard.pinned();
    port_looked_missing: "port-looked-missing",
        |yard| {
            yard.build.side.looked.insert((FRAME, "deck".into()), Presence::No);
        },
        "wont, port 'deck'", "This unit lacks what the joint needs.",
        unless |yard| {
            yard.build.side.looked.insert((FRAME, "deck".into()), Presence::Yes);
        };
    port_not_on_serial: "port-not-on-serial",
        |yard| {
            yard.port(FRAME, "deck").serials = Serials { first: Some(500), last: None };
            yard.build.side.serials.insert(FRAME, 499);
        },
        "wont, port 'deck', serial '499'", "Units with this serial number do not have what the joint needs.",
        unless |yard| {
            yard.port(FRAME, "deck").serials = Serials { first: Some(500), last: None };
            yard.build.side.serials.insert(FRAME, 500);
        };
    port_serial_unknown: "port-serial-unknown",
        |yard| yard.port(FRAME, "deck").serials = Serials { first: Some(500), last: None },
        "check, port 'deck'", "Only some units have what the joint needs. Look at yours, or enter its serial number.";
    pto_differs: "pto-differs",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.take_off(FLAIL, "shaft").rotation = Some(PtoRotation::CounterClockwise);
        },
        "wont, dimension 'rotation', carrier 'clockwise', carried 'counter-clockwise'", "The power take-off (PTO) turns the other way.", unless |yard| *yard = Yard::new().with_flail();
    pto_fits: "pto-fits", |yard| *yard = Yard::new().with_flail(), "up, shaft-type 1, speed 540", "The power take-off (PTO) suits the implement.";
    pto_unknown: "pto-unknown",
        |yard| {
            *yard = Yard::new().with_flail();
            yard.take_off(FLAIL, "shaft").speeds.clear();
        },
        "check, missing 'speed'", "Some data of the power take-off (PTO) are missing.", unless |yard| *yard = Yard::new().with_flail();
    wiring_differs: "wiring-differs",
        |yard| {
            let other = Electric { connector: "two-way".into(), function: "seat switch".into() };
            yard.port(SEAT, "switch lead").kind = PortKind::Electric(other);
        },
        "work, carrier 'three-way', carried 'two-way'", "The electric plugs differ, so one has to be changed.";
    wiring_fits: "wiring-fits", |_| {}, "up, connector 'three-way'", "The electric plugs match.", unless |yard| *yard = Yard::new().with_flail();
}

mod hitches {
    use super::*;
    use fitup_core::finding::Verdict;

    /// What is said of the hitch with the flail on it, worst first.
    fn told(turn: impl FnOnce(&mut Yard)) -> Vec<(&'static str, Verdict)> {
        let mut yard = Yard::new().with_flail();
        turn(&mut yard);
        let answer = yard.judge();
        answer.findings.iter().filter(|f| f.code.starts_with("hitch-")).map(|f| (f.code, f.verdict)).collect()
    }

    fn categories(yard: &mut Yard, hitch: &str, implement: &str) {
        yard.hitch(MACHINE, "hitch").categories = vec![hitch.into()];
        yard.hitch(FLAIL, "mast").categories = vec![implement.into()];
    }

    #[test]
    fn a_narrow_category_keeps_its_pins_and_moves_the_links() {
        assert_eq!(told(|yard| categories(yard, "2", "2N")), [("hitch-other-span", Verdict::BoltsUpWithWork)]);
    }

    #[test]
    fn a_quick_attach_frame_takes_its_own_span_only() {
        let stiff = |implement: &'static str| {
            move |yard: &mut Yard| {
                categories(yard, "2", implement);
                yard.hitch(MACHINE, "hitch").quick_attach = true;
            }
        };
        assert_eq!(told(stiff("2N")), [("hitch-frame-stiff", Verdict::WontMount)]);
        assert_eq!(told(stiff("2")), [("hitch-fits", Verdict::BoltsUp)]);
    }

    #[test]
    fn a_pin_measured_thicker_than_its_ball_does_not_go_on() {
        let thick = |yard: &mut Yard| yard.hitch(FLAIL, "mast").lower_pin = drawn(25.0);
        assert_eq!(told(thick), [("hitch-dimension-misfits", Verdict::WontMount), ("hitch-fits", Verdict::BoltsUp)]);
        let nominal = |yard: &mut Yard| yard.hitch(FLAIL, "mast").lower_pin = drawn(22.0);
        assert_eq!(told(nominal), [("hitch-fits", Verdict::BoltsUp)]);
    }

    #[test]
    fn a_stated_span_matters_on_a_quick_attach_frame_alone() {
        let wide = |yard: &mut Yard| yard.hitch(FLAIL, "mast").span = drawn(690.0);
        assert_eq!(told(wide), [("hitch-fits", Verdict::BoltsUp)]);
        let on_frame = |yard: &mut Yard| {
            wide(yard);
            yard.hitch(MACHINE, "hitch").quick_attach = true;
        };
        assert_eq!(told(on_frame)[0], ("hitch-dimension-misfits", Verdict::WontMount));
    }

    #[test]
    fn a_hitch_without_a_category_is_known_by_its_pins() {
        let measured = |pin: f64| {
            move |yard: &mut Yard| {
                yard.hitch(FLAIL, "mast").categories.clear();
                yard.hitch(FLAIL, "mast").lower_pin = drawn(pin);
            }
        };
        assert_eq!(told(measured(22.0)), [("hitch-fits", Verdict::BoltsUp)]);
        assert_eq!(told(measured(28.0)), [("hitch-differs", Verdict::WontMount)]);
        assert_eq!(told(measured(24.0)), [("hitch-unknown", Verdict::CheckFirst)], "no category has that pin");
    }
}
