//! The demonstration yard: every story it is there to tell comes out as told.
//!
//! Covers: core/src/build.

use fitup_core::build::Change;
use fitup_core::finding::{Grade, Standing, Value, Verdict};
use fitup_core::fit::{Answer, judge};
use fitup_core::item::{ImplementId, ItemRef, SeatState};
use fitup_core::quantity::Length;
use fitup_core::search::remedies;
use fitup_tests::stories::{desk, story};

fn answer(name: &str) -> Answer {
    let desk = desk();
    judge(&desk, &story(&desk, name))
}

fn has(answer: &Answer, code: &str) -> bool {
    answer.findings.iter().any(|finding| finding.code == code)
}

#[test]
fn the_yard_holds_what_it_promises() {
    let desk = desk();
    let catalogue = desk.catalogue();
    assert!(catalogue.machines.len() >= 6 && catalogue.frames.len() >= 6 && catalogue.seats.len() >= 6);
    assert!(catalogue.implements.len() >= 10 && catalogue.adapters.len() >= 10);
    assert!(catalogue.trailers.len() >= 4 && catalogue.sites.len() >= 3);
    assert_eq!(catalogue.implements.iter().filter(|implement| implement.arm.is_some()).count(), 5);
    assert!(catalogue.name.notice.contains("Invented"));
}

#[test]
fn a_listed_set_bolts_up() {
    let answer = answer("listed");
    assert_eq!((answer.verdict, answer.standing), (Verdict::BoltsUp, Some(Standing::Listed)));
    assert!(answer.joints.len() >= 6 && answer.joints.iter().all(|joint| joint.verdict == Verdict::BoltsUp));
    assert!(!has(&answer, "holes-miss"));
}

#[test]
fn shared_part_numbers_prove_a_set_the_guide_does_not_list() {
    let answer = answer("shared-parts");
    assert_eq!((answer.verdict, answer.standing), (Verdict::BoltsUp, Some(Standing::OffGuide)));
    let rack = answer.findings.iter().find(|finding| finding.code == "joint-same-part").unwrap();
    assert_eq!(rack.evidence.grade, Grade::SamePart);
    assert!(rack.evidence.witness.is_some() && rack.evidence.guide_row.is_some());
}

#[test]
fn measuring_the_hooks_settles_the_used_arm() {
    let answer = answer("measured");
    assert_eq!(answer.verdict, Verdict::BoltsUp);
    let hooks = answer.findings.iter().find(|finding| finding.code == "hooks-hold").unwrap();
    assert_eq!(hooks.evidence.grade, Grade::Measured);
    let desk = desk();
    let unmeasured = story(&desk, "measured").changed(|build| build.side.measured.clear());
    let open = judge(&desk, &unmeasured);
    assert_eq!(open.verdict, Verdict::CheckFirst);
    assert!(has(&open, "hooks-unknown"));
}

#[test]
fn the_forks_need_a_sleeve_and_the_sleeve_is_found() {
    let answer = answer("sleeve");
    assert_eq!(answer.verdict, Verdict::BoltsUpWithWork);
    assert!(has(&answer, "pins-need-sleeve"));
}

#[test]
fn two_holes_are_drilled_in_the_deck() {
    let answer = answer("two-holes");
    assert_eq!(answer.verdict, Verdict::BoltsUpWithWork);
    let drilling = answer.findings.iter().find(|finding| finding.code == "holes-need-drilling").unwrap();
    assert_eq!(drilling.figure("drill"), Some(&Value::Count(2)));
    let joint = answer.joints.iter().find(|joint| joint.role == fitup_core::item::Role::SeatDeck).unwrap();
    assert!(joint.overlay.as_ref().is_some_and(|overlay| overlay.carried.len() == 4 && overlay.carrier.len() == 2));
}

#[test]
fn another_seat_saves_the_set() {
    let desk = desk();
    let blocked = story(&desk, "another-seat");
    let answer = judge(&desk, &blocked);
    assert_eq!(answer.verdict, Verdict::WontMount);
    assert!(has(&answer, "seat-room-short"));
    let best = remedies(&desk, &blocked).found.into_iter().next().unwrap();
    assert_eq!(best.verdict, Verdict::BoltsUp);
    assert!(best.steps.iter().any(|step| matches!(step, fitup_core::search::RemedyStep::Seat(_))));
}

#[test]
fn a_frame_for_cabs_a_folded_seat_and_two_drilled_holes_together_carry_an_arm_that_nobody_lists() {
    let desk = desk();
    let blocked = story(&desk, "three-changes");
    let answer = judge(&desk, &blocked);
    assert_eq!(answer.verdict, Verdict::WontMount);
    assert!(has(&answer, "seat-room-short"));
    let found = remedies(&desk, &blocked).found;
    let framed = found.iter().find(|remedy| remedy.build.choices.carrying != blocked.choices.carrying).unwrap();
    let after = judge(&desk, &framed.build);
    // Made for cabs, it is no more than asked about: its joints are proven by the same parts, the driver's seat folds, the deck
    // is drilled, the arm's own seat comes off.
    assert_eq!(after.verdict, Verdict::CheckFirst);
    for code in ["station-differs", "driver-seat-moves", "rear-seat-moves", "own-seat-comes-off", "holes-need-drilling"]
    {
        assert!(has(&after, code), "{code}");
    }
    assert_eq!(after.stack.seats.driver.state, SeatState::Folded);
    let same_part = after.findings.iter().filter(|finding| finding.code == "joint-same-part").count();
    assert!(same_part >= 2, "the front anchor and the rack");
    let (hours, is_least) = after.strip.total();
    assert!(hours.hours() > 5.5 && !is_least, "the belly mower comes off in half an hour");
}

#[test]
fn no_adapter_saves_the_large_arm_on_the_small_rack() {
    let desk = desk();
    let blocked = story(&desk, "no-adapter");
    let answer = judge(&desk, &blocked);
    assert_eq!(answer.verdict, Verdict::WontMount);
    assert!(has(&answer, "hooks-misfit"));
    assert!(remedies(&desk, &blocked).found.is_empty());
}

#[test]
fn the_front_axle_is_too_light_until_ballast_is_hung() {
    let desk = desk();
    let light = story(&desk, "light-front");
    let answer = judge(&desk, &light);
    assert_eq!(answer.verdict, Verdict::BoltsUpWithWork);
    assert!(has(&answer, "front-axle-light"));
    let best = remedies(&desk, &light).found.into_iter().next().unwrap();
    assert_eq!(best.verdict, Verdict::BoltsUp, "{:?}", best.steps);
}

#[test]
fn it_bolts_up_but_drags_on_the_small_trailers_ramp_until_longer_ramps_are_used() {
    let desk = desk();
    let dragging = story(&desk, "ramp");
    let answer = judge(&desk, &dragging);
    let drags = answer.findings.iter().find(|finding| finding.code == "ramp-drags").unwrap();
    assert_eq!(drags.verdict, Verdict::BoltsUpWithWork);
    // Forwards the front axle would be left with too little weight on a ramp as steep as this.
    assert_eq!(drags.figure("way"), Some(&Value::Word("backward")));
    let mm = |name: &str| match drags.figure(name) {
        Some(Value::Length(length)) => length.mm(),
        other => panic!("{name}: {other:?}"),
    };
    assert!((mm("drags-by") - 112.32).abs() < 0.01 && (mm("shortest") - 1843.23).abs() < 0.01);
    assert_eq!(drags.figure("item"), Some(&Value::Item(ItemRef::Implement(ImplementId(0)))));
    let best = remedies(&desk, &dragging).found.into_iter().next();
    let ramps = Change::Ramps { length: Length::from_mm(1900.0) };
    assert!(best.is_none_or(|best| best.build.side.changes.contains(&ramps)));
    let longer = dragging.changed(|build| build.side.changes = vec![ramps]);
    let answer = judge(&desk, &longer);
    assert!(has(&answer, "ramp-clears") && !has(&answer, "ramp-drags"));
    assert!(!has(&judge(&desk, &longer.changed(|build| build.side.trailer = None)), "ramp-clears"));
}

#[test]
fn missing_data_are_named_and_never_passed() {
    let answer = answer("missing-data");
    assert_eq!(answer.verdict, Verdict::CheckFirst);
    assert!(has(&answer, "loads-unknown") && has(&answer, "hydraulics-unknown"));
    assert_eq!(answer.footprint.mass, None);
    assert!(answer.footprint.length.is_some(), "everything else is still measured");
}
