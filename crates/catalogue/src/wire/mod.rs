//! The file format, field by field: what stands here is what a catalogue file may say.
//!
//! These types only hold what the file says, in the file's units. Where the core has a type with the
//! same fields, the description names it and lowering follows from it; the rest of lowering stands in
//! the module `lower`. `FORMAT.md` beside this crate's manifest is the same for people.

pub mod adapter;
pub mod body;
pub(crate) mod define;
pub mod equipment;
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

use self::define::record;

/// The number of the format that this crate reads and writes.
pub const FORMAT: u32 = 1;

record! {
    /// A catalogue file.
    pub struct CatalogueFile {
        /// Number of the format: 1.
        required format: u32,
        /// What the catalogue calls itself.
        required name: String,
        /// Edition or date.
        optional edition: String,
        /// A note shown with results, such as that the data are invented.
        optional notice: String,
        /// The units that every number of the file is written in.
        required units: header::Units,
        /// Machines.
        optional machines: Vec<machine::Machine>,
        /// Mounting frames.
        optional frames: Vec<frame::Frame>,
        /// Seat arrangements.
        optional seats: Vec<seat::Seat>,
        /// Implements.
        optional implements: Vec<implement::Implement>,
        /// Adapters.
        optional adapters: Vec<adapter::Adapter>,
        /// Equipment.
        optional equipment: Vec<equipment::Equipment>,
        /// Parts and what replaced them.
        optional parts: Vec<part::Part>,
        /// The lists a parts catalogue prints, line by line.
        optional parts_lists: Vec<part::PartsListRow>,
        /// The maker's guide, if there is one.
        optional guide: Option<guide::Guide>,
        /// Trailers.
        optional trailers: Vec<trailer::Trailer>,
        /// Sites.
        optional sites: Vec<site::Site>,
    }
}
