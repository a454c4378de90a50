//! Whether the chosen seat arrangement can exist with this machine and implement.

use crate::finding::{Finding, Grade, Subject, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{Machine, SeatKind};

/// Reads whether the operator's seat turns, the arrangement's kind, and how the implement is worked.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| turns(a) == turns(b),
    seat: |_, a, b| a.kind == b.kind,
    implement: |_, a, b| a.own_seat == b.own_seat && a.worked_from_seat == b.worked_from_seat,
    ..Alike::ALL
};

/// A turning seat needs a machine whose seat turns; an implement worked from a seat needs one that
/// faces it; the implement's own seat needs an implement that brings one.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let Some((_, seat)) = context.seat() else { return };
    let mut say = |code, verdict| out.push(Finding::new(code, Subject::Operator, verdict, Grade::Listed));
    if seat.kind == SeatKind::Turning
        && let Some((_, machine)) = context.machine()
        && !turns(machine)
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
}

fn turns(machine: &Machine) -> bool {
    machine.operator_seat.is_some_and(|own| own.turns)
}
