//! The shortest ramp that the machine clears by a wanted margin.

use super::{Facing, Ramp, Rider, extent, least_vertical};
use crate::dimension::input::{Fault, InputError, between, not_negative, positive, sound, sound_points};
use crate::plane::Point;

/// A deck to load onto and the margin to keep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadingJob {
    /// Height of the deck above the ground, metres.
    pub deck_height: f64,
    /// Least vertical clearance wanted, metres.
    pub clearance: f64,
    /// Angle of the beaver tail, radians.
    pub beaver_angle: f64,
    /// Length of the beaver tail along its slope, metres; 0 for none.
    pub beaver_length: f64,
    /// Longest ramp considered, metres along the slope.
    pub longest: f64,
    /// Which end of the machine goes up first.
    pub facing: Facing,
}

/// A ramp that clears.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShortestRamp {
    /// Length along the slope, metres.
    pub length: f64,
    /// Angle to the ground, radians.
    pub angle: f64,
}

/// Steepest ramp considered, radians: 60°. Common practice, no source.
const STEEPEST: f64 = core::f64::consts::FRAC_PI_3;

/// Step in angle, radians, below which the search does not creep nearer to a margin just met: a
/// hundredth of a degree. A dip of the clearance narrower than this is less than a millimetre deep.
const LEAST_STEP: f64 = 0.01 * core::f64::consts::PI / 180.0;

/// How far in angle the end of the search may lie from the true one, radians: less than a
/// thousandth of a millimetre of length on any ramp considered.
const CLOSE_ENOUGH: f64 = 1e-11;

/// Clearances this little below the margin count as met, metres: rounding.
const ROUNDING: f64 = 1e-9;

/// Shortest ramp from which on every longer one keeps the margin too, deck height fixed.
///
/// Shape: as for [`ramp_roll`](super::ramp_roll). The deck's height is the ramp's rise and the beaver tail's. Units: metres, radians.
/// Valid for: ramps up to 60° and up to the longest considered; no limit of climbing or grip is applied.
/// Accuracy: 10⁻⁶ m of length. The search goes from the longest ramp upwards in angle, in steps so
/// short that the clearance, which changes with the angle no faster than the machine is long, cannot fall below the margin
/// unseen, but none below a hundredth of a degree.
///
/// `None` when even the longest does not keep the margin: always so for a margin above
/// the clearance on level ground.
///
/// # Errors
/// A deck not above the beaver tail's rise, a longest ramp not above zero, a clearance that is not
/// finite, and as for [`ramp_roll`](super::ramp_roll).
///
/// # Examples
/// A point 1 m behind the axle on the tangent of 30° allows 30° at the foot: a deck of 1 m takes a
/// ramp of 2 m.
/// ```
/// use fitup_core::dimension::{Facing, LoadingJob, Rider, Wheels, shortest_ramp};
/// use fitup_core::plane::Point;
/// let lines = [[Point::new(-1.0, 0.5)]];
/// let rider = Rider { wheels: Wheels { rear: 0.5, front: 0.5, wheelbase: 1.0 }, lines: &lines };
/// let job = LoadingJob { deck_height: 1.0, clearance: 0.0, beaver_angle: 0.0, beaver_length: 0.0, longest: 30.0,
///     facing: Facing::Forward };
/// let shortest = shortest_ramp(&rider, &job).unwrap().unwrap();
/// assert!((shortest.length - 2.0).abs() < 1e-6);
/// ```
pub fn shortest_ramp<L: AsRef<[Point]>>(
    rider: &Rider<'_, L>,
    job: &LoadingJob,
) -> Result<Option<ShortestRamp>, InputError> {
    sound_points("underside", rider.lines)?;
    sound("clearance", job.clearance)?;
    positive("longest", job.longest)?;
    positive("deck-height", job.deck_height)?;
    between("beaver-angle", job.beaver_angle, 0.0, STEEPEST)?;
    not_negative("beaver-length", job.beaver_length)?;
    let tail = job.beaver_length * libm::sin(job.beaver_angle);
    let rise = job.deck_height - tail;
    if rise <= 0.0 {
        return Err(InputError { what: "deck-height", fault: Fault::Below(tail) });
    }
    let length = |angle: f64| rise / libm::sin(angle);
    let ramp = |angle: f64| Ramp {
        angle,
        length: length(angle),
        beaver_angle: job.beaver_angle,
        beaver_length: job.beaver_length,
    };
    let room = |angle: f64| {
        let least = least_vertical(rider, &ramp(angle), job.facing)?;
        Ok(least.map_or(f64::INFINITY, |least| least.value) - job.clearance + ROUNDING)
    };
    if length(STEEPEST) > job.longest {
        return Ok(None);
    }
    let mut angle = libm::asin(rise / job.longest);
    let mut here = room(angle)?;
    if here < 0.0 {
        return Ok(None);
    }
    let reach = machine_length(rider);
    while angle < STEEPEST {
        let next = (angle + (here / reach).max(LEAST_STEP)).min(STEEPEST);
        let there = room(next)?;
        if there < 0.0 {
            angle = last_clear((angle, here), (next, there), room)?;
            break;
        }
        (angle, here) = (next, there);
    }
    Ok(Some(ShortestRamp { length: length(angle), angle }))
}

/// Length from the foremost to the rearmost of wheels and underside, metres.
fn machine_length<L: AsRef<[Point]>>(rider: &Rider<'_, L>) -> f64 {
    let Rider { wheels, lines } = rider;
    let (rearmost, foremost) = extent(lines);
    foremost.max(wheels.wheelbase + wheels.front) - rearmost.min(-wheels.rear)
}

/// The greatest angle between a clear and a fouling one that still clears, by the false-position
/// rule with the kept end's weight halved (Illinois), which never leaves the two.
fn last_clear(
    mut clear: (f64, f64),
    mut fouls: (f64, f64),
    room: impl Fn(f64) -> Result<f64, InputError>,
) -> Result<f64, InputError> {
    let mut kept = 0_i32;
    // Each halving of a weight at least halves the distance in the end; 200 is far beyond any need.
    for _ in 0..200 {
        let width = fouls.0 - clear.0;
        if width <= CLOSE_ENOUGH {
            break;
        }
        let share = clear.1 / (clear.1 - fouls.1);
        // A little past the guess, so that both ends come nearer.
        let middle = clear.0 + (width * share).max(CLOSE_ENOUGH / 2.0).min(width - CLOSE_ENOUGH / 2.0);
        let there = room(middle)?;
        if there >= 0.0 {
            clear = (middle, there);
            fouls.1 /= if kept > 0 { 2.0 } else { 1.0 };
            kept = kept.max(0) + 1;
        } else {
            fouls = (middle, there);
            clear.1 /= if kept < 0 { 2.0 } else { 1.0 };
            kept = kept.min(0) - 1;
        }
    }
    Ok(clear.0)
}
