//! The file format, field by field: what stands here is what a catalogue file may say.
//!
//! These types only hold what the file says, in the file's units. [`crate::lower`] turns them
//! into the core's catalogue. `FORMAT.md` beside this crate's manifest is the same for people.

pub mod adapter;
pub mod body;
pub mod frame;
pub mod guide;
pub mod header;
pub mod implement;
pub mod machine;
pub mod part;
pub mod port;
pub mod seat;
pub mod shape;
pub mod site;
pub mod trailer;
pub mod value;

use serde::{Deserialize, Serialize};

/// The number of the format that this crate reads and writes.
pub const FORMAT: u32 = 1;

/// A catalogue file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CatalogueFile {
    /// Number of the format: 1.
    pub format: u32,
    /// What the catalogue calls itself.
    pub name: String,
    /// Edition or date.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub edition: String,
    /// A note shown with results, such as that the data are invented.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub notice: String,
    /// The units that every number of the file is written in.
    pub units: header::Units,
    /// Machines.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub machines: Vec<machine::Machine>,
    /// Mounting frames.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub frames: Vec<frame::Frame>,
    /// Seat arrangements.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub seats: Vec<seat::Seat>,
    /// Implements.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub implements: Vec<implement::Implement>,
    /// Adapters.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub adapters: Vec<adapter::Adapter>,
    /// Parts and what replaced them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<part::Part>,
    /// The lists a parts catalogue prints, line by line.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts_lists: Vec<part::PartsListRow>,
    /// The maker's guide, if there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub guide: Option<guide::Guide>,
    /// Trailers.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub trailers: Vec<trailer::Trailer>,
    /// Sites.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sites: Vec<site::Site>,
}
