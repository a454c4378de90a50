//! The catalogue file: what a dealer's file may say, read with positions, checked, and lowered to
//! the core's [`fitup_core::item::Catalogue`]. Beside it, a build as a file and as a link.

mod at;
mod build_file;
mod check;
pub mod decode;
mod json;
pub mod link;
mod lower;
mod observed;
mod parts_text;
mod problem;
mod read;
mod report;
#[cfg(feature = "schema")]
mod schema;
mod shortened;
#[cfg(feature = "tables")]
pub mod tables;
pub mod tree;
pub mod wire;
#[cfg(feature = "write")]
mod write;

pub use build_file::{
    BUILD_FORMAT, BallastFile, BuildFile, ChangeFile, LengthFile, LookedFile, MeasuredFile, NumberReadFile, OpenUpFile,
    PortFile, PoseFile, ToolFile, Unresolved, UnresolvedIn, WidthFile,
};
pub use json::json;
pub use observed::{ObservedFile, ObservedLength};
pub use parts_text::{ListFault, ListFaultKind, MOST_LINES, PartsText, read_parts_bytes, read_parts_text};
pub use problem::{Code, Position, Problem, SORTS, Severity};
pub use read::{Reading, read, read_bytes, read_closely};
#[cfg(feature = "schema")]
pub use schema::{reference, schema};
#[cfg(feature = "write")]
pub use write::write;
