//! Flow, pressure, outlets and power-beyond against what the implement asks.

use crate::finding::{Caution, Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{HydraulicNeed, HydraulicSupply, ItemRef};
use crate::quantity::{Flow, Power, Pressure};

/// Reads what the machine supplies and what the implement asks.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| a.hydraulics == b.hydraulics,
    implement: |_, a, b| a.hydraulics == b.hydraulics,
    ..Alike::ALL
};

/// The machine has to supply the flow, pressure and outlets that the implement asks, and no more
/// than it stands.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((id, machine)), Some((_, implement))) = (context.machine(), context.implement()) else { return };
    let Some(need) = implement.hydraulics else { return };
    let before = out.len();
    flow(&machine.hydraulics, &need, out);
    pressure(&machine.hydraulics, &need, out);
    connections(&machine.hydraulics, &need, out);
    missing(&machine.hydraulics, &need, ItemRef::Machine(id), out);
    if out.len() == before
        && let (Some(flow), Some(pressure)) = (machine.hydraulics.flow, machine.hydraulics.relief)
    {
        out.push(
            Finding::new("hydraulics-match", Subject::Hydraulics, Verdict::BoltsUp, Grade::Drawing)
                .with("flow", Value::Flow(flow))
                .with("pressure", Value::Pressure(pressure))
                .with("power", Value::Power(power(flow, pressure)))
                .caution(Caution::HydraulicPressure),
        );
    }
}

fn finding(code: &'static str, verdict: Verdict) -> Finding {
    Finding::new(code, Subject::Hydraulics, verdict, Grade::Drawing).caution(Caution::HydraulicPressure)
}

fn flow(supply: &HydraulicSupply, need: &HydraulicNeed, out: &mut Vec<Finding>) {
    let Some(flow) = supply.flow else { return };
    if let Some(least) = need.flow_min.filter(|&least| flow < least) {
        // Cycle time grows as the flow falls short: a slow implement works, it does not break.
        out.push(
            finding("hydraulics-flow-short", Verdict::CheckFirst)
                .with("flow", Value::Flow(flow))
                .with("least", Value::Flow(least))
                .with("time-ratio", Value::Share(ratio(least, flow))),
        );
    }
    if let Some(most) = need.flow_max.filter(|&most| flow > most) {
        out.push(
            finding("hydraulics-flow-high", Verdict::CheckFirst)
                .with("flow", Value::Flow(flow))
                .with("most", Value::Flow(most)),
        );
    }
}

fn pressure(supply: &HydraulicSupply, need: &HydraulicNeed, out: &mut Vec<Finding>) {
    let Some(pressure) = supply.relief else { return };
    if let Some(least) = need.pressure_min.filter(|&least| pressure < least) {
        out.push(
            finding("hydraulics-pressure-short", Verdict::CheckFirst)
                .with("pressure", Value::Pressure(pressure))
                .with("least", Value::Pressure(least)),
        );
    }
    if let Some(most) = need.pressure_max.filter(|&most| pressure > most) {
        // Above its rating an implement can burst: not a thing to try out.
        out.push(
            finding("hydraulics-pressure-high", Verdict::WontMount)
                .with("pressure", Value::Pressure(pressure))
                .with("most", Value::Pressure(most)),
        );
    }
}

fn connections(supply: &HydraulicSupply, need: &HydraulicNeed, out: &mut Vec<Finding>) {
    if let Some(has) = supply.outlets.filter(|&has| has < need.outlets) {
        out.push(
            finding("hydraulics-outlets-short", Verdict::BoltsUpWithWork)
                .with("has", Value::Count(has.into()))
                .with("need", Value::Count(need.outlets.into())),
        );
    }
    if need.power_beyond && supply.power_beyond == Some(false) {
        out.push(finding("hydraulics-no-power-beyond", Verdict::BoltsUpWithWork));
    }
}

fn missing(supply: &HydraulicSupply, need: &HydraulicNeed, item: ItemRef, out: &mut Vec<Finding>) {
    let asked = [
        ("flow", supply.flow.is_none() && (need.flow_min.is_some() || need.flow_max.is_some())),
        ("pressure", supply.relief.is_none() && (need.pressure_min.is_some() || need.pressure_max.is_some())),
        ("outlets", supply.outlets.is_none() && need.outlets > 0),
        ("power-beyond", supply.power_beyond.is_none() && need.power_beyond),
    ];
    for (what, is_missing) in asked {
        if is_missing {
            out.push(
                Finding::new("hydraulics-unknown", Subject::Hydraulics, Verdict::CheckFirst, Grade::None)
                    .with("missing", Value::Label(what.to_owned()))
                    .check(Check::FindOut { item, what }),
            );
        }
    }
}

fn power(flow: Flow, pressure: Pressure) -> Power {
    Power::from_w(flow.m3_s() * pressure.pa())
}

fn ratio(least: Flow, flow: Flow) -> f64 {
    if flow > Flow::ZERO { least / flow } else { f64::MAX }
}
