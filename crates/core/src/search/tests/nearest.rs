//! The nearest completion against the plain enumeration: every joint and rule of every build judged by itself.

use super::{Chance, catalogues};
use crate::build::{Build, Step, is_mountable, options};
use crate::finding::{Finding, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::RULES;
use crate::fit::{Desk, joint, verdict};
use crate::item::ItemRef;
use crate::search::Searcher;
use crate::search::nearest::{Bounds, Nearest, nearest, nearest_through};
use crate::search::terms::Distance;

/// Catalogues tried.
const CATALOGUES: u64 = 1_500;

fn worst(findings: &[Finding]) -> Verdict {
    findings.iter().map(|finding| finding.verdict).max().unwrap_or_default()
}

/// The slow, readable measure.
fn distance(desk: &Desk, build: &Build) -> Distance {
    let context = Context::new(desk, build);
    let mut distance = Distance::default();
    for item in &context.stack.loose {
        let is_machines_own = matches!(item, ItemRef::Seat(_)) && !is_mountable(desk.catalogue().body(*item));
        distance.gaps += u32::from(!is_machines_own);
    }
    context.stack.open.iter().for_each(|open| distance.open(open.role));
    for joint in &context.stack.joints {
        distance.count(worst(&joint::judge(&context, joint).findings));
    }
    for rule in RULES {
        let mut findings = Vec::new();
        rule.judge(&context, &mut findings);
        distance.gaps += u32::from(findings.iter().any(|finding| finding.code == "frame-idle"));
        distance.count(worst(&findings));
    }
    distance
}

fn choice(build: &Build) -> [Option<usize>; 4] {
    Step::ALL.map(|step| step.chosen(build))
}

/// Every completion.
pub(super) fn completions(desk: &Desk, build: &Build) -> Vec<Build> {
    let Some(open) = Step::ALL.into_iter().find(|step| step.chosen(build).is_none()) else {
        return vec![build.clone()];
    };
    let each = (0..options(desk.catalogue())[open as usize]).flat_map(|option| {
        let mut build = build.clone();
        open.choose(&mut build, option);
        completions(desk, &build)
    });
    each.collect()
}

fn plain(desk: &Desk, build: &Build) -> Nearest {
    let nearest = completions(desk, build).into_iter().min_by_key(|build| (distance(desk, build), choice(build)));
    let build = nearest.expect("every step has an option");
    Nearest { verdict: verdict(desk, &build), build }
}

fn through(build: &Build, step: Step, option: usize) -> Build {
    let mut build = build.clone();
    step.choose(&mut build, option);
    build
}

#[test]
fn the_nearest_completion_is_that_of_the_plain_enumeration() {
    let unbounded = Bounds { weighed: usize::MAX, placed: usize::MAX };
    let mut met = [0; 4];
    for seed in 0..CATALOGUES {
        let chance = &Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(chance));
        let build = catalogues::build(chance, desk.catalogue());
        let mut searcher = Searcher::new(&desk);
        let found = searcher.with_terms(&build, |desk, terms| nearest(desk, terms, &build, unbounded)).unwrap();
        assert_eq!(
            (distance(&desk, &found.build), &found),
            (distance(&desk, &plain(&desk, &build).build), &plain(&desk, &build)),
            "{seed}"
        );
        met[found.verdict as usize] += 1;
        let step = Step::ALL[usize::try_from(seed % 4).unwrap()];
        let found = searcher.with_terms(&build, |desk, terms| nearest_through(desk, terms, &build, step, unbounded));
        for (option, found) in found.unwrap().into_iter().enumerate() {
            let plain = plain(&desk, &through(&build, step, option));
            met[plain.verdict as usize] += 1;
            assert_eq!(found, Some(plain), "{seed}: {step:?} {option}");
        }
    }
    println!("builds by their verdict: {met:?}");
    assert!(met.iter().all(|&count| count > 50), "every verdict is met: {met:?}");
}

#[test]
fn a_bounded_search_keeps_the_verdict_and_the_choices() {
    for seed in 0..300 {
        let chance = &Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(chance));
        let build = catalogues::build(chance, desk.catalogue());
        let plain = plain(&desk, &build);
        for (weighed, placed) in [(1, 1), (4, 2), (usize::MAX, 0)] {
            let bounds = Bounds { weighed, placed };
            let mut searcher = Searcher::new(&desk);
            let found = searcher.with_terms(&build, |desk, terms| nearest(desk, terms, &build, bounds)).unwrap();
            assert_eq!(found.verdict, plain.verdict, "{seed}");
            assert_eq!(verdict(&desk, &found.build), found.verdict, "{seed}");
            assert!(found.build.is_complete());
            let kept = choice(&build).into_iter().zip(choice(&found.build));
            assert!(kept.into_iter().all(|(chosen, found)| chosen.is_none() || chosen == found), "{seed}");
        }
    }
}

#[test]
fn a_complete_build_is_its_own_nearest() {
    let desk = Desk::new(catalogues::catalogue(&Chance::new(7)));
    let mut searcher = Searcher::new(&desk);
    let found = searcher.nearest(&Build::default()).unwrap();
    assert_eq!(searcher.nearest(&found.build), Some(found));
}

#[test]
fn a_step_without_options_has_no_nearest() {
    let mut catalogue = catalogues::catalogue(&Chance::new(3));
    catalogue.seats.clear();
    catalogue.guide = None;
    let desk = Desk::new(catalogue);
    assert_eq!(Searcher::new(&desk).nearest(&Build::default()), None);
    let machines = desk.catalogue().machines.len();
    assert_eq!(Searcher::new(&desk).nearest_through(&Build::default(), Step::Machine), vec![None; machines]);
}
