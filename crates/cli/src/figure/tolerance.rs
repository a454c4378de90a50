//! `tolerance`: what the tolerances leave of a margin, and what would settle it.

use fitup_catalogue::read_record;
use fitup_core::fit::mating::tolerance::{Contribution, Standing, assess};
use serde_json::{Value, json};

use super::CaseError;

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required margin_mm: f64,
        required contributions: Vec<Part>,
    }
}

read_record! {
    struct Part {
        required half_range_mm: f64,
        required sensitivity: f64,
    }
}

/// Worst case, likely case, verdict, probability and what would settle it.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    if let Some(place) = inputs.contributions.iter().position(|part| part.half_range_mm < 0.0) {
        let path = format!("inputs.contributions[{place}].half_range_mm");
        return Err(CaseError::new(path, "must not be negative; give the half range, 0.5 for plus or minus 0.5"));
    }
    // One unit throughout is all that is asked; in millimetres a limit met exactly stays exact.
    let contributions: Vec<Contribution> = inputs
        .contributions
        .iter()
        .map(|part| Contribution { half_range: part.half_range_mm, sensitivity: part.sensitivity })
        .collect();
    let assessed = assess(inputs.margin_mm, &contributions)
        .ok_or_else(|| CaseError::new("inputs", "holds a number that is not finite or far too large"))?;
    Ok(json!({
        "worst_case_mm": assessed.worst_case,
        "rss_mm": assessed.root_sum_square,
        "verdict": verdict(assessed.standing),
        "p_fit": assessed.fit_probability,
        "common_scale": assessed.common_scale,
        "settle_half_range_worst_mm": assessed.settling_worst_case,
        "settle_half_range_rss_mm": assessed.settling_root_sum_square,
    }))
}

const fn verdict(standing: Standing) -> &'static str {
    match standing {
        Standing::CertainFit => "certain_fit",
        Standing::ProbableFit => "probable_fit",
        Standing::Undecided => "undecided",
        Standing::ProbableMisfit => "probable_misfit",
        Standing::CertainMisfit => "certain_misfit",
    }
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn verdict_of(margin: f64) -> Value {
        let inputs = json!({"margin_mm": margin, "contributions": [
            {"half_range_mm": 3, "sensitivity": 1}, {"half_range_mm": 4, "sensitivity": 1}]});
        compute(&inputs).expect("sound")["verdict"].clone()
    }

    #[test]
    fn every_verdict_has_its_name() {
        assert_eq!(verdict_of(7.0), "certain_fit");
        assert_eq!(verdict_of(5.0), "probable_fit");
        assert_eq!(verdict_of(0.0), "undecided");
        assert_eq!(verdict_of(-6.0), "probable_misfit");
        assert_eq!(verdict_of(-8.0), "certain_misfit");
    }

    #[test]
    fn without_contributions_the_sign_decides() {
        let result = compute(&json!({"margin_mm": -0.5, "contributions": []})).expect("sound");
        assert_eq!(
            result,
            json!({"worst_case_mm": 0.0, "rss_mm": 0.0, "verdict": "certain_misfit", "p_fit": 0.0,
                "common_scale": null, "settle_half_range_worst_mm": [], "settle_half_range_rss_mm": []})
        );
    }

    #[test]
    fn a_negative_half_range_and_numbers_beyond_numbers_are_told() {
        let inputs = json!({"margin_mm": 1, "contributions": [{"half_range_mm": -1, "sensitivity": 1}]});
        assert_eq!(compute(&inputs).expect_err("negative").path, "inputs.contributions[0].half_range_mm");
        let inputs = json!({"margin_mm": 1, "contributions": [{"half_range_mm": 1e200, "sensitivity": 1e200}]});
        assert_eq!(compute(&inputs).expect_err("too large").path, "inputs.contributions[0].half_range_mm");
    }
}
