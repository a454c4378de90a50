//! One figure alone, from a JSON case: `fitup figure NAME FILE`.
//!
//! A new figure is a file here with a `compute` and a line in [`FIGURES`].

mod arm;
mod axle_loads;
mod bolt_pattern;
mod breakover;
mod case;
mod closure;
mod end_angles;
mod fault;
mod hydraulics;
mod nearest;
mod ramp_roll;
mod reading;
mod shortest_ramp;
mod swing;
mod tie_downs;
mod tip_angles;
mod tipping;
mod tolerance;
mod trailer;
mod wire;

use std::fmt;

use serde_json::Value;

pub use case::{Answer, Case, CasesError, answer, cases, to_json};
pub use fault::CaseError;

/// Computes a case's result from its `inputs`.
pub type Compute = fn(&Value) -> Result<Value, CaseError>;

/// Every figure by name, in alphabetical order.
pub const FIGURES: &[(&str, Compute)] = &[
    ("arm", arm::compute),
    ("axle-loads", axle_loads::compute),
    ("bolt-pattern", bolt_pattern::compute),
    ("breakover", breakover::compute),
    ("closure", closure::compute),
    ("end-angles", end_angles::compute),
    ("hydraulics", hydraulics::compute),
    ("ramp-roll", ramp_roll::compute),
    ("shortest-ramp", shortest_ramp::compute),
    ("swing", swing::compute),
    ("tie-downs", tie_downs::compute),
    ("tip-angles", tip_angles::compute),
    ("tipping", tipping::compute),
    ("tolerance", tolerance::compute),
    ("trailer", trailer::compute),
];

/// A name that no figure has.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnknownFigure {
    /// The name as given.
    pub name: String,
    /// The figure whose name is nearest, when one is near.
    pub nearest: Option<&'static str>,
}

impl fmt::Display for UnknownFigure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "no figure is called \"{}\"", self.name)?;
        if let Some(nearest) = self.nearest {
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
        nearest: nearest::nearest(name, &FIGURES.iter().map(|(known, _)| *known).collect::<Vec<_>>()),
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
