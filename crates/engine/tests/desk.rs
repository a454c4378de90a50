//! The desk, an unknown unit and builds side by side, asked as a page asks for them.
//!
//! Covers: engine/src/shown/desk.rs, engine/src/shown/taken.rs, engine/src/shown/identify.rs, engine/src/shown/compare.rs.

use fitup_catalogue::{BuildFile, link};
use fitup_engine::Engine;
use fitup_view::{
    Ask, Compare, Desk, Edit, Entry, Field, Identify, Kind, Look, Observed, Part, Place, Reader, Sheet, Step, Tool,
    Units, Verdict, View,
};
use fitup_words::{Lang, texts};

const CATALOGUE: &str = include_str!("../../../www/catalogue/demo.json");

fn engine() -> Engine {
    let mut engine = Engine::default();
    assert!(engine.teach("en", texts(Lang::En).to_owned()) && engine.read(CATALOGUE.as_bytes()).is_usable);
    engine
}

fn link_of(machine: &str, frame: &str, seat: &str, implement: &str) -> String {
    let [machine, frame, seat, implement] = [machine, frame, seat, implement].map(|id| Some(id.to_owned()));
    link::write(&BuildFile { machine, frame, seat, implement, ..BuildFile::default() })
}

/// A used arm of which nothing is stated.
fn used_arm() -> String {
    link_of("heron", "crane-frame", "rear-seat", "otter-arm-first")
}

fn listed() -> String {
    link_of("wren", "sparrow-frame", "rear-seat", "badger-arm")
}

fn sheet(build: String, edits: Vec<Edit>, look: Look) -> Sheet {
    let look = Look { room: Some((800, 400)), bench: Some((400, 150)), ..look };
    let reader = Reader { units: Units::Metric, ..Reader::default() };
    match engine().ask(Ask { build, edits, look, reader, ..Ask::default() }).map(|reply| reply.part) {
        Some(Part::Sheet(sheet)) => *sheet,
        other => panic!("the sheet comes first, not {other:?}"),
    }
}

fn desk_of(sheet: Sheet) -> Desk {
    match sheet.field {
        Field::Desk(desk) => *desk,
        other => panic!("the desk is looked at, not {other:?}"),
    }
}

fn length(reading: &str, unit: Units) -> Entry {
    let readings = vec![reading.to_owned()];
    Entry::Length { readings, unit, plus_minus: String::new(), tool: Tool::Caliper, note: String::new() }
}

fn measuring(tasks: Vec<u64>) -> Look {
    Look { view: View::Measure, tasks, ..Look::default() }
}

#[test]
fn the_desk_asks_for_what_is_open_and_goes_on_once_it_is_entered() {
    let desk = desk_of(sheet(used_arm(), Vec::new(), measuring(Vec::new())));
    let now = desk.now.clone().expect("something is open");
    assert_eq!((now.kind, now.name.as_str()), (Kind::Numbers, "part number"));
    assert_eq!(now.says[1], "Fit now: Check first. With this it comes to: Bolts up.");
    assert!(now.picture.svg.starts_with("<svg") && desk.taken.is_empty() && desk.tasks.len() > 5);
    assert_eq!(
        desk.tasks[1].of, "Otter digging arm, first series (used), hooks",
        "first the unit of which less is known"
    );
    let second = desk_of(sheet(used_arm(), Vec::new(), measuring(vec![desk.tasks[1].key])));
    let at = second.now.clone().expect("it is gone to").at;
    assert_eq!((at.item.as_str(), at.what.as_str()), ("otter-arm-first", "diameter"));
    let enter = Edit::Enter { at, found: length("51.6", Units::Metric), sure: false };
    let after = desk_of(sheet(used_arm(), vec![enter], measuring(second.from_here())));
    assert_eq!(after.taken[0].line, "Otter digging arm, first series (used), diameter: 51.6\u{a0}mm (caliper)");
    assert_eq!(after.now.map(|now| now.at.what), second.tasks.get(2).map(|_| "latch".to_owned()));
    assert!(after.progress.starts_with("3 of "), "{}", after.progress);
}

#[test]
fn where_nothing_is_open_the_desk_says_so() {
    let desk = desk_of(sheet(listed(), Vec::new(), measuring(Vec::new())));
    assert!(desk.now.is_none() && desk.tasks.is_empty());
    assert!(desk.progress.starts_with("Nothing is open"), "{}", desk.progress);
}

#[test]
fn an_opened_joint_has_the_same_desk_for_its_two_ports() {
    let closed = sheet(listed(), Vec::new(), Look::default());
    let rack = closed.rows.iter().find(|row| row.name == "implement carrier").expect("the arm hangs on the rack");
    let opened = sheet(listed(), Vec::new(), Look { opened: Some(rack.key), ..Look::default() });
    let joint = opened.rows.iter().find_map(|row| row.joint.as_ref()).expect("it is opened");
    let desk = joint.desk.as_ref().expect("nothing else shows one");
    assert!(desk.tasks.iter().all(|task| task.of.ends_with("rack") || task.of.ends_with("hooks")));
    assert_eq!(desk.tasks.len(), 2 * (5 + 2), "five lengths, numbers and presence on each side");
}

fn identify_of(observed: Observed) -> Identify {
    match sheet(String::new(), Vec::new(), Look { view: View::Identify, observed, ..Look::default() }).field {
        Field::Identify(view) => *view,
        other => panic!("the unknown unit is looked at, not {other:?}"),
    }
}

#[test]
fn an_unknown_unit_is_ranked_by_what_is_found_and_asked_what_tells_most() {
    let nothing = identify_of(Observed { kind: Some("hook".into()), ..Observed::default() });
    assert!(nothing.candidates.is_empty() && nothing.says.is_some());
    let at = |what: &str| Place { what: what.into(), ..Place::default() };
    let mut observed = Observed { kind: Some("hook".into()), found: Vec::new() };
    observed.take(at("spread"), Kind::Length, length("580", Units::Metric));
    observed.take(at("drop"), Kind::Length, length("three hundred", Units::Metric));
    let view = identify_of(observed.clone());
    assert!(view.candidates.iter().all(|it| it.name.contains("hooks")), "a bar has no hooks");
    assert_eq!(view.desk.taken.iter().map(|taken| taken.is_wrong).collect::<Vec<_>>(), [false, true]);
    let first = view.desk.now.as_ref().expect("something is asked next");
    assert!(view.next[0].to_lowercase().contains(&first.name.to_lowercase()), "{} {}", view.next[0], first.name);
    let arm = view.candidates.iter().find(|it| it.item == "otter-arm").expect("its hooks are as far apart");
    assert_eq!(arm.step, Some(Step::Implement));
    let recognise = Edit::Recognise { item: arm.item.clone(), port: arm.port.clone() };
    let picked = sheet(String::new(), vec![recognise], Look { observed, ..Look::default() });
    assert_eq!(picked.steps[3].item.as_deref(), Some("otter-arm"));
    let (file, outcome) = (link::read(&picked.outcomes[0].build).expect("our own link"), &picked.outcomes[0]);
    assert!(file.measured.len() == 1 && outcome.refusal.is_none(), "what was measured goes with it");
}

fn compare_of(build: String, pinned: Vec<String>) -> Compare {
    match sheet(build, Vec::new(), Look { view: View::Compare, pinned, ..Look::default() }).field {
        Field::Compare(view) => *view,
        other => panic!("the builds are looked at, not {other:?}"),
    }
}

#[test]
fn builds_stand_side_by_side_with_what_differs_marked() {
    let alone = compare_of(listed(), Vec::new());
    assert!(alone.says.is_some() && alone.builds.len() == 1);
    let other = link_of("wren", "sparrow-frame", "rear-seat", "otter-arm");
    let view = compare_of(listed(), vec![other.clone()]);
    assert_eq!((view.builds[0].name.as_str(), view.builds[1].name.as_str()), ("Now", "A"));
    assert_eq!(view.builds[1].build, other);
    assert_eq!(
        view.builds.iter().map(|it| it.headline.verdict).collect::<Vec<_>>(),
        [Some(Verdict::BoltsUp), Some(Verdict::WontMount)]
    );
    let row = |name: &str| view.rows.iter().find(|row| row.name == name).unwrap_or_else(|| panic!("{name}"));
    assert!(!row("Machine").differs && row("Implement").differs && row("Fit").differs && row("To buy").differs);
    assert!(view.rows.iter().all(|row| row.values.len() == 2) && view.picture.svg.contains(">A</text>"));
    let same = compare_of(listed(), vec![listed()]);
    assert!(same.says.is_some() && same.rows.iter().all(|row| !row.differs));
}
