//! Whether the chosen seat arrangement can exist with this machine and implement.

use super::{Datum, Rule, Seen, Unnamed, View};
use crate::finding::{Fact, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::fit::rule::own_seat::OwnSeatUnknown;
use crate::item::{Implement, ItemRef, Machine, Seat, SeatKind};

findings! {
    /// The arrangement turns the operator's seat, and this machine's does not turn.
    SeatTurnsNot = "seat-turns-not", Fit {}
    /// The arrangement is the implement's own seat, and this implement brings none.
    ImplementOwnSeat = "implement-own-seat", Fit {}
    /// The implement is worked from a seat, and this one faces away from it.
    SeatFacesForward = "seat-faces-forward", Work {}
}

/// A turning seat needs a machine whose seat turns; an implement worked from a seat needs one that
/// faces it; the implement's own seat needs an implement that brings one.
pub(super) struct SeatArrangement;

/// Whether the operator's seat turns.
#[derive(PartialEq)]
pub struct Turns(Datum<bool, Unnamed>);

impl<'c> View<'c, Machine> for Turns {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self(Datum::unnamed(machine.operator_seat).map(|own| own.turns))
    }
}

/// What kind of arrangement it is.
#[derive(PartialEq)]
pub struct Kind(SeatKind);

impl<'c> View<'c, Seat> for Kind {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self(seat.kind)
    }
}

/// How the implement is worked.
#[derive(PartialEq)]
pub struct Worked {
    own_seat: Datum<bool>,
    from_seat: bool,
}

impl<'c> View<'c, Implement> for Worked {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self {
            own_seat: Datum::new(Unstated::OwnSeat, implement.brings_seat()),
            from_seat: implement.is_worked_from_seat(),
        }
    }
}

impl Rule for SeatArrangement {
    type Machine<'c> = Turns;
    type Frame<'c> = ();
    type Seat<'c> = Kind;
    type Implement<'c> = Worked;
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(seat) = &seen.seat else { return };
        let kind = seat.sees.0;
        if kind == SeatKind::Turning
            && let Some(machine) = &seen.machine
            && !machine.sees.0.or_taken_as(false, "a seat of which nothing is stated is taken not to turn")
        {
            out.push(impossible(SeatTurnsNot {}));
        }
        if let Some(implement) = &seen.implement {
            let brings = implement.sees.own_seat.or_said_by::<OwnSeatUnknown>();
            if kind == SeatKind::ImplementsOwn && brings == Some(false) {
                out.push(impossible(ImplementOwnSeat {}));
            }
            if kind == SeatKind::Forward && implement.sees.from_seat {
                out.push(impossible(SeatFacesForward {}));
            }
        }
    }
}

fn impossible<F: Fact>(fact: F) -> Finding {
    Finding::of(fact, Subject::Operator, Verdict::WontMount, Grade::Listed)
}
