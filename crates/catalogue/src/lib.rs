//! The catalogue file: what a dealer's file may say, read with positions, checked, and lowered to
//! the core's [`fitup_core::item::Catalogue`]. Beside it, a build as a file and as a link.

mod at;
mod build_file;
mod check;
mod decode;
mod json;
pub mod link;
mod lower;
mod problem;
mod read;
mod report;
#[cfg(feature = "schema")]
mod schema;
mod shortened;
#[cfg(feature = "tables")]
pub mod tables;
mod tree;
pub mod wire;
#[cfg(feature = "write")]
mod write;

pub use build_file::{
    BUILD_FORMAT, BuildFile, ChangeFile, LookedFile, MeasuredFile, PoseFile, ToolFile, Unresolved, UnresolvedIn,
};
pub use json::json;
pub use problem::{Code, Position, Problem, SORTS, Severity};
pub use read::{Reading, read, read_bytes, read_closely};
#[cfg(feature = "schema")]
pub use schema::{reference, schema};
#[cfg(feature = "write")]
pub use write::write;
