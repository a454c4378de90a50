//! `arm`: what a digging arm reaches.

use fitup_catalogue::read_record;
use fitup_core::dimension::{DiggingArm, Swivel, digging};
use fitup_core::plane::Point;
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required boom_foot_u_mm: f64,
        required boom_foot_z_mm: f64,
        required boom_mm: f64,
        required dipper_mm: f64,
        required bucket_tip_mm: f64,
        required boom_elevation_deg: [f64; 2],
        required dipper_relative_deg: [f64; 2],
        required bucket_relative_deg: [f64; 2],
        nullable heights_mm: Vec<f64>,
        nullable flat_cut_length_mm: Option<f64>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("boom-foot", "boom_foot_u_mm, boom_foot_z_mm"),
    ("boom", "boom_mm"),
    ("dipper", "dipper_mm"),
    ("bucket", "bucket_tip_mm"),
    ("boom-elevation", "boom_elevation_deg"),
    ("dipper-relative", "dipper_relative_deg"),
    ("bucket-relative", "bucket_relative_deg"),
    ("flat-length", "flat_cut_length_mm"),
];

/// Depths, height and reaches of the tip.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let swivel = |[least, greatest]: [f64; 2]| Swivel {
        least: Angle::from_deg(least).si(),
        greatest: Angle::from_deg(greatest).si(),
    };
    let arm = DiggingArm {
        foot: Point::new(m(inputs.boom_foot_u_mm), m(inputs.boom_foot_z_mm)),
        boom: m(inputs.boom_mm),
        dipper: m(inputs.dipper_mm),
        bucket: m(inputs.bucket_tip_mm),
        boom_elevation: swivel(inputs.boom_elevation_deg),
        dipper_relative: swivel(inputs.dipper_relative_deg),
        bucket_relative: swivel(inputs.bucket_relative_deg),
    };
    let found = digging(&arm, inputs.flat_cut_length_mm.map(m)).map_err(|error| CaseError::refused(error, KEYS))?;
    Ok(json!({
        "max_depth_mm": mm(found.depth),
        "max_height_mm": mm(found.height),
        "reach_at_ground_mm": mm(found.reach_at_ground),
        "reach_at_height_mm": inputs.heights_mm.iter().map(|&height| mm(found.reach_at(m(height)))).collect::<Vec<_>>(),
        "flat_cut_depth_mm": mm(found.flat_depth),
    }))
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case() -> Value {
        json!({"boom_foot_u_mm": 150, "boom_foot_z_mm": 500, "boom_mm": 1200, "dipper_mm": 900, "bucket_tip_mm": 500,
            "boom_elevation_deg": [-50, 70], "dipper_relative_deg": [-150, -25], "bucket_relative_deg": [-120, 40],
            "heights_mm": [500, 9000]})
    }

    #[test]
    fn a_height_out_of_reach_and_a_cut_not_asked_for_are_null() {
        let result = compute(&case()).expect("sound");
        assert_eq!((&result["reach_at_height_mm"][1], &result["flat_cut_depth_mm"]), (&Value::Null, &Value::Null));
    }

    #[test]
    fn reversed_limits_and_three_of_them_are_told() {
        let mut inputs = case();
        inputs["boom_elevation_deg"] = json!([70, -50]);
        assert!(compute(&inputs).expect_err("reversed").message.contains("wrong order"));
        inputs["boom_elevation_deg"] = json!([-50, 70, 80]);
        assert_eq!(compute(&inputs).expect_err("three").path, "inputs.boom_elevation_deg");
    }
}
