//! A synthetic catalogue of any size, of the class structure a dealer's catalogue has.
//!
//! Invented throughout. What decides how hard it is to search (for the full size, 400 machines ×
//! 150 frames × 30 seats × 1,500 implements):
//!
//! * machines come in series of eight; a series has one of 40 chassis (axle plate, front plate and
//!   the span between them), one of 12 hydraulic outfits, its own seat and axle loads; the eight
//!   differ in power, station, mass, what is fitted. So 24 axle plates, 8 front plates, 40 spans,
//!   some 130 powers, 400 masses;
//! * a frame is made for one chassis and carries one of 6 racks and one of 4 seat decks, or none;
//!   every mass differs;
//! * seats are turning, forward, separate on one of 4 bases, or the implement's own;
//! * of the implements 45 % hang on one of 6 racks (half of these digging arms, worked from a
//!   seat), 55 % on hitches of three categories; 24 hydraulic needs, 60 powers; every mass and
//!   centre of gravity differs;
//! * seven ports in ten bear a part number of their class; the guide lists one set for every ten
//!   implements; two series in five share their chassis' numbers by replacement;
//! * outlines are boxes from the side and from above: hull with cab or bar, rails, standing seats, trunk and boom, one boom
//!   in eight folded over its mount;
//! * about one item in twenty leaves out a mass, a load, a rating, an outline or a hole pattern.

use fitup_core::item::{
    Axle, Body, BoltPattern, Carrier, Catalogue, Coupler, CouplerGender, Electric, End, Equipment, Frame, FrameId,
    FrontAxle, FrontSeatEffect, Guide, GuideRow, Hole, HookRack, HookSide, HydraulicNeed, HydraulicSupply, Implement,
    ImplementId, ImplementKind, Machine, MachineId, Mount, Named, OperatorSeat, Part, PathCommand, Point3, Port,
    PortKind, Pose, PowerTakeOff, PtoRotation, Replacement, Role, Seat, SeatBase, SeatId, SeatKind, SeatMoves, Serials,
    Shape, ShapeRole, Slot, Station, SuppliedWith, ThreePoint, Towards, View,
};
use fitup_core::quantity::{Angle, Flow, Length, Mass, Money, Power, Pressure, Source, Stated, Work};

/// How many machines, frames, seats and implements.
pub type Size = [usize; 4];

/// Five sizes up to the full one.
pub const SIZES: [Size; 5] =
    [[25, 10, 5, 95], [50, 20, 8, 190], [100, 40, 12, 375], [200, 75, 20, 750], [400, 150, 30, 1500]];

/// The catalogue of a size.
pub fn yard([machines, frames, seats, implements]: Size) -> Catalogue {
    let mut catalogue = Catalogue {
        machines: (0..machines).map(machine).collect(),
        frames: (0..frames).map(|at| frame(at, machines)).collect(),
        seats: (0..seats).map(seat).collect(),
        implements: (0..implements).map(implement).collect(),
        ..Catalogue::default()
    };
    catalogue.equipment = equipment(&catalogue.machines);
    for chassis in 0..CHASSIS {
        let number = format!("axle-{}", chassis % 24);
        let replaced = (chassis % 5 < 2).then(|| Replacement {
            by: vec![format!("axle-{}", (chassis + 7) % 24)],
            both_ways: chassis.is_multiple_of(2),
        });
        let part = Part { number: number.clone(), name: String::new(), replaced };
        catalogue.parts.entry(number).or_insert(part);
    }
    let rows = (0..implements / 10).map(|row| GuideRow {
        machine: Named::This(MachineId::at(spread(row, 1) % machines)),
        frame: if row.is_multiple_of(2) { Named::Without } else { Named::This(FrameId::at(spread(row, 2) % frames)) },
        seat: Named::This(SeatId::at(spread(row, 3) % seats)),
        implement: Named::This(ImplementId::at(row * 10)),
    });
    catalogue.guide = Some(Guide { name: "Guide".to_owned(), date: "2026-01-01".to_owned(), rows: rows.collect() });
    // Whole tens of the currency, so that some items cost the same.
    let price = |at: usize, salt: usize| {
        let step = i64::try_from(spread(at, salt) % 900).unwrap_or_default();
        Some(Money::from_hundredths(100_000 + 1_000 * step))
    };
    let Catalogue { machines, frames, seats, implements, .. } = &mut catalogue;
    machines.iter_mut().enumerate().for_each(|(at, row)| row.body.price = price(at, 11));
    frames.iter_mut().enumerate().for_each(|(at, row)| row.body.price = price(at, 12));
    seats.iter_mut().enumerate().for_each(|(at, row)| row.body.price = price(at, 13));
    implements.iter_mut().enumerate().for_each(|(at, row)| row.body.price = price(at, 14));
    catalogue
}

const CHASSIS: usize = 40;

/// A number that differs from item to item without a pattern one would notice.
fn spread(at: usize, salt: usize) -> usize {
    let mut x = (at as u64).wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ (salt as u64).wrapping_mul(0xD1B5_4A32_D192_ED03);
    x ^= x >> 29;
    x = x.wrapping_mul(0xBF58_476D_1CE4_E5B9);
    usize::try_from(x >> 33).expect("31 bits")
}

fn share(at: usize, salt: usize) -> f64 {
    (spread(at, salt) % 1000) as f64 / 1000.0
}

/// What one item in twenty leaves out.
fn known<T>(at: usize, salt: usize, value: T) -> Option<T> {
    (!spread(at, salt).is_multiple_of(20)).then_some(value)
}

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn stated(value: f64) -> Stated<Length> {
    Stated { value: mm(value), plus_minus: Some(mm(0.1)), source: Source::Drawing }
}

struct Made {
    role: Role,
    end: End,
    at: (f64, f64),
    faces: Towards,
    part: Option<String>,
    kind: PortKind,
}

fn port(made: Made) -> Port {
    let place = Point3 { x: mm(made.at.0), y: Length::ZERO, z: mm(made.at.1) };
    let places = matches!(made.kind, PortKind::Coupler(_) | PortKind::Electric(_) | PortKind::PowerTakeOff(_));
    Port {
        name: format!("{:?}", made.role).to_lowercase(),
        role: made.role,
        end: made.end,
        pose: (!places).then_some(Pose { at: place.into(), faces: made.faces, up: Towards::Up }),
        parts: made.part.into_iter().collect(),
        serials: Serials::default(),
        tolerance: Some(mm(0.1)),
        source: Source::Drawing,
        kind: made.kind,
    }
}

fn plate(class: usize, slotted: bool) -> BoltPattern {
    let (u, v) = (80.0 + 12.0 * (class % 6) as f64, 60.0 + 15.0 * (class / 6) as f64);
    let slot = slotted.then_some(Slot { travel: mm(20.0), direction: Angle::ZERO });
    let hole = |u, v| Hole { slot, ..Hole::drawn(mm(u), mm(v), mm(13.5)) };
    let holes = vec![hole(0.0, 0.0), hole(u, 0.0), hole(u, v), hole(0.0, v)];
    BoltPattern { holes, bolt: Some(Stated::drawn(mm(12.0))), ..BoltPattern::default() }
}

fn anchors(chassis: usize, end: End, unknown: bool) -> [Port; 2] {
    let part = |name: &str, class: usize| (chassis % 10 < 7).then(|| format!("{name}-{class}"));
    let mut axle = plate(chassis % 24, false);
    if unknown {
        axle.holes.clear();
    }
    let width = Some(stated(if end == End::Carrier { 600.0 } else { 600.5 }));
    axle.pair_width = width;
    let front = BoltPattern { pair_width: width, ..plate(30 + chassis % 8, end == End::Carrier) };
    let span = 1050.0 + 12.0 * chassis as f64;
    let faces = if end == End::Carrier { Towards::Right } else { Towards::Left };
    let made = |role, at, part, kind| port(Made { role, end, at, faces, part, kind });
    [
        made(Role::AxleAnchor, (0.0, 480.0), part("axle", chassis % 24), PortKind::BoltPattern(axle)),
        made(Role::FrontAnchor, (span, 520.0), part("front", chassis % 8), PortKind::BoltPattern(front)),
    ]
}

fn coupler(role: Role, end: End, class: usize) -> Port {
    let standard = ["ISO 7241-A", "ISO 7241-A", "ISO 16028"][class % 3].to_owned();
    let gender = Some(if end == End::Carrier { CouplerGender::Female } else { CouplerGender::Male });
    let kind = PortKind::Coupler(Coupler { standard, size: "12.5".to_owned(), gender });
    port(Made { role, end, at: (0.0, 0.0), faces: Towards::Rear, part: None, kind })
}

fn wiring(end: End, class: usize) -> Port {
    let connector = ["two-pole", "seven-pole"][class % 2].to_owned();
    let kind = PortKind::Electric(Electric { connector, function: "seat switch".to_owned() });
    port(Made { role: Role::Wiring, end, at: (0.0, 0.0), faces: Towards::Rear, part: None, kind })
}

fn take_off(end: End, class: usize, power: Option<Power>) -> Port {
    let kind = PortKind::PowerTakeOff(PowerTakeOff {
        shaft_type: Some(1),
        speeds: if class.is_multiple_of(4) { vec![540, 1000] } else { vec![540] },
        rotation: Some(PtoRotation::Clockwise),
        power,
    });
    port(Made { role: Role::PowerTakeOff, end, at: (0.0, 0.0), faces: Towards::Rear, part: None, kind })
}

fn hitch(end: End, class: usize, lift: Option<Mass>) -> Port {
    let categories: &[&str] = match (end, class % 3) {
        (End::Carrier, 0) => &["1N", "1"],
        (End::Carrier, 1) | (End::Carried, 0) => &["1"],
        (End::Carried, 2) => &["2"],
        _ => &["1", "2"],
    };
    let categories = categories.iter().map(|&name| name.to_owned()).collect();
    let kind = PortKind::ThreePoint(ThreePoint { categories, lift, lift_610: lift, ..ThreePoint::default() });
    let (at, faces) = if end == End::Carrier { ((-550.0, 450.0), Towards::Rear) } else { ((0.0, 0.0), Towards::Front) };
    port(Made { role: Role::Hitch, end, at, faces, part: None, kind })
}

fn rack(end: End, class: usize) -> Port {
    let carries = end == End::Carrier;
    let (spread, drop) = (420.0 + 60.0 * (class % 3) as f64, 280.0 + 40.0 * (class / 3) as f64);
    let kind = PortKind::HookRack(HookRack {
        diameter: Some(stated(if carries { 40.0 } else { 41.5 })),
        spread: Some(stated(spread)),
        drop: Some(stated(drop)),
        latch: Some(stated(if carries { 21.5 } else { 20.0 })),
        setback: Some(stated(80.0)),
        ..HookRack::of(if carries { HookSide::Bar } else { HookSide::Hook })
    });
    let (at, faces) = if carries { ((-620.0, 520.0), Towards::Rear) } else { ((0.0, 0.0), Towards::Front) };
    port(Made { role: Role::Rack, end, at, faces, part: (class < 4).then(|| format!("rack-{class}")), kind })
}

fn seat_base(end: End, class: usize) -> Port {
    let kind = PortKind::SeatBase(SeatBase { pattern: plate(40 + class % 4, class % 4 == 3), pedestal: None });
    let (at, faces) = if end == End::Carrier { ((-400.0, 850.0), Towards::Up) } else { ((0.0, 0.0), Towards::Down) };
    port(Made { role: Role::SeatDeck, end, at, faces, part: None, kind })
}

fn body(id: String, mass: Option<f64>, centre: (f64, f64), ports: Vec<Port>) -> Body {
    let mass = mass.map(|kg| Stated { value: Mass::from_kg(kg), plus_minus: None, source: Source::Drawing });
    Body {
        label: id.clone(),
        id,
        mass,
        centre_of_gravity: Some(Point3 { x: mm(centre.0), y: Length::ZERO, z: mm(centre.1) }),
        ports,
        ..Body::default()
    }
}

/// A box seen from the side or from above, from corner to corner.
fn outline(role: ShapeRole, view: View, from: (f64, f64), to: (f64, f64)) -> Shape {
    let path = vec![
        PathCommand::Move(mm(from.0), mm(from.1)),
        PathCommand::Line(mm(to.0), mm(from.1)),
        PathCommand::Line(mm(to.0), mm(to.1)),
        PathCommand::Line(mm(from.0), mm(to.1)),
        PathCommand::Close,
    ];
    Shape { name: format!("{role:?}"), view, role, carrier: Carrier::Item, clearance: true, path }
}

/// A box of which side and plan are drawn: (x, z) corners and half its width.
fn boxed(role: ShapeRole, from: (f64, f64), to: (f64, f64), half: f64) -> [Shape; 2] {
    [outline(role, View::Side, from, to), outline(role, View::Plan, (from.0, -half), (to.0, half))]
}

fn with_shapes(body: Body, shapes: impl IntoIterator<Item = Shape>) -> Body {
    Body { shapes: shapes.into_iter().collect(), ..body }
}

fn machine(at: usize) -> Machine {
    let (series, trim) = (at / 8, at % 8);
    let large = share(series, 4);
    let power = 15_000.0 + 25_000.0 * large + 1_500.0 * (trim % 4) as f64;
    let mass = 750.0 + 900.0 * large + 15.0 * trim as f64 + 10.0 * share(at, 5);
    let mut ports = Vec::from(anchors(series % CHASSIS, End::Carrier, spread(series, 6).is_multiple_of(20)));
    let lift = known(at, 7, Mass::from_kg(400.0 + 500.0 * large));
    ports.push(hitch(End::Carrier, series, lift));
    if trim < 7 {
        ports.push(take_off(End::Carrier, series, known(at, 8, Power::from_w(power))));
    }
    ports.extend([coupler(Role::Pressure, End::Carrier, series), coupler(Role::Return, End::Carrier, series)]);
    if trim % 4 < 3 {
        ports.push(wiring(End::Carrier, series));
    }
    if series.is_multiple_of(6) {
        ports.push(seat_base(End::Carrier, series / 6));
    }
    let outfit = series % 12;
    let axle = |salt: usize, bare: f64, rated: f64| Axle {
        track: Some(mm(1100.0)),
        tyre_width: Some(mm(300.0)),
        static_loaded_radius: Some(mm(500.0)),
        overall_radius: Some(mm(510.0)),
        rated: known(at, salt, Mass::from_kg(rated)),
        tyre_rated: Some(Mass::from_kg(rated * 0.6)),
        bare_load: known(at, salt + 1, Mass::from_kg(bare)),
    };
    Machine {
        body: with_shapes(body(format!("machine-{at}"), Some(mass), (700.0, 600.0), ports), {
            let front = 1900.0 + 10.0 * series as f64;
            let hull = boxed(ShapeRole::Body, (-250.0, 450.0), (front, 1100.0), 300.0);
            let rear = if trim % 4 == 3 {
                boxed(ShapeRole::Cab, (-300.0 - 20.0 * (series % 4) as f64, 1000.0), (900.0, 2200.0), 550.0)
            } else {
                boxed(ShapeRole::RollOverBar, (-120.0, 900.0), (-60.0, 2300.0), 450.0)
            };
            let seat = boxed(ShapeRole::Seat, (60.0, 750.0), (500.0, 1350.0), 250.0);
            let folded = boxed(ShapeRole::SeatFolded, (100.0, 750.0), (550.0, 950.0), 250.0);
            hull.into_iter().chain(rear).chain(seat).chain(folded)
        }),
        station: if trim % 4 == 3 { Station::Cab } else { Station::Open },
        wheelbase: Some(stated(1400.0 + 10.0 * series as f64)),
        rear: axle(10, mass * 0.58, mass * 1.9),
        front: axle(12, mass * 0.42, mass * 0.9),
        front_axle: FrontAxle::Unknown,
        centre_of_gravity_height: Some(mm(600.0)),
        turning_radius: Some(mm(2600.0)),
        roll_over_bar: None,
        cab_rear: None,
        operator_seat: Some(OperatorSeat {
            index_x: mm(150.0 + 5.0 * (series % 20) as f64),
            index_z: mm(900.0),
            turns: series.is_multiple_of(5),
            flips_forward: !series.is_multiple_of(3),
            slides_forward: mm(150.0),
            off: known(at, 14, Work::from_hours(0.5)),
        }),
        hydraulics: HydraulicSupply {
            flow: Some(Flow::from_m3_s((20.0 + 4.0 * outfit as f64) / 60_000.0)),
            relief: Some(Pressure::from_pa(1.6e7 + 0.5e6 * (outfit % 5) as f64)),
            outlets: Some([1, 2, 3][outfit % 3]),
            power_beyond: (outfit != 7).then_some(outfit.is_multiple_of(2)),
        },
        fitted: vec![if trim == 5 { "belly-mower".to_owned() } else { "loader-base".to_owned() }],
        on: Vec::new(),
    }
}

/// What every machine may carry: some are sold with the base that most frames bolt to, some with a mower in its way.
fn equipment(machines: &[Machine]) -> Vec<Equipment> {
    let piece = |id: &str, kg: f64| Equipment {
        body: Body {
            id: id.to_owned(),
            label: id.to_owned(),
            mass: Some(Stated::drawn(Mass::from_kg(kg))),
            centre_of_gravity: Some(Point3 { x: mm(800.0), y: Length::ZERO, z: mm(400.0) }),
            ..Body::default()
        },
        kind: id.replace('-', " "),
        machines: machines.iter().map(|machine| machine.body.id.clone()).collect(),
        on: Some(Work::from_hours(2.0)),
        off: Some(Work::from_hours(1.0)),
        ..Equipment::default()
    };
    vec![piece("loader-base", 40.0), piece("belly-mower", 80.0)]
}

fn frame(at: usize, machines: usize) -> Frame {
    let series = spread(at, 20) % machines.div_ceil(8);
    let mut ports = Vec::from(anchors(series % CHASSIS, End::Carried, false));
    ports.push(rack(End::Carrier, spread(at, 21) % 6));
    if !at.is_multiple_of(3) {
        ports.push(seat_base(End::Carrier, spread(at, 22) % 4));
    }
    Frame {
        body: with_shapes(
            body(
                format!("frame-{at}"),
                known(at, 23, 60.0 + 70.0 * share(at, 24)),
                (200.0 - 300.0 * share(at, 25), 50.0),
                ports,
            ),
            boxed(ShapeRole::FrameRail, (-620.0, 430.0), (1300.0, 530.0), 250.0),
        ),
        fitting: None,
        stations: if at.is_multiple_of(4) { vec![Station::Open] } else { vec![Station::Open, Station::Cab] },
        excludes: if at % 4 == 1 { vec!["belly mower".to_owned()] } else { Vec::new() },
        requires: if at % 5 == 2 { vec!["loader base".to_owned()] } else { Vec::new() },
    }
}

fn seat(at: usize) -> Seat {
    let kind =
        [SeatKind::Separate, SeatKind::Turning, SeatKind::Separate, SeatKind::ImplementsOwn, SeatKind::Forward][at % 5];
    let stands = kind == SeatKind::Separate;
    let mut ports = Vec::new();
    if stands {
        ports.push(seat_base(End::Carried, at / 2));
        if at.is_multiple_of(4) {
            ports.push(wiring(End::Carried, at));
        }
    }
    let mass = if stands { 14.0 + 12.0 * share(at, 30) } else { 0.0 };
    Seat {
        body: with_shapes(
            body(format!("seat-{at}"), Some(mass), (0.0, 300.0), ports),
            boxed(ShapeRole::Seat, (-150.0, 0.0), (250.0, 900.0), 250.0).into_iter().filter(|_| stands),
        ),
        fitting: None,
        kind,
        supplied_with: SuppliedWith::Kit,
        stations: if at.is_multiple_of(3) { vec![Station::Open] } else { vec![Station::Open, Station::Cab] },
        index_point: stands.then_some((mm(0.0), mm(420.0 + 20.0 * (at % 3) as f64))),
        swivel_radius: (kind == SeatKind::Turning).then_some(mm(450.0)),
        front_seat: match kind {
            SeatKind::Turning => FrontSeatEffect::Turns,
            SeatKind::Separate => {
                [FrontSeatEffect::None, FrontSeatEffect::FlipsForward, FrontSeatEffect::ComesOff][at % 3]
            }
            _ => FrontSeatEffect::None,
        },
        least_room: Some(mm(350.0 + 10.0 * (at % 5) as f64)),
        greatest_reach: Some(mm(950.0)),
        presence_switch: known(at, 31, !at.is_multiple_of(7)),
        moves: SeatMoves { folds: false, slides: Length::ZERO, off: known(at, 32, Work::from_hours(0.25)) },
    }
}

fn implement(at: usize) -> Implement {
    let on_rack = at % 20 < 9;
    let digs = on_rack && at.is_multiple_of(2);
    let mass = if on_rack { 120.0 + 260.0 * share(at, 40) } else { 90.0 + 420.0 * share(at, 41) };
    let mut ports =
        vec![if on_rack { rack(End::Carried, spread(at, 42) % 6) } else { hitch(End::Carried, spread(at, 43), None) }];
    let fed = on_rack || at.is_multiple_of(3);
    if fed {
        ports.extend([
            coupler(Role::Pressure, End::Carried, spread(at, 44)),
            coupler(Role::Return, End::Carried, spread(at, 44)),
        ]);
    } else {
        ports.push(take_off(End::Carried, spread(at, 45), None));
    }
    let need = spread(at, 46) % 24;
    let least = 8_000.0 + 500.0 * (spread(at, 47) % 60) as f64;
    Implement {
        body: with_shapes(
            body(format!("implement-{at}"), known(at, 48, mass), (-(250.0 + 300.0 * share(at, 49)), 350.0), ports),
            {
                let depth = 500.0 + 600.0 * share(at, 52);
                // Some booms fold over the mount towards the machine.
                let fold = if at.is_multiple_of(8) { 420.0 } else { 0.0 };
                let trunk = boxed(ShapeRole::Body, (-depth, -200.0), (-40.0, 500.0), 700.0);
                let boom = boxed(ShapeRole::Boom, (-depth, 500.0), (fold - 60.0, 1500.0), 120.0);
                let is_drawn = known(at, 53, ()).is_some();
                trunk.into_iter().chain(boom.into_iter().filter(move |_| digs)).filter(move |_| is_drawn)
            },
        ),
        fitting: None,
        kind: if digs { ImplementKind::DiggingArm } else { ImplementKind::Flail },
        mount: if on_rack { Mount::Rack } else { Mount::ThreePoint },
        arm: None,
        console: digs
            .then(|| known(at, 50, Point3 { x: mm(-150.0 - 250.0 * share(at, 51)), y: Length::ZERO, z: mm(500.0) }))
            .flatten(),
        worked_from_seat: Some(digs),
        hydraulics: fed.then(|| HydraulicNeed {
            flow_min: Some(Flow::from_m3_s((15.0 + 2.0 * (need % 8) as f64) / 60_000.0)),
            flow_max: known(
                at,
                56,
                Flow::from_m3_s((if need.is_multiple_of(3) { 45.0 } else { 80.0 } + need as f64) / 60_000.0),
            ),
            pressure_min: known(at, 54, Pressure::from_pa(1.0e7)),
            pressure_max: known(at, 55, Pressure::from_pa(if need.is_multiple_of(4) { 1.7e7 } else { 2.1e7 })),
            outlets: [1, 2][need % 2],
            power_beyond: Some(need.is_multiple_of(6)),
        }),
        power_least: (!fed).then(|| Power::from_w(least)),
        power_most: known(at, 57, Power::from_w(if at.is_multiple_of(5) { 2.5 * least } else { 60_000.0 }))
            .filter(|_| !fed),
        own_seat: Some(digs && at.is_multiple_of(4)),
        own_seat_index: None,
        own_seat_moves: SeatMoves { off: Some(Work::from_hours(0.5)), ..SeatMoves::default() },
        transport_width: None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use fitup_core::build::Build;
    use fitup_core::fit::Desk;
    use fitup_core::search::Searcher;

    #[test]
    fn implements_reach_several_verdicts_at_best() {
        let found = Searcher::new(&Desk::new(yard(SIZES[2]))).reachable(&Build::default());
        let mut counts = [0; 4];
        found.implements.iter().flatten().for_each(|reach| counts[reach.verdict as usize] += 1);
        // With so many frames and seats every implement goes on somehow.
        assert!(counts[..3].iter().all(|&count| count > 0), "{counts:?}");
    }
}
