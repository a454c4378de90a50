//! The best sets against the plain enumeration: every completed build judged by itself, ordered and compared with every other.

use std::cmp::Ordering;

use super::nearest::completions;
use super::{Chance, catalogues};
use crate::build::{Build, Step, options};
use crate::finding::Verdict;
use crate::fit::{Answer, ComeBy, Desk, judge};
use crate::item::{Catalogue, ItemRef};
use crate::quantity::{Money, Work};
use crate::search::sets::search;
use crate::search::{MOST_SETS, Searcher, SetOrder};

/// Catalogues tried.
const CATALOGUES: u64 = 1_000;

/// Puts prices and hours into a catalogue: few different ones, so that many sets are alike in some measure.
fn priced(chance: &Chance, mut catalogue: Catalogue) -> Catalogue {
    let price = || (!chance.once_in(6)).then(|| Money::from_hundredths(chance.one(&[0, 1_000, 2_000, 2_500])));
    let hours = || (!chance.once_in(4)).then(|| Work::from_hours(chance.one(&[1.0, 2.0, 4.0])));
    catalogue.machines.iter_mut().for_each(|row| row.body.price = price());
    for row in &mut catalogue.frames {
        (row.body.price, row.fitting) = (price(), hours());
    }
    for row in &mut catalogue.seats {
        (row.body.price, row.fitting) = (price(), hours());
    }
    for row in &mut catalogue.implements {
        (row.body.price, row.fitting) = (price(), hours());
    }
    catalogue
}

/// The slow, readable measures; less is better, what is not known is worst.
fn measures(answer: &Answer) -> [(usize, f64); 5] {
    let buys: Vec<_> = answer.parts.lines.iter().filter(|line| line.come_by == ComeBy::Buy).collect();
    let hundredths: i64 =
        buys.iter().filter_map(|line| Some(line.price?.hundredths() * i64::from(line.quantity))).sum();
    let unpriced = buys.iter().filter(|line| line.price.is_none()).count() + answer.parts.fittings.len();
    let hours: f64 = answer.strip.steps.iter().filter_map(|step| Some(step.hours?.s())).sum();
    let count: usize = buys.iter().map(|line| line.quantity as usize).sum();
    let unknown = (1, 0.0);
    [
        (unpriced, hundredths as f64),
        answer.footprint.length.map_or(unknown, |length| (0, length.m())),
        answer.footprint.departure.map_or(unknown, |end| (0, -end.angle.rad())),
        (usize::from(answer.strip.steps.iter().any(|step| step.hours.is_none())), hours),
        (0, (count + answer.parts.fittings.len()) as f64),
    ]
}

struct Plain {
    build: Build,
    verdict: Verdict,
    measures: [(usize, f64); 5],
}

fn by(a: (usize, f64), b: (usize, f64)) -> Ordering {
    a.partial_cmp(&b).expect("figures are numbers")
}

fn plain(desk: &Desk, build: &Build, order: SetOrder) -> Vec<(Build, Verdict, bool)> {
    let all = completions(desk, build).into_iter().map(|build| {
        let answer = judge(desk, &build);
        Plain { measures: measures(&answer), verdict: answer.verdict, build }
    });
    let mut all: Vec<Plain> = all.filter(|set| set.verdict < Verdict::WontMount).collect();
    let first = order as usize;
    let sequence: Vec<usize> = std::iter::once(first).chain((0..5).filter(|at| *at != first)).collect();
    all.sort_by(|a, b| {
        let measured = sequence.iter().map(|&at| by(a.measures[at], b.measures[at])).find(|order| order.is_ne());
        a.verdict
            .cmp(&b.verdict)
            .then(measured.unwrap_or(Ordering::Equal))
            .then_with(|| Step::ALL.map(|step| step.chosen(&a.build)).cmp(&Step::ALL.map(|step| step.chosen(&b.build))))
    });
    let beats = |a: &Plain, b: &Plain| {
        let orders: Vec<Ordering> = std::iter::once(a.verdict.cmp(&b.verdict))
            .chain((0..5).map(|at| by(a.measures[at], b.measures[at])))
            .collect();
        orders.iter().all(|order| order.is_le()) && orders.iter().any(|order| order.is_lt())
    };
    let best = all.iter().take(MOST_SETS);
    best.map(|set| (set.build.clone(), set.verdict, !all.iter().any(|other| beats(other, set)))).collect()
}

#[test]
fn the_best_sets_are_those_of_the_plain_enumeration() {
    let (mut told, mut unbeaten, mut full) = (0, 0, 0);
    for seed in 0..CATALOGUES {
        let chance = &Chance::new(seed);
        let desk = Desk::new(priced(chance, catalogues::catalogue(chance)));
        let mut build = catalogues::build(chance, desk.catalogue());
        let items: Vec<ItemRef> = desk.catalogue().items().collect();
        if chance.once_in(2) {
            build.side.on_hand.insert(chance.one(&items));
        }
        let mut searcher = Searcher::new(&desk);
        for order in SetOrder::ALL {
            let plain = plain(&desk, &build, order);
            let found = searcher.sets(&build, order);
            assert!(found.is_exact);
            let sets: Vec<_> =
                found.found.iter().map(|set| (set.build.clone(), set.verdict, set.is_unbeaten)).collect();
            assert_eq!(sets, plain, "seed {seed}, {order:?}");
            told += plain.len();
            unbeaten += plain.iter().filter(|set| set.2).count();
            full += usize::from(plain.len() == MOST_SETS);
        }
    }
    println!(
        "sets of {CATALOGUES} catalogues in five orders: {told}, of them unbeaten {unbeaten}; lists that were full: {full}"
    );
    assert!(told > 10_000 && unbeaten > 1_000 && full > 100, "{told} {unbeaten} {full}");
}

#[test]
fn where_not_all_could_be_judged_that_is_told() {
    let desks = (0..40).map(|seed| Desk::new(catalogues::catalogue(&Chance::new(seed))));
    let several = |desk: &Desk| Searcher::new(desk).sets(&Build::default(), SetOrder::Length).found.len() > 2;
    let desk = desks.into_iter().find(several).expect("some catalogue has several sets");
    assert!(Searcher::new(&desk).sets(&Build::default(), SetOrder::Length).is_exact);
    let few = Searcher::new(&desk)
        .with_terms(&Build::default(), |desk, terms| search(desk, terms, &Build::default(), SetOrder::Length, 1));
    assert!(few.is_some_and(|few| !few.is_exact));
}

#[test]
fn a_complete_build_is_its_own_set_and_one_that_does_not_mount_is_none() {
    let (mut mounted, mut not) = (0, 0);
    for seed in 0..60 {
        let chance = &Chance::new(seed);
        let desk = Desk::new(catalogues::catalogue(chance));
        if options(desk.catalogue()).contains(&0) {
            continue;
        }
        let build = Build::from(catalogues::complete(chance, desk.catalogue()));
        let found = Searcher::new(&desk).sets(&build, SetOrder::Price).found;
        if judge(&desk, &build).verdict == Verdict::WontMount {
            assert!(found.is_empty());
            not += 1;
        } else {
            let [set] = &found[..] else { panic!("{found:?}") };
            assert!(set.build == build && set.is_unbeaten);
            mounted += 1;
        }
    }
    assert!(mounted > 5 && not > 5, "{mounted} {not}");
}
