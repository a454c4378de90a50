//! Every kind of finding: the value it carries, its exact English sentence, and that it is silent where it has nothing to say.
//!
//! The yard of the fixture bolts up by its dimensions alone. Each case turns one thing of it and names what is then found.
//!
//! Covers: core/src/fit/joint, core/src/fit/rule, core/src/fit/judge, core/src/fit/context.

#[path = "findings/case.rs"]
mod case;
#[path = "findings/clearance.rs"]
mod clearance;
#[path = "findings/equipment.rs"]
mod equipment;
#[path = "findings/holes.rs"]
mod holes;
#[path = "findings/joints.rs"]
mod joints;
#[path = "findings/seats.rs"]
mod seats;
#[path = "findings/travel.rs"]
mod travel;
#[path = "findings/whole.rs"]
mod whole;

use fitup_core::finding::Verdict;
use fitup_core::fit::declared;
use fitup_yard::Yard;

/// The codes that have their three tests.
const TESTED: [&[&str]; 7] =
    [clearance::CODES, equipment::CODES, holes::CODES, joints::CODES, seats::CODES, travel::CODES, whole::CODES];

#[test]
fn every_code_has_its_three_tests_and_no_other_has() {
    let mut tested: Vec<&str> = TESTED.concat();
    tested.sort_unstable();
    let mut known: Vec<&str> = declared().map(|declared| declared.code).collect();
    known.sort_unstable();
    assert_eq!(tested, known);
}

#[test]
fn the_yard_bolts_up_as_it_stands() {
    for yard in [Yard::new(), Yard::new().with_flail()] {
        let answer = yard.judge();
        let worst: Vec<_> = answer.findings.iter().filter(|f| f.verdict != Verdict::BoltsUp).collect();
        assert_eq!((answer.verdict, worst), (Verdict::BoltsUp, vec![]));
    }
}
