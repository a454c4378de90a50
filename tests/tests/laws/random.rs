//! Whole catalogues by chance: the demonstration catalogue with numbers changed, data left out, ports moved and exchanged; and
//! builds of them. They go through the reader like any other file.

use serde_json::{Value, json};

use super::chance::Chance;
use super::tree::{TABLES, demo, desk};

/// Fields whose numbers are changed, wherever they stand below a row.
const CHANGED: [&str; 48] = [
    "mass",
    "wheelbase",
    "track",
    "tyre_width",
    "static_loaded_radius",
    "overall_radius",
    "rated",
    "tyre_rated",
    "bare_load",
    "turning_radius",
    "height_up",
    "cab_rear",
    "index_x",
    "flow",
    "relief",
    "flow_min",
    "flow_max",
    "pressure_min",
    "pressure_max",
    "power",
    "power_least",
    "power_most",
    "transport_width",
    "swivel_radius",
    "least_room",
    "greatest_reach",
    "lift",
    "lift_610",
    "diameter",
    "spread",
    "drop",
    "latch",
    "width",
    "height",
    "u",
    "v",
    "travel",
    "plate",
    "deck_length",
    "deck_width",
    "deck_height",
    "rated_total",
    "rated_axle",
    "rated_nose",
    "gate_width",
    "gate_height",
    "path_width",
    "greatest_axle_load",
];

/// Fields that are left out, wherever they stand below a row. Where one is required, the catalogue is not used.
const LEFT_OUT: [&str; 36] = [
    "mass",
    "centre_of_gravity",
    "wheelbase",
    "track",
    "tyre_width",
    "static_loaded_radius",
    "overall_radius",
    "rated",
    "tyre_rated",
    "bare_load",
    "roll_over_bar",
    "operator_seat",
    "flow",
    "relief",
    "turning_radius",
    "spread",
    "drop",
    "latch",
    "console",
    "transport_width",
    "index_point",
    "swivel_radius",
    "least_room",
    "greatest_reach",
    "parts",
    "shapes",
    "underside",
    "rated_nose",
    "pressure_max",
    "flow_min",
    "power_beyond",
    "lift_610",
    "rotation",
    "stabilisers",
    "gate_height",
    "pose",
];

/// Every object of a row that has one of these fields, with the field.
fn fields(row: &Value, path: &str, names: &[&str], all: &mut Vec<(String, String)>) {
    match row {
        Value::Object(of) => {
            for (key, value) in of {
                if names.contains(&key.as_str()) {
                    all.push((path.to_owned(), key.clone()));
                }
                fields(value, &format!("{path}/{key}"), names, all);
            }
        }
        Value::Array(values) => {
            for (at, value) in values.iter().enumerate() {
                fields(value, &format!("{path}/{at}"), names, all);
            }
        }
        _ => {}
    }
}

fn one_of<'a>(
    chance: &Chance,
    row: &'a mut Value,
    names: &[&str],
) -> Option<(&'a mut serde_json::Map<String, Value>, String)> {
    let mut all = Vec::new();
    fields(row, "", names, &mut all);
    if all.is_empty() {
        return None;
    }
    let (path, key) = chance.any(&all);
    Some((row.pointer_mut(&path)?.as_object_mut()?, key))
}

/// A catalogue by chance that the reader takes; `None` where chance made one that it refuses.
pub fn catalogue(seed: u64) -> Option<Value> {
    let chance = Chance::new(seed);
    let mut all = demo();
    let every_port: Vec<Value> = ["machines", "frames", "implements"]
        .iter()
        .flat_map(|table| all[*table].as_array().cloned().unwrap_or_default())
        .flat_map(|row| row["ports"].as_array().cloned().unwrap_or_default())
        .collect();
    // By a chance of its own, so that the other tables are drawn as they are without it.
    let of_equipment = Chance::new(seed ^ 0x5eed);
    for table in TABLES {
        let chance = if table == "equipment" { &of_equipment } else { &chance };
        for row in all[table].as_array_mut().expect("a table") {
            // What nothing has to keep clear of is only drawn.
            if let Some(shapes) = row.get_mut("shapes").and_then(Value::as_array_mut) {
                shapes.retain(|shape| shape["clearance"] != json!(false) || shape["view"] != json!("side"));
            }
            for _ in 0..chance.below(4) {
                change(chance, row, &every_port);
            }
        }
    }
    match chance.below(3) {
        0 => drop(all.as_object_mut()?.remove("guide")),
        1 => all["guide"]["sets"].as_array_mut()?.retain(|_| chance.once_in(2)),
        _ => {}
    }
    desk(&all).map(|_| all)
}

fn change(chance: &Chance, row: &mut Value, every_port: &[Value]) {
    match chance.below(8) {
        0 => {
            if let Some((of, key)) = one_of(chance, row, &LEFT_OUT) {
                of.remove(&key);
            }
        }
        1 | 2 => {
            let Some(ports) = row.get_mut("ports").and_then(Value::as_array_mut) else { return };
            let at = chance.below(ports.len());
            let Some(place) = ports.get_mut(at).and_then(|port| port.pointer_mut("/pose/at")) else { return };
            let axis = chance.any(&["x", "z", "x", "y"]);
            let moved = place[axis].as_f64().unwrap_or(0.0) + chance.any(&[0.3, 1.0, -1.0, 4.0, -4.0, 40.0]);
            place[axis] = json!(moved);
        }
        3 => {
            let Some(ports) = row.get_mut("ports").and_then(Value::as_array_mut) else { return };
            let at = chance.below(ports.len());
            let Some(port) = ports.get_mut(at) else { return };
            let alike = |other: &&Value| other["role"] == port["role"] && other["end"] == port["end"];
            let others: Vec<&Value> = every_port.iter().filter(alike).collect();
            if !others.is_empty() {
                let other = chance.any(&others);
                (port["kind"], port["parts"]) = (other["kind"].clone(), json!([]));
            }
        }
        4 => {
            if let Some(mass) = row.get("mass").and_then(Value::as_f64) {
                row["mass"] = json!({"value": mass, "plus_minus": mass * chance.any(&[0.01, 0.05, 0.15])});
            }
        }
        _ => {
            let Some((of, key)) = one_of(chance, row, &CHANGED) else { return };
            let Some(value) = of[&key].as_f64() else { return };
            let share = chance.any(&[0.5, 0.8, 0.95, 0.99, 1.001, 1.01, 1.05, 1.3, 2.0]);
            of[&key] = json!(value * share);
        }
    }
}

/// A complete build of a catalogue by chance, as a build file: half of them near a set that the demonstration's guide lists.
pub fn build(chance: &Chance, catalogue: &Value) -> Value {
    let id = |table: &str| {
        let rows = catalogue[table].as_array().expect("a table");
        rows[chance.below(rows.len())]["id"].clone()
    };
    let mut build = json!({
        "format": 1, "machine": id("machines"), "seat": id("seats"), "implement": id("implements"),
        "trailer": id("trailers"), "site": id("sites"),
    });
    if chance.once_in(4) {
        build["hitch"] = json!(true);
    } else {
        build["frame"] = id("frames");
    }
    if chance.below(4) > 0 {
        let sets = demo()["guide"]["sets"].as_array().expect("sets").clone();
        let set = chance.any(&sets);
        for step in ["machine", "seat", "implement"] {
            if set[step] != json!("any") && !chance.once_in(5) {
                build[step] = set[step].clone();
            }
        }
        let fields = build.as_object_mut().expect("a build");
        fields.remove("hitch");
        fields.remove("frame");
        if set["frame"] == json!("without") {
            build["hitch"] = json!(true);
        } else {
            build["frame"] = if chance.once_in(4) { id("frames") } else { set["frame"].clone() };
        }
    }
    let mut changes = Vec::new();
    if chance.once_in(3) {
        changes.push(json!({"driver_seat": "folded"}));
    }
    if chance.once_in(4) {
        changes.push(json!("fold_roll_over_bar"));
    }
    if chance.once_in(4) {
        changes.push(json!({"ballast": {"mass_kg": chance.any(&[30.0, 120.0]), "x_mm": 2000.0}}));
    }
    build["changes"] = Value::Array(changes);
    build
}
