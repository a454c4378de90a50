//! One figure alone, from a JSON case: `fitup figure NAME FILE`.
//!
//! A new figure is a file here with a record of `Inputs` and a `compute` of them, its module below, a line in [`FIGURES`]
//! and a file of worked cases with its name in `tests/reference/examples`.

mod arm;
mod axle_loads;
mod bolt_pattern;
mod bolted_joint;
mod breakover;
mod case;
mod closure;
mod end_angles;
mod fault;
mod hydraulics;
mod pattern_probability;
mod photo_plane;
mod ramp_loads;
mod ramp_roll;
mod shortest_ramp;
mod swing;
mod tie_downs;
mod tip_angles;
mod tipping;
mod tolerance;
mod trailer;
mod wire;

use std::fmt;

use fitup_catalogue::decode::Report;
use fitup_catalogue::tree::Node;
use serde_json::Value;

use case::figure;

pub use case::{Answer, CasesError, answers, to_json};
pub use fault::CaseError;

/// Computes a case's result from its `inputs`, or says everything that keeps it from one.
pub type Compute = fn(Node<'_>) -> Result<Value, Vec<CaseError>>;

/// Every figure by name, in alphabetical order.
pub const FIGURES: &[(&str, Compute)] = &[
    ("arm", |inputs| figure(inputs, arm::compute)),
    ("axle-loads", |inputs| figure(inputs, axle_loads::compute)),
    ("bolt-pattern", |inputs| figure(inputs, bolt_pattern::compute)),
    ("bolted-joint", |inputs| figure(inputs, bolted_joint::compute)),
    ("breakover", |inputs| figure(inputs, breakover::compute)),
    ("closure", |inputs| figure(inputs, closure::compute)),
    ("end-angles", |inputs| figure(inputs, end_angles::compute)),
    ("hydraulics", |inputs| figure(inputs, hydraulics::compute)),
    ("pattern-probability", |inputs| figure(inputs, pattern_probability::compute)),
    ("photo-plane", |inputs| figure(inputs, photo_plane::compute)),
    ("ramp-loads", |inputs| figure(inputs, ramp_loads::compute)),
    ("ramp-roll", |inputs| figure(inputs, ramp_roll::compute)),
    ("shortest-ramp", |inputs| figure(inputs, shortest_ramp::compute)),
    ("swing", |inputs| figure(inputs, swing::compute)),
    ("tie-downs", |inputs| figure(inputs, tie_downs::compute)),
    ("tip-angles", |inputs| figure(inputs, tip_angles::compute)),
    ("tipping", |inputs| figure(inputs, tipping::compute)),
    ("tolerance", |inputs| figure(inputs, tolerance::compute)),
    ("trailer", |inputs| figure(inputs, trailer::compute)),
];

/// A name that no figure has.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnknownFigure {
    /// The name as given.
    pub name: String,
    /// The figure whose name is nearest, when one is near.
    pub nearest: Option<String>,
}

impl fmt::Display for UnknownFigure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "no figure is called \"{}\"", self.name)?;
        if let Some(nearest) = &self.nearest {
            write!(f, "; did you mean \"{nearest}\"?")?;
        }
        let names: Vec<&str> = FIGURES.iter().map(|(name, _)| *name).collect();
        write!(f, " The figures are: {}", names.join(", "))
    }
}

/// The figure called `name`.
///
/// # Errors
/// No figure has the name.
pub fn find(name: &str) -> Result<Compute, UnknownFigure> {
    FIGURES.iter().find(|(known, _)| *known == name).map(|(_, compute)| *compute).ok_or_else(|| UnknownFigure {
        name: name.to_owned(),
        nearest: Report::new().nearest(name, FIGURES.iter().map(|(known, _)| *known)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_near_name_is_proposed_and_all_are_listed() {
        let told = find("end_angle").map(|_| ()).expect_err("no such figure").to_string();
        assert!(told.contains("did you mean \"end-angles\"?"), "{told}");
        let told = find("zzz").map(|_| ()).expect_err("no such figure").to_string();
        assert!(!told.contains("did you mean") && told.contains("The figures are: "), "{told}");
        assert!(find("").is_err());
    }

    #[test]
    fn names_stand_in_order_and_once() {
        assert!(FIGURES.windows(2).all(|pair| pair[0].0 < pair[1].0));
    }
}
