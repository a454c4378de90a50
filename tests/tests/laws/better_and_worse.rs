//! Changes whose way is known: heavier, longer, vaguer, proven.

use fitup_core::finding::{Question, Verdict};
use fitup_core::search::Searcher;
use serde_json::{Value, json};

use super::hold::{Case, build_of, cases, each, hold, hold_from, tried};
use super::tree::{TABLES, desk};

const ITEMS: [&str; 6] = ["machines", "frames", "seats", "implements", "adapters", "equipment"];

/// Nothing is listed and no part bears a number, so that dimensions alone decide.
fn unlisted(catalogue: &mut Value) {
    let fields = catalogue.as_object_mut().expect("a catalogue");
    fields.remove("guide");
    fields.remove("parts_lists");
    for row in
        ITEMS.iter().filter_map(|table| fields.get_mut(*table).cloned().map(|rows| (table, rows))).collect::<Vec<_>>()
    {
        let (table, mut rows) = row;
        for row in rows.as_array_mut().expect("a table") {
            row.as_object_mut().expect("a row").remove("listed_with");
            for port in row.get_mut("ports").and_then(Value::as_array_mut).into_iter().flatten() {
                port.as_object_mut().expect("a port").remove("parts");
            }
        }
        fields.insert((*table).to_owned(), rows);
    }
}

/// Every ± of masses and ports times as wide; those that state none get one.
fn wider(catalogue: &mut Value, times: f64) {
    for table in ITEMS {
        for row in catalogue[table].as_array_mut().expect("a table") {
            for name in ["mass", "wheelbase"] {
                let Some(stated) = row.get_mut(name) else { continue };
                let value = stated.get("value").unwrap_or(stated).as_f64().expect("a number");
                let usual = if name == "mass" { 0.0 } else { 0.2 };
                let was = stated.get("plus_minus").and_then(Value::as_f64).unwrap_or(usual);
                let by = if was > 0.0 { was * times } else { value * 0.01 };
                *stated = json!({"value": value, "plus_minus": by});
            }
            for port in row.get_mut("ports").and_then(Value::as_array_mut).into_iter().flatten() {
                let was = port.get("tolerance").and_then(Value::as_f64).unwrap_or(match port["source"].as_str() {
                    Some("caliper") => 0.1,
                    Some("tape") => 1.5,
                    _ => 0.2,
                });
                port["tolerance"] = json!(was * times);
                widen(&mut port["kind"], times);
            }
        }
    }
}

fn widen(value: &mut Value, times: f64) {
    match value {
        Value::Object(fields) => {
            if let Some(by) = fields.get("plus_minus").and_then(Value::as_f64) {
                fields.insert("plus_minus".to_owned(), json!(by * times));
            }
            fields.values_mut().for_each(|value| widen(value, times));
        }
        Value::Array(values) => values.iter_mut().for_each(|value| widen(value, times)),
        _ => {}
    }
}

#[test]
fn a_wider_range_makes_no_open_answer_good_and_no_good_one_a_no() {
    // Both catalogues have dimensions alone: a listing stands unless the dimensions deny it for certain.
    let vaguer = |case: &mut Case| {
        wider(&mut case.catalogue, 4.0);
        unlisted(&mut case.catalogue);
    };
    let wrong = |before: Verdict, after: Verdict| {
        let is_yes = |verdict| verdict <= Verdict::BoltsUpWithWork;
        (!is_yes(before) && is_yes(after)) || (is_yes(before) && after == Verdict::WontMount)
    };
    // What is not listed is judged first, so that the two differ in their ranges alone.
    hold_from("wider ranges", |case| unlisted(&mut case.catalogue), vaguer, each(&Question::ALL, wrong));
}

#[test]
fn a_heavier_implement_never_improves_work() {
    let heavier = |case: &mut Case| {
        for row in case.catalogue["implements"].as_array_mut().expect("a table") {
            if let Some(mass) = row.get_mut("mass") {
                let stated = mass.get_mut("value").is_some();
                let value = if stated { &mut mass["value"] } else { mass };
                *value = json!(value.as_f64().expect("a number") * 1.2);
            }
        }
    };
    // Behind the rear axle it takes weight off the front axle, so that one that bore too much there bears less.
    let too_much_in_front = |was: &fitup_core::fit::Answer| {
        let front = |it: &fitup_core::finding::Finding| {
            it.code.contains("over") && format!("{:?}", it.figures).contains("\"front\"")
        };
        was.findings.iter().any(front)
    };
    let worse = each(&[Question::Work], |before, after| after < before);
    hold("heavier implement", heavier, move |a, was, c, is| worse(a, was, c, is).filter(|_| !too_much_in_front(was)));
}

#[test]
fn a_longer_ramp_never_worsens_travel() {
    let with = |case: &mut Case, ramps: &[f64]| {
        for build in &mut case.builds {
            let mut changes = build["changes"].as_array().cloned().unwrap_or_default();
            changes.retain(|change| change.get("ramps").is_none());
            changes.push(json!({"ramps": {"length_mm": case.chance.any(ramps)}}));
            build["changes"] = Value::Array(changes);
        }
    };
    let longer = |case: &mut Case| {
        for build in &mut case.builds {
            for change in build["changes"].as_array_mut().expect("changes") {
                if let Some(length) = change.pointer_mut("/ramps/length_mm") {
                    *length = json!(length.as_f64().expect("a number") + case.chance.any(&[50.0, 400.0, 2000.0]));
                }
            }
        }
    };
    let worse = each(&[Question::Travel], |before, after| after > before);
    hold_from("longer ramp", |case| with(case, &[900.0, 1400.0, 2000.0, 3000.0]), longer, worse);
}

#[test]
fn a_longer_list_in_the_guide_never_worsens_an_answer() {
    let listed = |case: &mut Case| {
        if case.catalogue.get("guide").is_none() {
            case.catalogue["guide"] = json!({"name": "Guide", "date": "2026-01-01", "sets": []});
        }
        for build in &case.builds {
            let of = |name: &str| build.get(name).filter(|id| id.is_string()).cloned();
            let (Some(machine), Some(seat), Some(implement)) = (of("machine"), of("seat"), of("implement")) else {
                continue;
            };
            let frame = of("frame").unwrap_or(json!("without"));
            let set = json!({"machine": machine, "frame": frame, "seat": seat, "implement": implement});
            let sets = case.catalogue["guide"]["sets"].as_array_mut().expect("sets");
            if !sets.contains(&set) {
                sets.push(set);
            }
        }
    };
    hold("listed in the guide", listed, each(&Question::ALL, |before, after| after > before));
}

#[test]
fn a_measurement_that_says_what_is_stated_makes_no_good_answer_worse() {
    let measured = |case: &mut Case| {
        for build in &mut case.builds {
            let mut measured = build["measured"].as_array().cloned().unwrap_or_default();
            for table in ["machines", "frames", "implements"] {
                let step = table.trim_end_matches('s');
                let Some(id) = build.get(step).filter(|id| id.is_string()) else { continue };
                let row = case.catalogue[table].as_array().expect("a table").iter().find(|row| row["id"] == *id);
                for port in row.and_then(|row| row["ports"].as_array()).into_iter().flatten() {
                    let Some(rack) = port["kind"].get("hook_rack") else { continue };
                    for dimension in ["diameter", "spread", "drop", "latch", "setback"] {
                        let Some(value) = rack.get(dimension) else { continue };
                        let value = value.get("value").unwrap_or(value);
                        let entry = json!({"item": id, "port": port["name"], "dimension": dimension, "mm": value, "tool": "caliper", "plus_minus_mm": 0.05});
                        if !measured.iter().any(|it| {
                            it["item"] == *id && it["dimension"] == entry["dimension"] && it["port"] == entry["port"]
                        }) {
                            measured.push(entry);
                        }
                    }
                }
            }
            build["measured"] = Value::Array(measured);
        }
    };
    let worse =
        each(&Question::ALL, |before, after| before <= Verdict::BoltsUpWithWork && after > Verdict::BoltsUpWithWork);
    // A listing stands where the dimensions deny it, though not for certain; measured, they may deny it for certain.
    hold_from("measured as stated", |case| unlisted(&mut case.catalogue), measured, worse);
}

#[test]
fn a_number_read_off_that_is_the_listed_one_makes_no_answer_worse() {
    let read = |case: &mut Case| {
        for build in &mut case.builds {
            let mut read = build["numbers_read"].as_array().cloned().unwrap_or_default();
            for table in ["machines", "frames", "seats", "implements"] {
                let Some(id) = build.get(table.trim_end_matches('s')).filter(|id| id.is_string()) else { continue };
                let row = case.catalogue[table].as_array().expect("a table").iter().find(|row| row["id"] == *id);
                for port in row.and_then(|row| row["ports"].as_array()).into_iter().flatten() {
                    let is_known = read.iter().any(|it| it["item"] == *id && it["port"] == port["name"]);
                    if port["parts"].as_array().is_some_and(|parts| !parts.is_empty()) && !is_known {
                        read.push(json!({"item": id, "port": port["name"], "parts": port["parts"]}));
                    }
                }
            }
            build["numbers_read"] = Value::Array(read);
        }
    };
    hold("numbers read as listed", read, each(&Question::ALL, |before, after| after > before));
}

#[test]
fn an_option_less_improves_no_completion() {
    let (mut count, mut faults) = (0, Vec::new());
    for case in cases().skip(1) {
        let whole = desk(&case.catalogue).expect("it is sound");
        let mut fewer = case.catalogue.clone();
        let table = case.chance.any(&["machines", "frames", "seats", "implements"]);
        let rows = fewer[table].as_array_mut().expect("a table");
        let gone = rows.remove(case.chance.below(rows.len()))["id"].clone();
        if let Some(sets) = fewer.pointer_mut("/guide/sets").and_then(Value::as_array_mut) {
            sets.retain(|set| set.as_object().expect("a set").values().all(|id| *id != gone));
        }
        if let Some(rows) = fewer["parts_lists"].as_array_mut() {
            rows.retain(|row| row["item"] != gone);
        }
        for table in TABLES {
            for row in fewer[table].as_array_mut().expect("a table") {
                if let Some(listed) = row.get_mut("listed_with").and_then(Value::as_array_mut) {
                    listed.retain(|id| *id != gone);
                }
            }
        }
        let Some(fewer) = desk(&fewer) else { continue };
        for file in &case.builds {
            let mut part = file.clone();
            let step = case.chance.any(&["machine", "frame", "seat", "implement"]);
            part.as_object_mut()
                .expect("a build")
                .retain(|name, _| name != step && (step != "frame" || name != "hitch"));
            let (Some(was), Some(is)) = (build_of(&whole, &part), build_of(&fewer, &part)) else { continue };
            let (was, is) = (Searcher::new(&whole).reachable(&was), Searcher::new(&fewer).reachable(&is));
            let (catalogue, less) = (whole.catalogue(), fewer.catalogue());
            count += 1;
            for (at, reach) in is.implements.iter().enumerate() {
                let id = &less.implements[at].body.id;
                let before = catalogue.implements.iter().position(|row| row.body.id == *id).expect("it was there");
                let pair = was.implements[before].as_ref().zip(reach.as_ref());
                if let Some((was, is)) = pair.filter(|(was, is)| is.verdict < was.verdict) {
                    faults.push(format!("without {gone} {id} {:?} -> {:?}: {part}", was.verdict, is.verdict));
                }
            }
        }
    }
    println!("an option less: {count} builds tried, {} counterexamples", faults.len());
    assert!(faults.is_empty(), "{}:\n{}", faults.len(), faults.iter().take(5).cloned().collect::<Vec<_>>().join("\n"));
    assert!(count * 4 >= tried(), "{count}");
}

#[test]
fn more_of_everything_that_bears_never_worsens_an_answer() {
    let stronger = |case: &mut Case| {
        for table in ["machines", "trailers", "sites"] {
            strengthen(&mut case.catalogue[table]);
        }
    };
    let worse = each(&[Question::Work, Question::Travel, Question::Site], |before, after| after > before);
    hold("higher ratings", stronger, worse);
}

fn strengthen(value: &mut Value) {
    const RATINGS: [&str; 8] =
        ["rated", "tyre_rated", "lift", "lift_610", "rated_total", "rated_axle", "rated_nose", "greatest_axle_load"];
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                match value.as_f64().filter(|_| RATINGS.contains(&name.as_str())) {
                    Some(rating) => *value = json!(rating * 1.3),
                    None => strengthen(value),
                }
            }
        }
        Value::Array(values) => values.iter_mut().for_each(strengthen),
        _ => {}
    }
}
