//! Every limit from both sides: what just keeps it is not told of, what just breaks it is; and what the yard measures.
//!
//! Where a limit is kept at equality, the values are chosen so that it is met exactly: twice and once the same number.

#[path = "limits/arm.rs"]
mod arm;
#[path = "limits/figures.rs"]
mod figures;
#[path = "limits/joints.rs"]
mod joints;
#[path = "limits/rules.rs"]
mod rules;

use fitup_yard::Yard;

/// A code, a change to the yard by a value, the value that keeps the limit, and one that breaks it.
type Limit = (&'static str, fn(&mut Yard, f64), f64, f64);

fn says(yard: &Yard, code: &str) -> bool {
    yard.judge().findings.iter().any(|finding| finding.code == code)
}

fn hold(start: &Yard, limits: &[Limit]) {
    for &(code, turn, keeps, breaks) in limits {
        for (value, told) in [(keeps, false), (breaks, true)] {
            let mut yard = start.clone();
            turn(&mut yard, value);
            assert_eq!(says(&yard, code), told, "{code} at {value}");
        }
    }
}
