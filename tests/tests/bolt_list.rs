//! The bolt list of a build: which bolts, how many, how long, and the holes to make for them.
//!
//! Covers: words/src/bolts.rs, words/src/report/bolts.rs.
//! Lengths are worked out beside each by hand from the sizes of ISO 4032 and ISO 7089, both from memory.

use fitup_core::build::Change;
use fitup_core::fit::{Answer, Bolts, BoltsInto};
use fitup_core::item::{HoleKind, ItemRef, Metal, Role};
use fitup_core::quantity::Torque;
use fitup_words::{Lang, Units, Words};
use fitup_yard::{FRAME, MACHINE, SEAT, Yard, hole, mm};

fn of(answer: &Answer, role: Role) -> &Bolts {
    answer.bolts.iter().find(|bolts| bolts.role == role).expect("the joint is bolted")
}

fn plates(yard: &mut Yard, machine: f64, frame: f64) {
    yard.holes(MACHINE, "axle plate").plate = Some(mm(machine));
    yard.holes(FRAME, "axle plate").plate = Some(mm(frame));
}

fn lines(yard: &Yard, role: Role) -> Vec<String> {
    let answer = yard.judge();
    Words::new(Lang::En, Units::Metric).bolt_lines(&yard.catalogue, of(&answer, role))
}

#[test]
fn what_is_not_stated_is_for_the_manual_to_say() {
    let yard = Yard::new();
    let answer = yard.judge();
    let bolts = of(&answer, Role::AxleAnchor);
    assert_eq!((bolts.number, &bolts.thread, bolts.size), (Some(2), &None, Some(mm(12.0))));
    assert_eq!((bolts.grip, bolts.length, &bolts.class, bolts.torque), (None, None, &None, None));
    assert_eq!(
        lines(&yard, Role::AxleAnchor),
        [
            "Hedge tractor + Long frame (axle anchor): 2 × 12\u{a0}mm; as many on the other side of the machine; length: see the \
          manual; with a nut each; 2 washers each; class and torque: see the manual"
        ]
    );
}

#[test]
fn the_length_reaches_through_plates_washers_and_nut() {
    let mut yard = Yard::new();
    plates(&mut yard, 16.0, 12.0);
    for item in [MACHINE, FRAME] {
        yard.holes(item, "axle plate").thread = Some("M12".into());
    }
    yard.holes(FRAME, "axle plate").class = Some("8.8".into());
    yard.holes(FRAME, "axle plate").torque = Some(Torque::from_nm(80.0));
    // 16 + 12 + 2 × 2.5 + 10.8 + 2 × 1.75 = 47.3 mm.
    let answer = yard.judge();
    let bolts = of(&answer, Role::AxleAnchor);
    assert_eq!((bolts.grip, bolts.length, bolts.into), (Some(mm(28.0)), Some(mm(50.0)), BoltsInto::Nuts));
    assert_eq!(
        lines(&yard, Role::AxleAnchor),
        [
            "Hedge tractor + Long frame (axle anchor): 2 × M12; as many on the other side of the machine; 50\u{a0}mm long for \
          28\u{a0}mm of plates; with a nut each; 2 washers each; class 8.8; tighten to 80\u{a0}N·m"
        ]
    );
    // Of a class that the two sides state differently, neither is told.
    yard.holes(MACHINE, "axle plate").class = Some("10.9".into());
    assert_eq!(of(&yard.judge(), Role::AxleAnchor).class, None);
}

#[test]
fn a_metric_bolt_is_bought_in_millimetres_by_a_reader_of_inches_too() {
    let mut yard = Yard::new();
    plates(&mut yard, 16.0, 12.0);
    let answer = yard.judge();
    let words = Words::new(Lang::EnUs, Units::Us);
    let told = words.bolt_lines(&yard.catalogue, of(&answer, Role::AxleAnchor));
    assert!(told[0].contains("2 × 12\u{a0}mm; ") && told[0].contains("50\u{a0}mm long for 1.102\u{a0}in"), "{told:?}");
    for item in [MACHINE, FRAME] {
        let plate = yard.holes(item, "axle plate");
        (plate.thread, plate.bolt) = (Some("1/2-13".into()), None);
    }
    // 28 mm are 1.102 in; + 2 × 0.109 + 0.448 + 2/13 = 1.922 in.
    let answer = yard.judge();
    let told = Words::new(Lang::En, Units::Metric).bolt_lines(&yard.catalogue, of(&answer, Role::AxleAnchor));
    assert!(told[0].contains("× 1/2-13; ") && told[0].contains("2\u{a0}in long for 28\u{a0}mm"), "{told:?}");
}

#[test]
fn a_tapped_hole_takes_its_engagement_for_the_nut() {
    let mut yard = Yard::new();
    plates(&mut yard, 20.0, 12.0);
    let plate = yard.holes(MACHINE, "axle plate");
    (plate.thread, plate.metal) = (Some("M12".into()), Some(Metal::CastIron));
    for hole in &mut plate.holes {
        (hole.kind, hole.diameter.value) = (HoleKind::Tapped, mm(12.0));
    }
    // 12 + 2.5 + 1.5 × 12 = 32.5 mm.
    let answer = yard.judge();
    let bolts = of(&answer, Role::AxleAnchor);
    assert_eq!((bolts.into, bolts.washers()), (BoltsInto::Tapped(MACHINE), Some(1)));
    assert_eq!((bolts.grip, bolts.length), (Some(mm(12.0)), Some(mm(35.0))));
    // In a metal that is not stated the engagement is not known, and so not the length.
    yard.holes(MACHINE, "axle plate").metal = None;
    let answer = yard.judge();
    let bolts = of(&answer, Role::AxleAnchor);
    assert_eq!((bolts.grip, bolts.length), (Some(mm(12.0)), None));
}

#[test]
fn wide_holes_get_a_plate_washer_in_place_of_one() {
    let mut yard = Yard::new();
    for hole in &mut yard.holes(FRAME, "axle plate").holes {
        hole.diameter.value = mm(16.0);
    }
    let answer = yard.judge();
    let bolts = of(&answer, Role::AxleAnchor);
    assert_eq!((&bolts.plate_washers[..], bolts.washers()), (&[FRAME][..], Some(1)));
}

#[test]
fn holes_to_drill_have_their_place_their_size_and_the_metal_round_them() {
    let mut yard = Yard::new();
    let deck = yard.holes(FRAME, "deck");
    let last = deck.holes.pop().expect("it has holes");
    deck.edge = fitup_yard::drawn(20.0);
    yard.holes(SEAT, "base").required = Some(4);
    let answer = yard.judge();
    let bolts = of(&answer, Role::SeatDeck);
    assert_eq!(bolts.number, Some(4), "the drilled one takes a bolt too");
    let [made] = &bolts.holes[..] else { panic!("{:?}", bolts.holes) };
    assert_eq!((made.item, made.port.as_str(), made.is_opened), (FRAME, "deck", false));
    let near = |a: fitup_core::quantity::Length, b: fitup_core::quantity::Length| (a - b).abs() < mm(0.05);
    assert!(near(made.u, last.u.value) && near(made.v, last.v.value), "{made:?}");
    // The other three span the plate's holes in both directions, so the edge is as far as stated.
    assert!(made.to_edge.is_some_and(|edge| near(edge, mm(20.0))));
    let said = Words::new(Lang::En, Units::Metric).bolt_lines(&yard.catalogue, bolts);
    assert!(said[1].starts_with("Drill 1 hole of 13.5\u{a0}mm into Long frame, “deck”; 20\u{a0}mm from"), "{said:?}");
    // Decided or only needed: the holes are the same.
    let drilled = Change::Drill { item: FRAME, port: "deck".into() };
    yard.build.side.changes.push(drilled);
    assert_eq!(of(&yard.judge(), Role::SeatDeck).holes, bolts.holes);
}

#[test]
fn holes_to_open_up_are_told_apart_from_those_to_drill() {
    let mut yard = Yard::new();
    // Half a millimetre more than the play of 1.5 lets a bolt through.
    yard.holes(FRAME, "deck").holes[0].u.value += mm(4.0);
    let answer = yard.judge();
    let bolts = of(&answer, Role::SeatDeck);
    assert!(!bolts.holes.is_empty() && bolts.holes.iter().all(|hole| hole.is_opened), "{:?}", bolts.holes);
    assert!(bolts.holes.iter().all(|made| made.diameter > hole(0.0, 0.0).diameter.value));
}

#[test]
fn plates_that_do_not_go_together_have_no_bolts() {
    let mut yard = Yard::new();
    for hole in &mut yard.holes(FRAME, "deck").holes {
        hole.u.value = hole.u.value * 3.0;
    }
    yard.holes(FRAME, "deck").edge = fitup_yard::drawn(1.0);
    let answer = yard.judge();
    assert!(answer.bolts.iter().all(|bolts| bolts.role != Role::SeatDeck));
    let unknown = {
        let mut yard = Yard::new();
        yard.holes(FRAME, "axle plate").holes.clear();
        yard.judge()
    };
    assert_eq!(
        (of(&unknown, Role::AxleAnchor).number, of(&unknown, Role::AxleAnchor).into),
        (None, BoltsInto::Unknown)
    );
    assert!(matches!(of(&unknown, Role::AxleAnchor).carrier, ItemRef::Machine(_)));
}
