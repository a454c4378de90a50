//! A joint inherits a listing through its carrier, through what is carried, or through both, and never the wrong way.

use fitup_core::finding::{Finding, Grade, Value, Verdict};
use fitup_core::item::{FrameId, MachineId, PartsListRow, Role};
use fitup_core::quantity::Tool;
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
    assert_eq!(label("guide"), Some(Value::Name("Yard guide".into())));
    assert_eq!(label("date"), Some(Value::Name("2025-03-01".into())));
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

/// The second machine is listed with the frame, of whose own part nothing is known.
fn one_sided(own: &[&str], other: &[&str]) -> Yard {
    let mut yard = Yard::new();
    yard.list(MachineId(1), FrameId(0));
    yard.bears(MACHINE, AXLE, own);
    yard.bears(OTHER_MACHINE, AXLE, other);
    yard
}

#[test]
fn what_the_other_side_bears_need_not_be_known_where_this_side_bears_what_is_listed_with_it() {
    let same = axle(&one_sided(&["m"], &["m"])).unwrap();
    assert_eq!((same.evidence.grade, same.evidence.witness), (Grade::SamePart, Some((OTHER_MACHINE, FRAME))));
    let [chain] = &same.evidence.chains[..] else { panic!("{:?}", same.evidence.chains) };
    assert_eq!((chain.item, chain.stands_for), (MACHINE, OTHER_MACHINE));
    let mut new_for_old = one_sided(&["m2"], &["m1"]);
    new_for_old.replace("m1", &["m2"], false);
    assert_eq!(grade(&new_for_old), Some(Grade::ReplacedPart));
    let mut old_for_new = one_sided(&["m1"], &["m2"]);
    old_for_new.replace("m1", &["m2"], false);
    for proves_nothing in [one_sided(&["m"], &["n"]), one_sided(&[], &["m"]), one_sided(&["m"], &[]), old_for_new] {
        assert_eq!(grade(&proves_nothing), None);
    }
}

#[test]
fn a_listing_does_not_say_which_of_two_ports_of_one_role_it_means() {
    let mut yard = one_sided(&["m"], &["m"]);
    let mut second = yard.port(FRAME, AXLE).clone();
    second.name = "second axle plate".into();
    yard.body(FRAME).ports.push(second);
    assert_eq!(grade(&yard), None);
}

/// What is told of a number that differs: its verdict and what the joint rests on all the same.
fn differing(yard: &Yard) -> Option<(Verdict, Value)> {
    let answer = yard.judge();
    let finding = answer.findings.iter().find(|finding| finding.code == "number-read-differs")?;
    Some((finding.verdict, finding.figure("rests").unwrap().clone()))
}

#[test]
fn a_number_read_that_a_listed_set_has_proves_the_joint_and_is_marked_read() {
    // Nothing is known of the frame's plate until its number is read.
    let mut yard = yard([&["m"], &["m"]], [&[], &["f"]]);
    assert_eq!(axle(&yard), None);
    yard.read(FRAME, AXLE, &["F"]);
    let finding = axle(&yard).unwrap();
    assert_eq!((finding.code, finding.evidence.grade), ("joint-same-part", Grade::SamePart));
    let read = &finding.evidence.read[0];
    assert_eq!((read.item, read.parts.as_slice(), read.by.as_str()), (FRAME, &["f".to_owned()][..], "the workshop"));
    assert_eq!(differing(&yard), None, "nothing was listed to differ from");
}

#[test]
fn a_number_read_decides_over_the_list_and_says_so() {
    let mut yard = yard([&["m"], &["m"]], [&["other"], &["f"]]);
    assert_eq!(axle(&yard), None);
    yard.read(FRAME, AXLE, &["f"]);
    assert_eq!(grade(&yard), Some(Grade::SamePart));
    assert_eq!(differing(&yard), Some((Verdict::BoltsUp, Value::Word("listed"))));
    // The other way: what is listed together does not hold for a unit that has another part.
    yard.list(MachineId(0), FrameId(0));
    yard.build.side.read.clear();
    assert_eq!(grade(&yard), Some(Grade::Listed));
    yard.read(FRAME, AXLE, &["of-nobody"]);
    assert_eq!(axle(&yard), None);
    assert_eq!(differing(&yard), Some((Verdict::CheckFirst, Value::Word("nothing"))));
}

#[test]
fn a_number_read_that_replaces_the_listed_one_inherits_and_the_old_one_does_not() {
    let mut yard = yard([&["m"], &["m"]], [&["f1"], &["f1"]]);
    yard.list(MachineId(0), FrameId(0));
    yard.replace("f1", &["f2"], false);
    yard.replace("f0", &["f1"], false);
    yard.read(FRAME, AXLE, &["f2"]);
    assert_eq!(grade(&yard), Some(Grade::ReplacedPart));
    yard.read(FRAME, AXLE, &["f0"]);
    assert_eq!(axle(&yard), None, "the old one does not serve for the new one");
}

#[test]
fn what_the_row_states_of_another_part_counts_neither_for_nor_against_the_joint_until_it_is_measured() {
    let mut yard = yard([&["m"], &["m"]], [&["other"], &["f"]]);
    yard.read(FRAME, AXLE, &["of-nobody"]);
    let codes = |yard: &Yard| {
        let answer = yard.judge();
        let joint = answer.joints.iter().find(|joint| joint.role == Role::AxleAnchor).unwrap();
        joint.findings.iter().map(|&at| answer.findings[at].code).collect::<Vec<_>>()
    };
    assert_eq!(codes(&yard), ["number-read-differs"]);
    let plate = yard.port(FRAME, AXLE).clone();
    for dimension in
        plate.dimensions().into_iter().filter(|dimension| !dimension.name.is("at-x") && !dimension.name.is("at-z"))
    {
        let stated = dimension.stated.unwrap().value.mm();
        yard.measure(FRAME, AXLE, &dimension.name.to_string(), stated, Tool::Caliper);
    }
    assert_eq!(differing(&yard), Some((Verdict::BoltsUp, Value::Word("measured"))));
    assert!(codes(&yard).contains(&"holes-meet"));
}
