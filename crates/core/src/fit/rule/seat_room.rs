//! Room between the seat and the implement's controls, and reach to the levers.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::item::{FrontSeatEffect, ImplementId, ItemRef, Seat, SeatId};
use crate::quantity::Length;

/// For an implement worked from a seat: the controls have to be far enough behind the seat index
/// point for the knees and near enough for the hands.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((seat_id, seat)), Some((implement_id, implement))) = (context.seat(), context.implement()) else {
        return;
    };
    if !implement.worked_from_seat
        || context.machine().is_none()
        || context.placement(ItemRef::Implement(implement_id)).is_none()
    {
        return;
    }
    match room(context, seat_id, seat, implement_id) {
        Err((item, what)) => out.push(
            Finding::new("seat-room-unknown", Subject::Operator, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label(what.to_owned()))
                .check(Check::FindOut { item, what }),
        ),
        Ok(room) => judge(seat, ItemRef::Seat(seat_id), room, out),
    }
}

fn judge(seat: &Seat, item: ItemRef, room: Length, out: &mut Vec<Finding>) {
    let Some(least) = seat.least_room else {
        out.push(
            Finding::new("seat-room-unknown", Subject::Operator, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label("room-behind".to_owned()))
                .check(Check::FindOut { item, what: "room-behind" }),
        );
        return;
    };
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
fn room(
    context: &Context,
    seat_id: SeatId,
    seat: &Seat,
    implement_id: ImplementId,
) -> Result<Length, (ItemRef, &'static str)> {
    let implement_item = ItemRef::Implement(implement_id);
    let implement = context.catalogue().implement(implement_id);
    let console = implement.console.ok_or((implement_item, "console"))?;
    let placed = context.placement(implement_item).ok_or((implement_item, "pose"))?;
    let index_x = index_point(context, seat_id, seat)?;
    Ok(index_x - placed.point(console).x)
}

/// x of the seat index point in the machine's axes when the operator faces the implement.
fn index_point(context: &Context, seat_id: SeatId, seat: &Seat) -> Result<Length, (ItemRef, &'static str)> {
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
