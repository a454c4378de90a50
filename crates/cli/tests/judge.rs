//! `fitup judge` on the demonstration yard.
//!
//! Covers: cli/src/judge, words/src/report, cli/src/judge.
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
    assert!(out(&other_seat).starts_with("Bolts up · Not listed\n"), "{}", out(&other_seat));
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
        (&["judge", BUILDS, "--machine", "wren"], "cannot be used; “fitup check "),
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
    assert!(
        err(&lang).contains("there is no language \"nl\" here; there are: en, en-US, de, es, fr"),
        "{}",
        err(&lang)
    );
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
    assert!(refused("cut.json", r#"{"format": 1, "mach"#).contains("cut.json:1:15: This is not JSON"));
}

#[test]
fn a_build_that_only_begins_is_not_decided_and_says_what_can_still_come_of_it() {
    let output = fitup(&["judge", CATALOGUE, "--machine", "wren", "--format", "short"]);
    assert_eq!(output.status.code(), Some(1));
    let told = "Not decided yet · Not all four steps are answered yet\nWren, open\n  At best: Bolts up\n  Fit: not decided yet\n";
    assert!(out(&output).starts_with(told), "{}", out(&output));
}

#[test]
fn what_was_found_on_a_unit_can_be_said_and_is_told_again() {
    let item = "sparrow-frame";
    let options = ["--read", "axle plate=XX-1", "--read-by", "the workshop", "--not-there", "axle plate/hole-1"];
    let more = ["--measured", "sparrow-frame/axle plate/hole-2-diameter=13.4; 13.8 caliper", "--format", "json"];
    let all = [&options[..], &["--serial", "sparrow-frame=120"], &more].concat();
    let report: Value = serde_json::from_str(&out(&judged("listed", &all))).expect("JSON");
    let units = &report["build"]["units"];
    assert_eq!(units["numbers_read"][0]["parts"][0], "XX-1");
    assert_eq!((&units["measured"][0]["mm"], &units["measured"][0]["plus_minus_mm"]), (&13.6.into(), &0.2.into()));
    assert_eq!((&units["looked"][0]["there"], &units["serials"][item]), (&false.into(), &120.into()));
    let findings = report["findings"].as_array().expect("findings");
    let told = findings.iter().find(|finding| finding["code"] == "number-read-differs").expect("it is told");
    assert_eq!((&told["verdict"], &told["evidence"]["read"][0]["by"]), (&"check-first".into(), &"the workshop".into()));
}

#[test]
fn what_cannot_be_a_measurement_is_refused_with_what_where_and_the_mend() {
    for (said, words) in [
        ("rack/diameter=-51.6", &["not above zero"][..]),
        ("rack/diameter=2 1/32", &["fraction", "2 1/32 in"]),
        ("rack/diameter=100000000 mm", &["longer than 100"]),
        ("rack/diameter=51.6 ± 60", &["above the length itself"]),
        ("rack/girth=51.6", &["no dimension \"girth\"", "diameter"]),
        ("girth/diameter=51.6", &["no port \"girth\"", "/rack"]),
        ("rack", &["write PORT/DIMENSION=LENGTH"]),
    ] {
        let text = err(&judged("listed", &["--measured", said]));
        assert!(words.iter().all(|word| text.contains(word)) && text.contains(said), "{said}: {text}");
    }
    let text = err(&judged("listed", &["--serial", "120"]));
    assert!(text.contains("hedge-tractor=120"), "{text}");
}
