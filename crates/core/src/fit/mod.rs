//! Fit: joint by joint and rule by rule, one file each; [`judge()`] brings them together.
//!
//! A joint is judged by listing, then by lineage, then by dimensions ([`mating`]). Rules beyond
//! joints look at the whole build. Everything they say is a [`Finding`](crate::finding::Finding).

mod angles;
mod answer;
mod cautions;
mod codes;
mod context;
mod decided;
mod desk;
mod figures;
mod footprint;
mod found;
mod joint;
mod judge;
#[cfg(test)]
mod laws;
mod lay;
mod lineage;
mod loads;
pub mod mating;
mod measured;
mod outline;
mod parts;
mod rated_load;
mod rule;
mod runs;
mod solid;
mod terms;
mod underside;
mod whole;

pub use answer::{Answer, ComeBy, EndAngle, Footprint, Joint, Overlay, OverlayHole, PartsLine, PartsToBuy};
pub use codes::{CODES, Code, MISSING};
pub use decided::{DRILLING, OPENING};
pub use desk::{Desk, ListedBy};
pub use figures::{FootprintFigure, MEASURES, Measure, footprint_figures};
pub use judge::{judge, role_name, verdict};
pub use loads::{Bearer, Body, Loads, OPERATOR};
pub use measured::{dimension_of, dimensions};
pub use outline::{FlatShape, placed};
pub use rated_load::RatedLoad;
pub(crate) use terms::{Bits, Choice, PAIRS, Terms};
pub use whole::{
    Access, ArmAtWork, Drive, FLAT_BOTTOM, HOSE_BORES, Hydraulics, LONGEST_RAMP, Lift, Lifting, Loading, Missing,
    MissingOf, OnTrailer, RAMP_MARGIN, SwingStop, Tip, TrailerStand, WIDTH_LIMITS, Weight, WeightRule, Whole,
    WidthLimit, access, arm_at_work, hydraulics, lifting, loading, on_trailer, shortest_ramps, tip, weight, whole,
};
