//! Sets that the guide lists but that come out blocked: joints whose dimensions cannot mate, and whatever else
//! keeps them from being mounted.

use std::collections::BTreeSet;

use fitup_core::build::{Build, Choices};
use fitup_core::finding::{Subject, Verdict};
use fitup_core::fit::{Desk, judge};
use fitup_core::item::{Catalogue, GuideRow, ItemRef};

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;

/// Judges every set of the guide, as far as it names its items, and reports joints where listing
/// and dimensions disagree, each where it is first listed.
pub fn listed_joints(catalogue: &Catalogue, report: &mut Report) {
    let Some(guide) = &catalogue.guide else { return };
    let desk = Desk::new(catalogue.clone());
    let mut said: BTreeSet<Subject> = BTreeSet::default();
    let mut judged: BTreeSet<GuideRow> = BTreeSet::default();
    for (index, row) in guide.rows.iter().enumerate() {
        // That a set stands twice is said elsewhere; and what comes of rows that are asked about already is
        // not known yet.
        if !judged.insert(*row) || is_asked_about(row, report) {
            continue;
        }
        let answer = judge(&desk, &Build::from(Choices::listed(row)));
        let blocked = answer.reason().filter(|reason| answer.verdict == Verdict::WontMount && reason.code != DISAGREE);
        if let Some(reason) = blocked {
            let sets = At::top("guide");
            let sets = sets.field("sets");
            report.add(Problem::new(Code::ListedBlocked, sets.index(index)).with("reason", reason.code));
        }
        for finding in answer.findings {
            let Subject::Joint(role, carrier, carried) = finding.subject else { continue };
            if finding.code == DISAGREE && finding.verdict != Verdict::BoltsUp && said.insert(finding.subject) {
                let sets = At::top("guide");
                let sets = sets.field("sets");
                let problem = Problem::new(Code::ListedCannotMate, sets.index(index)).with("role", role.word());
                let id = |item: ItemRef| shortened(&catalogue.body(item).id);
                report.add(problem.with("a", id(carrier)).with("b", id(carried)));
            }
        }
    }
}

/// Whether something is told of one of the rows that a set names.
fn is_asked_about(row: &GuideRow, report: &Report) -> bool {
    let rows = [
        row.machine.item().map(|it| At::top("machines").index(it.0 as usize).to_string()),
        row.frame.item().map(|it| At::top("frames").index(it.0 as usize).to_string()),
        row.seat.item().map(|it| At::top("seats").index(it.0 as usize).to_string()),
        row.implement.item().map(|it| At::top("implements").index(it.0 as usize).to_string()),
    ];
    let is_of = |path: &str| {
        rows.iter()
            .flatten()
            .any(|row| path.strip_prefix(row.as_str()).is_some_and(|rest| rest.is_empty() || rest.starts_with('.')))
    };
    report.problems().iter().any(|problem| is_of(&problem.path))
}

/// The core's finding for it.
const DISAGREE: &str = "listing-and-dimensions-disagree";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_finding_looked_for_is_one_of_the_cores() {
        assert!(fitup_core::fit::declaration(DISAGREE).is_some());
    }
}
