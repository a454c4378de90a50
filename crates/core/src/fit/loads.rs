//! Masses of the placed stack and what they put on the axles.

use super::context::Context;
use crate::build::Change;
use crate::item::ItemRef;
use crate::quantity::{Length, Mass};

/// Mass of the operator in every load. Source: 75 kg is the driver's mass in Regulation (EU)
/// 2015/208 and the tractor directives before it (from memory).
pub const OPERATOR: Mass = Mass::from_kg(75.0);

/// Whose mass it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bearer {
    /// An item's.
    Item(ItemRef),
    /// The operator's.
    Operator,
    /// Ballast.
    Ballast,
}

/// A mass with its place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Body {
    /// Whose it is.
    pub of: Bearer,
    /// The mass.
    pub mass: Mass,
    /// x of its centre of gravity in the machine's axes.
    pub x: Length,
    /// y of its centre of gravity.
    pub y: Length,
    /// z of its centre of gravity, where it is known.
    pub z: Option<Length>,
}

impl Body {
    /// The item, if it is one's.
    pub const fn item(&self) -> Option<ItemRef> {
        match self.of {
            Bearer::Item(item) => Some(item),
            Bearer::Operator | Bearer::Ballast => None,
        }
    }
}

/// Loads of the machine as it stands on level ground in transport.
#[derive(Debug, Clone, PartialEq)]
pub struct Loads {
    /// Every mass.
    pub bodies: Vec<Body>,
    /// Their sum.
    pub total: Mass,
    /// Load on the front axle; negative when it lifts.
    pub front: Mass,
    /// Load on the rear axle.
    pub rear: Mass,
    /// Bare machine.
    pub bare: Mass,
    /// Wheelbase.
    pub wheelbase: Length,
}

impl Loads {
    /// Share of the total that the front axle carries.
    pub fn front_share(&self) -> f64 {
        self.front / self.total
    }

    /// The same with nobody on the machine, as it travels on a trailer.
    #[must_use]
    pub fn without_operator(&self) -> Self {
        let bodies = self.bodies.iter().copied().filter(|body| body.of != Bearer::Operator).collect();
        sum(bodies, self.bare, self.wheelbase)
    }
}

/// What is missing of which item for the loads to be known.
pub(super) type Missing = (ItemRef, &'static str);

/// The loads, or everything that is missing for them. `None` without a machine.
pub(super) fn loads(context: &Context) -> Option<Result<Loads, Vec<Missing>>> {
    let (id, machine) = context.machine()?;
    let item = ItemRef::Machine(id);
    let mut missing = Vec::new();
    let mut ask = |known: bool, item: ItemRef, what: &'static str| {
        if !known {
            missing.push((item, what));
        }
    };
    ask(machine.wheelbase.is_some(), item, "wheelbase");
    ask(machine.front.bare_load.is_some(), item, "front-axle-load");
    ask(machine.rear.bare_load.is_some(), item, "rear-axle-load");
    let mut bodies = Vec::new();
    for placed in context.stack.placed.iter().filter(|placed| placed.item != item) {
        let body = context.catalogue().body(placed.item);
        ask(body.mass.is_some(), placed.item, "mass");
        ask(body.centre_of_gravity.is_some(), placed.item, "centre-of-gravity");
        if let (Some(mass), Some(centre)) = (body.mass, body.centre_of_gravity) {
            let centre = placed.placement.point(centre);
            let of = Bearer::Item(placed.item);
            bodies.push(Body { of, mass: mass.value, x: centre.x, y: centre.y, z: Some(centre.z) });
        }
    }
    let (Some(wheelbase), Some(front), Some(rear)) =
        (machine.wheelbase, machine.front.bare_load, machine.rear.bare_load)
    else {
        return Some(Err(missing));
    };
    if !missing.is_empty() {
        return Some(Err(missing));
    }
    let wheelbase = wheelbase.value;
    let bare = front + rear;
    let x = if bare > Mass::ZERO { wheelbase * (front / bare) } else { Length::ZERO };
    let of = Bearer::Item(item);
    bodies.insert(0, Body { of, mass: bare, x, y: Length::ZERO, z: machine.centre_of_gravity_height });
    // Where no seat is stated the operator's mass stands over the rear axle, the less favourable place for the front.
    let seat = machine.operator_seat;
    bodies.push(Body {
        of: Bearer::Operator,
        mass: OPERATOR,
        x: seat.map_or(Length::ZERO, |seat| seat.index_x),
        y: Length::ZERO,
        z: seat.map(|seat| seat.index_z),
    });
    for change in &context.build.changes {
        if let Change::Ballast { mass, x } = *change {
            bodies.push(Body { of: Bearer::Ballast, mass, x, y: Length::ZERO, z: None });
        }
    }
    Some(Ok(sum(bodies, bare, wheelbase)))
}

fn sum(bodies: Vec<Body>, bare: Mass, wheelbase: Length) -> Loads {
    let total: Mass = bodies.iter().map(|body| body.mass).sum();
    let moment: f64 = bodies.iter().map(|body| body.mass.kg() * body.x.m()).sum();
    let front = Mass::from_kg(moment / wheelbase.m());
    Loads { total, front, rear: total - front, bare, wheelbase, bodies }
}
