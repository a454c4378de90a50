//! `tie-downs`: how many are needed and whether they hold enough.

use fitup_catalogue::{read_record, read_words};
use fitup_core::dimension::{Article, Tie, TieRun, tie_downs};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::m;

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required mass_kg: f64,
        required length_mm: f64,
        optional blocked_forward: bool,
        optional apply_heavy_equipment_rule: bool,
        required ties: Vec<WireTie>,
    }
}

read_record! {
    struct WireTie {
        required wll_kg: f64,
        nullable anchor_wll_kg: Option<f64>,
        required kind: Kind,
    }
}

read_words! {
    enum Kind {
        Direct "direct",
        SameSide "same_side",
        Over "over",
    }
}

const KEYS: &[(&str, &str)] = &[
    ("mass", "mass_kg"),
    ("length", "length_mm"),
    ("limit", "ties (wll_kg)"),
    ("anchor-limit", "ties (anchor_wll_kg)"),
];

/// Count and aggregate working load limit against what the rule asks for.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let article = Article {
        mass: inputs.mass_kg,
        length: m(inputs.length_mm),
        blocked_forward: inputs.blocked_forward,
        as_heavy_machinery: inputs.apply_heavy_equipment_rule,
    };
    let tie = |tie: &WireTie| Tie {
        limit: tie.wll_kg,
        anchor_limit: tie.anchor_wll_kg,
        run: match tie.kind {
            Kind::Direct => TieRun::Direct,
            Kind::SameSide => TieRun::SameSide,
            Kind::Over => TieRun::Over,
        },
    };
    let ties: Vec<Tie> = inputs.ties.iter().map(tie).collect();
    let found = tie_downs(article, &ties).map_err(|error| CaseError::refused(error, KEYS))?;
    Ok(json!({
        "required_count": found.needed,
        "aggregate_wll_kg": found.aggregate,
        "required_aggregate_kg": found.least_aggregate,
        "count_ok": found.count_suffices,
        "wll_ok": found.strength_suffices(),
        "wll_margin_kg": found.margin(),
    }))
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    #[test]
    fn nothing_tied_fails_both_and_an_unknown_kind_is_told() {
        let mut inputs = json!({"mass_kg": 900, "length_mm": 6080, "ties": []});
        let result = compute(&inputs).expect("sound");
        assert_eq!(
            (&result["required_count"], &result["count_ok"], &result["wll_ok"]),
            (&json!(3), &json!(false), &json!(false))
        );
        inputs["ties"] = json!([{"wll_kg": 100, "kind": "loop"}]);
        let error = compute(&inputs).expect_err("no such kind");
        assert_eq!(error.path, "inputs.ties[0].kind");
        assert!(error.message.contains("same_side"));
    }
}
