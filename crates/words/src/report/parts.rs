//! Parts to buy as plain data.

use fitup_core::fit::{ComeBy, PartsToBuy};
use fitup_core::item::Catalogue;
use fitup_core::quantity::Money;
use serde::Serialize;

use super::id;

/// What has to be bought and done.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PartsReport {
    /// One line an item.
    pub lines: Vec<PartsLineReport>,
    /// Things that have to be on the machine and are no items of the catalogue.
    pub fittings: Vec<String>,
    /// Sum of what is to buy, in the catalogue's currency; nothing if a price is not known.
    pub total: Option<f64>,
}

/// One line.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PartsLineReport {
    /// Id.
    pub item: String,
    /// How many.
    pub quantity: u32,
    /// `buy`, `on-hand` or `comes-with`.
    pub come_by: &'static str,
    /// The item it comes with.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub comes_with: Option<String>,
    /// Price of one, in the catalogue's currency.
    pub price: Option<f64>,
}

pub(super) fn report(catalogue: &Catalogue, parts: &PartsToBuy) -> PartsReport {
    let amount = |money: Money| money.hundredths() as f64 / 100.0;
    PartsReport {
        lines: parts
            .lines
            .iter()
            .map(|line| {
                let (come_by, comes_with) = match line.come_by {
                    ComeBy::Buy => ("buy", None),
                    ComeBy::OnHand => ("on-hand", None),
                    ComeBy::ComesWith(item) => ("comes-with", Some(id(catalogue, item))),
                };
                PartsLineReport {
                    item: id(catalogue, line.item),
                    quantity: line.quantity,
                    come_by,
                    comes_with,
                    price: line.price.map(amount),
                }
            })
            .collect(),
        fittings: parts.fittings.clone(),
        total: parts.total.map(amount),
    }
}
