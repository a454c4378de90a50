//! Power at the take-off against what the implement needs and stands.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{ItemRef, PortKind};
use crate::quantity::Power;

/// Reads the power at the take-off and what the implement needs and stands.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| take_off_power(&a.body.ports) == take_off_power(&b.body.ports),
    implement: |_, a, b| a.power_least == b.power_least && a.power_most == b.power_most,
    ..Alike::ALL
};

/// The machine's take-off power has to lie between the implement's least and greatest.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((id, machine)), Some((_, implement))) = (context.machine(), context.implement()) else { return };
    if implement.power_least.is_none() && implement.power_most.is_none() {
        return;
    }
    let Some(power) = take_off_power(&machine.body.ports) else {
        let item = ItemRef::Machine(id);
        out.push(
            Finding::new("power-unknown", Subject::Drive, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label("power".to_owned()))
                .check(Check::FindOut { item, what: "power" }),
        );
        return;
    };
    if let Some(least) = implement.power_least.filter(|&least| power < least) {
        out.push(
            Finding::new("power-short", Subject::Drive, Verdict::WontMount, Grade::Drawing)
                .with("power", Value::Power(power))
                .with("least", Value::Power(least)),
        );
    }
    if let Some(most) = implement.power_most.filter(|&most| power > most) {
        out.push(
            Finding::new("power-high", Subject::Drive, Verdict::CheckFirst, Grade::Drawing)
                .with("power", Value::Power(power))
                .with("most", Value::Power(most)),
        );
    }
}

fn take_off_power(ports: &[crate::item::Port]) -> Option<Power> {
    ports.iter().find_map(|port| match &port.kind {
        PortKind::PowerTakeOff(take_off) => take_off.power,
        _ => None,
    })
}
