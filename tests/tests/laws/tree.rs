//! The demonstration catalogue as a tree of values that a law may change, and the builds it is asked about.

use fitup_catalogue::BuildFile;
use fitup_core::build::{Build, Step, options};
use fitup_core::finding::{Question, Verdict};
use fitup_core::fit::{Answer, Desk};
use fitup_tests::stories::CATALOGUE;
use serde_json::Value;

/// The tables whose rows are items, trailers and sites.
pub const TABLES: [&str; 8] =
    ["machines", "frames", "seats", "implements", "adapters", "equipment", "trailers", "sites"];

/// The demonstration catalogue.
pub fn demo() -> Value {
    serde_json::from_str(CATALOGUE).expect("the demonstration catalogue is JSON")
}

/// A catalogue laid out; nothing if it has an error.
pub fn desk(catalogue: &Value) -> Option<Desk> {
    fitup_catalogue::read(&catalogue.to_string()).catalogue.map(Desk::new)
}

/// The worst finding of each question.
pub fn verdicts(answer: &Answer) -> [Verdict; 4] {
    Question::ALL.map(|question| {
        let of = answer.findings.iter().filter(|finding| finding.question == question);
        of.map(|finding| finding.verdict).max().unwrap_or_default()
    })
}

/// A build as a file, so that it can be asked of another catalogue.
pub struct Asked {
    file: BuildFile,
    /// The ids it names.
    pub ids: Vec<String>,
}

impl Asked {
    /// A build of a catalogue.
    pub fn of(desk: &Desk, build: &Build) -> Self {
        Self { ids: ids(desk, build), file: BuildFile::of(desk.catalogue(), build) }
    }

    /// The build as a file.
    pub fn as_file(&self) -> Value {
        serde_json::from_str(&fitup_catalogue::json(&self.file)).expect("a build file is JSON")
    }

    /// The build in a catalogue that still has all it names.
    pub fn in_catalogue(&self, desk: &Desk) -> Option<Build> {
        let (build, unresolved) = self.file.resolve(desk.catalogue());
        unresolved.is_empty().then_some(build)
    }
}

/// Every story, and every `nth` of all complete builds, each with a trailer and a site in turn.
pub fn builds(desk: &Desk, nth: usize) -> Vec<Asked> {
    let catalogue = desk.catalogue();
    let mut all: Vec<Build> =
        fitup_tests::stories::names().iter().map(|name| fitup_tests::stories::story(desk, name)).collect();
    let [machines, carrying, seats, implements] = options(catalogue);
    for at in (0..machines * carrying * seats * implements).step_by(nth) {
        let (rest, implement) = (at / implements, at % implements);
        let (rest, seat) = (rest / seats, rest % seats);
        let choice = [rest / carrying, rest % carrying, seat, implement];
        let mut build = Build::default();
        for step in Step::ALL {
            step.choose(&mut build, choice[step as usize]);
        }
        build.side.trailer = Some(fitup_core::item::TrailerId::at(at % catalogue.trailers.len()));
        build.side.site = Some(fitup_core::item::SiteId::at(at % catalogue.sites.len()));
        all.push(build);
    }
    all.iter().map(|build| Asked::of(desk, build)).collect()
}

fn ids(desk: &Desk, build: &Build) -> Vec<String> {
    let catalogue = desk.catalogue();
    let mut ids: Vec<String> = build.items().into_iter().map(|item| catalogue.body(item).id.clone()).collect();
    let standing = desk.standing(&build.side).catalogue();
    let on = build
        .choices
        .machine
        .map(|id| standing.machine(id).on.iter().map(|on| standing.equipment(on.id).body.id.clone()));
    ids.extend(on.into_iter().flatten());
    ids.extend(build.side.trailer.map(|id| catalogue.trailer(id).id.clone()));
    ids.extend(build.side.site.map(|id| catalogue.site(id).id.clone()));
    ids
}
