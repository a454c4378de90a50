//! Parts to buy: what the build needs, less what is on hand and what comes with something else.

use std::collections::BTreeMap;

use super::answer::{ComeBy, PartsLine, PartsToBuy};
use crate::build::Build;
use crate::fit::context::Context;
use crate::item::{Catalogue, ItemRef, SuppliedWith};
use crate::quantity::Money;

/// One line an item, carriers first. The machine counts as on hand unless the catalogue prices it
/// and the build does not own it.
pub(crate) fn parts_to_buy(context: &Context) -> PartsToBuy {
    let (catalogue, build) = (context.catalogue(), context.build);
    let PartsToBuy { lines, fittings, .. } = bought(catalogue, build);
    let to_buy = lines.iter().filter(|line| line.come_by == ComeBy::Buy);
    let total = to_buy
        .map(|line| line.price.map(|price| price.times(line.quantity)))
        .try_fold(Money::ZERO, |sum, price| price.map(|price| sum.plus(price)));
    PartsToBuy { lines, fittings, total }
}

/// The lines and fittings alone: what they cost is known before a build is judged.
pub(crate) fn bought(catalogue: &Catalogue, build: &Build) -> PartsToBuy {
    let mut counts: BTreeMap<ItemRef, u32> = BTreeMap::new();
    let mut order = Vec::new();
    for item in build.items() {
        *counts.entry(item).or_insert_with(|| {
            order.push(item);
            0
        }) += 1;
    }
    let line = |item| PartsLine {
        item,
        quantity: counts.get(&item).copied().unwrap_or_default(),
        come_by: come_by(catalogue, build, item),
        price: catalogue.body(item).price,
    };
    let lines = order.into_iter().map(line).collect();
    PartsToBuy { lines, fittings: fittings(catalogue, build), ..PartsToBuy::default() }
}

fn fittings(catalogue: &Catalogue, build: &Build) -> Vec<String> {
    let (Some(frame), Some(machine)) = (build.choices.carrying.frame(), build.choices.machine) else {
        return Vec::new();
    };
    let (requires, fitted) = (&catalogue.frame(frame).requires, &catalogue.machine(machine).fitted);
    requires.iter().filter(|what| !fitted.contains(what)).cloned().collect()
}

fn come_by(catalogue: &Catalogue, build: &Build, item: ItemRef) -> ComeBy {
    if build.side.on_hand.contains(&item) {
        return ComeBy::OnHand;
    }
    let ItemRef::Seat(id) = item else { return ComeBy::Buy };
    let with = match catalogue.seat(id).supplied_with {
        SuppliedWith::Kit => None,
        SuppliedWith::Machine => build.choices.machine.map(ItemRef::Machine),
        SuppliedWith::Frame => build.choices.carrying.frame().map(ItemRef::Frame),
        SuppliedWith::Implement => build.choices.implement.map(ItemRef::Implement),
    };
    let seat = &catalogue.seat(id).body;
    match with {
        Some(with) if seat.listed_with.is_empty() || seat.listed_with.contains(&catalogue.body(with).id) => {
            ComeBy::ComesWith(with)
        }
        _ => ComeBy::Buy,
    }
}
