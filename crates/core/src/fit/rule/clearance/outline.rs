//! What the rules on clearance see of an item: what is outlined of it in some roles.

use crate::build::Placement;
use crate::finding::Unstated;
use crate::fit::desk::Desk;
use crate::fit::desk::solid::{Area, Solid, Solids};
use crate::fit::rule::{Unnamed, View};
use crate::item::ShapeRole::{Cab, Glass, RollOverBar, RollOverBarFolded, Tyre};
use crate::item::{
    self, Axle, Frame, FrontSeatEffect, Implement, ItemRef, Machine, OperatorSeat, Seat, SeatKind, SeatMoves, ShapeRole,
};
use crate::quantity::Length;

use super::Datum;

/// What is outlined of an item in some roles; nothing else of it can be asked.
#[derive(Debug, Clone, Copy)]
pub struct Outline<'c> {
    solids: Option<&'c Solids>,
    /// `None` = every role.
    roles: Option<&'static [ShapeRole]>,
}

impl<'c> Outline<'c> {
    /// What is outlined of an item in these roles.
    pub(super) fn new(desk: &'c Desk, item: ItemRef, roles: &'static [ShapeRole]) -> Self {
        Self { solids: desk.solids(item), roles: Some(roles) }
    }

    /// All that is outlined of an item.
    pub(super) fn whole(solids: Option<&'c Solids>) -> Self {
        Self { solids, roles: None }
    }

    fn tells(&self, role: ShapeRole) -> bool {
        self.roles.is_none_or(|roles| roles.contains(&role))
    }

    /// The parts, as seen from the side.
    pub(super) fn parts(self) -> impl Iterator<Item = &'c Solid> {
        let parts = self.solids.into_iter().flat_map(|solids| &solids.parts);
        parts.filter(move |part| self.tells(part.role))
    }

    /// What is drawn of a role from above or from behind; `None` if nothing is.
    pub(super) fn view(&self, view: crate::item::View, role: ShapeRole) -> Option<&'c [Area]> {
        self.solids.filter(|_| self.tells(role)).and_then(|solids| solids.view(view, role))
    }
}

/// Outlines of the same roles are equal if they show the same.
impl PartialEq for Outline<'_> {
    fn eq(&self, other: &Self) -> bool {
        use crate::item::View::{Plan, Rear};
        let roles = self.roles.unwrap_or(&[]);
        let views = || roles.iter().flat_map(|&role| [(Plan, role), (Rear, role)]);
        self.roles.is_some()
            && self.roles == other.roles
            && self.parts().eq(other.parts())
            && views().all(|(view, role)| self.view(view, role) == other.view(view, role))
    }
}

/// A machine's tyres.
#[derive(Clone, Copy, PartialEq)]
pub struct Tyres<'c>(pub(super) Outline<'c>);

impl<'c> View<'c, Machine> for Tyres<'c> {
    fn of(desk: &'c Desk, item: ItemRef, _: &'c Machine) -> Self {
        Self(Outline::new(desk, item, &[Tyre]))
    }
}

/// A machine's cab and roll-over bar, and whether the bar folds.
#[derive(Clone, Copy, PartialEq)]
pub struct Station<'c> {
    pub(super) outline: Outline<'c>,
    pub(super) folds: bool,
}

impl<'c> Station<'c> {
    fn new(desk: &'c Desk, item: ItemRef, machine: &'c Machine, roles: &'static [ShapeRole]) -> Self {
        let height = machine.roll_over_bar.and_then(|bar| bar.height_folded);
        let folds = Datum::unnamed(height).map(|_| true);
        let folds = folds.or_taken_as(false, "a bar of which no folded height is stated is taken not to fold");
        Self { outline: Outline::new(desk, item, roles), folds }
    }
}

impl<'c> View<'c, Machine> for Station<'c> {
    fn of(desk: &'c Desk, item: ItemRef, machine: &'c Machine) -> Self {
        Self::new(desk, item, machine, &[Glass, Cab, RollOverBar, RollOverBarFolded])
    }
}

/// The same with the tyres.
#[derive(Clone, Copy, PartialEq)]
pub struct StationAndTyres<'c>(pub(super) Station<'c>);

impl<'c> View<'c, Machine> for StationAndTyres<'c> {
    fn of(desk: &'c Desk, item: ItemRef, machine: &'c Machine) -> Self {
        Self(Station::new(desk, item, machine, &[Glass, Cab, RollOverBar, RollOverBarFolded, Tyre]))
    }
}

/// The operator's seat: its axis, its outline, and the rear wall behind it.
#[derive(Clone, Copy, PartialEq)]
pub struct Axis<'c> {
    /// x and z of the seat index point.
    pub(super) index: Datum<(Length, Length)>,
    /// The rear wall, of a cab.
    pub(super) cab_rear: Option<Datum<Length>>,
    pub(super) outline: Outline<'c>,
}

impl<'c> View<'c, Machine> for Axis<'c> {
    fn of(desk: &'c Desk, item: ItemRef, machine: &'c Machine) -> Self {
        Self {
            index: Datum::new(Unstated::IndexPoint, machine.operator_seat).map(|own| (own.index_x, own.index_z)),
            cab_rear: (machine.station == item::Station::Cab || machine.cab_rear.is_some())
                .then_some(Datum::new(Unstated::CabRear, machine.cab_rear)),
            outline: Outline::new(desk, item, &[ShapeRole::Seat]),
        }
    }
}

/// What a seat arrangement shows of itself, and whether it comes on the implement.
#[derive(Clone, Copy, PartialEq)]
pub struct SeatShape<'c> {
    pub(super) outline: Outline<'c>,
    pub(super) is_implements_own: bool,
}

impl<'c> View<'c, Seat> for SeatShape<'c> {
    fn of(desk: &'c Desk, item: ItemRef, seat: &'c Seat) -> Self {
        Self {
            outline: Outline::new(desk, item, &[ShapeRole::Seat]),
            is_implements_own: seat.kind == SeatKind::ImplementsOwn,
        }
    }
}

/// What a seat arrangement shows of itself.
#[derive(Clone, Copy, PartialEq)]
pub struct SeatOutline<'c>(pub(super) Outline<'c>);

impl<'c> View<'c, Seat> for SeatOutline<'c> {
    fn of(desk: &'c Desk, item: ItemRef, _: &'c Seat) -> Self {
        Self(Outline::new(desk, item, &[ShapeRole::Seat]))
    }
}

/// Whether a seat arrangement turns the operator's seat, and the radius that takes.
#[derive(Clone, Copy, PartialEq)]
pub struct SeatTurns {
    pub(super) turns: bool,
    pub(super) radius: Datum<Length>,
}

impl<'c> View<'c, Seat> for SeatTurns {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self {
            turns: seat.front_seat == FrontSeatEffect::Turns,
            radius: Datum::new(Unstated::SwivelRadius, seat.swivel_radius),
        }
    }
}

/// The operator's seat: its outline as it is built in and folded, and how it gets out of the way.
#[derive(Clone, Copy, PartialEq)]
pub struct DriverSeat<'c> {
    pub(super) outline: Outline<'c>,
    /// How the machine's own seat is stated to be.
    pub(super) own: Datum<OperatorSeat, Unnamed>,
}

impl<'c> View<'c, Machine> for DriverSeat<'c> {
    fn of(desk: &'c Desk, item: ItemRef, machine: &'c Machine) -> Self {
        Self { outline: Outline::new(desk, item, SEAT), own: Datum::unnamed(machine.operator_seat) }
    }
}

/// The roles that show a seat.
const SEAT: &[ShapeRole] = &[ShapeRole::Seat, ShapeRole::SeatFolded];

/// A seat that stands behind the operator's: its outline, how it gets out of the way, what it asks of the operator's seat.
#[derive(Clone, Copy, PartialEq)]
pub struct SeatBehind<'c> {
    pub(super) kind: SeatKind,
    pub(super) asks: FrontSeatEffect,
    pub(super) outline: Outline<'c>,
    pub(super) moves: SeatMoves,
}

impl<'c> View<'c, Seat> for SeatBehind<'c> {
    fn of(desk: &'c Desk, item: ItemRef, seat: &'c Seat) -> Self {
        let outline = Outline::new(desk, item, SEAT);
        Self { kind: seat.kind, asks: seat.front_seat, outline, moves: seat.moves }
    }
}

/// Whether the arrangement is the implement's own seat, and what it asks of the operator's seat.
#[derive(Clone, Copy, PartialEq)]
pub struct OwnSeatChosen {
    pub(super) is_own: bool,
    pub(super) asks: FrontSeatEffect,
}

impl<'c> View<'c, Seat> for OwnSeatChosen {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        let is_own = seat.kind == SeatKind::ImplementsOwn;
        // Of any other seat this rule says nothing.
        Self { is_own, asks: if is_own { seat.front_seat } else { FrontSeatEffect::None } }
    }
}

/// An implement's own seat.
#[derive(Clone, Copy, PartialEq)]
pub struct ImplementSeat<'c> {
    pub(super) outline: Outline<'c>,
    pub(super) moves: SeatMoves,
}

impl<'c> View<'c, Implement> for ImplementSeat<'c> {
    fn of(desk: &'c Desk, item: ItemRef, implement: &'c Implement) -> Self {
        Self { outline: Outline::new(desk, item, SEAT), moves: implement.own_seat_moves }
    }
}

/// All that is outlined of an implement.
impl<'c> View<'c, Implement> for Outline<'c> {
    fn of(desk: &'c Desk, item: ItemRef, _: &'c Implement) -> Self {
        Self::whole(desk.solids(item))
    }
}

/// Whether something of an item is outlined from the side, tyres apart.
#[derive(Clone, Copy, PartialEq)]
pub struct IsOutlined(pub(super) Datum<()>);

impl IsOutlined {
    fn new(desk: &Desk, item: ItemRef) -> Self {
        let is_outlined = Outline::whole(desk.solids(item)).parts().any(|part| part.role != Tyre);
        Self(Datum::new(Unstated::Outline, is_outlined.then_some(())))
    }
}

impl<'c> View<'c, Frame> for IsOutlined {
    fn of(desk: &'c Desk, item: ItemRef, _: &'c Frame) -> Self {
        Self::new(desk, item)
    }
}

/// Only a seat of its own is outlined; any other is part of a machine or an implement.
impl<'c> View<'c, Seat> for IsOutlined {
    fn of(desk: &'c Desk, item: ItemRef, seat: &'c Seat) -> Self {
        match seat.kind {
            SeatKind::Separate => Self::new(desk, item),
            SeatKind::Turning | SeatKind::ImplementsOwn | SeatKind::Forward => {
                Self(Datum::new(Unstated::Outline, Some(())))
            }
        }
    }
}

impl<'c> View<'c, Implement> for IsOutlined {
    fn of(desk: &'c Desk, item: ItemRef, _: &'c Implement) -> Self {
        Self::new(desk, item)
    }
}

/// Whether something of a machine is outlined from the side, and its tyres: drawn, or their sizes stated.
#[derive(Clone, Copy, PartialEq)]
pub struct MachineIsOutlined {
    pub(super) body: Datum<()>,
    pub(super) tyres: Datum<()>,
}

impl<'c> View<'c, Machine> for MachineIsOutlined {
    fn of(desk: &'c Desk, item: ItemRef, machine: &'c Machine) -> Self {
        let is_drawn = machine.body.shapes.iter().any(|shape| shape.role == Tyre);
        let tyres = if is_drawn {
            Datum::new(Unstated::Outline, Some(()))
        } else {
            let wheelbase = Datum::new(Unstated::Wheelbase, machine.wheelbase).stated();
            wheelbase.and(size(&machine.rear)).and(size(&machine.front)).stated()
        };
        Self { body: IsOutlined::new(desk, item).0, tyres }
    }
}

/// Whether the size and the place of an axle's tyres are stated.
fn size(axle: &Axle) -> Datum<()> {
    let loaded = Datum::new(Unstated::StaticLoadedRadius, axle.static_loaded_radius).stated();
    let overall = Datum::new(Unstated::OverallRadius, axle.overall_radius).stated();
    let width = Datum::new(Unstated::TyreWidth, axle.tyre_width).stated();
    Datum::new(Unstated::Track, axle.track).stated().and(width).and(loaded).and(overall).stated()
}

/// An item where it stands.
#[derive(Clone, Copy)]
pub(super) struct Standing<'c> {
    pub item: ItemRef,
    pub outline: Outline<'c>,
    pub at: Placement,
}
