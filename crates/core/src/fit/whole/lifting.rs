//! What the digging arm lifts at each reach before the machine tips or the hydraulics give in.

use super::digging::{PlacedArm, reaching};
use super::loads::Loads;
use super::{Ask, Missing, MissingOf};
use crate::build::ArmAngles;
use crate::build::{Build, arm_pose};
use crate::dimension::{
    DigLoads, DigStand, DiggingArm, Governs, GroundMass, PointMass, SHARE_OF_TIPPING, SideStand, dig_loads, digging,
    side_tipping,
};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{Carrier, FrontAxle, ItemRef};
use crate::quantity::{Length, Mass};

/// Lifting with the digging arm, standing on the stabilisers, or on the rear tyres where there are none.
#[derive(Debug, Clone, PartialEq)]
pub struct Lifting {
    /// x of the line it tips over to the rear, in the machine's axes.
    pub line: Length,
    /// Whether that line is the stabilisers'.
    pub on_stabilisers: bool,
    /// From the nearest to the farthest place, at each height from low to high.
    pub places: Vec<Lift>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

impl Lifting {
    /// The farthest place at ground level, for which the hydraulics' lift is stated too.
    pub fn farthest_on_ground(&self) -> Option<&Lift> {
        self.places.iter().rfind(|place| place.height == Length::ZERO)
    }
}

/// What is lifted at one place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lift {
    /// Reach of the tip from the swing centre.
    pub reach: Length,
    /// Height of the tip over the ground.
    pub height: Length,
    /// Over the rear, plain SI: tipping load, rated load, front load left, push that lifts the line.
    pub rear: DigLoads,
    /// Load that tips the machine over the line from a stabiliser to the front axle, the arm swung square to the side.
    pub side_tipping: Option<Mass>,
}

impl Lift {
    /// Rated load, kilograms, and what governs it: over the rear or swung to the side, whichever is less.
    pub fn rated(&self) -> Option<(f64, Governs)> {
        let side = self.side_tipping.map(|load| (SHARE_OF_TIPPING * load.kg(), Governs::Tipping));
        let both = [self.rear.rated(), side].into_iter().flatten();
        both.reduce(|least, other| if other.0 < least.0 { other } else { least })
    }
}

/// Shares of the reach at ground level that are told.
const REACHES: [f64; 3] = [0.6, 0.8, 1.0];
/// Heights that are told, metres: a step down, the ground, and the side of a small truck. Common practice, no source.
const HEIGHTS: [f64; 3] = [-0.5, 0.0, 1.0];

/// What the build's digging arm lifts. `None` without one that stands anywhere.
pub fn lifting(desk: &Desk, build: &Build) -> Option<Lifting> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<Lifting> {
    let placed = PlacedArm::of(context)?;
    let mut ask = Ask::default();
    let pads = placed.arm.stabilisers.map(|pads| placed.placement.side(pads.x, Length::ZERO).0);
    let line = pads.unwrap_or(Length::ZERO).min(Length::ZERO);
    let arm = placed.plane();
    let bodies = ask.loads(context).and_then(|loads| Bodies::of(context, &placed, &loads, &mut ask));
    let places = bodies.map_or_else(Vec::new, |bodies| {
        let Some(full) = digging(&arm, None).ok().and_then(|found| found.reach_at_ground) else { return Vec::new() };
        let at = |height: f64| {
            let bodies = &bodies;
            let (placed, arm) = (&placed, &arm);
            REACHES.into_iter().filter_map(move |share| bodies.lift(placed, arm, line, (full * share, height), full))
        };
        HEIGHTS.into_iter().flat_map(at).collect()
    });
    Some(Lifting { line, on_stabilisers: pads.is_some(), places, missing: ask.0 })
}

/// Every mass, the arm's links apart from the rest.
struct Bodies {
    rest: Vec<PointMass>,
    links: [Mass; 3],
    centres: [Length; 3],
    wheelbase: f64,
    /// Half the distance of the supports to the side: stabiliser, front.
    halves: Option<(f64, f64)>,
    /// Load the hydraulics lift at full reach at ground level.
    hydraulic: Option<Mass>,
}

impl Bodies {
    fn of(context: &Context, placed: &PlacedArm, loads: &Loads, ask: &mut Ask) -> Option<Self> {
        let item = MissingOf::Item(ItemRef::Implement(placed.id));
        let links = [placed.arm.boom, placed.arm.dipper, placed.arm.bucket];
        let masses = ask.need(item, Unstated::LinkMass, all(links.map(|link| link.mass)));
        let centres = ask.need(item, Unstated::LinkMass, all(links.map(|link| link.centre)));
        let (masses, centres) = (masses?, centres?);
        // The implement's mass is told for transport: its links are taken out of it there.
        let folded = link_places(placed, ArmAngles::transport(&placed.arm), centres);
        let mut rest: Vec<PointMass> =
            loads.bodies.iter().map(|body| PointMass { mass: body.mass.kg(), x: body.x.m() }).collect();
        let own = loads.bodies.iter().position(|body| body.item() == Some(ItemRef::Implement(placed.id)))?;
        let taken: f64 = masses.iter().map(|mass| mass.kg()).sum();
        let moment: f64 = masses.iter().zip(folded).map(|(mass, x)| mass.kg() * x).sum();
        let left = rest[own].mass - taken;
        if left > 0.0 {
            rest[own] = PointMass { mass: left, x: (rest[own].mass * rest[own].x - moment) / left };
        } else {
            return ask.need(item, Unstated::LinkMass, None);
        }
        let (_, machine) = context.machine()?;
        let front = match machine.front_axle {
            FrontAxle::Oscillating { .. } => Some(0.0),
            FrontAxle::Fixed => machine.front.track.map(|track| track.m() / 2.0),
            FrontAxle::Unknown => None,
        };
        let pad = placed.arm.stabilisers.map(|pads| pads.spread.m() / 2.0).or(machine.rear.track.map(|t| t.m() / 2.0));
        Some(Self {
            rest,
            links: masses,
            centres,
            wheelbase: loads.wheelbase.m(),
            halves: pad.zip(front),
            hydraulic: placed.arm.lift_at_full_reach,
        })
    }

    /// What is lifted with the tip at (u, z); `None` where it does not come.
    fn lift(&self, placed: &PlacedArm, arm: &DiggingArm, line: Length, (u, z): (f64, f64), full: f64) -> Option<Lift> {
        // A hair inside, so that the farthest place counts as reached.
        let reach = u.min(full * (1.0 - 1e-9));
        let angles = placed.posed(reaching(arm, reach, z)?);
        let swing_x = placed.swing_x.m();
        let links = link_places(placed, angles, self.centres);
        let links = self.links.iter().zip(links).map(|(mass, x)| PointMass { mass: mass.kg(), x });
        let bodies: Vec<PointMass> = self.rest.iter().copied().chain(links).collect();
        let stand = DigStand { line: line.m(), load: swing_x - reach, wheelbase: self.wheelbase };
        // The cylinders' lift is stated for full reach at ground level only.
        let hydraulic = self.hydraulic.filter(|_| z == 0.0 && u >= full).map(Mass::kg);
        Some(Lift {
            reach: Length::from_m(u),
            height: Length::from_m(z),
            rear: dig_loads(stand, &bodies, hydraulic).ok()?,
            side_tipping: self.over_side(placed, angles, line.m(), reach),
        })
    }

    /// Tipping load with the arm swung square to the left.
    fn over_side(&self, placed: &PlacedArm, angles: ArmAngles, line: f64, reach: f64) -> Option<Mass> {
        let (rear, front) = self.halves?;
        let swing_x = placed.swing_x.m();
        let swung = link_places(placed, angles, self.centres).map(|x| swing_x - x);
        let links = self.links.iter().zip(swung).map(|(mass, y)| GroundMass { mass: mass.kg(), x: swing_x, y });
        let rest = self.rest.iter().map(|body| GroundMass { mass: body.mass, x: body.x, y: 0.0 });
        let bodies: Vec<GroundMass> = rest.chain(links).collect();
        let stand = SideStand { line, rear, wheelbase: self.wheelbase, front };
        side_tipping(stand, &bodies, [swing_x, reach]).ok()?.map(Mass::from_kg)
    }
}

fn all<T: Copy>([a, b, c]: [Option<T>; 3]) -> Option<[T; 3]> {
    Some([a?, b?, c?])
}

/// x of the three links' centres of gravity in the machine's axes, metres.
fn link_places(placed: &PlacedArm, angles: ArmAngles, centres: [Length; 3]) -> [f64; 3] {
    let pose = arm_pose(&placed.arm, angles);
    let links = [Carrier::Boom, Carrier::Dipper, Carrier::Bucket];
    let mut at = [0.0; 3];
    for ((at, link), centre) in at.iter_mut().zip(links).zip(centres) {
        if let Some(link) = pose.link(link) {
            let (x, z) = link.point(centre, Length::ZERO);
            *at = placed.placement.side(x, z).0.m();
        }
    }
    at
}
