//! `hydraulics`: power, forces, speeds, oil velocity and cycle time, of what is given.

use fitup_catalogue::{read_record, read_words};
use fitup_core::dimension::{
    Cylinder, InputError, Stroke, Travel, cycle_time, hydraulic_power, line_velocity, shaft_power,
};
use fitup_core::quantity::{Flow, Length, Power, Pressure};
use serde_json::{Value, json};

use super::CaseError;
use super::wire::{m, set};

read_record! {
    /// What it is computed from.
    pub struct Inputs {
        nullable pressure_bar: Option<f64>,
        nullable flow_l_min: Option<f64>,
        nullable efficiency: Option<f64>,
        nullable bore_mm: Option<f64>,
        nullable rod_mm: Option<f64>,
        nullable line_id_mm: Option<f64>,
        nullable strokes: Option<Vec<WireStroke>>,
        nullable supply_l_min: Option<f64>,
        nullable reference_l_min: Option<f64>,
    }
}

read_record! {
    struct WireStroke {
        required bore_mm: f64,
        nullable rod_mm: Option<f64>,
        required stroke_mm: f64,
        required dir: Direction,
        nullable clip_l_min: Option<f64>,
        nullable count: Option<f64>,
    }
}

read_words! {
    #[derive(Clone, Copy)]
    enum Direction {
        Extend "extend",
        Retract "retract",
    }
}

const KEYS: &[(&str, &str)] = &[
    ("pressure", "pressure_bar"),
    ("flow", "flow_l_min"),
    ("bore", "bore_mm"),
    ("rod", "rod_mm"),
    ("line-bore", "line_id_mm"),
    ("supply", "supply_l_min"),
    ("reference", "reference_l_min"),
];

/// Each figure whose numbers are given.
pub fn compute(inputs: &Inputs) -> Result<Value, CaseError> {
    let refused = |error| CaseError::refused(error, KEYS);
    let pressure = inputs.pressure_bar.map(|bar| Pressure::from_bar(bar).si());
    let flow = inputs.flow_l_min.map(l_min);
    let mut result = json!({});
    if let (Some(pressure), Some(flow)) = (pressure, flow) {
        let power = hydraulic_power(pressure, flow).map_err(refused)?;
        let shaft = shaft_power(power, inputs.efficiency.unwrap_or(1.0)).map_err(refused)?;
        set(&mut result, "hydraulic_power_kw", Some(Power::from_si(power).kw()));
        set(&mut result, "shaft_power_kw", Some(Power::from_si(shaft).kw()));
    }
    if let Some(bore) = inputs.bore_mm {
        let cylinder = Cylinder::new(m(bore), m(inputs.rod_mm.unwrap_or(0.0))).map_err(refused)?;
        for (name, travel) in [("extend", Travel::Extend), ("retract", Travel::Retract)] {
            // What a rod takes away is not known while the rod is not.
            if travel == Travel::Retract && inputs.rod_mm.is_none() {
                continue;
            }
            if let Some(pressure) = pressure {
                let force = cylinder.force(travel, pressure).map_err(refused)?;
                set(&mut result, &format!("{name}_force_n"), Some(force));
            }
            if let Some(flow) = flow {
                let speed = cylinder.speed(travel, flow).map_err(refused)?;
                set(&mut result, &format!("{name}_speed_mm_s"), Some(Length::from_m(speed).mm()));
            }
        }
    }
    if let (Some(flow), Some(bore)) = (flow, inputs.line_id_mm) {
        set(&mut result, "line_velocity_m_s", Some(line_velocity(flow, m(bore)).map_err(refused)?));
    }
    if let Some(given) = &inputs.strokes {
        let supply = inputs.supply_l_min.ok_or_else(|| {
            CaseError::new("inputs.supply_l_min", "is missing; the strokes need a flow that drives them")
        })?;
        let strokes = strokes(given)?;
        let time = |flow, what| {
            cycle_time(&strokes, l_min(flow)).map_err(|error| match error.what {
                "supply" => refused(InputError { what, ..error }),
                _ => in_stroke(error, None),
            })
        };
        let own = time(supply, "supply")?;
        set(&mut result, "time_s", Some(own));
        if let Some(reference) = inputs.reference_l_min {
            let reference = time(reference, "reference")?;
            set(&mut result, "time_ref_s", Some(reference));
            set(&mut result, "ratio", Some(json!((reference > 0.0).then(|| own / reference))));
        }
    }
    Ok(result)
}

fn strokes(given: &[WireStroke]) -> Result<Vec<Stroke>, CaseError> {
    let stroke = |(at, stroke): (usize, &WireStroke)| {
        let travel = match stroke.dir {
            Direction::Extend => Travel::Extend,
            Direction::Retract => Travel::Retract,
        };
        let rod = match (stroke.rod_mm, travel) {
            (Some(rod), _) => rod,
            (None, Travel::Extend) => 0.0,
            (None, Travel::Retract) => {
                let path = format!("inputs.strokes[{at}].rod_mm");
                return Err(CaseError::new(path, "is missing; a retracting stroke needs it"));
            }
        };
        let cylinder = Cylinder::new(m(stroke.bore_mm), m(rod)).map_err(|error| in_stroke(error, Some(at)))?;
        let stroke = Stroke {
            cylinder,
            length: m(stroke.stroke_mm),
            travel,
            most_flow: stroke.clip_l_min.map(l_min),
            count: stroke.count.unwrap_or(1.0),
        };
        // Driven alone, so that a fault is told with the stroke's place; the flow is any sound one.
        cycle_time(&[stroke], 1.0).map_err(|error| in_stroke(error, Some(at)))?;
        Ok(stroke)
    };
    given.iter().enumerate().map(stroke).collect()
}

fn in_stroke(error: InputError, at: Option<usize>) -> CaseError {
    let key = match error.what {
        "bore" => "bore_mm",
        "rod" => "rod_mm",
        "stroke" => "stroke_mm",
        "most-flow" => "clip_l_min",
        other => other,
    };
    let path = at.map_or_else(|| "strokes".to_owned(), |at| format!("strokes[{at}]"));
    CaseError::refused(error, &[(error.what, &format!("{path}.{key}"))])
}

fn l_min(flow: f64) -> f64 {
    Flow::from_l_min(flow).si()
}

#[cfg(test)]
mod tests {
    use super::super::case::computed;
    use super::*;

    fn compute(inputs: &Value) -> Result<Value, CaseError> {
        computed(super::compute, inputs)
    }

    fn keys(inputs: &Value) -> Vec<String> {
        compute(inputs).expect("sound").as_object().expect("an object").keys().cloned().collect()
    }

    #[test]
    fn only_what_the_given_numbers_allow_is_told() {
        assert_eq!(keys(&json!({})), Vec::<String>::new());
        assert_eq!(keys(&json!({"pressure_bar": 175, "bore_mm": 63})), ["extend_force_n"]);
        assert_eq!(
            keys(&json!({"flow_l_min": 20, "bore_mm": 63, "rod_mm": 35})),
            ["extend_speed_mm_s", "retract_speed_mm_s"]
        );
        assert_eq!(keys(&json!({"strokes": [], "supply_l_min": 20})), ["time_s"]);
    }

    #[test]
    fn a_cycle_of_nothing_has_no_ratio() {
        let result = compute(&json!({"strokes": [], "supply_l_min": 20, "reference_l_min": 30})).expect("sound");
        assert_eq!((&result["time_s"], result.get("ratio")), (&json!(0.0), Some(&Value::Null)));
    }

    #[test]
    fn a_fault_in_a_stroke_is_told_with_its_place() {
        let stroke = json!({"bore_mm": 63, "rod_mm": 35, "stroke_mm": 400, "dir": "extend"});
        let mut inputs = json!({"strokes": [stroke, stroke], "supply_l_min": 20, "reference_l_min": 0});
        assert_eq!(compute(&inputs).expect_err("no flow").path, "inputs.reference_l_min");
        inputs["strokes"][1]["clip_l_min"] = json!(0);
        assert_eq!(compute(&inputs).expect_err("shut").path, "inputs.strokes[1].clip_l_min");
        inputs["strokes"][1]["rod_mm"] = json!(63);
        assert_eq!(compute(&inputs).expect_err("no ring").path, "inputs.strokes[1].bore_mm");
        inputs["strokes"][1] = json!({"bore_mm": 63, "stroke_mm": 400, "dir": "retract"});
        assert_eq!(compute(&inputs).expect_err("no rod").path, "inputs.strokes[1].rod_mm");
    }
}
