//! Every kind of finding: the value it carries, its exact English sentence, and that it is silent where it has nothing to say.
//!
//! The yard of the fixture bolts up by its dimensions alone. Each case turns one thing of it and names what is then found.

#[path = "findings/case.rs"]
mod case;
#[path = "findings/clearance.rs"]
mod clearance;
#[path = "findings/holes.rs"]
mod holes;
#[path = "findings/travel.rs"]
mod travel;
#[path = "findings/whole.rs"]
mod whole;

use fitup_core::finding::Verdict;
use fitup_core::fit::CODES;
use fitup_tests::yard::Yard;

/// The codes that have their three tests.
const TESTED: [&[&str]; 4] = [clearance::CODES, holes::CODES, travel::CODES, whole::CODES];

#[test]
fn a_code_is_tested_once_and_is_a_code() {
    let mut tested: Vec<&str> = TESTED.concat();
    tested.sort_unstable();
    assert!(tested.windows(2).all(|pair| pair[0] != pair[1]), "{tested:?}");
    assert!(tested.iter().all(|code| CODES.iter().any(|(known, _)| known == code)), "{tested:?}");
}

#[test]
fn the_yard_bolts_up_as_it_stands() {
    for yard in [Yard::new(), Yard::new().with_flail()] {
        let answer = yard.judge();
        let worst: Vec<_> = answer.findings.iter().filter(|f| f.verdict != Verdict::BoltsUp).collect();
        assert_eq!((answer.verdict, worst), (Verdict::BoltsUp, vec![]));
    }
}
