//! `axle-loads`: what each axle carries, margins to the ratings, and ballast.

use fitup_catalogue::decode::Filled;
use fitup_catalogue::read_record;
use fitup_core::dimension::{ShareOf, axle_loads};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{Body, bodies, m, mm, set};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required wheelbase_mm: f64,
        required bodies: Filled<Body>,
        nullable front_rating_kg: Option<f64>,
        nullable rear_rating_kg: Option<f64>,
        nullable total_rating_kg: Option<f64>,
        nullable ballast_x_mm: Option<f64>,
        nullable front_share_wanted: Option<f64>,
        nullable bare_mass_kg: Option<f64>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("wheelbase", "wheelbase_mm"),
    ("mass", "bodies"),
    ("mass-x", "bodies"),
    ("ballast-x", "ballast_x_mm"),
    ("share", "front_share_wanted"),
    ("bare-mass", "bare_mass_kg"),
];

/// Loads and lifts always; margins and ballast when what they need is given.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let refused = |error| CaseError::refused(error, KEYS);
    let loads = axle_loads(m(inputs.wheelbase_mm), &bodies(&inputs.bodies)).map_err(refused)?;
    let mut result = json!({
        "total_kg": loads.total,
        "front_kg": loads.front,
        "rear_kg": loads.rear,
        "front_share": loads.front_share(),
        "x_cg_mm": mm(loads.centre),
        "front_lifts": loads.front_lifts(),
        "rear_lifts": loads.rear_lifts(),
    });
    set(&mut result, "front_margin_kg", inputs.front_rating_kg.map(|rating| rating - loads.front));
    set(&mut result, "rear_margin_kg", inputs.rear_rating_kg.map(|rating| rating - loads.rear));
    set(&mut result, "total_margin_kg", inputs.total_rating_kg.map(|rating| rating - loads.total));
    if let (Some(x), Some(share)) = (inputs.ballast_x_mm, inputs.front_share_wanted) {
        let ballast = |of| loads.ballast(m(x), share, of).map_err(refused);
        set(&mut result, "ballast_for_total_share_kg", Some(ballast(ShareOf::Total)?));
        if let Some(bare) = inputs.bare_mass_kg {
            set(&mut result, "ballast_for_bare_share_kg", Some(ballast(ShareOf::Bare(bare))?));
        }
    }
    Ok(result)
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    #[test]
    fn what_is_not_asked_for_is_absent_and_what_cannot_be_had_is_null() {
        let mut inputs = json!({"wheelbase_mm": 1500, "bodies": [{"mass_kg": 0, "x_mm": 0}]});
        let result = compute(&inputs).expect("sound");
        assert_eq!((&result["front_share"], &result["x_cg_mm"]), (&Value::Null, &Value::Null));
        assert!(result.get("front_margin_kg").is_none() && result.get("ballast_for_total_share_kg").is_none());
        inputs = json!({"wheelbase_mm": 1500, "bodies": [{"mass_kg": 900, "x_mm": 100}], "ballast_x_mm": 200,
            "front_share_wanted": 0.2});
        let result = compute(&inputs).expect("sound");
        assert_eq!(result.get("ballast_for_total_share_kg"), Some(&Value::Null));
        assert!(result.get("ballast_for_bare_share_kg").is_none());
    }

    #[test]
    fn a_percentage_for_a_share_is_told() {
        let inputs = json!({"wheelbase_mm": 1500, "bodies": [{"mass_kg": 0, "x_mm": 0}], "ballast_x_mm": 200, "front_share_wanted": 20});
        assert_eq!(compute(&inputs).expect_err("beyond 1").path, "inputs.front_share_wanted");
    }
}
