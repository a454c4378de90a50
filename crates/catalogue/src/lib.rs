//! The catalogue file: what a dealer's file may say, read with positions, checked, and lowered to
//! the core's [`fitup_core::item::Catalogue`]. Beside it, a build as a file and as a link.

mod build_file;
pub mod link;
mod lower;
mod problem;
mod read;
#[cfg(feature = "schema")]
mod schema;
pub mod wire;

pub use build_file::{
    BUILD_FORMAT, BuildFile, ChangeFile, LookedFile, MeasuredFile, ToolFile, Unresolved, UnresolvedIn,
};
pub use problem::{Code, Position, Problem, Severity};
pub use read::{Reading, read, read_bytes};
#[cfg(feature = "schema")]
pub use schema::{reference, schema};
