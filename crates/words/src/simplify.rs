//! Findings gathered by what causes them, before any wording, so that a shared cause is said once.

use fitup_core::finding::{Check, Finding, Subject, Verdict};
use fitup_core::item::ItemRef;

/// A cause, with the findings that come of it.
#[derive(Debug, Clone, PartialEq)]
pub enum Cause {
    /// Findings that say the same; of several joints between two items, all their joints.
    Same(Vec<usize>),
    /// Values that one item's row leaves unsaid, and everything that is open because of it.
    Missing {
        /// The item.
        item: ItemRef,
        /// Names of the values, in the order they were missed.
        what: Vec<String>,
        /// The findings.
        findings: Vec<usize>,
    },
}

impl Cause {
    /// Indices of its findings, in the order given.
    pub fn findings(&self) -> &[usize] {
        match self {
            Self::Same(findings) | Self::Missing { findings, .. } => findings,
        }
    }

    /// The worst verdict of its findings.
    pub fn verdict(&self, all: &[Finding]) -> Verdict {
        self.findings()
            .iter()
            .filter_map(|&index| all.get(index))
            .map(|finding| finding.verdict)
            .max()
            .unwrap_or_default()
    }
}

/// Gathers findings by cause, in the order in which each cause first appears. Every finding is in
/// exactly one cause.
pub fn simplify(findings: &[Finding]) -> Vec<Cause> {
    let mut causes: Vec<Cause> = Vec::new();
    for (index, finding) in findings.iter().enumerate() {
        let known = causes.iter_mut().find(|cause| match cause {
            Cause::Same(members) => members.first().is_some_and(|&first| says_the_same(&findings[first], finding)),
            Cause::Missing { item, findings: members, .. } => {
                missing(finding).is_some_and(|(of, _)| of == *item)
                    && members.first().is_some_and(|&first| asks_alike(&findings[first], finding))
            }
        });
        match (known, missing(finding)) {
            (Some(Cause::Same(members)), _) => members.push(index),
            (Some(Cause::Missing { what, findings, .. }), Some((_, value))) => {
                findings.push(index);
                if !what.iter().any(|known| known == value) {
                    what.push(value.to_owned());
                }
            }
            (None | Some(Cause::Missing { .. }), None) => causes.push(Cause::Same(vec![index])),
            (None, Some((item, value))) => {
                causes.push(Cause::Missing { item, what: vec![value.to_owned()], findings: vec![index] });
            }
        }
    }
    // What one finding alone misses is said by that finding.
    for cause in &mut causes {
        if let Cause::Missing { findings, .. } = cause
            && findings.len() == 1
        {
            *cause = Cause::Same(std::mem::take(findings));
        }
    }
    causes
}

/// The item and the value that an open finding says is not stated.
fn missing(finding: &Finding) -> Option<(ItemRef, &str)> {
    finding.figure("missing")?;
    finding.checks.iter().find_map(|check| match check {
        Check::FindOut { item, what } => Some((*item, what.word())),
        Check::Measure { item, dimension, .. } => Some((*item, dimension.as_str())),
        _ => None,
    })
}

/// Whether what is missing is asked for in one way: values of the item's row, or dimensions of the
/// same joint.
fn asks_alike(a: &Finding, b: &Finding) -> bool {
    let of_joint = |finding: &Finding| matches!(finding.subject, Subject::Joint(..));
    if of_joint(a) || of_joint(b) { a.subject == b.subject } else { true }
}

/// Whether two findings differ in the joint's role and in nothing else that is said.
fn says_the_same(a: &Finding, b: &Finding) -> bool {
    let (Subject::Joint(_, a_carrier, a_carried), Subject::Joint(_, b_carrier, b_carried)) = (a.subject, b.subject)
    else {
        return a == b;
    };
    let said =
        |finding: &Finding| finding.figures.iter().filter(|figure| figure.name != "line").cloned().collect::<Vec<_>>();
    a.code == b.code
        && (a_carrier, a_carried) == (b_carrier, b_carried)
        && a.verdict == b.verdict
        && a.evidence == b.evidence
        && said(a) == said(b)
}

#[cfg(test)]
mod tests {
    use fitup_core::finding::{Grade, Unstated, Value};
    use fitup_core::item::{FrameId, ImplementId, MachineId, Role};
    use fitup_yard::finding;

    use super::*;

    const FRAME: ItemRef = ItemRef::Frame(FrameId(0));
    const ARM: ItemRef = ItemRef::Implement(ImplementId(0));

    fn listed(role: Role, carried: ItemRef) -> Finding {
        finding("joint-listed", Subject::Joint(role, FRAME, carried), Verdict::BoltsUp, Grade::Listed, &[])
    }

    fn lacks(code: &str, item: ItemRef, what: Unstated) -> Finding {
        let missing = [("missing", Value::Word(what.word()))];
        finding(code, Subject::Loads, Verdict::CheckFirst, Grade::None, &missing).check(Check::FindOut { item, what })
    }

    #[test]
    fn joints_listed_for_the_same_pair_are_one_cause() {
        let other = ItemRef::Implement(ImplementId(1));
        let findings = [listed(Role::Rack, ARM), listed(Role::Rack, other), listed(Role::Pressure, ARM)];
        assert_eq!(simplify(&findings), [Cause::Same(vec![0, 2]), Cause::Same(vec![1])]);
    }

    #[test]
    fn what_one_item_lacks_is_one_cause_whatever_is_open_for_it() {
        let findings = [
            lacks("loads-unknown", ARM, Unstated::Mass),
            lacks("loads-unknown", ARM, Unstated::CentreOfGravity),
            lacks("lift-unknown", ARM, Unstated::Mass),
        ];
        let what = vec!["mass".to_owned(), "centre-of-gravity".to_owned()];
        assert_eq!(simplify(&findings), [Cause::Missing { item: ARM, what, findings: vec![0, 1, 2] }]);
    }

    #[test]
    fn dimensions_that_one_joint_lacks_are_one_cause_and_those_of_another_stay_apart() {
        let measure = |role, dimension: &str| {
            let (subject, dimension) = (Subject::Joint(role, FRAME, ARM), dimension.to_owned());
            let missing = [("missing", Value::Dimension(dimension.clone()))];
            let check = Check::Measure { item: ARM, port: "hooks".to_owned(), dimension, within: None };
            finding("hooks-unknown", subject, Verdict::CheckFirst, Grade::None, &missing).check(check)
        };
        let findings = [measure(Role::Rack, "drop"), measure(Role::Rack, "setback"), measure(Role::SeatDeck, "drop")];
        let what = vec!["drop".to_owned(), "setback".to_owned()];
        let joint = Cause::Missing { item: ARM, what, findings: vec![0, 1] };
        assert_eq!(simplify(&findings), [joint, Cause::Same(vec![2])]);
    }

    #[test]
    fn one_missing_value_of_one_finding_stays_that_finding() {
        let machine = ItemRef::Machine(MachineId(0));
        let findings = [lacks("loads-unknown", ARM, Unstated::Mass), lacks("power-unknown", machine, Unstated::Power)];
        assert_eq!(simplify(&findings), [Cause::Same(vec![0]), Cause::Same(vec![1])]);
    }

    #[test]
    fn findings_with_other_figures_stay_apart_and_every_one_is_kept_once() {
        let axle = |name| {
            let axle = [("axle", Value::Word(name))];
            finding("axle-within-rating", Subject::Loads, Verdict::BoltsUp, Grade::Drawing, &axle)
        };
        let findings = [axle("front"), axle("rear"), listed(Role::Rack, ARM)];
        let causes = simplify(&findings);
        let mut all: Vec<usize> = causes.iter().flat_map(|cause| cause.findings().to_vec()).collect();
        all.sort_unstable();
        assert_eq!(causes.len(), 3);
        assert_eq!(all, [0, 1, 2]);
    }
}
