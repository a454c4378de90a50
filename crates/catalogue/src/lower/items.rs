//! The tables' own fields.

use fitup_core::item as core;

use super::body::point;
use super::units::{self, Units};
use crate::wire::adapter::Adapter;
use crate::wire::frame::Frame;
use crate::wire::implement::{ArmLink, DiggingArm, HydraulicNeed, Implement, ImplementKind, Mount};
use crate::wire::machine::{Axle, FrontAxle, Machine, Station};
use crate::wire::seat::{FrontSeatEffect, Seat, SeatKind, SuppliedWith};
use crate::wire::site::Site;
use crate::wire::trailer::{Ramp, Trailer};

/// A machine.
pub fn machine(row: &Machine, body: core::Body, units: Units) -> core::Machine {
    core::Machine {
        body,
        station: station(row.station),
        wheelbase: row.wheelbase.map(|it| units.stated_length(it)),
        rear: row.rear.map_or(core::Axle::default(), |it| axle(it, units)),
        front: row.front.map_or(core::Axle::default(), |it| axle(it, units)),
        front_axle: match row.front_axle {
            None => core::FrontAxle::Unknown,
            Some(FrontAxle::Fixed) => core::FrontAxle::Fixed,
            Some(FrontAxle::Oscillating(pivot)) => {
                core::FrontAxle::Oscillating { pivot_height: units.length(pivot.pivot_height) }
            }
        },
        centre_of_gravity_height: row.centre_of_gravity_height.map(|it| units.length(it)),
        turning_radius: row.turning_radius.map(|it| units.length(it)),
        roll_over_bar: row.roll_over_bar.map(|bar| core::RollOverBar {
            x: units.length(bar.x),
            height_up: units.length(bar.height_up),
            height_folded: bar.height_folded.map(|it| units.length(it)),
        }),
        cab_rear: row.cab_rear.map(|it| units.length(it)),
        operator_seat: row.operator_seat.map(|seat| core::OperatorSeat {
            index_x: units.length(seat.index_x),
            index_z: units.length(seat.index_z),
            turns: seat.turns,
            flips_forward: seat.flips_forward,
            slides_forward: units.length(seat.slides_forward),
        }),
        hydraulics: row.hydraulics.map_or(core::HydraulicSupply::default(), |supply| core::HydraulicSupply {
            flow: supply.flow.map(|it| units.flow(it)),
            relief: supply.relief.map(|it| units.pressure(it)),
            outlets: supply.outlets,
            power_beyond: supply.power_beyond,
        }),
        fitted: row.fitted.clone(),
    }
}

/// A frame.
pub fn frame(row: &Frame, body: core::Body) -> core::Frame {
    core::Frame {
        body,
        stations: row.stations.iter().copied().map(station).collect(),
        excludes: row.excludes.clone(),
        requires: row.requires.clone(),
    }
}

/// A seat arrangement.
pub fn seat(row: &Seat, body: core::Body, units: Units) -> core::Seat {
    core::Seat {
        body,
        kind: match row.kind {
            SeatKind::Turning => core::SeatKind::Turning,
            SeatKind::Separate => core::SeatKind::Separate,
            SeatKind::ImplementsOwn => core::SeatKind::ImplementsOwn,
            SeatKind::Forward => core::SeatKind::Forward,
        },
        supplied_with: match row.supplied_with {
            SuppliedWith::Kit => core::SuppliedWith::Kit,
            SuppliedWith::Machine => core::SuppliedWith::Machine,
            SuppliedWith::Frame => core::SuppliedWith::Frame,
            SuppliedWith::Implement => core::SuppliedWith::Implement,
        },
        stations: row.stations.iter().copied().map(station).collect(),
        index_point: row.index_point.map(|p| (units.length(p.x), units.length(p.z))),
        swivel_radius: row.swivel_radius.map(|it| units.length(it)),
        front_seat: match row.front_seat {
            FrontSeatEffect::None => core::FrontSeatEffect::None,
            FrontSeatEffect::Turns => core::FrontSeatEffect::Turns,
            FrontSeatEffect::FlipsForward => core::FrontSeatEffect::FlipsForward,
            FrontSeatEffect::SlidesForward(by) => core::FrontSeatEffect::SlidesForward(units.length(by)),
            FrontSeatEffect::ComesOff => core::FrontSeatEffect::ComesOff,
        },
        least_room: row.least_room.map(|it| units.length(it)),
        greatest_reach: row.greatest_reach.map(|it| units.length(it)),
        presence_switch: row.presence_switch,
    }
}

/// An implement.
pub fn implement(row: &Implement, body: core::Body, units: Units) -> core::Implement {
    core::Implement {
        body,
        kind: match row.kind {
            ImplementKind::DiggingArm => core::ImplementKind::DiggingArm,
            ImplementKind::Auger => core::ImplementKind::Auger,
            ImplementKind::StumpCutter => core::ImplementKind::StumpCutter,
            ImplementKind::Flail => core::ImplementKind::Flail,
            ImplementKind::RotaryCutter => core::ImplementKind::RotaryCutter,
            ImplementKind::Blade => core::ImplementKind::Blade,
            ImplementKind::Forks => core::ImplementKind::Forks,
            ImplementKind::Ballast => core::ImplementKind::Ballast,
        },
        mount: match row.mount {
            Mount::Rack => core::Mount::Rack,
            Mount::ThreePoint => core::Mount::ThreePoint,
        },
        arm: row.arm.as_ref().map(|it| arm(it, units)),
        console: row.console.map(|p| point(p, units)),
        worked_from_seat: row.worked_from_seat,
        hydraulics: row.hydraulics.map(|it| hydraulic_need(it, units)),
        power_least: row.power_least.map(|it| units.power(it)),
        power_most: row.power_most.map(|it| units.power(it)),
        own_seat: row.own_seat,
        transport_width: row.transport_width.map(|it| units.length(it)),
    }
}

/// An adapter.
pub fn adapter(row: &Adapter, body: core::Body, units: Units) -> core::Adapter {
    core::Adapter {
        body,
        work: units::hours(row.hours),
        sleeve: row.sleeve.map(|sleeve| core::Sleeve {
            outer: units.length(sleeve.outer),
            inner: units.length(sleeve.inner),
            count: sleeve.count,
        }),
    }
}

/// A trailer.
pub fn trailer(row: &Trailer, units: Units) -> core::Trailer {
    core::Trailer {
        id: row.id.clone(),
        label: row.label.clone(),
        note: row.note.clone(),
        deck_length: row.deck_length.map(|it| units.length(it)),
        deck_width: row.deck_width.map(|it| units.length(it)),
        deck_height: row.deck_height.map(|it| units.length(it)),
        deck_rear: row.deck_rear.map(|it| units.length(it)),
        ramp: row.ramp.map(|ramp| match ramp {
            Ramp::Length(length) => core::RampSize::Length(units.length(length)),
            Ramp::Angle(angle) => core::RampSize::Angle(units.angle(angle)),
        }),
        beaver_length: row.beaver_length.map(|it| units.length(it)),
        beaver_angle: row.beaver_angle.map(|it| units.angle(it)),
        empty_mass: row.empty_mass.map(|it| units.mass(it)),
        centre_of_gravity: row.centre_of_gravity.map(|it| units.length(it)),
        rated_total: row.rated_total.map(|it| units.mass(it)),
        rated_axle: row.rated_axle.map(|it| units.mass(it)),
        coupling: row.coupling.map(|it| units.length(it)),
        nose_least: row.nose_least.map(|share| share.0),
        nose_most: row.nose_most.map(|share| share.0),
        rated_nose: row.rated_nose.map(|it| units.mass(it)),
    }
}

/// A site.
pub fn site(row: &Site, units: Units) -> core::Site {
    core::Site {
        id: row.id.clone(),
        label: row.label.clone(),
        note: row.note.clone(),
        gate_width: row.gate_width.map(|it| units.length(it)),
        gate_height: row.gate_height.map(|it| units.length(it)),
        path_width: row.path_width.map(|it| units.length(it)),
        right_angle_turn: row.right_angle_turn,
        greatest_axle_load: row.greatest_axle_load.map(|it| units.mass(it)),
    }
}

const fn station(station: Station) -> core::Station {
    match station {
        Station::Open => core::Station::Open,
        Station::Cab => core::Station::Cab,
    }
}

fn axle(axle: Axle, units: Units) -> core::Axle {
    core::Axle {
        track: axle.track.map(|it| units.length(it)),
        tyre_width: axle.tyre_width.map(|it| units.length(it)),
        static_loaded_radius: axle.static_loaded_radius.map(|it| units.length(it)),
        overall_radius: axle.overall_radius.map(|it| units.length(it)),
        rated: axle.rated.map(|it| units.mass(it)),
        tyre_rated: axle.tyre_rated.map(|it| units.mass(it)),
        bare_load: axle.bare_load.map(|it| units.mass(it)),
    }
}

fn arm(arm: &DiggingArm, units: Units) -> core::DiggingArm {
    core::DiggingArm {
        swing_x: units.length(arm.swing_x),
        foot_u: units.length(arm.foot_u),
        foot_z: units.length(arm.foot_z),
        boom: link(arm.boom, units),
        dipper: link(arm.dipper, units),
        bucket: link(arm.bucket, units),
        swing: units.angle(arm.swing),
        stabilisers: arm.stabilisers.map(|it| core::Stabilisers {
            spread: units.length(it.spread),
            transport_width: units.length(it.transport_width),
            x: units.length(it.x),
        }),
        lift_at_full_reach: arm.lift_at_full_reach.map(|it| units.mass(it)),
    }
}

fn link(link: ArmLink, units: Units) -> core::ArmLink {
    core::ArmLink {
        length: units.length(link.length),
        least: units.angle(link.least),
        greatest: units.angle(link.greatest),
        transport: units.angle(link.transport),
        mass: link.mass.map(|it| units.mass(it)),
        centre: link.centre.map(|it| units.length(it)),
    }
}

fn hydraulic_need(need: HydraulicNeed, units: Units) -> core::HydraulicNeed {
    core::HydraulicNeed {
        flow_min: need.flow_min.map(|it| units.flow(it)),
        flow_max: need.flow_max.map(|it| units.flow(it)),
        pressure_min: need.pressure_min.map(|it| units.pressure(it)),
        pressure_max: need.pressure_max.map(|it| units.pressure(it)),
        outlets: need.outlets,
        power_beyond: need.power_beyond,
    }
}
