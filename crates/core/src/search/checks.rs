//! Checks: what would settle the open findings, most telling first.

use crate::finding::{Check, Verdict};
use crate::fit::Answer;
use crate::order;

/// A check with what hangs on it.
#[derive(Debug, Clone, PartialEq)]
pub struct RankedCheck {
    /// What to do.
    pub check: Check,
    /// Indices of the findings it would settle.
    pub findings: Vec<usize>,
    /// The build's verdict if it settles them well.
    pub at_best: Verdict,
    /// The build's verdict if it settles them badly.
    pub at_worst: Verdict,
}

impl RankedCheck {
    /// How many steps of verdict hang on it.
    const fn spread(&self) -> u8 {
        self.at_worst as u8 - self.at_best as u8
    }
}

/// The checks of every open finding, those that could move the verdict farthest first.
///
/// A check that several findings share is one check. At best its findings become *bolts up*; at
/// worst they become *won't mount*; everything else stays as it is.
pub fn checks(answer: &Answer) -> Vec<RankedCheck> {
    let mut ranked: Vec<RankedCheck> = Vec::new();
    for (index, finding) in answer.findings.iter().enumerate() {
        if finding.verdict != Verdict::CheckFirst {
            continue;
        }
        for check in &finding.checks {
            match ranked.iter_mut().find(|known| same_act(&known.check, check)) {
                Some(known) => known.findings.push(index),
                None => ranked.push(RankedCheck {
                    check: check.clone(),
                    findings: vec![index],
                    at_best: Verdict::BoltsUp,
                    at_worst: Verdict::WontMount,
                }),
            }
        }
    }
    for known in &mut ranked {
        let others = answer.findings.iter().enumerate().filter(|(index, _)| !known.findings.contains(index));
        known.at_best = others.map(|(_, finding)| finding.verdict).max().unwrap_or_default();
    }
    // Stable: among equals the order of the findings stays, worst first.
    order::sort_by_key(&mut ranked, |known| std::cmp::Reverse((known.spread(), known.findings.len())));
    ranked
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
            Check::FindOut { item: ItemRef::Machine(MachineId::at(0)), what: "mass" },
        ] {
            assert!(!same_act(&one, &other) && !same_act(&other, &one) && same_act(&other, &other), "{other:?}");
        }
    }
}
