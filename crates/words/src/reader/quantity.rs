//! Masses, angles, pressures, flows, powers, forces, times and shares.

use fitup_core::quantity::{Angle, Flow, Force, Mass, Power, Pressure, Torque, Work};

use super::number::{NO_BREAK, Sign, Zeros, number};
use super::{Reader, Units};

impl Reader {
    /// A mass: whole kilograms or pounds, below ten of them to a tenth.
    pub fn mass(self, mass: Mass) -> String {
        self.mass_signed(mass, Sign::Minus)
    }

    /// A difference of masses, with its sign.
    pub fn mass_more(self, mass: Mass) -> String {
        self.mass_signed(mass, Sign::Both)
    }

    /// A mass that is needed at least: whole kilograms or pounds, rounded up.
    pub fn mass_needed(self, mass: Mass) -> String {
        let (value, unit) = match self.units {
            Units::Metric => (mass.kg(), "kg"),
            Units::Us => (mass.lb(), "lb"),
        };
        // A whole number but for a rounding error stays that number.
        self.with_unit((value - 1e-6).ceil(), 0, Sign::Minus, unit)
    }

    fn mass_signed(self, mass: Mass, sign: Sign) -> String {
        let (value, unit) = match self.units {
            Units::Metric => (mass.kg(), "kg"),
            Units::Us => (mass.lb(), "lb"),
        };
        self.with_unit(value, tenths_below(value, 9.95), sign, unit)
    }

    /// An angle to a tenth of a degree.
    pub fn angle(self, angle: Angle) -> String {
        format!("{}°", number(self.lang, angle.deg(), 1, Zeros::Keep, Sign::Minus))
    }

    /// A difference of angles, with its sign.
    pub fn angle_more(self, angle: Angle) -> String {
        format!("{}°", number(self.lang, angle.deg(), 1, Zeros::Keep, Sign::Both))
    }

    /// A pressure in whole bar or psi.
    pub fn pressure(self, pressure: Pressure) -> String {
        match self.units {
            Units::Metric => self.with_unit(pressure.bar(), 0, Sign::Minus, "bar"),
            Units::Us => self.with_unit(pressure.psi(), 0, Sign::Minus, "psi"),
        }
    }

    /// A volume flow to a tenth.
    ///
    /// Source of the litre's symbol: CLDR 48, `units/short/volume-liter`; both L and l are SI.
    pub fn flow(self, flow: Flow) -> String {
        match self.units {
            Units::Metric => {
                let unit = if self.lang.is_english() { "L/min" } else { "l/min" };
                self.with_unit(flow.l_min(), 1, Sign::Minus, unit)
            }
            Units::Us => {
                let unit = if self.lang.is_english() { "gpm" } else { "gal/min" };
                self.with_unit(flow.gal_min(), 1, Sign::Minus, unit)
            }
        }
    }

    /// A power to a tenth of a kilowatt or horsepower.
    pub fn power(self, power: Power) -> String {
        match self.units {
            Units::Metric => self.with_unit(power.kw(), 1, Sign::Minus, "kW"),
            Units::Us => self.with_unit(power.hp(), 1, Sign::Minus, "hp"),
        }
    }

    /// A force to a tenth of a kilonewton, or in whole pounds-force.
    pub fn force(self, force: Force) -> String {
        match self.units {
            Units::Metric => self.with_unit(force.kn(), 1, Sign::Minus, "kN"),
            Units::Us => self.with_unit(force.lbf(), 0, Sign::Minus, "lbf"),
        }
    }

    /// A tightening torque, whole.
    pub fn torque(self, torque: Torque) -> String {
        match self.units {
            Units::Metric => self.with_unit(torque.nm(), 0, Sign::Minus, "N\u{b7}m"),
            Units::Us => self.with_unit(torque.lbf_ft(), 0, Sign::Minus, "lbf\u{b7}ft"),
        }
    }

    /// Workshop time in hours, to a quarter written as decimals.
    pub fn work(self, work: Work) -> String {
        format!("{}{NO_BREAK}h", number(self.lang, work.hours(), 2, Zeros::Drop, Sign::Minus))
    }

    /// A share in whole percent.
    ///
    /// Source: CLDR 48, `percentFormats`.
    pub fn share(self, share: f64) -> String {
        let digits = number(self.lang, share * 100.0, 0, Zeros::Keep, Sign::Minus);
        if self.lang.is_english() { format!("{digits}%") } else { format!("{digits}{NO_BREAK}%") }
    }

    /// A probability in whole percent that never reads as certain: under 1 % and over 99 % are
    /// said as such.
    pub fn probability(self, share: f64) -> String {
        if share < 0.01 {
            format!("<{NO_BREAK}{}", self.share(0.01))
        } else if share > 0.99 {
            format!(">{NO_BREAK}{}", self.share(0.99))
        } else {
            self.share(share)
        }
    }

    fn with_unit(self, value: f64, decimals: usize, sign: Sign, unit: &str) -> String {
        format!("{}{NO_BREAK}{unit}", number(self.lang, value, decimals, Zeros::Drop, sign))
    }
}

fn tenths_below(value: f64, limit: f64) -> usize {
    usize::from(value.abs() < limit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Lang;

    fn both(write: impl Fn(Reader) -> String) -> [String; 2] {
        [Units::Metric, Units::Us].map(|units| write(Reader::new(Lang::En, units)).replace(NO_BREAK, " "))
    }

    #[test]
    fn each_quantity_is_written_in_the_readers_units() {
        assert_eq!(both(|r| r.mass(Mass::from_kg(1250.4))), ["1,250 kg", "2,757 lb"]);
        assert_eq!(both(|r| r.mass(Mass::from_kg(2.24))), ["2.2 kg", "4.9 lb"]);
        assert_eq!(both(|r| r.mass_more(Mass::from_kg(85.0))), ["+85 kg", "+187 lb"]);
        assert_eq!(both(|r| r.mass_needed(Mass::from_kg(10.2))), ["11 kg", "23 lb"]);
        assert_eq!(both(|r| r.mass_needed(Mass::from_kg(0.46))), ["1 kg", "2 lb"]);
        assert_eq!(both(|r| r.mass_needed(Mass::from_kg(25.0))), ["25 kg", "56 lb"]);
        assert_eq!(both(|r| r.angle(Angle::from_deg(-14.25))), ["\u{2212}14.3°"; 2]);
        assert_eq!(both(|r| r.pressure(Pressure::from_bar(190.0))), ["190 bar", "2,756 psi"]);
        assert_eq!(both(|r| r.flow(Flow::from_l_min(28.0))), ["28 L/min", "7.4 gpm"]);
        assert_eq!(both(|r| r.power(Power::from_hp(25.0))), ["18.6 kW", "25 hp"]);
        assert_eq!(both(|r| r.torque(Torque::from_nm(81.35))), ["81 N·m", "60 lbf·ft"]);
        assert_eq!(both(|r| r.force(Force::from_kn(12.0))), ["12 kN", "2,698 lbf"]);
        assert_eq!(both(|r| r.work(Work::from_hours(1.5))), ["1.5 h"; 2]);
        assert_eq!(both(|r| r.share(0.205)), ["21%"; 2]);
    }

    #[test]
    fn what_is_open_never_reads_as_certain() {
        assert_eq!(both(|r| r.probability(0.998)), ["> 99%"; 2]);
        assert_eq!(both(|r| r.probability(0.001)), ["< 1%"; 2]);
        assert_eq!(both(|r| r.probability(0.62)), ["62%"; 2]);
    }
}
