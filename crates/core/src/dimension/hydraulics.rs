//! Hydraulic power, cylinder forces and speeds, oil velocity, and how long a working cycle takes.

use super::input::{Fault, InputError, between, not_negative};
use super::moment::difference;

/// Highest pressure computed with, pascals: 10,000 bar, far above any machine's. Common practice, no source.
const HIGHEST_PRESSURE: f64 = 1e9;
/// Least flow a cycle is driven with, m³/s: a drop a minute. Anything less is a slip of the unit. Common
/// practice, no source.
const LEAST_FLOW: f64 = 1e-9;
/// Smallest bore computed with, metres: a tenth of a millimetre. Common practice, no source.
const SMALLEST_BORE: f64 = 1e-4;

/// Hydraulic power, watts: pressure times flow.
///
/// Units: pascals, m³/s. Valid for: the power in the oil; what the pump's shaft takes is more ([`shaft_power`]).
/// Accuracy: closed form, rounding only.
///
/// # Errors
/// A negative number, one that is not finite, or a pressure above 10,000 bar.
///
/// # Source
/// P = p · Q; in workshop units kW = bar · L/min / 600.
///
/// # Examples
/// 180 bar and 40 L/min are 12 kW.
/// ```
/// use fitup_core::dimension::hydraulic_power;
/// assert!((hydraulic_power(180e5, 0.04 / 60.0).unwrap() - 12_000.0).abs() < 1e-9);
/// ```
pub fn hydraulic_power(pressure: f64, flow: f64) -> Result<f64, InputError> {
    Ok(sound_pressure(pressure)? * not_negative("flow", flow)?)
}

/// Power at the pump's shaft, watts, for a hydraulic power and the pump's overall efficiency.
///
/// # Errors
/// An efficiency outside 0.01 to 1, a negative power, or a number that is not finite.
///
/// # Examples
/// ```
/// use fitup_core::dimension::shaft_power;
/// assert_eq!(shaft_power(6000.0, 0.75), Ok(8000.0));
/// ```
pub fn shaft_power(power: f64, efficiency: f64) -> Result<f64, InputError> {
    /// Least efficiency computed with; any pump's is far above. Common practice, no source.
    const LEAST: f64 = 0.01;
    if !power.is_finite() {
        return Err(InputError { what: "power", fault: Fault::NotFinite });
    }
    if power < 0.0 {
        return Err(InputError { what: "power", fault: Fault::Negative });
    }
    Ok(power / between("efficiency", efficiency, LEAST, 1.0)?)
}

/// Velocity of oil in a line, m/s: flow over the line's inner area.
///
/// # Errors
/// A bore smaller than a tenth of a millimetre, a negative flow, or a number that is not finite.
///
/// # Examples
/// 30 L/min through 12.7 mm.
/// ```
/// use fitup_core::dimension::line_velocity;
/// assert!((line_velocity(0.03 / 60.0, 0.0127).unwrap() - 3.947_050_48).abs() < 1e-7);
/// ```
pub fn line_velocity(flow: f64, bore: f64) -> Result<f64, InputError> {
    let flow = not_negative("flow", flow)?;
    Ok(flow / disc(between("line-bore", bore, SMALLEST_BORE, super::LARGEST)?))
}

/// A cylinder with a rod on one side, both above zero and the rod thinner than the bore.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cylinder {
    bore: f64,
    rod: f64,
}

/// Which way a cylinder moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Travel {
    /// Rod out: the whole bore works.
    Extend,
    /// Rod in: the ring round the rod works.
    Retract,
}

impl Cylinder {
    /// A cylinder of this bore and rod diameter, metres; a rod of 0 makes both sides alike.
    ///
    /// # Errors
    /// A bore smaller than a tenth of a millimetre, a negative rod, a rod as thick as the bore, or a number that
    /// is not finite.
    pub fn new(bore: f64, rod: f64) -> Result<Self, InputError> {
        between("bore", bore, SMALLEST_BORE, super::LARGEST)?;
        not_negative("rod", rod)?;
        if difference(bore, rod) <= 0.0 {
            return Err(InputError { what: "bore", fault: Fault::TooShort });
        }
        Ok(Self { bore, rod })
    }

    /// Area that works, m².
    pub fn area(self, travel: Travel) -> f64 {
        match travel {
            Travel::Extend => disc(self.bore),
            Travel::Retract => core::f64::consts::FRAC_PI_4 * (self.bore - self.rod) * (self.bore + self.rod),
        }
    }

    /// Force at a pressure, newtons, without friction and back pressure.
    ///
    /// # Errors
    /// A negative pressure, one above 10,000 bar, or a number that is not finite.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::dimension::{Cylinder, Travel};
    /// let cylinder = Cylinder::new(0.063, 0.036).unwrap();
    /// assert!((cylinder.force(Travel::Extend, 180e5).unwrap() - 56_110.4156).abs() < 1e-4);
    /// assert!((cylinder.force(Travel::Retract, 180e5).unwrap() - 37_788.6472).abs() < 1e-4);
    /// ```
    pub fn force(self, travel: Travel, pressure: f64) -> Result<f64, InputError> {
        Ok(sound_pressure(pressure)? * self.area(travel))
    }

    /// Speed at a flow, m/s, without leakage.
    ///
    /// # Errors
    /// A negative flow, or a number that is not finite.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::dimension::{Cylinder, Travel};
    /// let cylinder = Cylinder::new(0.063, 0.036).unwrap();
    /// assert!((cylinder.speed(Travel::Extend, 0.025 / 60.0).unwrap() - 0.133_665_023).abs() < 1e-9);
    /// ```
    pub fn speed(self, travel: Travel, flow: f64) -> Result<f64, InputError> {
        Ok(not_negative("flow", flow)? / self.area(travel))
    }
}

/// One stroke of a working cycle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stroke {
    /// The cylinder that moves.
    pub cylinder: Cylinder,
    /// How far, metres.
    pub length: f64,
    /// Which way.
    pub travel: Travel,
    /// Most flow its valve or hose lets through, m³/s, if anything limits it.
    pub most_flow: Option<f64>,
    /// How many such strokes the cycle has; two cylinders side by side count twice.
    pub count: f64,
}

/// Time of a working cycle whose strokes follow one another, seconds.
///
/// Units: m³/s. Valid for: one stroke at a time with the whole flow, without the operator's pauses. Accuracy: closed
/// form, rounding only. Each stroke takes count · area · length / flow, where the flow is the supply's or what its
/// valve lets through, whichever is less.
///
/// # Errors
/// A supply or limit below 10⁻⁹ m³/s, a negative length or count, or a number that is not finite.
///
/// # Source
/// Volume over flow.
///
/// # Examples
/// A cylinder of 80 mm extending 600 mm at 40 L/min takes 4.52 s; at half the flow twice that.
/// ```
/// use fitup_core::dimension::{Cylinder, Stroke, Travel, cycle_time};
/// let cylinder = Cylinder::new(0.08, 0.045).unwrap();
/// let stroke = Stroke { cylinder, length: 0.6, travel: Travel::Extend, most_flow: None, count: 1.0 };
/// assert!((cycle_time(&[stroke], 0.04 / 60.0).unwrap() - 4.523_893_42).abs() < 1e-8);
/// let limited = Stroke { most_flow: Some(0.02 / 60.0), ..stroke };
/// assert!((cycle_time(&[limited], 0.04 / 60.0).unwrap() - 9.047_786_84).abs() < 1e-8);
/// ```
pub fn cycle_time(strokes: &[Stroke], supply: f64) -> Result<f64, InputError> {
    driving("supply", supply)?;
    strokes.iter().try_fold(0.0, |time, stroke| {
        let most = stroke.most_flow.map(|most| driving("most-flow", most)).transpose()?;
        let flow = most.map_or(supply, |most| most.min(supply));
        let volume = stroke.cylinder.area(stroke.travel) * not_negative("stroke", stroke.length)?;
        Ok(time + not_negative("count", stroke.count)? * volume / flow)
    })
}

fn disc(diameter: f64) -> f64 {
    core::f64::consts::FRAC_PI_4 * diameter * diameter
}

fn sound_pressure(pressure: f64) -> Result<f64, InputError> {
    let fault = if !pressure.is_finite() {
        Fault::NotFinite
    } else if pressure < 0.0 {
        Fault::Negative
    } else if pressure > HIGHEST_PRESSURE {
        Fault::Above(HIGHEST_PRESSURE)
    } else {
        return Ok(pressure);
    };
    Err(InputError { what: "pressure", fault })
}

fn driving(what: &'static str, flow: f64) -> Result<f64, InputError> {
    between(what, flow, LEAST_FLOW, super::LARGEST)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_a_rod_both_sides_are_alike() {
        let cylinder = Cylinder::new(0.05, 0.0).expect("sound");
        assert!((cylinder.area(Travel::Extend) - cylinder.area(Travel::Retract)).abs() < 1e-18);
    }

    #[test]
    fn a_valve_that_lets_more_through_than_the_supply_changes_nothing() {
        let cylinder = Cylinder::new(0.05, 0.03).expect("sound");
        let free = Stroke { cylinder, length: 0.4, travel: Travel::Retract, most_flow: None, count: 2.0 };
        let wide = Stroke { most_flow: Some(1e-3), ..free };
        assert_eq!(cycle_time(&[free], 5e-4), cycle_time(&[wide], 5e-4));
        assert_eq!(cycle_time(&[], 5e-4), Ok(0.0));
    }

    #[test]
    fn unsound_numbers_are_named() {
        assert_eq!(Cylinder::new(0.0, 0.0).map_err(|e| e.what), Err("bore"));
        assert_eq!(Cylinder::new(0.05, 0.05).map_err(|e| e.fault), Err(Fault::TooShort));
        assert_eq!(Cylinder::new(0.05, -0.01).map_err(|e| e.what), Err("rod"));
        assert_eq!(hydraulic_power(2e9, 1e-3).map_err(|e| e.what), Err("pressure"));
        assert_eq!(hydraulic_power(1e5, -1e-3).map_err(|e| e.what), Err("flow"));
        assert_eq!(shaft_power(1.0, 85.0).map_err(|e| e.what), Err("efficiency"));
        assert_eq!(shaft_power(f64::NAN, 0.8).map_err(|e| e.what), Err("power"));
        assert_eq!(line_velocity(1e-3, 0.0).map_err(|e| e.what), Err("line-bore"));
        assert_eq!(cycle_time(&[], 0.0).map_err(|e| e.what), Err("supply"));
        let cylinder = Cylinder::new(0.05, 0.03).expect("sound");
        let stroke = Stroke { cylinder, length: -0.4, travel: Travel::Extend, most_flow: None, count: 1.0 };
        assert_eq!(cycle_time(&[stroke], 1e-3).map_err(|e| e.what), Err("stroke"));
        let shut = Stroke { length: 0.4, most_flow: Some(0.0), ..stroke };
        assert_eq!(cycle_time(&[shut], 1e-3).map_err(|e| e.what), Err("most-flow"));
    }
}
