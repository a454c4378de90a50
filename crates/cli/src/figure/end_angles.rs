//! `end-angles`: departure or approach angle.

use fitup_catalogue::{read_record, read_words};
use fitup_core::dimension::{EndWheel, approach, departure};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{Item, deg, lines, m, tell_point};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required end: End,
        required axle_x_mm: f64,
        required static_loaded_radius_mm: f64,
        required items: Vec<Item>,
    }
}

read_words! {
    enum End {
        Rear "rear",
        Front "front",
    }
}

const KEYS: &[(&str, &str)] = &[("axle", "axle_x_mm"), ("radius", "static_loaded_radius_mm"), ("underside", "items")];

/// The angle of the end asked for, and the point that governs it.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let wheel = EndWheel { axle: m(inputs.axle_x_mm), radius: m(inputs.static_loaded_radius_mm) };
    let lines = lines(&inputs.items);
    let found = match inputs.end {
        End::Rear => departure(wheel, &lines),
        End::Front => approach(wheel, &lines),
    };
    let found = found.map_err(|error| CaseError::refused(error, KEYS))?;
    let mut result = json!({
        "angle_deg": deg(found.map(|found| found.angle)),
        "strict_angle_deg": deg(found.and_then(|found| found.strict)),
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
    fn nothing_that_limits_is_null_throughout() {
        let inputs = json!({"end": "front", "axle_x_mm": 1500, "static_loaded_radius_mm": 300, "items": [
            {"name": "rear", "points_mm": [[-500, 100]]}]});
        assert_eq!(
            compute(&inputs).expect("sound"),
            json!({"angle_deg": null, "strict_angle_deg": null, "point_x_mm": null, "point_z_mm": null, "item": null})
        );
    }

    #[test]
    fn a_wrong_end_or_radius_is_told() {
        let mut inputs = json!({"end": "left", "axle_x_mm": 0, "static_loaded_radius_mm": 300, "items": []});
        assert!(compute(&inputs).expect_err("no such end").message.contains("Allowed here: rear, front"));
        inputs["end"] = json!("rear");
        inputs["static_loaded_radius_mm"] = json!(0);
        let error = compute(&inputs).expect_err("no radius");
        assert_eq!(
            (error.path.as_str(), error.message.as_str()),
            ("inputs.static_loaded_radius_mm", "must be above zero")
        );
    }
}
