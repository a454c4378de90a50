//! `ramp-loads`: what stands on each axle while a machine is driven up a loading ramp.

use fitup_catalogue::read_record;
use fitup_core::dimension::{LeastLoad, Ramp, Weight, Wheels, ramp_loads};
use fitup_core::plane::Point;
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::CaseError;
use super::ramp_roll::Direction;
use super::wire::{Item, deg, m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required machine: Machine,
        required profile: Profile,
        optional direction: Direction,
        required mass_kg: f64,
        required cg_x_mm: f64,
        required cg_z_mm: f64,
    }
}

read_record! {
    struct Machine {
        required rear_radius_mm: f64,
        required front_radius_mm: f64,
        required wheelbase_mm: f64,
        /// Plays no part; it may stand in the case so that one machine serves both figures.
        nullable items: Option<Vec<Item>>,
    }
}

read_record! {
    struct Profile {
        required ramp_deg: f64,
        required ramp_length_along_slope_mm: f64,
        nullable beaver_deg: Option<f64>,
        nullable beaver_length_along_slope_mm: Option<f64>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("mass", "mass_kg"),
    ("centre-x", "cg_x_mm"),
    ("centre-z", "cg_z_mm"),
    ("rear-radius", "machine.rear_radius_mm"),
    ("front-radius", "machine.front_radius_mm"),
    ("wheelbase", "machine.wheelbase_mm"),
    ("ramp-angle", "profile.ramp_deg"),
    ("ramp-length", "profile.ramp_length_along_slope_mm"),
    ("beaver-angle", "profile.beaver_deg"),
    ("beaver-length", "profile.beaver_length_along_slope_mm"),
];

/// The least load on each axle, where it occurs, and whether the machine tips.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let &Machine { rear_radius_mm, front_radius_mm, wheelbase_mm, .. } = &inputs.machine;
    let wheels = Wheels { rear: m(rear_radius_mm), front: m(front_radius_mm), wheelbase: m(wheelbase_mm) };
    let ramp = Ramp {
        angle: Angle::from_deg(inputs.profile.ramp_deg).si(),
        length: m(inputs.profile.ramp_length_along_slope_mm),
        beaver_angle: Angle::from_deg(inputs.profile.beaver_deg.unwrap_or(0.0)).si(),
        beaver_length: m(inputs.profile.beaver_length_along_slope_mm.unwrap_or(0.0)),
    };
    let weight = Weight { mass: inputs.mass_kg, centre: Point::new(m(inputs.cg_x_mm), m(inputs.cg_z_mm)) };
    let loads =
        ramp_loads(wheels, weight, &ramp, inputs.direction.into()).map_err(|error| CaseError::refused(error, KEYS))?;
    let mut result = json!({ "tips": loads.tips() });
    tell(&mut result, "front", &loads.front);
    tell(&mut result, "rear", &loads.rear);
    Ok(result)
}

fn tell(result: &mut Value, axle: &str, least: &LeastLoad) {
    result[format!("least_{axle}_share")] = json!(least.share);
    result[format!("least_{axle}_kg")] = json!(least.load);
    result[format!("least_{axle}_at_rear_axle_x_mm")] = mm(least.rear_axle);
    result[format!("least_{axle}_pitch_deg")] = deg(least.pitch);
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case() -> Value {
        json!({"machine": {"rear_radius_mm": 380, "front_radius_mm": 280, "wheelbase_mm": 1600},
            "profile": {"ramp_deg": 0, "ramp_length_along_slope_mm": 2000}, "mass_kg": 1200, "cg_x_mm": 640, "cg_z_mm": 700})
    }

    #[test]
    fn the_underside_may_be_missing_and_changes_nothing() {
        let bare = compute(&case()).expect("sound");
        assert!((bare["least_front_kg"].as_f64().expect("a number") - 480.0).abs() < 1e-9);
        let mut with = case();
        with["machine"]["items"] = json!([{"name": "low", "points_mm": [[-9000, -50]]}]);
        assert_eq!(compute(&with).expect("sound"), bare);
    }

    #[test]
    fn what_is_wrong_is_told_by_its_key() {
        let path = |key: &str, value: Value| {
            let mut case = case();
            case[key] = value;
            compute(&case).expect_err("must be refused").path
        };
        assert_eq!(path("mass_kg", json!(0)), "inputs.mass_kg");
        assert_eq!(path("cg_x_mm", json!(1e300)), "inputs.cg_x_mm");
        assert_eq!(path("direction", json!("up")), "inputs.direction");
    }
}
