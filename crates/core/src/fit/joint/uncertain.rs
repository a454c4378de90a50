//! A margin with its uncertainty, as a verdict and figures.

use super::Meeting;
use crate::finding::Check;
use crate::fit::context::found::{greatest_hole_half_range, hole_half_range, place_half_range};
use crate::fit::mating::tolerance::{Assessment, Contribution, Standing, assess};
use crate::item::{DimensionName, ItemRef};
use crate::quantity::Length;

/// What a margin comes to: certain one way, certain the other, or open.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
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

    /// The probability that it fits.
    pub const fn probability(&self) -> f64 {
        self.assessment.fit_probability
    }

    /// The measurement that would settle it.
    pub fn check(&self, item: ItemRef, port: &str, dimension: DimensionName) -> Check {
        Check::Measure { item, port: port.to_owned(), dimension: dimension.to_string(), within: self.settles() }
    }
}

impl Meeting<'_> {
    /// The half ranges of two holes that share a bolt, carrier's first.
    pub fn hole_half_ranges(&self, pair: (usize, usize)) -> [Length; 2] {
        [hole_half_range(self.carrier_port, pair.0), hole_half_range(self.carried_port, pair.1)]
    }

    /// The half ranges of the least known hole of each port.
    pub fn greatest_hole_half_ranges(&self) -> [Length; 2] {
        [self.carrier_port, self.carried_port].map(greatest_hole_half_range)
    }

    /// The half ranges of the two ports' places.
    pub fn place_half_ranges(&self) -> [Length; 2] {
        [self.carrier_port, self.carried_port].map(place_half_range)
    }
}
