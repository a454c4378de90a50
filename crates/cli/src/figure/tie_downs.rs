//! `tie-downs`: how many are needed and whether they hold enough.

use fitup_core::dimension::{Article, Tie, TieRun, tie_downs};
use serde::Deserialize;
use serde_json::{Value, json};

use super::CaseError;
use super::reading::read;
use super::wire::m;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Inputs {
    mass_kg: f64,
    length_mm: f64,
    #[serde(default)]
    blocked_forward: bool,
    #[serde(default)]
    apply_heavy_equipment_rule: bool,
    ties: Vec<WireTie>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WireTie {
    wll_kg: f64,
    anchor_wll_kg: Option<f64>,
    kind: Kind,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum Kind {
    Direct,
    SameSide,
    Over,
}

const KEYS: &[(&str, &str)] = &[
    ("mass", "mass_kg"),
    ("length", "length_mm"),
    ("limit", "ties (wll_kg)"),
    ("anchor-limit", "ties (anchor_wll_kg)"),
];

/// Count and aggregate working load limit against what the rule asks for.
pub fn compute(inputs: &Value) -> Result<Value, CaseError> {
    let inputs: Inputs = read(inputs)?;
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
    use super::*;

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
