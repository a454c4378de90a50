//! From the file's numbers to the core's typed quantities.

use fitup_core::quantity as core;
use fitup_core::quantity::{AngleUnit, FlowUnit, LengthUnit, MassUnit, PowerUnit, PressureUnit, Tool};

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
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
    are_known: bool,
}

impl Units {
    /// The units of a header. A unit that nobody knows is reported; its SI unit stands in for it,
    /// so that the checks can go on.
    pub fn of(header: &header::Units, report: &mut Report) -> Self {
        let top = At::top("units");
        let mut are_known = true;
        macro_rules! unit {
            ($field:ident, $unit:ident, $instead:ident) => {
                $unit::from_symbol(&header.$field).unwrap_or_else(|| {
                    are_known = false;
                    let known: Vec<_> = $unit::ALL.iter().map(|unit| unit.symbol()).collect();
                    report_unknown(report, top.field(stringify!($field)), &header.$field, &known);
                    $unit::$instead
                })
            };
        }
        let units = Self {
            length: unit!(length, LengthUnit, Metre),
            mass: unit!(mass, MassUnit, Kilogram),
            pressure: unit!(pressure, PressureUnit, Pascal),
            flow: unit!(flow, FlowUnit, CubicMetrePerSecond),
            power: unit!(power, PowerUnit, Watt),
            angle: unit!(angle, AngleUnit, Radian),
            // Set last: by now every unit has been looked up.
            are_known,
        };
        if header.money.len() != 3 || !header.money.bytes().all(|b| b.is_ascii_uppercase()) {
            let problem = Problem::new(Code::UnknownCurrency, top.field("money"));
            report.add(problem.with("found", shortened(&header.money)));
        }
        units
    }

    /// Whether none of them stands in for another.
    pub const fn are_known(self) -> bool {
        self.are_known
    }

    /// A length of the core in the file's unit, to show.
    pub fn shown_length(self, metres: f64) -> f64 {
        core::Length::from_m(metres).value_in(self.length)
    }

    /// A mass of the core in the file's unit, to show.
    pub fn shown_mass(self, kilograms: f64) -> f64 {
        core::Mass::from_kg(kilograms).value_in(self.mass)
    }

    /// A length.
    pub fn length(self, value: Length) -> core::Length {
        core::Length::new(value.0, self.length)
    }

    /// A mass.
    pub fn mass(self, value: Mass) -> core::Mass {
        core::Mass::new(value.0, self.mass)
    }

    /// A pressure.
    pub fn pressure(self, value: Pressure) -> core::Pressure {
        core::Pressure::new(value.0, self.pressure)
    }

    /// A flow.
    pub fn flow(self, value: Flow) -> core::Flow {
        core::Flow::new(value.0, self.flow)
    }

    /// A power.
    pub fn power(self, value: Power) -> core::Power {
        core::Power::new(value.0, self.power)
    }

    /// An angle.
    pub fn angle(self, value: Angle) -> core::Angle {
        core::Angle::new(value.0, self.angle)
    }

    /// A stated length.
    pub fn stated_length(self, stated: Stated<Length>) -> core::Stated<core::Length> {
        core::Stated {
            value: self.length(stated.value),
            plus_minus: stated.plus_minus.map(|half| self.length(half)),
            source: source(stated.source),
        }
    }

    /// A stated mass.
    pub fn stated_mass(self, stated: Stated<Mass>) -> core::Stated<core::Mass> {
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

fn report_unknown(report: &mut Report, at: At<'_>, found: &str, known: &[&str]) {
    let problem = Problem::new(Code::UnknownUnit, at).with("found", shortened(found));
    let problem = problem.with("expected", known.join(", "));
    let suggestion = report.nearest(found, known.iter().copied());
    report.add(match suggestion {
        Some(near) => problem.with("suggestion", near),
        None => problem,
    });
}
