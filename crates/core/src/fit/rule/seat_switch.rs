//! The operator-presence switch.

use crate::finding::{Check, Finding, Grade, Subject, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{ItemRef, SeatKind};

/// Reads the arrangement's kind and switch, and whether the implement is worked from a seat.
pub(super) const ALIKE: Alike = Alike {
    seat: |_, a, b| a.kind == b.kind && a.presence_switch == b.presence_switch,
    implement: |_, a, b| a.worked_from_seat == b.worked_from_seat,
    ..Alike::ALL
};

/// An implement worked from a seat of its own wants an operator-presence switch in that seat, or
/// the machine stops (or runs on) when the operator sits behind. Common practice, no source; the
/// maker's manual decides.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((id, seat)), Some((_, implement))) = (context.seat(), context.implement()) else { return };
    if !implement.worked_from_seat || !matches!(seat.kind, SeatKind::Separate | SeatKind::ImplementsOwn) {
        return;
    }
    let item = ItemRef::Seat(id);
    match seat.presence_switch {
        Some(true) => {}
        Some(false) => out.push(
            Finding::new("seat-switch-missing", Subject::Wiring, Verdict::BoltsUpWithWork, Grade::Listed)
                .check(Check::Look { item, what: "presence-switch".to_owned() }),
        ),
        None => out.push(
            Finding::new("seat-switch-unknown", Subject::Wiring, Verdict::CheckFirst, Grade::None)
                .check(Check::Look { item, what: "presence-switch".to_owned() }),
        ),
    }
}
