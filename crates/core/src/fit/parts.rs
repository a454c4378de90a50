//! Parts to buy: what the build needs, less what is on hand and what comes with something else.

use super::answer::{ComeBy, PartsLine, PartsToBuy};
use super::context::Context;
use crate::finding::{Finding, Subject, Value};
use crate::item::{ItemRef, SuppliedWith};
use crate::ordered::Map;
use crate::quantity::{Money, Work};

/// One line an item, carriers first. The machine counts as on hand unless the catalogue prices it
/// and the build does not own it.
///
/// The work is that of the adapters and of the holes to be drilled or opened up, decided or not: without them it does not go on.
pub(super) fn parts_to_buy(context: &Context, findings: &[Finding]) -> PartsToBuy {
    let mut counts: Map<ItemRef, u32> = Map::new();
    let mut order = Vec::new();
    for item in context.build.items() {
        *counts.or_insert_with(item, || {
            order.push(item);
            0
        }) += 1;
    }
    let lines: Vec<PartsLine> = order
        .into_iter()
        .map(|item| PartsLine {
            item,
            quantity: counts.get(&item).copied().unwrap_or_default(),
            come_by: come_by(context, item),
            price: context.catalogue().body(item).price,
        })
        .collect();
    let to_buy = lines.iter().filter(|line| line.come_by == ComeBy::Buy);
    let total = to_buy
        .map(|line| line.price.map(|price| price.times(line.quantity)))
        .try_fold(Money::ZERO, |sum, price| price.map(|price| sum.plus(price)));
    let adapters = context.build.adapters.iter().map(|&id| context.catalogue().adapter(id).work).sum::<Work>();
    let holes = findings
        .iter()
        .filter(|finding| matches!(finding.subject, Subject::Joint(..)))
        .filter_map(|finding| match finding.figure("work") {
            Some(Value::Work(work)) => Some(*work),
            _ => None,
        })
        .sum::<Work>();
    PartsToBuy { lines, fittings: fittings(context), total, work: adapters + holes }
}

fn fittings(context: &Context) -> Vec<String> {
    let (Some((_, frame)), Some((_, machine))) = (context.frame(), context.machine()) else { return Vec::new() };
    frame.requires.iter().filter(|what| !machine.fitted.contains(what)).cloned().collect()
}

fn come_by(context: &Context, item: ItemRef) -> ComeBy {
    if context.build.on_hand.contains(&item) {
        return ComeBy::OnHand;
    }
    let ItemRef::Seat(id) = item else { return ComeBy::Buy };
    let with = match context.catalogue().seat(id).supplied_with {
        SuppliedWith::Kit => None,
        SuppliedWith::Machine => context.build.machine.map(ItemRef::Machine),
        SuppliedWith::Frame => context.build.carrying.frame().map(ItemRef::Frame),
        SuppliedWith::Implement => context.build.implement.map(ItemRef::Implement),
    };
    let seat = &context.catalogue().seat(id).body;
    match with {
        Some(with) if seat.listed_with.is_empty() || seat.listed_with.contains(&context.catalogue().body(with).id) => {
            ComeBy::ComesWith(with)
        }
        _ => ComeBy::Buy,
    }
}
