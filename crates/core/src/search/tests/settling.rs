//! Every measurement that is asked for settles what it is asked for, entered exactly as asked.

use super::catalogues;
use super::chance::Chance;
use crate::build::{Build, Measurement};
use crate::finding::{Check, Finding, Verdict};
use crate::fit::{Answer, Desk, judge};
use crate::item::Catalogue;
use crate::quantity::Length;
use crate::search::{RankedCheck, checks};

/// Lists asked, values entered, findings settled by them.
#[derive(Debug, Default)]
struct Count {
    asked: usize,
    entered: usize,
    settled: usize,
}

/// Whether a finding is open, or another of the same joint that asks for one of these dimensions.
fn is_open(finding: &Finding, then: &Answer, entered: &[Measurement]) -> bool {
    let asks_again = |check: &Check| match check {
        Check::Measure { item, port, dimension, .. } => {
            entered.iter().any(|m| (m.item, &m.port, &m.dimension) == (*item, port, dimension))
        }
        _ => false,
    };
    then.findings.iter().any(|it| {
        it.verdict == Verdict::CheckFirst
            && it.subject == finding.subject
            && (it.code == finding.code || it.checks.iter().any(asks_again))
    })
}

fn settles(desk: &Desk, build: &Build, answer: &Answer, ranked: &RankedCheck, count: &mut Count) {
    let Check::MeasureAll(asked) = &ranked.check else { return };
    count.asked += 1;
    assert!(!asked.is_empty() && !ranked.settled_by.is_empty() && !ranked.findings.is_empty());
    for values in &ranked.settled_by {
        // Exactly what is asked, no more, no finer.
        assert_eq!(values.len(), asked.len());
        for (value, asked) in values.iter().zip(asked) {
            assert_eq!((value.item, &value.port, &value.dimension), (asked.item, &asked.port, &asked.dimension));
            assert!(value.plus_minus.is_some_and(|half| half >= asked.within), "no finer than asked");
        }
        let mut with = build.clone();
        with.side.measured.extend(values.iter().cloned());
        let then = judge(desk, &with);
        assert!(then.findings.iter().all(|finding| finding.code != "measurement-not-used" || {
            answer.findings.iter().any(|before| before == finding)
        }));
        count.entered += values.len();
        for &at in &ranked.findings {
            assert!(!is_open(&answer.findings[at], &then, values), "{:?}\n{:?}", answer.findings[at], then.findings);
            count.settled += 1;
        }
    }
}

/// The catalogue with some ports known less well, so that more is open.
fn vaguer(chance: &Chance, mut catalogue: Catalogue) -> Catalogue {
    let bodies = (catalogue.machines.iter_mut().map(|machine| &mut machine.body))
        .chain(catalogue.frames.iter_mut().map(|frame| &mut frame.body))
        .chain(catalogue.seats.iter_mut().map(|seat| &mut seat.body))
        .chain(catalogue.implements.iter_mut().map(|implement| &mut implement.body));
    for port in bodies.flat_map(|body| &mut body.ports) {
        if chance.once_in(2) {
            port.tolerance = Some(Length::from_mm(chance.any(&[0.3, 0.6, 1.0, 2.5])));
        }
    }
    catalogue
}

#[test]
fn what_is_asked_for_settles_its_findings_as_asked() {
    let mut count = Count::default();
    let (mut builds, mut open) = (0, 0);
    for seed in 0..3_000 {
        let chance = &Chance::new(seed);
        let desk = Desk::new(vaguer(chance, catalogues::catalogue(chance)));
        let mut build = catalogues::build(chance, desk.catalogue());
        build.choices = catalogues::complete(chance, desk.catalogue());
        let answer = judge(&desk, &build);
        builds += 1;
        open += answer.findings.iter().filter(|finding| finding.verdict == Verdict::CheckFirst).count();
        let ranked = checks(&desk, &build, &answer);
        let mut seen = Vec::new();
        for check in &ranked {
            settles(&desk, &build, &answer, check, &mut count);
            if let Check::MeasureAll(asked) = &check.check {
                for one in asked {
                    let dimension = (one.item, one.port.clone(), one.dimension.clone());
                    assert!(!seen.contains(&dimension), "{seed}: {dimension:?} is asked for twice");
                    seen.push(dimension);
                    let ports = &desk.standing(&build.side).catalogue().body(one.item).ports;
                    let port = ports.iter().find(|port| port.name == one.port).unwrap();
                    let measured =
                        build.side.measured.iter().any(|m| m.item == one.item && m.dimension == one.dimension);
                    let stated = port.stated(&one.dimension).filter(|_| !measured);
                    if let (Some(stated), true) = (stated, check.settled_by.len() == 3) {
                        let entered = check.settled_by[0]
                            .iter()
                            .find(|m| m.item == one.item && m.port == one.port && m.dimension == one.dimension);
                        assert_eq!(entered.unwrap().value, stated.value, "first as stated");
                    }
                }
            }
        }
        for pair in ranked.windows(2) {
            assert!(pair[0].chance <= pair[1].chance);
        }
    }
    println!("{builds} builds, {open} open findings, {count:?}");
    assert!(count.asked > 200 && count.settled >= count.asked, "{count:?}");
}
