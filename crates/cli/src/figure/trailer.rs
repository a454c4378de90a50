//! `trailer`: nose weight, axle load, and where on the deck the machine may stand.

use fitup_catalogue::{read_record, read_words};
use fitup_core::dimension::{
    Cargo, Heading, Stretch, TrailerBed, deck_overhang, nose_window, trailer_loads, wheels_on_deck, wheels_window,
};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{m, mm, set};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        required trailer_mass_kg: f64,
        required trailer_cg_x_mm: f64,
        required coupler_x_mm: f64,
        nullable tandem: Option<bool>,
        required machine_front_load_kg: f64,
        required machine_rear_load_kg: f64,
        required machine_wheelbase_mm: f64,
        required facing: Facing,
        required machine_rear_axle_x_mm: f64,
        nullable nose_share_min: Option<f64>,
        nullable nose_share_max: Option<f64>,
        nullable deck_rear_x_mm: Option<f64>,
        nullable deck_front_x_mm: Option<f64>,
        nullable machine_rear_end_x_mm: Option<f64>,
        nullable machine_front_end_x_mm: Option<f64>,
        nullable ratings: Ratings,
    }
}

read_words! {
    enum Facing {
        Forward "forward",
        Backward "backward",
    }
}

read_record! {
    #[derive(Default)]
    #[expect(clippy::struct_field_names, reason = "each key carries its unit")]
    struct Ratings {
        nullable axle_kg: Option<f64>,
        nullable nose_kg: Option<f64>,
        nullable total_kg: Option<f64>,
    }
}

const KEYS: &[(&str, &str)] = &[
    ("trailer-mass", "trailer_mass_kg"),
    ("trailer-centre", "trailer_cg_x_mm"),
    ("coupler", "coupler_x_mm"),
    ("front-load", "machine_front_load_kg"),
    ("rear-load", "machine_rear_load_kg"),
    ("wheelbase", "machine_wheelbase_mm"),
    ("place", "machine_rear_axle_x_mm"),
    ("least-share", "nose_share_min"),
    ("most-share", "nose_share_max"),
    ("deck", "deck_rear_x_mm, deck_front_x_mm"),
    ("body", "machine_rear_end_x_mm, machine_front_end_x_mm"),
];

/// Loads always; margins, windows and overhangs when what they need is given.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let refused = |error| CaseError::refused(error, KEYS);
    let bed =
        TrailerBed { mass: inputs.trailer_mass_kg, centre: m(inputs.trailer_cg_x_mm), coupler: m(inputs.coupler_x_mm) };
    let heading = match inputs.facing {
        Facing::Forward => Heading::Forward,
        Facing::Backward => Heading::Backward,
    };
    let wheelbase = m(inputs.machine_wheelbase_mm);
    let cargo = Cargo { front: inputs.machine_front_load_kg, rear: inputs.machine_rear_load_kg, wheelbase, heading };
    let at = m(inputs.machine_rear_axle_x_mm);
    let loads = trailer_loads(bed, cargo, at).map_err(refused)?;
    let mut result = json!({
        "total_kg": loads.total,
        "nose_kg": loads.nose,
        "axle_kg": loads.axle,
        "nose_share": loads.nose_share(),
    });
    if inputs.tandem == Some(true) {
        set(&mut result, "each_axle_kg", Some(loads.axle / 2.0));
    }
    let ratings = &inputs.ratings;
    set(&mut result, "axle_margin_kg", ratings.axle_kg.map(|rating| rating - loads.axle));
    set(&mut result, "nose_margin_kg", ratings.nose_kg.map(|rating| rating - loads.nose));
    set(&mut result, "total_margin_kg", ratings.total_kg.map(|rating| rating - loads.total));

    let window = match (inputs.nose_share_min, inputs.nose_share_max) {
        (Some(least), Some(most)) => Some(nose_window(bed, cargo, least, most).map_err(refused)?),
        _ => None,
    };
    if let Some(window) = window {
        stretch(&mut result, "window", window);
    }
    let deck = both(inputs.deck_rear_x_mm, inputs.deck_front_x_mm);
    if let Some(deck) = deck {
        let wheels = wheels_window(deck, wheelbase, heading).map_err(refused)?;
        stretch(&mut result, "wheels", Some(wheels));
        let on_deck = wheels_on_deck(deck, wheelbase, heading, at).map_err(refused)?;
        set(&mut result, "wheels_on_deck", Some(on_deck));
        if let Some(window) = window {
            stretch(&mut result, "joint", window.and_then(|window| window.and(wheels)));
        }
    }
    if let (Some(deck), Some(body)) = (deck, both(inputs.machine_rear_end_x_mm, inputs.machine_front_end_x_mm)) {
        let (rear, front) = deck_overhang(deck, body, heading, at).map_err(refused)?;
        set(&mut result, "rear_overhang_beyond_deck_mm", Some(mm(rear)));
        set(&mut result, "front_overhang_beyond_deck_mm", Some(mm(front)));
    }
    Ok(result)
}

fn both(rear: Option<f64>, front: Option<f64>) -> Option<Stretch> {
    rear.zip(front).map(|(rear, front)| Stretch { low: m(rear), high: m(front) })
}

fn stretch(result: &mut Value, name: &str, stretch: Option<Stretch>) {
    result[format!("{name}_lo_mm")] = mm(stretch.map(|stretch| stretch.low));
    result[format!("{name}_hi_mm")] = mm(stretch.map(|stretch| stretch.high));
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn case() -> Value {
        json!({"trailer_mass_kg": 450, "trailer_cg_x_mm": 350, "coupler_x_mm": 3000, "machine_front_load_kg": 500,
            "machine_rear_load_kg": 800, "machine_wheelbase_mm": 1500, "facing": "forward",
            "machine_rear_axle_x_mm": -600})
    }

    #[test]
    fn what_is_not_asked_for_is_absent() {
        let result = compute(&case()).expect("sound");
        let mut keys: Vec<&String> = result.as_object().expect("an object").keys().collect();
        keys.sort();
        assert_eq!(keys, ["axle_kg", "nose_kg", "nose_share", "total_kg"]);
    }

    #[test]
    fn windows_that_do_not_meet_have_a_null_joint_and_two_axles_half_the_load_each() {
        let mut inputs = case();
        inputs["nose_share_min"] = json!(0.1);
        inputs["nose_share_max"] = json!(0.15);
        inputs["deck_rear_x_mm"] = json!(-2500);
        inputs["deck_front_x_mm"] = json!(0);
        inputs["tandem"] = json!(true);
        let result = compute(&inputs).expect("sound");
        assert_eq!((&result["joint_lo_mm"], &result["joint_hi_mm"]), (&Value::Null, &Value::Null));
        assert_eq!(result["each_axle_kg"].as_f64(), result["axle_kg"].as_f64().map(|axle| axle / 2.0));
    }

    #[test]
    fn a_reversed_deck_names_both_its_ends() {
        let mut inputs = case();
        inputs["deck_rear_x_mm"] = json!(2000);
        inputs["deck_front_x_mm"] = json!(-1800);
        assert_eq!(compute(&inputs).expect_err("reversed").path, "inputs.deck_rear_x_mm, deck_front_x_mm");
    }
}
