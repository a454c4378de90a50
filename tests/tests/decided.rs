//! Drilling and opening up: what is needed, what deciding on it changes, and what was measured of each hole.

use fitup_core::build::{Change, Presence};
use fitup_core::finding::{Caution, Check, Finding, Grade, Subject, Value, Verdict};
use fitup_core::fit::{Answer, DRILLING, Desk, OPENING, StripWhat, judge};
use fitup_core::item::Role;
use fitup_core::quantity::{Tool, Work};
use fitup_core::search::{RemedyStep, remedies};
use fitup_yard::{FRAME, SEAT, SQUARE, Yard, mm, plate};

/// What is said of the seat on its deck, or of one of the two by itself.
fn on_deck<'a>(answer: &'a Answer, code: &str) -> &'a Finding {
    let about = |finding: &&Finding| {
        matches!(finding.subject, Subject::Joint(Role::SeatDeck, FRAME, SEAT) | Subject::Item(FRAME | SEAT))
    };
    let all: Vec<&Finding> = answer.findings.iter().filter(about).collect();
    let codes: Vec<&str> = all.iter().map(|finding| finding.code).collect();
    all.into_iter().find(|finding| finding.code == code).unwrap_or_else(|| panic!("no {code} among {codes:?}"))
}

fn overlay(answer: &Answer) -> &fitup_core::fit::Overlay {
    answer.joints.iter().find(|joint| joint.role == Role::SeatDeck).and_then(|joint| joint.overlay.as_ref()).unwrap()
}

/// The workshop time of the holes.
fn on_holes(answer: &Answer) -> Work {
    let steps = answer.strip.steps.iter().filter(|step| matches!(step.what, StripWhat::Holes(_)));
    steps.filter_map(|step| step.hours).sum()
}

/// A deck with two of the four holes that the seat wants.
fn two_short() -> Yard {
    let mut yard = Yard::new();
    *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
    yard.holes(SEAT, "base").required = Some(4);
    yard
}

#[test]
fn deciding_on_drilling_plans_the_holes_whose_hours_count_anyway() {
    let mut yard = two_short();
    let before = yard.judge();
    assert_eq!((before.verdict, on_holes(&before)), (Verdict::BoltsUpWithWork, DRILLING * 2.0));
    assert_eq!((overlay(&before).carrier.len(), overlay(&before).pairs.len()), (2, 2));

    yard.build.side.changes.push(Change::Drill { item: FRAME, port: "deck".into() });
    let after = yard.judge();
    assert_eq!(after.verdict, Verdict::BoltsUpWithWork, "the holes are still to be made");
    assert_eq!(on_holes(&after), DRILLING * 2.0);
    assert!(on_deck(&after, "holes-drilled").cautions.contains(&Caution::DrillingOrWelding));
    assert!(after.cautions.contains(&Caution::DrillingOrWelding));
    assert!(after.findings.iter().all(|finding| finding.code != "holes-need-drilling"));
    assert_eq!((overlay(&after).carrier.len(), overlay(&after).pairs.len()), (4, 4));
}

#[test]
fn drilling_is_offered_as_a_remedy() {
    let yard = two_short();
    let offered = remedies(&Desk::new(yard.catalogue), &yard.build).found;
    let drill = RemedyStep::Change(Change::Drill { item: FRAME, port: "deck".into() });
    let remedy = offered.iter().find(|remedy| remedy.steps == [drill.clone()]).unwrap();
    assert_eq!((remedy.verdict, remedy.work_more), (Verdict::BoltsUpWithWork, Work::ZERO), "they take the time anyway");
}

#[test]
fn opening_up_plates_that_line_up_anyway_leaves_the_joint_as_it_is() {
    for (item, port, role) in [(FRAME, "axle plate", Role::AxleAnchor), (FRAME, "deck", Role::SeatDeck)] {
        let mut yard = Yard::new();
        let meets = |yard: &Yard| {
            let answer = yard.judge();
            let of = |finding: &&Finding| matches!(finding.subject, Subject::Joint(joint, ..) if joint == role);
            answer.findings.iter().find(of).cloned().expect("the plates meet")
        };
        let before = meets(&yard);
        assert_eq!(before.code, "holes-meet");
        yard.build.side.changes.push(Change::OpenUp { item, port: port.into(), by: mm(0.5) });
        assert_eq!(meets(&yard), before, "{port}");
    }
}

#[test]
fn drilling_the_other_plate_is_of_no_use() {
    let mut yard = two_short();
    yard.build.side.changes.push(Change::Drill { item: SEAT, port: "base".into() });
    let answer = yard.judge();
    on_deck(&answer, "holes-need-drilling");
    on_deck(&answer, "holes-plan-not-needed");
    assert_eq!(on_holes(&answer), DRILLING * 2.0, "of the two that the deck needs");
}

/// A seat one of whose holes is off, so that it has to be opened up.
fn off_by(u: f64) -> Yard {
    let mut yard = Yard::new();
    yard.holes(SEAT, "base").holes[2].u.value = mm(80.0 + u);
    yard
}

#[test]
fn opening_up_as_offered_lets_the_bolts_through() {
    let yard = off_by(4.0);
    assert_eq!(yard.judge().verdict, Verdict::BoltsUpWithWork);
    let desk = Desk::new(yard.catalogue.clone());
    let offered = remedies(&desk, &yard.build).found;
    let opened = offered
        .iter()
        .find(|remedy| matches!(remedy.steps[..], [RemedyStep::Change(Change::OpenUp { .. }), ..]))
        .unwrap();
    let answer = judge(&desk, &opened.build);
    assert_eq!(answer.verdict, Verdict::BoltsUpWithWork);
    on_deck(&answer, "holes-opened");
    assert!(overlay(&answer).margin >= mm(-1e-6), "zero but for rounding");
    assert!(on_holes(&answer) >= OPENING * 4.0);
}

#[test]
fn opening_up_too_little_leaves_the_rest_to_be_opened() {
    let mut yard = off_by(4.0);
    yard.build.side.changes.push(Change::OpenUp { item: SEAT, port: "base".into(), by: mm(0.1) });
    let answer = yard.judge();
    on_deck(&answer, "holes-need-opening");
    on_deck(&answer, "holes-plan-not-needed");
}

#[test]
fn opening_up_by_nothing_or_by_more_than_a_hole_bears_is_refused() {
    for by in [0.0, -0.5, 1.5, f64::NAN, f64::INFINITY] {
        let mut yard = off_by(4.0);
        yard.build.side.changes.push(Change::OpenUp { item: SEAT, port: "base".into(), by: mm(by) });
        let answer = yard.judge();
        let refused = on_deck(&answer, "holes-plan-not-possible");
        assert_eq!(refused.figure("reason"), Some(&Value::Word("too-much")), "{by}");
        assert_eq!(answer.verdict, Verdict::CheckFirst);
    }
}

#[test]
fn a_decision_about_a_port_that_is_not_there_is_said() {
    for change in [
        Change::Drill { item: SEAT, port: "lid".into() },
        Change::OpenUp { item: SEAT, port: "lid".into(), by: mm(0.5) },
    ] {
        let mut yard = Yard::new();
        yard.build.side.changes = vec![change.clone(), change];
        let answer = yard.judge();
        let said = answer.findings.iter().filter(|finding| finding.code == "holes-plan-not-possible").count();
        assert_eq!((said, answer.verdict), (1, Verdict::CheckFirst));
    }
}

#[test]
fn a_decision_about_an_item_that_is_not_in_the_build_waits() {
    let mut yard = Yard::new().with_flail();
    yard.build.side.changes.push(Change::Drill { item: SEAT, port: "lid".into() });
    assert_eq!(yard.judge().verdict, Verdict::BoltsUp);
}

#[test]
fn measuring_one_hole_says_nothing_of_the_others() {
    // The margin is 1.5 mm and the drawings together take 1.8 mm.
    let mut yard = Yard::new();
    for (item, name) in [(FRAME, "deck"), (SEAT, "base")] {
        yard.port(item, name).tolerance = Some(mm(0.9));
    }
    let open = yard.judge();
    assert_eq!(on_deck(&open, "holes-may-meet").evidence.grade, Grade::Drawing);

    let measure = |yard: &mut Yard, hole: usize| {
        let (u, v) = SQUARE[hole - 1];
        for (dimension, value) in [("u", u), ("v", v), ("diameter", 13.5)] {
            yard.measure(SEAT, "base", &format!("hole-{hole}-{dimension}"), value, Tool::Caliper);
        }
    };
    measure(&mut yard, 1);
    let one = yard.judge();
    let finding = on_deck(&one, "holes-may-meet");
    assert_eq!(
        finding.figure("worst-case"),
        Some(&Value::Length(mm(0.9) + mm(0.9))),
        "three holes are as unknown as before"
    );
    assert_eq!((finding.evidence.grade, &finding.evidence.tools[..]), (Grade::Measured, &[Tool::Caliper][..]));

    (2..=4).for_each(|hole| measure(&mut yard, hole));
    let all = yard.judge();
    assert_eq!(all.verdict, Verdict::BoltsUp);
    assert_eq!(on_deck(&all, "holes-meet").evidence.grade, Grade::Measured);
}

#[test]
fn a_hole_of_which_only_one_dimension_was_measured_is_as_unknown_as_before() {
    let mut yard = Yard::new();
    for (item, name) in [(FRAME, "deck"), (SEAT, "base")] {
        yard.port(item, name).tolerance = Some(mm(0.9));
    }
    for hole in 1..=4 {
        yard.measure(SEAT, "base", &format!("hole-{hole}-u"), SQUARE[hole - 1].0, Tool::Caliper);
    }
    assert_eq!(yard.judge().verdict, Verdict::CheckFirst);
}

#[test]
fn the_check_names_the_hole_that_is_known_less_well() {
    let mut yard = Yard::new();
    yard.port(FRAME, "deck").tolerance = Some(mm(1.6));
    let answer = yard.judge();
    let checks = &on_deck(&answer, "holes-may-meet").checks;
    assert!(
        checks
            .iter()
            .any(|check| matches!(check, Check::Measure { item, port, .. } if *item == FRAME && port == "deck"))
    );
}

#[test]
fn a_hole_that_was_looked_for_in_vain_is_not_counted_among_those_that_meet() {
    let mut yard = Yard::new();
    let met = |yard: &Yard| {
        let answer = yard.judge();
        let deck = answer.joints.iter().find(|joint| joint.role == Role::SeatDeck);
        deck.and_then(|deck| Some(deck.overlay.as_ref()?.carried.len()))
    };
    assert_eq!(met(&yard), Some(4));
    yard.build.side.looked.insert((SEAT, "base/hole-1".into()), Presence::No);
    assert_eq!(met(&yard), Some(3));
    yard.build.side.looked.insert((SEAT, "base/hole-3".into()), Presence::No);
    assert_eq!(met(&yard), Some(2));
    yard.build.side.looked.insert((SEAT, "base/hole-2".into()), Presence::Yes);
    assert_eq!(met(&yard), Some(2));
}

#[test]
fn a_hole_that_is_not_there_takes_its_measurements_with_it() {
    let mut yard = Yard::new();
    yard.measure(SEAT, "base", "hole-1-u", -80.0, Tool::Tape);
    yard.build.side.looked.insert((SEAT, "base/hole-1".into()), Presence::No);
    let answer = yard.judge();
    let finding = on_deck(&answer, "holes-meet");
    assert!(finding.evidence.tools.is_empty(), "{:?}", finding.evidence);
}

#[test]
fn measurements_that_no_unit_has_are_told_and_not_used() {
    let odd = [("hole-1-diameter", -13.0), ("hole-1-u", f64::NAN), ("hole-1-v", 1e12), ("bolt", 0.0), ("lid", 5.0)];
    for (dimension, value) in odd {
        let mut yard = Yard::new();
        yard.measure(SEAT, "base", dimension, value, Tool::Tape);
        let answer = yard.judge();
        on_deck(&answer, "measurement-not-used");
        assert_eq!(answer.verdict, Verdict::CheckFirst, "{dimension} {value}");
        assert!(on_deck(&answer, "holes-meet").evidence.tools.is_empty());
    }
}
