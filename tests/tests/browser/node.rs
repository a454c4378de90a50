//! The engine under Node.js, as its example uses it.

use std::process::Command;

use fitup_tests::browser::root;
use serde_json::{Value, json};

/// What the example says of a build.
fn said(build: &Value) -> Value {
    run(&["crates/engine/examples/judge.mjs", "dist", "www/catalogue/demo.json", &build.to_string()])
}

fn run(arguments: &[&str]) -> Value {
    let output = Command::new("node").args(arguments).current_dir(root()).output().expect("Node.js runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).expect("the example prints JSON")
}

#[test]
fn the_example_judges_a_build_and_reports_what_is_not_in_the_catalogue() {
    let set = json!({
        "format": 1, "machine": "wren", "frame": "sparrow-frame", "seat": "rear-seat", "implement": "badger-arm"
    });
    assert_eq!(said(&set), json!({ "unknown": [], "verdict": "bolts-up", "headline": "Bolts up" }));
    let unknown = said(&json!({ "format": 1, "machine": "zzz" }));
    assert_eq!((&unknown["unknown"], &unknown["verdict"]), (&json!(["zzz"]), &Value::Null));
    let empty = said(&json!({ "format": 1 }));
    assert_eq!((&empty["unknown"], &empty["verdict"]), (&json!([]), &Value::Null), "nothing is decided");
}

#[test]
fn every_call_answers_and_what_is_wrong_is_an_error_with_a_code() {
    let told = run(&["crates/engine/examples/calls.mjs", "dist", "www/catalogue/demo.json"]);
    assert_eq!((&told["problems"], &told["sets"]), (&json!(0), &json!(20)));
    assert_eq!((&told["verdict"], &told["lists"]), (&json!("bolts-up"), &json!("quantities-differ")));
    assert_eq!((&told["drawing"], &told["link"]), (&json!(true), &json!(true)));
    assert!(told["broken"].as_array().is_some_and(|problems| problems.len() == 1));
    for counted in ["machines", "bolts", "options", "candidates", "compared", "length"] {
        assert!(told[counted].as_f64().is_some_and(|count| count > 0.0), "{counted}: {told}");
    }
    let codes = json!({
        "unknown": "unknown", "build": "build", "order": "order", "observed": "observed", "list": "list", "item": "unknown",
        "compare": "build", "view": "view", "link": "link",
    });
    assert_eq!(told["refused"], codes);
}
