//! Remedies as plain data.

use fitup_catalogue::BuildFile;
use fitup_core::item::Catalogue;
use fitup_core::search::Remedy;
use fitup_words::verdict_key;
use serde::Serialize;

/// A remedy.
#[derive(Serialize)]
pub struct RemedyReport {
    /// Its verdict.
    verdict: &'static str,
    /// The build with the change.
    build: BuildFile,
    /// How many steps it takes.
    steps: usize,
    /// What has to be bought more, in hundredths of the currency; nothing if a price is missing.
    buy_more_hundredths: Option<i64>,
    /// Workshop time more.
    work_more_h: f64,
    /// Length more; nothing if it is not known.
    length_more_mm: Option<f64>,
    /// Departure angle more; nothing if it is not known.
    departure_more_deg: Option<f64>,
}

impl RemedyReport {
    /// A remedy.
    pub fn of(catalogue: &Catalogue, remedy: &Remedy) -> Self {
        Self {
            verdict: verdict_key(remedy.verdict).trim_start_matches("verdict-"),
            build: BuildFile::of(catalogue, &remedy.build),
            steps: remedy.steps.len(),
            buy_more_hundredths: remedy.buy_more.map(fitup_core::quantity::Money::hundredths),
            work_more_h: remedy.work_more.hours(),
            length_more_mm: remedy.length_more.map(fitup_core::quantity::Length::mm),
            departure_more_deg: remedy.departure_more.map(fitup_core::quantity::Angle::deg),
        }
    }
}
