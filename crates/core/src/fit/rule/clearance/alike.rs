//! Which items are alike before the rules on clearance.

use crate::build::Step;
use crate::fit::rule::{Alike, Placed};
use crate::item::ShapeRole::{Cab, Detail, Glass, RollOverBar, RollOverBarFolded, Tyre};
use crate::item::{Axle, Body, FrontSeatEffect, Machine, SeatKind, Shape, ShapeRole, View, flatten};
use crate::quantity::Length;

/// Of [`unknown`](super::unknown): reads whether something is outlined, not what.
pub(in crate::fit::rule) const ALIKE: Alike = Alike {
    machine: |_, a, b| is_outlined(&a.body) == is_outlined(&b.body),
    implement: |_, a, b| is_outlined(&a.body) == is_outlined(&b.body),
    ..Alike::ALL
};

/// Of [`frame`](super::frame): no two frames have one outline, and machines are alike in their tyres.
pub(in crate::fit::rule) const FRAME: Placed = Placed {
    alike: Alike { machine: |_, a, b| same_tyres(a, b), frame: |_, _, _| false, ..Alike::ALL },
    stand: &[Step::Frame],
    listed: Some([Step::Machine, Step::Frame]),
    ..Placed::NOTHING
};

/// Of [`seat_and_machine`](super::seat_and_machine): reads cab and roll-over bar, and what a seat shows of itself.
pub(in crate::fit::rule) const SEAT_AND_MACHINE: Placed = Placed {
    alike: Alike {
        machine: |_, a, b| same_shapes(&a.body, &b.body, &[Glass, Cab]) && same_bar(a, b),
        seat: |_, a, b| same_shapes(&a.body, &b.body, &[ShapeRole::Seat]),
        ..Alike::ALL
    },
    stand: &[Step::Seat],
    listed: Some([Step::Machine, Step::Seat]),
    ..Placed::NOTHING
};

/// Of [`implement_and_machine`](super::implement_and_machine): no two implements have one outline; reads cab, roll-over bar and
/// tyres.
pub(in crate::fit::rule) const IMPLEMENT_AND_MACHINE: Placed = Placed {
    alike: Alike {
        machine: |_, a, b| same_tyres(a, b) && same_shapes(&a.body, &b.body, &[Glass, Cab]) && same_bar(a, b),
        implement: |_, _, _| false,
        ..Alike::ALL
    },
    stand: &[Step::Implement],
    listed: Some([Step::Machine, Step::Implement]),
    ..Placed::NOTHING
};

/// Of [`implement_and_seat`](super::implement_and_seat): no two implements have one outline; reads what a seat shows of itself.
pub(in crate::fit::rule) const IMPLEMENT_AND_SEAT: Placed = Placed {
    alike: Alike {
        seat: |_, a, b| same_shapes(&a.body, &b.body, &[ShapeRole::Seat]) && is_own(a.kind) == is_own(b.kind),
        implement: |_, _, _| false,
        ..Alike::ALL
    },
    stand: &[Step::Seat, Step::Implement],
    listed: Some([Step::Seat, Step::Implement]),
    ..Placed::NOTHING
};

/// Of [`swivel`](super::swivel()): reads how the operator's seat turns and what stands behind it.
pub(in crate::fit::rule) const SWIVEL: Placed = Placed {
    alike: Alike {
        machine: |_, a, b| {
            let axis = |machine: &Machine| machine.operator_seat.map(|seat| (seat.index_x, seat.index_z));
            axis(a) == axis(b) && a.cab_rear == b.cab_rear && same_shapes(&a.body, &b.body, &[ShapeRole::Seat])
        },
        seat: |_, a, b| {
            let turns = |effect| effect == FrontSeatEffect::Turns;
            turns(a.front_seat) == turns(b.front_seat) && a.swivel_radius == b.swivel_radius
        },
        implement: |_, _, _| false,
        ..Alike::ALL
    },
    stand: &[Step::Implement],
    ..Placed::NOTHING
};

fn is_own(kind: SeatKind) -> bool {
    kind == SeatKind::ImplementsOwn
}

/// Whether two items show the same in some roles, in every view.
fn same_shapes(a: &Body, b: &Body, roles: &[ShapeRole]) -> bool {
    let is_of_these = |shape: &&Shape| roles.contains(&shape.role);
    a.shapes.iter().filter(is_of_these).eq(b.shapes.iter().filter(is_of_these))
}

fn same_bar(a: &Machine, b: &Machine) -> bool {
    let folds = |machine: &Machine| machine.roll_over_bar.is_some_and(|bar| bar.height_folded.is_some());
    folds(a) == folds(b) && same_shapes(&a.body, &b.body, &[RollOverBar, RollOverBarFolded])
}

/// Whether two machines show the same tyres, drawn or laid out from their axles.
fn same_tyres(a: &Machine, b: &Machine) -> bool {
    wheelbase(a) == wheelbase(b)
        && tyres(&a.rear) == tyres(&b.rear)
        && tyres(&a.front) == tyres(&b.front)
        && same_shapes(&a.body, &b.body, &[Tyre])
}

fn wheelbase(machine: &Machine) -> Option<Length> {
    machine.wheelbase.map(|wheelbase| wheelbase.value)
}

const fn tyres(axle: &Axle) -> [Option<Length>; 4] {
    [axle.overall_radius, axle.static_loaded_radius, axle.track, axle.tyre_width]
}

fn is_outlined(body: &Body) -> bool {
    body.shapes.iter().any(|shape| {
        let counts = shape.clearance && !matches!(shape.role, Detail | Tyre);
        counts && shape.view == View::Side && flatten(shape).iter().any(|run| !run.is_empty())
    })
}
