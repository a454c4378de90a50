//! Room between the seat and the implement's controls, and reach to the levers.

use crate::build::Step;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::loads::Missing;
use crate::fit::rule::{Alike, Placed};
use crate::item::{FrontSeatEffect, Implement, ItemRef, Machine, MachineId, Seat};
use crate::quantity::Length;

/// Of [`unknown`]: reads what is stated, not its value.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| a.operator_seat.is_some() == b.operator_seat.is_some(),
    seat: |_, a, b| stated(a) == stated(b),
    implement: |_, a, b| a.worked_from_seat == b.worked_from_seat && a.console.is_some() == b.console.is_some(),
    ..Alike::ALL
};

fn stated(seat: &Seat) -> [bool; 3] {
    [seat.front_seat == FrontSeatEffect::Turns, seat.index_point.is_some(), seat.least_room.is_some()]
}

/// What is missing for the room behind the seat to be judged; that a place is not stated is a finding of its own.
pub(super) fn unknown(context: &Context, out: &mut Vec<Finding>) {
    if let Some((item, what)) = asked(context).and_then(|asked| missing(context, asked)) {
        out.push(
            Finding::new("seat-room-unknown", Subject::Operator, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label(what.to_owned()))
                .check(Check::FindOut { item, what }),
        );
    }
}

/// Of [`rule`]: reads where seat and implement stand, and in them the index point and the controls.
pub(super) const PLACED: Placed = Placed {
    alike: Alike {
        machine: |_, a, b| a.operator_seat.map(|seat| seat.index_x) == b.operator_seat.map(|seat| seat.index_x),
        seat: |_, a, b| {
            stated(a) == stated(b)
                && a.index_point == b.index_point
                && a.least_room == b.least_room
                && a.greatest_reach == b.greatest_reach
        },
        implement: |_, a, b| a.worked_from_seat == b.worked_from_seat && a.console == b.console,
        ..Alike::ALL
    },
    stand: &[Step::Seat, Step::Implement],
    ..Placed::NOTHING
};

/// For an implement worked from a seat: the controls have to be far enough behind the seat index
/// point for the knees and near enough for the hands.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    if let Some(asked) = asked(context)
        && let Some((room, least)) = room(context, asked).zip(asked.seat.least_room)
    {
        judge(asked.seat, room, least, out);
    }
}

/// Somebody sits here and works that.
#[derive(Clone, Copy)]
struct Asked<'a> {
    machine: (MachineId, &'a Machine),
    seat_item: ItemRef,
    seat: &'a Seat,
    implement_item: ItemRef,
    implement: &'a Implement,
}

/// Seat and implement, where room is asked for between them.
fn asked<'a>(context: &Context<'a>) -> Option<Asked<'a>> {
    let ((seat_id, seat), (implement_id, implement)) = context.seat().zip(context.implement())?;
    let (seat_item, implement_item) = (ItemRef::Seat(seat_id), ItemRef::Implement(implement_id));
    let asked = Asked { machine: context.machine()?, seat_item, seat, implement_item, implement };
    (implement.worked_from_seat && context.stack.holds(implement_item)).then_some(asked)
}

fn missing(context: &Context, asked: Asked) -> Option<Missing> {
    let Asked { machine: (machine_id, machine), seat_item, seat, implement_item, implement } = asked;
    if implement.console.is_none() {
        Some((implement_item, "console"))
    } else if seat.front_seat == FrontSeatEffect::Turns {
        machine.operator_seat.is_none().then_some((ItemRef::Machine(machine_id), "index-point"))
    } else if seat.index_point.is_none() {
        Some((seat_item, "index-point"))
    } else {
        (!context.stack.holds(seat_item)).then_some((seat_item, "pose"))
    }
    .or_else(|| seat.least_room.is_none().then_some((seat_item, "room-behind")))
}

fn judge(seat: &Seat, room: Length, least: Length, out: &mut Vec<Finding>) {
    if room < least {
        out.push(
            Finding::new("seat-room-short", Subject::Operator, Verdict::WontMount, Grade::Drawing)
                .with("room", Value::Length(room))
                .with("least", Value::Length(least))
                .with("short", Value::Length(least - room)),
        );
    } else if let Some(most) = seat.greatest_reach.filter(|&most| room > most) {
        out.push(
            Finding::new("seat-reach-far", Subject::Operator, Verdict::CheckFirst, Grade::Drawing)
                .with("distance", Value::Length(room))
                .with("most", Value::Length(most)),
        );
    } else {
        out.push(
            Finding::new("seat-room", Subject::Operator, Verdict::BoltsUp, Grade::Drawing)
                .with("room", Value::Length(room))
                .with("least", Value::Length(least)),
        );
    }
}

/// Level distance from the seat index point back to the controls, where both are known.
fn room(context: &Context, asked: Asked) -> Option<Length> {
    let controls = context.placement(asked.implement_item)?.point(asked.implement.console?).x;
    Some(index_point(context, asked)? - controls)
}

/// x of the seat index point in the machine's axes when the operator faces the implement.
fn index_point(context: &Context, Asked { machine: (_, machine), seat_item, seat, .. }: Asked) -> Option<Length> {
    if seat.front_seat == FrontSeatEffect::Turns {
        return machine.operator_seat.map(|own| own.index_x);
    }
    let (x, z) = seat.index_point?;
    Some(context.placement(seat_item)?.side(x, z).0)
}
