//! `fitup identify` on the demonstration yard.
//!
//! Covers: cli/src/identify.rs.

use std::process::{Command, Output};

use serde_json::Value;

const CATALOGUE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");

fn identify(more: &[&str]) -> Output {
    let arguments = [&["identify", CATALOGUE], more].concat();
    Command::new(env!("CARGO_BIN_EXE_fitup")).args(arguments).output().expect("the command runs")
}

fn data(more: &[&str]) -> Value {
    let output = identify(&[more, &["--format", "json"]].concat());
    serde_json::from_slice(&output.stdout).unwrap_or_else(|why| panic!("{why}: {output:?}"))
}

#[test]
fn a_number_on_the_piece_names_a_port_that_bears_it() {
    let catalogue: Value = serde_json::from_slice(&std::fs::read(CATALOGUE).expect("it is there")).expect("JSON");
    let ports = catalogue["implements"].as_array().expect("a table").iter();
    let mut ports = ports.flat_map(|row| row["ports"].as_array().into_iter().flatten().map(move |port| (row, port)));
    let (row, number) = ports
        .find_map(|(row, port)| Some((row, port["parts"].as_array()?.first()?.as_str()?)))
        .expect("one that names a part");
    let found = data(&["--read", number]);
    let candidates = found["candidates"].as_array().expect("a list");
    assert!(!candidates.is_empty(), "{found}");
    assert!(found.to_string().contains(row["id"].as_str().expect("an id")), "{found}");
}

#[test]
fn a_number_that_nothing_bears_makes_no_port_likelier_than_another() {
    let found = data(&["--read", "no-such-number"]);
    let candidates = found["candidates"].as_array().expect("a list");
    assert!(candidates.len() > 10, "{found}");
    assert!(candidates.iter().all(|one| one["likelihood"].as_f64() < Some(0.1) && one["bears"] == false), "{found}");
}

#[test]
fn nothing_known_and_what_cannot_be_measured_are_refused_with_what_to_give() {
    let refused = |more: &[&str]| {
        let output = identify(more);
        assert_eq!(output.status.code(), Some(2), "{output:?}");
        String::from_utf8(output.stderr).expect("text")
    };
    assert!(refused(&[]).contains("--measured"));
    assert!(refused(&["--measured", "spread=-460"]).contains("spread=-460"));
}
