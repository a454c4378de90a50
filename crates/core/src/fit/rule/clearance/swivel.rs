//! Room for a seat to turn.

use super::outline::{Axis, Outline, SeatTurns};
use super::{Adapters, Own, Place, PlaceUnknown, Rule, Seen};
use crate::build::Placement;
use crate::finding::{Check, Drawn, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::solid::{Solid, band, bounds_at, run_at};
use crate::fit::whole::near::drawn_off;
use crate::fit::whole::rated_load::Against;
use crate::item::{Implement, ItemRef, ShapeRole, View};
use crate::plane::{Bounds, between_x, gap};
use crate::quantity::Length;

findings! {
    /// A turning seat comes so near to something that measuring decides.
    SwivelClose = "swivel-close", Fit { radius: Drawn, room: Drawn, off: Drawn, item: ItemRef }
    /// A turning seat sweeps over something.
    SwivelHits = "swivel-hits", Fit { radius: Drawn, room: Drawn, item: ItemRef }
    /// What the turning of a seat depends on is not stated.
    SwivelUnknown = "swivel-unknown", Fit { missing: Unstated }
}

/// Height of a seat over its index point where the machine draws none: 500 mm, a usual backrest. Common practice, no source.
const BACKREST: Length = Length::from_mm(500.0);

/// The operator's seat turns about its index point and sweeps a circle as high as itself. What stands behind it at that height,
/// the adapters, the implement (its own seat has come off) and the rear wall of a cab, has to lie outside. The machine's own controls are its maker's
/// business; a frame's are too, since its outline does not say whether the deck of a separate seat is fitted.
pub(in crate::fit::rule) struct Swivel;

impl Rule for Swivel {
    type Machine<'c> = Axis<'c>;
    type Frame<'c> = ();
    type Seat<'c> = SeatTurns;
    type Implement<'c> = Own<Outline<'c>>;
    type Asks<'c> = (Place<Implement>, Adapters<'c>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(seat), Some(machine)) = (&seen.seat, &seen.machine) else { return };
        if !seat.sees.turns {
            return;
        }
        let unknown = |item| {
            move |what| {
                Finding::of(SwivelUnknown { missing: what }, Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what })
            }
        };
        let radius = seat.sees.radius.need(out, unknown(seat.item));
        let index = machine.sees.index.need(out, unknown(machine.item));
        let rear = machine.sees.cab_rear.and_then(|rear| rear.need(out, unknown(machine.item)));
        let (Some(radius), Some((axis, index_z))) = (radius, index) else { return };
        let heights = heights(machine.sees.outline, index_z);
        let mut say = |other: ItemRef, room: Length| {
            let (subject, off) = (Subject::Clearance(seat.item, other), drawn_off(radius));
            match Against::of((room - radius).m(), off.m()) {
                Against::Over => {
                    let fact = SwivelHits { radius, room, item: other };
                    out.push(Finding::of(fact, subject, Verdict::WontMount, Grade::Drawing));
                }
                Against::Near => {
                    let fact = SwivelClose { radius, room, off, item: other };
                    let measure = Check::FindOut { item: seat.item, what: Unstated::SwivelRadius };
                    out.push(Finding::of(fact, subject, Verdict::CheckFirst, Grade::Drawing).check(measure));
                }
                Against::Within => {}
            }
        };
        if let Some(rear) = rear {
            say(machine.item, axis - rear);
        }
        let (place, adapters) = &seen.asks;
        let implement = seen.implement.as_ref().map(|it| (it.item, it.sees.sees, place.at));
        let adapters = adapters.0.iter().map(|it| (it.item, Outline::whole(it.solids), it.at));
        for (item, outline, at) in adapters.chain(implement) {
            let Some(at) = at.or_said_by::<PlaceUnknown>() else { continue };
            let near = outline
                .parts()
                .filter(|part| part.role != ShapeRole::Seat)
                .filter_map(|part| room(outline, part, &at, heights, axis, radius + drawn_off(radius)));
            if let Some(room) = near.reduce(Length::min) {
                say(item, room);
            }
        }
    }
}

/// The heights the seat takes up.
fn heights(machine: Outline, index_z: Length) -> Bounds {
    let seat =
        machine.parts().filter(|part| part.role == ShapeRole::Seat).flat_map(|part| &part.side).map(|area| area.1);
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
fn room(outline: Outline, part: &Solid, at: &Placement, heights: Bounds, axis: Length, most: Length) -> Option<Length> {
    let in_height = part
        .side
        .iter()
        .filter_map(|area| bounds_at(View::Side, at, area)?.common(heights, 0.0))
        .reduce(|a, b| if a.most.0 >= b.most.0 { a } else { b })?;
    let along = axis.m() - in_height.most.0;
    let here = [(axis.m(), 0.0); 2];
    let apart = match outline.view(View::Plan, part.role) {
        None => Some(along),
        Some(plan) => {
            let beside = |area| between_x(&run_at(View::Plan, at, area), in_height.least.0, in_height.most.0);
            plan.iter().filter_map(|area| gap(&here, &beside(area), most.m())).reduce(f64::min)
        }
    };
    apart.filter(|&apart| apart < most.m()).map(|apart| Length::from_m(apart.max(0.0)))
}
