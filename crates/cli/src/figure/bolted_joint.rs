//! `bolted-joint`: the bolt a joint needs, and the distances of its hole.

use fitup_catalogue::decode::Filled;
use fitup_catalogue::read_record;
use fitup_core::dimension::{
    BoltEnd, BoltedJoint, ENGAGEMENT, HoleDistance, InputError, PITCHES_PAST_NUT, StockBolt, bolted_joint,
    edge_distance, hole_spacing,
};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{m, mm};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required thread_d_mm: f64,
        required pitch_mm: f64,
        required plates_mm: Filled<f64>,
        optional washer_mm: f64,
        nullable nut_mm: Option<f64>,
        nullable tapped_depth_mm: Option<f64>,
        required lengths_mm: Vec<f64>,
        nullable thread_mm: Option<Vec<f64>>,
        nullable pitches_past_nut: Option<f64>,
        nullable engagement_ratio: Option<f64>,
        nullable hole_d_mm: Option<f64>,
        nullable edge_mm: Option<f64>,
        nullable spacing_mm: Option<f64>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("thread", "thread_d_mm"),
    ("pitch", "pitch_mm"),
    ("plate", "plates_mm"),
    ("washer", "washer_mm"),
    ("nut", "nut_mm"),
    ("tapped-depth", "tapped_depth_mm"),
    ("length", "lengths_mm"),
    ("thread-length", "thread_mm"),
    ("pitches-past-nut", "pitches_past_nut"),
    ("engagement", "engagement_ratio"),
    ("hole", "hole_d_mm"),
    ("edge", "edge_mm"),
    ("spacing", "spacing_mm"),
];

/// Grip, least length, the bolt for it and how it lies; the hole's distances in its diameters.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let refused = |error| CaseError::refused(error, KEYS);
    let plates: Vec<f64> = inputs.plates_mm.iter().map(|plate| m(*plate)).collect();
    let joint = BoltedJoint {
        thread: m(inputs.thread_d_mm),
        pitch: m(inputs.pitch_mm),
        plates: &plates,
        washer: m(inputs.washer_mm),
        end: end(inputs)?,
    };
    let found = bolted_joint(&joint, &stock(inputs)?).map_err(refused)?;
    let bolt = found.bolt;
    let shank = bolt.and_then(|bolt| bolt.shank);
    let distance = |of: fn(f64, f64) -> Result<HoleDistance, InputError>, to: Option<f64>| {
        inputs.hole_d_mm.zip(to).map(|(hole, to)| of(m(hole), m(to)).map_err(refused)).transpose()
    };
    let edge = distance(edge_distance, inputs.edge_mm)?;
    let spacing = distance(hole_spacing, inputs.spacing_mm)?;
    Ok(json!({
        "grip_mm": mm(found.grip),
        "least_length_mm": mm(found.least),
        "length_mm": mm(bolt.map(|bolt| bolt.length)),
        "thread_in_shear": shank.map(|shank| shank.thread_in_shear),
        "shank_too_long": shank.map(|shank| shank.too_long),
        "bottoms": bolt.and_then(|bolt| bolt.bottoms),
        "edge_ratio": edge.map(|edge| edge.ratio),
        "spacing_ratio": spacing.map(|spacing| spacing.ratio),
        "edge_ok": edge.map(|edge| edge.enough),
        "spacing_ok": spacing.map(|spacing| spacing.enough),
    }))
}

fn end(inputs: &Inputs) -> Result<BoltEnd, CaseError> {
    match (inputs.nut_mm, inputs.tapped_depth_mm) {
        (Some(nut), None) => {
            Ok(BoltEnd::Nut { height: m(nut), pitches_past: inputs.pitches_past_nut.unwrap_or(PITCHES_PAST_NUT) })
        }
        (None, Some(depth)) => {
            Ok(BoltEnd::Tapped { depth: m(depth), engagement: inputs.engagement_ratio.unwrap_or(ENGAGEMENT) })
        }
        (nut, _) => Err(CaseError::new(
            "inputs.nut_mm, tapped_depth_mm",
            if nut.is_some() { "are both given; leave one out" } else { "are both missing; give one of the two" },
        )),
    }
}

fn stock(inputs: &Inputs) -> Result<Vec<StockBolt>, CaseError> {
    let lengths = &inputs.lengths_mm;
    let thread = |i: usize| inputs.thread_mm.as_ref().map(|thread| m(thread[i]));
    match &inputs.thread_mm {
        Some(thread) if thread.len() != lengths.len() => Err(CaseError::new(
            "inputs.thread_mm",
            format!("has {} entries; give one beside each of the {} of lengths_mm", thread.len(), lengths.len()),
        )),
        _ => Ok(lengths
            .iter()
            .enumerate()
            .map(|(i, length)| StockBolt { length: m(*length), thread: thread(i) })
            .collect()),
    }
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn inputs() -> Value {
        json!({"thread_d_mm": 12, "pitch_mm": 1.75, "plates_mm": [10, 12], "washer_mm": 2.5, "nut_mm": 10.8,
            "lengths_mm": [50, 45], "thread_mm": [20, 15]})
    }

    #[test]
    fn a_shank_beyond_the_grip_is_told() {
        let result = compute(&inputs()).expect("sound");
        assert_eq!((&result["length_mm"], &result["shank_too_long"]), (&json!(45.0), &json!(true)));
        assert_eq!((&result["bottoms"], &result["edge_ok"]), (&Value::Null, &Value::Null));
    }

    #[test]
    fn neither_both_and_lists_of_different_lengths_are_refused() {
        let path = |key: &str, value: Value| {
            let mut inputs = inputs();
            inputs[key] = value;
            compute(&inputs).expect_err("must be refused").path
        };
        assert_eq!(path("nut_mm", Value::Null), "inputs.nut_mm, tapped_depth_mm");
        assert_eq!(path("tapped_depth_mm", json!(20)), "inputs.nut_mm, tapped_depth_mm");
        assert_eq!(path("thread_mm", json!([30])), "inputs.thread_mm");
        assert_eq!(path("plates_mm", json!([])), "inputs.plates_mm");
        assert_eq!(path("plates_mm", json!([10, 0])), "inputs.plates_mm");
    }
}
