//! Lift capacity of the hitch against the implement's mass.

use crate::build::{Carrying, Step};
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::mating::three_point::LIFT_REFERENCE;
use crate::fit::rule::{Alike, Placed};
use crate::item::{Implement, ItemRef, Machine, Port, PortKind, Role, ThreePoint};
use crate::quantity::{Length, Mass};

/// Distance behind the lower hitch points at which the second lift rating is taken.
const LIFT_POINT_BEHIND: Length = Length::from_m(LIFT_REFERENCE);

/// Of [`unknown`]: reads what is stated, not its value.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| rated(a) == rated(b),
    implement: |_, a, b| a.body.mass.is_some() == b.body.mass.is_some(),
    ..Alike::ALL
};

/// Of [`rule`]: reads the hitch's ratings and where it is, and mass and centre of gravity where the implement stands.
pub(super) const PLACED: Placed = Placed {
    alike: Alike {
        machine: |_, a, b| {
            let known = |(port, hitch): (&Port, &ThreePoint)| (port.pose, hitch.lift, hitch.lift_610);
            hitch(a).map(known) == hitch(b).map(known)
        },
        implement: |_, a, b| mass(a) == mass(b) && a.body.centre_of_gravity == b.body.centre_of_gravity,
        ..Alike::ALL
    },
    stand: &[Step::Implement],
    joined: &[Role::Hitch],
    ..Placed::NOTHING
};

fn mass(implement: &Implement) -> Option<Mass> {
    implement.body.mass.map(|mass| mass.value)
}

/// Whether the machine's hitch has a rating; `None` if it has no hitch.
fn rated(machine: &Machine) -> Option<bool> {
    hitch(machine).map(|(_, hitch)| hitch.lift.is_some() || hitch.lift_610.is_some())
}

fn hitch(machine: &Machine) -> Option<(&Port, &ThreePoint)> {
    machine.body.ports.iter().find_map(|port| match &port.kind {
        PortKind::ThreePoint(hitch) => Some((port, hitch)),
        _ => None,
    })
}

/// Machine and implement, if the one hangs on the other's hitch.
fn on_hitch<'a>(context: &Context<'a>) -> Option<(&'a Machine, &'a Implement)> {
    let ((_, machine), (_, implement)) = context.machine().zip(context.implement())?;
    let hangs =
        context.build.carrying == Carrying::Hitch && context.stack.joints.iter().any(|joint| joint.role == Role::Hitch);
    hangs.then_some((machine, implement))
}

/// What is missing for the lift to be judged.
pub(super) fn unknown(context: &Context, out: &mut Vec<Finding>) {
    let Some((machine, implement)) = on_hitch(context) else { return };
    let (Some((carrier, _)), Some((item, _))) = (context.machine(), context.implement()) else { return };
    let (carrier, item) = (ItemRef::Machine(carrier), ItemRef::Implement(item));
    let missing = if implement.body.mass.is_none() {
        (item, "mass")
    } else if rated(machine) == Some(false) {
        (carrier, "lift")
    } else {
        return;
    };
    let (item, what) = missing;
    out.push(
        Finding::new("lift-unknown", Subject::Item(item), Verdict::CheckFirst, Grade::None)
            .with("missing", Value::Label(what.to_owned()))
            .check(Check::FindOut { item, what }),
    );
}

/// An implement on the hitch has to be lighter than the lift capacity where its centre of gravity
/// hangs: the rating 610 mm behind the points if it hangs that far back, else the one at the points.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let Some((machine, implement)) = on_hitch(context) else { return };
    let Some(item) = context.implement().map(|(id, _)| ItemRef::Implement(id)) else { return };
    let (Some(mass), Some((port, hitch))) = (implement.body.mass, hitch(machine)) else { return };
    let behind = match (port.pose, context.placement(item), implement.body.centre_of_gravity) {
        (Some(pose), Some(placed), Some(centre)) => Some(pose.at.x - placed.point(centre).x),
        _ => None,
    };
    let lift = match behind {
        Some(behind) if behind <= Length::ZERO => hitch.lift.or(hitch.lift_610),
        // Farther back than either rating the same moment lifts less.
        Some(behind) if behind > LIFT_POINT_BEHIND => {
            hitch.lift_610.or(hitch.lift).map(|lift| lift * (LIFT_POINT_BEHIND / behind))
        }
        // Between the two ratings the smaller one is on the safe side.
        _ => hitch.lift_610.or(hitch.lift),
    };
    let Some(lift) = lift else { return };
    let finding = if mass.value <= lift {
        Finding::new("lift-enough", Subject::Item(item), Verdict::BoltsUp, Grade::Drawing)
            .with("left", Value::Mass(lift - mass.value))
    } else {
        Finding::new("lift-short", Subject::Item(item), Verdict::WontMount, Grade::Drawing)
            .with("over", Value::Mass(mass.value - lift))
    };
    out.push(finding.with("mass", Value::Mass(mass.value)).with("lift", Value::Mass(lift)));
}
