//! `closure`: what is left over when a frame is brought to both anchors.

use fitup_catalogue::read_record;
use fitup_core::fit::mating::closure::{Allowances, Anchors, closure};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{deg, m, mm};

read_record! {
    /// What it is computed from.
    #[expect(clippy::struct_field_names, reason = "each key carries its unit")]
    pub struct Inputs {
        required frame_axle_xz_mm: [f64; 2],
        required frame_front_xz_mm: [f64; 2],
        required machine_axle_xz_mm: [f64; 2],
        required machine_front_xz_mm: [f64; 2],
        required allowance_axle_mm: f64,
        required allowance_front_mm: f64,
        optional front_slot_len_x_mm: f64,
    }
}

/// The residual and the margins, with the frame free to turn and not.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let point = |[x, z]: [f64; 2]| [m(x), m(z)];
    let frame = Anchors { axle: point(inputs.frame_axle_xz_mm), front: point(inputs.frame_front_xz_mm) };
    let machine = Anchors { axle: point(inputs.machine_axle_xz_mm), front: point(inputs.machine_front_xz_mm) };
    let allowances = Allowances {
        axle: m(inputs.allowance_axle_mm),
        front: m(inputs.allowance_front_mm),
        front_slot: m(inputs.front_slot_len_x_mm),
    };
    if inputs.front_slot_len_x_mm < 0.0 {
        return Err(CaseError::new("inputs.front_slot_len_x_mm", "must not be negative; 0 is a round hole"));
    }
    let closed = closure(&frame, &machine, allowances)
        .ok_or_else(|| CaseError::new("inputs", "holds a number that is far too large for a length in millimetres"))?;
    let turning = closed.turning;
    Ok(json!({
        "length_residual_mm": mm(turning.map(|turning| turning.span_residual)),
        "margin_free_rotation_mm": mm(turning.map(|turning| turning.margin)),
        "frame_rotation_deg": deg(turning.map(|turning| turning.turn)),
        "residual_x_mm": mm(closed.residual[0]),
        "residual_z_mm": mm(closed.residual[1]),
        "residual_norm_mm": mm(closed.residual_length),
        "margin_no_rotation_mm": mm(closed.margin_level),
        "margin_pinned_axle_free_rotation_mm": mm(turning.map(|turning| turning.margin_pinned)),
        "margin_pinned_axle_no_rotation_mm": mm(closed.margin_level_pinned),
    }))
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn inputs() -> Value {
        json!({"frame_axle_xz_mm": [0, 0], "frame_front_xz_mm": [1203, 4], "machine_axle_xz_mm": [0, 0],
            "machine_front_xz_mm": [1200, 0], "allowance_axle_mm": 1, "allowance_front_mm": 2})
    }

    #[test]
    fn a_level_frame_is_five_off() {
        let result = compute(&inputs()).expect("sound");
        // 3 forward and 4 up are 5 apart; the anchors allow 1 and 2: (1 + 2 - 5) / 2.
        assert!((result["residual_norm_mm"].as_f64().unwrap() - 5.0).abs() < 1e-9);
        assert!((result["margin_no_rotation_mm"].as_f64().unwrap() + 1.0).abs() < 1e-9);
        assert!((result["margin_pinned_axle_no_rotation_mm"].as_f64().unwrap() + 3.0).abs() < 1e-9);
        assert!(result["frame_rotation_deg"].as_f64().unwrap() < 0.0);
    }

    #[test]
    fn with_a_slot_nothing_is_said_of_turning() {
        let mut inputs = inputs();
        inputs["front_slot_len_x_mm"] = json!(6);
        let result = compute(&inputs).expect("sound");
        for key in ["length_residual_mm", "margin_free_rotation_mm", "frame_rotation_deg"] {
            assert_eq!(result[key], Value::Null, "{key}");
        }
        assert_eq!(result["margin_pinned_axle_free_rotation_mm"], Value::Null);
        assert!((result["margin_no_rotation_mm"].as_f64().unwrap() + 0.5).abs() < 1e-9);
    }

    #[test]
    fn a_negative_slot_and_a_length_beyond_numbers_are_told() {
        let mut wrong = inputs();
        wrong["front_slot_len_x_mm"] = json!(-1);
        assert_eq!(compute(&wrong).expect_err("negative").path, "inputs.front_slot_len_x_mm");
        let mut huge = inputs();
        huge["frame_front_xz_mm"] = json!([1e300, 0]);
        assert_eq!(compute(&huge).expect_err("too large").path, "inputs.frame_front_xz_mm[0]");
    }
}
