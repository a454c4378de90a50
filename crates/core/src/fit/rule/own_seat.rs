//! An implement's own seat is used, or it comes off.

use super::{Datum, Rule, Seen, View};
use crate::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Implement, ItemRef, Seat, SeatKind};
use crate::quantity::Work;

findings! {
    /// The implement's own seat is not the one that is chosen, and has to come off.
    OwnSeatComesOff = "own-seat-comes-off", Fit { hours: Work }
    /// It is not known whether the implement has a seat of its own, or whether that comes off.
    OwnSeatUnknown = "own-seat-unknown", Fit { missing: Unstated }
}

/// A seat that stands on the implement takes the place of the one that is chosen.
pub(super) struct OwnSeat;

/// Whether the chosen seat is the implement's own.
#[derive(PartialEq)]
pub struct IsOwn(bool);

impl<'c> View<'c, Seat> for IsOwn {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self(seat.kind == SeatKind::ImplementsOwn)
    }
}

/// Whether the implement has a seat of its own, where that matters, and how long it takes to take it off.
#[derive(PartialEq)]
pub struct Brings {
    own_seat: Datum<bool>,
    off: Datum<Work>,
}

impl<'c> View<'c, Implement> for Brings {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self {
            own_seat: Datum::new(Unstated::OwnSeat, implement.brings_seat()),
            off: Datum::new(Unstated::SeatOff, implement.own_seat_moves.off),
        }
    }
}

impl Rule for OwnSeat {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = IsOwn;
    type Implement<'c> = Brings;
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(seat), Some(implement)) = (&seen.seat, &seen.implement) else { return };
        let (item, subject) = (implement.item, Subject::Item(implement.item));
        let unknown = |what| {
            Finding::of(OwnSeatUnknown { missing: what }, subject, Verdict::CheckFirst, Grade::None)
                .check(Check::FindOut { item, what })
        };
        if implement.sees.own_seat.need(out, unknown) == Some(true)
            && !seat.sees.0
            && let Some(hours) = implement.sees.off.need(out, unknown)
        {
            out.push(Finding::of(OwnSeatComesOff { hours }, subject, Verdict::BoltsUpWithWork, Grade::Listed));
        }
    }
}
