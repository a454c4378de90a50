//! `shortest-ramp`: shortest ramp that the machine clears by a wanted margin.

use fitup_catalogue::read_record;
use fitup_core::dimension::{LoadingJob, Rider, shortest_ramp};
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::CaseError;
use super::ramp_roll::{Direction, Machine};
use super::wire::{deg, lines, m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required machine: Machine,
        required deck_height_mm: f64,
        required required_vertical_clearance_mm: f64,
        optional direction: Direction,
        nullable beaver_deg: Option<f64>,
        nullable beaver_length_along_slope_mm: Option<f64>,
        nullable longest_considered_mm: Option<f64>,
    }
}

/// Longest ramp considered where none is stated, millimetres: longer than any that is carried. Common practice,
/// no source.
const LONGEST_MM: f64 = 30_000.0;

const KEYS: &[(&str, &str)] = &[
    ("rear-radius", "machine.rear_radius_mm"),
    ("front-radius", "machine.front_radius_mm"),
    ("wheelbase", "machine.wheelbase_mm"),
    ("underside", "machine.items"),
    ("deck-height", "deck_height_mm"),
    ("clearance", "required_vertical_clearance_mm"),
    ("beaver-angle", "beaver_deg"),
    ("beaver-length", "beaver_length_along_slope_mm"),
    ("longest", "longest_considered_mm"),
];

/// Length and angle of the shortest ramp, or null.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let lines = lines(&inputs.machine.items);
    let rider = Rider { wheels: inputs.machine.wheels(), lines: &lines };
    let job = LoadingJob {
        deck_height: m(inputs.deck_height_mm),
        clearance: m(inputs.required_vertical_clearance_mm),
        beaver_angle: Angle::from_deg(inputs.beaver_deg.unwrap_or(0.0)).si(),
        beaver_length: m(inputs.beaver_length_along_slope_mm.unwrap_or(0.0)),
        longest: m(inputs.longest_considered_mm.unwrap_or(LONGEST_MM)),
        facing: inputs.direction.into(),
    };
    let found = shortest_ramp(&rider, &job).map_err(|error| CaseError::refused(error, KEYS))?;
    Ok(json!({
        "shortest_ramp_length_along_slope_mm": mm(found.map(|found| found.length)),
        "ramp_deg": deg(found.map(|found| found.angle)),
    }))
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case(margin: f64) -> Value {
        json!({"machine": {"rear_radius_mm": 380, "front_radius_mm": 280, "wheelbase_mm": 1500,
            "items": [{"name": "belly", "points_mm": [[300, 260], [1250, 260]]}]},
            "deck_height_mm": 600, "required_vertical_clearance_mm": margin, "direction": "forward"})
    }

    #[test]
    fn more_than_the_level_clearance_is_null() {
        let none = json!({"shortest_ramp_length_along_slope_mm": null, "ramp_deg": null});
        assert_eq!(compute(&case(261.0)).expect("sound"), none);
    }

    #[test]
    fn a_deck_below_the_tail_is_told() {
        let mut inputs = case(50.0);
        inputs["beaver_deg"] = json!(30);
        inputs["beaver_length_along_slope_mm"] = json!(1300);
        let error = compute(&inputs).expect_err("the tail rises higher than the deck");
        assert_eq!(error.path, "inputs.deck_height_mm");
        assert!(error.message.contains("650 mm"), "{}", error.message);
    }
}
