//! Power at the take-off against what the implement needs and stands.

use super::{Datum, Rule, Seen, View};
use crate::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Implement, ItemRef, Machine, PortKind};
use crate::quantity::Power;

findings! {
    /// Less power at the take-off than the implement needs.
    PowerShort = "power-short", Work { power: Power, least: Power }
    /// More than it stands.
    PowerHigh = "power-high", Work { power: Power, most: Power }
    /// The power at the take-off, or what the implement needs or stands, is not stated.
    PowerUnknown = "power-unknown", Work { missing: Unstated }
}

/// The machine's take-off power has to lie between the least and the greatest of an implement that a shaft drives.
pub(super) struct TakeOffPower;

/// Power at the machine's take-off.
#[derive(PartialEq)]
pub struct TakeOff {
    power: Datum<Power>,
}

impl<'c> View<'c, Machine> for TakeOff {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        let power = machine.body.ports.iter().find_map(|port| match &port.kind {
            PortKind::PowerTakeOff(take_off) => take_off.power,
            _ => None,
        });
        Self { power: Datum::new(Unstated::Power, power) }
    }
}

/// What the implement needs and stands.
#[derive(PartialEq)]
pub struct Needs {
    is_shaft_driven: bool,
    least: Datum<Power>,
    most: Datum<Power>,
}

impl<'c> View<'c, Implement> for Needs {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self {
            is_shaft_driven: implement.is_shaft_driven(),
            least: Datum::new(Unstated::LeastPower, implement.power_least),
            most: Datum::new(Unstated::GreatestPower, implement.power_most),
        }
    }
}

impl Rule for TakeOffPower {
    type Machine<'c> = TakeOff;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Needs;
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(implement)) = (&seen.machine, &seen.implement) else { return };
        if !implement.sees.is_shaft_driven {
            return;
        }
        let unknown = |item| {
            move |what| {
                Finding::of(PowerUnknown { missing: what }, Subject::Drive, Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what })
            }
        };
        let least = implement.sees.least.need(out, unknown(implement.item));
        let most = implement.sees.most.need(out, unknown(implement.item));
        let Some(power) = machine.sees.power.need(out, unknown(machine.item)) else { return };
        if let Some(least) = least.filter(|&least| power < least) {
            out.push(Finding::of(PowerShort { power, least }, Subject::Drive, Verdict::WontMount, Grade::Drawing));
        }
        if let Some(most) = most.filter(|&most| power > most) {
            out.push(Finding::of(PowerHigh { power, most }, Subject::Drive, Verdict::CheckFirst, Grade::Drawing));
        }
    }
}
