//! Search: what can still be reached, what would mend a build, what would settle it, which
//! catalogue item an unknown unit is, and builds side by side.

mod checks;
mod compare;
mod eliminate;
mod identify;
mod reachable;
mod remedies;
#[cfg(test)]
pub(crate) mod tests;

pub use checks::{RankedCheck, checks};
pub use compare::{Comparison, MOST_COMPARED, Row, Sameness, compare};
pub use identify::{Candidate, Identified, TellApart, identify};
pub use reachable::{Reach, Reachable, reachable};
pub use remedies::{Remedy, RemedyStep, remedies};
