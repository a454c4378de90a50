//! Loading over a ramp: how near the underside comes to ground, ramp, beaver tail and deck.
//!
//! Wheels are rigid circles; each centre runs on the highest place any point of the profile asks
//! for, so that a wheel may touch two faces in a valley and pivots on a crest. The machine is rigid:
//! the distance of the two centres stays, and the pitch follows from where they are.

mod bunch;
mod gap;
mod least;
mod loads;
mod profile;
mod rolling;
mod shortest;
mod track;

use gap::{Measure, Piece};
use least::Least;
pub use loads::{LeastLoad, RampLoads, Weight, ramp_loads};
pub use profile::Ramp;
use rolling::Rolling;
pub use shortest::{LoadingJob, ShortestRamp, shortest_ramp};

use super::Wheels;
use super::input::{InputError, sound_points};
use crate::plane::Point;

/// Which end of the machine goes up first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Facing {
    /// Front wheels first.
    Forward,
    /// Rear wheels first.
    Backward,
}

/// The machine's side view, as far as a ramp is concerned.
#[derive(Debug, Clone, Copy)]
pub struct Rider<'a, L> {
    /// Its wheels.
    pub wheels: Wheels,
    /// Open polylines of its underside, (x, z); a line of one point is that point.
    pub lines: &'a [L],
}

/// What a drive over a ramp comes to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RampRoll {
    /// The nearest the underside comes to the profile; `None` without an underside.
    pub nearest: Option<Nearest>,
    /// Least pitch, radians, the machine's own nose up.
    pub least_pitch: f64,
    /// Greatest pitch, radians.
    pub greatest_pitch: f64,
}

/// Where and how near.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nearest {
    /// Least clearance straight down, metres; negative when the underside would be below the profile.
    pub vertical: f64,
    /// x of the rear axle where the least vertical clearance occurs, metres from the ramp's foot.
    pub rear_axle: f64,
    /// Pitch there, radians, the machine's own nose up.
    pub pitch: f64,
    /// Index of the line that comes nearest.
    pub line: usize,
    /// The point of it that comes nearest, in the machine's own frame.
    pub point: Point,
    /// Where that point then is, over the profile.
    pub place: Point,
}

/// How the machine stands on a ramp.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RampStand {
    /// Rear wheel's centre, from the ramp's foot.
    pub rear: Point,
    /// Front wheel's centre.
    pub front: Point,
    /// Pitch, radians, the machine's own nose up.
    pub pitch: f64,
    facing: Facing,
    rear_radius: f64,
}

impl RampStand {
    /// Where a point of the machine's side view is.
    #[must_use]
    pub fn place(&self, point: Point) -> Point {
        let turned = (point - Point::new(0.0, self.rear_radius)).turned(Point::unit(self.pitch));
        match self.facing {
            Facing::Forward => self.rear + turned,
            Facing::Backward => self.rear + Point::new(-turned.x, turned.y),
        }
    }
}

/// Rolls the machine from level ground over the ramp onto the level deck.
///
/// Shape: both wheels and the underside over ground, ramp and, where there is one, beaver tail; the
/// foot of the ramp is x = 0. Backward, the machine is mirrored and its rear wheels go up first. Units: metres,
/// radians. Valid for: ramps and tails from 0 to 85°; rigid wheels and machine.
/// Accuracy: 10⁻¹⁰ m in the least clearances. The drive is cut into stages in which each wheel stays on one
/// face or crest; within them stretches are halved until a lower bound shows that nothing nearer is left.
///
/// # Errors
/// Radii or a wheelbase not above zero, a ramp with negative lengths or angles outside 0 to 85°, a
/// wheelbase too short for wheels of such different size to climb such a slope, or a number that is not finite.
///
/// # Source
/// Plane geometry; no standard. Level ground and ramp are both tangent to the tyre's arc when it stands in the
/// corner, so that a rear overhang clears the ground there when the departure angle (49 CFR 523.2)
/// is not below the ramp's.
///
/// # Examples
/// An overhang on the tangent of 30° just touches the ground at the foot of a ramp of 30°.
/// ```
/// use fitup_core::dimension::{Facing, Ramp, Rider, Wheels, ramp_roll};
/// use fitup_core::plane::Point;
/// let lines = [[Point::new(-1.0, 0.5)]];
/// let rider = Rider { wheels: Wheels { rear: 0.5, front: 0.5, wheelbase: 2.0 }, lines: &lines };
/// let ramp = Ramp { angle: 30_f64.to_radians(), length: 4.0, ..Ramp::default() };
/// let nearest = ramp_roll(&rider, &ramp, Facing::Forward).unwrap().nearest.unwrap();
/// assert!(nearest.vertical.abs() < 1e-9);
/// ```
pub fn ramp_roll<L: AsRef<[Point]>>(rider: &Rider<'_, L>, ramp: &Ramp, facing: Facing) -> Result<RampRoll, InputError> {
    sound_points("underside", rider.lines)?;
    let rolling = Rolling::new(rider.wheels, ramp, facing, extent(rider.lines))?;
    let pieces = pieces(&rolling, rider.lines);
    let (least_pitch, greatest_pitch) = pitches(&rolling);
    let nearest = least::least(&rolling, &pieces, Measure::Vertical, None).map(|least| {
        let piece = &pieces[least.piece];
        Nearest {
            vertical: least.value,
            rear_axle: rolling.rear_axle(&least.stand),
            pitch: rolling.pitch(&least.stand),
            line: piece.line,
            point: rolling.to_machine(piece.ends[0].lerp(piece.ends[1], least.share)),
            place: least.stand.place(piece.ends[0].lerp(piece.ends[1], least.share)),
        }
    });
    Ok(RampRoll { nearest, least_pitch, greatest_pitch })
}

/// Least distance of the underside from the profile the shortest way, metres, over the same drive; 0 when touching or
/// below, `None` without an underside.
///
/// # Errors
/// As [`ramp_roll`].
///
/// # Examples
/// ```
/// use fitup_core::dimension::{Facing, Ramp, Rider, Wheels, ramp_gap};
/// use fitup_core::plane::Point;
/// let lines = [[Point::new(1.0, 0.4)]];
/// let rider = Rider { wheels: Wheels { rear: 0.5, front: 0.5, wheelbase: 2.0 }, lines: &lines };
/// let level = Ramp::default();
/// assert!((ramp_gap(&rider, &level, Facing::Forward).unwrap().unwrap() - 0.4).abs() < 1e-9);
/// ```
pub fn ramp_gap<L: AsRef<[Point]>>(
    rider: &Rider<'_, L>,
    ramp: &Ramp,
    facing: Facing,
) -> Result<Option<f64>, InputError> {
    sound_points("underside", rider.lines)?;
    let rolling = Rolling::new(rider.wheels, ramp, facing, extent(rider.lines))?;
    let pieces = pieces(&rolling, rider.lines);
    Ok(least::least(&rolling, &pieces, Measure::Vertical, None).map(|least| {
        if least.value > 0.0 {
            least::least(&rolling, &pieces, Measure::Shortest, Some(least)).map_or(least.value, |found| found.value)
        } else {
            0.0
        }
    }))
}

/// How the machine stands with its rear axle over `rear_axle`, metres from the ramp's foot; for
/// the pictures of a drive. `None` where it cannot stand so.
///
/// # Errors
/// As [`ramp_roll`].
pub fn ramp_stand(
    wheels: Wheels,
    ramp: &Ramp,
    facing: Facing,
    rear_axle: f64,
) -> Result<Option<RampStand>, InputError> {
    super::input::sound("rear-axle", rear_axle)?;
    let rolling = Rolling::new(wheels, ramp, facing, (0.0, wheels.wheelbase))?;
    Ok(rolling.stand_at_rear_axle(rear_axle).map(|stand| {
        let (rear, front) = match facing {
            Facing::Forward => (stand.trailing, stand.leading),
            Facing::Backward => (stand.leading, stand.trailing),
        };
        RampStand { rear, front, pitch: rolling.pitch(&stand), facing, rear_radius: wheels.rear }
    }))
}

/// Corners of the profile from the ramp's foot to the deck's edge, metres; none when all is level. For pictures.
///
/// # Errors
/// A ramp with negative lengths or angles outside 0 to 85°.
pub fn ramp_corners(ramp: &Ramp) -> Result<Vec<Point>, InputError> {
    Ok(profile::Profile::new(ramp)?.corners.iter().map(|corner| corner.at).collect())
}

/// The least vertical clearance alone.
fn least_vertical<L: AsRef<[Point]>>(
    rider: &Rider<'_, L>,
    ramp: &Ramp,
    facing: Facing,
) -> Result<Option<Least>, InputError> {
    let rolling = Rolling::new(rider.wheels, ramp, facing, extent(rider.lines))?;
    let pieces = pieces(&rolling, rider.lines);
    Ok(least::least(&rolling, &pieces, Measure::Vertical, None))
}

/// Least and greatest x of the underside and the rear axle.
fn extent<L: AsRef<[Point]>>(lines: &[L]) -> (f64, f64) {
    let points = lines.iter().flat_map(AsRef::as_ref);
    points.fold((0.0, 0.0), |(least, most): (f64, f64), point| (least.min(point.x), most.max(point.x)))
}

fn pieces<L: AsRef<[Point]>>(rolling: &Rolling, lines: &[L]) -> Vec<Piece> {
    let mut pieces = Vec::new();
    for (line, points) in lines.iter().map(AsRef::as_ref).enumerate() {
        let seen: Vec<Point> = points.iter().map(|point| rolling.seen(*point)).collect();
        if let [lone] = seen[..] {
            pieces.push(Piece { line, ends: [lone, lone] });
        }
        pieces.extend(seen.windows(2).map(|pair| Piece { line, ends: [pair[0], pair[1]] }));
    }
    pieces
}

/// Least and greatest pitch of the drive: at a stage's end, or where the turning stops within one.
fn pitches(rolling: &Rolling) -> (f64, f64) {
    let mut range = (f64::INFINITY, f64::NEG_INFINITY);
    let mut look = |pitch: f64| range = (range.0.min(pitch), range.1.max(pitch));
    for stage in &rolling.stages {
        let turning = |x: f64| rolling.stand(stage, x).map_or(0.0, |stand| stand.turning);
        let (mut from, mut to) = (stage.from, stage.to);
        for x in [from, to] {
            rolling.stand(stage, x).iter().for_each(|stand| look(rolling.pitch(stand)));
        }
        let rising = turning(from) > 0.0;
        if turning(from) * turning(to) < 0.0 {
            // Sixty halvings reach the last bit of any stage.
            for _ in 0..60 {
                let middle = f64::midpoint(from, to);
                if (turning(middle) > 0.0) == rising { from = middle } else { to = middle }
            }
            rolling.stand(stage, from).iter().for_each(|stand| look(rolling.pitch(stand)));
        }
    }
    range
}

#[cfg(test)]
mod tests;
