//! Which unit it could be, as plain data.

use fitup_core::item::Catalogue;
use fitup_core::search::{Identified, TellApart};
use serde::Serialize;

use super::figures::tidy;
use super::id;
use crate::Words;

/// What was observed comes to.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct IdentifyReport {
    /// Candidates, likeliest first.
    pub candidates: Vec<CandidateReport>,
    /// What would tell the first two apart, most telling first.
    pub next: Vec<NextLookReport>,
}

/// A port that it could be.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CandidateReport {
    /// The item.
    pub item: String,
    /// Its port.
    pub port: String,
    /// Its share of the likelihood, 0 to 1.
    pub likelihood: f64,
    /// Greatest difference in units of what the two values may be off together.
    pub worst: Option<f64>,
    /// How many of the measured dimensions it states.
    pub compared: usize,
    /// Whether it bears the numbers that were read.
    pub bears: Option<bool>,
    /// Whether it has as many holes or points as were counted.
    pub counts: Option<bool>,
    /// In sentences.
    pub text: Vec<String>,
}

/// A further look.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct NextLookReport {
    /// `measure`, `read`, `count`.
    pub kind: &'static str,
    /// The dimension to measure.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dimension: Option<String>,
    /// In a sentence.
    pub text: String,
}

impl Words {
    /// What was observed comes to, as data.
    pub fn identify_report(&self, catalogue: &Catalogue, found: &Identified) -> IdentifyReport {
        let candidates = found.candidates.iter().map(|candidate| {
            let (named, said) = self.candidate(catalogue, candidate);
            CandidateReport {
                item: id(catalogue, candidate.item),
                port: candidate.port.clone(),
                likelihood: candidate.likelihood,
                worst: tidy(candidate.worst),
                compared: candidate.compared,
                bears: candidate.bears,
                counts: candidate.counts,
                text: std::iter::once(named).chain(said).collect(),
            }
        });
        let next = found.tell_apart.iter().map(|tell| {
            let (kind, dimension) = match tell {
                TellApart::Measure { dimension, .. } => ("measure", Some(dimension.clone())),
                TellApart::Read { .. } => ("read", None),
                TellApart::Count { .. } => ("count", None),
            };
            NextLookReport { kind, dimension, text: self.tell_apart(catalogue, found, tell) }
        });
        IdentifyReport { candidates: candidates.collect(), next: next.collect() }
    }
}
