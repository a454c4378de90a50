//! Seat arrangements that come only with another item.

use crate::build::Carrying;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{Body, Catalogue, ItemRef, SuppliedWith};

/// Reads what the arrangement comes with and which items it names.
pub(super) const ALIKE: Alike = Alike {
    machine: |catalogue, a, b| named_alike(catalogue, &a.body, &b.body),
    frame: |catalogue, a, b| named_alike(catalogue, &a.body, &b.body),
    seat: |_, a, b| a.supplied_with == b.supplied_with && a.body.listed_with == b.body.listed_with,
    implement: |catalogue, a, b| named_alike(catalogue, &a.body, &b.body),
};

/// A seat that comes only with another item needs that item.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let Some((id, seat)) = context.seat() else { return };
    let item = ItemRef::Seat(id);
    if let Some((supplier, has)) = supplier(context, seat.supplied_with)
        && !seat.body.listed_with.is_empty()
        && !has.is_some_and(|with| seat.body.listed_with.contains(&context.catalogue().body(with).id))
    {
        out.push(
            Finding::new("seat-without-its-supplier", Subject::Item(item), Verdict::CheckFirst, Grade::Listed)
                .with("supplier", Value::Label(supplier.to_owned()))
                .check(Check::FindOut { item, what: "supplier" }),
        );
    }
}

/// The kind of item an arrangement comes with and the build's item of that kind, once it is
/// chosen; `None` while it is open or if the arrangement is a kit.
fn supplier(context: &Context, with: SuppliedWith) -> Option<(&'static str, Option<ItemRef>)> {
    let build = context.build;
    match with {
        SuppliedWith::Kit => None,
        SuppliedWith::Machine => build.machine.map(|id| ("machine", Some(ItemRef::Machine(id)))),
        SuppliedWith::Implement => build.implement.map(|id| ("implement", Some(ItemRef::Implement(id)))),
        SuppliedWith::Frame => match build.carrying {
            Carrying::Open => None,
            carrying => Some(("frame", carrying.frame().map(ItemRef::Frame))),
        },
    }
}

fn named_alike(catalogue: &Catalogue, a: &Body, b: &Body) -> bool {
    catalogue
        .seats
        .iter()
        .map(|seat| &seat.body.listed_with)
        .all(|named| named.contains(&a.id) == named.contains(&b.id))
}
