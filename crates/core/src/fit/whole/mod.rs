//! The finished machine as a whole: on the ramp, on its trailer, on its tyres, at work and on its site.
//!
//! One subject a file. Each is worked out from the placed build when it is asked for, not with every judgement;
//! what the catalogue leaves unsaid is listed in `missing` and leaves its figures `None`, all others are there.
//! Figures that come straight from [`dimension`](crate::dimension) keep its types: plain SI in the machine's frame.

pub(crate) mod angles;
mod digging;
pub(crate) mod figures;
pub(crate) mod footprint;
mod hydraulics;
mod lifting;
mod loading;
pub(crate) mod loads;
pub(crate) mod near;
mod on_trailer;
pub(crate) mod rated_load;
mod site;
mod tip;
mod way;
pub(crate) mod weight;

pub use digging::{ArmAtWork, FLAT_BOTTOM, SwingStop, arm_at_work};
pub use hydraulics::{HOSE_BORES, Hydraulics, hydraulics};
pub use lifting::{Lift, Lifting, lifting};
pub use loading::{Drive, LONGEST_RAMP, Loading, RAMP_MARGIN, loading, shortest_ramps};
pub use on_trailer::{OVERHANG_LIMITS, OnTrailer, RoadLimit, TrailerStand, WIDTH_LIMITS, on_trailer};
pub use site::{Access, access};
pub use tip::{Tip, tip};
pub use way::{stand_after, way_up};
pub use weight::{Weight, WeightRule, weight};

pub(crate) use loading::Rolling;
pub(crate) use on_trailer::trailer_of;
pub(crate) use site::access_of;

use crate::build::Build;
use crate::dimension::ShortestRamp;
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{ItemRef, SiteId, Station, TrailerId};

/// A value that a row leaves unsaid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Missing {
    /// Whose row it is.
    pub of: MissingOf,
    /// The value.
    pub what: Unstated,
}

/// Whose row leaves a value unsaid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum MissingOf {
    /// An item's.
    Item(ItemRef),
    /// A trailer's.
    Trailer(TrailerId),
    /// A site's.
    Site(SiteId),
}

/// What has been found missing so far.
#[derive(Debug, Default)]
struct Ask(Vec<Missing>);

impl Ask {
    /// The value, noted as missing if it is not there.
    fn need<T>(&mut self, of: MissingOf, what: Unstated, value: Option<T>) -> Option<T> {
        if value.is_none() {
            self.note(of, what);
        }
        value
    }

    fn note(&mut self, of: MissingOf, what: Unstated) {
        let missing = Missing { of, what };
        if !self.0.contains(&missing) {
            self.0.push(missing);
        }
    }

    /// Whether it is known where everything stands; what has no place is noted.
    fn places(&mut self, context: &Context) -> bool {
        let without = context.without_place();
        for &item in &without {
            self.note(MissingOf::Item(item), Unstated::Pose);
        }
        without.is_empty()
    }

    /// Notes whatever stands there and has no outline, a seat apart: without it nothing tells how far it reaches.
    fn outlines(&mut self, context: &Context) {
        for placed in &context.stack.placed {
            if !matches!(placed.item, ItemRef::Seat(_)) && context.desk.outline(placed.item).is_empty() {
                self.note(MissingOf::Item(placed.item), Unstated::Outline);
            }
        }
    }

    /// Notes what the width and the height of the whole depend on: the implement's width in transport, the bar of an
    /// open machine, and outlines.
    fn extents(&mut self, context: &Context) {
        self.outlines(context);
        if let Some((id, machine)) = context.machine() {
            let item = MissingOf::Item(ItemRef::Machine(id));
            if machine.station == Station::Open {
                self.need(item, Unstated::RollOverBar, machine.roll_over_bar);
            }
            for axle in [machine.front, machine.rear] {
                self.need(item, Unstated::Track, axle.track);
                self.need(item, Unstated::TyreWidth, axle.tyre_width);
                self.need(item, Unstated::OverallRadius, axle.overall_radius);
            }
        }
        if let Some((id, implement)) = context.implement()
            && context.stack.holds(ItemRef::Implement(id))
        {
            let item = MissingOf::Item(ItemRef::Implement(id));
            self.need(item, Unstated::TransportWidth, implement.transport_width);
        }
    }

    /// The loads, with what they miss noted.
    fn loads(&mut self, context: &Context) -> Option<loads::Loads> {
        match loads::loads(context)? {
            Ok(loads) => Some(loads),
            Err(missing) => {
                for (item, what) in missing {
                    self.note(MissingOf::Item(item), what);
                }
                None
            }
        }
    }
}

/// Everything about the finished machine; `None` for a subject that the build does not have.
#[derive(Debug, Clone, PartialEq)]
pub struct Whole {
    /// On the trailer's ramp.
    pub loading: Option<Loading>,
    /// Shortest ramps that would do, forwards and backwards.
    pub shortest_ramps: [Option<ShortestRamp>; 2],
    /// On the trailer.
    pub on_trailer: Option<OnTrailer>,
    /// On its axles and tyres.
    pub weight: Option<Weight>,
    /// Static tip angles.
    pub tip: Option<Tip>,
    /// The digging arm's reach.
    pub arm_at_work: Option<ArmAtWork>,
    /// What the digging arm lifts.
    pub lifting: Option<Lifting>,
    /// Turning, gateway and ground.
    pub access: Option<Access>,
    /// Oil and power.
    pub hydraulics: Option<Hydraulics>,
}

/// Everything about the finished machine at once, for a report; a view asks for its own subject.
pub fn whole(desk: &Desk, build: &Build) -> Whole {
    let context = Context::new(desk, build);
    Whole {
        loading: loading::of(&context),
        shortest_ramps: loading::shortest_of(&context),
        on_trailer: trailer_of(&context),
        weight: weight::of(&context, None),
        tip: tip::of(&context),
        arm_at_work: digging::of(&context),
        lifting: lifting::of(&context),
        access: access_of(&context),
        hydraulics: hydraulics::of(&context),
    }
}
