//! The same catalogue seen in a mirror, and with the origins of its items elsewhere.

use serde_json::{Value, json};

use super::written::on_path;

const ITEMS: [&str; 6] = ["machines", "frames", "seats", "implements", "adapters", "equipment"];

fn rows(catalogue: &mut Value) -> impl Iterator<Item = &mut Value> {
    let tables = catalogue.as_object_mut().expect("a catalogue").iter_mut();
    tables
        .filter(|(name, _)| ITEMS.contains(&name.as_str()))
        .flat_map(|(_, rows)| rows.as_array_mut().expect("a table"))
}

fn negate(of: &mut Value, name: &str) {
    if let Some(number) = of.get(name).and_then(Value::as_f64) {
        of[name] = json!(-number);
    }
}

/// Left becomes right. A take-off turns as it turned, and threads too: no rule looks which way round.
pub fn mirror(catalogue: &mut Value) {
    for row in rows(catalogue) {
        for point in ["centre_of_gravity", "console"] {
            if let Some(point) = row.get_mut(point) {
                negate(point, "y");
            }
        }
        for shape in row.get_mut("shapes").and_then(Value::as_array_mut).into_iter().flatten() {
            let path = shape["path"].as_str().expect("a path");
            let path = match shape["view"].as_str() {
                Some("plan") => on_path(path, |[x, y]| [x, -y], true),
                Some("rear") => on_path(path, |[y, z]| [-y, z], true),
                _ => path.to_owned(),
            };
            shape["path"] = json!(path);
        }
        for port in row.get_mut("ports").and_then(Value::as_array_mut).into_iter().flatten() {
            if let Some(pose) = port.get_mut("pose") {
                negate(&mut pose["at"], "y");
                for way in ["faces", "up"] {
                    pose[way] = match pose[way].as_str() {
                        Some("left") => json!("right"),
                        Some("right") => json!("left"),
                        _ => pose[way].clone(),
                    };
                }
            }
            let kind = port.get_mut("kind").expect("a kind");
            for pattern in ["/bolt_pattern", "/seat_base/pattern"] {
                let holes = kind.pointer_mut(pattern).and_then(|pattern| pattern["holes"].as_array_mut());
                for hole in holes.into_iter().flatten() {
                    negate(hole, "u");
                    if let Some(slot) = hole.get_mut("slot") {
                        negate(slot, "direction");
                    }
                }
            }
            let points = kind.pointer_mut("/pins/points").and_then(Value::as_array_mut);
            for point in points.into_iter().flatten() {
                if let Some(across) = point.pointer_mut("/across/value") {
                    *across = json!(-across.as_f64().expect("a number"));
                } else {
                    negate(point, "across");
                }
            }
        }
    }
}

fn add(of: &mut Value, name: &str, by: f64) {
    if by != 0.0 {
        let was = of.get(name).and_then(Value::as_f64).unwrap_or(0.0);
        of[name] = json!(was + by);
    }
}

/// Every item that joints place has its origin elsewhere: its places are all moved by the same.
pub fn shift(catalogue: &mut Value, by: impl Fn(usize) -> [f64; 3]) {
    for (at, row) in rows(catalogue).enumerate() {
        // The axes of equipment are its machine's.
        let is_machine = row.get("station").is_some() || row.get("machines").is_some();
        let stands = row.get("ports").and_then(Value::as_array).is_some_and(|ports| !ports.is_empty());
        if is_machine || !stands {
            continue;
        }
        // An arm swings about the middle of its implement.
        let [x, y, z] = by(at);
        let y = if row.get("arm").is_some() { 0.0 } else { y };
        for point in ["centre_of_gravity", "console", "index_point", "own_seat_index"] {
            if let Some(point) = row.get_mut(point) {
                for (axis, by) in [("x", x), ("z", z)] {
                    add(point, axis, by);
                }
            }
        }
        for point in ["centre_of_gravity", "console"] {
            if let Some(point) = row.get_mut(point) {
                add(point, "y", y);
            }
        }
        if let Some(arm) = row.get_mut("arm") {
            for (place, by) in [("swing_x", x), ("foot_z", z)] {
                add(arm, place, by);
            }
            if let Some(pads) = arm.get_mut("stabilisers") {
                add(pads, "x", x);
            }
        }
        if let Some(underside) = row.get("underside").and_then(Value::as_str) {
            row["underside"] = json!(on_path(underside, |[a, b]| [a + x, b + z], false));
        }
        for shape in row.get_mut("shapes").and_then(Value::as_array_mut).into_iter().flatten() {
            if shape.get("carrier").is_some_and(|carrier| carrier != "item") {
                continue;
            }
            let path = shape["path"].as_str().expect("a path");
            let [first, second] = match shape["view"].as_str() {
                Some("plan") => [x, y],
                Some("rear") => [y, z],
                _ => [x, z],
            };
            shape["path"] = json!(on_path(path, |[a, b]| [a + first, b + second], false));
        }
        for port in row.get_mut("ports").and_then(Value::as_array_mut).into_iter().flatten() {
            if let Some(at) = port.pointer_mut("/pose/at") {
                for (axis, by) in [("x", x), ("y", y), ("z", z)] {
                    add(at, axis, by);
                }
            }
        }
    }
}
