//! A margin with its uncertainty, as a verdict and figures.

use super::Meeting;
use crate::finding::{Check, Finding, Value, Verdict};
use crate::fit::found::Found;
use crate::fit::mating::tolerance::{Assessment, Contribution, Standing, assess};
use crate::item::{ItemRef, Port};
use crate::quantity::Length;

/// What a margin comes to: certain one way, certain the other, or open.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Decided {
    Fits,
    Open,
    Misfits,
}

/// A margin that has been weighed against the half ranges of its figures.
pub(super) struct Weighed {
    pub decided: Decided,
    assessment: Assessment,
}

impl Weighed {
    /// Weighs a margin; figures that are not finite leave it open with nothing known.
    pub fn new(margin: Length, half_ranges: &[Length]) -> Option<Self> {
        let contributions: Vec<Contribution> =
            half_ranges.iter().map(|h| Contribution { half_range: h.m(), sensitivity: 1.0 }).collect();
        let assessment = assess(margin.m(), &contributions)?;
        let decided = match assessment.standing {
            Standing::CertainFit => Decided::Fits,
            Standing::CertainMisfit => Decided::Misfits,
            Standing::ProbableFit | Standing::Undecided | Standing::ProbableMisfit => Decided::Open,
        };
        Some(Self { decided, assessment })
    }

    /// Sum of all effects.
    pub fn worst_case(&self) -> Length {
        Length::from_m(self.assessment.worst_case)
    }

    /// The half range that would settle the margin if one figure had it, largest that does.
    pub fn settles(&self) -> Option<Length> {
        let all = self.assessment.settling_worst_case.iter().flatten();
        all.copied().max_by(f64::total_cmp).map(Length::from_m)
    }

    /// An open finding with what is known of its chances and what would settle it.
    pub fn open(&self, finding: Finding, item: ItemRef, port: &str, dimension: &str) -> Finding {
        debug_assert_eq!(finding.verdict, Verdict::CheckFirst, "an open margin is something to check");
        let mut finding = finding.with("probability", Value::Share(self.assessment.fit_probability));
        if let Some(within) = self.settles() {
            finding = finding.with("settles", Value::Length(within));
        }
        finding.check(Check::Measure {
            item,
            port: port.to_owned(),
            dimension: dimension.to_owned(),
            within: self.settles(),
        })
    }
}

impl Meeting<'_> {
    /// The half ranges of two holes that share a bolt, carrier's first.
    pub fn hole_half_ranges(&self, pair: (usize, usize)) -> [Length; 2] {
        let of = |found: Option<&Found>, port: &Port, hole| {
            found.map_or_else(|| port.usual_half_range(), |found| found.hole_half_range(hole))
        };
        [of(self.found[0], self.carrier_port, pair.0), of(self.found[1], self.carried_port, pair.1)]
    }

    /// The half ranges of the least known hole of each port.
    pub fn greatest_hole_half_ranges(&self) -> [Length; 2] {
        let of = |found: Option<&Found>, port: &Port| {
            found.map_or_else(|| port.usual_half_range(), Found::greatest_hole_half_range)
        };
        [of(self.found[0], self.carrier_port), of(self.found[1], self.carried_port)]
    }

    /// The half ranges of the two ports' places.
    pub fn place_half_ranges(&self) -> [Length; 2] {
        let of =
            |found: Option<&Found>, port: &Port| found.map_or_else(|| port.usual_half_range(), Found::place_half_range);
        [of(self.found[0], self.carrier_port), of(self.found[1], self.carried_port)]
    }
}
