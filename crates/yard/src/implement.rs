//! A digging arm that works from the seat, and a flail on the hitch.

use fitup_core::item::{
    Body, CouplerGender, End, HookSide, HydraulicNeed, Implement, ImplementKind, Mount, PortKind, PowerTakeOff,
    PtoRotation, Role, ShapeRole, View,
};
use fitup_core::quantity::{Flow, Mass, Power, Pressure, Source, Stated};

use crate::port::{block, body, coupler, half, hitch, mm, point, port, rack};

pub fn arm() -> Implement {
    let ports = vec![
        port("hooks", Role::Rack, End::Carried, Some(point(0.0, 0.0, 0.0)), PortKind::HookRack(rack(HookSide::Hook))),
        port("pressure hose", Role::Pressure, End::Carried, None, half(coupler(), CouplerGender::Male)),
        port("return hose", Role::Return, End::Carried, None, half(coupler(), CouplerGender::Male)),
    ];
    let shapes = vec![
        block("console", View::Side, ShapeRole::Console, (-420.0, 100.0), (-280.0, 500.0)),
        block("console", View::Plan, ShapeRole::Console, (-420.0, -250.0), (-280.0, 250.0)),
        block("boom", View::Side, ShapeRole::Boom, (-800.0, 0.0), (-500.0, 900.0)),
        block("boom", View::Plan, ShapeRole::Boom, (-800.0, -120.0), (-500.0, 120.0)),
    ];
    let body = Body {
        mass: Some(Stated { value: Mass::from_kg(180.0), plus_minus: None, source: Source::Drawing }),
        centre_of_gravity: Some(point(-450.0, 0.0, 300.0)),
        ..body("arm", "Digging arm", ports, shapes)
    };
    Implement {
        console: Some(point(-300.0, 0.0, 400.0)),
        worked_from_seat: Some(true),
        own_seat: Some(false),
        hydraulics: Some(HydraulicNeed {
            flow_min: Some(Flow::from_l_min(15.0)),
            flow_max: Some(Flow::from_l_min(30.0)),
            pressure_min: Some(Pressure::from_bar(120.0)),
            pressure_max: Some(Pressure::from_bar(180.0)),
            outlets: 1,
            power_beyond: Some(false),
        }),
        transport_width: Some(mm(500.0)),
        ..Implement::of(body, ImplementKind::DiggingArm, Mount::Rack)
    }
}

pub fn flail() -> Implement {
    let take_off =
        PowerTakeOff { shaft_type: Some(1), speeds: vec![540], rotation: Some(PtoRotation::Clockwise), power: None };
    let ports = vec![
        port("mast", Role::Hitch, End::Carried, Some(point(0.0, 0.0, 0.0)), PortKind::ThreePoint(hitch("1"))),
        port("shaft", Role::PowerTakeOff, End::Carried, None, PortKind::PowerTakeOff(take_off)),
    ];
    let shapes = vec![
        block("hood", View::Side, ShapeRole::Guard, (-700.0, -200.0), (-100.0, 100.0)),
        block("hood", View::Plan, ShapeRole::Guard, (-700.0, -600.0), (-100.0, 600.0)),
    ];
    let body = Body {
        mass: Some(Stated { value: Mass::from_kg(150.0), plus_minus: None, source: Source::Drawing }),
        centre_of_gravity: Some(point(-350.0, 0.0, 0.0)),
        ..body("flail", "Flail", ports, shapes)
    };
    Implement {
        worked_from_seat: Some(false),
        power_least: Some(Power::from_kw(9.0)),
        power_most: Some(Power::from_kw(18.0)),
        transport_width: Some(mm(1200.0)),
        ..Implement::of(body, ImplementKind::Flail, Mount::ThreePoint)
    }
}
