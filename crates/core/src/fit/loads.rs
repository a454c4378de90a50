//! Masses of the placed stack and what they put on the axles.

use super::context::Context;
use crate::build::{Build, Change, Placed};
use crate::item::{Catalogue, ItemRef, Machine};
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

/// Loads on the axles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct OnAxles {
    pub total: Mass,
    pub front: Mass,
    pub rear: Mass,
}

/// The loads, or everything that is missing for them. `None` without a machine.
pub(super) fn loads(context: &Context) -> Option<Result<Loads, Vec<Missing>>> {
    let (_, machine) = context.machine()?;
    let (mut bodies, mut missing) = (Vec::new(), Vec::new());
    weigh(context.catalogue(), context.build, &context.stack.placed, &mut |weighed| match weighed {
        Ok(body) => bodies.push(body),
        Err(unknown) => missing.push(unknown),
    });
    let known = bare(machine).filter(|_| missing.is_empty());
    Some(known.map(|(bare, wheelbase)| sum(bodies, bare, wheelbase)).ok_or(missing))
}

/// What a build whose items are placed puts on the axles; `None` if something is missing for it.
pub(super) fn on_axles(catalogue: &Catalogue, build: &Build, placed: &[Placed]) -> Option<OnAxles> {
    let (_, wheelbase) = bare(catalogue.machine(build.machine?))?;
    let (mut sum, mut is_known) = (Sum::default(), true);
    weigh(catalogue, build, placed, &mut |weighed| match weighed {
        Ok(body) => sum.add(&body),
        Err(_) => is_known = false,
    });
    is_known.then(|| sum.on_axles(wheelbase))
}

/// Mass and wheelbase of the bare machine.
fn bare(machine: &Machine) -> Option<(Mass, Length)> {
    Some((machine.front.bare_load? + machine.rear.bare_load?, machine.wheelbase?.value))
}

/// Tells of every mass with its place, the machine's first, and of everything that is missing for them.
fn weigh(catalogue: &Catalogue, build: &Build, placed: &[Placed], tell: &mut dyn FnMut(Result<Body, Missing>)) {
    let Some(id) = build.machine else { return };
    let (item, machine) = (ItemRef::Machine(id), catalogue.machine(id));
    let of_machine = [
        (machine.wheelbase.is_some(), "wheelbase"),
        (machine.front.bare_load.is_some(), "front-axle-load"),
        (machine.rear.bare_load.is_some(), "rear-axle-load"),
    ];
    missing(item, &of_machine, tell);
    if let (Some((bare, wheelbase)), Some(front)) = (bare(machine), machine.front.bare_load) {
        let x = if bare > Mass::ZERO { wheelbase * (front / bare) } else { Length::ZERO };
        let of = Bearer::Item(item);
        tell(Ok(Body { of, mass: bare, x, y: Length::ZERO, z: machine.centre_of_gravity_height }));
    }
    for placed in placed.iter().filter(|placed| placed.item != item) {
        let body = catalogue.body(placed.item);
        let of_item = [
            (body.mass.is_some(), "mass"),
            (body.centre_of_gravity.is_some(), "centre-of-gravity"),
            (placed.placement.is_some(), "pose"),
        ];
        missing(placed.item, &of_item, tell);
        if let (Some(mass), Some(centre), Some(placement)) = (body.mass, body.centre_of_gravity, placed.placement) {
            let centre = placement.point(centre);
            let of = Bearer::Item(placed.item);
            tell(Ok(Body { of, mass: mass.value, x: centre.x, y: centre.y, z: Some(centre.z) }));
        }
    }
    let hung = [build.carrying.frame().map(ItemRef::Frame), build.implement.map(ItemRef::Implement)];
    for item in hung.into_iter().flatten() {
        let is_lost = !catalogue.body(item).is_mounted() && placed.iter().all(|placed| placed.item != item);
        missing(item, &[(!is_lost, "pose")], tell);
    }
    // Where no seat is stated the operator's mass stands over the rear axle, the less favourable place for the front.
    let seat = machine.operator_seat;
    tell(Ok(Body {
        of: Bearer::Operator,
        mass: OPERATOR,
        x: seat.map_or(Length::ZERO, |seat| seat.index_x),
        y: Length::ZERO,
        z: seat.map(|seat| seat.index_z),
    }));
    for change in &build.changes {
        if let Change::Ballast { mass, x } = *change {
            tell(Ok(Body { of: Bearer::Ballast, mass, x, y: Length::ZERO, z: None }));
        }
    }
}

/// Tells of what is not known.
fn missing(of: ItemRef, known: &[(bool, &'static str)], tell: &mut dyn FnMut(Result<Body, Missing>)) {
    known.iter().filter(|(known, _)| !known).for_each(|&(_, what)| tell(Err((of, what))));
}

fn sum(bodies: Vec<Body>, bare: Mass, wheelbase: Length) -> Loads {
    let mut sum = Sum::default();
    for body in &bodies {
        sum.add(body);
    }
    let OnAxles { total, front, rear } = sum.on_axles(wheelbase);
    Loads { bodies, total, front, rear, bare, wheelbase }
}

/// Masses and their moments about the rear axle, added up.
#[derive(Default)]
struct Sum {
    total: Mass,
    /// kg m.
    moment: f64,
}

impl Sum {
    fn add(&mut self, body: &Body) {
        self.total += body.mass;
        self.moment += body.mass.kg() * body.x.m();
    }

    fn on_axles(&self, wheelbase: Length) -> OnAxles {
        let front = Mass::from_kg(self.moment / wheelbase.m());
        OnAxles { total: self.total, front, rear: self.total - front }
    }
}
