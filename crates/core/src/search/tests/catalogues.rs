//! Small catalogues by chance, of few classes of ports so that every verdict occurs.

use super::chance::Chance;
use super::outlines::{block, machine_shapes, outline};
use super::series;
use crate::build::{Build, Change, Choices, Measurement, NumberRead, Presence, Step, options};
use crate::item::*;
use crate::quantity::*;

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn stated(value: f64) -> Stated<Length> {
    Stated { value: mm(value), plus_minus: None, source: Source::Drawing }
}

fn maybe<T>(chance: &Chance, value: T) -> Option<T> {
    (!chance.seldom()).then_some(value)
}

fn pattern(chance: &Chance, end: End) -> BoltPattern {
    let size = chance.one(&[100.0, 100.6, 101.8, 140.0]);
    let slot = chance.one(&[true, false]).then_some(Slot { travel: mm(30.0), direction: Angle::ZERO });
    // Each as one looks at its own face.
    let side = if end == End::Carrier { 1.0 } else { -1.0 };
    let tapped = end == End::Carrier && chance.once_in(6);
    let (kind, diameter) = if tapped {
        (HoleKind::Tapped, chance.one(&[12.0, 12.0, 12.0, 12.7]))
    } else {
        (HoleKind::Plain, chance.one(&[13.0, 13.0, 13.0, 13.0, 13.0, 13.0, 15.0, 24.0]))
    };
    let hole = |u: f64, v| Hole { kind, slot, ..Hole::drawn(mm(side * u), mm(v), mm(diameter)) };
    let mut holes = vec![hole(0.0, 0.0), hole(size, 0.0)];
    if chance.one(&[false, true]) {
        holes.push(hole(size / 2.0, 60.0));
        // Some holes are elsewhere in their plate, and the stack with them.
        if size > 101.0 && size < 102.0 {
            for hole in &mut holes {
                hole.v.value += mm(30.0);
            }
        }
    }
    if chance.seldom() {
        holes.clear();
    }
    BoltPattern {
        holes,
        bolt: maybe(chance, stated(chance.one(&[12.0, 12.0, 12.0, 12.0, 12.0, 10.0]))),
        thread: chance.once_in(2).then(|| chance.one(&["M12", "M12", "M12", "M12x1.25"]).to_owned()),
        plate: maybe(chance, mm(chance.one(&[12.0, 18.0, 6.0]))),
        metal: maybe(chance, chance.one(&[Metal::Steel, Metal::CastIron])),
        edge: maybe(chance, stated(chance.one(&[60.0, 60.0, 15.0]))),
        pair_width: maybe(
            chance,
            stated(if end == End::Carrier { 600.0 } else { chance.one(&[600.5, 600.5, 603.0, 612.0]) }),
        ),
        required: Some(2),
        ..BoltPattern::default()
    }
}

fn kind(chance: &Chance, role: Role, end: End) -> PortKind {
    let carrier = end == End::Carrier;
    match role {
        Role::AxleAnchor | Role::FrontAnchor if chance.one(&[false, true]) => {
            let diameter = if carrier { chance.one(&[25.5, 28.0, 24.0]) } else { 25.0 };
            let point = PinPoint {
                diameter: maybe(chance, stated(diameter)),
                width: Some(stated(if carrier { 40.0 } else { 42.0 })),
                ..PinPoint::default()
            };
            let form = if carrier { PinForm::Lug } else { PinForm::Clevis };
            PortKind::Pins(Pins { points: vec![point], ..Pins::of(form) })
        }
        Role::AxleAnchor | Role::FrontAnchor => PortKind::BoltPattern(pattern(chance, end)),
        Role::Rack => {
            let spread = chance.one(&[500.0, 501.0, 503.2, 560.0]);
            PortKind::HookRack(HookRack {
                diameter: maybe(chance, stated(if carrier { 40.0 } else { chance.one(&[41.5, 41.5, 41.5, 45.0]) })),
                spread: Some(stated(spread)),
                drop: Some(stated(300.0)),
                latch: Some(stated(if carrier { 21.5 } else { 20.0 })),
                setback: Some(stated(80.0)),
                ..HookRack::of(if carrier { HookSide::Bar } else { HookSide::Hook })
            })
        }
        Role::Hitch => {
            let categories =
                chance.one(&[vec!["1".to_owned()], vec!["1".to_owned(), "2".to_owned()], vec!["2".to_owned()], vec![]]);
            let lift = maybe(chance, Mass::from_kg(chance.one(&[900.0, 250.0])));
            PortKind::ThreePoint(ThreePoint { categories, lift, ..ThreePoint::default() })
        }
        Role::SeatDeck => PortKind::SeatBase(SeatBase { pattern: pattern(chance, end), pedestal: None }),
        Role::PowerTakeOff => PortKind::PowerTakeOff(PowerTakeOff {
            shaft_type: maybe(chance, chance.one(&[1, 1, 2])),
            speeds: vec![chance.one(&[540, 540, 1000])],
            rotation: None,
            power: maybe(chance, Power::from_w(20_000.0)),
        }),
        Role::Pressure | Role::Return | Role::CaseDrain => PortKind::Coupler(Coupler {
            standard: chance.one(&["ISO 7241-A".to_owned(), "ISO 16028".to_owned(), String::new()]),
            size: "12.5".to_owned(),
            gender: None,
        }),
        Role::Wiring => PortKind::Electric(Electric {
            connector: chance.one(&["two-pole".to_owned(), "seven-pole".to_owned()]),
            function: "switch".to_owned(),
        }),
    }
}

fn port(chance: &Chance, role: Role, end: End, at: (f64, f64), faces: Towards) -> Port {
    let jitter = chance.one(&[0.0, 0.0, 1.0, 4.0, 40.0]);
    let higher = chance.one(&[0.0, 0.0, 0.0, 30.0]);
    let place = Point3 { x: mm(at.0 + jitter), y: Length::ZERO, z: mm(at.1 + higher) };
    let faces = if chance.once_in(40) { Towards::Rear } else { faces };
    let up = if matches!(faces, Towards::Up | Towards::Down) { Towards::Front } else { Towards::Up };
    let pose = Pose { at: place.into(), faces, up };
    let number = chance.below(7);
    Port {
        name: format!("{role:?}-{end:?}").to_lowercase(),
        role,
        end,
        pose: (!chance.seldom()).then_some(pose),
        parts: if chance.once_in(2) { vec![format!("p{number}")] } else { Vec::new() },
        serials: if chance.seldom() { Serials { first: Some(100), last: None } } else { Serials::default() },
        tolerance: if chance.once_in(3) { Some(mm(0.05)) } else { None },
        source: Source::Drawing,
        kind: kind(chance, role, end),
    }
}

/// Ports, each there as often as `in_ten` says.
fn ports(chance: &Chance, wanted: &[(Role, End, usize)]) -> Vec<Port> {
    let mut ports = Vec::new();
    for &(role, end, in_ten) in wanted {
        let usual = if in_ten > 6 { !chance.seldom() } else { chance.below(10) < in_ten };
        if usual {
            let (at, faces) = match (role, end) {
                (Role::AxleAnchor, End::Carrier) => ((0.0, 500.0), Towards::Right),
                (Role::AxleAnchor, End::Carried) => ((0.0, 500.0), Towards::Left),
                (Role::FrontAnchor, End::Carrier) => ((1200.0, 500.0), Towards::Right),
                (Role::FrontAnchor, End::Carried) => ((1200.0, 500.0), Towards::Left),
                (Role::Rack, End::Carrier) => ((-400.0, 700.0), Towards::Rear),
                (Role::Hitch, End::Carrier) => ((-500.0, 500.0), Towards::Rear),
                (Role::SeatDeck, End::Carrier) => ((-100.0, 900.0), Towards::Up),
                (Role::SeatDeck, End::Carried) => ((0.0, 0.0), Towards::Down),
                _ => ((0.0, 0.0), Towards::Front),
            };
            ports.push(port(chance, role, end, at, faces));
            if chance.once_in(25) {
                let mut second = port(chance, role, end, at, faces);
                second.name.push_str("-2");
                ports.push(second);
            }
        }
    }
    ports
}

fn body(chance: &Chance, id: String, mass: f64, ports: Vec<Port>) -> Body {
    let mass = mass * chance.one(&[1.0, 1.3, 0.6, 3.0]);
    Body {
        mass: maybe(chance, Stated { value: Mass::from_kg(mass), plus_minus: None, source: Source::Drawing }),
        centre_of_gravity: maybe(
            chance,
            Point3 { x: mm(-chance.one(&[0.0, 250.0, 700.0])), y: Length::ZERO, z: mm(300.0) },
        ),
        listed_with: if chance.once_in(8) { vec![format!("{}0", chance.one(&["m", "f", "i"]))] } else { Vec::new() },
        label: id.clone(),
        // Most rows speak of later units alone.
        serials: Serials { first: (!id.ends_with('1')).then_some(100), last: None },
        id,
        ports,
        ..Body::default()
    }
}

use End::{Carried, Carrier};

fn machine(chance: &Chance, at: usize) -> Machine {
    let ports = ports(
        chance,
        &[
            (Role::AxleAnchor, Carrier, 9),
            (Role::FrontAnchor, Carrier, 9),
            (Role::Hitch, Carrier, 9),
            (Role::Rack, Carrier, 1),
            (Role::SeatDeck, Carrier, 5),
            (Role::PowerTakeOff, Carrier, 8),
            (Role::Pressure, Carrier, 8),
            (Role::Return, Carrier, 8),
            (Role::Wiring, Carrier, 7),
        ],
    );
    let axle = |chance: &Chance, bare: f64, rated: f64| Axle {
        track: maybe(chance, mm(1200.0)),
        tyre_width: Some(mm(300.0)),
        static_loaded_radius: maybe(chance, mm(400.0)),
        overall_radius: maybe(chance, mm(chance.one(&[500.0, 400.0]))),
        rated: maybe(chance, Mass::from_kg(rated * chance.one(&[1.0, 1.0, 0.7]))),
        tyre_rated: maybe(chance, Mass::from_kg(rated * chance.one(&[0.6, 0.6, 0.45]))),
        bare_load: maybe(chance, Mass::from_kg(bare)),
    };
    Machine {
        body: Body { shapes: machine_shapes(chance), ..body(chance, format!("m{at}"), 1000.0, ports) },
        station: chance.one(&[Station::Open, Station::Cab]),
        wheelbase: maybe(chance, stated(chance.one(&[1700.0, 1500.0]))),
        rear: axle(chance, 600.0, 1500.0),
        front: axle(chance, 450.0, 900.0),
        front_axle: FrontAxle::Fixed,
        centre_of_gravity_height: None,
        turning_radius: None,
        roll_over_bar: chance.once_in(2).then(|| RollOverBar {
            x: mm(-75.0),
            height_up: mm(2100.0),
            height_folded: chance.one(&[Some(mm(1100.0)), None]),
        }),
        cab_rear: maybe(chance, mm(chance.one(&[-450.0, -450.0, -150.0]))),
        operator_seat: maybe(
            chance,
            OperatorSeat {
                index_x: mm(chance.one(&[300.0, 250.0])),
                index_z: mm(900.0),
                turns: at.is_multiple_of(2),
                flips_forward: !at.is_multiple_of(3),
                slides_forward: mm(chance.one(&[0.0, 100.0, 300.0])),
                off: maybe(chance, Work::from_hours(0.5)),
            },
        ),
        hydraulics: HydraulicSupply {
            flow: maybe(chance, Flow::from_m3_s(chance.one(&[0.0005, 0.0003, 0.001]))),
            relief: maybe(chance, Pressure::from_pa(chance.one(&[1.7e7, 2.1e7]))),
            outlets: maybe(chance, chance.one(&[2, 1])),
            power_beyond: maybe(chance, true),
        },
        fitted: (0..6).filter(|_| chance.once_in(4)).map(|at| format!("e{at}")).collect(),
        on: Vec::new(),
    }
}

const STATES: [SeatState; 5] =
    [SeatState::Driving, SeatState::Turned, SeatState::Folded, SeatState::Slid, SeatState::Off];

fn frame(chance: &Chance, at: usize) -> Frame {
    let ports = ports(
        chance,
        &[
            (Role::AxleAnchor, Carried, 10),
            (Role::FrontAnchor, Carried, 8),
            (Role::Rack, Carrier, 9),
            (Role::SeatDeck, Carrier, 7),
            (Role::Hitch, Carrier, 1),
        ],
    );
    Frame {
        body: Body {
            shapes: if chance.seldom() {
                Vec::new()
            } else {
                let low = chance.one(&[430.0, 430.0, 60.0, -20.0]);
                block(chance, ShapeRole::FrameRail, (-400.0, low), (chance.one(&[1000.0, 1250.0]), 530.0))
            },
            ..body(chance, format!("f{at}"), 80.0, ports)
        },
        fitting: None,
        stations: chance.one(&[vec![Station::Open, Station::Cab], vec![Station::Open], vec![]]),
        excludes: if chance.one(&[false, true]) { vec!["mower".to_owned()] } else { Vec::new() },
        requires: if chance.once_in(5) { vec!["loader base".to_owned()] } else { Vec::new() },
    }
}

fn seat(chance: &Chance, at: usize) -> Seat {
    let usual = if chance.once_in(3) { SeatKind::Turning } else { SeatKind::Separate };
    let kind = chance.one(&[usual, SeatKind::Turning, SeatKind::ImplementsOwn, SeatKind::Forward]);
    let own = matches!(kind, SeatKind::Turning | SeatKind::Forward);
    let ports =
        if own { Vec::new() } else { ports(chance, &[(Role::SeatDeck, Carried, 9), (Role::Wiring, Carried, 3)]) };
    Seat {
        body: Body {
            shapes: if chance.seldom() {
                Vec::new()
            } else {
                block(chance, ShapeRole::Seat, (chance.one(&[10.0, -150.0]), 0.0), (200.0, 400.0))
            },
            ..body(chance, format!("s{at}"), 20.0, ports)
        },
        fitting: None,
        kind,
        supplied_with: chance.one(&[
            SuppliedWith::Kit,
            SuppliedWith::Frame,
            SuppliedWith::Implement,
            SuppliedWith::Machine,
        ]),
        stations: chance.one(&[
            vec![Station::Open, Station::Cab],
            vec![Station::Open],
            vec![Station::Open, Station::Cab],
            vec![],
        ]),
        index_point: maybe(chance, (mm(0.0), mm(500.0))),
        swivel_radius: maybe(chance, mm(chance.one(&[350.0, 350.0, 600.0]))),
        front_seat: if kind == SeatKind::Turning {
            FrontSeatEffect::Turns
        } else {
            chance.one(&[
                FrontSeatEffect::None,
                FrontSeatEffect::FlipsForward,
                FrontSeatEffect::SlidesForward(mm(80.0)),
                FrontSeatEffect::ComesOff,
            ])
        },
        least_room: maybe(chance, mm(150.0)),
        greatest_reach: maybe(chance, mm(900.0)),
        presence_switch: maybe(chance, !chance.once_in(4)),
        moves: seat_moves(chance),
    }
}

fn seat_moves(chance: &Chance) -> SeatMoves {
    SeatMoves {
        folds: chance.once_in(3),
        slides: mm(chance.one(&[0.0, 0.0, 60.0])),
        off: maybe(chance, Work::from_hours(0.25)),
    }
}

fn implement(chance: &Chance, at: usize) -> Implement {
    let on_rack = chance.once_in(2);
    let (rack, hitch) = if on_rack { (10, 1) } else { (0, 10) };
    let ports = ports(
        chance,
        &[
            (Role::Rack, Carried, rack),
            (Role::Hitch, Carried, hitch),
            (Role::PowerTakeOff, Carried, 2),
            (Role::Pressure, Carried, 4),
            (Role::Return, Carried, 4),
            (Role::CaseDrain, Carried, 1),
            (Role::Wiring, Carried, 2),
            (Role::SeatDeck, Carrier, 2),
        ],
    );
    let kind = chance.one(&[ImplementKind::Flail, ImplementKind::DiggingArm, ImplementKind::Forks]);
    let has_oil = if kind == ImplementKind::Forks { chance.once_in(4) } else { !chance.seldom() };
    let hydraulics = has_oil.then(|| HydraulicNeed {
        flow_min: Some(Flow::from_m3_s(0.0004)),
        flow_max: maybe(chance, Flow::from_m3_s(chance.one(&[0.002, 0.0009]))),
        pressure_min: maybe(chance, Pressure::from_pa(1.5e7)),
        pressure_max: maybe(chance, Pressure::from_pa(chance.one(&[2.5e7, 1.9e7]))),
        outlets: chance.one(&[2, 1]),
        power_beyond: maybe(chance, chance.once_in(4)),
    });
    Implement {
        body: Body {
            shapes: {
                let far = if chance.once_in(3) { 330.0 } else { -100.0 };
                let mut shapes = outline(chance, ShapeRole::Boom, (-600.0, 0.0), (far, 400.0));
                if chance.once_in(3) {
                    let front = chance.one(&[150.0, 700.0]);
                    shapes.extend(block(chance, ShapeRole::Seat, (0.0, 500.0), (front, 700.0)));
                }
                shapes
            },
            ..body(chance, format!("i{at}"), 220.0, ports)
        },
        fitting: None,
        kind,
        mount: if on_rack { Mount::Rack } else { Mount::ThreePoint },
        arm: None,
        console: maybe(chance, Point3 { x: mm(100.0), y: Length::ZERO, z: mm(400.0) }),
        worked_from_seat: chance.one(&[Some(false), Some(true), None]),
        hydraulics,
        power_least: chance.once_in(4).then_some(Power::from_w(chance.one(&[15_000.0, 25_000.0]))),
        power_most: chance.once_in(4).then_some(Power::from_w(chance.one(&[18_000.0, 40_000.0]))),
        own_seat: maybe(chance, chance.once_in(3)),
        own_seat_index: maybe(chance, (mm(chance.one(&[300.0, 150.0])), mm(600.0))),
        own_seat_moves: seat_moves(chance),
        transport_width: None,
    }
}

fn adapter(chance: &Chance, at: usize) -> Adapter {
    let role = chance.one(&[Role::Rack, Role::SeatDeck, Role::Hitch, Role::AxleAnchor]);
    let other = chance.one(&[role, Role::Rack, Role::Hitch]);
    let ports = ports(chance, &[(role, Carried, 10), (other, Carrier, 10)]);
    let sleeve = chance.once_in(3).then_some(Sleeve { outer: mm(27.8), inner: mm(25.3), count: 1 });
    let shapes =
        if chance.once_in(3) { block(chance, ShapeRole::Body, (-50.0, 0.0), (150.0, 500.0)) } else { Vec::new() };
    let body = Body { shapes, ..body(chance, format!("a{at}"), 15.0, ports) };
    Adapter { body, work: Work::default(), sleeve }
}

/// A piece of equipment for some of the machines: one that carries a front end, one in the way, one that weighs.
fn equipment(chance: &Chance, at: usize) -> Equipment {
    let kind = chance.one(&["loader base", "mower", "weights"]);
    let wanted: &[(Role, End, usize)] = match kind {
        "loader base" => &[(Role::FrontAnchor, Carrier, 8), (Role::Pressure, Carrier, 2)],
        "mower" => &[(Role::AxleAnchor, Carrier, 1)],
        _ => &[],
    };
    let mut body = body(chance, format!("e{at}"), 60.0, ports(chance, wanted));
    for port in &mut body.ports {
        port.name.push_str("-on");
    }
    if chance.once_in(2) {
        body.shapes = {
            let from = chance.one(&[-600.0, 300.0]);
            outline(chance, ShapeRole::Guard, (from, 250.0), (from + 900.0, 600.0))
        };
    }
    let name = |end: &str| chance.one(&[format!("frontanchor-{end}"), format!("hitch-{end}")]);
    Equipment {
        body,
        kind: kind.to_owned(),
        machines: (0..5).filter(|_| chance.once_in(2)).map(|machine| format!("m{machine}")).collect(),
        needs: if chance.once_in(5) { vec![name("carrier")] } else { Vec::new() },
        blocks: if chance.once_in(5) { vec![name("carrier")] } else { Vec::new() },
        hides: Vec::new(),
        changes: Changes {
            rear: AxleChange {
                track_more: chance.once_in(4).then(|| mm(120.0)),
                static_loaded_radius: chance.once_in(6).then(|| mm(520.0)),
                ..AxleChange::default()
            },
            hydraulics: HydraulicChange {
                flow: chance.once_in(5).then(|| Flow::from_m3_s(0.0007)),
                outlets_more: chance.once_in(5).then_some(1),
                ..HydraulicChange::default()
            },
            lift: chance.once_in(6).then(|| Mass::from_kg(400.0)),
            ..Changes::default()
        },
        on: maybe(chance, Work::from_hours(1.0)),
        off: maybe(chance, Work::from_hours(0.5)),
    }
}

fn guide(chance: &Chance, counts: [usize; 4]) -> Guide {
    fn named<T>(chance: &Chance, make: impl Fn(usize) -> T, count: usize) -> Named<T> {
        if chance.once_in(3) { Named::Any } else { Named::This(make(chance.below(count))) }
    }
    let rows = (0..chance.below(3))
        .map(|_| GuideRow {
            machine: named(chance, MachineId::at, counts[0]),
            frame: if chance.once_in(4) { Named::Without } else { named(chance, FrameId::at, counts[1] - 1) },
            seat: named(chance, SeatId::at, counts[2]),
            implement: named(chance, ImplementId::at, counts[3]),
        })
        .collect();
    Guide { rows, ..Guide::default() }
}

/// Up to `most` and one more items; one in three differs from that before it in one thing alone.
fn several<T>(
    chance: &Chance,
    most: usize,
    make: impl Fn(usize) -> T,
    like: fn(&Chance, before: &T, other: T) -> T,
) -> Vec<T> {
    let mut items: Vec<T> = Vec::new();
    for at in 0..=chance.below(most) {
        let other = make(at);
        let before = items.last().filter(|_| chance.once_in(3));
        let item = match before {
            Some(before) => like(chance, before, other),
            None => other,
        };
        items.push(item);
    }
    items
}

/// A catalogue.
pub fn catalogue(chance: &Chance) -> Catalogue {
    let mut catalogue = Catalogue {
        machines: several(chance, 4, |at| machine(chance, at), series::machine),
        frames: several(chance, 3, |at| frame(chance, at), series::frame),
        seats: several(chance, 3, |at| seat(chance, at), series::seat),
        implements: several(chance, 4, |at| implement(chance, at), series::implement),
        adapters: (0..chance.below(4)).map(|at| adapter(chance, at)).collect(),
        equipment: (0..chance.below(5)).map(|at| equipment(chance, at)).collect(),
        ..Catalogue::default()
    };
    for number in 0..4 {
        let by = vec![format!("p{}", chance.below(7))];
        let replaced = chance.once_in(2).then_some(Replacement { by, both_ways: number % 2 == 0 });
        let number = format!("p{number}");
        catalogue.parts.insert(number.clone(), Part { number, name: String::new(), replaced });
    }
    if chance.once_in(2) {
        catalogue.guide = Some(guide(chance, options(&catalogue)));
    }
    catalogue
}

/// An option of every step.
pub fn complete(chance: &Chance, catalogue: &Catalogue) -> Choices {
    let mut build = Build::default();
    for step in Step::ALL {
        step.choose(&mut build, chance.below(options(catalogue)[step as usize]));
    }
    build.choices
}

/// A partial build of a catalogue, sometimes with adapters, changes and measurements.
pub fn build(chance: &Chance, catalogue: &Catalogue) -> Build {
    let mut build = Build::default();
    for step in Step::ALL {
        if chance.once_in(3) {
            step.choose(&mut build, chance.below(options(catalogue)[step as usize]));
        }
    }
    if chance.once_in(2) {
        return build;
    }
    if !catalogue.adapters.is_empty() {
        for _ in 0..chance.below(4) {
            build.side.adapters.push(AdapterId::at(chance.below(catalogue.adapters.len())));
        }
    }
    for id in (0..catalogue.equipment.len()).map(EquipmentId::at).filter(|_| chance.once_in(3)) {
        build.side.changes.push(chance.one(&[Change::PutOn(id), Change::TakeOff(id)]));
    }
    let items: Vec<ItemRef> = catalogue.items().collect();
    for _ in 0..chance.below(4) {
        let item = chance.one(&items);
        let Some(port) = catalogue.body(item).ports.first().map(|port| port.name.clone()) else { continue };
        match chance.below(7) {
            0 => build.side.changes.push(chance.one(&[
                Change::DriverSeat(chance.one(&STATES)),
                Change::RearSeat(chance.one(&STATES)),
                Change::FoldRollOverBar,
                Change::Ballast { mass: Mass::from_kg(100.0), x: mm(2000.0) },
            ])),
            1 => build.side.changes.push(Change::Drill { item, port }),
            2 => build.side.changes.push(Change::OpenUp { item, port, by: mm(1.0) }),
            3 => {
                let what = if chance.once_in(2) { port } else { format!("{port}/hole-1") };
                build.side.looked.insert((item, what), chance.one(&[Presence::Yes, Presence::No]));
            }
            4 => {
                let borne: Vec<String> = catalogue.parts.keys().cloned().collect();
                let parts = vec![if borne.is_empty() { "of-nobody".to_owned() } else { chance.one(&borne) }];
                build.side.read.push(NumberRead { item, port, parts, by: String::new(), when: String::new() });
            }
            5 => {
                build.side.serials.insert(item, chance.one(&[50, 150]));
            }
            _ => build.side.measured.push(Measurement {
                item,
                port,
                dimension: chance
                    .one(&["spread", "hole-2-u", "at-x", "diameter", "point-1-diameter"].map(str::to_owned)),
                value: mm(chance.one(&[100.0, 100.3, 500.5, 25.6, 140.0])),
                tool: Tool::Caliper,
                plus_minus: None,
                readings: Vec::new(),
                note: String::new(),
            }),
        }
    }
    build
}
