//! Taking a datum away never makes an answer good that was not.
//!
//! Without a datum nobody knows: a *no* may become *check first*, since a *no* too has to be known. It may become nothing better,
//! and what was *check first* or work stays at least that. The law holds against the datum as it is and against others that may
//! stand in its place: a number is tried a third and three times as large.

use std::collections::BTreeMap;

use fitup_core::build::{Build, Side};
use fitup_core::finding::{Question, Verdict};
use fitup_core::fit::{Desk, judge};
use fitup_core::item::{AdapterId, ItemRef, SiteId, TrailerId};
use fitup_core::search::Searcher;
use serde_json::Value;

use super::tree::{Asked, TABLES, builds, demo, desk, verdicts};

/// What is no datum about the thing: its name, how it is told apart, what it costs, whether it is there;
/// what its maker requires and excludes: one that states nothing requires nothing; and what is on a machine, and does there:
/// equipment that states no change changes nothing.
const NO_DATA: [&str; 23] = [
    "id",
    "label",
    "series",
    "years",
    "note",
    "price",
    "stock",
    "name",
    "notice",
    "role",
    "source",
    "tolerance",
    "shapes",
    "assemblies",
    "listed_with",
    "requires",
    "fitted",
    "machines",
    "needs",
    "blocks",
    "hides",
    "changes",
    "excludes",
];

/// Dimensions of joints. Where the guide proves the joint they only confirm it, and a wrong one contradicts: no other is tried.
const JOINTS: [&str; 4] = ["/hook_rack/", "/bolt_pattern/", "/seat_base/", "/pins/"];

/// Data that a row has to state whole, as far as the catalogue's own check says.
const WHOLE: [&str; 3] = ["pose", "holes", "points"];

/// Shares of a number that are tried in its place.
const INSTEAD: [f64; 2] = [1.0 / 3.0, 3.0];

/// Builds that are asked about each datum.
const BUILDS: usize = 3;

/// Every path of a datum below a row, as JSON pointers. Of what is alike in a list, the first stands for all.
fn data(row: &Value, path: &str, all: &mut Vec<String>) {
    match row {
        Value::Object(fields) => {
            for (key, value) in fields.iter().filter(|(key, _)| !NO_DATA.contains(&key.as_str())) {
                let path = format!("{path}/{key}");
                all.push(path.clone());
                if !WHOLE.contains(&key.as_str()) {
                    data(value, &path, all);
                }
            }
        }
        Value::Array(values) => {
            let all_differ = path.ends_with("/ports");
            for (at, value) in values.iter().enumerate().take(if all_differ { values.len() } else { 1 }) {
                data(value, &format!("{path}/{at}"), all);
            }
        }
        _ => {}
    }
}

/// The catalogue without one datum.
fn without(catalogue: &Value, path: &str) -> Value {
    let mut changed = catalogue.clone();
    let (parent, key) = path.rsplit_once('/').expect("a path below a row");
    if let Some(fields) = changed.pointer_mut(parent).and_then(Value::as_object_mut) {
        fields.remove(key);
    }
    changed
}

/// The catalogue with other numbers in the datum's place.
fn instead(catalogue: &Value, path: &str) -> Vec<Value> {
    let is_joints = JOINTS.iter().any(|joint| path.contains(joint));
    let datum = catalogue.pointer(path).and_then(Value::as_f64).filter(|_| !is_joints);
    let scaled = |share: f64| {
        let mut changed = catalogue.clone();
        *changed.pointer_mut(path).expect("it is there") = Value::from(datum? * share);
        Some(changed)
    };
    INSTEAD.into_iter().filter_map(scaled).collect()
}

/// A path without the numbers in it: which datum it is, of whatever row.
fn kind(path: &str) -> String {
    path.split('/').filter(|part| !part.is_empty() && part.parse::<usize>().is_err()).collect::<Vec<_>>().join("/")
}

/// What nobody may come out better than: a *no* has to be known.
fn open(verdict: Verdict) -> Verdict {
    verdict.min(Verdict::CheckFirst)
}

/// The demonstration catalogue without what is only drawn: it is read some thousand times.
fn undrawn() -> Value {
    let mut catalogue = demo();
    for table in TABLES {
        for row in catalogue[table].as_array_mut().expect("a table") {
            if let Some(shapes) = row.get_mut("shapes").and_then(Value::as_array_mut) {
                shapes.retain(|shape| shape["clearance"] != false || shape["view"] != "side");
            }
        }
    }
    catalogue
}

/// The best builds that each adapter takes part in, a few for each.
fn with_adapters(desk: &Desk) -> Vec<Asked> {
    let mut all = Vec::new();
    for adapter in (0..desk.catalogue().adapters.len()).map(AdapterId::at) {
        let side = Side {
            adapters: vec![adapter],
            trailer: Some(TrailerId::at(0)),
            site: Some(SiteId::at(0)),
            ..Side::default()
        };
        let found = Searcher::new(desk).reachable(&Build { side, ..Build::default() });
        let steps = [&found.machines, &found.carrying, &found.seats, &found.implements];
        let mut reached: Vec<_> = steps.into_iter().flatten().flatten().collect();
        reached.retain(|reach| judge(desk, &reach.build).stack.holds(ItemRef::Adapter(adapter)));
        reached.sort_by_key(|reach| reach.verdict);
        let mut builds: Vec<Build> = reached.into_iter().map(|reach| reach.build.clone()).collect();
        builds.dedup();
        all.extend(builds.into_iter().take(BUILDS).map(|build| Asked::of(desk, &build)));
    }
    all
}

/// Takes every datum of a table away; at least so many have to be tried, and so many answers compared.
fn taking_away_makes_none_good(table: &str, least: [usize; 2]) {
    let catalogue = undrawn();
    let whole = desk(&catalogue).expect("the demonstration catalogue is sound");
    let asked = if table == "adapters" { with_adapters(&whole) } else { builds(&whole, 97) };
    let before: Vec<_> =
        asked.iter().map(|asked| verdicts(&judge(&whole, &asked.in_catalogue(&whole).expect("its own")))).collect();
    let (mut tried, mut needed, mut compared) = (0, 0, 0);
    let mut faults: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for (at, row) in catalogue[table].as_array().into_iter().flatten().enumerate() {
        let id = row["id"].as_str().expect("a row has an id");
        let mut paths = Vec::new();
        data(row, &format!("/{table}/{at}"), &mut paths);
        let with: Vec<usize> = (0..asked.len()).filter(|&at| asked[at].ids.iter().any(|known| known == id)).collect();
        let with: Vec<usize> = with.iter().copied().step_by((with.len() / BUILDS).max(1)).take(BUILDS).collect();
        for path in &paths {
            let Some(poorer) = desk(&without(&catalogue, path)) else {
                needed += 1;
                continue;
            };
            tried += 1;
            let others: Vec<_> = instead(&catalogue, path).iter().filter_map(desk).collect();
            for &at in &with {
                let Some(build) = asked[at].in_catalogue(&poorer) else { continue };
                let after = verdicts(&judge(&poorer, &build));
                let of = |desk| Some(verdicts(&judge(desk, &asked[at].in_catalogue(desk)?)));
                for before in std::iter::once(before[at]).chain(others.iter().filter_map(of)) {
                    compared += 1;
                    for (question, (before, after)) in Question::ALL.into_iter().zip(before.into_iter().zip(after)) {
                        if open(after) < open(before) {
                            let fault = format!("{id}{path}: {question:?} {before:?} -> {after:?}");
                            let fault = format!("{fault} ({})", asked[at].ids.join(" "));
                            faults.entry(format!("{} {question:?}", kind(path))).or_default().push(fault);
                        }
                    }
                }
            }
        }
    }
    println!("{table}: {tried} data taken away ({needed} more are required), {compared} answers compared");
    let told: Vec<String> = faults.iter().map(|(kind, of)| format!("{kind}: {} such as {}", of.len(), of[0])).collect();
    assert!(faults.is_empty(), "{} counterexamples:\n{}", faults.len(), told.join("\n"));
    assert!(tried >= least[0] && compared >= least[1], "{tried} {compared}");
}

// A table a test, so that they run beside each other.

#[test]
fn taking_a_datum_of_a_machine_away_makes_no_answer_good() {
    taking_away_makes_none_good("machines", [150, 600]);
}

#[test]
fn taking_a_datum_of_a_frame_away_makes_no_answer_good() {
    taking_away_makes_none_good("frames", [40, 150]);
}

#[test]
fn taking_a_datum_of_a_seat_away_makes_no_answer_good() {
    taking_away_makes_none_good("seats", [15, 40]);
}

#[test]
fn taking_a_datum_of_an_implement_away_makes_no_answer_good() {
    taking_away_makes_none_good("implements", [150, 500]);
}

#[test]
fn taking_a_datum_of_an_adapter_away_makes_no_answer_good() {
    taking_away_makes_none_good("adapters", [90, 250]);
}

#[test]
fn taking_a_datum_of_equipment_away_makes_no_answer_good() {
    taking_away_makes_none_good("equipment", [10, 30]);
}

#[test]
fn taking_a_datum_of_a_trailer_away_makes_no_answer_good() {
    taking_away_makes_none_good("trailers", [30, 100]);
}

#[test]
fn taking_a_datum_of_a_site_away_makes_no_answer_good() {
    taking_away_makes_none_good("sites", [10, 30]);
}
