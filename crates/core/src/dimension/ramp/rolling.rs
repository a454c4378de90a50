//! The machine's motion over a profile, stage by stage.

use super::Facing;
use super::profile::{Profile, Ramp};
use super::track::{Path, Track};
use crate::dimension::Wheels;
use crate::dimension::input::{Fault, InputError, positive};
use crate::order;
use crate::plane::Point;

/// Both wheels on their tracks, seen in the direction of travel: the *leading* wheel goes up first.
#[derive(Debug, Clone)]
pub(super) struct Rolling {
    pub profile: Profile,
    /// The stages in the order they are driven; within one, each wheel stays on one piece of its track.
    pub stages: Vec<Stage>,
    wheels: Wheels,
    facing: Facing,
    trailing: Track,
    leading: Track,
    /// Distance of the wheel centres.
    distance: f64,
    /// Direction from the trailing to the leading wheel centre on level ground.
    level: Point,
}

/// A stretch of the drive, from and to an x of the trailing wheel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stage {
    pub from: f64,
    pub to: f64,
    trailing: Path,
    leading: Path,
    /// Which of the two points of the leading path.
    pick: usize,
}

/// Where the machine stands, and how it moves for each metre the trailing wheel goes forward.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stand {
    /// Trailing wheel's centre.
    pub trailing: Point,
    /// Leading wheel's centre.
    pub leading: Point,
    /// Unit vector the level machine's x axis, seen in the direction of travel, has turned to.
    pub tilt: Point,
    /// Turn of the machine, radians a metre, nose of the travel up.
    pub turning: f64,
    /// Motion of the trailing wheel's centre.
    pub motion: Point,
}

/// Stages shorter than this, metres, are rounding between two ends that are one.
const NO_STAGE: f64 = 1e-12;

impl Stand {
    /// Where a point of the machine is, given from the trailing wheel's centre.
    pub fn place(&self, point: Point) -> Point {
        self.trailing + point.turned(self.tilt)
    }

    /// How the point of the machine that is now at `place` moves.
    pub fn motion_at(&self, place: Point) -> Point {
        self.motion + (place - self.trailing).quarter_turn() * self.turning
    }

    /// Turn from level, radians, nose of the travel up.
    pub fn pitch(&self) -> f64 {
        libm::atan2(self.tilt.y, self.tilt.x)
    }
}

impl Rolling {
    /// The drive from everything on the ground to everything on the deck, for a machine that reaches
    /// from `extent.0` to `extent.1` along its own x.
    ///
    /// # Errors
    /// Radii or wheelbase not above zero, a ramp that is not sound, or wheels so far apart in size
    /// and so near each other that they do not roll over it one way only.
    pub fn new(wheels: Wheels, ramp: &Ramp, facing: Facing, extent: (f64, f64)) -> Result<Self, InputError> {
        positive("rear-radius", wheels.rear)?;
        positive("front-radius", wheels.front)?;
        positive("wheelbase", wheels.wheelbase)?;
        let profile = Profile::new(ramp)?;
        let (behind, ahead) = match facing {
            Facing::Forward => (wheels.rear, wheels.front),
            Facing::Backward => (wheels.front, wheels.rear),
        };
        let rod = Point::new(wheels.wheelbase, ahead - behind);
        let distance = rod.norm();
        let mut rolling = Self {
            trailing: Track::new(&profile, behind),
            leading: Track::new(&profile, ahead),
            profile,
            stages: Vec::new(),
            wheels,
            facing,
            distance,
            level: rod * (1.0 / distance),
        };
        rolling.stages = rolling.find_stages(extent)?;
        Ok(rolling)
    }

    /// A point of the machine, seen in the direction of travel from the trailing wheel's centre.
    pub fn seen(&self, point: Point) -> Point {
        match self.facing {
            Facing::Forward => Point::new(point.x, point.y - self.wheels.rear),
            Facing::Backward => Point::new(self.wheels.wheelbase - point.x, point.y - self.wheels.front),
        }
    }

    /// The way back from [`Self::seen`].
    pub fn to_machine(&self, point: Point) -> Point {
        match self.facing {
            Facing::Forward => Point::new(point.x, point.y + self.wheels.rear),
            Facing::Backward => Point::new(self.wheels.wheelbase - point.x, point.y + self.wheels.front),
        }
    }

    /// x of the rear axle.
    pub fn rear_axle(&self, stand: &Stand) -> f64 {
        match self.facing {
            Facing::Forward => stand.trailing.x,
            Facing::Backward => stand.leading.x,
        }
    }

    /// Pitch of the machine, radians, its own nose up.
    pub fn pitch(&self, stand: &Stand) -> f64 {
        match self.facing {
            Facing::Forward => stand.pitch(),
            Facing::Backward => -stand.pitch(),
        }
    }

    /// x at which the trailing and the leading wheel touch the profile in a stage's stand. At a stage's end the next stage may
    /// start with others: a wheel in a valley touches two faces.
    pub fn contacts(&self, stage: &Stage, stand: &Stand) -> (f64, f64) {
        let (behind, ahead) = match self.facing {
            Facing::Forward => (self.wheels.rear, self.wheels.front),
            Facing::Backward => (self.wheels.front, self.wheels.rear),
        };
        (stage.trailing.contact(stand.trailing.x, behind), stage.leading.contact(stand.leading.x, ahead))
    }

    /// The stand with the rear axle over `x`; `None` where the wheels cannot stand so.
    pub fn stand_at_rear_axle(&self, x: f64) -> Option<Stand> {
        let trailing = match self.facing {
            Facing::Forward => x,
            Facing::Backward => self.trailing.at_distance(self.leading.read(x).at, self.distance, false)?.at.x,
        };
        let first = self.stages.first()?;
        let last = self.stages.last()?;
        let stage = self.stages.iter().find(|stage| trailing <= stage.to).unwrap_or(last);
        // Before the first and after the last stage the machine is level and only moves along.
        let inside = trailing.max(first.from).min(last.to);
        let mut stand = self.stand(stage, inside)?;
        let beyond = Point::new(trailing - inside, 0.0);
        stand.trailing = stand.trailing + beyond;
        stand.leading = stand.leading + beyond;
        Some(stand)
    }

    /// The stand within a stage with the trailing wheel over `x`.
    pub fn stand(&self, stage: &Stage, x: f64) -> Option<Stand> {
        let behind = stage.trailing.read(x);
        let leading = stage.leading.at_distance(behind.at, self.distance)?[stage.pick];
        let ahead = stage.leading.read(leading.x);
        let rod = (leading - behind.at) * (1.0 / self.distance);
        let motion = Point::new(1.0, behind.slope);
        let led = Point::new(1.0, ahead.slope);
        // The rod keeps its length: both centres move equally fast along it.
        let share = rod.dot(motion) / rod.dot(led);
        let turning = rod.cross(led * share - motion) / self.distance;
        let tilt = Point::new(rod.dot(self.level), self.level.cross(rod));
        Some(Stand { trailing: behind.at, leading, tilt, turning, motion })
    }

    fn find_stages(&self, extent: (f64, f64)) -> Result<Vec<Stage>, InputError> {
        let crooked = InputError { what: "wheelbase", fault: Fault::TooShort };
        let mut places: Vec<f64> = self.trailing.spans.iter().skip(1).map(|span| span.from).collect();
        for span in self.leading.spans.iter().skip(1) {
            let at = span.path.read(span.from).at;
            places.push(self.trailing.at_distance(at, self.distance, false).ok_or(crooked)?.at.x);
        }
        let (from, to) = self.whole_drive(extent);
        places.extend([from, to]);
        order::sort(&mut places, f64::total_cmp);
        let mut stages = Vec::new();
        for pair in places.windows(2).filter(|pair| pair[1] - pair[0] > NO_STAGE) {
            let middle = f64::midpoint(pair[0], pair[1]);
            let trailing = self.trailing.spans.iter().find(|span| middle <= span.to).ok_or(crooked)?.path;
            let found = self.leading.at_distance(trailing.read(middle).at, self.distance, true).ok_or(crooked)?;
            let leading = self.leading.spans[found.span].path;
            let stage = Stage { from: pair[0], to: pair[1], trailing, leading, pick: found.pick };
            for x in [pair[0], middle, pair[1]] {
                let stand = self.stand(&stage, x).ok_or(crooked)?;
                let rod = stand.leading - stand.trailing;
                let slopes = [trailing.read(x).slope, leading.read(stand.leading.x).slope];
                if slopes.iter().any(|slope| rod.dot(Point::new(1.0, *slope)) <= 0.0) {
                    return Err(crooked);
                }
            }
            stages.push(stage);
        }
        Ok(stages)
    }

    /// x of the trailing wheel when everything stands on the ground, and when everything stands on the deck.
    fn whole_drive(&self, (rearmost, foremost): (f64, f64)) -> (f64, f64) {
        let ends = [
            rearmost,
            foremost,
            -self.wheels.rear,
            self.wheels.wheelbase + self.wheels.front,
            self.wheels.rear,
            self.wheels.wheelbase - self.wheels.front,
        ];
        let seen = ends.map(|x| self.seen(Point::new(x, 0.0)).x);
        let foremost = seen.iter().copied().fold(0.0, f64::max);
        let rearmost = seen.iter().copied().fold(0.0, f64::min);
        let deck = self.profile.corners.last().map_or(0.0, |corner| corner.at.x);
        (-foremost, deck - rearmost)
    }
}
