//! The demonstration yard and its stories, as every test that stands on them reads them.

use fitup_catalogue::{BuildFile, link};
use fitup_core::build::Build;
use fitup_core::fit::Desk;
use serde_json::Value;

/// The text of the demonstration catalogue.
pub const CATALOGUE: &str = include_str!("../../www/catalogue/demo.json");
const TOLD: &str = include_str!("../../www/catalogue/demo-builds.json");

/// The name of each story.
pub const STORIES: [&str; 12] = [
    "listed",
    "shared-parts",
    "measured",
    "sleeve",
    "two-holes",
    "another-seat",
    "no-adapter",
    "three-changes",
    "light-front",
    "ramp",
    "missing-data",
    "loader-base",
];

/// The demonstration catalogue with two words misspelt.
pub fn broken() -> String {
    CATALOGUE.replacen("\"mass\"", "\"mas\"", 1).replacen("\"label\"", "\"lable\"", 1)
}

/// The demonstration catalogue, laid out.
///
/// # Panics
/// If it has a mistake.
pub fn desk() -> Desk {
    let reading = fitup_catalogue::read(CATALOGUE);
    assert!(reading.problems.is_empty(), "{:?}", reading.problems);
    Desk::new(reading.catalogue.expect("a catalogue without problems is whole"))
}

/// The build of a story.
///
/// # Panics
/// If no story has the name, or it names what the catalogue does not hold.
pub fn story(desk: &Desk, name: &str) -> Build {
    let stories: Vec<Value> = serde_json::from_str(TOLD).expect("the stories are JSON");
    let told = stories.iter().find(|story| story["name"] == name);
    let story = told.unwrap_or_else(|| panic!("no story {name:?}"));
    let file = BuildFile::read(&story["build"].to_string()).expect("the story holds a build");
    let (build, unresolved) = file.resolve(desk.catalogue());
    assert!(unresolved.is_empty(), "{name}: {unresolved:?}");
    build
}

/// The fragment of an address that opens a build.
pub fn fragment(desk: &Desk, build: &Build) -> String {
    format!("#fit-up={}", link::write(&BuildFile::of(desk.catalogue(), build)))
}

/// The names of all stories, in the order they are told.
///
/// # Panics
/// If a story has none.
pub fn names() -> Vec<String> {
    let stories: Vec<Value> = serde_json::from_str(TOLD).expect("the stories are JSON");
    stories.iter().map(|story| story["name"].as_str().expect("a story has a name").to_owned()).collect()
}
