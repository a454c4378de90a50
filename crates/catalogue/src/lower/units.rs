//! From the file's numbers to the core's typed quantities.

use fitup_core::quantity as core;
use fitup_core::quantity::{AngleUnit, FlowUnit, LengthUnit, MassUnit, PowerUnit, PressureUnit, Tool};

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::header;
use crate::wire::value::{Angle, Flow, Hours, Length, Mass, Money, Power, Pressure, Share, Source, Stated, Torque};

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

    /// A pressure of the core in the file's unit, to show.
    pub fn shown_pressure(self, pascals: f64) -> f64 {
        core::Pressure::from_pa(pascals).value_in(self.pressure)
    }

    /// A flow of the core in the file's unit, to show.
    pub fn shown_flow(self, cubic_metres_per_second: f64) -> f64 {
        core::Flow::from_m3_s(cubic_metres_per_second).value_in(self.flow)
    }

    /// A power of the core in the file's unit, to show.
    pub fn shown_power(self, watts: f64) -> f64 {
        core::Power::from_w(watts).value_in(self.power)
    }

    /// An angle of the core in the file's unit, to show.
    pub fn shown_angle(self, radians: f64) -> f64 {
        core::Angle::from_rad(radians).value_in(self.angle)
    }

    /// A mass of the core in the file's unit, to show.
    pub fn shown_mass(self, kilograms: f64) -> f64 {
        core::Mass::from_kg(kilograms).value_in(self.mass)
    }
}

/// Whether a unit of a quantity, as the header names it, is one that is known here.
#[cfg(feature = "tables")]
pub fn is_unit(quantity: &str, unit: &str) -> bool {
    match quantity {
        "length" => LengthUnit::from_symbol(unit).is_some(),
        "mass" => MassUnit::from_symbol(unit).is_some(),
        "pressure" => PressureUnit::from_symbol(unit).is_some(),
        "flow" => FlowUnit::from_symbol(unit).is_some(),
        "power" => PowerUnit::from_symbol(unit).is_some(),
        "angle" => AngleUnit::from_symbol(unit).is_some(),
        _ => unit.len() == 3 && unit.bytes().all(|b| b.is_ascii_uppercase()),
    }
}

/// What the core has for a value of the file.
pub trait Lower {
    /// The core's type.
    type Core;

    /// The core's value; `units` are those of the file's numbers.
    fn lower(&self, units: Units) -> Self::Core;
}

macro_rules! quantities {
    ($($name:ident $unit:ident),+) => { $(
        impl Lower for $name {
            type Core = core::$name;

            fn lower(&self, units: Units) -> core::$name {
                core::$name::new(self.0, units.$unit)
            }
        }
    )+ };
}

quantities!(Length length, Mass mass, Pressure pressure, Flow flow, Power power, Angle angle);

macro_rules! as_they_are {
    ($($name:ty),+) => { $(
        impl Lower for $name {
            type Core = Self;

            fn lower(&self, _: Units) -> Self {
                self.clone()
            }
        }
    )+ };
}

as_they_are!(bool, u8, u16, u32, u64, String);

impl Lower for Share {
    type Core = f64;

    fn lower(&self, _: Units) -> f64 {
        self.0
    }
}

impl Lower for Hours {
    type Core = core::Work;

    fn lower(&self, _: Units) -> core::Work {
        core::Work::from_hours(self.0)
    }
}

impl Lower for Torque {
    type Core = core::Torque;

    fn lower(&self, _: Units) -> core::Torque {
        core::Torque::from_nm(self.0)
    }
}

impl Lower for Money {
    type Core = core::Money;

    /// To the nearest hundredth.
    fn lower(&self, _: Units) -> core::Money {
        let hundredths = (self.0 * 100.0).round();
        // The checks hold amounts below 2^53 hundredths; beyond, `as` holds at the largest.
        #[expect(clippy::cast_possible_truncation, reason = "`as` saturates, and NaN cannot be read from a file")]
        core::Money::from_hundredths(hundredths as i64)
    }
}

impl Lower for Source {
    type Core = core::Source;

    fn lower(&self, _: Units) -> core::Source {
        match self {
            Self::Listed => core::Source::Listed,
            Self::Drawing => core::Source::Drawing,
            Self::Caliper => core::Source::Measured(Tool::Caliper),
            Self::Tape => core::Source::Measured(Tool::Tape),
        }
    }
}

impl<T: Lower> Lower for Stated<T> {
    type Core = core::Stated<T::Core>;

    fn lower(&self, units: Units) -> Self::Core {
        core::Stated {
            value: self.value.lower(units),
            plus_minus: self.plus_minus.lower(units),
            source: self.source.lower(units),
        }
    }
}

impl<T: Lower> Lower for Option<T> {
    type Core = Option<T::Core>;

    fn lower(&self, units: Units) -> Self::Core {
        self.as_ref().map(|value| value.lower(units))
    }
}

impl<T: Lower> Lower for Vec<T> {
    type Core = Vec<T::Core>;

    fn lower(&self, units: Units) -> Self::Core {
        self.iter().map(|value| value.lower(units)).collect()
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
