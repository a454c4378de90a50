//! Items that stand somewhere on the machine, though nothing says where.

use super::{Adapters, Place, Rule, Seen, View};
use crate::build::is_mountable;
use crate::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Frame, Implement, ItemRef, Seat, SeatKind};

findings! {
    /// Nothing says where an item stands.
    PlaceUnknown = "place-unknown", Fit { item: ItemRef }
}

/// Where something stands has to be known before anything can be said of what the machine measures and weighs with it: a port
/// that places an item has to say where it is, and a frame or an implement needs a port to be mounted by.
pub(super) struct PlacesKnown;

/// Whether an item has a port to be mounted by.
#[derive(PartialEq)]
pub struct Mountable(bool);

impl<'c> View<'c, Frame> for Mountable {
    fn of(_: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self(is_mountable(&frame.body))
    }
}

/// Only a seat of its own needs a port.
impl<'c> View<'c, Seat> for Mountable {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self(seat.kind != SeatKind::Separate || is_mountable(&seat.body))
    }
}

impl<'c> View<'c, Implement> for Mountable {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self(is_mountable(&implement.body))
    }
}

impl Rule for PlacesKnown {
    type Machine<'c> = ();
    type Frame<'c> = Mountable;
    type Seat<'c> = Mountable;
    type Implement<'c> = Mountable;
    type Asks<'c> = (Place<Frame>, Place<Seat>, Place<Implement>, Adapters<'c>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        if seen.machine.is_none() {
            return;
        }
        let (of_frame, of_seat, of_implement, adapters) = &seen.asks;
        let unknown = |item| {
            Finding::of(PlaceUnknown { item }, Subject::Item(item), Verdict::CheckFirst, Grade::None)
                .check(Check::FindOut { item, what: Unstated::Pose })
        };
        let frame = seen.frame().map(|frame| (frame.item, of_frame.is_held, of_frame.at, frame.sees.0));
        let seat = seen.seat.as_ref().map(|seat| (seat.item, of_seat.is_held, of_seat.at, seat.sees.0));
        let implement = seen.implement.as_ref();
        let implement = implement.map(|it| (it.item, of_implement.is_held, of_implement.at, it.sees.0));
        for (item, is_held, at, is_mountable) in [frame, seat, implement].into_iter().flatten() {
            if is_held {
                at.need(out, |_| unknown(item));
            } else if !is_mountable {
                out.push(unknown(item));
            }
        }
        for adapter in &adapters.0 {
            let mut found = Vec::new();
            adapter.at.need(&mut found, |_| unknown(adapter.item));
            found.retain(|finding| !out.contains(finding));
            out.append(&mut found);
        }
    }
}
