//! Rear power take-off shafts by type.
//!
//! Speed alone does not name a shaft: a 35 mm shaft may be type 1 or type 2.

/// The shaft types of ISO 500-1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ShaftType {
    /// 35 mm, 6 straight splines.
    One,
    /// 35 mm, 21 involute splines.
    Two,
    /// 45 mm, 20 involute splines.
    Three,
    /// 57.5 mm, 22 involute splines.
    Four,
}

/// The shape of the splines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spline {
    /// Straight-sided.
    Straight,
    /// Involute.
    Involute,
}

/// What makes a shaft type.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shaft {
    /// Nominal diameter, metres.
    pub diameter: f64,
    /// Number of splines.
    pub splines: u8,
    /// Their shape.
    pub spline: Spline,
    /// Rated speed, revolutions per minute.
    pub speed: u16,
    /// Greatest power recommended at the rated speed, watts.
    pub most_power: f64,
}

/// Track width above which ISO 500-1 holds; at or below it ISO 500-2, as for many compact tractors. Metres.
///
/// Source: ISO 500-1:2014, clause 1.
pub const TRACK_SPLIT: f64 = 1.150;

/// Clearance kept free all round the centre of the shaft's end, metres.
///
/// Source: tractor construction safety code, 8.1.1 (hosted by a law library, title not verified).
pub const END_CLEARANCE: f64 = 0.080;

impl ShaftType {
    /// Every type.
    pub const ALL: [Self; 4] = [Self::One, Self::Two, Self::Three, Self::Four];

    /// The type with this number.
    pub const fn numbered(number: u8) -> Option<Self> {
        match number {
            1 => Some(Self::One),
            2 => Some(Self::Two),
            3 => Some(Self::Three),
            4 => Some(Self::Four),
            _ => None,
        }
    }

    /// Its shaft.
    ///
    /// # Source
    /// Diameters and splines: ISO 500-3:2014, speeds: ISO 500-1:2014, both through an encyclopedia that cites them. Powers: ISO
    /// 500-1:2014, table 1 (from memory, low confidence; older texts give 48 kW for type 1).
    ///
    /// # Examples
    /// ```
    /// use fitup_core::fit::mating::power_take_off::ShaftType;
    /// let shaft = ShaftType::One.shaft();
    /// assert_eq!((shaft.diameter, shaft.splines, shaft.speed), (0.035, 6, 540));
    /// ```
    pub const fn shaft(self) -> Shaft {
        use Spline::{Involute, Straight};
        let (diameter, splines, spline, speed, most_power) = match self {
            Self::One => (35.0e-3, 6, Straight, 540, 60e3),
            Self::Two => (35.0e-3, 21, Involute, 1000, 115e3),
            Self::Three => (45.0e-3, 20, Involute, 1000, 275e3),
            Self::Four => (57.5e-3, 22, Involute, 1300, 450e3),
        };
        Shaft { diameter, splines, spline, speed, most_power }
    }
}

/// How far the speed may leave a design speed under load, revolutions per minute either way; `None` for other speeds.
///
/// # Source
/// Tractor construction safety code, 8.2.2 (hosted by a law library, title not verified).
pub const fn speed_band(design_speed: u16) -> Option<u16> {
    match design_speed {
        540 => Some(10),
        1000 => Some(25),
        _ => None,
    }
}

/// Torque of a shaft, newton metres, from power in watts and speed in revolutions per minute; `None` at or below no speed.
///
/// # Source
/// Definition: power = torque × angular speed; 9549.3 × kW / (1/min).
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::power_take_off::torque;
/// assert!((torque(20e3, 540.0).unwrap() - 353.677651).abs() < 1e-6);
/// ```
pub fn torque(power: f64, speed: f64) -> Option<f64> {
    let torque = power / (core::f64::consts::TAU * speed / 60.0);
    (speed > 0.0 && torque.is_finite()).then_some(torque)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_lead_to_their_type() {
        for (number, shaft_type) in (1..).zip(ShaftType::ALL) {
            assert_eq!(ShaftType::numbered(number), Some(shaft_type));
        }
        assert_eq!((ShaftType::numbered(0), ShaftType::numbered(5)), (None, None));
    }

    #[test]
    fn no_two_types_share_diameter_and_splines() {
        for a in ShaftType::ALL {
            for b in ShaftType::ALL {
                let same = (a.shaft().diameter, a.shaft().splines) == (b.shaft().diameter, b.shaft().splines);
                assert_eq!(same, a == b);
            }
        }
    }

    #[test]
    fn a_shaft_that_does_not_turn_has_no_torque() {
        assert_eq!((torque(1e3, 0.0), torque(1e3, -540.0), torque(f64::NAN, 540.0)), (None, None, None));
        assert!((torque(30e3, 1000.0).unwrap() - 286.478_898).abs() < 1e-5);
    }

    #[test]
    fn only_the_design_speeds_have_a_band() {
        assert_eq!((speed_band(540), speed_band(1000), speed_band(750)), (Some(10), Some(25), None));
    }
}
