//! Laws of judging, tried on catalogues and builds by chance.

use std::collections::BTreeSet;

use super::{Answer, Desk, declaration, judge, verdict};
use crate::build::{Build, Step, options};
use crate::finding::{Question, Subject, Verdict};
use crate::item::{
    Catalogue, FrameId, Guide, GuideRow, ImplementId, ItemRef, MachineId, Named, Part, Replacement, SeatId,
};
use crate::search::tests::catalogues;
use crate::search::tests::chance::Chance;

/// Catalogues tried for each law, with [`BUILDS`] builds each.
const CATALOGUES: u64 = 400;

const BUILDS: usize = 10;

/// Tries a law on complete and open builds of many catalogues.
fn try_all(law: impl Fn(&Desk, &Build, &Chance)) {
    for seed in 0..CATALOGUES {
        let chance = Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(&chance));
        for _ in 0..BUILDS {
            let mut build = catalogues::build(&chance, desk.catalogue());
            if chance.once_in(2) {
                for step in Step::ALL {
                    let count = options(desk.catalogue())[step as usize];
                    if count > 0 {
                        step.choose(&mut build, chance.below(count));
                    }
                }
            }
            law(&desk, &build, &chance);
        }
    }
}

#[test]
fn every_build_has_an_answer_and_its_verdict_is_the_worst_finding_of_fit_and_work() {
    try_all(|desk, build, _| {
        let answer = judge(desk, build);
        let worst_of = |asked: &[Question]| {
            let of = answer.findings.iter().filter(|finding| asked.contains(&finding.question));
            of.map(|finding| finding.verdict).max().unwrap_or_default()
        };
        let worst = worst_of(&[Question::Fit, Question::Work]);
        assert_eq!((answer.verdict, verdict(desk, build)), (worst, worst), "{build:?}");
        for told in &answer.answers {
            assert_eq!(told.worst, worst_of(&[told.question]), "{build:?}");
            let decides = told.finding.map(|index| (answer.findings[index].question, answer.findings[index].verdict));
            assert_eq!(decides.unwrap_or((told.question, Verdict::BoltsUp)), (told.question, told.worst));
            assert!(told.verdict().is_none() || build.is_complete(), "{build:?}");
        }
        assert_eq!(answer.answers.map(|told| told.question), Question::ALL);
        assert!(answer.findings.windows(2).all(|pair| pair[0].verdict >= pair[1].verdict));
    });
    let mut met = BTreeSet::new();
    for seed in 0..CATALOGUES {
        let chance = Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(&chance));
        met.insert(judge(&desk, &catalogues::build(&chance, desk.catalogue())).verdict);
    }
    assert_eq!(met.len(), Verdict::ALL.len(), "every verdict is met");
}

#[test]
fn every_finding_is_one_of_those_that_are_declared() {
    try_all(|desk, build, _| {
        for finding in judge(desk, build).findings {
            assert!(declaration(finding.code).is_some(), "{} is missing from the lists of files", finding.code);
        }
    });
}

#[test]
fn whatever_will_not_mount_names_a_figure_or_is_itself_the_fact() {
    try_all(|desk, build, _| {
        for finding in judge(desk, build).findings.iter().filter(|finding| finding.verdict == Verdict::WontMount) {
            let declared = declaration(finding.code).expect("every finding is declared");
            assert!(declared.figures.is_empty() || !finding.figures.is_empty(), "{} says nothing", finding.code);
        }
    });
}

#[test]
fn what_is_open_says_what_would_settle_it_or_is_for_the_eye() {
    // A slow or strong pump, levers far off and too much power are settled by no measurement: somebody has to decide.
    let to_decide = [
        "hydraulics-flow-high",
        "hydraulics-flow-short",
        "hydraulics-pressure-short",
        "power-high",
        "seat-reach-far",
        "bar-in-the-way",
    ];
    try_all(|desk, build, _| {
        for finding in judge(desk, build).findings.iter().filter(|finding| finding.verdict == Verdict::CheckFirst) {
            assert!(!finding.checks.is_empty() || to_decide.contains(&finding.code), "{} has no check", finding.code);
        }
    });
}

#[test]
fn the_order_of_choices_is_of_no_matter() {
    try_all(|desk, build, _| {
        let answer = judge(desk, build);
        let mut turned = Build { side: build.side.clone(), ..Build::default() };
        for step in Step::ALL.into_iter().rev() {
            if let Some(option) = step.chosen(build) {
                step.choose(&mut turned, option);
            }
        }
        // Of two measurements of one dimension the later counts; changes are a set.
        turned.side.changes = build.side.changes.iter().rev().cloned().collect();
        let dimensions: BTreeSet<_> = build.side.measured.iter().map(|m| (m.item, &m.port, &m.dimension)).collect();
        if dimensions.len() == build.side.measured.len() {
            turned.side.measured.reverse();
        }
        let other = judge(desk, &turned);
        // Of findings as bad as each other on one subject, changes and measurements may stand in another order.
        let told = |answer: &Answer| {
            let mut told: Vec<String> = answer.findings.iter().map(|finding| format!("{finding:?}")).collect();
            told.sort();
            told
        };
        assert_eq!(told(&answer), told(&other), "{build:?}");
        assert_eq!(answer.joints, other.joints, "{build:?}");
        let same = (other.verdict, &other.stack, &other.footprint, &other.parts);
        assert_eq!((answer.verdict, &answer.stack, &answer.footprint, &answer.parts), same, "{build:?}");
    });
}

/// The joints of an answer by what they join, with their verdicts.
fn joints(answer: &Answer) -> Vec<(Subject, Verdict)> {
    answer
        .joints
        .iter()
        .map(|joint| (Subject::Joint(joint.role, joint.carrier.0, joint.carried.0), joint.verdict))
        .collect()
}

/// No joint is worse after; how many are better.
fn no_worse(before: &Answer, after: &Answer, by: &str) -> usize {
    let mut better = 0;
    assert_eq!(before.joints.len(), after.joints.len());
    for ((subject, was), (same, is)) in joints(before).into_iter().zip(joints(after)) {
        assert_eq!(subject, same);
        assert!(is <= was, "{subject:?} went from {was:?} to {is:?} by {by}");
        better += usize::from(is < was);
    }
    better
}

#[test]
fn a_record_of_a_replacement_more_weakens_no_joint() {
    let better = std::cell::Cell::new(0);
    try_all(|desk, build, chance| {
        let numbers: Vec<String> = (0..7).map(|number| format!("p{number}")).collect();
        let before = judge(desk, build);
        for old in &numbers {
            let mut catalogue: Catalogue = desk.listed_catalogue();
            let replaced = Some(Replacement { by: vec![chance.any(&numbers)], both_ways: chance.once_in(2) });
            let part = catalogue.parts.get(old).cloned();
            if part.as_ref().is_some_and(|part| part.replaced.is_some()) {
                continue;
            }
            let known = part.unwrap_or(Part { number: old.clone(), name: String::new(), replaced: None });
            catalogue.parts.insert(old.clone(), Part { replaced, ..known });
            let after = judge(&Desk::new(catalogue), build);
            better.set(better.get() + no_worse(&before, &after, "a replacement"));
        }
    });
    assert!(better.get() >= 3, "replacements help: {better:?}");
}

fn named<T: Copy>(chance: &Chance, at: fn(usize) -> T, count: usize) -> Named<T> {
    chance.any(&[Named::Without, Named::Any, Named::This(at(chance.below(count)))])
}

#[test]
fn a_listing_more_weakens_no_joint() {
    let better = std::cell::Cell::new(0);
    try_all(|desk, build, chance| {
        let before = judge(desk, build);
        if before.joints.is_empty() {
            return;
        }
        let mut catalogue: Catalogue = desk.listed_catalogue();
        let joint = &before.joints[chance.below(before.joints.len())];
        let mut row = GuideRow {
            machine: Named::Without,
            frame: Named::Without,
            seat: Named::Without,
            implement: Named::Without,
        };
        // The row may list the joint's items alone or a whole set.
        if chance.once_in(2) {
            row.machine = named(chance, MachineId::at, catalogue.machines.len());
            row.frame = named(chance, FrameId::at, catalogue.frames.len());
            row.seat = named(chance, SeatId::at, catalogue.seats.len());
            row.implement = named(chance, ImplementId::at, catalogue.implements.len());
        }
        for item in [joint.carrier.0, joint.carried.0] {
            match item {
                ItemRef::Machine(id) => row.machine = Named::This(MachineId(id.0)),
                ItemRef::Frame(id) => row.frame = Named::This(FrameId(id.0)),
                ItemRef::Seat(id) => row.seat = Named::This(SeatId(id.0)),
                ItemRef::Implement(id) => row.implement = Named::This(ImplementId(id.0)),
                ItemRef::Adapter(_) | ItemRef::Equipment(_) => return,
            }
        }
        catalogue.guide.get_or_insert_with(Guide::default).rows.push(row);
        let after = judge(&Desk::new(catalogue), build);
        better.set(better.get() + no_worse(&before, &after, "a listing"));
    });
    assert!(better.get() > 50, "listings help: {better:?}");
}
