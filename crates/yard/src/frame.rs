//! The frames.

use fitup_core::item::{Body, End, Frame, HookSide, PortKind, Role, SeatBase, ShapeRole, Station, View};
use fitup_core::quantity::{Mass, Source, Stated, Work};

use crate::port::{SQUARE, block, body, plate, point, port, rack, two_holes};

pub fn frame(id: &str, label: &str) -> Frame {
    let deck = SeatBase { pattern: plate(&SQUARE), pedestal: None };
    let ports = vec![
        port("axle plate", Role::AxleAnchor, End::Carried, Some(point(0.0, 0.0, 0.0)), two_holes(600.5)),
        port("front plate", Role::FrontAnchor, End::Carried, Some(point(1200.0, 0.0, 0.0)), two_holes(600.5)),
        port(
            "rack",
            Role::Rack,
            End::Carrier,
            Some(point(-500.0, 0.0, 200.0)),
            PortKind::HookRack(rack(HookSide::Bar)),
        ),
        port("deck", Role::SeatDeck, End::Carrier, Some(point(-250.0, 0.0, 150.0)), PortKind::SeatBase(deck)),
    ];
    let shapes = vec![
        block("rail", View::Side, ShapeRole::FrameRail, (-480.0, -60.0), (1260.0, 40.0)),
        block("rail", View::Plan, ShapeRole::FrameRail, (-480.0, -250.0), (1260.0, 250.0)),
    ];
    Frame {
        body: Body {
            mass: Some(Stated { value: Mass::from_kg(60.0), plus_minus: None, source: Source::Drawing }),
            centre_of_gravity: Some(point(200.0, 0.0, 0.0)),
            ..body(id, label, ports, shapes)
        },
        fitting: Some(Work::from_hours(3.0)),
        stations: vec![Station::Open],
        excludes: Vec::new(),
        requires: Vec::new(),
    }
}
