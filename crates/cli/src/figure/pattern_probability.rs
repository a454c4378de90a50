//! `pattern-probability`: how likely all bolts of two plates go in.

use fitup_catalogue::{read_record, read_words};
use fitup_core::fit::mating::bolt_pattern::{
    HalfRange, Hole, HoleErrors, Law, PatternFault, Plate, ProbabilityFault, WorstMargin, pattern_probability,
};
use serde_json::{Value, json};

use super::CaseError;
use super::bolt_pattern::{self, WireHole, hole};
use super::wire::{m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required pattern_a: Vec<WireHole>,
        required pattern_b: Vec<WireHole>,
        required half_range_a_mm: f64,
        required half_range_b_mm: f64,
        required law: WireLaw,
        optional diameter_half_range_mm: f64,
        required bolt_d_mm: f64,
    }
}

read_words! {
    #[derive(Clone, Copy)]
    enum WireLaw {
        Uniform "uniform",
        Normal "normal",
    }
}

/// The probability with its standard error, and the margin in the worst case or a bound on it.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let a: Vec<Hole> = inputs.pattern_a.iter().map(hole).collect();
    let b: Vec<Hole> = inputs.pattern_b.iter().map(hole).collect();
    let errors = HoleErrors {
        place_a: m(inputs.half_range_a_mm),
        place_b: m(inputs.half_range_b_mm),
        diameter: m(inputs.diameter_half_range_mm),
        law: match inputs.law {
            WireLaw::Uniform => Law::Uniform,
            WireLaw::Normal => Law::Normal,
        },
    };
    let found = pattern_probability(&a, &b, m(inputs.bolt_d_mm), &errors).map_err(refused)?;
    let (worst, at_least) = match found.worst {
        Some(WorstMargin::Is(margin)) => (Some(margin), None),
        Some(WorstMargin::AtLeast(margin)) => (None, Some(margin)),
        None => (None, None),
    };
    Ok(json!({
        "p_all": found.all,
        "p_sigma": found.sigma,
        "worst_margin_mm": mm(worst),
        "worst_margin_at_least_mm": mm(at_least),
    }))
}

fn refused(fault: ProbabilityFault) -> CaseError {
    match fault {
        ProbabilityFault::Pattern(PatternFault::NoBolt) => CaseError::new("inputs.bolt_d_mm", "must be above zero"),
        ProbabilityFault::Pattern(PatternFault::NothingRequired) => {
            CaseError::new("inputs.pattern_a, pattern_b", "have no holes; give at least one in each")
        }
        ProbabilityFault::Pattern(fault) => bolt_pattern::refused(fault),
        ProbabilityFault::Unequal { a, b } => {
            let message =
                format!("have {a} and {b} holes; give as many in each, in the order in which they share bolts");
            CaseError::new("inputs.pattern_a, pattern_b", message)
        }
        ProbabilityFault::NotPlainRound { side, hole } => {
            let pattern = if side == Plate::A { "pattern_a" } else { "pattern_b" };
            CaseError::new(format!("inputs.{pattern}[{hole}]"), "must be a plain round hole for this figure")
        }
        ProbabilityFault::HalfRange(which) => {
            let key = match which {
                HalfRange::PlaceA => "half_range_a_mm",
                HalfRange::PlaceB => "half_range_b_mm",
                HalfRange::Diameter => "diameter_half_range_mm",
            };
            CaseError::new(format!("inputs.{key}"), "must not be negative nor beyond a thousand kilometres")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case() -> Value {
        let hole = |u: f64| json!({"u_mm": u, "v_mm": 0, "dia_mm": 14, "kind": "plain"});
        json!({"pattern_a": [hole(0.0), hole(200.0)], "pattern_b": [hole(0.0), hole(200.0)], "half_range_a_mm": 0.5,
            "half_range_b_mm": 0.5, "law": "uniform", "bolt_d_mm": 12})
    }

    #[test]
    fn what_cannot_fail_is_certain() {
        let result = compute(&case()).expect("sound");
        assert_eq!((&result["p_all"], &result["p_sigma"]), (&json!(1.0), &json!(0.0)));
        assert_eq!(result["worst_margin_at_least_mm"], Value::Null);
    }

    #[test]
    fn every_fault_names_its_key() {
        let path = |change: &dyn Fn(&mut Value)| {
            let mut inputs = case();
            change(&mut inputs);
            compute(&inputs).expect_err("must be refused").path
        };
        assert_eq!(path(&|i| i["bolt_d_mm"] = json!(0)), "inputs.bolt_d_mm");
        assert_eq!(path(&|i| i["law"] = json!("even")), "inputs.law");
        assert_eq!(path(&|i| i["half_range_b_mm"] = json!(-0.1)), "inputs.half_range_b_mm");
        assert_eq!(path(&|i| i["diameter_half_range_mm"] = json!(1e300)), "inputs.diameter_half_range_mm");
        assert_eq!(path(&|i| i["pattern_b"][1]["kind"] = json!("tapped")), "inputs.pattern_b[1]");
        assert_eq!(path(&|i| i["pattern_b"][1]["dia_mm"] = json!(0)), "inputs.pattern_b[1].dia_mm");
        assert_eq!(path(&|i| i["pattern_a"] = json!([])), "inputs.pattern_a, pattern_b");
        assert_eq!(
            path(&|i| {
                i["pattern_a"] = json!([]);
                i["pattern_b"] = json!([]);
            }),
            "inputs.pattern_a, pattern_b"
        );
    }
}
