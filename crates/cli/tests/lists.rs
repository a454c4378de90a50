//! `fitup lists` on files and on lists of the demonstration yard.
//!
//! Covers: cli/src/lists.rs, words/src/report/lists.rs, core/src/item/body.rs.

use std::fs;
use std::path::PathBuf;
use std::process::{Command, Output};

use serde_json::Value;

const CATALOGUE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");

/// A file of this text.
fn file(name: &str, text: &str) -> String {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    fs::write(&path, text).expect("the folder is there");
    path.to_str().expect("a plain path").to_owned()
}

fn lists(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_fitup")).arg("lists").args(arguments).output().expect("the command runs")
}

fn text(output: &[u8]) -> String {
    String::from_utf8(output.to_vec()).expect("text")
}

#[test]
fn what_differs_is_named_and_lists_that_are_the_same_say_nothing_more() {
    let first = file("lists-first.csv", "Qty;Part number;Name\n2;HK-7001;hook\n1;PN-20;latch pin\n");
    let second = file("lists-second.txt", "Hooks:\nhk 7001   hook   1\nPN20   latch pin   1\n");
    let told = lists(&[&first, &second]);
    assert_eq!(told.status.code(), Some(1));
    assert_eq!(
        text(&told.stdout),
        "Without a heading: the same numbers in other quantities\n  HK-7001: 2 in the first list, 1 in the second (hook)\n  \
         PN-20 is written PN20 in the second list (latch pin)\n"
    );
    let same = lists(&[&first, &first]);
    assert_eq!((same.status.code(), text(&same.stdout).as_str()), (Some(0), "Without a heading: the same\n"));
}

#[test]
fn a_list_of_the_catalogue_tells_what_follows_for_a_joint() {
    let catalogue: Value = serde_json::from_slice(&fs::read(CATALOGUE).expect("it is there")).expect("JSON");
    let rows = catalogue["parts_lists"].as_array().expect("a table");
    let item = rows[0]["item"].as_str().expect("an id");
    let told = lists(&[item, item, "--catalogue", CATALOGUE, "--format", "json"]);
    let told: Value = serde_json::from_slice(&told.stdout).expect("JSON");
    let assemblies = told["assemblies"].as_array().expect("a list");
    let of_item: Vec<&Value> = rows.iter().filter(|row| row["item"] == item).collect();
    let lines: usize = assemblies.iter().map(|it| it["lines"].as_array().map_or(0, Vec::len)).sum();
    assert!(lines > 0 && lines <= of_item.len());
    assert!(assemblies.iter().all(|assembly| assembly["sameness"] == "same"));
}

#[test]
fn rubbish_is_told_with_file_and_line() {
    let good = file("lists-good.csv", "Part;Qty\nA-1001;1\n");
    let odd = file("lists-odd.csv", "Part;Qty\nA-1001;some\nA-1002;1\n");
    let told = lists(&[&good, &odd]);
    assert!(text(&told.stdout).contains("lists-odd.csv: Line 2: “some” is no quantity"), "{told:?}");
    for text_of_it in ["", "\u{0}\u{1}", "no list at all\n"] {
        let none = file("lists-none.csv", text_of_it);
        let told = lists(&[&good, &none]);
        assert_eq!(told.status.code(), Some(2));
        assert!(text(&told.stderr).contains("lists-none.csv: Line 1: this is no"), "{told:?}");
    }
}

#[test]
fn ten_thousand_lines_are_compared() {
    let lines: Vec<String> = (0..10_000).map(|at| format!("N-{at};part {at};2")).collect();
    let lines = lines.join("\n");
    let first = file("lists-long.csv", &lines);
    let second = file("lists-long-two.csv", &lines.replace("N-7777;part 7777;2", "N-7777;part 7777;3"));
    let told = lists(&[&first, &second]);
    assert_eq!(text(&told.stdout).lines().count(), 2, "the heading and the line that differs");
}
