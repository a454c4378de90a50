//! `ramp-roll`: clearance of a machine driven up a loading ramp.

use fitup_catalogue::{read_record, read_words};
use fitup_core::dimension::{Facing, Ramp, Rider, Wheels, ramp_gap, ramp_roll};
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{Item, deg, lines, m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required machine: Machine,
        required profile: Profile,
        optional direction: Direction,
    }
}

read_record! {
    /// The machine's side view as the ramp figures read it.
    pub struct Machine {
        required rear_radius_mm: f64,
        required front_radius_mm: f64,
        required wheelbase_mm: f64,
        /// The underside.
        required pub items: Vec<Item>,
    }
}

impl Machine {
    /// Its wheels.
    pub fn wheels(&self) -> Wheels {
        Wheels { rear: m(self.rear_radius_mm), front: m(self.front_radius_mm), wheelbase: m(self.wheelbase_mm) }
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

read_words! {
    /// Which end goes up first.
    #[derive(Default, Clone, Copy)]
    pub enum Direction {
        /// Front wheels first.
        #[default]
        Forward "forward",
        /// Rear wheels first.
        Backward "backward",
    }
}

impl From<Direction> for Facing {
    fn from(direction: Direction) -> Self {
        match direction {
            Direction::Forward => Self::Forward,
            Direction::Backward => Self::Backward,
        }
    }
}

const KEYS: &[(&str, &str)] = &[
    ("rear-radius", "machine.rear_radius_mm"),
    ("front-radius", "machine.front_radius_mm"),
    ("wheelbase", "machine.wheelbase_mm"),
    ("underside", "machine.items"),
    ("ramp-angle", "profile.ramp_deg"),
    ("ramp-length", "profile.ramp_length_along_slope_mm"),
    ("beaver-angle", "profile.beaver_deg"),
    ("beaver-length", "profile.beaver_length_along_slope_mm"),
];

/// Least clearances, where they occur, and the range of the pitch.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let lines = lines(&inputs.machine.items);
    let rider = Rider { wheels: inputs.machine.wheels(), lines: &lines };
    let ramp = Ramp {
        angle: Angle::from_deg(inputs.profile.ramp_deg).si(),
        length: m(inputs.profile.ramp_length_along_slope_mm),
        beaver_angle: Angle::from_deg(inputs.profile.beaver_deg.unwrap_or(0.0)).si(),
        beaver_length: m(inputs.profile.beaver_length_along_slope_mm.unwrap_or(0.0)),
    };
    let refused = |error| CaseError::refused(error, KEYS);
    let facing = inputs.direction.into();
    let roll = ramp_roll(&rider, &ramp, facing).map_err(refused)?;
    let gap = ramp_gap(&rider, &ramp, facing).map_err(refused)?;
    let nearest = roll.nearest;
    Ok(json!({
        "least_vertical_clearance_mm": mm(nearest.map(|nearest| nearest.vertical)),
        "least_euclidean_clearance_mm": mm(gap),
        "s_rear_axle_mm": mm(nearest.map(|nearest| nearest.rear_axle)),
        "underside_x_mm": mm(nearest.map(|nearest| nearest.point.x)),
        "underside_z_mm": mm(nearest.map(|nearest| nearest.point.y)),
        "underside_item": nearest.map(|nearest| &inputs.machine.items[nearest.line].name),
        "pitch_at_least_deg": deg(nearest.map(|nearest| nearest.pitch)),
        "pitch_min_deg": deg(roll.least_pitch),
        "pitch_max_deg": deg(roll.greatest_pitch),
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
        json!({"machine": {"rear_radius_mm": 380, "front_radius_mm": 280, "wheelbase_mm": 1500, "items": []},
            "profile": {"ramp_deg": 15, "ramp_length_along_slope_mm": 2500}})
    }

    #[test]
    fn without_an_underside_only_the_pitch_is_told() {
        let result = compute(&case()).expect("sound");
        assert_eq!(result["least_vertical_clearance_mm"], Value::Null);
        assert!((result["pitch_max_deg"].as_f64().expect("a number") - 15.0).abs() < 1e-9);
    }

    #[test]
    fn an_upright_ramp_and_an_unknown_direction_are_told() {
        let mut inputs = case();
        inputs["profile"]["ramp_deg"] = json!(90);
        let error = compute(&inputs).expect_err("upright");
        assert_eq!(error.path, "inputs.profile.ramp_deg");
        assert!(error.message.contains("85 deg"), "{}", error.message);
        inputs["direction"] = json!("up");
        assert_eq!(compute(&inputs).expect_err("unknown").path, "inputs.direction");
    }
}
