//! Room for a seat to turn.

use crate::build::Placement;
use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::solid::{Solid, Solids, band, bounds_at, run_at};
use crate::item::{FrontSeatEffect, ItemRef, ShapeRole, View};
use crate::plane::{Bounds, between_x, gap};
use crate::quantity::Length;

/// Height of a seat over its index point where the machine draws none: 500 mm, a usual backrest. Common practice, no source.
const BACKREST: Length = Length::from_mm(500.0);

/// The operator's seat turns about its index point and sweeps a circle as high as itself. What stands behind it at that height,
/// the adapters, the implement and the rear wall of a cab, has to lie outside. The machine's own controls are its maker's
/// business; a frame's are too, since its outline does not say whether the deck of a separate seat is fitted.
pub(in crate::fit::rule) fn swivel(context: &Context, out: &mut Vec<Finding>) {
    let (Some((seat_id, seat)), Some((machine_id, machine))) = (context.seat(), context.machine()) else { return };
    let (Some(radius), Some(own)) = (seat.swivel_radius, machine.operator_seat) else { return };
    if seat.front_seat != FrontSeatEffect::Turns {
        return;
    }
    let machine_item = ItemRef::Machine(machine_id);
    let heights = heights(context, machine_item, own.index_z);
    let mut say = |other: ItemRef, room: Length| {
        if room < radius {
            out.push(
                Finding::new(
                    "swivel-hits",
                    Subject::Clearance(ItemRef::Seat(seat_id), other),
                    Verdict::WontMount,
                    Grade::Drawing,
                )
                .with("radius", Value::Length(radius))
                .with("room", Value::Length(room))
                .with("item", Value::Item(other)),
            );
        }
    };
    if let Some(rear) = machine.cab_rear {
        say(machine_item, own.index_x - rear);
    }
    let carried = |item: ItemRef| matches!(item, ItemRef::Adapter(_) | ItemRef::Implement(_));
    for placed in context.stack.placed.iter().filter(|placed| carried(placed.item)) {
        let Some(solids) = context.desk.solids(placed.item) else { continue };
        let Some(at) = placed.placement else { continue };
        let near = solids.parts.iter().filter_map(|part| room(solids, part, &at, heights, own.index_x, radius));
        if let Some(room) = near.reduce(Length::min) {
            say(placed.item, room);
        }
    }
}

/// The heights the seat takes up.
fn heights(context: &Context, item: ItemRef, index_z: Length) -> Bounds {
    let drawn = context.desk.solids(item).into_iter().flat_map(|solids| &solids.parts);
    let seat = drawn.filter(|part| part.role == ShapeRole::Seat).flat_map(|part| &part.side).map(|area| area.1);
    let all = seat.reduce(|a, b| Bounds {
        least: (a.least.0.min(b.least.0), a.least.1.min(b.least.1)),
        most: (a.most.0.max(b.most.0), a.most.1.max(b.most.1)),
    });
    all.map_or_else(
        || band(index_z, index_z + BACKREST),
        |all| band(Length::from_m(all.least.1), Length::from_m(all.most.1)),
    )
}

/// Level distance from the seat's axis to a part at the seat's height, if it is less than `most`: from above where its plan is
/// known, else along the machine.
fn room(solids: &Solids, part: &Solid, at: &Placement, heights: Bounds, axis: Length, most: Length) -> Option<Length> {
    let in_height = part
        .side
        .iter()
        .filter_map(|area| bounds_at(View::Side, at, area)?.common(heights, 0.0))
        .reduce(|a, b| if a.most.0 >= b.most.0 { a } else { b })?;
    let along = axis.m() - in_height.most.0;
    let here = [(axis.m(), 0.0); 2];
    let apart = match solids.view(View::Plan, part.role) {
        None => Some(along),
        Some(plan) => {
            let beside = |area| between_x(&run_at(View::Plan, at, area), in_height.least.0, in_height.most.0);
            plan.iter().filter_map(|area| gap(&here, &beside(area), most.m())).reduce(f64::min)
        }
    };
    apart.filter(|&apart| apart < most.m()).map(|apart| Length::from_m(apart.max(0.0)))
}
