//! Parts to buy: what the build needs, less what is on hand and what comes with something else.

use std::collections::BTreeMap;

use super::answer::{ComeBy, PartsLine, PartsToBuy};
use crate::build::Build;
use crate::fit::context::Context;
use crate::item::{Catalogue, EquipmentId, ItemRef, On, SuppliedWith};
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
    let needed = equipment(catalogue, build).into_iter().map(ItemRef::Equipment);
    for item in build.items().into_iter().chain(needed) {
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

/// What the frame requires on the machine that neither is on it nor can be put on.
fn fittings(catalogue: &Catalogue, build: &Build) -> Vec<String> {
    let (Some(frame), Some(machine)) = (build.choices.carrying.frame(), build.choices.machine) else {
        return Vec::new();
    };
    let is_there = |kind: &&String| {
        catalogue.equipment_for(machine).any(|(_, piece)| piece.kind == **kind) || catalogue.has_on(machine, kind)
    };
    catalogue.frame(frame).requires.iter().filter(|kind| !is_there(kind)).cloned().collect()
}

/// The equipment that goes on the machine: what is decided, and what the frame requires.
fn equipment(catalogue: &Catalogue, build: &Build) -> Vec<EquipmentId> {
    let Some(id) = build.choices.machine else { return Vec::new() };
    let machine = catalogue.machine(id);
    let is_more = |on: &&On| !machine.fitted.contains(&catalogue.equipment(on.id).body.id);
    let mut all: Vec<EquipmentId> = machine.on.iter().filter(is_more).map(|on| on.id).collect();
    let requires = build.choices.carrying.frame().map_or(&[][..], |frame| &catalogue.frame(frame).requires);
    for kind in requires.iter().filter(|kind| !catalogue.has_on(id, kind)) {
        all.extend(catalogue.equipment_for(id).find(|(_, piece)| piece.kind == *kind).map(|(id, _)| id));
    }
    all
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
