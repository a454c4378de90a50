//! The machines.

use fitup_core::item::{
    Axle, CouplerGender, End, FrontAxle, HydraulicSupply, Machine, OperatorSeat, PortKind, PowerTakeOff, PtoRotation,
    Role, RollOverBar, ShapeRole, Station, ThreePoint, View,
};
use fitup_core::quantity::{Flow, Mass, Power, Pressure, Stated, Work};

use crate::port::{block, body, coupler, half, hitch, lead, mm, point, port, two_holes};

pub fn machine(id: &str, label: &str) -> Machine {
    let axle = |bare: f64| Axle {
        track: Some(mm(860.0)),
        tyre_width: Some(mm(220.0)),
        static_loaded_radius: Some(mm(375.0)),
        overall_radius: Some(mm(390.0)),
        rated: Some(Mass::from_kg(1200.0)),
        tyre_rated: Some(Mass::from_kg(700.0)),
        bare_load: Some(Mass::from_kg(bare)),
    };
    let take_off = PowerTakeOff {
        shaft_type: Some(1),
        speeds: vec![540],
        rotation: Some(PtoRotation::Clockwise),
        power: Some(Power::from_kw(14.0)),
    };
    let lifting = ThreePoint { lift: Some(Mass::from_kg(700.0)), lift_610: Some(Mass::from_kg(500.0)), ..hitch("1") };
    let ports = vec![
        port("axle plate", Role::AxleAnchor, End::Carrier, Some(point(100.0, 0.0, 400.0)), two_holes(600.0)),
        port("loader base", Role::FrontAnchor, End::Carrier, Some(point(1300.0, 0.0, 400.0)), two_holes(600.0)),
        port("hitch", Role::Hitch, End::Carrier, Some(point(-430.0, 0.0, 400.0)), PortKind::ThreePoint(lifting)),
        port("take-off", Role::PowerTakeOff, End::Carrier, None, PortKind::PowerTakeOff(take_off)),
        port("pressure", Role::Pressure, End::Carrier, None, half(coupler(), CouplerGender::Female)),
        port("return", Role::Return, End::Carrier, None, half(coupler(), CouplerGender::Female)),
        port("seat plug", Role::Wiring, End::Carrier, None, lead()),
    ];
    let shapes = vec![
        block("bonnet", View::Side, ShapeRole::Bonnet, (700.0, 440.0), (1760.0, 850.0)),
        block("seat", View::Side, ShapeRole::Seat, (120.0, 660.0), (450.0, 1150.0)),
        block("seat", View::Plan, ShapeRole::Seat, (120.0, -240.0), (450.0, 240.0)),
        block("folded seat", View::Side, ShapeRole::SeatFolded, (180.0, 660.0), (500.0, 800.0)),
        block("folded seat", View::Plan, ShapeRole::SeatFolded, (180.0, -240.0), (500.0, 240.0)),
        block("standing bar", View::Side, ShapeRole::RollOverBar, (-170.0, 800.0), (-130.0, 1880.0)),
        block("folded bar", View::Side, ShapeRole::RollOverBarFolded, (-900.0, 1250.0), (-130.0, 1290.0)),
        block("standing bar", View::Plan, ShapeRole::RollOverBar, (-170.0, -360.0), (-130.0, 360.0)),
        block("folded bar", View::Plan, ShapeRole::RollOverBarFolded, (-900.0, -360.0), (-130.0, 360.0)),
    ];
    Machine {
        body: body(id, label, ports, shapes),
        station: Station::Open,
        wheelbase: Some(Stated::drawn(mm(1450.0))),
        rear: axle(500.0),
        front: axle(480.0),
        front_axle: FrontAxle::Oscillating { pivot_height: mm(330.0) },
        centre_of_gravity_height: Some(mm(560.0)),
        turning_radius: Some(mm(2200.0)),
        roll_over_bar: Some(RollOverBar { x: mm(-150.0), height_up: mm(1880.0), height_folded: Some(mm(1290.0)) }),
        cab_rear: None,
        operator_seat: Some(OperatorSeat {
            index_x: mm(210.0),
            index_z: mm(760.0),
            turns: false,
            flips_forward: true,
            slides_forward: mm(120.0),
            off: Some(Work::from_hours(0.5)),
        }),
        hydraulics: HydraulicSupply {
            flow: Some(Flow::from_l_min(24.0)),
            relief: Some(Pressure::from_bar(160.0)),
            outlets: Some(1),
            power_beyond: Some(true),
        },
        fitted: Vec::new(),
        on: Vec::new(),
    }
}
