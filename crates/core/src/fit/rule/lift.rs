//! Lift capacity of the hitch against the implement's mass.

use crate::build::Carrying;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::item::{ItemRef, PortKind, Role};
use crate::quantity::Length;

/// Distance behind the lower hitch points at which the second lift rating is taken.
/// Source: ISO 789-2 (610 mm, a rounded 24 in).
pub const LIFT_POINT_BEHIND: Length = Length::from_mm(610.0);

/// An implement on the hitch has to be lighter than the lift capacity where its centre of gravity
/// hangs: the rating 610 mm behind the points if it hangs that far back, else the one at the points.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((machine_id, machine)), Some((id, implement))) = (context.machine(), context.implement()) else { return };
    let item = ItemRef::Implement(id);
    let on_hitch =
        context.build.carrying == Carrying::Hitch && context.stack.joints.iter().any(|joint| joint.role == Role::Hitch);
    if !on_hitch {
        return;
    }
    let unknown = |item: ItemRef, what: &'static str| {
        Finding::new("lift-unknown", Subject::Item(item), Verdict::CheckFirst, Grade::None)
            .with("missing", Value::Label(what.to_owned()))
            .check(Check::FindOut { item, what })
    };
    let Some(mass) = implement.body.mass else {
        out.push(unknown(item, "mass"));
        return;
    };
    let hitch = machine.body.ports.iter().find_map(|port| match &port.kind {
        PortKind::ThreePoint(hitch) => Some((port, hitch)),
        _ => None,
    });
    let Some((port, hitch)) = hitch else { return };
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
    let Some(lift) = lift else {
        out.push(unknown(ItemRef::Machine(machine_id), "lift"));
        return;
    };
    let finding = if mass.value <= lift {
        Finding::new("lift-enough", Subject::Item(item), Verdict::BoltsUp, Grade::Drawing)
            .with("left", Value::Mass(lift - mass.value))
    } else {
        Finding::new("lift-short", Subject::Item(item), Verdict::WontMount, Grade::Drawing)
            .with("over", Value::Mass(mass.value - lift))
    };
    out.push(finding.with("mass", Value::Mass(mass.value)).with("lift", Value::Mass(lift)));
}
