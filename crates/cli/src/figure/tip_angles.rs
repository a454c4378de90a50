//! `tip-angles`: static tip angles.

use fitup_catalogue::{read_record, read_words};
use fitup_core::dimension::{FrontSupport, Stance, TipEdge, tip_angles};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{deg, m};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required rear_track_mm: f64,
        required wheelbase_mm: f64,
        required front: Front,
        required cg_x_mm: f64,
        required cg_y_mm: f64,
        required cg_z_mm: f64,
    }
}

read_record! {
    struct Front {
        required r#type: Kind,
        nullable track_mm: Option<f64>,
        nullable pivot_height_mm: Option<f64>,
    }
}

read_words! {
    enum Kind {
        Fixed "fixed",
        Pivot "pivot",
    }
}

const KEYS: &[(&str, &str)] = &[
    ("rear-track", "rear_track_mm"),
    ("wheelbase", "wheelbase_mm"),
    ("front-track", "front.track_mm"),
    ("pivot-height", "front.pivot_height_mm"),
    ("centre-x", "cg_x_mm"),
    ("centre-y", "cg_y_mm"),
    ("centre-z", "cg_z_mm"),
];

/// Angles of the four edges, slopes to the four sides, and whether the machine stands on level ground.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let given = |value: Option<f64>, key: &str, kind: &str| {
        value.ok_or_else(|| CaseError::new(format!("inputs.front.{key}"), format!("is missing; {kind} needs it")))
    };
    let front = match inputs.front.r#type {
        Kind::Fixed => FrontSupport::Fixed { track: m(given(inputs.front.track_mm, "track_mm", "a fixed axle")?) },
        Kind::Pivot => FrontSupport::Pivot {
            height: m(given(inputs.front.pivot_height_mm, "pivot_height_mm", "an axle on a pivot")?),
        },
    };
    let stance = Stance {
        rear_track: m(inputs.rear_track_mm),
        wheelbase: m(inputs.wheelbase_mm),
        front,
        centre: [m(inputs.cg_x_mm), m(inputs.cg_y_mm), m(inputs.cg_z_mm)],
    };
    let found = tip_angles(&stance).map_err(|error| CaseError::refused(error, KEYS))?;
    let mut result = json!({
        "stable_on_level": found.stable_on_level,
        "least_over_all_edges_deg": deg(found.least()),
    });
    for side in TipEdge::ALL {
        let name = name(side);
        let edge = found.edge(side);
        result[format!("{name}_edge_least_deg")] = deg(edge.least);
        result[format!("{name}_slope_on_own_edge_deg")] = deg(edge.own_slope);
        result[format!("{name}_rotation_about_edge_deg")] = deg(edge.rotation);
        result[format!("{name}_slope_tip_deg")] = deg(found.slope(side));
    }
    Ok(result)
}

const fn name(side: TipEdge) -> &'static str {
    match side {
        TipEdge::Rear => "rear",
        TipEdge::Left => "left",
        TipEdge::Right => "right",
        TipEdge::Front => "front",
    }
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    #[expect(clippy::needless_pass_by_value, reason = "cases are written in place")]
    fn case(front: Value, x: f64) -> Value {
        json!({"rear_track_mm": 1000, "wheelbase_mm": 1500, "front": front, "cg_x_mm": x, "cg_y_mm": 0,
            "cg_z_mm": 600})
    }

    #[test]
    fn a_machine_that_does_not_stand_has_null_slopes() {
        let result = compute(&case(json!({"type": "fixed", "track_mm": 900}), -50.0)).expect("sound");
        assert_eq!((&result["stable_on_level"], &result["left_slope_tip_deg"]), (&json!(false), &Value::Null));
        assert!(result["rear_edge_least_deg"].as_f64().expect("a number") < 0.0);
    }

    #[test]
    fn each_kind_of_axle_needs_its_own_number() {
        let error = compute(&case(json!({"type": "fixed"}), 600.0)).expect_err("no track");
        assert_eq!(error.path, "inputs.front.track_mm");
        let error = compute(&case(json!({"type": "pivot", "track_mm": 900}), 600.0)).expect_err("no height");
        assert_eq!(
            (error.path.as_str(), error.message.as_str()),
            ("inputs.front.pivot_height_mm", "is missing; an axle on a pivot needs it")
        );
    }
}
