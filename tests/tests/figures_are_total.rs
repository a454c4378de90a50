//! Every figure answers every case: with a result or with an error that names the key, never with a panic, and soon.
//!
//! Covers: core/src/dimension.

use fitup_cli::figure;
use serde_json::{Value, json};
use std::fs;
use std::path::PathBuf;
use std::time::{Duration, Instant};

/// Places of the tree that hold a number, as JSON pointers.
fn numbers(value: &Value, at: &str, found: &mut Vec<String>) {
    match value {
        Value::Number(_) => found.push(at.to_owned()),
        Value::Array(list) => list.iter().enumerate().for_each(|(i, v)| numbers(v, &format!("{at}/{i}"), found)),
        Value::Object(map) => map.iter().for_each(|(k, v)| numbers(v, &format!("{at}/{k}"), found)),
        _ => {}
    }
}

/// All places of the tree.
fn places(value: &Value, at: &str, found: &mut Vec<String>) {
    found.push(at.to_owned());
    match value {
        Value::Array(list) => list.iter().enumerate().for_each(|(i, v)| places(v, &format!("{at}/{i}"), found)),
        Value::Object(map) => map.iter().for_each(|(k, v)| places(v, &format!("{at}/{k}"), found)),
        _ => {}
    }
}

fn examples() -> Vec<(String, Vec<Value>)> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference/examples");
    let mut all: Vec<(String, Vec<Value>)> = fs::read_dir(folder)
        .expect("the examples stand there")
        .map(|entry| entry.expect("readable").path())
        .map(|path| {
            let cases: Vec<Value> =
                serde_json::from_str(&fs::read_to_string(&path).expect("readable")).expect("the examples are JSON");
            let name = path.file_stem().expect("has a name").to_string_lossy().into_owned();
            (name, cases.into_iter().map(|mut case| case["inputs"].take()).collect())
        })
        .collect();
    all.sort_by(|a, b| a.0.cmp(&b.0));
    all
}

/// Computes a case and says what is wrong with how it was answered.
fn answered(name: &str, inputs: &Value) -> Result<bool, String> {
    let compute = figure::find(name).unwrap_or_else(|unknown| panic!("{unknown}"));
    let text = json!({"id": "x", "inputs": inputs}).to_string();
    let start = Instant::now();
    let answers =
        std::panic::catch_unwind(|| figure::answers(compute, &text).map(|mut answers| answers.swap_remove(0)));
    let told = |what: &str| format!("{name}: {what}: {text}");
    if start.elapsed() > Duration::from_secs(20) {
        return Err(told("takes too long"));
    }
    let Ok(answer) = answers else { return Err(told("panics")) };
    let answer = answer.map_err(|error| told(&error.to_string()))?;
    match &answer.outcome {
        Ok(result) if result.is_object() => Ok(true),
        Ok(_) => Err(told("the result is no object")),
        Err(faults) if faults.is_empty() => Err(told("there is neither result nor error")),
        Err(faults) => {
            let wrong = |fault: &&figure::CaseError| {
                !fault.path.starts_with("inputs") || fault.message.is_empty() || fault.position.is_none()
            };
            match faults.iter().find(wrong) {
                None => Ok(false),
                Some(error) => Err(told(&format!("the error does not say where: {error:?}"))),
            }
        }
    }
}

#[test]
fn odd_numbers_are_computed_or_refused_by_name() {
    let odd = [
        0.0, -0.0, -1.0, 1.0, 1e-300, 5e-324, -1e-9, 1e-6, 89.999, 90.0, 180.0, 1e5, -1e5, 1e8, 2e9, 1e12, 1e300,
        -1e308,
    ];
    let (mut computed, mut refused, mut wrong) = (0, 0, Vec::new());
    for (name, cases) in examples() {
        for inputs in cases {
            let mut found = Vec::new();
            numbers(&inputs, "", &mut found);
            for at in &found {
                for value in odd {
                    let mut changed = inputs.clone();
                    *changed.pointer_mut(at).expect("found there") = json!(value);
                    match answered(&name, &changed) {
                        Ok(true) => computed += 1,
                        Ok(false) => refused += 1,
                        Err(told) => wrong.push(told),
                    }
                }
            }
            // All numbers at once.
            for value in odd {
                let mut changed = inputs.clone();
                for at in &found {
                    *changed.pointer_mut(at).expect("found there") = json!(value);
                }
                match answered(&name, &changed) {
                    Ok(true) => computed += 1,
                    Ok(false) => refused += 1,
                    Err(told) => wrong.push(told),
                }
            }
        }
    }
    println!("{computed} computed, {refused} refused by name");
    assert!(wrong.is_empty(), "{} wrong:\n{}", wrong.len(), wrong.join("\n"));
    assert!(computed > 1000 && refused > 1000);
}

/// What is safe alone may not be where another number is odd too: a share of nothing, a moment over next to nothing.
#[test]
fn two_odd_numbers_together_are_computed_or_refused_by_name() {
    let (mut answers, mut wrong) = (0, Vec::new());
    for (name, cases) in examples() {
        let Some(inputs) = cases.first() else { continue };
        let mut found = Vec::new();
        numbers(inputs, "", &mut found);
        // Alike numbers of long lists add time and no kind of case.
        found.truncate(16);
        for (index, one) in found.iter().enumerate() {
            for other in &found[index + 1..] {
                for values in [[0.0, 0.0], [5e-324, 5e-324], [5e-324, 1e5], [1e5, 5e-324], [1e-12, -1e5]] {
                    let mut changed = inputs.clone();
                    for (at, value) in [one, other].into_iter().zip(values) {
                        *changed.pointer_mut(at).expect("found there") = json!(value);
                    }
                    answers += 1;
                    wrong.extend(answered(&name, &changed).err());
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} wrong:\n{}", wrong.len(), wrong.join("\n"));
    assert!(answers > 1000);
}

#[test]
fn odd_shapes_are_refused_with_their_place() {
    let odd = [json!(null), json!("380"), json!([]), json!({}), json!(true), json!([[]]), json!({"name": 1})];
    let mut wrong = Vec::new();
    for (name, cases) in examples() {
        for inputs in cases {
            let mut found = Vec::new();
            places(&inputs, "", &mut found);
            for at in &found {
                for value in &odd {
                    let mut changed = inputs.clone();
                    *changed.pointer_mut(at).expect("found there") = value.clone();
                    wrong.extend(answered(&name, &changed).err());
                }
                if let Some((above, key)) = at.rsplit_once('/') {
                    let mut changed = inputs.clone();
                    match changed.pointer_mut(above).expect("found there") {
                        Value::Object(map) => {
                            map.remove(key);
                            map.insert("colour".to_owned(), json!("red"));
                        }
                        Value::Array(list) => list.clear(),
                        _ => {}
                    }
                    wrong.extend(answered(&name, &changed).err());
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} wrong:\n{}", wrong.len(), wrong.join("\n"));
}
