//! Checks: what would settle the open findings, each tried as far as its result can be entered, the surest first.

use super::measuring::measurings;
use super::part_numbers::numbers_that_settle;
use crate::build::{Build, Measurement, NumberRead, Presence};
use crate::finding::{Check, Finding, Question, Subject, Verdict};
use crate::fit::{Answer, Desk, judge};
use crate::item::ItemRef;
use crate::order;

/// How sure a check is to settle its findings; surest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Chance {
    /// It settles them at every value that was tried.
    AtEveryValue,
    /// It settles them if what is found is about what is stated.
    AsStated,
    /// It was not tried: what it finds cannot be entered in a build.
    NotTried,
}

/// A check with what hangs on it.
#[derive(Debug, Clone, PartialEq)]
pub struct RankedCheck {
    /// What to do.
    pub check: Check,
    /// Indices of the findings it would settle.
    pub findings: Vec<usize>,
    /// How sure that is.
    pub chance: Chance,
    /// The values that were entered, one list for each trial that settled the findings; none for what is not measured.
    pub settled_by: Vec<Vec<Measurement>>,
    /// What hangs on it, by the trials that settled them; `None` if there were none.
    pub stakes: Option<Stakes>,
}

/// What the answer to a question is, and what it may come to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stakes {
    /// The question.
    pub question: Question,
    /// Its worst finding now.
    pub now: Verdict,
    /// At best.
    pub best: Verdict,
    /// At worst.
    pub worst: Verdict,
}

impl Stakes {
    /// What the answer to a question comes to in trials; `None` without one.
    pub(super) fn of(question: Question, now: &Answer, then: &[Answer]) -> Option<Self> {
        let worst_of = |answer: &Answer| answer.to(question).worst;
        let (best, worst) = (then.iter().map(worst_of).min()?, then.iter().map(worst_of).max()?);
        Some(Self { question, now: worst_of(now), best, worst })
    }
}

impl RankedCheck {
    /// How much work it is: how many things are measured or looked at, then how finely, the coarser the less.
    fn effort(&self) -> (usize, f64) {
        match &self.check {
            Check::MeasureAll(all) => {
                let finest = all.iter().map(|asked| asked.within.m()).fold(f64::INFINITY, f64::min);
                (all.len(), -finest)
            }
            _ => (1, f64::NEG_INFINITY),
        }
    }
}

/// What would settle the open findings of a build: by chance, then by effort, then in the order of the findings.
///
/// A measurement is only asked for if it was tried: entered as asked, at what is stated of the dimension (where nothing is, at
/// what the other piece states, or at both edges of what the catalogue states for such a dimension) it settles the findings.
/// Dimensions that settle together are one list, on the piece that is known less well, and each is asked for once. Part numbers
/// are asked for where some would prove the joint. What a reader would have to find out and cannot enter is passed on untried.
pub fn checks(desk: &Desk, build: &Build, answer: &Answer) -> Vec<RankedCheck> {
    let desk = desk.standing(&build.side);
    let mut ranked: Vec<RankedCheck> = measurings(desk, build, answer)
        .into_iter()
        .map(|tried| RankedCheck {
            check: Check::MeasureAll(tried.asked),
            findings: tried.findings,
            chance: if tried.always { Chance::AtEveryValue } else { Chance::AsStated },
            settled_by: tried.settled_by,
            stakes: tried.stakes,
        })
        .collect();
    for (index, finding) in answer.findings.iter().enumerate() {
        if finding.verdict != Verdict::CheckFirst {
            continue;
        }
        let others = finding.checks.iter().flat_map(|check| others(desk, build, answer, finding, check));
        for (check, chance, stakes) in others {
            match ranked.iter_mut().find(|known| same_act(&known.check, &check)) {
                Some(known) if known.findings.contains(&index) => {}
                Some(known) => known.findings.push(index),
                None => {
                    ranked.push(RankedCheck { check, findings: vec![index], chance, settled_by: Vec::new(), stakes });
                }
            }
        }
    }
    // Stable: among equals the order of the findings stays, worst first.
    order::sort(&mut ranked, |a, b| {
        let ((a_count, a_fine), (b_count, b_fine)) = (a.effort(), b.effort());
        a.chance.cmp(&b.chance).then(a_count.cmp(&b_count)).then(a_fine.total_cmp(&b_fine))
    });
    ranked
}

type Offer = (Check, Chance, Option<Stakes>);

/// What becomes of a check that is no measurement.
fn others(desk: &Desk, build: &Build, answer: &Answer, finding: &Finding, check: &Check) -> Vec<Offer> {
    let untried = |check: &Check| vec![(check.clone(), Chance::NotTried, None)];
    match check {
        Check::Measure { item, port, dimension, .. } => {
            let ports = &desk.catalogue().body(*item).ports;
            let of = ports.iter().find(|known| known.name == *port);
            // What has no place among the dimensions is read off a plate or the manual.
            let is_read_off = of.is_some_and(|of| {
                !of.dimensions().iter().any(|known| known.name.is(dimension))
                    && matches!(finding.subject, Subject::Joint(..))
            });
            if is_read_off { untried(check) } else { Vec::new() }
        }
        Check::CompareParts { a, b } => part_numbers(desk, build, answer, finding, [a, b]),
        Check::Look { item, what } if names_port(desk, *item, what) => {
            let stakes = seen_or_not(desk, build, answer, finding, (*item, what));
            stakes.map(|stakes| (check.clone(), Chance::AtEveryValue, Some(stakes))).into_iter().collect()
        }
        Check::Look { .. }
        | Check::Gap { .. }
        | Check::FindOut { .. }
        | Check::Ask { .. }
        | Check::MeasureAll(_)
        | Check::ReadParts { .. } => untried(check),
    }
}

/// The numbers to look for, each tried as if it were read; on the piece that states none first.
fn part_numbers(
    desk: &Desk,
    build: &Build,
    answer: &Answer,
    finding: &Finding,
    ends: [&(ItemRef, String); 2],
) -> Vec<Offer> {
    let at = |(item, name): &(ItemRef, String)| {
        let index = desk.catalogue().body(*item).ports.iter().position(|port| port.name == *name)?;
        Some((*item, index))
    };
    let (Some(one), Some(other)) = (at(ends[0]), at(ends[1])) else { return Vec::new() };
    let mut found = [(one, other, ends[0]), (other, one, ends[1])];
    order::sort_by_key(&mut found, |(reads, ..)| desk.port_set(reads.0, reads.1).is_some());
    let offer = |(reads, met, (item, port)): ((ItemRef, usize), _, &(ItemRef, String))| {
        let mut then = Vec::new();
        let mut any_of = numbers_that_settle(desk, reads, met);
        any_of.retain(|settling| {
            let tried = with_read(desk, build, (*item, port), &settling.parts);
            let settles = !is_open(finding, &tried) && !tried.findings.iter().any(|it| differs(it, finding.subject));
            then.extend(settles.then_some(tried));
            settles
        });
        let check = Check::ReadParts { item: *item, port: port.clone(), any_of };
        let stakes = Stakes::of(finding.question, answer, &then)?;
        Some((check, Chance::AsStated, Some(stakes)))
    };
    found.into_iter().filter_map(offer).collect()
}

/// The build judged with these numbers read.
fn with_read(desk: &Desk, build: &Build, (item, port): (ItemRef, &String), parts: &[String]) -> Answer {
    let mut build = build.clone();
    let (parts, by, when) = (parts.to_vec(), String::new(), String::new());
    build.side.read.push(NumberRead { item, port: port.clone(), parts, by, when });
    judge(desk, &build)
}

/// Whether a number that was read leaves its joint open.
fn differs(finding: &Finding, subject: Subject) -> bool {
    finding.code == "number-read-differs" && finding.subject == subject && finding.verdict == Verdict::CheckFirst
}

/// Whether a finding is still open in another answer.
fn is_open(finding: &Finding, then: &Answer) -> bool {
    let is_it = |it: &Finding| (it.code, it.subject) == (finding.code, finding.subject) && it.checks == finding.checks;
    then.findings.iter().any(|it| it.verdict == Verdict::CheckFirst && is_it(it))
}

/// Whether something to look at is a port of the item or one of its holes: then what is seen can be entered.
fn names_port(desk: &Desk, item: ItemRef, what: &str) -> bool {
    let name = what.rsplit_once("/hole-").map_or(what, |(port, _)| port);
    desk.catalogue().body(item).ports.iter().any(|port| port.name == name)
}

/// What hangs on it whether something is seen, if both ways settle the finding.
fn seen_or_not(
    desk: &Desk,
    build: &Build,
    answer: &Answer,
    finding: &Finding,
    (item, what): (ItemRef, &String),
) -> Option<Stakes> {
    let then = [Presence::Yes, Presence::No].map(|presence| {
        let mut build = build.clone();
        build.side.looked.insert((item, what.clone()), presence);
        judge(desk, &build)
    });
    if then.iter().any(|then| is_open(finding, then)) { None } else { Stakes::of(finding.question, answer, &then) }
}

/// Whether two checks are done by the same act; the sharper demand on accuracy is kept by order.
fn same_act(a: &Check, b: &Check) -> bool {
    match (a, b) {
        (
            Check::Measure { item, port, dimension, .. },
            Check::Measure { item: other, port: other_port, dimension: other_dimension, .. },
        ) => item == other && port == other_port && dimension == other_dimension,
        _ => a == b,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::Unstated;
    use crate::item::{ItemRef, MachineId};
    use crate::quantity::Length;

    fn measure(machine: usize, port: &str, dimension: &str, within: Option<f64>) -> Check {
        Check::Measure {
            item: ItemRef::Machine(MachineId::at(machine)),
            port: port.to_owned(),
            dimension: dimension.to_owned(),
            within: within.map(Length::from_mm),
        }
    }

    #[test]
    fn one_dimension_of_one_port_is_measured_once_however_precisely() {
        let one = measure(0, "axle plate", "bolt", None);
        assert!(same_act(&one, &measure(0, "axle plate", "bolt", Some(0.5))));
        for other in [
            measure(1, "axle plate", "bolt", None),
            measure(0, "front plate", "bolt", None),
            measure(0, "axle plate", "thickness", None),
            Check::FindOut { item: ItemRef::Machine(MachineId::at(0)), what: Unstated::Mass },
        ] {
            assert!(!same_act(&one, &other) && !same_act(&other, &one) && same_act(&other, &other), "{other:?}");
        }
    }
}
