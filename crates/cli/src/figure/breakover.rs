//! `breakover`: breakover angle.

use fitup_catalogue::read_record;
use fitup_core::dimension::{Wheels, breakover};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{Item, deg, lines, m, tell_point};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required rear_radius_mm: f64,
        required front_radius_mm: f64,
        required wheelbase_mm: f64,
        required items: Vec<Item>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("rear-radius", "rear_radius_mm"),
    ("front-radius", "front_radius_mm"),
    ("wheelbase", "wheelbase_mm"),
    ("underside", "items"),
];

/// The angle with its two parts, and the point that governs it.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let wheels =
        Wheels { rear: m(inputs.rear_radius_mm), front: m(inputs.front_radius_mm), wheelbase: m(inputs.wheelbase_mm) };
    let found = breakover(wheels, &lines(&inputs.items)).map_err(|error| CaseError::refused(error, KEYS))?;
    let mut result = json!({
        "angle_deg": deg(found.map(|found| found.angle)),
        "rear_part_deg": deg(found.map(|found| found.rear_part)),
        "front_part_deg": deg(found.map(|found| found.front_part)),
    });
    tell_point(&mut result, found.map(|found| (found.point, found.line)), &inputs.items);
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
    fn nothing_between_the_tyres_is_null_and_a_bad_number_is_told() {
        let mut inputs = json!({"rear_radius_mm": 380, "front_radius_mm": 280, "wheelbase_mm": 1500, "items": []});
        assert_eq!(compute(&inputs).expect("sound")["angle_deg"], Value::Null);
        inputs["wheelbase_mm"] = json!(-1500);
        assert_eq!(compute(&inputs).expect_err("negative").path, "inputs.wheelbase_mm");
    }
}
