//! The machine as it stands: the machine of the list with the equipment that is on it, folded into one.
//!
//! Whatever judges sees one machine: its masses, ports, shapes, axles and hydraulics are those of the machine together with what
//! is on it. No rule has to know of equipment to be right with it on.

use std::collections::BTreeMap;

use super::{
    Axle, AxleChange, Catalogue, Equipment, EquipmentId, FrontAxle, Machine, On, PathCommand, PortKind, ShapeRole, View,
};
use crate::quantity::{Angle, Length, Mass, Stated};

/// By equipment, whether it was put on or taken off.
pub type Switched = BTreeMap<EquipmentId, bool>;

impl Catalogue {
    /// The pieces of equipment that are on a machine of the list, in the order of their table: those it is sold with and those
    /// switched on that are for it, less those switched off.
    pub fn equipment_on(&self, machine: &Machine, switched: &Switched) -> Vec<EquipmentId> {
        let is_on = |&(at, piece): &(usize, &Equipment)| match switched.get(&EquipmentId::at(at)) {
            Some(&is_on) => is_on && piece.machines.contains(&machine.body.id),
            None => machine.fitted.contains(&piece.body.id),
        };
        self.equipment.iter().enumerate().filter(is_on).map(|(at, _)| EquipmentId::at(at)).collect()
    }

    /// A machine of the list as it stands with some equipment; one that has equipment on already stays as it stands.
    ///
    /// Masses and their moments add up; where a mass or its place is not known, the loads with it are not. Tyres of another
    /// radius lift the machine at their axle.
    /// Accuracy: where the axles rise by different amounts every point rises in a straight line between them and none moves
    /// forward or back, which is off by less than a thousandth of its height for every 45 mm in a metre of wheelbase.
    pub fn standing(&self, machine: &Machine, switched: &Switched) -> Machine {
        if !machine.on.is_empty() {
            return machine.clone();
        }
        let on = self.equipment_on(machine, switched);
        let mut standing = machine.clone();
        standing.on = Vec::with_capacity(on.len());
        let mut before = [machine.rear.static_loaded_radius, machine.front.static_loaded_radius];
        for &id in &on {
            self.put(&mut standing, id);
        }
        let after = [standing.rear.static_loaded_radius, standing.front.static_loaded_radius];
        // Where the old radius is not known, nothing is known of a rise.
        before.iter_mut().zip(after).for_each(|(before, after)| *before = before.or(after));
        rise(&mut standing, [0, 1].map(|axle| after[axle].zip(before[axle]).map_or(Length::ZERO, |(a, b)| a - b)));
        for &id in &on {
            let blocks = &self.equipment(id).blocks;
            standing.body.ports.retain(|port| !blocks.contains(&port.name));
        }
        for piece in &mut standing.on {
            let has = |name: &String| standing.body.ports.iter().any(|port| port.name == *name);
            // What it blocks it may sit on itself.
            let listed = |name: &String| machine.body.ports.iter().any(|port| port.name == *name);
            let needs = self.equipment(piece.id).needs.iter();
            let blocked = |name: &String| self.equipment(piece.id).blocks.contains(name) && listed(name);
            piece.lacks = needs.filter(|name| !has(name) && !blocked(name)).cloned().collect();
        }
        standing
    }

    fn put(&self, machine: &mut Machine, id: EquipmentId) {
        let piece = self.equipment(id);
        weigh(machine, piece);
        for (axle, change) in [(&mut machine.rear, piece.changes.rear), (&mut machine.front, piece.changes.front)] {
            change_axle(axle, change);
        }
        let (supply, change) = (&mut machine.hydraulics, piece.changes.hydraulics);
        supply.flow = change.flow.or(supply.flow);
        supply.relief = change.relief.or(supply.relief);
        supply.power_beyond = change.power_beyond.or(supply.power_beyond);
        if let Some(more) = change.outlets_more {
            supply.outlets = supply.outlets.map(|outlets| outlets.saturating_add(more));
        }
        let body = &mut machine.body;
        // Those that it hides keep their place, so that places in the list stay true.
        body.shapes.iter_mut().filter(|shape| piece.hides.contains(&shape.name)).for_each(|shape| shape.path.clear());
        body.shapes.extend(piece.body.shapes.iter().cloned());
        machine.on.push(On { id, lifted: Length::ZERO, pitch: Angle::ZERO, lacks: Vec::new() });
        body.underside.extend(piece.body.underside.iter().cloned());
        body.ports.extend(piece.body.ports.iter().cloned());
        body.parts_list.rows.extend(piece.body.parts_list.rows.iter().cloned());
        for port in &mut body.ports {
            if let (PortKind::ThreePoint(hitch), Some(lift)) = (&mut port.kind, piece.changes.lift) {
                hitch.lift = Some(lift);
            }
        }
    }
}

/// Adds a piece's mass to the machine's, its moment to the axles and its height to the centre of gravity.
fn weigh(machine: &mut Machine, piece: &Equipment) {
    let (mass, at) = (piece.body.mass, piece.body.centre_of_gravity);
    let before = machine.body.mass;
    machine.body.mass = before.zip(mass).map(|(a, b)| Stated {
        value: a.value + b.value,
        plus_minus: a.plus_minus.zip(b.plus_minus).map(|(a, b)| a + b),
        source: a.source,
    });
    let heights = machine.centre_of_gravity_height.zip(at.map(|at| at.z));
    machine.centre_of_gravity_height = before.zip(mass).zip(heights).and_then(|((a, b), (below, above))| {
        let total = a.value + b.value;
        let moment = below * a.value.kg() + above * b.value.kg();
        (total > Mass::ZERO).then(|| moment * (1.0 / total.kg()))
    });
    let on_front = mass.zip(at).zip(machine.wheelbase).filter(|(_, wheelbase)| wheelbase.value > Length::ZERO);
    let on_front = on_front.map(|((mass, at), wheelbase)| mass.value * (at.x.m() / wheelbase.value.m()));
    machine.front.bare_load = machine.front.bare_load.zip(on_front).map(|(load, more)| load + more);
    let on_rear = mass.zip(on_front).map(|(mass, front)| mass.value - front);
    machine.rear.bare_load = machine.rear.bare_load.zip(on_rear).map(|(load, more)| load + more);
}

fn change_axle(axle: &mut Axle, change: AxleChange) {
    if let Some(more) = change.track_more {
        axle.track = axle.track.map(|track| track + more);
    }
    axle.tyre_width = change.tyre_width.or(axle.tyre_width);
    axle.static_loaded_radius = change.static_loaded_radius.or(axle.static_loaded_radius);
    axle.overall_radius = change.overall_radius.or(axle.overall_radius);
    axle.tyre_rated = change.tyre_rated.or(axle.tyre_rated);
}

/// Lifts all but the tyres: by the first amount over the rear axle, by the second over the front axle.
fn rise(machine: &mut Machine, [rear, front]: [Length; 2]) {
    if rear == Length::ZERO && front == Length::ZERO {
        return;
    }
    let wheelbase = machine.wheelbase.map(|wheelbase| wheelbase.value).filter(|&wheelbase| wheelbase > Length::ZERO);
    let slope = wheelbase.map_or(0.0, |wheelbase| (front - rear).m() / wheelbase.m());
    let by = |x: Length| rear + x * slope;
    for piece in &mut machine.on {
        (piece.lifted, piece.pitch) = (rear, Angle::from_rad(libm::atan(slope)));
    }
    for shape in machine.body.shapes.iter_mut().filter(|shape| shape.role != ShapeRole::Tyre) {
        for (a, b) in shape.path.iter_mut().flat_map(points) {
            match shape.view {
                View::Side => *b += by(*a),
                View::Rear => *b += rear,
                View::Plan => {}
            }
        }
    }
    for (x, z) in machine.body.underside.iter_mut().flatten() {
        *z += by(*x);
    }
    for pose in machine.body.ports.iter_mut().filter_map(|port| port.pose.as_mut()) {
        pose.at.z.value += by(pose.at.x.value);
    }
    if let (FrontAxle::Oscillating { pivot_height }, Some(wheelbase)) = (&mut machine.front_axle, wheelbase) {
        *pivot_height += by(wheelbase);
    }
    // The centre of gravity lies between the axles as their loads say.
    let loads = machine.front.bare_load.zip(machine.rear.bare_load).filter(|&(a, b)| a + b > Mass::ZERO);
    let share = loads.map(|(front, rear)| front.kg() / (front + rear).kg());
    machine.centre_of_gravity_height =
        machine.centre_of_gravity_height.zip(share).map(|(height, share)| height + rear + (front - rear) * share);
    if let Some(bar) = &mut machine.roll_over_bar {
        bar.height_up += by(bar.x);
        bar.height_folded = bar.height_folded.map(|height| height + by(bar.x));
    }
    if let Some(seat) = &mut machine.operator_seat {
        seat.index_z += by(seat.index_x);
    }
}

/// The points of a step of a path.
fn points(step: &mut PathCommand) -> Vec<(&mut Length, &mut Length)> {
    match step {
        PathCommand::Move(a, b) | PathCommand::Line(a, b) => vec![(a, b)],
        PathCommand::Cubic(points) => points.iter_mut().map(|(a, b)| (a, b)).collect(),
        PathCommand::Close => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::{Body, Changes, End, Point3, Pose, Role, Shape, Towards};
    use crate::search::tests::{catalogues, chance::Chance};

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    /// A machine of 800 kg on a wheelbase of 2 m, and one piece of equipment for it.
    fn with(piece: Equipment) -> Machine {
        let mut catalogue = catalogues::catalogue(&Chance::new(1));
        catalogue.machines.truncate(1);
        catalogue.equipment = vec![Equipment { machines: vec!["m0".to_owned()], ..piece }];
        let machine = &mut catalogue.machines[0];
        machine.fitted.clear();
        machine.wheelbase = Some(Stated::drawn(mm(2000.0)));
        machine.body.mass = Some(Stated::drawn(Mass::from_kg(800.0)));
        (machine.front.bare_load, machine.rear.bare_load) = (Some(Mass::from_kg(300.0)), Some(Mass::from_kg(500.0)));
        machine.centre_of_gravity_height = Some(mm(500.0));
        (machine.rear.static_loaded_radius, machine.front.static_loaded_radius) = (Some(mm(400.0)), Some(mm(300.0)));
        machine.rear.track = Some(mm(900.0));
        catalogue.standing(&catalogue.machines[0], &Switched::from([(EquipmentId(0), true)]))
    }

    fn weight(kg: f64, x: f64, z: f64) -> Body {
        let centre = Point3 { x: mm(x), z: mm(z), ..Point3::default() };
        Body { mass: Some(Stated::drawn(Mass::from_kg(kg))), centre_of_gravity: Some(centre), ..Body::default() }
    }

    #[test]
    fn masses_and_their_moments_add_up() {
        let loaded = with(Equipment { body: weight(200.0, 2500.0, 1000.0), ..Equipment::default() });
        let kg = |mass: Option<Mass>| mass.map(Mass::kg);
        assert_eq!(loaded.body.mass.map(|mass| mass.value.kg()), Some(1000.0));
        assert_eq!((kg(loaded.front.bare_load), kg(loaded.rear.bare_load)), (Some(550.0), Some(450.0)));
        assert!(loaded.centre_of_gravity_height.is_some_and(|height| (height.mm() - 600.0).abs() < 1e-9));
    }

    #[test]
    fn what_weighs_nobody_knows_how_much_leaves_nothing_known() {
        for body in
            [Body { mass: None, ..weight(1.0, 0.0, 0.0) }, Body { centre_of_gravity: None, ..weight(1.0, 0.0, 0.0) }]
        {
            let is_weighed = body.mass.is_some();
            let loaded = with(Equipment { body, ..Equipment::default() });
            assert_eq!(
                (loaded.front.bare_load, loaded.rear.bare_load, loaded.centre_of_gravity_height),
                (None, None, None)
            );
            assert_eq!(loaded.body.mass.is_some(), is_weighed);
        }
    }

    #[test]
    fn larger_tyres_lift_the_machine_and_not_themselves() {
        let side = |role, z| Shape {
            name: format!("{role:?}"),
            view: View::Side,
            role,
            carrier: crate::item::Carrier::Item,
            clearance: true,
            path: vec![PathCommand::Move(mm(1000.0), mm(z))],
        };
        let shapes = vec![side(ShapeRole::Guard, 200.0), side(ShapeRole::Tyre, 0.0)];
        let rear =
            AxleChange { static_loaded_radius: Some(mm(440.0)), track_more: Some(mm(60.0)), ..AxleChange::default() };
        let body = Body { shapes, ..weight(0.001, 0.0, 0.0) };
        let changes = Changes { rear, ..Changes::default() };
        let raised = with(Equipment { body, changes, ..Equipment::default() });
        assert_eq!(raised.rear.track, Some(mm(960.0)));
        let heights: Vec<f64> = raised
            .body
            .shapes
            .iter()
            .rev()
            .take(2)
            .flat_map(|shape| shape.path.clone())
            .map(|step| match step {
                PathCommand::Move(_, z) => z.mm(),
                other => panic!("{other:?}"),
            })
            .collect();
        // Half way between the axles it is half as much.
        assert!((heights[0]).abs() < 1e-9 && (heights[1] - 220.0).abs() < 1e-9, "{heights:?}");
        assert!((raised.on[0].lifted.mm() - 40.0).abs() < 1e-9 && raised.on[0].pitch < Angle::ZERO);
        // 5/8 of it rest on the rear axle, which rises by 40 mm.
        assert!(raised.centre_of_gravity_height.is_some_and(|height| (height.mm() - 525.0).abs() < 0.01));
    }

    #[test]
    fn ports_come_and_go_and_what_is_needed_and_not_there_is_named() {
        let place = Pose { at: Point3::default().into(), faces: Towards::Rear, up: Towards::Up };
        let mut port = catalogues::catalogue(&Chance::new(1)).machines[0].body.ports[0].clone();
        let blocked = port.name.clone();
        (port.name, port.role, port.end, port.pose) = ("new".to_owned(), Role::Rack, End::Carrier, Some(place));
        let body = Body { ports: vec![port], ..weight(1.0, 0.0, 0.0) };
        let needs = vec!["new".to_owned(), blocked.clone(), "of nobody".to_owned()];
        let standing = with(Equipment { body, needs, blocks: vec![blocked.clone()], ..Equipment::default() });
        let has = |name: &str| standing.body.ports.iter().any(|port| port.name == name);
        assert!(has("new") && !has(&blocked));
        assert_eq!(standing.on[0].lacks, ["of nobody"]);
    }
}
