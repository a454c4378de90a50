//! A joint inherits a listing through its carrier, through what is carried, or through both, and never the wrong way.

use fitup_core::finding::{Finding, Grade, Value};
use fitup_core::item::{FrameId, MachineId, PartsListRow, Role};
use fitup_yard::{FRAME, MACHINE, OTHER_FRAME, OTHER_MACHINE, Yard};

const AXLE: &str = "axle plate";

/// The second machine is listed with the second frame; the build has the first of both.
fn yard(machines: [&[&str]; 2], frames: [&[&str]; 2]) -> Yard {
    let mut yard = Yard::new();
    yard.list(MachineId(1), FrameId(1));
    yard.bears(MACHINE, AXLE, machines[0]);
    yard.bears(OTHER_MACHINE, AXLE, machines[1]);
    yard.bears(FRAME, AXLE, frames[0]);
    yard.bears(OTHER_FRAME, AXLE, frames[1]);
    yard
}

/// What the axle joint rests on besides its dimensions.
fn axle(yard: &Yard) -> Option<Finding> {
    let answer = yard.judge();
    let joint = answer.joints.iter().find(|joint| joint.role == Role::AxleAnchor).unwrap();
    joint.findings.iter().map(|&at| answer.findings[at].clone()).find(|finding| finding.code.starts_with("joint-"))
}

fn grade(yard: &Yard) -> Option<Grade> {
    axle(yard).map(|finding| finding.evidence.grade)
}

#[test]
fn the_same_parts_on_both_sides_are_the_same_part() {
    let finding = axle(&yard([&["m"], &["m"]], [&["f"], &["f"]])).unwrap();
    assert_eq!(finding.evidence.grade, Grade::SamePart);
    assert_eq!(finding.evidence.witness, Some((OTHER_MACHINE, OTHER_FRAME)));
    assert_eq!(finding.evidence.guide_row, Some(0));
    assert_eq!(finding.evidence.chains.len(), 2);
    assert!(finding.evidence.chains.iter().all(|chain| chain.steps.is_empty()));
}

#[test]
fn a_listing_of_the_two_themselves_names_its_row_and_needs_no_chain() {
    let mut yard = yard([&["m"], &["m"]], [&["f"], &["f"]]);
    yard.list(MachineId(0), FrameId(0));
    let finding = axle(&yard).unwrap();
    assert_eq!((finding.code, finding.evidence.grade), ("joint-listed", Grade::Listed));
    assert_eq!(finding.evidence.witness, Some((MACHINE, FRAME)));
    assert_eq!((finding.evidence.guide_row, finding.evidence.chains.len()), (Some(1), 0));
    let label = |name| finding.figure(name).cloned();
    assert_eq!(label("guide"), Some(Value::Label("Yard guide".into())));
    assert_eq!(label("date"), Some(Value::Label("2025-03-01".into())));
}

#[test]
fn a_replacement_serves_through_the_carrier_the_carried_and_both() {
    for (machines, frames) in [
        ([&["m2"][..], &["m1"]], [&["f1"][..], &["f1"]]),
        ([&["m1"][..], &["m1"]], [&["f2"][..], &["f1"]]),
        ([&["m2"][..], &["m1"]], [&["f2"][..], &["f1"]]),
    ] {
        let mut yard = yard(machines, frames);
        assert_eq!(grade(&yard), None, "without a record nothing is linked");
        yard.replace("m1", &["m2"], false);
        yard.replace("f1", &["f2"], false);
        assert_eq!(grade(&yard), Some(Grade::ReplacedPart));
    }
}

#[test]
fn an_old_part_does_not_serve_for_a_new_one_on_either_side() {
    for wrong in 0..2 {
        let machines: [&[&str]; 2] = if wrong == 0 { [&["m1"], &["m2"]] } else { [&["m2"], &["m1"]] };
        let frames: [&[&str]; 2] = if wrong == 1 { [&["f1"], &["f2"]] } else { [&["f2"], &["f1"]] };
        let mut yard = yard(machines, frames);
        yard.replace("m1", &["m2"], false);
        yard.replace("f1", &["f2"], false);
        assert_eq!(grade(&yard), None, "forward only");
        let (old, new) = [("m1", "m2"), ("f1", "f2")][wrong];
        yard.replace(old, &[new], true);
        assert_eq!(grade(&yard), Some(Grade::ReplacedPart), "both ways");
    }
}

#[test]
fn a_split_serves_with_both_halves_and_a_merge_with_its_part() {
    let mut split = yard([&["left", "right"], &["whole"]], [&["f"], &["f"]]);
    split.replace("whole", &["left", "right"], false);
    assert_eq!(grade(&split), Some(Grade::ReplacedPart));
    split.bears(MACHINE, AXLE, &["left"]);
    assert_eq!(grade(&split), None);

    let mut merge = yard([&["one"], &["a", "b"]], [&["f"], &["f"]]);
    merge.replace("a", &["one"], false);
    merge.replace("b", &["one"], false);
    assert_eq!(grade(&merge), Some(Grade::ReplacedPart));
}

/// Prints the parts of an assembly for an item.
fn print_parts(yard: &mut Yard, item: fitup_core::item::ItemRef, assembly: &str, parts: &[&str]) {
    let rows = parts.iter().enumerate().map(|(at, part)| PartsListRow {
        assembly: assembly.to_owned(),
        position: (at + 1).to_string(),
        part: (*part).to_owned(),
        description: String::new(),
        quantity: 1,
    });
    yard.body(item).parts_list.rows.extend(rows);
}

#[test]
fn a_port_that_names_no_parts_is_borne_by_the_assembly_of_its_name() {
    let mut yard = yard([&[], &[]], [&["f"], &["f"]]);
    print_parts(&mut yard, MACHINE, "Axle plate", &["m", "bolt"]);
    print_parts(&mut yard, OTHER_MACHINE, "Axle plate", &["bolt", "m"]);
    print_parts(&mut yard, MACHINE, "Bonnet", &["b2"]);
    print_parts(&mut yard, OTHER_MACHINE, "Bonnet", &["b1"]);
    assert_eq!(grade(&yard), Some(Grade::SamePart), "equal at that joint, whatever else changed");
    print_parts(&mut yard, MACHINE, "Axle plate", &["shim"]);
    assert_eq!(grade(&yard), None, "one part more");
}

#[test]
fn a_series_that_differs_makes_no_difference_to_a_joint_of_the_same_parts() {
    let mut yard = yard([&["m"], &["m"]], [&["f"], &["f"]]);
    yard.body(MACHINE).series = "second".into();
    yard.body(OTHER_MACHINE).series = "first".into();
    assert_eq!(grade(&yard), Some(Grade::SamePart));
}
