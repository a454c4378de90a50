//! Every example case under `reference/examples`, file by file, against its expected values.

use std::fs;
use std::path::PathBuf;

use fitup_cli::figure;
use serde_json::Value;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference/examples")
}

fn files() -> Vec<(String, String)> {
    let mut files: Vec<(String, String)> = fs::read_dir(folder())
        .expect("the examples stand there")
        .map(|entry| entry.expect("readable").path())
        .filter(|path| path.extension().is_some_and(|ext| ext == "json"))
        .map(|path| {
            let name = path.file_stem().expect("has a name").to_string_lossy().into_owned();
            (name, fs::read_to_string(&path).expect("readable"))
        })
        .collect();
    files.sort();
    files
}

/// Where `got` leaves `expected` by more than the tolerance, told with its key.
fn differences(key: &str, expected: &Value, got: Option<&Value>, tolerance: &Value, told: &mut Vec<String>) {
    let Some(got) = got else {
        told.push(format!("{key}: expected {expected}, the result has no such key"));
        return;
    };
    match (expected, got) {
        (Value::Number(e), Value::Number(g)) => {
            let (e, g) = (e.as_f64().expect("finite"), g.as_f64().expect("finite"));
            let allowed = tolerance["abs"].as_f64().unwrap_or(0.0) + tolerance["rel"].as_f64().unwrap_or(0.0) * e.abs();
            if (e - g).abs() > allowed {
                told.push(format!("{key}: expected {e}, got {g}, off by {:e}, allowed {allowed:e}", (e - g).abs()));
            }
        }
        (Value::Array(e), Value::Array(g)) if e.len() == g.len() => {
            for (i, (e, g)) in e.iter().zip(g).enumerate() {
                differences(&format!("{key}[{i}]"), e, Some(g), tolerance, told);
            }
        }
        (Value::Object(e), Value::Object(g)) => {
            for (name, e) in e {
                differences(&format!("{key}.{name}"), e, g.get(name), tolerance, told);
            }
        }
        (e, g) if e == g => {}
        (e, g) => told.push(format!("{key}: expected {e}, got {g}")),
    }
}

#[test]
fn every_example_is_met_within_its_tolerance() {
    let mut told = Vec::new();
    let mut checked = 0;
    for (name, text) in files() {
        let compute = figure::find(&name).unwrap_or_else(|unknown| panic!("{unknown}"));
        let raw: Value = serde_json::from_str(&text).expect("the examples are JSON");
        let answers = figure::answers(compute, &text).expect("the examples are cases");
        let raw = raw.as_array().expect("the examples are lists");
        assert_eq!(raw.len(), answers.len());
        for (raw, answer) in raw.iter().zip(answers) {
            let Ok(result) = &answer.outcome else {
                told.push(format!("{name}: {}", answer.told()));
                continue;
            };
            let expected = raw["expected"].as_object().expect("the examples expect something");
            assert!(!expected.is_empty(), "{name} {} expects nothing", answer.id);
            for (key, expected) in expected {
                let tolerance = raw["tolerance"].get(key).unwrap_or(&raw["tolerance"]["default"]);
                differences(&format!("{name} {} {key}", answer.id), expected, result.get(key), tolerance, &mut told);
                checked += 1;
            }
        }
    }
    println!("{checked} expected values checked");
    assert!(told.is_empty(), "{} differ:\n{}", told.len(), told.join("\n"));
    assert!(checked >= figure::FIGURES.len(), "every figure has a value that is checked");
}

#[test]
fn every_figure_has_its_examples_and_every_example_its_figure() {
    let names: Vec<String> = files().into_iter().map(|(name, _)| name).collect();
    for (name, _) in figure::FIGURES {
        assert!(names.iter().any(|known| known == name), "{name} has no examples");
    }
    for name in &names {
        assert!(figure::find(name).is_ok(), "{name} has no figure");
    }
}
