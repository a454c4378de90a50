//! What is on the machine against the frame and the implement: a belly mower under the rails, links in an arm's room.

use super::outline::{Outline, Standing};
use super::{OVERLAP_OFF, PlaceUnknown};
use crate::build::Placement;
use crate::finding::{Check, Drawn, Finding, Grade, Name, Subject, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::fit::rule::{Own, Place, Rule, Seen, View};
use crate::item::ShapeRole::{
    self, Adapter, Body, Bonnet, Boom, Bucket, Console, Control, Cylinder, Dipper, FrameRail, Guard, Hitch, Rack, Seat,
    Stabiliser, Tool, Weight,
};
use crate::item::{self, End, EquipmentId, Frame, Implement, ItemRef, Machine, Point3, Role};
use crate::quantity::Length;

findings! {
    /// Something on the machine stands in the way of an item.
    EquipmentInTheWay = "equipment-in-the-way", Fit {
        what: ItemRef, item: ItemRef, shape: Name, other_shape: Name, overlap: Drawn,
    }
    /// Something on the machine may stand in the way: no view from above says that it does not pass beside.
    EquipmentMayBeInTheWay = "equipment-may-be-in-the-way", Fit {
        what: ItemRef, item: ItemRef, shape: Name, other_shape: Name, overlap: Drawn,
    }
}

/// Equipment keeps clear of the frame, but for what the frame is joined to.
pub(in crate::fit::rule) struct EquipmentClearOfFrame;

/// Equipment keeps clear of the implement, but for what the implement hangs on.
pub(in crate::fit::rule) struct EquipmentClearOfImplement;

/// What other rules look at on any machine is left to them: tyres, cab, roll-over bar.
const ROLES: &[ShapeRole] = &[
    Adapter, Body, Bonnet, Boom, Bucket, Console, Control, Cylinder, Dipper, FrameRail, Guard, Hitch, Rack, Seat,
    Stabiliser, Tool, Weight,
];

/// A piece of equipment on the machine.
#[derive(PartialEq)]
struct Piece<'c> {
    id: EquipmentId,
    kind: &'c str,
    outline: Outline<'c>,
    at: Placement,
    /// Roles that it carries something by.
    carries: Vec<Role>,
}

/// What is on a machine.
#[derive(PartialEq)]
pub struct Pieces<'c>(Vec<Piece<'c>>);

impl<'c> View<'c, Machine> for Pieces<'c> {
    fn of(desk: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        let piece = |on: &'c item::On| {
            let of = desk.catalogue().equipment(on.id);
            let carriers = of.body.ports.iter().filter(|port| port.end == End::Carrier);
            Piece {
                id: on.id,
                kind: &of.kind,
                outline: Outline::new(desk, ItemRef::Equipment(on.id), ROLES),
                at: Placement { at: Point3 { z: on.lifted, ..Point3::default() }, pitch: on.pitch, reversed: false },
                carries: carriers.map(|port| port.role).collect(),
            }
        };
        Self(machine.on.iter().map(piece).collect())
    }
}

/// An item's outline, and by what it is joined to what carries it.
#[derive(PartialEq)]
pub struct Carried<'c> {
    outline: Outline<'c>,
    joined_by: Vec<Role>,
    requires: &'c [String],
}

fn joined_by(body: &item::Body) -> Vec<Role> {
    body.ports.iter().filter(|port| port.end == End::Carried).map(|port| port.role).collect()
}

impl<'c> View<'c, Frame> for Carried<'c> {
    fn of(desk: &'c Desk, item: ItemRef, frame: &'c Frame) -> Self {
        let outline = Outline::whole(desk.solids(item));
        Self { outline, joined_by: joined_by(&frame.body), requires: &frame.requires }
    }
}

impl<'c> View<'c, Implement> for Carried<'c> {
    fn of(desk: &'c Desk, item: ItemRef, implement: &'c Implement) -> Self {
        Self { outline: Outline::whole(desk.solids(item)), joined_by: joined_by(&implement.body), requires: &[] }
    }
}

impl Rule for EquipmentClearOfFrame {
    type Machine<'c> = Pieces<'c>;
    type Frame<'c> = Own<Carried<'c>>;
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = Place<Frame>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(frame)) = (&seen.machine, seen.frame()) else { return };
        let Some(at) = seen.asks.at.or_said_by::<PlaceUnknown>() else { return };
        judge(&machine.sees, (frame.item, &frame.sees.sees, at), out);
    }
}

impl Rule for EquipmentClearOfImplement {
    type Machine<'c> = Pieces<'c>;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Own<Carried<'c>>;
    type Asks<'c> = Place<Implement>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(implement)) = (&seen.machine, &seen.implement) else { return };
        let Some(at) = seen.asks.at.or_said_by::<PlaceUnknown>() else { return };
        judge(&machine.sees, (implement.item, &implement.sees.sees, at), out);
    }
}

fn judge(pieces: &Pieces, (item, body, at): (ItemRef, &Carried, Placement), out: &mut Vec<Finding>) {
    for piece in &pieces.0 {
        let is_joined = body.joined_by.iter().any(|role| piece.carries.contains(role));
        if is_joined || body.requires.iter().any(|required| required == piece.kind) {
            continue;
        }
        let what = ItemRef::Equipment(piece.id);
        let rear = Standing { item, outline: body.outline, at };
        let front = Standing { item: what, outline: piece.outline, at: piece.at };
        let Some(close) = super::apart::closest(rear, ROLES, front, ROLES, Length::ZERO) else { continue };
        let (shape, other_shape) = (close.b.name.clone(), close.a.name.clone());
        let (overlap, subject) = (-close.gap, Subject::Clearance(item, what));
        out.push(if close.is_certain && overlap > OVERLAP_OFF {
            let fact = EquipmentInTheWay { what, item, shape, other_shape, overlap };
            Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Drawing)
        } else {
            let (a, b) = ((what, shape.clone()), (item, other_shape.clone()));
            let fact = EquipmentMayBeInTheWay { what, item, shape, other_shape, overlap };
            Finding::of(fact, subject, Verdict::CheckFirst, Grade::Drawing).check(Check::Gap {
                a,
                b,
                wanted: Length::ZERO,
            })
        });
    }
}
