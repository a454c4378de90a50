//! A check that is offered settles what it promises: entered exactly as it is asked, its findings are no longer open.

use fitup_core::build::{Build, NumberRead, Presence};
use fitup_core::finding::{Check, Finding, Verdict};
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::search::{Chance as Sure, RankedCheck, checks};
use fitup_tests::stories::{names, story};

use super::chance::Chance;
use super::hold::{build_of, cases, tried};
use super::random;
use super::tree::{demo, desk};

/// What was asked, entered and settled, and what is passed on as a task since its outcome cannot be entered.
#[derive(Default)]
struct Count {
    builds: usize,
    asked: usize,
    tasks: usize,
    entered: usize,
    settled: usize,
}

/// Every way in which a check is entered as asked, as builds.
fn entered(build: &Build, ranked: &RankedCheck) -> Vec<Build> {
    let with = |change: &dyn Fn(&mut Build)| {
        let mut build = build.clone();
        change(&mut build);
        build
    };
    match &ranked.check {
        Check::MeasureAll(asked) => {
            let as_asked = |values: &Vec<_>| {
                with(&|build| {
                    for (asked, value) in asked.iter().zip(values) {
                        let mut value: fitup_core::build::Measurement = Clone::clone(value);
                        value.plus_minus = Some(asked.within);
                        build.side.measured.push(value);
                    }
                })
            };
            ranked.settled_by.iter().map(as_asked).collect()
        }
        Check::ReadParts { item, port, any_of } => {
            let read = |parts: &Vec<String>| NumberRead {
                item: *item,
                port: port.clone(),
                parts: parts.clone(),
                by: String::new(),
                when: String::new(),
            };
            any_of.iter().map(|one| with(&|build| build.side.read.push(read(&one.parts)))).collect()
        }
        Check::Look { item, what } => [Presence::Yes, Presence::No]
            .into_iter()
            .map(|seen| with(&|build| build.side.looked.extend([((*item, what.clone()), seen)])))
            .collect(),
        _ => Vec::new(),
    }
}

/// Whether an answer leaves as many findings of a code and subject open as another had, less those that were to be settled.
fn leaves_open(was: &Answer, promised: &[usize], then: &Answer) -> bool {
    promised.iter().map(|&at| &was.findings[at]).any(|finding| {
        let alike = |it: &Finding| (it.code, it.subject) == (finding.code, finding.subject);
        let open = |it: &&Finding| it.verdict == Verdict::CheckFirst && alike(it);
        let to_settle = promised.iter().filter(|&&at| alike(&was.findings[at])).count();
        then.findings.iter().filter(open).count() + to_settle > was.findings.iter().filter(open).count()
    })
}

/// Enters every check of a build as asked, and tells those that settle nothing.
fn enter_all(desk: &Desk, name: &str, build: &Build, count: &mut Count) -> Vec<String> {
    let answer = judge(desk, build);
    let mut faults = Vec::new();
    count.builds += 1;
    for ranked in checks(desk, build, &answer) {
        if ranked.chance == Sure::NotTried {
            count.tasks += 1;
            continue;
        }
        count.asked += 1;
        let ways = entered(build, &ranked);
        let open = |with: &Build| leaves_open(&answer, &ranked.findings, &judge(desk, with));
        count.entered += ways.len();
        if ways.is_empty() || ways.iter().any(open) {
            let of: Vec<_> = ranked.findings.iter().map(|&at| answer.findings[at].code).collect();
            faults.push(format!("{of:?}: {:?}\n    {name}", ranked.check));
        } else {
            count.settled += 1;
        }
    }
    faults
}

/// Says what came of it, and fails where a check settled nothing.
fn told(builds: &str, count: &Count, faults: &[String]) {
    let Count { builds: tried, asked, tasks, entered, settled } = count;
    println!(
        "checks of {builds}: {tried} builds, {asked} asked, {entered} times entered as asked, {settled} settled, \
         {tasks} more that cannot be entered"
    );
    assert!(faults.is_empty(), "{} of {asked}:\n{}", faults.len(), faults[..faults.len().min(12)].join("\n"));
}

#[test]
fn a_check_of_a_demonstration_build_entered_as_asked_settles_its_findings() {
    let desk = desk(&demo()).expect("it is sound");
    let (mut count, mut faults) = (Count::default(), Vec::new());
    for name in names() {
        faults.extend(enter_all(&desk, &name, &story(&desk, &name), &mut count));
    }
    told("demonstration builds", &count, &faults);
    assert!(count.builds == names().len() && count.asked > 0);
}

#[test]
fn a_check_of_a_build_by_chance_entered_as_asked_settles_its_findings() {
    let catalogue = demo();
    let (desk, chance) = (desk(&catalogue).expect("it is sound"), Chance::new(7));
    let (mut count, mut faults) = (Count::default(), Vec::new());
    while count.builds < tried() {
        let file = random::build(&chance, &catalogue);
        let build = build_of(&desk, &file).expect("its own catalogue has all it names");
        faults.extend(enter_all(&desk, &file.to_string(), &build, &mut count));
    }
    told("builds by chance", &count, &faults);
    assert!(count.asked >= count.builds / 20, "too few to show anything: {}", count.asked);
}

#[test]
fn a_check_in_a_catalogue_by_chance_entered_as_asked_settles_its_findings() {
    let (mut count, mut faults) = (Count::default(), Vec::new());
    for case in cases().skip(1) {
        let desk = desk(&case.catalogue).expect("it is sound");
        for file in &case.builds {
            let Some(build) = build_of(&desk, file) else { continue };
            faults.extend(enter_all(&desk, &file.to_string(), &build, &mut count));
        }
    }
    told("catalogues by chance", &count, &faults);
    assert!(count.asked >= count.builds / 20, "too few to show anything: {}", count.asked);
}
