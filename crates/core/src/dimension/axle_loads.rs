//! Axle loads of the finished machine on level ground, and the ballast that mends them.

use super::input::{InputError, between, not_negative, sound};
use super::moment::{PointMass, difference, moment, sound_bodies, span};

/// What each axle carries, and where the whole balances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AxleLoads {
    /// Mass of everything, kilograms.
    pub total: f64,
    /// Load of the front axle, kilograms; negative when it lifts.
    pub front: f64,
    /// Load of the rear axle, kilograms; negative when it lifts.
    pub rear: f64,
    /// x of the common centre of gravity, metres; `None` when nothing has mass.
    pub centre: Option<f64>,
    /// The wheelbase the loads stand on, metres.
    pub wheelbase: f64,
}

/// What the least front load is a share of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ShareOf {
    /// Of everything that stands on the axles, the ballast included.
    Total,
    /// Of the bare machine's mass, kilograms, a fixed number; the ballast is no part of it.
    Bare(f64),
}

impl AxleLoads {
    /// Front load as a share of the total; `None` when nothing has mass.
    pub fn front_share(&self) -> Option<f64> {
        (self.total > 0.0).then(|| self.front / self.total)
    }

    /// Whether the front axle lifts off the ground.
    pub fn front_lifts(&self) -> bool {
        self.front < 0.0
    }

    /// Whether the rear axle lifts off the ground.
    pub fn rear_lifts(&self) -> bool {
        self.rear < 0.0
    }

    /// Least ballast at `x` that brings the front load up to `share` of a mass, kilograms.
    ///
    /// 0 when the share is met already; `None` when no ballast at `x` does it. Ballast m adds
    /// m · x / wheelbase to the front load and, for a share of the total, m to what the share is of:
    /// m = (share · mass − front) / (x / wheelbase − share), without the last share for the bare mass.
    ///
    /// # Errors
    /// A share outside 0 to 1, a bare mass below zero, or a number that is not finite.
    ///
    /// # Source
    /// Moment balance. The usual share, 20 % of the unladen mass on the front axle, is that of the German federal
    /// transport ministry's leaflet on mounted implements (Merkblatt für Anbaugeräte).
    ///
    /// # Examples
    /// 100 kg on the front axle of 1000 kg; ballast two wheelbases ahead: 0.2 · 1000 − 100 = 100 kg are
    /// missing, each kilogram brings 2 − 0.2 of total, 2 of bare mass.
    /// ```
    /// use fitup_core::dimension::{PointMass, ShareOf, axle_loads};
    /// let loads = axle_loads(1.0, &[PointMass { mass: 1000.0, x: 0.1 }]).unwrap();
    /// assert!((loads.ballast(2.0, 0.2, ShareOf::Total).unwrap().unwrap() - 100.0 / 1.8).abs() < 1e-9);
    /// assert!((loads.ballast(2.0, 0.2, ShareOf::Bare(1000.0)).unwrap().unwrap() - 50.0).abs() < 1e-9);
    /// ```
    pub fn ballast(&self, x: f64, share: f64, of: ShareOf) -> Result<Option<f64>, InputError> {
        sound("ballast-x", x)?;
        between("share", share, 0.0, 1.0)?;
        let (mass, lost) = match of {
            ShareOf::Total => (self.total, share),
            ShareOf::Bare(mass) => (not_negative("bare-mass", mass)?, 0.0),
        };
        let lever = x / self.wheelbase;
        let missing = difference(share * mass, self.front);
        let gain = difference(lever, lost);
        Ok(if missing <= 0.0 { Some(0.0) } else { (gain > 0.0).then(|| missing / gain) })
    }
}

/// Axle loads: the moment balance of every mass on the machine about its two axles.
///
/// Shape: the bodies in any order. Units: kilograms, metres; a load is the mass whose weight it
/// equals. Frame: the machine's, level ground, at rest. Valid for: a rigid machine on two axles; a negative load
/// says the axle lifts and is the pull that would hold it down. Accuracy: closed form, rounding only.
///
/// # Errors
/// A wheelbase shorter than a millimetre, a negative mass, or a number that is not finite.
///
/// # Source
/// Moment balance of a rigid body.
///
/// # Examples
/// 900 kg a third of the way from the rear axle to the front axle.
/// ```
/// use fitup_core::dimension::{PointMass, axle_loads};
/// let loads = axle_loads(1.5, &[PointMass { mass: 900.0, x: 0.5 }]).unwrap();
/// assert_eq!((loads.front, loads.rear), (300.0, 600.0));
/// ```
pub fn axle_loads(wheelbase: f64, bodies: &[PointMass]) -> Result<AxleLoads, InputError> {
    span("wheelbase", wheelbase)?;
    sound_bodies(bodies)?;
    let total = bodies.iter().fold(0.0, |total, body| total + body.mass);
    let about_rear = moment(bodies, 0.0);
    let about_front = moment(bodies, wheelbase);
    Ok(AxleLoads {
        total,
        front: about_rear / wheelbase,
        rear: -about_front / wheelbase + 0.0,
        centre: (total > 0.0).then(|| about_rear / total),
        wheelbase,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(bodies: &[(f64, f64)]) -> AxleLoads {
        let bodies: Vec<PointMass> = bodies.iter().map(|&(mass, x)| PointMass { mass, x }).collect();
        axle_loads(1.5, &bodies).expect("sound")
    }

    #[test]
    fn an_overhanging_mass_lifts_the_far_axle_and_says_so() {
        let loads = of(&[(500.0, 0.3), (300.0, -1.0)]);
        assert!((loads.front + 100.0).abs() < 1e-9);
        assert!(loads.front_lifts() && !loads.rear_lifts());
        let nose = of(&[(500.0, 1.8)]);
        assert!((nose.rear + 100.0).abs() < 1e-9);
        assert!(nose.rear_lifts());
    }

    #[test]
    fn an_axle_that_just_carries_nothing_does_not_lift() {
        let loads = of(&[(900.0, 0.65), (650.0, -0.9)]);
        assert_eq!((loads.front, loads.front_lifts(), loads.front_share()), (0.0, false, Some(0.0)));
        let loads = of(&[(100.0, 1.5)]);
        assert_eq!((loads.rear, loads.rear_lifts()), (0.0, false));
    }

    #[test]
    fn nothing_has_no_share_and_no_centre() {
        let loads = of(&[]);
        assert_eq!((loads.total, loads.front_share(), loads.centre), (0.0, None, None));
    }

    #[test]
    fn ballast_is_nothing_when_met_and_none_when_no_mass_does_it() {
        let loads = of(&[(1000.0, 0.3)]);
        assert_eq!(loads.ballast(-5.0, 0.2, ShareOf::Total), Ok(Some(0.0)));
        assert_eq!(loads.ballast(0.45, 0.3, ShareOf::Total), Ok(None));
        assert_eq!(loads.ballast(0.0, 0.3, ShareOf::Bare(1000.0)), Ok(None));
        let found = loads.ballast(0.45, 0.3, ShareOf::Bare(1000.0)).expect("sound").expect("reachable");
        assert!((found - 100.0 / 0.3).abs() < 1e-9);
    }

    #[test]
    fn the_ballast_found_brings_exactly_the_share() {
        let bodies = [(900.0, 0.65), (420.0, -1.1)];
        let found = of(&bodies).ballast(2.0, 0.2, ShareOf::Total).expect("sound").expect("reachable");
        let share = of(&[bodies[0], bodies[1], (found, 2.0)]).front_share().expect("has mass");
        assert!((share - 0.2).abs() < 1e-12);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |result: Result<AxleLoads, InputError>| result.expect_err("unsound").what;
        assert_eq!(what(axle_loads(0.0, &[])), "wheelbase");
        assert_eq!(what(axle_loads(1.5, &[PointMass { mass: -1.0, x: 0.0 }])), "mass");
        assert_eq!(of(&[]).ballast(1.0, 20.0, ShareOf::Total).expect_err("a percentage").what, "share");
        assert_eq!(of(&[]).ballast(1.0, 0.2, ShareOf::Bare(-1.0)).expect_err("negative").what, "bare-mass");
    }
}
