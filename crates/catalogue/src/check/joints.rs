//! Joints that the guide lists but whose dimensions cannot mate.

use std::collections::BTreeSet;

use fitup_core::build::{Build, Carrying, Choices, Seating};
use fitup_core::finding::{Subject, Verdict};
use fitup_core::fit::{Desk, judge};
use fitup_core::item::{Catalogue, GuideRow, ItemRef, Named};

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
        // That a set stands twice is said elsewhere.
        if !judged.insert(*row) {
            continue;
        }
        for finding in judge(&desk, &build_of(row)).findings {
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

/// The core's finding for it.
const DISAGREE: &str = "listing-and-dimensions-disagree";

fn build_of(row: &GuideRow) -> Build {
    Build::from(Choices {
        machine: named(row.machine),
        carrying: match row.frame {
            Named::Any => Carrying::Open,
            Named::Without => Carrying::Hitch,
            Named::This(frame) => Carrying::Frame(frame),
        },
        seating: named(row.seat).map_or(Seating::Open, Seating::This),
        implement: named(row.implement),
    })
}

fn named<T>(column: Named<T>) -> Option<T> {
    match column {
        Named::This(item) => Some(item),
        Named::Any | Named::Without => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use fitup_core::item::FrameId;

    #[test]
    fn the_finding_looked_for_is_one_of_the_cores() {
        assert!(fitup_core::fit::declaration(DISAGREE).is_some());
        let row =
            GuideRow { machine: Named::Any, frame: Named::This(FrameId(0)), seat: Named::Any, implement: Named::Any };
        assert_eq!(build_of(&row).choices.carrying, Carrying::Frame(FrameId(0)));
    }
}
