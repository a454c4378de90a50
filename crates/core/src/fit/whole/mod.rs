//! The finished machine as a whole: on the ramp, on its trailer, on its tyres, at work and on its site.
//!
//! One subject a file. Each is worked out from the placed build when it is asked for, not with every judgement;
//! what the catalogue leaves unsaid is listed in `missing` and leaves its figures `None`, all others are there.
//! Figures that come straight from [`dimension`](crate::dimension) keep its types: plain SI in the machine's frame.

mod digging;
mod hydraulics;
mod lifting;
mod loading;
mod on_trailer;
mod site;
mod tip;
mod weight;

pub use digging::{ArmAtWork, FLAT_BOTTOM, SwingStop, arm_at_work};
pub use hydraulics::{HOSE_BORES, Hydraulics, hydraulics};
pub use lifting::{Lift, Lifting, lifting};
pub use loading::{Drive, LONGEST_RAMP, Loading, RAMP_MARGIN, loading, shortest_ramps};
pub use on_trailer::{OnTrailer, TrailerStand, WIDTH_LIMITS, WidthLimit, on_trailer};
pub use site::{Access, access};
pub use tip::{Tip, tip};
pub use weight::{Weight, WeightRule, weight};

pub(super) use loading::Rolling;
pub(super) use on_trailer::trailer_of;
pub(super) use site::access_of;

use super::context::Context;
use super::desk::Desk;
use crate::build::Build;
use crate::dimension::ShortestRamp;
use crate::item::{ItemRef, SiteId, TrailerId};

/// A value that a row leaves unsaid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Missing {
    /// Whose row it is.
    pub of: MissingOf,
    /// The value's name, one of [`MISSING`](super::MISSING).
    pub what: &'static str,
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
    fn need<T>(&mut self, of: MissingOf, what: &'static str, value: Option<T>) -> Option<T> {
        if value.is_none() {
            self.note(of, what);
        }
        value
    }

    fn note(&mut self, of: MissingOf, what: &'static str) {
        let missing = Missing { of, what };
        if !self.0.contains(&missing) {
            self.0.push(missing);
        }
    }

    /// The loads, with what they miss noted.
    fn loads(&mut self, context: &Context) -> Option<super::Loads> {
        match super::loads::loads(context)? {
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
        on_trailer: on_trailer::of(&context),
        weight: weight::of(&context, None),
        tip: tip::of(&context),
        arm_at_work: digging::of(&context),
        lifting: lifting::of(&context),
        access: site::of(&context),
        hydraulics: hydraulics::of(&context),
    }
}
