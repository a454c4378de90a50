//! Fit: joint by joint and rule by rule, one file each; [`judge()`] brings them together.
//!
//! A joint is judged by listing, then by lineage, then by dimensions ([`mating`]). Rules beyond
//! joints look at the whole build. Everything they say is a [`Finding`](crate::finding::Finding).
//!
//! The folders are floors. Each knows only those that stand before it here:
//!
//! 1. `mating`: the numbers of a joint, and nothing else;
//! 2. `desk`: a catalogue prepared for judging: what depends on it alone is worked out only once;
//! 3. `context`: a build placed on the desk, its ports as measured and as decided;
//! 4. `joint`: how two ports that meet are judged, one kind of joint a file;
//! 5. `whole`: quantities of the whole machine, loads and footprint first;
//! 6. `rule`: rules beyond joints, one a file;
//! 7. `judge`: all of it together.

pub(crate) mod context;
pub(crate) mod desk;
pub(crate) mod joint;
pub(crate) mod judge;
#[cfg(test)]
mod laws;
pub mod mating;
pub mod rule;
mod whole;

pub use context::decided::{DRILLING, OPENING};
pub use context::found::{LONGEST, measurable, refusal};
pub use context::stack;
pub use desk::outline::{FlatShape, placed};
pub use desk::{Desk, ListedBy};
pub use joint::overlay::Overlay;
pub use joint::{Bolts, BoltsInto, HoleToMake};
pub(crate) use judge::EquipmentAnswers;
pub use judge::answer::{Answer, ComeBy, Joint, PartsLine, PartsToBuy, QuestionAnswer};
pub use judge::declared::{declaration, declared};
pub(crate) use judge::parts::bought;
pub use judge::strip::{StripList, StripStep, StripWhat};
pub(crate) use judge::{findings, is_worse};
pub use judge::{judge, verdict};
pub use whole::angles::EndAngle;
pub use whole::figures::{FootprintFigure, MEASURES, Measure, footprint_figures};
pub use whole::footprint::Footprint;
pub use whole::loads::{Bearer, Loads, LoadsOff, OPERATOR, OPERATOR_OFF, PlacedMass};
pub use whole::rated_load::{Against, RatedLoad};
pub use whole::{
    Access, ArmAtWork, Drive, FLAT_BOTTOM, HOSE_BORES, Hydraulics, LONGEST_RAMP, Lift, Lifting, Loading, Missing,
    MissingOf, OVERHANG_LIMITS, OnTrailer, RAMP_MARGIN, RoadLimit, SwingStop, Tip, TrailerStand, WIDTH_LIMITS, Weight,
    WeightRule, Whole, access, arm_at_work, hydraulics, lifting, loading, on_trailer, shortest_ramps, stand_after, tip,
    way_up, weight, whole,
};
