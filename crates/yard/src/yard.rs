//! The yard, and the ways a test turns something of it.

use fitup_core::build::{Build, Carrying, Choices, Measurement, NumberRead, Seating};
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::item::{
    Body, BoltPattern, Catalogue, CatalogueName, Equipment, Frame, FrameId, Guide, GuideRow, HookRack, Implement,
    ImplementId, ItemRef, Machine, MachineId, Named, Part, PinForm, Pins, Point3, Port, PortKind, PowerTakeOff,
    RampSize, Replacement, Seat, SeatBase, SeatId, Site, SiteId, ThreePoint, Trailer, TrailerId,
};
use fitup_core::quantity::{Length, Mass, Stated, Tool};

use crate::adapter::adapters;
use crate::frame::frame;
use crate::implement::{arm, flail};
use crate::machine::machine;
use crate::port::{mm, pins};
use crate::seat::seat;
use crate::{ARM, FRAME};

/// A catalogue and the build that is tried in it.
#[derive(Debug, Clone)]
pub struct Yard {
    pub catalogue: Catalogue,
    pub build: Build,
}

impl Yard {
    /// The arm on the frame, worked from the seat.
    pub fn new() -> Self {
        let catalogue = Catalogue {
            name: CatalogueName { name: "Test yard".into(), currency: "USD".into(), ..CatalogueName::default() },
            machines: vec![machine("hedge", "Hedge tractor"), machine("path", "Path tractor")],
            frames: vec![frame("long-frame", "Long frame"), frame("short-frame", "Short frame")],
            seats: vec![seat("rear-seat", "Rear seat")],
            implements: vec![arm(), flail()],
            adapters: adapters(),
            ..Catalogue::default()
        };
        let build = Build::from(Choices {
            machine: Some(MachineId(0)),
            carrying: Carrying::Frame(FrameId(0)),
            seating: Seating::This(SeatId(0)),
            implement: Some(ImplementId(0)),
        });
        Self { catalogue, build }
    }

    /// The flail on the hitch.
    #[must_use]
    pub fn with_flail(mut self) -> Self {
        self.build.choices.carrying = Carrying::Hitch;
        self.build.choices.seating = Seating::Open;
        self.build.choices.implement = Some(ImplementId(1));
        self
    }

    pub fn judge(&self) -> Answer {
        judge(&Desk::new(self.catalogue.clone()), &self.build)
    }

    pub fn machine(&mut self) -> &mut Machine {
        &mut self.catalogue.machines[0]
    }

    pub fn frame(&mut self) -> &mut Frame {
        &mut self.catalogue.frames[0]
    }

    pub fn seat(&mut self) -> &mut Seat {
        &mut self.catalogue.seats[0]
    }

    pub fn implement(&mut self) -> &mut Implement {
        let chosen = self.build.choices.implement.map_or(0, ImplementId::index);
        &mut self.catalogue.implements[chosen]
    }

    pub fn body(&mut self, item: ItemRef) -> &mut Body {
        match item {
            ItemRef::Machine(id) => &mut self.catalogue.machines[id.index()].body,
            ItemRef::Frame(id) => &mut self.catalogue.frames[id.index()].body,
            ItemRef::Seat(id) => &mut self.catalogue.seats[id.index()].body,
            ItemRef::Implement(id) => &mut self.catalogue.implements[id.index()].body,
            ItemRef::Adapter(id) => &mut self.catalogue.adapters[id.index()].body,
            ItemRef::Equipment(id) => &mut self.catalogue.equipment[id.index()].body,
        }
    }

    /// A port by its name.
    pub fn port(&mut self, item: ItemRef, name: &str) -> &mut Port {
        self.body(item).ports.iter_mut().find(|port| port.name == name).expect("the yard has this port")
    }

    /// The holes of a port.
    pub fn holes(&mut self, item: ItemRef, name: &str) -> &mut BoltPattern {
        match &mut self.port(item, name).kind {
            PortKind::BoltPattern(pattern) | PortKind::SeatBase(SeatBase { pattern, .. }) => pattern,
            other => panic!("{name} is no bolt pattern: {other:?}"),
        }
    }

    /// The hooks or bar of a port.
    pub fn rack(&mut self, item: ItemRef, name: &str) -> &mut HookRack {
        match &mut self.port(item, name).kind {
            PortKind::HookRack(rack) => rack,
            other => panic!("{name} is no rack: {other:?}"),
        }
    }

    /// The three-point hitch of a port.
    pub fn hitch(&mut self, item: ItemRef, name: &str) -> &mut ThreePoint {
        match &mut self.port(item, name).kind {
            PortKind::ThreePoint(hitch) => hitch,
            other => panic!("{name} is no hitch: {other:?}"),
        }
    }

    /// The pins of a port.
    pub fn pins(&mut self, item: ItemRef, name: &str) -> &mut Pins {
        match &mut self.port(item, name).kind {
            PortKind::Pins(pins) => pins,
            other => panic!("{name} has no pins: {other:?}"),
        }
    }

    /// Equipment of a kind for the machine, not on it. Its id and label are its kind with hyphens.
    pub fn equipment(&mut self, kind: &str) -> &mut Equipment {
        let id = kind.replace(' ', "-");
        let at = self.catalogue.equipment.iter().position(|piece| piece.kind == kind).unwrap_or_else(|| {
            let centre = Point3 { x: Length::from_mm(600.0), z: Length::from_mm(300.0), ..Point3::default() };
            let body = Body {
                label: id.clone(),
                id: id.clone(),
                mass: Some(Stated::drawn(Mass::from_kg(20.0))),
                centre_of_gravity: Some(centre),
                ..Body::default()
            };
            let machines = vec![self.catalogue.machines[0].body.id.clone()];
            self.catalogue.equipment.push(Equipment { body, kind: kind.to_owned(), machines, ..Equipment::default() });
            self.catalogue.equipment.len() - 1
        });
        &mut self.catalogue.equipment[at]
    }

    /// The same, and the machine is sold with it.
    pub fn fitted(&mut self, kind: &str) -> &mut Equipment {
        let id = self.equipment(kind).body.id.clone();
        self.machine().fitted.push(id);
        self.equipment(kind)
    }

    /// The power take-off of a port.
    pub fn take_off(&mut self, item: ItemRef, name: &str) -> &mut PowerTakeOff {
        match &mut self.port(item, name).kind {
            PortKind::PowerTakeOff(take_off) => take_off,
            other => panic!("{name} is no take-off: {other:?}"),
        }
    }

    /// The rack joint made with pins: clevises on the frame, lugs on the arm.
    pub fn pinned(&mut self) {
        self.port(FRAME, "rack").kind = PortKind::Pins(pins(PinForm::Clevis));
        self.port(ARM, "hooks").kind = PortKind::Pins(pins(PinForm::Lug));
    }

    /// The trailer of the build; one that carries everything is put into the yard first.
    pub fn trailer(&mut self) -> &mut Trailer {
        if self.catalogue.trailers.is_empty() {
            self.catalogue.trailers.push(Trailer {
                id: "flat".into(),
                label: "Flat trailer".into(),
                deck_length: Some(mm(3600.0)),
                deck_width: Some(mm(1750.0)),
                deck_height: Some(mm(480.0)),
                deck_rear: Some(mm(-1900.0)),
                ramp: Some(RampSize::Length(mm(2400.0))),
                empty_mass: Some(Mass::from_kg(680.0)),
                centre_of_gravity: Some(mm(250.0)),
                rated_total: Some(Mass::from_kg(2700.0)),
                rated_axle: Some(Mass::from_kg(2600.0)),
                coupling: Some(mm(3300.0)),
                nose_least: Some(0.05),
                nose_most: Some(0.1),
                rated_nose: Some(Mass::from_kg(2000.0)),
                ..Trailer::default()
            });
            self.build.side.trailer = Some(TrailerId(0));
        }
        &mut self.catalogue.trailers[0]
    }

    /// The site of the build; one that everything gets into is put into the yard first.
    pub fn site(&mut self) -> &mut Site {
        if self.catalogue.sites.is_empty() {
            self.catalogue.sites.push(Site {
                id: "park".into(),
                label: "Park".into(),
                gate_width: Some(mm(2600.0)),
                gate_height: Some(mm(2500.0)),
                path_width: Some(mm(2800.0)),
                right_angle_turn: Some(true),
                greatest_axle_load: Some(Mass::from_kg(2500.0)),
                ..Site::default()
            });
            self.build.side.site = Some(SiteId(0));
        }
        &mut self.catalogue.sites[0]
    }

    /// Enters a measurement.
    pub fn measure(&mut self, item: ItemRef, port: &str, dimension: &str, value: f64, tool: Tool) {
        self.build.side.measured.push(Measurement::new(item, port, dimension, mm(value), tool));
    }

    /// Enters part numbers read off a piece.
    pub fn read(&mut self, item: ItemRef, port: &str, parts: &[&str]) {
        self.build.side.read.push(NumberRead {
            item,
            port: port.to_owned(),
            parts: parts.iter().map(|&number| number.to_owned()).collect(),
            by: "the workshop".to_owned(),
            when: "Monday".to_owned(),
        });
    }

    /// Says that the guide lists the set of a machine, a frame, any seat and the arm.
    pub fn list(&mut self, machine: MachineId, frame: FrameId) {
        let guide = self.catalogue.guide.get_or_insert_with(|| Guide {
            name: "Yard guide".into(),
            date: "2025-03-01".into(),
            rows: Vec::new(),
        });
        guide.rows.push(GuideRow {
            machine: Named::This(machine),
            frame: Named::This(frame),
            seat: Named::Any,
            implement: Named::This(ImplementId(0)),
        });
    }

    /// Puts part numbers on a port.
    pub fn bears(&mut self, item: ItemRef, port: &str, parts: &[&str]) {
        self.port(item, port).parts = parts.iter().map(|&number| number.to_owned()).collect();
    }

    /// Records a replacement.
    pub fn replace(&mut self, old: &str, by: &[&str], both_ways: bool) {
        let part = |number: &str| Part { number: number.to_owned(), name: String::new(), replaced: None };
        let parts = &mut self.catalogue.parts;
        for number in by {
            parts.entry((*number).to_owned()).or_insert_with(|| part(number));
        }
        let replaced = Some(Replacement { by: by.iter().map(|&number| number.to_owned()).collect(), both_ways });
        parts.insert(old.to_owned(), Part { replaced, ..part(old) });
    }
}

impl Default for Yard {
    fn default() -> Self {
        Self::new()
    }
}
