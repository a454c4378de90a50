//! From the file's numbers to the core's typed quantities.

use fitup_core::quantity as core;
use fitup_core::quantity::{AngleUnit, FlowUnit, LengthUnit, MassUnit, PowerUnit, PressureUnit, Tool};

use crate::problem::{Code, Problem};
use crate::wire::header;
use crate::wire::value::{Angle, Flow, Hours, Length, Mass, Money, Power, Pressure, Source, Stated};

/// The header's units, known.
#[derive(Debug, Clone, Copy)]
pub struct Units {
    length: LengthUnit,
    mass: MassUnit,
    pressure: PressureUnit,
    flow: FlowUnit,
    power: PowerUnit,
    angle: AngleUnit,
}

impl Units {
    /// The units of a header, or a problem for each that is not known.
    pub fn of(header: &header::Units, problems: &mut Vec<Problem>) -> Option<Self> {
        macro_rules! unit {
            ($field:ident, $unit:ident) => {{
                let found = $unit::from_symbol(&header.$field);
                if found.is_none() {
                    let known: Vec<_> = $unit::ALL.iter().map(|unit| unit.symbol()).collect();
                    problems.push(unknown(concat!("units.", stringify!($field)), &header.$field, &known));
                }
                found
            }};
        }
        let (length, mass, pressure) =
            (unit!(length, LengthUnit), unit!(mass, MassUnit), unit!(pressure, PressureUnit));
        let (flow, power, angle) = (unit!(flow, FlowUnit), unit!(power, PowerUnit), unit!(angle, AngleUnit));
        if header.money.len() != 3 || !header.money.bytes().all(|b| b.is_ascii_uppercase()) {
            problems.push(unknown("units.money", &header.money, &["USD", "EUR", "GBP"]));
        }
        Some(Self { length: length?, mass: mass?, pressure: pressure?, flow: flow?, power: power?, angle: angle? })
    }

    /// A length.
    pub fn length(&self, value: Length) -> core::Length {
        core::Length::new(value.0, self.length)
    }

    /// A mass.
    pub fn mass(&self, value: Mass) -> core::Mass {
        core::Mass::new(value.0, self.mass)
    }

    /// A pressure.
    pub fn pressure(&self, value: Pressure) -> core::Pressure {
        core::Pressure::new(value.0, self.pressure)
    }

    /// A flow.
    pub fn flow(&self, value: Flow) -> core::Flow {
        core::Flow::new(value.0, self.flow)
    }

    /// A power.
    pub fn power(&self, value: Power) -> core::Power {
        core::Power::new(value.0, self.power)
    }

    /// An angle.
    pub fn angle(&self, value: Angle) -> core::Angle {
        core::Angle::new(value.0, self.angle)
    }

    /// A stated length.
    pub fn stated_length(&self, stated: Stated<Length>) -> core::Stated<core::Length> {
        core::Stated {
            value: self.length(stated.value),
            plus_minus: stated.plus_minus.map(|half| self.length(half)),
            source: source(stated.source),
        }
    }

    /// A stated mass.
    pub fn stated_mass(&self, stated: Stated<Mass>) -> core::Stated<core::Mass> {
        core::Stated {
            value: self.mass(stated.value),
            plus_minus: stated.plus_minus.map(|half| self.mass(half)),
            source: source(stated.source),
        }
    }
}

/// Hours of work.
pub fn hours(value: Hours) -> core::Work {
    core::Work::from_hours(value.0)
}

/// An amount of money, to the nearest hundredth.
pub fn money(value: Money) -> core::Money {
    let hundredths = (value.0 * 100.0).round();
    // The checks hold amounts below 2^53 hundredths; beyond, `as` holds at the largest.
    #[expect(clippy::cast_possible_truncation, reason = "`as` saturates, and NaN cannot be read from a file")]
    core::Money::from_hundredths(hundredths as i64)
}

/// Where a value comes from.
pub const fn source(source: Source) -> core::Source {
    match source {
        Source::Listed => core::Source::Listed,
        Source::Drawing => core::Source::Drawing,
        Source::Caliper => core::Source::Measured(Tool::Caliper),
        Source::Tape => core::Source::Measured(Tool::Tape),
    }
}

fn unknown(path: &str, found: &str, known: &[&str]) -> Problem {
    Problem::new(Code::UnknownUnit, path).with("found", found).with("expected", known.join(", "))
}
