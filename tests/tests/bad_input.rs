//! Input that no sound catalogue or build has: it is answered, in time, and never passes.

use std::time::{Duration, Instant};

use fitup_core::finding::Verdict;
use fitup_core::fit::Answer;
use fitup_core::item::Part;
use fitup_yard::{FRAME, MACHINE, OTHER_MACHINE, SEAT, Yard, hole, mm, plate};

fn says(answer: &Answer, code: &str) -> bool {
    answer.findings.iter().any(|finding| finding.code == code)
}

#[test]
fn a_port_without_holes_is_not_known() {
    let mut yard = Yard::new();
    yard.holes(SEAT, "base").holes.clear();
    assert!(says(&yard.judge(), "holes-unknown"));
}

#[test]
fn a_port_with_one_hole_takes_one_bolt_and_no_more() {
    let mut yard = Yard::new();
    *yard.holes(SEAT, "base") = plate(&[(0.0, 0.0)]);
    let answer = yard.judge();
    assert!(says(&answer, "bolts-unknown") && answer.verdict == Verdict::CheckFirst, "one bolt may be too few");
    yard.holes(SEAT, "base").required = Some(1);
    // The seat stands by its one hole now, nearer to the levers.
    yard.seat().least_room = Some(mm(400.0));
    let answer = yard.judge();
    let open: Vec<_> = answer.findings.iter().filter(|finding| finding.verdict > Verdict::BoltsUp).collect();
    assert_eq!(answer.verdict, Verdict::BoltsUp, "{open:?}");
    yard.holes(SEAT, "base").required = Some(4);
    let answer = yard.judge();
    assert!(says(&answer, "holes-miss") && answer.verdict == Verdict::WontMount);
}

#[test]
fn ten_thousand_holes_are_refused_at_once_and_said_to_be_too_many() {
    let mut yard = Yard::new();
    for (item, name) in [(FRAME, "deck"), (SEAT, "base")] {
        yard.holes(item, name).holes =
            (0..10_000).map(|n| hole(f64::from(n % 100) * 20.0, f64::from(n / 100) * 20.0)).collect();
    }
    let began = Instant::now();
    let answer = yard.judge();
    assert!(began.elapsed() < Duration::from_secs(10), "{:?}", began.elapsed());
    assert!(says(&answer, "holes-too-many") && answer.verdict == Verdict::CheckFirst);
}

#[test]
fn holes_that_are_no_numbers_are_not_known() {
    for odd in [f64::NAN, f64::INFINITY, 1e300] {
        let mut yard = Yard::new();
        yard.holes(SEAT, "base").holes[0].u.value = mm(odd);
        assert!(says(&yard.judge(), "holes-unknown"), "{odd}");
    }
    for odd in [0.0, -13.0] {
        let mut yard = Yard::new();
        yard.holes(SEAT, "base").holes[0].diameter.value = mm(odd);
        assert!(says(&yard.judge(), "holes-unknown"), "{odd}");
    }
}

#[test]
fn a_catalogue_without_a_guide_is_off_guide_throughout() {
    let answer = Yard::new().judge();
    assert_eq!(answer.standing, Some(fitup_core::finding::Standing::OffGuide));
    assert!(!says(&answer, "joint-listed"));
}

#[test]
fn lineage_in_circles_onto_itself_and_into_nothing_proves_only_what_it_says() {
    let mut yard = Yard::new();
    yard.list(fitup_core::item::MachineId(1), fitup_core::item::FrameId(0));
    yard.bears(FRAME, "axle plate", &["f1"]);
    yard.bears(MACHINE, "axle plate", &["a"]);
    yard.bears(OTHER_MACHINE, "axle plate", &["c"]);
    yard.replace("a", &["a"], true);
    yard.replace("c", &["gone"], false);
    yard.catalogue.parts.remove("gone");
    assert!(!says(&yard.judge(), "joint-replaced-part"));
    yard.replace("c", &["d"], false);
    yard.replace("d", &["a", "c"], false);
    assert!(!says(&yard.judge(), "joint-replaced-part"), "a alone is not a and c");
    yard.replace("d", &["a"], false);
    yard.replace("a", &["c"], false);
    assert!(says(&yard.judge(), "joint-replaced-part"), "in a circle each serves for each");
}

#[test]
fn a_tangle_of_replacements_ends() {
    let mut yard = Yard::new();
    yard.list(fitup_core::item::MachineId(1), fitup_core::item::FrameId(0));
    yard.bears(FRAME, "axle plate", &["f1"]);
    yard.bears(MACHINE, "axle plate", &["p0"]);
    yard.bears(OTHER_MACHINE, "axle plate", &["p999"]);
    for number in 0..1000_u32 {
        let by = [format!("p{}", (number * 7 + 1) % 1000), format!("p{}", (number * 13 + 5) % 1000)];
        let by: Vec<&str> = by.iter().map(String::as_str).collect();
        yard.replace(&format!("p{number}"), &by, true);
    }
    let named = |part: &Part| part.replaced.is_some();
    assert!(yard.catalogue.parts.values().all(named));
    let began = Instant::now();
    yard.judge();
    assert!(began.elapsed() < Duration::from_secs(10), "{:?}", began.elapsed());
}
