//! Seat arrangements that come only with another item.

use super::{Carried, Rule, Seen, View};
use crate::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::fit::desk::Desk;
use crate::item::{Frame, Implement, ItemRef, Machine, Seat, SuppliedWith};
use crate::{findings, words};

findings! {
    /// The seat comes only with an item that is not in the build.
    SeatWithoutItsSupplier = "seat-without-its-supplier", Fit { supplier: Supplier }
}

words! {
    /// The kind of item that a seat comes with.
    Supplier, shown as "kind-" { Machine = "machine", Frame = "frame", Implement = "implement" }
}

/// A seat that comes only with another item needs that item.
pub(super) struct SeatSupplier;

/// The lists of items in which seat arrangements name an item.
#[derive(PartialEq)]
pub struct NamedIn<'c>(Vec<&'c [String]>);

impl<'c> NamedIn<'c> {
    fn of_id(desk: &'c Desk, id: &str) -> Self {
        Self(
            desk.seats_naming(id).iter().map(|&seat| desk.catalogue().seat(seat).body.listed_with.as_slice()).collect(),
        )
    }
}

impl<'c> View<'c, Machine> for NamedIn<'c> {
    fn of(desk: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self::of_id(desk, &machine.body.id)
    }
}

impl<'c> View<'c, Frame> for NamedIn<'c> {
    fn of(desk: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self::of_id(desk, &frame.body.id)
    }
}

impl<'c> View<'c, Implement> for NamedIn<'c> {
    fn of(desk: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self::of_id(desk, &implement.body.id)
    }
}

/// What the arrangement comes with, and the items it names.
#[derive(PartialEq)]
pub struct Supplied<'c> {
    with: SuppliedWith,
    names: &'c [String],
}

impl<'c> View<'c, Seat> for Supplied<'c> {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self { with: seat.supplied_with, names: &seat.body.listed_with }
    }
}

impl Rule for SeatSupplier {
    type Machine<'c> = NamedIn<'c>;
    type Frame<'c> = NamedIn<'c>;
    type Seat<'c> = Supplied<'c>;
    type Implement<'c> = NamedIn<'c>;
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(seat) = &seen.seat else { return };
        let (item, names) = (seat.item, seat.sees.names);
        if let Some((supplier, has)) = supplier(seen, seat.sees.with)
            && !names.is_empty()
            && !has.is_some_and(|has| has.0.contains(&names))
        {
            let fact = SeatWithoutItsSupplier { supplier };
            out.push(
                Finding::of(fact, Subject::Item(item), Verdict::CheckFirst, Grade::Listed)
                    .check(Check::FindOut { item, what: Unstated::Supplier }),
            );
        }
    }
}

/// The kind of item an arrangement comes with and the build's item of that kind, once it is
/// chosen; `None` while it is open or if the arrangement is a kit.
fn supplier<'s, 'c>(
    seen: &'s Seen<'c, SeatSupplier>,
    with: SuppliedWith,
) -> Option<(Supplier, Option<&'s NamedIn<'c>>)> {
    match with {
        SuppliedWith::Kit => None,
        SuppliedWith::Machine => seen.machine.as_ref().map(|machine| (Supplier::Machine, Some(&machine.sees))),
        SuppliedWith::Implement => {
            seen.implement.as_ref().map(|implement| (Supplier::Implement, Some(&implement.sees)))
        }
        SuppliedWith::Frame => match &seen.carrying {
            Carried::Open => None,
            Carried::Hitch => Some((Supplier::Frame, None)),
            Carried::Frame(frame) => Some((Supplier::Frame, Some(&frame.sees))),
        },
    }
}
