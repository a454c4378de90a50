//! Tipping load while digging, rated load, and the push that lifts the machine off its line.

use super::input::{Fault, InputError, not_negative, sound};
use super::moment::{PointMass, difference, moment, sound_bodies, span};
use crate::quantity::STANDARD_GRAVITY;

/// Most of the static tipping load that a rated load may be. Unit: 1. Source: SAE J/ISO 10567, as a trade journal
/// tells it.
pub const SHARE_OF_TIPPING: f64 = 0.75;

/// Most of the hydraulic lift that a rated load may be. Unit: 1. Source: SAE J/ISO 10567, as a trade journal
/// tells it.
pub const SHARE_OF_HYDRAULIC: f64 = 0.87;

/// Where the machine stands and lifts while it digs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DigStand {
    /// x of the line it tips over, metres: the stabilisers' feet, or 0 for the rear tyres.
    pub line: f64,
    /// x of the load, metres.
    pub load: f64,
    /// Wheelbase, metres.
    pub wheelbase: f64,
}

/// Which limit governs a rated load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Governs {
    /// The machine would tip first.
    Tipping,
    /// The cylinder would give in first.
    Hydraulic,
}

/// What a machine can lift where it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DigLoads {
    /// Moment of every mass about the line, kg·m; negative when the machine has tipped already.
    pub stabilising_moment: f64,
    /// Load of the front axle with nothing on the arm, standing on the line and the front axle alone, kilograms.
    pub front_unloaded: f64,
    /// Load that just tips it, kilograms; negative when it has tipped already, `None` when
    /// the load lies at or ahead of the line and tips nothing.
    pub tipping: Option<f64>,
    /// What the cylinder lifts, kilograms, as given.
    pub hydraulic: Option<f64>,
    /// Push of the bucket on the ground that takes all load off the line, kilograms; `None` when the bucket does not
    /// lie behind the front axle.
    pub lifting_push: Option<f64>,
}

impl DigLoads {
    /// Whether the machine tips with nothing on the arm.
    pub fn tipped_without_load(&self) -> bool {
        self.stabilising_moment < 0.0
    }

    /// Rated load, kilograms, and what governs it: the least of 75 % of the tipping load and 87 % of the
    /// hydraulic lift, of those that are known. The tipping load is named when both agree.
    pub fn rated(&self) -> Option<(f64, Governs)> {
        let tipping = self.tipping.map(|load| (SHARE_OF_TIPPING * load, Governs::Tipping));
        let hydraulic = self.hydraulic.map(|load| (SHARE_OF_HYDRAULIC * load, Governs::Hydraulic));
        match (tipping, hydraulic) {
            (Some(tipping), Some(hydraulic)) => Some(if hydraulic.0 < tipping.0 { hydraulic } else { tipping }),
            (one, other) => one.or(other),
        }
    }
}

/// Tipping load over the stabilisers or the rear axle, and what goes with it.
///
/// Shape: `bodies` are every mass of the machine, the arm's own parts included where they stand in that pose;
/// `hydraulic` is what the cylinder lifts there, kilograms, if known ([`cylinder_lift`]). Units: metres, kilograms.
/// Frame: the machine's. Valid for: standing still on firm level ground, lifting straight behind; soft ground, slopes
/// and motion tip earlier. Accuracy: closed form, rounding only.
///
/// With S = Σ m (x − line) and q = line − load: tipping load = S / q.
///
/// # Errors
/// A line ahead of the rear axle, a wheelbase shorter than a millimetre, a negative mass, or a number that is
/// not finite.
///
/// # Source
/// Moment balance; the shares of [`DigLoads::rated`]: SAE J/ISO 10567.
///
/// # Examples
/// 1000 kg stand 1.5 m ahead of the line, the load hangs 2 m behind it: 750 kg tip, three quarters are rated.
/// ```
/// use fitup_core::dimension::{DigStand, Governs, PointMass, dig_loads};
/// let stand = DigStand { line: -1.0, load: -3.0, wheelbase: 1.5 };
/// let found = dig_loads(stand, &[PointMass { mass: 1000.0, x: 0.5 }], None).unwrap();
/// assert_eq!(found.tipping, Some(750.0));
/// assert_eq!(found.rated(), Some((562.5, Governs::Tipping)));
/// ```
pub fn dig_loads(stand: DigStand, bodies: &[PointMass], hydraulic: Option<f64>) -> Result<DigLoads, InputError> {
    let DigStand { line, load, wheelbase } = stand;
    if sound("tipping-line", line)? > 0.0 {
        return Err(InputError { what: "tipping-line", fault: Fault::Above(0.0) });
    }
    sound("load-x", load)?;
    span("wheelbase", wheelbase)?;
    sound_bodies(bodies)?;
    if let Some(lift) = hydraulic {
        sound("hydraulic", lift)?;
    }
    let stabilising_moment = moment(bodies, line);
    let over = |moment: f64, lever: f64| (lever > 0.0).then(|| moment / lever);
    Ok(DigLoads {
        stabilising_moment,
        front_unloaded: stabilising_moment / (wheelbase - line),
        tipping: over(stabilising_moment, difference(line, load)),
        hydraulic,
        lifting_push: over(0.0 - moment(bodies, wheelbase), difference(wheelbase, load)),
    })
}

/// A cylinder that lifts an arm about its foot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiftCylinder {
    /// Its force, newtons.
    pub force: f64,
    /// Arm of that force about the foot, metres.
    pub lever: f64,
    /// Level distance of the load from the foot, metres.
    pub load_distance: f64,
}

/// Load a cylinder holds up against the arm's own parts, kilograms; negative when it cannot hold the arm alone.
///
/// Shape: `arm` are the arm's parts, x the level distance of each from the foot. Units: newtons, metres, kilograms.
/// Frame: from the foot outward. Valid for: one pose, no friction. Accuracy: closed form, rounding only.
///
/// # Errors
/// A load distance shorter than a millimetre, a negative force, lever or mass, or a number that is not finite.
///
/// # Source
/// Moment balance about the foot under standard gravity.
///
/// # Examples
/// 9806.65 N on an arm of 1 m hold 1000 kg there, half of that twice as far out, less an arm of 100 kg in the middle.
/// ```
/// use fitup_core::dimension::{LiftCylinder, PointMass, cylinder_lift};
/// let cylinder = LiftCylinder { force: 9806.65, lever: 1.0, load_distance: 2.0 };
/// let lift = cylinder_lift(cylinder, &[PointMass { mass: 100.0, x: 1.0 }]).unwrap();
/// assert!((lift - 450.0).abs() < 1e-9);
/// ```
pub fn cylinder_lift(cylinder: LiftCylinder, arm: &[PointMass]) -> Result<f64, InputError> {
    not_negative("force", cylinder.force)?;
    not_negative("lever", cylinder.lever)?;
    span("load-distance", cylinder.load_distance)?;
    for part in arm {
        not_negative("arm-mass", part.mass)?;
        sound("arm-distance", part.x)?;
    }
    let held = cylinder.force * cylinder.lever / STANDARD_GRAVITY;
    Ok((held - moment(arm, 0.0)) / cylinder.load_distance)
}

#[cfg(test)]
mod tests {
    use super::*;

    const STAND: DigStand = DigStand { line: -0.9, load: -3.0, wheelbase: 1.5 };

    fn of(stand: DigStand, bodies: &[(f64, f64)], hydraulic: Option<f64>) -> DigLoads {
        let bodies: Vec<PointMass> = bodies.iter().map(|&(mass, x)| PointMass { mass, x }).collect();
        dig_loads(stand, &bodies, hydraulic).expect("sound")
    }

    #[test]
    fn a_load_at_or_ahead_of_the_line_tips_nothing() {
        let at = of(DigStand { load: -0.9, ..STAND }, &[(100.0, 0.0)], None);
        assert_eq!((at.tipping, at.rated()), (None, None));
        let hydraulic = of(DigStand { load: 0.5, ..STAND }, &[(100.0, 0.0)], Some(100.0));
        assert_eq!(hydraulic.rated(), Some((87.0, Governs::Hydraulic)));
    }

    #[test]
    fn a_machine_already_tipped_has_a_negative_tipping_load() {
        let found = of(STAND, &[(100.0, -2.0)], None);
        assert!(found.tipped_without_load() && found.tipping.expect("behind the line") < 0.0);
        assert!(found.front_unloaded < 0.0);
    }

    #[test]
    fn a_machine_balanced_on_its_line_has_not_tipped() {
        let found = of(STAND, &[(100.0, -0.8), (100.0, -1.0)], None);
        assert_eq!((found.tipping, found.tipped_without_load()), (Some(0.0), false));
    }

    #[test]
    fn a_bucket_ahead_of_the_front_axle_lifts_nothing_off_the_line() {
        assert_eq!(of(DigStand { load: 1.5, ..STAND }, &[(100.0, 0.0)], None).lifting_push, None);
    }

    #[test]
    fn two_limits_that_agree_name_tipping() {
        // 0.75 of 1160 kg and 0.87 of 1000 kg are both 870 kg.
        let found = of(DigStand { line: 0.0, load: -1.0, wheelbase: 1.5 }, &[(1160.0, 1.0)], Some(1000.0));
        assert_eq!(found.rated(), Some((870.0, Governs::Tipping)));
    }

    #[test]
    fn a_cylinder_too_weak_for_the_arm_alone_lifts_less_than_nothing() {
        let weak = LiftCylinder { force: 100.0, lever: 0.1, load_distance: 2.0 };
        assert!(cylinder_lift(weak, &[PointMass { mass: 50.0, x: 1.0 }]).expect("sound") < 0.0);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |stand| dig_loads(stand, &[], None).expect_err("unsound").what;
        assert_eq!(what(DigStand { line: 0.1, ..STAND }), "tipping-line");
        assert_eq!(what(DigStand { load: f64::NAN, ..STAND }), "load-x");
        assert_eq!(what(DigStand { wheelbase: 0.0, ..STAND }), "wheelbase");
        let lift = |force, lever, load_distance| {
            cylinder_lift(LiftCylinder { force, lever, load_distance }, &[]).expect_err("unsound").what
        };
        assert_eq!(lift(-1.0, 1.0, 1.0), "force");
        assert_eq!(lift(1.0, -1.0, 1.0), "lever");
        assert_eq!(lift(1.0, 1.0, 0.0), "load-distance");
    }
}
