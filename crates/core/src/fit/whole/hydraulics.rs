//! Oil and power: what the machine gives, what the implement makes of it.

use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{hydraulic_power, line_velocity};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{HydraulicNeed, HydraulicSupply, ItemRef};
use crate::quantity::{Flow, Length, Power, Pressure};

/// Bores of hoses that a line's speed is told for. Source: nominal inside diameters of ISO 4397 (from memory).
pub const HOSE_BORES: [Length; 5] =
    [Length::from_mm(8.0), Length::from_mm(10.0), Length::from_mm(12.5), Length::from_mm(16.0), Length::from_mm(19.0)];

/// What the machine's hydraulics come to with the build's implement.
#[derive(Debug, Clone, PartialEq)]
pub struct Hydraulics {
    /// What the machine supplies.
    pub supply: HydraulicSupply,
    /// What the implement asks.
    pub need: HydraulicNeed,
    /// Flow that goes through the implement: the machine's, but no more than it stands.
    pub flow: Option<Flow>,
    /// Pressure it works at: the machine's relief, but no more than it stands.
    pub pressure: Option<Pressure>,
    /// Power in that oil.
    pub power: Option<Power>,
    /// Time of a working cycle against that at the least flow it works with; above 1 = slower.
    pub time_to_least: Option<f64>,
    /// Time of a working cycle against that at the greatest flow it stands.
    pub time_to_greatest: Option<f64>,
    /// Speed of that flow in a line of each bore, m/s.
    pub line_speeds: Vec<(Length, f64)>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

/// Oil and power of the build. `None` without a machine and an implement that asks for oil.
///
/// Cycle times go with one over the flow, whatever the cylinders are, as long as nothing else throttles them.
pub fn hydraulics(desk: &Desk, build: &Build) -> Option<Hydraulics> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<Hydraulics> {
    let (machine_id, machine) = context.machine()?;
    let (implement_id, implement) = context.implement()?;
    let (supply, need) = (machine.hydraulics, implement.hydraulics?);
    let of_machine = MissingOf::Item(ItemRef::Machine(machine_id));
    let of_implement = MissingOf::Item(ItemRef::Implement(implement_id));
    let mut ask = Ask::default();
    let flow =
        ask.need(of_machine, Unstated::Flow, supply.flow).map(|flow| need.flow_max.map_or(flow, |most| most.min(flow)));
    let relief = ask.need(of_machine, Unstated::Pressure, supply.relief);
    let pressure = relief.map(|relief| need.pressure_max.map_or(relief, |most| most.min(relief)));
    ask.need(of_implement, Unstated::Flow, need.flow_min.or(need.flow_max));
    let power = pressure.zip(flow).and_then(|(pressure, flow)| hydraulic_power(pressure.pa(), flow.m3_s()).ok());
    let against = |reference: Option<Flow>| {
        let (reference, flow) = (reference?, flow.filter(|flow| *flow > Flow::ZERO)?);
        Some(reference / flow)
    };
    let speed = |bore: Length| Some((bore, line_velocity(flow?.m3_s(), bore.m()).ok()?));
    Some(Hydraulics {
        supply,
        need,
        flow,
        pressure,
        power: power.map(Power::from_w),
        time_to_least: against(need.flow_min),
        time_to_greatest: against(need.flow_max),
        line_speeds: HOSE_BORES.into_iter().filter_map(speed).collect(),
        missing: ask.0,
    })
}
