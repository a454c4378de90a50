//! Every remedy is a build that is judged as it says, and where none is told there is none.

use super::catalogues;
use super::chance::Chance;
use crate::build::{Build, Carrying, Seating, options};
use crate::finding::Verdict;
use crate::fit::{Desk, judge, verdict};
use crate::item::{AdapterId, FrameId, SeatId};
use crate::quantity::Money;
use crate::search::combine::with_steps;
use crate::search::remedies::named_changes;
use crate::search::{MOST_STEPS, NoRemedy, RemedyStep, remedies};

/// Builds tried.
const BUILDS: u64 = 1_500;

fn complete(seed: u64) -> (Desk, Build) {
    let chance = &Chance::new(seed);
    let desk = Desk::new(catalogues::catalogue(chance));
    let mut build = catalogues::build(chance, desk.catalogue());
    build.choices = catalogues::complete(chance, desk.catalogue());
    (desk, build)
}

#[test]
fn a_remedy_rebuilt_from_its_steps_is_judged_as_it_says() {
    let (mut offered, mut equal, mut mixed) = (0, 0, 0);
    for seed in 0..BUILDS {
        let (desk, build) = complete(seed);
        let now = judge(&desk, &build);
        let told = remedies(&desk, &build);
        assert_eq!(told.none.is_some(), told.found.is_empty());
        for remedy in &told.found {
            offered += 1;
            assert!((1..=MOST_STEPS).contains(&remedy.steps.len()));
            let rebuilt = with_steps(&build, &remedy.steps);
            let then = judge(&desk, &rebuilt);
            assert_eq!((&rebuilt, then.verdict), (&remedy.build, remedy.verdict), "{seed}");
            let deciding = then.findings.first().filter(|finding| finding.verdict > Verdict::BoltsUp);
            assert_eq!(remedy.leaves.first(), deciding, "{seed}");
            let length = then.footprint.length.zip(now.footprint.length).map(|(then, now)| then - now);
            let price = then.parts.total.zip(now.parts.total).map(|(then, now)| then.hundredths() - now.hundredths());
            assert_eq!(remedy.length_more, length, "{seed}");
            assert_eq!(remedy.buy_more.map(Money::hundredths), price, "{seed}");
            assert_eq!(remedy.work_more, then.strip.total().0 - now.strip.total().0, "{seed}");
            equal += 1;
            let kinds: std::collections::BTreeSet<_> = remedy
                .steps
                .iter()
                .map(|step| match step {
                    RemedyStep::Adapter(_) => 0,
                    RemedyStep::Seat(_) => 1,
                    RemedyStep::Carry(_) => 2,
                    RemedyStep::Change(_) => 3,
                })
                .collect();
            mixed += usize::from(kinds.len() > 1);
        }
    }
    println!("{BUILDS} builds: {offered} remedies offered, rebuilt, {equal} equal; {mixed} of several kinds");
    assert!(offered > 500 && mixed > 50, "{offered} {mixed}");
}

/// The best verdict of any up to three different steps, found by trying all.
fn by_trying(desk: &Desk, build: &Build) -> Verdict {
    let mut best = verdict(desk, build);
    let mut nodes: Vec<Vec<RemedyStep>> = vec![Vec::new()];
    for _ in 0..MOST_STEPS {
        let mut next = Vec::new();
        for steps in &nodes {
            let from = with_steps(build, steps);
            let has = |of: fn(&RemedyStep) -> bool| steps.iter().any(of);
            let catalogue = desk.catalogue();
            let mut more: Vec<RemedyStep> =
                named_changes(&judge(desk, &from).findings).into_iter().map(RemedyStep::Change).collect();
            more.extend((0..catalogue.adapters.len()).map(AdapterId::at).map(RemedyStep::Adapter));
            if build.choices.seating != Seating::Open && !has(|step| matches!(step, RemedyStep::Seat(_))) {
                more.extend((0..catalogue.seats.len()).map(SeatId::at).map(RemedyStep::Seat));
            }
            if build.choices.carrying != Carrying::Open && !has(|step| matches!(step, RemedyStep::Carry(_))) {
                let frames = (1..options(catalogue)[1]).map(|at| Carrying::Frame(FrameId::at(at - 1)));
                more.extend([Carrying::Hitch].into_iter().chain(frames).map(RemedyStep::Carry));
            }
            for step in more.into_iter().filter(|step| !steps.contains(step)) {
                let mut longer = steps.clone();
                longer.push(step);
                best = best.min(verdict(desk, &with_steps(build, &longer)));
                next.push(longer);
            }
        }
        nodes = next;
    }
    best
}

#[test]
fn where_no_remedy_is_told_trying_everything_finds_none() {
    let (mut none, mut some, mut missed) = (0, 0, Vec::new());
    for seed in 0..BUILDS / 5 {
        let (desk, build) = complete(seed);
        let now = verdict(&desk, &build);
        let told = remedies(&desk, &build);
        if now == Verdict::BoltsUp {
            assert_eq!(told.none, Some(NoRemedy::NotNeeded));
            continue;
        }
        let found = told.found.iter().map(|remedy| remedy.verdict).min().unwrap_or(now).min(now);
        let best = by_trying(&desk, &build);
        if best < found {
            missed.push((seed, now, found, best));
        }
        if found < now { some += 1 } else { none += 1 }
    }
    println!("{some} builds mended as well as by trying everything, {none} that nothing mends");
    assert!(missed.is_empty(), "{} missed: {missed:?}", missed.len());
    assert!(none > 10 && some > 10, "{none} {some}");
}
