//! Complete sets as plain data.

use fitup_catalogue::BuildFile;
use fitup_core::item::Catalogue;
use fitup_core::search::{Set, SetOrder, Sets};
use serde::Serialize;

use super::figures::tidy;
use super::finding::verdict_name;
use crate::Words;

/// The best complete sets.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SetsReport {
    /// What sets of one answer are ordered by first: `price`, `length`, `departure`, `hours`, `on-hand`.
    pub order: &'static str,
    /// Whether nothing was left out for being too much to look at.
    pub exact: bool,
    /// The sets, best first.
    pub sets: Vec<SetReport>,
}

/// A complete set.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SetReport {
    /// The build.
    pub build: BuildFile,
    /// The worse of fit and work.
    pub verdict: &'static str,
    /// Whether no set is better in one of these and as good in all others: answer, price, length, departure, hours, items to buy.
    pub unbeaten: bool,
    /// What the parts with a price come to, in the catalogue's currency.
    pub buy: f64,
    /// How many parts to buy have no price.
    pub without_price: usize,
    /// Greatest length.
    pub length_mm: Option<f64>,
    /// Departure angle.
    pub departure_deg: Option<f64>,
    /// Workshop time as far as it is stated.
    pub hours_h: Option<f64>,
    /// Whether that is only a part of it.
    pub at_least: bool,
    /// Items to buy.
    pub items_to_buy: usize,
    /// Answer, items, what it comes to.
    pub text: Vec<String>,
}

impl Words {
    /// The best complete sets as data.
    pub fn sets_report(&self, catalogue: &Catalogue, sets: &Sets, order: SetOrder) -> SetsReport {
        let one = |set: &Set| {
            let measures = &set.measures;
            SetReport {
                build: BuildFile::of(catalogue, &set.build),
                verdict: verdict_name(set.verdict),
                unbeaten: set.is_unbeaten,
                buy: measures.price.0.hundredths() as f64 / 100.0,
                without_price: measures.price.1,
                length_mm: measures.length.and_then(|length| tidy(length.mm())),
                departure_deg: measures.departure.and_then(|angle| tidy(angle.deg())),
                hours_h: tidy(measures.hours.0.hours()),
                at_least: measures.hours.1,
                items_to_buy: measures.to_buy,
                text: self.set_lines(catalogue, set),
            }
        };
        SetsReport { order: order.word(), exact: sets.is_exact, sets: sets.found.iter().map(one).collect() }
    }
}
