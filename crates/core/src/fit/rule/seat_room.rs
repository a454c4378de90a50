//! Room between the seat and the implement's controls, and reach to the levers.

use crate::build::Step;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::loads::Missing;
use crate::fit::rule::{Alike, Placed};
use crate::item::{FrontSeatEffect, ImplementId, ItemRef, Seat, SeatId};
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

/// What is missing for the room behind the seat to be judged.
pub(super) fn unknown(context: &Context, out: &mut Vec<Finding>) {
    if let Some(Err((item, what))) = asked(context) {
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
    if let Some(Ok((seat, room, least))) = asked(context) {
        judge(seat, room, least, out);
    }
}

/// The arrangement, the room there is, and the least there has to be.
type Asked<'a> = (&'a Seat, Length, Length);

/// The room there is and the least there has to be, or what is missing of which item; `None`
/// where no room is asked for.
fn asked<'a>(context: &Context<'a>) -> Option<Result<Asked<'a>, Missing>> {
    let ((seat_id, seat), (implement_id, implement)) = context.seat().zip(context.implement())?;
    context.machine()?;
    context.placement(ItemRef::Implement(implement_id))?;
    if !implement.worked_from_seat {
        return None;
    }
    let room = room(context, seat_id, seat, implement_id);
    Some(room.and_then(|room| {
        let least = seat.least_room.ok_or((ItemRef::Seat(seat_id), "room-behind"))?;
        Ok((seat, room, least))
    }))
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

/// Level distance from the seat index point back to the controls, or what is missing of which item.
fn room(context: &Context, seat_id: SeatId, seat: &Seat, implement_id: ImplementId) -> Result<Length, Missing> {
    let implement_item = ItemRef::Implement(implement_id);
    let implement = context.catalogue().implement(implement_id);
    let console = implement.console.ok_or((implement_item, "console"))?;
    let placed = context.placement(implement_item).ok_or((implement_item, "pose"))?;
    let index_x = index_point(context, seat_id, seat)?;
    Ok(index_x - placed.point(console).x)
}

/// x of the seat index point in the machine's axes when the operator faces the implement.
fn index_point(context: &Context, seat_id: SeatId, seat: &Seat) -> Result<Length, Missing> {
    let item = ItemRef::Seat(seat_id);
    if seat.front_seat == FrontSeatEffect::Turns {
        let (id, machine) = context.machine().ok_or((item, "index-point"))?;
        let own = machine.operator_seat.ok_or((ItemRef::Machine(id), "index-point"))?;
        return Ok(own.index_x);
    }
    let (x, z) = seat.index_point.ok_or((item, "index-point"))?;
    let placed = context.placement(item).ok_or((item, "pose"))?;
    Ok(placed.side(x, z).0)
}
