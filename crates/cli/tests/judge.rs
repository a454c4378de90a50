//! `fitup judge` and `fitup matrix` on the demonstration yard.
//!
//! The answers as printed are snapshots: a change of the yard or of the words shows in them and is read
//! before it is taken over with `INSTA_UPDATE=always`.

use std::path::Path;
use std::process::{Command, Output};

use serde_json::Value;

const CATALOGUE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");
const BUILDS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo-builds.json");

fn fitup(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_fitup")).args(arguments).output().expect("the command runs")
}

fn out(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("text")
}

fn err(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).expect("text")
}

fn judged(name: &str, more: &[&str]) -> Output {
    fitup(&[&["judge", CATALOGUE, BUILDS, "--build", name], more].concat())
}

fn stories() -> Vec<(String, String)> {
    let text = std::fs::read_to_string(BUILDS).expect("the builds are there");
    let list: Vec<Value> = serde_json::from_str(&text).expect("a list");
    let word = |story: &Value, key: &str| story[key].as_str().expect("text").to_owned();
    list.iter().map(|story| (word(story, "name"), word(story, "story"))).collect()
}

#[test]
fn every_story_is_told_in_a_few_sentences() {
    let told: Vec<String> = stories()
        .iter()
        .map(|(name, story)| format!("# {name}: {story}\n{}", out(&judged(name, &["--format", "short"]))))
        .collect();
    insta::assert_snapshot!(told.join("\n"));
}

#[test]
fn a_set_that_needs_work_is_told_in_full() {
    insta::assert_snapshot!(out(&judged("two-holes", &[])));
}

#[test]
fn a_set_with_missing_data_is_told_in_full_in_us_units() {
    insta::assert_snapshot!(out(&judged("missing-data", &["--units", "us"])));
}

#[test]
fn a_set_that_will_not_mount_is_told_in_full_in_german() {
    insta::assert_snapshot!(out(&judged("another-seat", &["--lang", "de"])));
}

#[test]
fn the_exit_code_says_whether_it_bolts_up() {
    let code = |name: &str| judged(name, &["--format", "short"]).status.code();
    assert_eq!(code("listed"), Some(0));
    assert_eq!(code("two-holes"), Some(0));
    assert_eq!(code("missing-data"), Some(1));
    assert_eq!(code("no-adapter"), Some(1));
}

#[test]
fn the_data_carry_the_verdict_every_finding_and_its_sentences() {
    for (name, _) in stories() {
        let output = judged(&name, &["--format", "json"]);
        let report: Value = serde_json::from_slice(&output.stdout).expect("JSON");
        let short = out(&judged(&name, &["--format", "short"]));
        let word = report["verdict_text"].as_str().expect("a word");
        assert!(short.starts_with(&format!("{word} · ")), "{name}: {short}");
        let findings = report["findings"].as_array().expect("a list");
        assert!(!findings.is_empty(), "{name}");
        for finding in findings {
            assert!(finding["shopper"].as_str().is_some_and(|text| text.ends_with('.')), "{name}: {finding}");
            assert!(finding["workshop"].as_array().is_some_and(|lines| !lines.is_empty()), "{name}: {finding}");
            assert!(finding["figures"].is_object() && finding["evidence"]["grade"].is_string(), "{name}: {finding}");
        }
        let told: usize = report["joints"]
            .as_array()
            .expect("a list")
            .iter()
            .map(|joint| joint["findings"].as_array().map_or(0, Vec::len))
            .sum();
        let of_joints = findings.iter().filter(|finding| finding["subject"]["kind"] == "joint").count();
        assert_eq!(told, of_joints, "{name}: every finding of a joint is in its joint");
    }
}

#[test]
fn the_data_keep_the_order_of_their_fields_and_units_in_their_names() {
    let output = out(&judged("listed", &["--format", "json"]));
    let places: Vec<usize> =
        ["\"format\"", "\"catalogue\"", "\"verdict\"", "\"findings\"", "\"joints\"", "\"footprint\""]
            .iter()
            .map(|key| output.find(key).unwrap_or_else(|| panic!("{key} is missing")))
            .collect();
    assert!(places.is_sorted(), "{places:?}");
    let report: Value = serde_json::from_str(&output).expect("JSON");
    assert!(report["footprint"]["length_mm"].as_f64().is_some_and(|mm| mm > 1000.0));
    assert!(report["footprint"].as_object().is_some_and(|figures| figures.contains_key("departure_deg")));
}

#[test]
fn options_name_a_build_and_stand_over_a_file() {
    let arguments = ["judge", CATALOGUE, "--machine", "wren", "--frame", "hitch", "--seat", "driving-seat"];
    let auger = fitup(&[&arguments[..], &["--implement", "mole-auger", "--format", "short"]].concat());
    assert_eq!(auger.status.code(), Some(0), "{}", out(&auger));
    assert!(out(&auger).starts_with("Bolts up · Listed\n"), "{}", out(&auger));
    let other_seat = judged("another-seat", &["--seat", "turning-seat", "--format", "short"]);
    assert!(out(&other_seat).starts_with("Bolts up · Off-guide\n"), "{}", out(&other_seat));
}

#[test]
fn what_cannot_be_run_says_where_what_and_the_mend() {
    let cases: &[(&[&str], &str)] = &[
        (&["judge", CATALOGUE], "no build is given; give a build's JSON file, or --machine"),
        (
            &["judge", CATALOGUE, "--machine", "wrem"],
            "there is no machine \"wrem\" in this catalogue; did you mean \"wren\"?",
        ),
        (
            &["judge", CATALOGUE, "--frame", "nothing-like-it"],
            "there is no frame \"nothing-like-it\" in this catalogue; it has: ",
        ),
        (&["judge", CATALOGUE, BUILDS], "is a list of builds; say which with --build: listed, "),
        (&["judge", CATALOGUE, BUILDS, "--build", "listd"], "has no build called \"listd\"; did you mean \"listed\"?"),
        (&["judge", CATALOGUE, "--build", "listed"], "give the list's file after the catalogue"),
        (&["judge", BUILDS, "--machine", "wren"], "cannot be used; \"fitup check "),
        (&["judge", "no-such-file.json", "--machine", "wren"], "no-such-file.json: "),
        (&["judge", CATALOGUE, "no-such-build.json"], "no-such-build.json: "),
    ];
    for (arguments, told) in cases {
        let output = fitup(arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        assert!(output.stdout.is_empty(), "{arguments:?} prints nothing it was asked for");
        assert!(err(&output).contains(told), "{arguments:?}: {}", err(&output));
    }
    let lang = fitup(&["judge", CATALOGUE, "--machine", "wren", "--lang", "nl"]);
    assert_eq!(lang.status.code(), Some(2));
    assert!(err(&lang).contains("there is no language \"nl\" here; there are: en, de, es, fr"), "{}", err(&lang));
}

#[test]
fn a_build_of_a_newer_format_or_with_a_wrong_field_is_refused_with_its_place() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"));
    let refused = |name: &str, text: &str| {
        let path = folder.join(name);
        std::fs::write(&path, text).expect("the folder can be written");
        let output = fitup(&["judge", CATALOGUE, path.to_str().expect("a path of text")]);
        assert_eq!(output.status.code(), Some(2), "{name}");
        err(&output)
    };
    assert!(refused("newer.json", r#"{"format": 9}"#).contains("newer than format 1 that this program reads"));
    assert!(refused("field.json", r#"{"format": 1, "machine": 7}"#).contains("(machine)"));
    assert!(refused("cut.json", r#"{"format": 1, "mach"#).contains("cut.json: "));
}

#[test]
fn a_build_that_only_begins_is_judged_as_far_as_it_goes() {
    let output = fitup(&["judge", CATALOGUE, "--machine", "wren", "--format", "short"]);
    assert_eq!(output.status.code(), Some(0));
    assert!(out(&output).starts_with("Bolts up · Not all four steps are answered yet\n"), "{}", out(&output));
}

#[test]
fn the_matrix_has_a_cell_for_every_machine_with_every_implement() {
    let output = fitup(&["matrix", CATALOGUE, "--format", "json"]);
    assert_eq!(output.status.code(), Some(0));
    let cells: Vec<Value> = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(cells.len(), 60);
    let cell = |machine: &str, implement: &str| {
        cells.iter().find(|cell| cell["machine"] == machine && cell["implement"] == implement).expect("a cell")
    };
    assert_eq!(cell("wren", "badger-arm")["verdict"], "bolts-up");
    assert!(cell("wren", "badger-arm")["reason"].is_null());
    let blocked = cell("wren", "otter-arm");
    assert_eq!(blocked["verdict"], "wont-mount");
    assert!(blocked["reason"].is_string());
    let builds =
        |cell: &Value| cell["builds"].as_array().map(|counts| counts.iter().filter_map(Value::as_u64).sum::<u64>());
    // Six frames and the hitch, six seats.
    assert_eq!(builds(blocked), Some(42));
    insta::assert_snapshot!(out(&fitup(&["matrix", CATALOGUE, "--format", "short"])));
}
