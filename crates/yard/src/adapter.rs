//! The adapters.

use fitup_core::item::{Adapter, Body, End, HookSide, PortKind, Role, Sleeve};
use fitup_core::quantity::{Mass, Source, Stated, Work};

use crate::port::{body, mm, point, port, rack};

pub fn adapters() -> Vec<Adapter> {
    let spacer = vec![
        port("hooks", Role::Rack, End::Carried, Some(point(0.0, 0.0, 0.0)), PortKind::HookRack(rack(HookSide::Hook))),
        port("bar", Role::Rack, End::Carrier, Some(point(-80.0, 0.0, 0.0)), PortKind::HookRack(rack(HookSide::Bar))),
    ];
    let mass = |kg| Some(Stated { value: Mass::from_kg(kg), plus_minus: None, source: Source::Drawing });
    let weighed = |body: Body| Body { mass: mass(9.0), centre_of_gravity: Some(point(-40.0, 0.0, 0.0)), ..body };
    vec![
        Adapter {
            body: weighed(body("spacer", "Rack spacer", spacer, Vec::new())),
            work: Work::from_hours(1.5),
            sleeve: None,
        },
        Adapter {
            body: weighed(body("sleeve", "Sleeve set", Vec::new(), Vec::new())),
            work: Work::from_hours(0.5),
            sleeve: Some(Sleeve { outer: mm(27.8), inner: mm(25.2), count: 2 }),
        },
    ]
}
