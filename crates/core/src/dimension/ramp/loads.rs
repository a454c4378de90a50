//! What stands on each axle while the machine is driven over a ramp.

use super::profile::Ramp;
use super::rolling::{Rolling, Stage};
use super::{Facing, Wheels};
use crate::dimension::input::{Fault, InputError, positive, sound};
use crate::plane::Point;

/// A machine's weight and where it acts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weight {
    /// Mass of all that is driven up, kilograms.
    pub mass: f64,
    /// Centre of gravity on level ground, (x, z), metres.
    pub centre: Point,
}

/// The least loads of both axles over a drive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RampLoads {
    /// Of the front axle.
    pub front: LeastLoad,
    /// Of the rear axle.
    pub rear: LeastLoad,
}

/// The least load of an axle, and where.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeastLoad {
    /// Share of the whole weight, measured straight down; negative when the axle lifts.
    pub share: f64,
    /// The same as a mass, kilograms.
    pub load: f64,
    /// x of the rear axle there, metres from the ramp's foot.
    pub rear_axle: f64,
    /// Pitch there, radians, the machine's own nose up.
    pub pitch: f64,
}

/// A share this little below 0 is rounding. Own choice.
const LIFTS: f64 = 1e-9;

/// Another place takes over as the least only where it is less by this share: rounding.
const ROUNDING: f64 = 1e-13;

/// Parts a stage is cut into before the turning points of the share are looked for. Within a stage both wheels run on one straight
/// or one arc each, so that the share turns once or twice; more parts cost time only. Own choice.
const PARTS: u32 = 32;

/// Golden-section steps within a part: they narrow it to a ten-thousand-millionth.
const STEPS: u32 = 48;

impl RampLoads {
    /// Whether an axle lifts somewhere on the way: the machine tips over.
    pub fn tips(&self) -> bool {
        self.front.share < -LIFTS || self.rear.share < -LIFTS
    }
}

/// The least load on each axle while the machine is driven over a ramp onto the level deck.
///
/// Each wheel stands where its circle touches the profile: on the face below it, on the corner while it turns over a crest. Both forces
/// from the ground are vertical; friction carries what acts along the slope. Where a wheel touches two points, its contact jumps from one to the
/// other, and both sides of the jump count.
///
/// # Shape
/// As for [`ramp_roll`](super::ramp_roll), with the whole weight in one point of the rigid machine.
///
/// # Units
/// Metres, radians, kilograms.
///
/// # Valid for
/// Standing still or driving steadily. Tyres, springs and an oscillating axle are not modelled.
///
/// # Accuracy
/// 10⁻⁹ of the weight: the share is smooth while each wheel stays on one face or crest, and its turning points there are searched out.
///
/// # Errors
/// A mass not above zero; as for [`ramp_roll`](super::ramp_roll); wheels so near each other that both
/// touch the profile over the same x.
///
/// # Source
/// Statics; no standard.
///
/// # Examples
/// On an even slope of 16° the front axle is left with (x − z tan 16°) / w of the weight.
/// ```
/// use fitup_core::dimension::{Facing, Ramp, Weight, Wheels, ramp_loads};
/// use fitup_core::plane::Point;
/// let wheels = Wheels { rear: 0.38, front: 0.28, wheelbase: 1.65 };
/// let ramp = Ramp { angle: 16_f64.to_radians(), length: 6.0, ..Ramp::default() };
/// let weight = Weight { mass: 1670.0, centre: Point::new(0.24251497, 0.764071856) };
/// let loads = ramp_loads(wheels, weight, &ramp, Facing::Forward).unwrap();
/// assert!((loads.front.share - 0.0141945).abs() < 1e-7);
/// assert!(!loads.tips());
/// ```
pub fn ramp_loads(wheels: Wheels, weight: Weight, ramp: &Ramp, facing: Facing) -> Result<RampLoads, InputError> {
    positive("mass", weight.mass)?;
    sound("centre-x", weight.centre.x)?;
    sound("centre-z", weight.centre.y)?;
    // Beyond the wheels all is level, and the share no longer changes.
    let rolling = Rolling::new(wheels, ramp, facing, (0.0, wheels.wheelbase))?;
    let drive = Drive { rolling: &rolling, centre: rolling.seen(weight.centre) };
    let mut ends = [None; 2];
    for stage in 0..rolling.stages.len() {
        for (least, end) in ends.iter_mut().zip([End::Leading, End::Trailing]) {
            drive.look(stage, end, least)?;
        }
    }
    let told = |least: Option<Found>| {
        let Found { share, stage, x } = least?;
        let stand = rolling.stand(&rolling.stages[stage], x)?;
        let (rear_axle, pitch) = (rolling.rear_axle(&stand), rolling.pitch(&stand));
        Some(LeastLoad { share, load: share * weight.mass, rear_axle, pitch })
    };
    let crooked = InputError { what: "wheelbase", fault: Fault::TooShort };
    let [leading, trailing] = [told(ends[0]).ok_or(crooked)?, told(ends[1]).ok_or(crooked)?];
    Ok(match facing {
        Facing::Forward => RampLoads { front: leading, rear: trailing },
        Facing::Backward => RampLoads { front: trailing, rear: leading },
    })
}

/// Which wheel's share.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    Leading,
    Trailing,
}

/// The least share found so far, in a stage with the trailing wheel over `x`.
#[derive(Debug, Clone, Copy)]
struct Found {
    share: f64,
    stage: usize,
    x: f64,
}

/// A drive with the weight in its place.
struct Drive<'a> {
    rolling: &'a Rolling,
    /// Centre of gravity from the trailing wheel's centre, in the direction of travel.
    centre: Point,
}

impl Drive<'_> {
    /// The share of one end with the trailing wheel over `x`.
    ///
    /// # Errors
    /// The two wheels touch the profile over the same x, or the wrong way about.
    fn share(&self, stage: &Stage, end: End, x: f64) -> Result<f64, InputError> {
        let crooked = InputError { what: "wheelbase", fault: Fault::TooShort };
        let stand = self.rolling.stand(stage, x).ok_or(crooked)?;
        let (behind, ahead) = self.rolling.contacts(stage, &stand);
        if ahead - behind <= crate::dimension::SMALLEST {
            return Err(crooked);
        }
        let at = stand.place(self.centre).x;
        let arm = match end {
            End::Leading => at - behind,
            End::Trailing => ahead - at,
        };
        Ok(arm / (ahead - behind))
    }

    /// Takes the least share of one end in a stage, if it is less than the least so far.
    fn look(&self, index: usize, end: End, least: &mut Option<Found>) -> Result<(), InputError> {
        let stage = &self.rolling.stages[index];
        let step = (stage.to - stage.from) / f64::from(PARTS);
        let place = |i: u32| if i == PARTS { stage.to } else { stage.from + step * f64::from(i) };
        let mut shares = Vec::with_capacity(PARTS as usize + 1);
        for i in 0..=PARTS {
            shares.push(self.share(stage, end, place(i))?);
        }
        let mut keep = |share: f64, x: f64| {
            if least.is_none_or(|least| share < least.share - ROUNDING * (1.0 + least.share.abs())) {
                *least = Some(Found { share, stage: index, x });
            }
        };
        for i in 0..=PARTS {
            let at = i as usize;
            let before = shares[at.saturating_sub(1)];
            let after = shares[(at + 1).min(PARTS as usize)];
            keep(shares[at], place(i));
            if shares[at] <= before && shares[at] <= after {
                let (from, to) = (place(i.saturating_sub(1)), place((i + 1).min(PARTS)));
                let (share, x) = self.narrowed(stage, end, from, to)?;
                keep(share, x);
            }
        }
        Ok(())
    }

    /// The least share between two places that hold one turning point, by golden section.
    fn narrowed(&self, stage: &Stage, end: End, mut from: f64, mut to: f64) -> Result<(f64, f64), InputError> {
        let share = |x: f64| self.share(stage, end, x);
        let golden = (5.0_f64.sqrt() - 1.0) / 2.0;
        let (mut left, mut right) = (to - golden * (to - from), from + golden * (to - from));
        let (mut at_left, mut at_right) = (share(left)?, share(right)?);
        for _ in 0..STEPS {
            if at_left <= at_right {
                (to, right, at_right) = (right, left, at_left);
                left = to - golden * (to - from);
                at_left = share(left)?;
            } else {
                (from, left, at_left) = (left, right, at_right);
                right = from + golden * (to - from);
                at_right = share(right)?;
            }
        }
        Ok(if at_left <= at_right { (at_left, left) } else { (at_right, right) })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const WHEELS: Wheels = Wheels { rear: 0.38, front: 0.28, wheelbase: 1.5 };

    fn at(x: f64, z: f64) -> Weight {
        Weight { mass: 1000.0, centre: Point::new(x, z) }
    }

    #[test]
    fn on_level_ground_each_axle_carries_by_the_lever() {
        for facing in [Facing::Forward, Facing::Backward] {
            let loads = ramp_loads(WHEELS, at(0.6, 0.7), &Ramp::default(), facing).expect("sound");
            assert!((loads.front.share - 0.4).abs() < 1e-12 && (loads.rear.load - 600.0).abs() < 1e-9);
            assert!(loads.front.pitch.abs() < 1e-12 && !loads.tips());
        }
    }

    #[test]
    fn a_wheels_contact_jumps_in_a_valley_and_nowhere_else() {
        let ramp = Ramp { angle: 0.3, length: 6.0, ..Ramp::default() };
        let rolling = Rolling::new(WHEELS, &ramp, Facing::Forward, (0.0, 1.5)).expect("sound");
        let touches = |stage: &Stage, x: f64| rolling.contacts(stage, &rolling.stand(stage, x).expect("within"));
        let jumps = rolling.stages.windows(2).map(|pair| {
            let (before, after) = (touches(&pair[0], pair[0].to), touches(&pair[1], pair[1].from));
            (after.0 - before.0, after.1 - before.1)
        });
        let big: Vec<(f64, f64)> = jumps.filter(|jump| jump.0.abs() + jump.1.abs() > 1e-9).collect();
        // From the ground straight below to the ramp: the radius times the sine, the front wheel first.
        let [front, rear] = big[..] else { panic!("{big:?}") };
        assert!(front.0.abs() < 1e-9 && (front.1 - 0.28 * libm::sin(0.3)).abs() < 1e-9, "{front:?}");
        assert!(rear.1.abs() < 1e-9 && (rear.0 - 0.38 * libm::sin(0.3)).abs() < 1e-9, "{rear:?}");
    }

    #[test]
    fn two_wheels_in_two_valleys_jump_together() {
        // Ramp and steeper tail, and a wheelbase that brings both wheels into both valleys at once.
        let (r, ramp) = (0.35, Ramp { angle: 0.2, length: 1.8, beaver_angle: 0.45, beaver_length: 3.0 });
        let (along, up) = (Point::unit(0.2), Point::unit(0.2).quarter_turn());
        let first = Point::new(-r * libm::tan(0.1), r);
        let second = along * (1.8 - r * libm::tan(0.125)) + up * r;
        let wheels = Wheels { rear: r, front: r, wheelbase: first.distance(second) };
        let rolling = Rolling::new(wheels, &ramp, Facing::Forward, (0.0, 1.5)).expect("sound");
        let touches = |stage: &Stage, x: f64| rolling.contacts(stage, &rolling.stand(stage, x).expect("within"));
        let both = rolling.stages.windows(2).filter(|pair| (pair[0].to - first.x).abs() < 1e-9).map(|pair| {
            let (before, after) = (touches(&pair[0], pair[0].to), touches(&pair[1], pair[1].from));
            (after.0 - before.0, after.1 - before.1)
        });
        let both: Vec<(f64, f64)> = both.collect();
        let [(rear, front)] = both[..] else { panic!("{both:?}") };
        assert!((rear - r * libm::sin(0.2)).abs() < 1e-9, "{rear}");
        assert!((front - r * (libm::sin(0.45) - libm::sin(0.2))).abs() < 1e-9, "{front}");
    }

    #[test]
    fn a_share_of_nothing_does_not_tip() {
        let loads = ramp_loads(WHEELS, at(0.0, 0.7), &Ramp::default(), Facing::Forward).expect("sound");
        assert!(loads.front.share.abs() < 1e-12 && !loads.tips());
        let loads = ramp_loads(WHEELS, at(-1e-6, 0.7), &Ramp::default(), Facing::Forward).expect("sound");
        assert!(loads.tips());
    }

    #[test]
    fn what_cannot_be_is_refused_by_name() {
        let what =
            |wheels, weight, ramp: &Ramp| ramp_loads(wheels, weight, ramp, Facing::Forward).expect_err("unsound").what;
        assert_eq!(what(WHEELS, Weight { mass: 0.0, ..at(0.6, 0.7) }, &Ramp::default()), "mass");
        assert_eq!(what(WHEELS, at(f64::NAN, 0.7), &Ramp::default()), "centre-x");
        assert_eq!(what(WHEELS, at(0.6, 1e7), &Ramp::default()), "centre-z");
        // The rear wheel touches a steep ramp ahead of where the front wheel stands on the deck.
        let wheels = Wheels { rear: 1.0, front: 0.1, wheelbase: 0.5 };
        let steep = Ramp { angle: 1.4, length: 0.3, ..Ramp::default() };
        assert_eq!(what(wheels, at(0.6, 0.7), &steep), "wheelbase");
    }
}
