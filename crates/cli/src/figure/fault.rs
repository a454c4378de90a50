//! Why one case cannot be computed, told with place and mend.

use fitup_catalogue::{Code, Position, Problem};
use fitup_core::dimension::{Fault, InputError, LARGEST};
use fitup_core::quantity::{Flow, Pressure};
use fitup_words::{Lang, Units, Words};
use serde_json::Value;

/// Why one case cannot be computed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CaseError {
    /// Where in the case, as a path of keys; empty for the case itself.
    pub path: String,
    /// What is wrong and how to mend it.
    pub message: String,
    /// Where in the text, once it is known.
    pub position: Option<Position>,
}

/// The words of faults: cases are data between programs and have one language.
pub(super) fn english() -> Words {
    Words::new(Lang::En, Units::Metric)
}

impl CaseError {
    /// A fault at a path of keys.
    pub fn new(path: impl Into<String>, message: impl Into<String>) -> Self {
        Self { path: path.into(), message: message.into(), position: None }
    }

    /// What the reader found wrong. A field that is missing is told at its own path.
    pub fn misread(problem: &Problem) -> Self {
        let told = english().problem(problem);
        let missing = problem.arg("field").filter(|_| problem.code == Code::MissingField);
        let keys: Vec<&str> =
            [problem.path.as_str()].into_iter().chain(missing).filter(|key| !key.is_empty()).collect();
        Self::new(keys.join("."), format!("{} {}", told.sentence, told.mend))
    }

    /// A number the core refused, at the key of `keys` that stands beside the quantity's name.
    pub fn refused(error: InputError, keys: &[(&str, &str)]) -> Self {
        let key = keys.iter().find(|(what, _)| *what == error.what).map_or(error.what, |(_, key)| key);
        let message = match error.fault {
            Fault::NotFinite => "must be a finite number".to_owned(),
            Fault::TooLarge => {
                format!("is beyond {LARGEST:e} in metres, kilograms or newtons; check the unit in the key's name")
            }
            Fault::Negative => "must not be negative".to_owned(),
            Fault::NotPositive => "must be above zero".to_owned(),
            Fault::Below(least) => format!("lies below the least that can be computed, {}", in_unit(least, key)),
            Fault::Above(most) => format!("lies above the greatest that can be computed, {}", in_unit(most, key)),
            Fault::Unordered => "has its two ends in the wrong order; put the lower one first".to_owned(),
            Fault::TooShort => "is too short for the other values; check them against each other".to_owned(),
        };
        Self::new(format!("inputs.{key}"), message)
    }

    /// The whole sentence, for the case with this id at this place of the list.
    pub fn told(&self, id: &Value, place: usize) -> String {
        let case = match id {
            Value::Null => format!("case {} of the list", place + 1),
            id => format!("case {id}"),
        };
        let at = match &self.position {
            Some(Position::Text { line, column }) => format!(" (line {line}, column {column})"),
            _ => String::new(),
        };
        match self.path.strip_prefix("inputs.").unwrap_or(&self.path) {
            "" => format!("{case}{at}: {}", self.message),
            keys => format!("{case}, key \"{}\"{at}: {}", keys.replace(", ", "\", \""), self.message),
        }
    }
}

/// An SI limit in the unit that the key's name ends in.
fn in_unit(limit: f64, key: &str) -> String {
    if key.ends_with("_deg") {
        format!("{} deg", round(limit.to_degrees()))
    } else if key.ends_with("_mm") {
        format!("{} mm", round(limit * 1000.0))
    } else if key.ends_with("_bar") {
        format!("{} bar", round(Pressure::from_si(limit).bar()))
    } else if key.ends_with("_l_min") {
        format!("{} L/min", round(Flow::from_si(limit).l_min()))
    } else {
        format!("{}", round(limit))
    }
}

/// Rounded to a millionth where it is not smaller itself, so that 60 degrees do not read as 59.99999999999999.
fn round(value: f64) -> f64 {
    if value.abs() < 1e-3 { value } else { (value * 1e6).round() / 1e6 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_refusal_names_the_key_and_the_limit_in_its_unit() {
        let error = InputError { what: "ramp-angle", fault: Fault::Above(1.047_197_551_196_597_6) };
        let told = CaseError::refused(error, &[("ramp-angle", "profile.ramp_deg")]);
        assert_eq!(
            told.told(&"x".into(), 0),
            "case \"x\", key \"profile.ramp_deg\": lies above the greatest that can be computed, 60 deg"
        );
        let error = InputError { what: "length", fault: Fault::Below(0.5) };
        assert!(CaseError::refused(error, &[("length", "length_mm")]).message.ends_with("500 mm"));
    }

    #[test]
    fn every_fault_has_words_and_an_unlisted_quantity_its_own_name() {
        for fault in [
            Fault::NotFinite,
            Fault::TooLarge,
            Fault::Negative,
            Fault::NotPositive,
            Fault::Below(1.0),
            Fault::Above(2.0),
            Fault::Unordered,
            Fault::TooShort,
        ] {
            let told = CaseError::refused(InputError { what: "mass", fault }, &[]);
            assert_eq!(told.path, "inputs.mass");
            assert!(told.message.len() > 10);
        }
    }
}
