//! `tipping`: tipping load while digging, rated load, and the push that lifts the machine.

use fitup_catalogue::decode::Filled;
use fitup_catalogue::read_record;
use fitup_core::dimension::{DigStand, Governs, LiftCylinder, PointMass, cylinder_lift, dig_loads};
use fitup_core::quantity::Length;
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{Body, bodies, m};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required bodies: Filled<Body>,
        required tipping_line_x_mm: f64,
        required load_x_mm: f64,
        required wheelbase_mm: f64,
        nullable hydraulic_load_kg: Option<f64>,
        nullable hydraulic: Option<Hydraulic>,
    }
}

read_record! {
    struct Hydraulic {
        required force_n: f64,
        required moment_arm_mm: f64,
        required load_dist_mm: f64,
        optional arm_masses: Vec<ArmMass>,
    }
}

read_record! {
    struct ArmMass {
        required mass_kg: f64,
        required dist_mm: f64,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("mass", "bodies"),
    ("mass-x", "bodies"),
    ("tipping-line", "tipping_line_x_mm"),
    ("load-x", "load_x_mm"),
    ("wheelbase", "wheelbase_mm"),
    ("hydraulic", "hydraulic_load_kg"),
    ("force", "hydraulic.force_n"),
    ("lever", "hydraulic.moment_arm_mm"),
    ("load-distance", "hydraulic.load_dist_mm"),
    ("arm-mass", "hydraulic.arm_masses"),
    ("arm-distance", "hydraulic.arm_masses"),
];

/// Loads where the machine stands; the hydraulic one as given, or from a cylinder.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let refused = |error| CaseError::refused(error, KEYS);
    let hydraulic = match (inputs.hydraulic_load_kg, &inputs.hydraulic) {
        (Some(_), Some(_)) => {
            return Err(CaseError::new("inputs.hydraulic", "stands beside hydraulic_load_kg; give one of the two"));
        }
        (load, None) => load,
        (None, Some(given)) => Some(lift(given).map_err(refused)?),
    };
    let stand =
        DigStand { line: m(inputs.tipping_line_x_mm), load: m(inputs.load_x_mm), wheelbase: m(inputs.wheelbase_mm) };
    let found = dig_loads(stand, &bodies(&inputs.bodies), hydraulic).map_err(refused)?;
    let rated = found.rated();
    Ok(json!({
        "stabilising_moment_kg_mm": Length::from_m(found.stabilising_moment).mm(),
        "front_load_unloaded_kg": found.front_unloaded,
        "tipped_without_load": found.tipped_without_load(),
        "tipping_load_kg": found.tipping,
        "hydraulic_load_kg": found.hydraulic,
        "rated_kg": rated.map(|(load, _)| load),
        "governed_by": rated.map(|(_, governs)| match governs {
            Governs::Tipping => "tipping",
            Governs::Hydraulic => "hydraulic",
        }),
        "down_push_lifting_line_kg": found.lifting_push,
    }))
}

fn lift(given: &Hydraulic) -> Result<f64, fitup_core::dimension::InputError> {
    let arm: Vec<PointMass> =
        given.arm_masses.iter().map(|part| PointMass { mass: part.mass_kg, x: m(part.dist_mm) }).collect();
    let cylinder =
        LiftCylinder { force: given.force_n, lever: m(given.moment_arm_mm), load_distance: m(given.load_dist_mm) };
    cylinder_lift(cylinder, &arm)
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case() -> Value {
        json!({"bodies": [{"mass_kg": 1000, "x_mm": 600}], "tipping_line_x_mm": -900, "load_x_mm": -3000,
            "wheelbase_mm": 1500})
    }

    #[test]
    fn without_hydraulic_data_tipping_governs_and_without_either_nothing_is_rated() {
        let mut inputs = case();
        let result = compute(&inputs).expect("sound");
        assert_eq!((&result["hydraulic_load_kg"], &result["governed_by"]), (&Value::Null, &json!("tipping")));
        inputs["load_x_mm"] = json!(-900);
        let result = compute(&inputs).expect("sound");
        assert_eq!((&result["tipping_load_kg"], &result["rated_kg"]), (&Value::Null, &Value::Null));
        assert_eq!(result["governed_by"], Value::Null);
    }

    #[test]
    fn two_hydraulic_loads_and_a_line_ahead_of_the_axle_are_told() {
        let mut inputs = case();
        inputs["hydraulic_load_kg"] = json!(400);
        inputs["hydraulic"] = json!({"force_n": 1, "moment_arm_mm": 1, "load_dist_mm": 1});
        assert!(compute(&inputs).expect_err("both").message.contains("give one of the two"));
        let mut inputs = case();
        inputs["tipping_line_x_mm"] = json!(10);
        assert_eq!(compute(&inputs).expect_err("ahead").path, "inputs.tipping_line_x_mm");
    }
}
