//! Driving up the trailer's ramp.

use super::loads::Loads;
use super::weight::LEAST_FRONT_SHARE;
use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{
    EndWheel, Facing, LoadingJob, Nearest, Ramp, RampLoads, RampRoll, Rider, ShortestRamp, Weight, Wheels, approach,
    breakover, centre, departure, ramp_loads, ramp_roll, shortest_ramp,
};
use crate::finding::{AxleName, Unstated};
use crate::fit::context::Context;
use crate::fit::context::underside::underside;
use crate::fit::desk::Desk;
use crate::item::{ItemRef, RampSize};
use crate::plane::Point;
use crate::quantity::{Angle, Length, Mass};

/// Least load that each axle has to keep on a ramp, as a share of the bare machine's mass. Less is *check first*.
///
/// Own proposal, no source: the road rule for the front axle, held on the ramp too. No published figure was found for wheeled
/// tractors on loading ramps.
pub(crate) const LEAST_LEFT_ON_RAMP: f64 = LEAST_FRONT_SHARE;

/// Clearance that is wanted over a ramp: what tyres and ramps give way under load. Less than this is *check first*.
/// Common practice, no source.
pub const RAMP_MARGIN: Length = Length::from_mm(30.0);

/// Longest ramp that is considered: longer ones do not travel on a trailer. Common practice, no source.
pub const LONGEST_RAMP: Length = Length::from_m(6.0);

/// The machine on the ramp of the build's trailer.
#[derive(Debug, Clone, PartialEq)]
pub struct Loading {
    /// The ramp with its beaver tail, plain SI; `None` where the trailer does not state it.
    pub ramp: Option<Ramp>,
    /// Height of the deck.
    pub deck_height: Option<Length>,
    /// Front wheels first.
    pub forward: Option<Drive>,
    /// Rear wheels first.
    pub backward: Option<Drive>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

/// Least length of a ramp that is tried, in deck heights: 60°, the steepest that is computed.
const SHORTEST: f64 = 1.16;

impl Loading {
    /// Lengths of ramps that can be tried: from the steepest to [`LONGEST_RAMP`].
    pub fn ramp_lengths(&self) -> Option<(Length, Length)> {
        self.deck_height.map(|height| (Length::from_mm((height * SHORTEST).mm().ceil()), LONGEST_RAMP))
    }

    /// The drive one way.
    pub const fn drive(&self, facing: Facing) -> Option<&Drive> {
        match facing {
            Facing::Forward => self.forward.as_ref(),
            Facing::Backward => self.backward.as_ref(),
        }
    }
}

/// A drive up the ramp one way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drive {
    /// Which end goes first.
    pub facing: Facing,
    /// Where and how near the underside comes, and the pitch, plain SI.
    pub roll: RampRoll,
    /// The item that comes nearest.
    pub item: Option<ItemRef>,
    /// The least that each axle carries on the way, plain SI; `None` where weight or its height is not known.
    pub loads: Option<RampLoads>,
    /// The least that each axle has to carry.
    pub least_load: Mass,
}

impl Drive {
    /// Least clearance straight down; negative where it drags. `None` without an underside.
    pub fn clearance(&self) -> Option<Length> {
        self.roll.nearest.map(|nearest| Length::from_m(nearest.vertical))
    }

    /// Whether it keeps [`RAMP_MARGIN`].
    pub fn clears(&self) -> bool {
        self.clearance().is_none_or(|clearance| clearance >= RAMP_MARGIN)
    }

    /// Whether an axle is known to lift on the way.
    pub fn tips(&self) -> bool {
        self.loads.is_some_and(|loads| loads.tips())
    }

    /// The axle that is left with the least on the way, and what it carries there.
    pub fn lightest(&self) -> Option<(AxleName, Mass)> {
        let RampLoads { front, rear } = self.loads?;
        let (axle, least) = if front.load <= rear.load { (AxleName::Front, front) } else { (AxleName::Rear, rear) };
        Some((axle, Mass::from_kg(least.load)))
    }

    /// Whether an axle is known to keep too little weight.
    pub fn is_light(&self) -> bool {
        self.lightest().is_some_and(|(_, load)| load < self.least_load)
    }

    /// Where it comes nearest, with the item.
    pub fn touch(&self) -> Option<(Nearest, ItemRef)> {
        self.roll.nearest.zip(self.item)
    }
}

/// The machine on the ramp of the build's trailer, both ways.
///
/// `None` without a machine or a trailer. A ramp that the build states ([`Change::Ramps`](crate::build::Change::Ramps)) stands for the trailer's own.
pub fn loading(desk: &Desk, build: &Build) -> Option<Loading> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<Loading> {
    let (rolling, missing) = Rolling::new(context)?;
    let Some(rolling) = rolling else {
        let (ramp, deck_height) = ramp(context, &mut Ask::default());
        return Some(Loading { ramp, deck_height, forward: None, backward: None, missing });
    };
    Some(Loading {
        ramp: Some(rolling.ramp),
        deck_height: Some(rolling.deck_height),
        forward: rolling.drive(Facing::Forward),
        backward: rolling.drive(Facing::Backward),
        missing,
    })
}

/// Shortest ramps that keep [`RAMP_MARGIN`], forwards and backwards, whatever ramp the trailer has; `None` = none up to
/// [`LONGEST_RAMP`] does, or something is missing.
pub fn shortest_ramps(desk: &Desk, build: &Build) -> [Option<ShortestRamp>; 2] {
    shortest_of(&Context::new(desk, build))
}

pub(super) fn shortest_of(context: &Context) -> [Option<ShortestRamp>; 2] {
    let rolling = Rolling::new(context).and_then(|(rolling, _)| rolling);
    [Facing::Forward, Facing::Backward].map(|facing| rolling.as_ref()?.shortest(facing))
}

/// All that a drive is worked out from.
pub(crate) struct Rolling {
    wheels: Wheels,
    items: Vec<ItemRef>,
    edges: Vec<[Point; 2]>,
    pub ramp: Ramp,
    pub deck_height: Length,
    /// Weight of the build with its operator, where it is known, and the least load of an axle.
    weight: Option<(Weight, Mass)>,
}

impl Rolling {
    /// `None` without a machine or a trailer; without what is missing, nothing to roll.
    pub fn new(context: &Context) -> Option<(Option<Self>, Vec<Missing>)> {
        let (id, machine) = context.machine()?;
        context.build.side.trailer?;
        let mut ask = Ask::default();
        let item = MissingOf::Item(ItemRef::Machine(id));
        let rear = ask.need(item, Unstated::StaticLoadedRadius, machine.rear.static_loaded_radius);
        let front = ask.need(item, Unstated::StaticLoadedRadius, machine.front.static_loaded_radius);
        let wheelbase = ask.need(item, Unstated::Wheelbase, machine.wheelbase);
        let (ramp, deck_height) = ramp(context, &mut ask);
        let stands = ask.places(context);
        let (items, edges) = underside(context, false);
        ask.outlines(context);
        if stands && edges.is_empty() {
            ask.note(item, Unstated::Outline);
        }
        let loads = ask.loads(context);
        let height = ask.need(item, Unstated::CentreOfGravity, machine.centre_of_gravity_height);
        let weight = loads.zip(height).and_then(|(loads, _)| weight(&loads));
        let can_roll = stands && !edges.is_empty();
        let rolling = rear.zip(front).zip(wheelbase).zip(ramp.zip(deck_height)).filter(|_| can_roll);
        let rolling = rolling.map(|(((rear, front), wheelbase), (ramp, deck_height))| {
            let wheels = Wheels { rear: rear.m(), front: front.m(), wheelbase: wheelbase.value.m() };
            Self { wheels, items, edges, ramp, deck_height, weight }
        });
        Some((rolling, ask.0))
    }

    const fn rider(&self) -> Rider<'_, [Point; 2]> {
        Rider { wheels: self.wheels, lines: self.edges.as_slice() }
    }

    /// The drive one way; `None` for numbers that cannot be rolled.
    pub fn drive(&self, facing: Facing) -> Option<Drive> {
        let roll = ramp_roll(&self.rider(), &self.ramp, facing).ok()?;
        let item = roll.nearest.map(|nearest| self.items[nearest.line]);
        let loads = self.weight.and_then(|(weight, _)| ramp_loads(self.wheels, weight, &self.ramp, facing).ok());
        let least_load = self.weight.map_or(Mass::ZERO, |(_, least)| least);
        Some(Drive { facing, roll, item, loads, least_load })
    }

    /// The steeper of ramp and beaver tail.
    pub fn steepest(&self) -> Angle {
        Angle::from_rad(self.ramp.angle.max(self.ramp.beaver_angle))
    }

    /// Whether it is known what the machine weighs and where.
    pub const fn is_weighed(&self) -> bool {
        self.weight.is_some()
    }

    /// The wheelbase.
    pub const fn wheelbase(&self) -> Length {
        Length::from_m(self.wheels.wheelbase)
    }

    /// The shortest ramp that keeps [`RAMP_MARGIN`].
    pub fn shortest(&self, facing: Facing) -> Option<ShortestRamp> {
        self.shortest_of(&self.edges, facing, RAMP_MARGIN)
    }

    /// Whether some ramp keeps [`RAMP_MARGIN`] but for so much.
    pub fn is_nearly_helped(&self, facing: Facing, off: Length) -> bool {
        self.shortest_of(&self.edges, facing, RAMP_MARGIN - off).is_some()
    }

    /// As [`Self::shortest`], where this ramp is known to be too steep: what a ramp no steeper cannot come near is left out.
    pub fn shortest_below(&self, facing: Facing) -> Option<ShortestRamp> {
        let steepest = self.ramp.angle.max(self.ramp.beaver_angle) + STEEPER;
        let low = |edge: &[Point; 2]| {
            let lowered = [edge.map(|p| p - Point::new(0.0, RAMP_MARGIN.m()))];
            let Wheels { rear, front, wheelbase } = self.wheels;
            let ends = [
                departure(EndWheel { axle: 0.0, radius: rear }, &lowered),
                approach(EndWheel { axle: wheelbase, radius: front }, &lowered),
            ];
            let over = breakover(self.wheels, &lowered).ok().flatten().map(|over| over.angle);
            let angles = ends.into_iter().filter_map(|end| end.ok().flatten().map(|end| end.angle)).chain(over);
            // What lies at a wheel has no angle there.
            let beside = edge.iter().any(|p| p.y < RAMP_MARGIN.m() + rear.max(front) * 0.5);
            beside || angles.fold(f64::INFINITY, f64::min) < steepest
        };
        let edges: Vec<[Point; 2]> = self.edges.iter().copied().filter(low).collect();
        self.shortest_of(&edges, facing, RAMP_MARGIN)
    }

    fn shortest_of(&self, edges: &[[Point; 2]], facing: Facing, margin: Length) -> Option<ShortestRamp> {
        let job = LoadingJob {
            deck_height: self.deck_height.m(),
            clearance: margin.m(),
            beaver_angle: self.ramp.beaver_angle,
            beaver_length: self.ramp.beaver_length,
            longest: LONGEST_RAMP.m(),
            facing,
        };
        shortest_ramp(&Rider { wheels: self.wheels, lines: edges }, &job).ok().flatten()
    }
}

/// All the weight in one point, ballast at the height of the rest, and the least load of an axle.
fn weight(loads: &Loads) -> Option<(Weight, Mass)> {
    let masses = || loads.bodies.iter();
    let x = centre(masses().map(|body| (body.mass.kg(), body.x.m())))?;
    let z = centre(masses().filter_map(|body| Some((body.mass.kg(), body.z?.m()))))?;
    let weight = Weight { mass: loads.total.kg(), centre: Point::new(x, z) };
    Some((weight, loads.bare * LEAST_LEFT_ON_RAMP))
}

/// How much steeper than the ramp the machine may stand on it for a moment, radians: 6°, wheels of different size.
/// Larger costs time only. Common practice, no source.
const STEEPER: f64 = 0.105;

/// The ramp and the deck's height. The deck's height is the ramp's rise and the beaver tail's.
fn ramp(context: &Context, ask: &mut Ask) -> (Option<Ramp>, Option<Length>) {
    let Some(id) = context.build.side.trailer else { return (None, None) };
    let (of, trailer) = (MissingOf::Trailer(id), context.catalogue().trailer(id));
    let deck_height = ask.need(of, Unstated::DeckHeight, trailer.deck_height);
    let instead = context.build.ramps().map(RampSize::Length);
    let size = ask.need(of, Unstated::Ramp, instead.or(trailer.ramp));
    let beaver_length = trailer.beaver_length.map_or(0.0, Length::m);
    let beaver_angle = if beaver_length > 0.0 {
        ask.need(of, Unstated::BeaverAngle, trailer.beaver_angle).map(crate::quantity::Angle::rad)
    } else {
        Some(0.0)
    };
    let (Some(height), Some(size), Some(beaver_angle)) = (deck_height, size, beaver_angle) else {
        return (None, deck_height);
    };
    let rise = height.m() - beaver_length * libm::sin(beaver_angle);
    let (length, angle) = match size {
        RampSize::Length(length) => (length.m(), libm::asin(rise / length.m())),
        RampSize::Angle(angle) => (rise / libm::sin(angle.rad()), angle.rad()),
    };
    let ramp = Ramp { angle, length, beaver_angle, beaver_length };
    // A ramp that does not reach the deck, or a tail that reaches above it.
    let sound = angle.is_finite() && length.is_finite() && rise > 0.0;
    (ask.need(of, Unstated::Ramp, sound.then_some(ramp)), deck_height)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::{ImplementId, MachineId};

    #[test]
    fn what_a_flatter_ramp_cannot_come_near_changes_no_shortest_ramp() {
        let mut fewer = 0;
        for low in [0.2, 0.26, 0.32] {
            for behind in [0.7, 1.0, 1.4] {
                let arm = (0..30).map(|i| f64::from(i) * 0.04).map(|t| Point::new(-behind - 0.4 * t, low + t * t));
                let arm: Vec<Point> = arm.collect();
                let belly = [[Point::new(-0.3, 0.27), Point::new(1.3, 0.26)]];
                let nose =
                    [[Point::new(1.6, 0.3), Point::new(1.75, 0.36)], [Point::new(1.75, 0.36), Point::new(1.75, 0.8)]];
                let hung = arm.windows(2).map(|pair| [pair[0], pair[1]]);
                let edges: Vec<[Point; 2]> = belly.into_iter().chain(nose).chain(hung).collect();
                let machine = ItemRef::Machine(MachineId(0));
                let items = edges
                    .iter()
                    .map(|edge| if edge[0].x < -0.5 { ItemRef::Implement(ImplementId(0)) } else { machine });
                for (angle, beaver) in [(0.5, 0.0), (0.4, 0.15)] {
                    let rolling = Rolling {
                        wheels: Wheels { rear: 0.375, front: 0.25, wheelbase: 1.45 },
                        items: items.clone().collect(),
                        edges: edges.clone(),
                        ramp: Ramp { angle, length: 1.2, beaver_angle: beaver, beaver_length: beaver * 4.0 },
                        deck_height: Length::from_m(0.6),
                        weight: None,
                    };
                    for facing in [Facing::Forward, Facing::Backward] {
                        let whole = rolling.shortest(facing).map(|ramp| ramp.length);
                        if whole.is_none_or(|length| length < 1.2) {
                            continue;
                        }
                        fewer += 1;
                        let part = rolling.shortest_below(facing).map(|ramp| ramp.length);
                        assert!(
                            (whole.expect("there is") - part.expect("there is")).abs() < 1e-6,
                            "{low} {behind} {facing:?}"
                        );
                    }
                }
            }
        }
        assert!(fewer > 10, "{fewer}");
    }

    #[test]
    fn ramps_are_tried_from_the_steepest_and_clear_by_the_margin() {
        let none = Loading { ramp: None, deck_height: None, forward: None, backward: None, missing: Vec::new() };
        assert_eq!(none.ramp_lengths(), None);
        let high = Loading { deck_height: Some(Length::from_mm(500.5)), ..none };
        // 500.5 mm × 1.16 = 580.58 mm.
        assert_eq!(high.ramp_lengths(), Some((Length::from_mm(581.0), LONGEST_RAMP)));
        let rolling = Rolling {
            wheels: Wheels { rear: 0.375, front: 0.25, wheelbase: 1.45 },
            items: vec![ItemRef::Machine(MachineId(0))],
            edges: vec![[Point::new(0.2, 0.3), Point::new(0.9, 0.3)]],
            ramp: Ramp { angle: 0.3, length: 2.0, ..Ramp::default() },
            deck_height: Length::from_m(0.59),
            weight: None,
        };
        let mut drive = rolling.drive(Facing::Forward).expect("it rolls");
        for (vertical, clears) in [(RAMP_MARGIN.m(), true), (RAMP_MARGIN.m() - 1e-9, false), (-0.1, false)] {
            drive.roll.nearest.as_mut().expect("it has an underside").vertical = vertical;
            assert_eq!((drive.clears(), drive.clearance()), (clears, Some(Length::from_m(vertical))));
        }
        drive.roll.nearest = None;
        assert!(drive.clears() && drive.touch().is_none());
    }
}
