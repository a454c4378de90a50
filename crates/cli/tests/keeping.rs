//! The commands of a catalogue's keeper from outside, in the order of the manual: `KEEPING.md` beside the catalogue's crate.
//!
//! Covers: cli/src/preview.rs, cli/src/coverage.rs, cli/src/diff.rs, cli/src/form.rs.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::Value;

const EXAMPLE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../catalogue/tests/minimal.json");
const DEMO: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");

fn fitup(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_fitup")).args(arguments).output().expect("the command starts")
}

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("the folder is ours");
    }
    fs::create_dir_all(&folder).expect("the folder is ours");
    folder
}

fn text(path: &Path) -> &str {
    path.to_str().expect("the path is text")
}

fn said(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("what is printed is text")
}

#[test]
fn every_command_takes_a_workbook() {
    let folder = folder("keeping-forms");
    let book = folder.join("yard.xlsx");
    assert!(fitup(&["convert", EXAMPLE, text(&book)]).status.success());
    for (command, code) in [("check", 0), ("matrix", 0), ("coverage", 1)] {
        let output = fitup(&[command, text(&book)]);
        assert_eq!(output.status.code(), Some(code), "{command}: {output:?}");
    }
    let judge = fitup(&["judge", text(&book), "--machine", "small-open", "--implement", "small-arm"]);
    assert_eq!(judge.status.code(), Some(1), "{judge:?}");
    assert!(said(&judge).contains("Small, open"), "{judge:?}");
}

#[test]
fn coverage_ranks_what_is_missing_by_the_answers_it_holds_back() {
    let data: Value = serde_json::from_str(&said(&fitup(&["coverage", DEMO, "--json"]))).unwrap();
    let counts: Vec<u64> =
        data["reasons"].as_array().unwrap().iter().map(|it| it["answers"].as_u64().unwrap()).collect();
    assert!(!counts.is_empty() && counts.is_sorted_by(|a, b| a >= b), "{counts:?}");
    assert!(counts[0] <= data["open"].as_u64().unwrap());
    let output = fitup(&["coverage", EXAMPLE]);
    let told = said(&output);
    assert_eq!(output.status.code(), Some(1));
    assert!(told.starts_with("Machines with implements: 1; of these at best “check first”: 1."), "{told}");
    // The set is listed, and its rack's list is headed “Rack” where the port is named “rack”.
    assert!(told.contains("small-frame: Rack"), "{told}");
    let set =
        told.lines().find(|line| line.contains("Small frame") && line.contains("Check first")).expect("the listed set");
    assert!(set.trim_start().starts_with("1 "), "{set}");
}

#[test]
fn diff_tells_rows_and_answers_that_changed() {
    let folder = folder("keeping-diff");
    let after = folder.join("after.json");
    let changed = fs::read_to_string(EXAMPLE).unwrap().replace("\"rated\": 1500, \"tyre", "\"rated\": 500, \"tyre");
    let changed = changed.replace("\"id\": \"churchyard\"", "\"id\": \"old-churchyard\"");
    fs::write(&after, changed).unwrap();
    let told = said(&fitup(&["diff", EXAMPLE, text(&after)]));
    for line in [
        "machines small-open: changed: rear",
        "sites churchyard: removed",
        "sites old-churchyard: added",
        "small-open + small-arm: Check first → Won’t mount",
    ] {
        assert!(told.contains(line), "{line}: {told}");
    }
    let same = fitup(&["diff", EXAMPLE, EXAMPLE, "--json"]);
    assert_eq!(same.status.code(), Some(0));
    assert_eq!(serde_json::from_str::<Value>(&said(&same)).unwrap(), serde_json::json!({"rows": [], "answers": []}));
}

#[test]
fn several_files_are_checked_in_one_call_and_second_places_are_shown() {
    let folder = folder("keeping-check");
    let bad = folder.join("bad.json");
    fs::write(&bad, fs::read_to_string(EXAMPLE).unwrap().replace("\"id\": \"churchyard\"", "\"id\": \"small-open\""))
        .unwrap();
    let output = fitup(&["check", EXAMPLE, text(&bad)]);
    assert_eq!(output.status.code(), Some(1));
    let told = said(&output);
    assert!(told.contains("minimal.json: ") && told.contains("^^^^^^^^^^^^"), "{told}");
    assert!(told.contains("  ::: ") && told.contains("is taken by line 10, column 5"), "{told}");
    let data: Value = serde_json::from_str(&said(&fitup(&["check", EXAMPLE, text(&bad), "--format", "json"]))).unwrap();
    assert_eq!(data[1]["problems"][0]["other"]["line"], 10);
}

#[test]
fn the_preview_draws_every_item_with_its_ports() {
    let output = fitup(&["preview", EXAMPLE]);
    assert_eq!(output.status.code(), Some(0), "{output:?}");
    let page = said(&output);
    assert_eq!(page.matches("<section>").count(), 7, "one for each item");
    for held in ["Small, open", ">axle pads</text>", "class=\"hole\"", "x →, z ↑"] {
        assert!(page.contains(held), "{held}");
    }
    // Machine and frame have four holes each and the loader base two, seen from the side and from above and from behind.
    assert_eq!(page.matches("class=\"hole\"").count(), (4 + 4 + 2) * 3);
    assert!(!page.contains("<script"));
}
