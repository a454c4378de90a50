//! Masses of the placed stack and what they put on the axles.

use crate::build::{Build, Change, Placed, unmountable};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::item::{Catalogue, ItemRef, Machine};
use crate::quantity::{Length, Mass, Stated};

/// Mass of the operator in every load. Source: 75 kg is the driver's mass in Regulation (EU)
/// 2015/208 and the tractor directives before it (from memory).
pub const OPERATOR: Mass = Mass::from_kg(75.0);

/// How far the operator's mass may be off: people of 60 to 90 kg sit there. Own choice; a wider range asks for more weighing.
pub const OPERATOR_OFF: Mass = Mass::from_kg(15.0);

/// How far a mass may be off that states no range of its own: a hundredth. Common practice, no source: what lists round, and what
/// is on one unit and not on another.
const MASS_OFF: f64 = 0.01;

/// How far a centre of gravity may be from where it is stated, along the machine: 10 mm. Common practice, no source.
const CENTRE_OFF: Length = Length::from_mm(10.0);

/// How far a mass may be off.
pub(crate) fn off(mass: Stated<Mass>) -> Mass {
    mass.plus_minus.unwrap_or(mass.value * MASS_OFF)
}

/// As [`off`], of a mass for which no row can state a range.
pub(crate) fn usual_off(mass: Mass) -> Mass {
    mass * MASS_OFF
}

/// The arm at which a mass works at worst that may be off by [`MASS_OFF`] and hang by [`CENTRE_OFF`] nearer.
pub(crate) fn off_at_worst(arm: Length) -> Length {
    arm * (1.0 - MASS_OFF) - CENTRE_OFF
}

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
pub struct PlacedMass {
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
    /// How far the mass may be off either way.
    pub off: Mass,
}

impl PlacedMass {
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
    pub bodies: Vec<PlacedMass>,
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
    /// How far the wheelbase may be off.
    wheelbase_off: Length,
    /// How far all of these may be off at worst.
    pub off: LoadsOff,
}

/// How far loads may be off either way, every mass and place off at once in the wrong direction.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct LoadsOff {
    /// Of the sum.
    pub total: Mass,
    /// Of the front axle.
    pub front: Mass,
    /// Of the rear axle.
    pub rear: Mass,
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
        sum(bodies, self.bare, (self.wheelbase, self.wheelbase_off))
    }
}

/// What is missing of which item for the loads to be known.
pub(crate) type Missing = (ItemRef, Unstated);

/// Loads on the axles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct OnAxles {
    pub total: Mass,
    pub front: Mass,
    pub rear: Mass,
    pub off: LoadsOff,
}

/// The loads, or everything that is missing for them. `None` without a machine.
pub(crate) fn loads(context: &Context) -> Option<Result<Loads, Vec<Missing>>> {
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
pub(crate) fn on_axles(catalogue: &Catalogue, build: &Build, placed: &[Placed]) -> Option<OnAxles> {
    let (_, wheelbase) = bare(catalogue.machine(build.choices.machine?))?;
    let (mut sum, mut is_known) = (Sum::default(), true);
    weigh(catalogue, build, placed, &mut |weighed| match weighed {
        Ok(body) => sum.add(&body, wheelbase.0),
        Err(_) => is_known = false,
    });
    is_known.then(|| sum.on_axles(wheelbase))
}

/// A length, and how far it may be off.
type Span = (Length, Length);

/// Mass and wheelbase of the bare machine.
fn bare(machine: &Machine) -> Option<(Mass, Span)> {
    let wheelbase = machine.wheelbase?;
    let off = wheelbase.plus_minus.unwrap_or_else(|| wheelbase.source.usual_half_range());
    Some((machine.front.bare_load? + machine.rear.bare_load?, (wheelbase.value, off)))
}

/// Tells of every mass with its place, the machine's first, and of everything that is missing for them.
fn weigh(catalogue: &Catalogue, build: &Build, placed: &[Placed], tell: &mut dyn FnMut(Result<PlacedMass, Missing>)) {
    let Some(id) = build.choices.machine else { return };
    let (item, machine) = (ItemRef::Machine(id), catalogue.machine(id));
    let of_machine = [
        (machine.wheelbase.is_some(), Unstated::Wheelbase),
        (machine.front.bare_load.is_some(), Unstated::FrontAxleLoad),
        (machine.rear.bare_load.is_some(), Unstated::RearAxleLoad),
        (machine.operator_seat.is_some(), Unstated::IndexPoint),
    ];
    missing(item, &of_machine, tell);
    if let (Some((bare, (wheelbase, _))), Some(front)) = (bare(machine), machine.front.bare_load) {
        let x = if bare > Mass::ZERO { wheelbase * (front / bare) } else { Length::ZERO };
        let of = Bearer::Item(item);
        tell(Ok(PlacedMass {
            of,
            mass: bare,
            x,
            y: Length::ZERO,
            z: machine.centre_of_gravity_height,
            off: usual_off(bare),
        }));
    }
    for placed in placed.iter().filter(|placed| placed.item != item) {
        let body = catalogue.body(placed.item);
        let of_item = [
            (body.mass.is_some(), Unstated::Mass),
            (body.centre_of_gravity.is_some(), Unstated::CentreOfGravity),
            (placed.placement.is_some(), Unstated::Pose),
        ];
        missing(placed.item, &of_item, tell);
        if let (Some(mass), Some(centre), Some(placement)) = (body.mass, body.centre_of_gravity, placed.placement) {
            let centre = placement.point(centre);
            let of = Bearer::Item(placed.item);
            tell(Ok(PlacedMass { of, mass: mass.value, x: centre.x, y: centre.y, z: Some(centre.z), off: off(mass) }));
        }
    }
    unmountable(catalogue, build, placed).for_each(|item| tell(Err((item, Unstated::Pose))));
    if let Some(seat) = machine.operator_seat {
        let (of, x, z) = (Bearer::Operator, seat.index_x, Some(seat.index_z));
        tell(Ok(PlacedMass { of, mass: OPERATOR, x, y: Length::ZERO, z, off: OPERATOR_OFF }));
    }
    for change in &build.side.changes {
        if let Change::Ballast { mass, x } = *change {
            tell(Ok(PlacedMass { of: Bearer::Ballast, mass, x, y: Length::ZERO, z: None, off: usual_off(mass) }));
        }
    }
}

/// Tells of what is not known.
fn missing(of: ItemRef, known: &[(bool, Unstated)], tell: &mut dyn FnMut(Result<PlacedMass, Missing>)) {
    known.iter().filter(|(known, _)| !known).for_each(|&(_, what)| tell(Err((of, what))));
}

fn sum(bodies: Vec<PlacedMass>, bare: Mass, wheelbase: Span) -> Loads {
    let mut sum = Sum::default();
    for body in &bodies {
        sum.add(body, wheelbase.0);
    }
    let OnAxles { total, front, rear, off } = sum.on_axles(wheelbase);
    Loads { bodies, total, front, rear, bare, wheelbase: wheelbase.0, wheelbase_off: wheelbase.1, off }
}

/// Masses and their moments about the rear axle, added up, and how far they may be off at worst.
#[derive(Default)]
struct Sum {
    total: Mass,
    /// kg m.
    moment: f64,
    /// The moment of all but the machine, whose axle loads are stated, kg m.
    hung: f64,
    off: Mass,
    /// How far the moments about the rear and about the front axle may be off, kg m.
    off_moments: [f64; 2],
}

impl Sum {
    fn add(&mut self, body: &PlacedMass, wheelbase: Length) {
        let (mass, off, x) = (body.mass.kg(), body.off.kg(), body.x.m());
        self.total += body.mass;
        self.moment += mass * x;
        self.off += body.off;
        let is_machine = matches!(body.of, Bearer::Item(ItemRef::Machine(_)));
        let misplaced = if is_machine { 0.0 } else { mass * CENTRE_OFF.m() };
        for (moment, axle) in self.off_moments.iter_mut().zip([0.0, wheelbase.m()]) {
            *moment += off * (axle - x).abs() + misplaced;
        }
        self.hung += if is_machine { 0.0 } else { mass * x };
    }

    fn on_axles(&self, (wheelbase, off): Span) -> OnAxles {
        let front = Mass::from_kg(self.moment / wheelbase.m());
        // A longer wheelbase takes of what hangs there from the one axle and gives it to the other.
        let of_wheelbase = (self.hung * off.m()).abs() / wheelbase.m();
        let [of_front, of_rear] = self.off_moments.map(|moment| Mass::from_kg((moment + of_wheelbase) / wheelbase.m()));
        let off = LoadsOff { total: self.off, front: of_front, rear: of_rear };
        OnAxles { total: self.total, front, rear: self.total - front, off }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::{ImplementId, MachineId};

    fn body(of: Bearer, kg: f64, metres: f64, off: f64) -> PlacedMass {
        let [mass, off] = [kg, off].map(Mass::from_kg);
        PlacedMass { of, mass, x: Length::from_m(metres), y: Length::ZERO, z: None, off }
    }

    #[test]
    fn loads_are_off_by_what_masses_and_places_are_off_together() {
        let machine = body(Bearer::Item(ItemRef::Machine(MachineId(0))), 1000.0, 0.8, 10.0);
        let implement = body(Bearer::Item(ItemRef::Implement(ImplementId(0))), 300.0, -1.0, 30.0);
        let wheelbase = (Length::from_m(2.0), Length::from_mm(10.0));
        let loads = sum(vec![machine, implement], machine.mass, wheelbase);
        let near = |mass: Mass, by_hand: f64| assert!((mass.kg() - by_hand).abs() < 1e-9, "{mass:?} {by_hand}");
        near(loads.front, 400.0 - 150.0);
        near(loads.off.total, 40.0);
        // By hand: 10·0.8/2, 30·1/2, the centre's 10 mm of 300 kg and the wheelbase's of 300 kg m.
        near(loads.off.front, 4.0 + 15.0 + 1.5 + 0.75);
        near(loads.off.rear, 6.0 + 45.0 + 1.5 + 0.75);
    }
}
