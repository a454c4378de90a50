//! Ports.

use fitup_core::item as core;

use super::body::{point, serials};
use super::units::{self, Units};
use crate::wire::port::{
    BoltPattern, CouplerGender, End, Hole, HoleKind, HookRack, HookSide, PinForm, Pins, Port, PortKind, Pose,
    PowerTakeOff, PtoRotation, Role, ThreePoint, Towards,
};

/// A port.
pub fn port(port: &Port, units: Units) -> core::Port {
    core::Port {
        name: port.name.clone(),
        role: role(port.role),
        end: match port.end {
            End::Carrier => core::End::Carrier,
            End::Carried => core::End::Carried,
        },
        pose: port.pose.map(|at| pose(at, units)),
        parts: port.parts.clone(),
        serials: serials(port.serials),
        tolerance: port.tolerance.map(|half| units.length(half)),
        source: units::source(port.source),
        kind: kind(&port.kind, units),
    }
}

fn pose(pose: Pose, units: Units) -> core::Pose {
    core::Pose { at: point(pose.at, units), faces: towards(pose.faces), up: towards(pose.up) }
}

const fn role(role: Role) -> core::Role {
    match role {
        Role::AxleAnchor => core::Role::AxleAnchor,
        Role::FrontAnchor => core::Role::FrontAnchor,
        Role::Rack => core::Role::Rack,
        Role::Hitch => core::Role::Hitch,
        Role::SeatDeck => core::Role::SeatDeck,
        Role::PowerTakeOff => core::Role::PowerTakeOff,
        Role::Pressure => core::Role::Pressure,
        Role::Return => core::Role::Return,
        Role::CaseDrain => core::Role::CaseDrain,
        Role::Wiring => core::Role::Wiring,
    }
}

const fn towards(towards: Towards) -> core::Towards {
    match towards {
        Towards::Front => core::Towards::Front,
        Towards::Rear => core::Towards::Rear,
        Towards::Left => core::Towards::Left,
        Towards::Right => core::Towards::Right,
        Towards::Up => core::Towards::Up,
        Towards::Down => core::Towards::Down,
    }
}

fn kind(kind: &PortKind, units: Units) -> core::PortKind {
    match kind {
        PortKind::BoltPattern(pattern) => core::PortKind::BoltPattern(bolt_pattern(pattern, units)),
        PortKind::Pins(it) => core::PortKind::Pins(pins(it, units)),
        PortKind::HookRack(it) => core::PortKind::HookRack(hook_rack(it, units)),
        PortKind::ThreePoint(it) => core::PortKind::ThreePoint(three_point(it, units)),
        PortKind::PowerTakeOff(it) => core::PortKind::PowerTakeOff(power_take_off(it, units)),
        PortKind::Coupler(it) => core::PortKind::Coupler(core::Coupler {
            standard: it.standard.clone(),
            size: it.size.clone(),
            gender: it.gender.map(|gender| match gender {
                CouplerGender::Male => core::CouplerGender::Male,
                CouplerGender::Female => core::CouplerGender::Female,
            }),
        }),
        PortKind::SeatBase(it) => core::PortKind::SeatBase(core::SeatBase {
            pattern: bolt_pattern(&it.pattern, units),
            pedestal: it.pedestal.map(|height| units.length(height)),
        }),
        PortKind::Electric(it) => {
            core::PortKind::Electric(core::Electric { connector: it.connector.clone(), function: it.function.clone() })
        }
    }
}

fn bolt_pattern(pattern: &BoltPattern, units: Units) -> core::BoltPattern {
    core::BoltPattern {
        holes: pattern.holes.iter().map(|one| hole(one, units)).collect(),
        plate: pattern.plate.map(|thickness| units.length(thickness)),
        bolt: pattern.bolt.map(|diameter| units.length(diameter)),
        required: pattern.required,
        may_flip: pattern.may_flip,
    }
}

fn hole(hole: &Hole, units: Units) -> core::Hole {
    core::Hole {
        u: units.length(hole.u),
        v: units.length(hole.v),
        diameter: units.length(hole.diameter),
        kind: match hole.kind {
            HoleKind::Plain => core::HoleKind::Plain,
            HoleKind::Tapped => core::HoleKind::Tapped,
        },
        slot: hole
            .slot
            .map(|slot| core::Slot { travel: units.length(slot.travel), direction: units.angle(slot.direction) }),
    }
}

fn pins(pins: &Pins, units: Units) -> core::Pins {
    let points = pins.points.iter().map(|point| core::PinPoint {
        name: point.name.clone(),
        diameter: point.diameter.map(|it| units.stated_length(it)),
        width: point.width.map(|it| units.stated_length(it)),
        height: point.height.map(|it| units.stated_length(it)),
    });
    core::Pins {
        form: match pins.form {
            PinForm::Lug => core::PinForm::Lug,
            PinForm::Clevis => core::PinForm::Clevis,
        },
        points: points.collect(),
        spread: pins.spread.map(|it| units.stated_length(it)),
    }
}

fn hook_rack(rack: &HookRack, units: Units) -> core::HookRack {
    core::HookRack {
        side: match rack.side {
            HookSide::Bar => core::HookSide::Bar,
            HookSide::Hook => core::HookSide::Hook,
        },
        diameter: rack.diameter.map(|it| units.stated_length(it)),
        spread: rack.spread.map(|it| units.stated_length(it)),
        drop: rack.drop.map(|it| units.stated_length(it)),
        latch: rack.latch.map(|it| units.stated_length(it)),
        setback: rack.setback.map(|it| units.stated_length(it)),
    }
}

fn three_point(hitch: &ThreePoint, units: Units) -> core::ThreePoint {
    core::ThreePoint {
        categories: hitch.categories.clone(),
        quick_attach: hitch.quick_attach,
        lift: hitch.lift.map(|it| units.mass(it)),
        lift_610: hitch.lift_610.map(|it| units.mass(it)),
        lower_pin: hitch.lower_pin.map(|it| units.stated_length(it)),
        upper_pin: hitch.upper_pin.map(|it| units.stated_length(it)),
        span: hitch.span.map(|it| units.stated_length(it)),
        mast: hitch.mast.map(|it| units.stated_length(it)),
    }
}

fn power_take_off(shaft: &PowerTakeOff, units: Units) -> core::PowerTakeOff {
    core::PowerTakeOff {
        shaft_type: shaft.shaft_type,
        speeds: shaft.speeds.clone(),
        rotation: shaft.rotation.map(|rotation| match rotation {
            PtoRotation::Clockwise => core::PtoRotation::Clockwise,
            PtoRotation::CounterClockwise => core::PtoRotation::CounterClockwise,
        }),
        power: shaft.power.map(|it| units.power(it)),
    }
}
