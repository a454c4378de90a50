//! What would help as plain data.

use fitup_core::finding::Finding;
use fitup_core::item::Catalogue;
use fitup_core::quantity::{Length, Money};
use fitup_core::search::Remedy;
use serde::Serialize;

use super::figures::tidy;
use super::finding::verdict_name;
use crate::Words;

/// One remedy: what is done, and what the build comes to with it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RemedyReport {
    /// What is done, a phrase for each step.
    pub steps: Vec<String>,
    /// The verdict with it.
    pub verdict: &'static str,
    /// Codes of the findings that are gone with it.
    pub settles: Vec<&'static str>,
    /// Codes of the findings that keep it from a better verdict.
    pub leaves: Vec<&'static str>,
    /// What has to be bought more, in the catalogue's currency; nothing if a price is not known.
    pub buy_more: Option<f64>,
    /// Workshop time more.
    pub work_more_h: Option<f64>,
    /// Length more; nothing if it is not known.
    pub length_more_mm: Option<f64>,
    /// Departure angle more; nothing if it is not known.
    pub departure_more_deg: Option<f64>,
}

impl Words {
    /// One remedy as plain data.
    pub fn remedy(&self, catalogue: &Catalogue, remedy: &Remedy) -> RemedyReport {
        let codes = |findings: &[Finding]| findings.iter().map(|finding| finding.code).collect();
        RemedyReport {
            steps: self.remedy_steps(catalogue, remedy),
            verdict: verdict_name(remedy.verdict),
            settles: codes(&remedy.settles),
            leaves: codes(&remedy.leaves),
            buy_more: remedy.buy_more.map(|money: Money| money.hundredths() as f64 / 100.0),
            work_more_h: tidy(remedy.work_more.hours()),
            length_more_mm: remedy.length_more.and_then(|more: Length| tidy(more.mm())),
            departure_more_deg: remedy.departure_more.and_then(|more| tidy(more.deg())),
        }
    }
}
