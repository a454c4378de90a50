//! Of which changes to an item each rule takes notice, so that one may not stand for the other before it.

use super::*;
use crate::build::Step;
use crate::item::{
    Carrier, Catalogue, End, FrontSeatEffect, ImplementKind, Mount, Point3, Port, PortKind, Pose, PowerTakeOff, Role,
    RollOverBar, SeatKind, Serials, Shape, ShapeRole, Station, SuppliedWith, ThreePoint, Towards, View,
};
use crate::quantity::{Flow, Length, Mass, Power, Pressure, Source, Stated};
use crate::search::tests::catalogues;
use crate::search::tests::chance::Chance;

/// What each rule compares, but for those that take every two frames or implements for different.
const RULES_THAT_COMPARE: [(&str, Alike); 21] = [
    ("arm", arm_on_hitch::ALIKE),
    ("outline", clearance::ALIKE),
    ("fitted", fitted::ALIKE),
    ("front-seat", front_seat::ALIKE),
    ("oil", hydraulics::ALIKE),
    ("lift-known", lift::ALIKE),
    ("loads-known", loads::ALIKE),
    ("power", power::ALIKE),
    ("presence", presence::ALIKE),
    ("seat-kind", seat_kind::ALIKE),
    ("room-known", seat_room::ALIKE),
    ("supplier", seat_supplier::ALIKE),
    ("switch", seat_switch::ALIKE),
    ("station", station::ALIKE),
    ("frame-clear", Alike { frame: Alike::ALL.frame, ..clearance::FRAME.alike }),
    ("seat-clear", clearance::SEAT_AND_MACHINE.alike),
    ("machine-clear", Alike { implement: Alike::ALL.implement, ..clearance::IMPLEMENT_AND_MACHINE.alike }),
    ("implement-clear", Alike { implement: Alike::ALL.implement, ..clearance::IMPLEMENT_AND_SEAT.alike }),
    ("swivel", Alike { implement: Alike::ALL.implement, ..clearance::SWIVEL.alike }),
    ("room", seat_room::PLACED.alike),
    ("lift", lift::PLACED.alike),
];

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn port(role: Role, kind: PortKind) -> Port {
    Port {
        name: String::new(),
        role,
        end: End::Carrier,
        pose: Some(Pose { at: Point3::default(), faces: Towards::Rear, up: Towards::Up }),
        parts: Vec::new(),
        serials: Serials::default(),
        tolerance: None,
        source: Source::Drawing,
        kind,
    }
}

fn shape(role: ShapeRole, view: View, clearance: bool) -> Shape {
    let line = |x, z| crate::item::Step::Line(mm(x), mm(z));
    let path = vec![crate::item::Step::Move(mm(0.0), mm(0.0)), line(100.0, 0.0), line(0.0, 100.0)];
    Shape { name: String::new(), view, role, carrier: Carrier::Item, clearance, path }
}

/// Two machines, frames, seats and implements each, the second as the first but for its name.
fn twins() -> Catalogue {
    let mut found = catalogues::catalogue(&Chance::new(1));
    let mass = Some(Stated { value: Mass::from_kg(100.0), ..Stated::default() });
    let machine = &mut found.machines[0];
    (machine.wheelbase, machine.station) = (Some(Stated::drawn(mm(1500.0))), Station::Open);
    for axle in [&mut machine.front, &mut machine.rear] {
        let kilograms = Some(Mass::from_kg(500.0));
        (axle.bare_load, axle.rated, axle.overall_radius, axle.tyre_width) =
            (kilograms, kilograms, Some(mm(400.0)), None);
    }
    machine.roll_over_bar = Some(RollOverBar { x: mm(0.0), height_up: mm(2000.0), height_folded: Some(mm(1000.0)) });
    machine.cab_rear = None;
    machine.operator_seat = Some(crate::item::OperatorSeat {
        index_x: mm(300.0),
        index_z: mm(900.0),
        turns: true,
        flips_forward: true,
        slides_forward: mm(100.0),
    });
    machine.body.ports = vec![
        port(Role::PowerTakeOff, PortKind::PowerTakeOff(PowerTakeOff::default())),
        port(
            Role::Hitch,
            PortKind::ThreePoint(ThreePoint { lift: Some(Mass::from_kg(500.0)), ..ThreePoint::default() }),
        ),
    ];
    let seat = &mut found.seats[0];
    (seat.kind, seat.supplied_with, seat.front_seat) = (SeatKind::Separate, SuppliedWith::Kit, FrontSeatEffect::None);
    (seat.index_point, seat.least_room, seat.greatest_reach) = (Some((mm(0.0), mm(0.0))), Some(mm(100.0)), None);
    (seat.presence_switch, seat.swivel_radius, seat.stations) = (None, None, Vec::new());
    let implement = &mut found.implements[0];
    (implement.kind, implement.mount) = (ImplementKind::Flail, Mount::Rack);
    (implement.console, implement.worked_from_seat, implement.own_seat) = (Some(Point3::default()), false, false);
    (implement.hydraulics, implement.power_least, implement.power_most) = (None, None, None);
    for body in [
        &mut found.machines[0].body,
        &mut found.frames[0].body,
        &mut found.seats[0].body,
        &mut found.implements[0].body,
    ] {
        (body.shapes, body.listed_with, body.mass) = (Vec::new(), Vec::new(), mass);
        body.centre_of_gravity = Some(Point3::default());
    }
    found.machines = vec![found.machines[0].clone(), found.machines[0].clone()];
    found.frames = vec![found.frames[0].clone(), found.frames[0].clone()];
    found.seats = vec![found.seats[0].clone(), found.seats[0].clone()];
    found.implements = vec![found.implements[0].clone(), found.implements[0].clone()];
    found.machines[1].body.id.push('x');
    found.frames[1].body.id.push('x');
    found.seats[1].body.id.push('x');
    found.implements[1].body.id.push('x');
    found
}

/// A step, a change to its second item, and the rules that take notice.
type Notice = (Step, fn(&mut Catalogue), &'static str);

#[rustfmt::skip]
const NOTICES: &[Notice] = &[
    (Step::Machine, |_| {}, ""),
    (Step::Machine, |c| c.machines[1].station = Station::Cab, "station"),
    (Step::Machine, |c| c.machines[1].wheelbase = None, "loads-known frame-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].rear.overall_radius = None, "frame-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].front.tyre_width = Some(mm(200.0)), "frame-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].front.bare_load = None, "loads-known"),
    (Step::Machine, |c| c.machines[1].rear.bare_load = None, "loads-known"),
    (Step::Machine, |c| c.machines[1].front.rated = None, "loads-known"),
    (Step::Machine, |c| c.machines[1].rear.rated = None, "loads-known"),
    (Step::Machine, |c| c.machines[1].rear.rated = Some(Mass::from_kg(9.0)), ""),
    (Step::Machine, |c| c.machines[1].roll_over_bar = None, "seat-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].cab_rear = Some(mm(0.0)), "swivel"),
    (Step::Machine, |c| c.machines[1].operator_seat = None, "front-seat seat-kind room-known swivel room"),
    (Step::Machine, |c| c.machines[1].operator_seat.as_mut().unwrap().index_x = mm(9.0), "swivel room"),
    (Step::Machine, |c| c.machines[1].operator_seat.as_mut().unwrap().index_z = mm(9.0), "swivel"),
    (Step::Machine, |c| c.machines[1].operator_seat.as_mut().unwrap().turns = false, "seat-kind"),
    (Step::Machine, |c| c.machines[1].operator_seat.as_mut().unwrap().flips_forward = false, "front-seat"),
    (Step::Machine, |c| c.machines[1].operator_seat.as_mut().unwrap().slides_forward = mm(9.0), "front-seat"),
    (Step::Machine, |c| c.machines[1].hydraulics.flow = Some(Flow::from_l_min(99.0)), "oil"),
    (Step::Machine, |c| c.machines[1].hydraulics.relief = Some(Pressure::from_bar(99.0)), "oil"),
    (Step::Machine, |c| c.machines[1].fitted.push("lamp".to_owned()), "fitted"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::Cab, View::Side, true)), "outline seat-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::Cab, View::Side, false)), "seat-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::Glass, View::Plan, true)), "seat-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::RollOverBar, View::Side, true)), "outline seat-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::Tyre, View::Side, true)), "frame-clear machine-clear"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::Seat, View::Side, true)), "outline swivel"),
    (Step::Machine, |c| c.machines[1].body.shapes.push(shape(ShapeRole::Detail, View::Side, true)), ""),
    (Step::Machine, |c| c.machines[1].body.ports[0].kind = PortKind::PowerTakeOff(PowerTakeOff { power: Some(Power::from_kw(9.0)), ..PowerTakeOff::default() }), "power"),
    (Step::Machine, |c| c.machines[1].body.ports[1].kind = PortKind::ThreePoint(ThreePoint::default()), "lift-known lift"),
    (Step::Machine, |c| c.machines[1].body.ports[1].kind = PortKind::ThreePoint(ThreePoint { lift_610: Some(Mass::from_kg(9.0)), ..ThreePoint::default() }), "lift"),
    (Step::Machine, |c| c.machines[1].body.ports[1].pose = None, "lift"),
    (Step::Machine, |c| c.machines[1].body.ports[0].serials = Serials { first: Some(9), last: None }, "presence"),
    (Step::Machine, |c| c.seats[0].body.listed_with.push(c.machines[1].body.id.clone()), "supplier"),
    (Step::Frame, |_| {}, ""),
    (Step::Frame, |c| c.frames[1].stations.push(Station::Cab), "station"),
    (Step::Frame, |c| c.frames[1].excludes.push("lamp".to_owned()), "fitted"),
    (Step::Frame, |c| c.frames[1].requires.push("lamp".to_owned()), "fitted"),
    (Step::Frame, |c| c.frames[1].body.mass = None, "loads-known"),
    (Step::Frame, |c| c.frames[1].body.centre_of_gravity = None, "loads-known"),
    (Step::Frame, |c| c.seats[0].body.listed_with.push(c.frames[1].body.id.clone()), "supplier"),
    (Step::Seat, |_| {}, ""),
    (Step::Seat, |c| c.seats[1].kind = SeatKind::Forward, "seat-kind switch"),
    (Step::Seat, |c| c.seats[1].kind = SeatKind::ImplementsOwn, "seat-kind switch implement-clear"),
    (Step::Seat, |c| c.seats[1].supplied_with = SuppliedWith::Frame, "supplier"),
    (Step::Seat, |c| c.seats[1].body.listed_with.push("x".to_owned()), "supplier"),
    (Step::Seat, |c| c.seats[1].stations.push(Station::Cab), "station"),
    (Step::Seat, |c| c.seats[1].index_point = None, "room-known room"),
    (Step::Seat, |c| c.seats[1].index_point = Some((mm(9.0), mm(0.0))), "room"),
    (Step::Seat, |c| c.seats[1].least_room = None, "room-known room"),
    (Step::Seat, |c| c.seats[1].least_room = Some(mm(9.0)), "room"),
    (Step::Seat, |c| c.seats[1].greatest_reach = Some(mm(9.0)), "room"),
    (Step::Seat, |c| c.seats[1].swivel_radius = Some(mm(9.0)), "swivel"),
    (Step::Seat, |c| c.seats[1].front_seat = FrontSeatEffect::Turns, "front-seat room-known swivel room"),
    (Step::Seat, |c| c.seats[1].front_seat = FrontSeatEffect::ComesOff, "front-seat"),
    (Step::Seat, |c| c.seats[1].presence_switch = Some(true), "switch"),
    (Step::Seat, |c| c.seats[1].body.mass = None, "loads-known"),
    (Step::Seat, |c| c.seats[1].body.centre_of_gravity = None, "loads-known"),
    (Step::Seat, |c| c.seats[1].body.shapes.push(shape(ShapeRole::Seat, View::Plan, true)), "seat-clear implement-clear"),
    (Step::Implement, |_| {}, ""),
    (Step::Implement, |c| c.implements[1].kind = ImplementKind::DiggingArm, "arm"),
    (Step::Implement, |c| c.implements[1].mount = Mount::ThreePoint, "arm"),
    (Step::Implement, |c| c.implements[1].console = None, "room-known room"),
    (Step::Implement, |c| c.implements[1].console.as_mut().unwrap().x = mm(9.0), "room"),
    (Step::Implement, |c| c.implements[1].worked_from_seat = true, "seat-kind room-known switch room"),
    (Step::Implement, |c| c.implements[1].own_seat = true, "seat-kind"),
    (Step::Implement, |c| c.implements[1].hydraulics = Some(crate::item::HydraulicNeed::default()), "oil"),
    (Step::Implement, |c| c.implements[1].power_least = Some(Power::from_kw(9.0)), "power"),
    (Step::Implement, |c| c.implements[1].power_most = Some(Power::from_kw(9.0)), "power"),
    (Step::Implement, |c| c.implements[1].body.mass = None, "lift-known loads-known lift"),
    (Step::Implement, |c| c.implements[1].body.mass.as_mut().unwrap().value = Mass::from_kg(9.0), "lift"),
    (Step::Implement, |c| c.implements[1].body.centre_of_gravity = None, "loads-known lift"),
    (Step::Implement, |c| c.implements[1].body.centre_of_gravity.as_mut().unwrap().x = mm(9.0), "lift"),
    (Step::Implement, |c| c.implements[1].body.shapes.push(shape(ShapeRole::Boom, View::Side, true)), "outline"),
    (Step::Implement, |c| c.implements[1].body.shapes.push(shape(ShapeRole::Boom, View::Plan, true)), ""),
    (Step::Implement, |c| c.seats[0].body.listed_with.push(c.implements[1].body.id.clone()), "supplier"),
];

#[test]
fn a_rule_takes_notice_of_what_it_reads_and_of_nothing_else() {
    for (row, (step, change, rules)) in NOTICES.iter().enumerate() {
        let mut catalogue = twins();
        change(&mut catalogue);
        // The first option of the second step is the bare hitch.
        let first = usize::from(*step == Step::Frame);
        let notices = |alike: &Alike| !alike.options(&catalogue, *step, first, first + 1);
        let told: Vec<&str> =
            RULES_THAT_COMPARE.iter().filter(|(_, alike)| notices(alike)).map(|(name, _)| *name).collect();
        assert_eq!(told.join(" "), *rules, "row {row}, {step:?}");
    }
}
