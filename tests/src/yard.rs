//! A small invented yard to turn one thing of at a time: a machine, a frame, a seat and two implements that bolt up by their
//! dimensions alone, and the adapters that go with them. Nothing is listed and nothing is missing.

use fitup_core::build::{Build, Carrying, Measurement, Seating};
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::item::{
    Adapter, AdapterId, Axle, Body, BoltPattern, Carrier, Catalogue, CatalogueName, Coupler, CouplerGender, Electric,
    End, Frame, FrameId, FrontAxle, FrontSeatEffect, Guide, GuideRow, Hole, HoleKind, HookRack, HookSide,
    HydraulicNeed, HydraulicSupply, Implement, ImplementId, ImplementKind, ItemRef, Machine, MachineId, Mount, Named,
    OperatorSeat, Part, PinForm, PinPoint, Pins, Point3, Port, PortKind, Pose, PowerTakeOff, PtoRotation, RampSize,
    Replacement, Role, RollOverBar, Seat, SeatBase, SeatId, SeatKind, Serials, Shape, ShapeRole, Site, SiteId, Sleeve,
    Station, Step, SuppliedWith, ThreePoint, Towards, Trailer, TrailerId, View,
};
use fitup_core::quantity::{Flow, Length, Mass, Power, Pressure, Source, Stated, Tool, Work};

pub const MACHINE: ItemRef = ItemRef::Machine(MachineId(0));
pub const OTHER_MACHINE: ItemRef = ItemRef::Machine(MachineId(1));
pub const FRAME: ItemRef = ItemRef::Frame(FrameId(0));
pub const OTHER_FRAME: ItemRef = ItemRef::Frame(FrameId(1));
pub const SEAT: ItemRef = ItemRef::Seat(SeatId(0));
pub const ARM: ItemRef = ItemRef::Implement(ImplementId(0));
pub const FLAIL: ItemRef = ItemRef::Implement(ImplementId(1));
pub const SPACER: AdapterId = AdapterId(0);
pub const SLEEVE: AdapterId = AdapterId(1);

/// A catalogue and the build that is tried in it.
#[derive(Debug, Clone)]
pub struct Yard {
    pub catalogue: Catalogue,
    pub build: Build,
}

pub fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

pub fn drawn(value: f64) -> Option<Stated<Length>> {
    Some(Stated::drawn(mm(value)))
}

pub fn hole(u: f64, v: f64) -> Hole {
    Hole { u: mm(u), v: mm(v), diameter: mm(13.5), kind: HoleKind::Plain, slot: None }
}

/// A plate of 13.5 mm holes for 12 mm bolts.
pub fn plate(holes: &[(f64, f64)]) -> BoltPattern {
    BoltPattern {
        holes: holes.iter().map(|&(u, v)| hole(u, v)).collect(),
        bolt: Some(mm(12.0)),
        ..BoltPattern::default()
    }
}

pub fn point(x: f64, y: f64, z: f64) -> Point3 {
    Point3 { x: mm(x), y: mm(y), z: mm(z) }
}

/// A rectangle in a view, from corner to corner.
pub fn block(name: &str, view: View, role: ShapeRole, from: (f64, f64), to: (f64, f64)) -> Shape {
    let line = |a, b| Step::Line(mm(a), mm(b));
    let path =
        vec![Step::Move(mm(from.0), mm(from.1)), line(to.0, from.1), line(to.0, to.1), line(from.0, to.1), Step::Close];
    Shape { name: name.to_owned(), view, role, carrier: Carrier::Item, clearance: true, path }
}

pub fn port(name: &str, role: Role, end: End, at: Option<Point3>, kind: PortKind) -> Port {
    let faces = if end == End::Carrier { Towards::Rear } else { Towards::Front };
    Port {
        name: name.to_owned(),
        role,
        end,
        pose: at.map(|at| Pose { at, faces, up: Towards::Up }),
        parts: Vec::new(),
        serials: Serials::default(),
        tolerance: None,
        source: Source::Drawing,
        kind,
    }
}

pub fn coupler() -> PortKind {
    PortKind::Coupler(Coupler { standard: "ISO 7241-A".into(), size: "12.5".into(), gender: None })
}

pub fn lead() -> PortKind {
    PortKind::Electric(Electric { connector: "three-way".into(), function: "seat switch".into() })
}

fn half(kind: PortKind, gender: CouplerGender) -> PortKind {
    match kind {
        PortKind::Coupler(coupler) => PortKind::Coupler(Coupler { gender: Some(gender), ..coupler }),
        other => other,
    }
}

pub fn rack(side: HookSide) -> HookRack {
    let (diameter, latch) = if side == HookSide::Bar { (40.0, 25.5) } else { (41.5, 24.5) };
    HookRack {
        side,
        diameter: drawn(diameter),
        spread: drawn(460.0),
        drop: drawn(240.0),
        latch: drawn(latch),
        setback: drawn(80.0),
    }
}

pub fn hitch(category: &str) -> ThreePoint {
    ThreePoint { categories: vec![category.to_owned()], ..ThreePoint::default() }
}

/// Two points: lugs with 25.5 mm bores, or clevises with 25 mm pins.
pub fn pins(form: PinForm) -> Pins {
    let (diameter, width) = if form == PinForm::Lug { (25.5, 30.0) } else { (25.0, 33.0) };
    let one = |name: &str| PinPoint {
        name: name.to_owned(),
        diameter: drawn(diameter),
        width: drawn(width),
        height: drawn(0.0),
    };
    Pins { form, points: vec![one("left"), one("right")], spread: drawn(500.0) }
}

fn body(id: &str, label: &str, ports: Vec<Port>, shapes: Vec<Shape>) -> Body {
    Body { id: id.to_owned(), label: label.to_owned(), ports, shapes, ..Body::default() }
}

fn machine(id: &str, label: &str) -> Machine {
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
        port("axle plate", Role::AxleAnchor, End::Carrier, Some(point(100.0, 0.0, 400.0)), two_holes()),
        port("loader base", Role::FrontAnchor, End::Carrier, Some(point(1300.0, 0.0, 400.0)), two_holes()),
        port("hitch", Role::Hitch, End::Carrier, Some(point(-430.0, 0.0, 400.0)), PortKind::ThreePoint(lifting)),
        port("take-off", Role::PowerTakeOff, End::Carrier, None, PortKind::PowerTakeOff(take_off)),
        port("pressure", Role::Pressure, End::Carrier, None, half(coupler(), CouplerGender::Female)),
        port("return", Role::Return, End::Carrier, None, half(coupler(), CouplerGender::Female)),
        port("seat plug", Role::Wiring, End::Carrier, None, lead()),
    ];
    let shapes = vec![
        block("bonnet", View::Side, ShapeRole::Bonnet, (700.0, 440.0), (1760.0, 850.0)),
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
        }),
        hydraulics: HydraulicSupply {
            flow: Some(Flow::from_l_min(24.0)),
            relief: Some(Pressure::from_bar(160.0)),
            outlets: Some(1),
            power_beyond: Some(true),
        },
        fitted: Vec::new(),
    }
}

fn two_holes() -> PortKind {
    PortKind::BoltPattern(plate(&[(-60.0, 0.0), (60.0, 0.0)]))
}

fn frame(id: &str, label: &str) -> Frame {
    let deck = SeatBase { pattern: plate(&SQUARE), pedestal: None };
    let ports = vec![
        port("axle plate", Role::AxleAnchor, End::Carried, Some(point(0.0, 0.0, 0.0)), two_holes()),
        port("front plate", Role::FrontAnchor, End::Carried, Some(point(1200.0, 0.0, 0.0)), two_holes()),
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
        stations: vec![Station::Open],
        excludes: Vec::new(),
        requires: Vec::new(),
    }
}

/// The holes of seat and deck.
pub const SQUARE: [(f64, f64); 4] = [(-80.0, -100.0), (80.0, -100.0), (80.0, 100.0), (-80.0, 100.0)];

fn seat(id: &str, label: &str) -> Seat {
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
        kind: SeatKind::Separate,
        supplied_with: SuppliedWith::Kit,
        stations: Vec::new(),
        index_point: Some((mm(0.0), mm(250.0))),
        swivel_radius: None,
        front_seat: FrontSeatEffect::None,
        least_room: Some(mm(450.0)),
        greatest_reach: Some(mm(700.0)),
        presence_switch: Some(true),
    }
}

fn arm() -> Implement {
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
    Implement {
        body: Body {
            mass: Some(Stated { value: Mass::from_kg(180.0), plus_minus: None, source: Source::Drawing }),
            centre_of_gravity: Some(point(-450.0, 0.0, 300.0)),
            ..body("arm", "Digging arm", ports, shapes)
        },
        kind: ImplementKind::DiggingArm,
        mount: Mount::Rack,
        arm: None,
        console: Some(point(-300.0, 0.0, 400.0)),
        worked_from_seat: true,
        hydraulics: Some(HydraulicNeed {
            flow_min: Some(Flow::from_l_min(15.0)),
            flow_max: Some(Flow::from_l_min(30.0)),
            pressure_min: Some(Pressure::from_bar(120.0)),
            pressure_max: Some(Pressure::from_bar(180.0)),
            outlets: 1,
            power_beyond: false,
        }),
        power_least: None,
        power_most: None,
        own_seat: false,
        transport_width: None,
    }
}

fn flail() -> Implement {
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
    Implement {
        body: Body {
            mass: Some(Stated { value: Mass::from_kg(150.0), plus_minus: None, source: Source::Drawing }),
            centre_of_gravity: Some(point(-350.0, 0.0, 0.0)),
            ..body("flail", "Flail", ports, shapes)
        },
        kind: ImplementKind::Flail,
        mount: Mount::ThreePoint,
        arm: None,
        console: None,
        worked_from_seat: false,
        hydraulics: None,
        power_least: Some(Power::from_kw(9.0)),
        power_most: Some(Power::from_kw(18.0)),
        own_seat: false,
        transport_width: None,
    }
}

fn adapters() -> Vec<Adapter> {
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
        let build = Build {
            machine: Some(MachineId(0)),
            carrying: Carrying::Frame(FrameId(0)),
            seating: Seating::This(SeatId(0)),
            implement: Some(ImplementId(0)),
            ..Build::default()
        };
        Self { catalogue, build }
    }

    /// The flail on the hitch.
    #[must_use]
    pub fn with_flail(mut self) -> Self {
        self.build.carrying = Carrying::Hitch;
        self.build.seating = Seating::Open;
        self.build.implement = Some(ImplementId(1));
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
        let chosen = self.build.implement.map_or(0, ImplementId::index);
        &mut self.catalogue.implements[chosen]
    }

    pub fn body(&mut self, item: ItemRef) -> &mut Body {
        match item {
            ItemRef::Machine(id) => &mut self.catalogue.machines[id.index()].body,
            ItemRef::Frame(id) => &mut self.catalogue.frames[id.index()].body,
            ItemRef::Seat(id) => &mut self.catalogue.seats[id.index()].body,
            ItemRef::Implement(id) => &mut self.catalogue.implements[id.index()].body,
            ItemRef::Adapter(id) => &mut self.catalogue.adapters[id.index()].body,
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
                ..Trailer::default()
            });
            self.build.trailer = Some(TrailerId(0));
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
                right_angle_turn: true,
                greatest_axle_load: Some(Mass::from_kg(2500.0)),
                ..Site::default()
            });
            self.build.site = Some(SiteId(0));
        }
        &mut self.catalogue.sites[0]
    }

    /// Enters a measurement.
    pub fn measure(&mut self, item: ItemRef, port: &str, dimension: &str, value: f64, tool: Tool) {
        self.build.measured.push(Measurement {
            item,
            port: port.to_owned(),
            dimension: dimension.to_owned(),
            value: mm(value),
            tool,
            plus_minus: None,
            note: String::new(),
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
            parts.or_insert_with((*number).to_owned(), || part(number));
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
