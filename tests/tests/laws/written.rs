//! The same catalogue in other units: how every number of a file is converted.

use serde_json::{Value, json};

/// Numbers that are counts, shares, years or money, or that a table of their own holds.
const PLAIN: [&str; 21] = [
    "format",
    "outlets",
    "shaft_type",
    "speeds",
    "required",
    "quantity",
    "count",
    "nose_least",
    "nose_most",
    "price",
    "first",
    "last",
    "new",
    "used",
    "hours",
    "hours_on",
    "hours_off",
    "outlets_more",
    "fitting",
    "off",
    "years",
];
const MASSES: [&str; 13] = [
    "mass",
    "rated",
    "tyre_rated",
    "bare_load",
    "lift",
    "lift_610",
    "lift_at_full_reach",
    "empty_mass",
    "rated_total",
    "rated_axle",
    "rated_nose",
    "greatest_axle_load",
    "plus_minus_mass",
];
const ANGLES: [&str; 7] = ["least", "greatest", "transport", "swing", "direction", "angle", "beaver_angle"];
const FLOWS: [&str; 3] = ["flow", "flow_min", "flow_max"];
const PRESSURES: [&str; 3] = ["relief", "pressure_min", "pressure_max"];
const POWERS: [&str; 3] = ["power", "power_least", "power_most"];

/// How many of each new unit one old one is: the demonstration's are mm, kg, bar, L/min, kW and deg.
#[derive(Clone, Copy)]
pub struct Units {
    pub names: [&'static str; 6],
    pub shares: [f64; 6],
}

/// Inches, pounds and the like, from the definitions of inch and pound.
pub const INCHES: Units = Units {
    names: ["in", "lb", "psi", "gal/min", "hp", "rad"],
    shares: [
        1.0 / 25.4,
        1.0 / 0.453_592_37,
        1e5 / (0.453_592_37 * 9.806_65 / (0.0254 * 0.0254)),
        1.0 / 3.785_411_784,
        1e3 / (550.0 * 0.3048 * 0.453_592_37 * 9.806_65),
        std::f64::consts::PI / 180.0,
    ],
};

/// Metres and the like.
pub const METRES: Units = Units {
    names: ["m", "kg", "Pa", "m3/s", "W", "rad"],
    shares: [1e-3, 1.0, 1e5, 1e-3 / 60.0, 1e3, std::f64::consts::PI / 180.0],
};

/// Writes a catalogue in other units.
pub fn write_in(catalogue: &mut Value, units: Units) {
    for (name, unit) in ["length", "mass", "pressure", "flow", "power", "angle"].into_iter().zip(units.names) {
        catalogue["units"][name] = json!(unit);
    }
    for (table, rows) in catalogue.as_object_mut().expect("a catalogue") {
        if table != "units" {
            convert(table, rows, &units.shares);
        }
    }
}

/// Multiplies every quantity: lengths, masses, pressures, flows, powers, angles.
pub fn convert(name: &str, value: &mut Value, shares: &[f64; 6]) {
    match value {
        Value::Object(fields) => {
            for (key, value) in fields {
                // The long form of a stated number is of the field that holds it.
                let key = if matches!(key.as_str(), "value" | "plus_minus") { name } else { key.as_str() };
                convert(key, value, shares);
            }
        }
        Value::Array(values) => values.iter_mut().for_each(|value| convert(name, value, shares)),
        Value::Number(number) if !PLAIN.contains(&name) => {
            let kinds: [&[&str]; 6] = [&[], &MASSES, &PRESSURES, &FLOWS, &POWERS, &ANGLES];
            let kind = kinds.iter().position(|names| names.contains(&name)).unwrap_or(0);
            *value = json!(number.as_f64().expect("a number") * shares[kind]);
        }
        Value::String(path) if matches!(name, "path" | "underside") => {
            *path = on_path(path, |[x, y]| [x * shares[0], y * shares[0]], false);
        }
        _ => {}
    }
}

/// Path data with every place moved; `turns` where the move turns the page over, so that arcs run the other way round.
///
/// For paths of `M L Q C A Z`, each letter and number by itself, as the demonstration's are.
pub fn on_path(path: &str, moved: impl Fn([f64; 2]) -> [f64; 2], turns: bool) -> String {
    let (mut out, mut words, mut command) = (Vec::new(), path.split_whitespace().peekable(), 'M');
    let radius = moved([1.0, 0.0]);
    let origin = moved([0.0, 0.0]);
    let size = ((radius[0] - origin[0]).powi(2) + (radius[1] - origin[1]).powi(2)).sqrt();
    while let Some(word) = words.peek() {
        if let Some(letter) = word.chars().next().filter(char::is_ascii_alphabetic) {
            command = letter;
            assert!("MLQCAZ".contains(letter), "{path}");
            out.push(letter.to_string());
            words.next();
            continue;
        }
        let mut number = || -> f64 { words.next().and_then(|word| word.parse().ok()).expect("a number of a path") };
        if command == 'A' {
            let [x, y, rotation, large, sweep] = [number(), number(), number(), number(), number()];
            let (rotation, sweep) = if turns { (-rotation, 1.0 - sweep) } else { (rotation, sweep) };
            out.extend([x * size, y * size, rotation, large, sweep].map(|number| number.to_string()));
        }
        out.extend(moved([number(), number()]).map(|number| number.to_string()));
    }
    out.join(" ")
}

#[test]
fn an_inch_is_an_inch_and_an_arc_keeps_its_flags() {
    assert!((INCHES.shares[2] - 14.503_773_773).abs() < 1e-6, "psi in a bar");
    assert!((INCHES.shares[4] - 1.341_022_09).abs() < 1e-6, "horsepower in a kilowatt");
    let path = "M 10 20 A 5 5 30 0 1 15 20 Z";
    assert_eq!(on_path(path, |[x, y]| [x, -y], true), "M 10 -20 A 5 5 -30 0 0 15 -20 Z");
    assert_eq!(on_path(path, |[x, y]| [x * 2.0, y * 2.0], false), "M 20 40 A 10 10 30 0 1 30 40 Z");
}
