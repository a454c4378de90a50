//! Flow, pressure, outlets and power-beyond against what the implement asks.

use super::{Datum, Rule, Seen, View};
use crate::finding::{Caution, Check, Count, Fact, Finding, Grade, Ratio, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Implement, ItemRef, Machine};
use crate::quantity::{Flow, Power, Pressure};

findings! {
    /// Everything that the implement asks is there.
    HydraulicsMatch = "hydraulics-match", Work { flow: Flow, pressure: Pressure, power: Power }
    /// Less flow than the implement works with: more slowly, by the ratio of its cycle times.
    HydraulicsFlowShort = "hydraulics-flow-short", Work { flow: Flow, least: Flow, time_ratio: Ratio }
    /// More flow than the implement stands.
    HydraulicsFlowHigh = "hydraulics-flow-high", Work { flow: Flow, most: Flow }
    /// Less pressure than the implement needs.
    HydraulicsPressureShort = "hydraulics-pressure-short", Work { pressure: Pressure, least: Pressure }
    /// More pressure than the implement stands.
    HydraulicsPressureHigh = "hydraulics-pressure-high", Work { pressure: Pressure, most: Pressure }
    /// Too few outlets.
    HydraulicsOutletsShort = "hydraulics-outlets-short", Fit { has: Count, need: Count }
    /// No power-beyond.
    HydraulicsNoPowerBeyond = "hydraulics-no-power-beyond", Fit {}
    /// What the machine supplies or the implement asks is not stated.
    HydraulicsUnknown = "hydraulics-unknown", Work { missing: Unstated }
    /// What has to be joined is not stated.
    HydraulicLinesUnknown = "hydraulic-lines-unknown", Fit { missing: Unstated }
}

/// The machine has to supply the flow, pressure and outlets that the implement asks, and no more
/// than it stands.
pub(super) struct Oil;

/// What the machine supplies.
#[derive(PartialEq)]
pub struct Supply {
    flow: Datum<Flow>,
    relief: Datum<Pressure>,
    outlets: Datum<u32>,
    power_beyond: Datum<bool>,
}

impl<'c> View<'c, Machine> for Supply {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        let supply = &machine.hydraulics;
        Self {
            flow: Datum::new(Unstated::Flow, supply.flow),
            relief: Datum::new(Unstated::Pressure, supply.relief),
            outlets: Datum::new(Unstated::Outlets, supply.outlets),
            power_beyond: Datum::new(Unstated::PowerBeyond, supply.power_beyond),
        }
    }
}

/// What the implement asks, least and greatest.
#[derive(Clone, Copy, PartialEq)]
pub struct Need {
    flow: [Datum<Flow>; 2],
    pressure: [Datum<Pressure>; 2],
    outlets: u32,
    power_beyond: Datum<bool>,
}

/// What the implement asks; nothing of one that has nothing to do with oil.
#[derive(Clone, Copy, PartialEq)]
pub struct Asked(Option<Datum<Need>>);

impl<'c> View<'c, Implement> for Asked {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        let need = Datum::new(Unstated::HydraulicNeed, implement.hydraulics).map(|need| Need {
            flow: [Datum::new(Unstated::LeastFlow, need.flow_min), Datum::new(Unstated::GreatestFlow, need.flow_max)],
            pressure: [
                Datum::new(Unstated::LeastPressure, need.pressure_min),
                Datum::new(Unstated::GreatestPressure, need.pressure_max),
            ],
            outlets: need.outlets,
            power_beyond: Datum::new(Unstated::PowerBeyond, need.power_beyond),
        });
        Self(implement.is_oil_driven().then_some(need))
    }
}

impl Rule for Oil {
    type Machine<'c> = Supply;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Asked;
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(implement)) = (&seen.machine, &seen.implement) else { return };
        let Some(need) = implement.sees.0 else { return };
        let (of_machine, of_implement) = (machine.item, implement.item);
        let Some(need) = need.need(out, unknown(of_implement)) else {
            out.push(lines_unknown(of_implement)(Unstated::HydraulicNeed));
            return;
        };
        let supply = &machine.sees;
        let flow = flow(supply, &need, [of_machine, of_implement], out);
        let pressure = pressure(supply, &need, [of_machine, of_implement], out);
        connections(supply, &need, [of_machine, of_implement], out);
        if out.is_empty()
            && let Some((flow, pressure)) = flow.zip(pressure)
        {
            out.push(finding(HydraulicsMatch { flow, pressure, power: power(flow, pressure) }, Verdict::BoltsUp));
        }
    }
}

fn finding<F: Fact>(fact: F, verdict: Verdict) -> Finding {
    Finding::of(fact, Subject::Hydraulics, verdict, Grade::Drawing).caution(Caution::HydraulicPressure)
}

/// Share of the least flow or pressure below which it is too little for certain: what a gauge at the outlet may show beyond the list
/// is a twentieth. Common practice, no source.
const SHORT: f64 = 0.95;

/// Less than the least that an implement works with: as with a weak take-off it is not fit to work, unless it is so near that a
/// gauge at the outlet decides.
fn short<F: Fact>(fact: F, share: f64, read: Check) -> Finding {
    if share < SHORT { finding(fact, Verdict::WontMount) } else { finding(fact, Verdict::CheckFirst).check(read) }
}

/// The finding that something is not stated of an item.
fn unknown(item: ItemRef) -> impl FnOnce(Unstated) -> Finding {
    move |what| {
        Finding::of(HydraulicsUnknown { missing: what }, Subject::Hydraulics, Verdict::CheckFirst, Grade::None)
            .caution(Caution::HydraulicPressure)
            .check(Check::FindOut { item, what })
    }
}

/// The same of what has to be joined.
fn lines_unknown(item: ItemRef) -> impl FnOnce(Unstated) -> Finding {
    move |what| {
        Finding::of(HydraulicLinesUnknown { missing: what }, Subject::Hydraulics, Verdict::CheckFirst, Grade::None)
            .caution(Caution::HydraulicPressure)
            .check(Check::FindOut { item, what })
    }
}

/// What both state, least and greatest of the implement; what is not stated is found.
fn both<T>(
    [least, most]: [Datum<T>; 2],
    supplied: Datum<T>,
    [machine, implement]: [ItemRef; 2],
    out: &mut Vec<Finding>,
) -> ([Option<T>; 2], Option<T>) {
    let asked = [least.need(out, unknown(implement)), most.need(out, unknown(implement))];
    (asked, supplied.need(out, unknown(machine)))
}

/// The flow of the machine against what the implement asks.
fn flow(supply: &Supply, need: &Need, items: [ItemRef; 2], out: &mut Vec<Finding>) -> Option<Flow> {
    let ([least, most], flow) = both(need.flow, supply.flow, items, out);
    let flow = flow?;
    let read = Check::FindOut { item: items[0], what: Unstated::Flow };
    if let Some(least) = least.filter(|&least| flow < least) {
        let time_ratio = ratio(least, flow);
        let fact = HydraulicsFlowShort { flow, least, time_ratio };
        out.push(short(fact, flow / least, read.clone()));
    }
    if let Some(most) = most.filter(|&most| flow > most) {
        out.push(finding(HydraulicsFlowHigh { flow, most }, Verdict::CheckFirst).check(read));
    }
    Some(flow)
}

/// The pressure of the machine against what the implement asks.
fn pressure(supply: &Supply, need: &Need, items: [ItemRef; 2], out: &mut Vec<Finding>) -> Option<Pressure> {
    let ([least, most], pressure) = both(need.pressure, supply.relief, items, out);
    let pressure = pressure?;
    if let Some(least) = least.filter(|&least| pressure < least) {
        let read = Check::FindOut { item: items[0], what: Unstated::Pressure };
        out.push(short(HydraulicsPressureShort { pressure, least }, pressure / least, read));
    }
    if let Some(most) = most.filter(|&most| pressure > most) {
        // Above its rating an implement can burst: not a thing to try out.
        out.push(finding(HydraulicsPressureHigh { pressure, most }, Verdict::WontMount));
    }
    Some(pressure)
}

fn connections(supply: &Supply, need: &Need, [item, implement]: [ItemRef; 2], out: &mut Vec<Finding>) {
    if need.outlets > 0
        && let Some(has) = supply.outlets.need(out, lines_unknown(item)).filter(|&has| has < need.outlets)
    {
        let fact = HydraulicsOutletsShort { has: has as usize, need: need.outlets as usize };
        out.push(finding(fact, Verdict::BoltsUpWithWork));
    }
    let asks = need.power_beyond.need(out, lines_unknown(implement));
    if asks == Some(true) && supply.power_beyond.need(out, lines_unknown(item)) == Some(false) {
        out.push(finding(HydraulicsNoPowerBeyond {}, Verdict::BoltsUpWithWork));
    }
}

fn power(flow: Flow, pressure: Pressure) -> Power {
    Power::from_w(flow.m3_s() * pressure.pa())
}

fn ratio(least: Flow, flow: Flow) -> f64 {
    if flow > Flow::ZERO { least / flow } else { f64::MAX }
}
