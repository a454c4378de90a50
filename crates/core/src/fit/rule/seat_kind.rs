//! Whether the chosen seat arrangement can exist with this machine, frame and implement.

use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::item::{ItemRef, SeatKind, SuppliedWith};

/// A turning seat needs a machine whose seat turns; an implement worked from a seat needs one that
/// faces it; the implement's own seat needs an implement that brings one; a seat that comes only
/// with another item needs that item.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let Some((id, seat)) = context.seat() else { return };
    let item = ItemRef::Seat(id);
    let mut say = |code, verdict| out.push(Finding::new(code, Subject::Operator, verdict, Grade::Listed));
    if seat.kind == SeatKind::Turning
        && let Some((_, machine)) = context.machine()
        && !machine.operator_seat.is_some_and(|own| own.turns)
    {
        say("seat-turns-not", Verdict::WontMount);
    }
    if let Some((_, implement)) = context.implement() {
        if seat.kind == SeatKind::ImplementsOwn && !implement.own_seat {
            say("implement-own-seat", Verdict::WontMount);
        }
        if seat.kind == SeatKind::Forward && implement.worked_from_seat {
            say("seat-faces-forward", Verdict::WontMount);
        }
    }
    if let Some((supplier, has)) = supplier(context, seat.supplied_with)
        && !seat.body.listed_with.is_empty()
        && !has.is_some_and(|with| seat.body.listed_with.contains(&context.catalogue().body(with).id))
    {
        out.push(
            Finding::new("seat-without-its-supplier", Subject::Item(item), Verdict::CheckFirst, Grade::Listed)
                .with("supplier", Value::Label(supplier.to_owned()))
                .check(crate::finding::Check::FindOut { item, what: "supplier" }),
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
            crate::build::Carrying::Open => None,
            carrying => Some(("frame", carrying.frame().map(ItemRef::Frame))),
        },
    }
}
