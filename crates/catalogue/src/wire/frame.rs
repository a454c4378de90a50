//! The table of mounting frames.

use fitup_core::item as core;

use super::body::item_row;
use super::machine::Station;
use super::value::Hours;

item_row! {
    /// A mounting frame.
    Frame => core::Frame {
        /// Hours to put it on; left out = not known.
        optional fitting: Option<Hours>,
        /// Stations it is made for; left out = not known.
        optional stations: Vec<Station>,
        /// What has to come off the machine, in the catalogue's words: "belly mower".
        optional excludes: Vec<String>,
        /// What has to be on the machine, in the catalogue's words: "loader base".
        optional requires: Vec<String>,
    }
}
