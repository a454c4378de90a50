//! Search: what can still be reached, what would mend a build, what would settle it, which
//! catalogue item an unknown unit is, and builds side by side.

mod checks;
mod combine;
mod compare;
mod doubt;
mod eliminate;
mod headline;
mod identify;
mod lists;
mod measuring;
mod nearest;
mod part_numbers;
mod reachable;
mod remedies;
mod searcher;
mod sets;
mod terms;
#[cfg(test)]
pub(crate) mod tests;

pub use checks::{Chance, RankedCheck, Stakes, checks};
pub use combine::MOST_STEPS;
pub use compare::{Comparison, MOST_COMPARED, Row, Sameness, compare};
pub use doubt::{Doubt, doubt};
pub use headline::{Headline, headline};
pub use identify::{Candidate, Identified, Observed, TellApart, identify};
pub use lists::{AssemblyCompared, AssemblySameness, LineCompared, LineSameness, ListsCompared, lists};
pub use nearest::Nearest;
pub use part_numbers::numbers_that_settle;
pub use reachable::{Reach, Reachable};
pub use remedies::{NoRemedy, Remedies, Remedy, RemedyStep, remedies};
pub use searcher::Searcher;
pub use sets::{MOST_SETS, Measures, Set, SetOrder, Sets};
