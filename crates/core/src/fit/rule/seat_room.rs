//! Room between the seat and the implement's controls, and reach to the levers.

use super::{Datum, Joints, Place, Rule, Seen, View};
use crate::finding::{Check, Drawn, Fact, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::fit::whole::near::drawn_off;
use crate::fit::whole::rated_load::Against;
use crate::item::{FrontSeatEffect, Implement, ItemRef, Machine, Point3, Seat, SeatKind};
use crate::quantity::Length;

findings! {
    /// Room enough between seat and controls, and within reach.
    SeatRoom = "seat-room", Fit { room: Drawn, least: Drawn }
    /// So nearly too little that measuring decides.
    RoomClose = "room-close", Fit { room: Drawn, least: Drawn, off: Drawn }
    /// Too little room.
    SeatRoomShort = "seat-room-short", Fit { room: Drawn, least: Drawn, short: Drawn }
    /// Out of reach.
    SeatReachFar = "seat-reach-far", Work { distance: Drawn, most: Drawn }
    /// What the room depends on is not stated.
    SeatRoomUnknown = "seat-room-unknown", Fit { missing: Unstated }
    /// What the reach to the levers depends on is not stated.
    SeatReachUnknown = "seat-reach-unknown", Work { missing: Unstated }
}

/// What is missing for the room behind the seat to be judged. It reads what is stated, not its value, so that few items differ
/// before it.
pub(super) struct SeatRoomKnown;

/// Whether the place of the operator's seat is stated.
#[derive(PartialEq)]
pub struct OwnSeatStated(Datum<()>);

impl<'c> View<'c, Machine> for OwnSeatStated {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self(Datum::new(Unstated::IndexPoint, machine.operator_seat).stated())
    }
}

/// Whether the operator's seat turns, and what else is stated.
#[derive(PartialEq)]
pub struct SeatStated {
    turns: bool,
    is_implements_own: bool,
    index_point: Datum<()>,
    least_room: Datum<()>,
    greatest_reach: Datum<()>,
}

impl<'c> View<'c, Seat> for SeatStated {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self {
            turns: seat.front_seat == FrontSeatEffect::Turns,
            is_implements_own: seat.kind == SeatKind::ImplementsOwn,
            index_point: Datum::new(Unstated::IndexPoint, seat.index_point).stated(),
            least_room: Datum::new(Unstated::RoomBehind, seat.least_room).stated(),
            greatest_reach: Datum::new(Unstated::Reach, seat.greatest_reach).stated(),
        }
    }
}

/// Whether the implement is worked from a seat, and whether the place of its controls is stated.
#[derive(PartialEq)]
pub struct ControlsStated {
    from_seat: bool,
    console: Datum<()>,
    /// Whether the place of its own seat is stated.
    own_seat: Datum<()>,
}

impl<'c> View<'c, Implement> for ControlsStated {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self {
            from_seat: implement.is_worked_from_seat(),
            console: Datum::new(Unstated::Console, implement.console).stated(),
            own_seat: Datum::new(Unstated::IndexPoint, implement.own_seat_index).stated(),
        }
    }
}

impl Rule for SeatRoomKnown {
    type Machine<'c> = OwnSeatStated;
    type Frame<'c> = ();
    type Seat<'c> = SeatStated;
    type Implement<'c> = ControlsStated;
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(seat), Some(implement)) = (&seen.machine, &seen.seat, &seen.implement) else { return };
        if !implement.sees.from_seat || !seen.asks.holds(implement.item) {
            return;
        }
        // Where either is is needed for the room and for the reach.
        let place = |datum: Datum<()>, item, out: &mut Vec<Finding>| {
            datum.need(out, reach_unknown(item));
            datum.need(out, room_unknown(item)).is_some()
        };
        let controls = place(implement.sees.console, implement.item, out);
        let sits = if seat.sees.turns {
            place(machine.sees.0, machine.item, out)
        } else if seat.sees.is_implements_own {
            place(implement.sees.own_seat, implement.item, out)
        } else {
            let held = Datum::new(Unstated::Pose, seen.asks.holds(seat.item).then_some(()));
            place(seat.sees.index_point.and(held).map(|_| ()), seat.item, out)
        };
        if controls && sits {
            seat.sees.least_room.need(out, room_unknown(seat.item));
            seat.sees.greatest_reach.need(out, reach_unknown(seat.item));
        }
    }
}

fn room_unknown(item: ItemRef) -> impl FnOnce(Unstated) -> Finding {
    move |missing| not_stated(SeatRoomUnknown { missing }, item, missing)
}

fn reach_unknown(item: ItemRef) -> impl FnOnce(Unstated) -> Finding {
    move |missing| not_stated(SeatReachUnknown { missing }, item, missing)
}

fn not_stated<F: Fact>(fact: F, item: ItemRef, what: Unstated) -> Finding {
    Finding::of(fact, Subject::Operator, Verdict::CheckFirst, Grade::None).check(Check::FindOut { item, what })
}

/// For an implement worked from a seat: the controls have to be far enough behind the seat index
/// point for the knees and near enough for the hands.
pub(super) struct RoomAtSeat;

/// x of the seat index point of the operator's seat.
#[derive(PartialEq)]
pub struct OwnSeat(Datum<Length>);

impl<'c> View<'c, Machine> for OwnSeat {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self(Datum::new(Unstated::IndexPoint, machine.operator_seat).map(|own| own.index_x))
    }
}

/// Where somebody sits and how far he reaches.
#[derive(PartialEq)]
pub struct Sits {
    turns: bool,
    is_implements_own: bool,
    index_point: Datum<(Length, Length)>,
    least_room: Datum<Length>,
    greatest_reach: Datum<Length>,
}

impl<'c> View<'c, Seat> for Sits {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self {
            turns: seat.front_seat == FrontSeatEffect::Turns,
            is_implements_own: seat.kind == SeatKind::ImplementsOwn,
            index_point: Datum::new(Unstated::IndexPoint, seat.index_point),
            least_room: Datum::new(Unstated::RoomBehind, seat.least_room),
            greatest_reach: Datum::new(Unstated::Reach, seat.greatest_reach),
        }
    }
}

/// Whether the implement is worked from a seat, and where its controls are.
#[derive(PartialEq)]
pub struct Controls {
    from_seat: bool,
    console: Datum<Point3>,
    /// Index point of its own seat.
    own_seat: Datum<(Length, Length)>,
}

impl<'c> View<'c, Implement> for Controls {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self {
            from_seat: implement.is_worked_from_seat(),
            console: Datum::new(Unstated::Console, implement.console),
            own_seat: Datum::new(Unstated::IndexPoint, implement.own_seat_index),
        }
    }
}

impl Rule for RoomAtSeat {
    type Machine<'c> = OwnSeat;
    type Frame<'c> = ();
    type Seat<'c> = Sits;
    type Implement<'c> = Controls;
    type Asks<'c> = (Place<Seat>, Place<Implement>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(seat), Some(implement)) = (&seen.machine, &seen.seat, &seen.implement) else { return };
        let (of_seat, of_implement) = &seen.asks;
        if !implement.sees.from_seat || !of_implement.is_held {
            return;
        }
        let controls = of_implement.at.and(implement.sees.console).map(|(at, console)| at.point(console).x);
        // When the operator faces the implement.
        let index_point = if seat.sees.turns {
            machine.sees.0
        } else if seat.sees.is_implements_own {
            implement.sees.own_seat.and(of_implement.at).map(|((x, z), at)| at.side(x, z).0)
        } else {
            seat.sees.index_point.and(of_seat.at).map(|((x, z), at)| at.side(x, z).0)
        };
        // A place that is not stated is said by the rule on places.
        let room = index_point.and(controls).map(|(index_point, controls)| index_point - controls);
        if let Some((room, least)) = room.and(seat.sees.least_room).or_said_by::<SeatRoomUnknown>() {
            out.push(of_room(room, least, implement.item));
        }
        if let Some((distance, most)) = room.and(seat.sees.greatest_reach).or_said_by::<SeatReachUnknown>()
            && Against::of((most - distance).m(), drawn_off(distance).m()) != Against::Within
        {
            let fact = SeatReachFar { distance, most };
            out.push(Finding::of(fact, Subject::Operator, Verdict::CheckFirst, Grade::Drawing));
        }
    }
}

/// Where the controls sit decides, if it is near.
fn of_room(room: Length, least: Length, implement: ItemRef) -> Finding {
    let (subject, off) = (Subject::Operator, drawn_off(room));
    match Against::of((room - least).m(), off.m()) {
        Against::Over => {
            let fact = SeatRoomShort { room, least, short: least - room };
            Finding::of(fact, subject, Verdict::WontMount, Grade::Drawing)
        }
        Against::Near => Finding::of(RoomClose { room, least, off }, subject, Verdict::CheckFirst, Grade::Drawing)
            .check(Check::FindOut { item: implement, what: Unstated::Console }),
        Against::Within => Finding::of(SeatRoom { room, least }, subject, Verdict::BoltsUp, Grade::Drawing),
    }
}
