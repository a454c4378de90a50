//! The operator-presence switch.

use super::{Datum, Rule, Seen, View};
use crate::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Implement, ItemRef, Seat, SeatKind};

findings! {
    /// The seat has no operator-presence switch.
    SeatSwitchMissing = "seat-switch-missing", Work {}
    /// Whether it has one is not stated.
    SeatSwitchUnknown = "seat-switch-unknown", Work {}
}

/// An implement worked from a seat of its own wants an operator-presence switch in that seat, or
/// the machine stops (or runs on) when the operator sits behind. Common practice, no source; the
/// maker's manual decides.
pub(super) struct SeatSwitch;

/// Kind of arrangement, and whether it has a switch.
#[derive(PartialEq)]
pub struct Switched {
    kind: SeatKind,
    switch: Datum<bool>,
}

impl<'c> View<'c, Seat> for Switched {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self { kind: seat.kind, switch: Datum::new(Unstated::PresenceSwitch, seat.presence_switch) }
    }
}

/// Whether the implement is worked from a seat.
#[derive(PartialEq)]
pub struct FromSeat(bool);

impl<'c> View<'c, Implement> for FromSeat {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self(implement.is_worked_from_seat())
    }
}

impl Rule for SeatSwitch {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = Switched;
    type Implement<'c> = FromSeat;
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(seat), Some(implement)) = (&seen.seat, &seen.implement) else { return };
        if !implement.sees.0 || !matches!(seat.sees.kind, SeatKind::Separate | SeatKind::ImplementsOwn) {
            return;
        }
        let look =
            |finding: Finding| finding.check(Check::Look { item: seat.item, what: "presence-switch".to_owned() });
        let unknown = |_| look(Finding::of(SeatSwitchUnknown {}, Subject::Wiring, Verdict::CheckFirst, Grade::None));
        if seat.sees.switch.need(out, unknown) == Some(false) {
            out.push(look(Finding::of(SeatSwitchMissing {}, Subject::Wiring, Verdict::BoltsUpWithWork, Grade::Listed)));
        }
    }
}
