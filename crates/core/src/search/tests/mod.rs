//! Completions against the plain enumeration: every completed build judged by itself.

pub(crate) mod catalogues;
pub(crate) mod chance;
mod mending;
mod nearest;
mod outlines;
mod removing;
mod series;
mod sets;
mod settling;

use super::reachable::{Reach, Rows, search};
use super::{Reachable, Searcher};
use crate::build::{Build, Step, options};
use crate::finding::Verdict;
use crate::fit::{Desk, judge, verdict};
use crate::item::Catalogue;
use chance::Chance;

/// Catalogues tried unless `FITUP_CATALOGUES` says how many.
const CATALOGUES: u64 = 5_000;

/// The slow, readable answer.
fn plain(desk: &Desk, build: &Build) -> Rows {
    Step::ALL.map(|step| {
        let count = options(desk.catalogue())[step as usize];
        (0..count).map(|option| best(desk, &with(build, step, option), step)).collect()
    })
}

fn with(build: &Build, step: Step, option: usize) -> Build {
    let mut build = build.clone();
    step.choose(&mut build, option);
    build
}

fn best(desk: &Desk, build: &Build, asked: Step) -> Option<Reach> {
    let open = Step::ALL.into_iter().find(|&step| step != asked && step.chosen(build).is_none());
    let Some(step) = open else {
        let verdict = verdict(desk, build);
        let mut counts = [0; 4];
        counts[verdict as usize] = 1;
        return Some(Reach { verdict, build: build.clone(), counts: Some(counts) });
    };
    let found =
        (0..options(desk.catalogue())[step as usize]).filter_map(|at| best(desk, &with(build, step, at), asked));
    found.reduce(|a, b| {
        let counts = a.counts.zip(b.counts).map(|(a, b)| [0, 1, 2, 3].map(|at| a[at] + b[at]));
        Reach { counts, ..if b.verdict < a.verdict { b } else { a } }
    })
}

/// What the plain answer and a found one have to share.
fn agrees(desk: &Desk, build: &Build, plain: &Rows, found: &Rows, counted: bool) {
    for step in Step::ALL {
        let (plain, found) = (&plain[step as usize], &found[step as usize]);
        assert_eq!(plain.len(), found.len());
        for (option, (plain, found)) in plain.iter().zip(found).enumerate() {
            let (Some(plain), Some(found)) = (plain, found) else {
                assert_eq!(plain.is_some(), found.is_some());
                continue;
            };
            assert_eq!(
                plain.verdict,
                found.verdict,
                "{step:?} {option} of {build:?}: {:?}",
                judge(desk, &plain.build).findings
            );
            assert_eq!(verdict(desk, &found.build), found.verdict, "the build that is named has the verdict");
            assert!(found.build.is_complete());
            assert_eq!(step.chosen(&found.build), Some(option));
            for other in Step::ALL.into_iter().filter(|&other| other != step) {
                let chosen = other.chosen(build);
                assert!(chosen.is_none() || chosen == other.chosen(&found.build), "what is chosen stays");
            }
            assert_eq!(found.counts, plain.counts.filter(|_| counted));
        }
    }
}

/// How many catalogues are tried.
fn catalogues_tried() -> u64 {
    std::env::var("FITUP_CATALOGUES").ok().and_then(|count| count.parse().ok()).unwrap_or(CATALOGUES)
}

#[test]
fn completions_agree_with_judging_every_build() {
    let (mut reached, mut judged) = ([0_u64; 4], [0_u64; 4]);
    for seed in 0..catalogues_tried() {
        let chance = &Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(chance));
        let build = catalogues::build(chance, desk.catalogue());
        let plain = plain(&desk, &build);
        // Once by leaving out what cannot be better, once by counting, on the same terms.
        let mut searcher = Searcher::new(&desk);
        for most_counted in [0, usize::MAX] {
            let found = searcher.with_terms(&build, |desk, terms| search(desk, terms, &build, most_counted));
            agrees(&desk, &build, &plain, &found.unwrap(), most_counted > 0);
        }
        for reach in plain.iter().flatten().flatten() {
            reached[reach.verdict as usize] += 1;
            for (sum, count) in judged.iter_mut().zip(reach.counts.unwrap()) {
                *sum += count;
            }
        }
    }
    println!("options by the verdict they reach: {reached:?}; completed builds by verdict: {judged:?}");
    assert!(reached.iter().all(|&count| count > catalogues_tried() / 10), "every verdict is met: {reached:?}");
}

#[test]
fn a_step_without_options_completes_nothing() {
    let mut catalogue = catalogues::catalogue(&Chance::new(3));
    catalogue.seats.clear();
    catalogue.guide = None;
    let desk = Desk::new(catalogue);
    let found = Searcher::new(&desk).reachable(&Build::default());
    assert_eq!(found.machines, vec![None; desk.catalogue().machines.len()]);
    assert_eq!(found.carrying.len(), desk.catalogue().frames.len() + 1);
    assert_eq!(found.seats, []);
    assert_eq!(
        Searcher::new(&Desk::new(Catalogue::default())).reachable(&Build::default()),
        Reachable { carrying: vec![None], ..Reachable::default() }
    );
}

#[test]
fn the_reason_is_the_worst_finding_of_the_build_that_is_reached() {
    let desk = Desk::new(catalogues::catalogue(&Chance::new(5)));
    for reach in Searcher::new(&desk).reachable(&Build::default()).machines.into_iter().flatten() {
        let reason = reach.reason(&desk).map(|finding| finding.verdict);
        assert_eq!(reason, Some(reach.verdict).filter(|&verdict| verdict > Verdict::BoltsUp));
    }
}
