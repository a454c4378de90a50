//! A case: a yard with one thing turned, what it is found to say, and a yard where that is not said.

use fitup_core::finding::{Finding, Value, Verdict};
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::item::Catalogue;
use fitup_words::{Lang, Units, Words};
use fitup_yard::Yard;

/// A change to the yard.
pub type Turn = fn(&mut Yard);

/// The yard after a change.
pub fn turned(turn: Turn) -> Yard {
    let mut yard = Yard::new();
    turn(&mut yard);
    yard
}

/// The first finding of a kind.
pub fn finding(answer: &Answer, code: &str) -> Finding {
    let found = answer.findings.iter().find(|finding| finding.code == code);
    let all: Vec<&str> = answer.findings.iter().map(|finding| finding.code).collect();
    found.unwrap_or_else(|| panic!("no {code} among {all:?}")).clone()
}

/// Verdict and figures of a finding, as short as can be.
pub fn told(catalogue: &Catalogue, finding: &Finding) -> String {
    let figures = finding.figures.iter().map(|figure| format!("{} {}", figure.name, value(catalogue, &figure.value)));
    let verdict = match finding.verdict {
        Verdict::BoltsUp => "up",
        Verdict::BoltsUpWithWork => "work",
        Verdict::CheckFirst => "check",
        Verdict::WontMount => "wont",
    };
    std::iter::once(verdict.to_owned()).chain(figures).collect::<Vec<_>>().join(", ")
}

fn value(catalogue: &Catalogue, value: &Value) -> String {
    match value {
        Value::Length(x) => format!("{:.2} mm", x.mm() + 0.0),
        Value::Mass(x) => format!("{:.1} kg", x.kg()),
        Value::Angle(x) => format!("{:.1} deg", x.deg()),
        Value::Pressure(x) => format!("{:.0} bar", x.bar()),
        Value::Flow(x) => format!("{:.1} L/min", x.l_min()),
        Value::Power(x) => format!("{:.2} kW", x.kw()),
        Value::Money(x) => format!("{} c", x.hundredths()),
        Value::Work(x) => format!("{:.2} h", x.hours()),
        Value::Share(x) => format!("{x:.3}"),
        Value::Count(x) => x.to_string(),
        Value::Item(item) => catalogue.body(*item).id.clone(),
        Value::Word(word) => format!("'{word}'"),
        Value::Name(text) | Value::Part(text) | Value::Dimension(text) => format!("'{text}'"),
    }
}

/// The finding's English sentence for a shopper, in metric units.
pub fn sentence(catalogue: &Catalogue, finding: &Finding) -> String {
    Words::new(Lang::En, Units::Metric).shopper(catalogue, finding).text()
}

/// Judges a yard, with its catalogue to name things by.
pub fn judged(yard: &Yard) -> (Catalogue, Answer) {
    let desk = Desk::new(yard.catalogue.clone());
    let answer = judge(&desk, &yard.build);
    (yard.catalogue.clone(), answer)
}

/// Three tests a finding, and the list of the codes that have them.
macro_rules! findings {
    ($( $name:ident: $code:literal, $turn:expr, $told:literal, $says:literal $(, unless $unless:expr)?; )+) => {
        /// The codes that this file tests.
        pub const CODES: &[&str] = &[$($code),+];
        $(#[allow(clippy::redundant_closure, clippy::redundant_closure_for_method_calls, reason = "all cases alike")]
        mod $name {
            #[allow(unused_imports, reason = "each case uses a part of it")]
            use super::*;

            #[test]
            fn carries_its_value() {
                let (catalogue, answer) = crate::case::judged(&crate::case::turned($turn));
                assert_eq!(crate::case::told(&catalogue, &crate::case::finding(&answer, $code)), $told);
            }

            #[test]
            fn says_its_sentence() {
                let (catalogue, answer) = crate::case::judged(&crate::case::turned($turn));
                assert_eq!(crate::case::sentence(&catalogue, &crate::case::finding(&answer, $code)), $says);
            }

            #[test]
            fn is_silent_where_it_has_nothing_to_say() {
                let calm: crate::case::Turn = crate::case::calm!($($unless)?);
                let answer = crate::case::judged(&crate::case::turned(calm)).1;
                let said: Vec<_> = answer.findings.iter().filter(|finding| finding.code == $code).collect();
                assert!(said.is_empty(), "{said:?}");
            }
        })+
    };
}

macro_rules! calm {
    () => {
        |_| {}
    };
    ($turn:expr) => {
        $turn
    };
}

pub(crate) use {calm, findings};
