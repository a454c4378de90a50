//! `fitup sets` on the demonstration yard.
//!
//! Covers: cli/src/sets.rs, words/src/report/sets.rs.

use std::process::{Command, Output};

use serde_json::Value;

const CATALOGUE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");

fn sets(more: &[&str]) -> Output {
    let arguments = [&["sets", CATALOGUE], more].concat();
    Command::new(env!("CARGO_BIN_EXE_fitup")).args(arguments).output().expect("the command runs")
}

fn data(more: &[&str]) -> Value {
    let output = sets(&[more, &["--format", "json"]].concat());
    serde_json::from_slice(&output.stdout).unwrap_or_else(|why| panic!("{why}: {output:?}"))
}

#[test]
fn sets_come_by_answer_and_then_as_asked() {
    for (by, figure, sign) in
        [("price", "buy", 1.0), ("length", "length_mm", 1.0), ("departure", "departure_deg", -1.0)]
    {
        let told = data(&["--machine", "wren", "--by", by]);
        let rows = told["sets"].as_array().expect("a list");
        assert!(told["exact"] == true && rows.len() > 2, "{told}");
        let best: Vec<&Value> = rows.iter().filter(|row| row["verdict"] == rows[0]["verdict"]).collect();
        let figures: Vec<f64> = best
            .iter()
            .filter(|row| row["without_price"] == best[0]["without_price"])
            .filter_map(|row| row[figure].as_f64())
            .collect();
        assert!(figures.windows(2).all(|pair| sign * pair[0] <= sign * pair[1]), "{by}: {figures:?}");
        assert!(rows.iter().all(|row| row["build"]["machine"] == "wren"));
        assert_eq!(rows[0]["unbeaten"], true, "nothing stands before the first");
    }
}

#[test]
fn the_text_names_items_and_what_they_come_to() {
    let output = sets(&["--machine", "wren", "--implement", "badger-arm"]);
    let text = String::from_utf8(output.stdout).expect("text");
    assert!(output.status.success() && text.starts_with(" 1. ") && text.contains("Departure angle"), "{text}");
    let none = sets(&["--machine", "zzz"]);
    assert!(none.status.code() == Some(2) && none.stdout.is_empty());
}
