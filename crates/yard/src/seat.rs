//! The seat.

use fitup_core::item::{
    Body, End, FrontSeatEffect, PortKind, Role, Seat, SeatBase, SeatKind, SeatMoves, ShapeRole, Station, SuppliedWith,
    View,
};
use fitup_core::quantity::{Mass, Source, Stated, Work};

use crate::port::{SQUARE, block, body, lead, mm, plate, point, port};

pub fn seat(id: &str, label: &str) -> Seat {
    let base = SeatBase { pattern: plate(&SQUARE), pedestal: Some(mm(120.0)) };
    let ports = vec![
        port("base", Role::SeatDeck, End::Carried, Some(point(0.0, 0.0, 0.0)), PortKind::SeatBase(base)),
        port("switch lead", Role::Wiring, End::Carried, None, lead()),
    ];
    let shapes = vec![
        block("cushion", View::Side, ShapeRole::Seat, (-60.0, 120.0), (-10.0, 250.0)),
        block("cushion", View::Plan, ShapeRole::Seat, (-60.0, -220.0), (-10.0, 220.0)),
    ];
    Seat {
        body: Body {
            mass: Some(Stated { value: Mass::from_kg(18.0), plus_minus: None, source: Source::Drawing }),
            centre_of_gravity: Some(point(-30.0, 0.0, 200.0)),
            ..body(id, label, ports, shapes)
        },
        fitting: Some(Work::from_hours(0.25)),
        kind: SeatKind::Separate,
        supplied_with: SuppliedWith::Kit,
        stations: vec![Station::Open, Station::Cab],
        index_point: Some((mm(0.0), mm(250.0))),
        swivel_radius: None,
        front_seat: FrontSeatEffect::None,
        least_room: Some(mm(450.0)),
        greatest_reach: Some(mm(700.0)),
        presence_switch: Some(true),
        moves: SeatMoves { off: Some(Work::from_hours(0.25)), ..SeatMoves::default() },
    }
}
