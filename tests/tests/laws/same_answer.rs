//! Changes that are none: the same things named, ordered, placed, mirrored or written otherwise have the same answer.

use fitup_core::finding::Question;
use fitup_core::fit::Answer;
use fitup_core::quantity::Angle;
use serde_json::{Value, json};

use super::hold::{Case, each, hold, same, same_but};
use super::moved::{mirror, shift};
use super::tree::TABLES;
use super::written::{INCHES, METRES, convert, write_in};

/// What a catalogue's own writing rounds away.
const ROUNDING: f64 = 1e-9;
/// What arcs, made into curves and those into lines, differ by in another unit or at another place, metres and radians.
const CURVES: f64 = 1e-5;

fn as_it_is(name: &str) -> String {
    name.to_owned()
}

fn rows<'a>(catalogue: &'a mut Value, table: &str) -> &'a mut Vec<Value> {
    catalogue[table].as_array_mut().expect("a table")
}

#[test]
fn the_order_of_rows_makes_no_difference() {
    let reversed = |case: &mut Case| TABLES.iter().for_each(|table| rows(&mut case.catalogue, table).reverse());
    // Of several listed sets that prove a joint alike, any may be named.
    hold("order of rows", reversed, same_but(&["joint-same-part", "joint-replaced-part"], ROUNDING, as_it_is));
}

#[test]
fn the_order_of_ports_makes_no_difference() {
    let reversed = |case: &mut Case| {
        for table in ["machines", "frames", "seats", "implements", "adapters", "equipment"] {
            for row in rows(&mut case.catalogue, table) {
                if let Some(ports) = row.get_mut("ports").and_then(Value::as_array_mut) {
                    ports.reverse();
                }
            }
        }
    };
    hold("order of ports", reversed, same(ROUNDING, as_it_is));
}

#[test]
fn items_that_have_nothing_to_do_with_a_build_make_no_difference() {
    let strangers = |case: &mut Case| {
        for table in TABLES {
            let at = case.chance.below(4);
            let rows = rows(&mut case.catalogue, table);
            let mut stranger = rows[at % rows.len()].clone();
            stranger["id"] = json!(format!("stranger-{table}"));
            stranger["label"] = json!(format!("Stranger of {table}"));
            match table {
                "machines" => stranger["fitted"] = json!([]),
                "equipment" => stranger["machines"] = json!(["stranger-machines"]),
                _ => {}
            }
            rows.insert(0, stranger);
        }
    };
    hold("strangers", strangers, same(ROUNDING, as_it_is));
}

#[test]
fn labels_make_no_difference() {
    let named = |case: &mut Case| {
        for table in TABLES {
            for (at, row) in rows(&mut case.catalogue, table).iter_mut().enumerate() {
                row["label"] = json!(format!("Thing {at} of {table}"));
            }
        }
    };
    let labels = |name: &str| name.to_owned();
    let same = same(ROUNDING, labels);
    // Trailers and sites that lack something are named by their labels.
    hold("labels", named, move |a, b, c, d| same(a, b, c, d).filter(|told| !told.contains("-unknown")));
}

/// The id an id is changed to, wherever it stands.
fn renamed(value: &mut Value, ids: &[String]) {
    match value {
        Value::String(text) if ids.contains(text) => *text = other(text),
        Value::Array(values) => values.iter_mut().for_each(|value| renamed(value, ids)),
        Value::Object(fields) => fields.values_mut().for_each(|value| renamed(value, ids)),
        _ => {}
    }
}

/// Another order of the alphabet.
fn other(id: &str) -> String {
    let turned: String = id.chars().rev().collect();
    format!("z{}", turned.trim_matches('-'))
}

#[test]
fn ids_make_no_difference() {
    let named = |case: &mut Case| {
        let ids = |table: &str| case.catalogue[table].as_array().cloned().unwrap_or_default();
        let ids: Vec<String> =
            TABLES.iter().flat_map(|table| ids(table)).filter_map(|row| Some(row["id"].as_str()?.to_owned())).collect();
        renamed(&mut case.catalogue, &ids);
        case.builds.iter_mut().for_each(|build| {
            renamed(build, &ids);
            let serials = build.get_mut("serials").and_then(Value::as_object_mut);
            if let Some(serials) = serials {
                *serials = serials.iter().map(|(id, number)| (other(id), number.clone())).collect();
            }
        });
    };
    hold("ids", named, same(ROUNDING, other));
}

#[test]
fn inches_and_pounds_make_no_difference() {
    hold("inches", |case| write_in(&mut case.catalogue, INCHES), same(CURVES, as_it_is));
}

#[test]
fn metres_make_no_difference() {
    hold("metres", |case| write_in(&mut case.catalogue, METRES), same(CURVES, as_it_is));
}

#[test]
fn a_mirror_makes_no_difference() {
    hold("mirror", |case| mirror(&mut case.catalogue), same(ROUNDING, as_it_is));
}

#[test]
fn where_an_item_has_its_own_origin_makes_no_difference() {
    let moved = |case: &mut Case| {
        let by: Vec<[f64; 3]> =
            (0..64).map(|_| [1.0, 0.0, 1.0].map(|way| way * case.chance.any(&[0.0, 12.5, -250.0, 1000.0]))).collect();
        shift(&mut case.catalogue, |at| by[at % 64]);
    };
    // Not sideways: a lay may turn a seat on its deck by parts of a degree, and its place leaves them out.
    // A plan says nothing of heights, so that it cannot pitch: an item that does is seen from above where its origin puts it.
    let is_level = |answer: &Answer| {
        answer.stack.placed.iter().all(|placed| placed.placement.is_none_or(|place| place.pitch == Angle::ZERO))
    };
    let same = same(CURVES, as_it_is);
    hold("origins", moved, move |a, was, b, is| same(a, was, b, is).filter(|_| is_level(was)));
}

#[test]
fn all_pressures_flows_and_powers_times_as_much_make_no_difference_to_the_verdicts() {
    let more = |case: &mut Case| {
        for table in ["machines", "frames", "seats", "implements", "adapters", "equipment"] {
            convert(table, &mut case.catalogue[table], &[1.0, 1.0, 1.25, 2.0, 1.5, 1.0]);
        }
    };
    hold("scale of oil and power", more, each(&Question::ALL, |a, b| a != b));
}
