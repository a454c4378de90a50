//! `swing`: swing-out, swept path and corridor.

use fitup_catalogue::read_record;
use fitup_core::dimension::{Block, swing};
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required turn_radius_rear_axle_mm: f64,
        required rear_overhang_mm: f64,
        required front_extent_mm: f64,
        required half_width_mm: f64,
        nullable second_box: Option<SecondBox>,
        nullable turn_deg: Option<f64>,
    }
}

read_record! {
    #[expect(clippy::struct_field_names, reason = "each key carries its unit")]
    struct SecondBox {
        required x0_mm: f64,
        required x1_mm: f64,
        required half_width_mm: f64,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("turn-radius", "turn_radius_rear_axle_mm"),
    ("turn", "turn_deg"),
    ("rear-overhang", "rear_overhang_mm"),
    ("front-extent", "front_extent_mm"),
    ("half-width", "half_width_mm"),
    ("second-rear", "second_box.x0_mm"),
    ("second-front", "second_box.x1_mm"),
    ("second-half-width", "second_box.half_width_mm"),
];

/// Radii, swing-out and the least corridor.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let body = Block {
        rear: -m(inputs.rear_overhang_mm),
        front: m(inputs.front_extent_mm),
        half_width: m(inputs.half_width_mm),
    };
    let second = inputs.second_box.as_ref().map(|block| Block {
        rear: m(block.x0_mm),
        front: m(block.x1_mm),
        half_width: m(block.half_width_mm),
    });
    let heading = inputs.turn_deg.map(|turn| Angle::from_deg(turn).si());
    let swept = swing(m(inputs.turn_radius_rear_axle_mm), heading, body, second)
        .map_err(|error| CaseError::refused(error, KEYS))?;
    Ok(json!({
        "outer_radius_mm": mm(swept.outer_radius),
        "inner_radius_mm": mm(swept.inner_radius),
        "swept_width_mm": mm(swept.swept_width()),
        "rear_outer_corner_radius_mm": mm(swept.rear_corner_radius),
        "front_outer_corner_radius_mm": mm(swept.front_corner_radius),
        "swing_out_mm": mm(swept.swing_out),
        "corridor_width_mm": mm(swept.corridor.map(|corridor| corridor.width())),
        "entry_extent_mm": mm(swept.corridor.map(|corridor| corridor.entry_extent)),
        "exit_extent_mm": mm(swept.corridor.map(|corridor| corridor.exit_extent)),
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
    fn a_turn_under_the_machine_has_no_corridor_and_a_reversed_box_is_told() {
        let mut inputs = json!({"turn_radius_rear_axle_mm": 300, "rear_overhang_mm": 1200, "front_extent_mm": 2000,
            "half_width_mm": 600, "second_box": null, "turn_deg": null});
        let result = compute(&inputs).expect("sound");
        assert_eq!((&result["corridor_width_mm"], &result["inner_radius_mm"]), (&Value::Null, &json!(0.0)));
        inputs["second_box"] = json!({"x0_mm": -300, "x1_mm": -1600, "half_width_mm": 350});
        let error = compute(&inputs).expect_err("reversed");
        assert_eq!(error.path, "inputs.second_box.x0_mm");
        assert!(error.message.contains("wrong order"));
    }
}
