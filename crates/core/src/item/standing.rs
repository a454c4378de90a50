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
