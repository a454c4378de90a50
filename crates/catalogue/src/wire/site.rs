//! The table of sites.

use fitup_core::item as core;

use super::define::record;
use super::value::{Length, Mass};

record! {
    /// A place the finished machine has to get into.
    pub struct Site => core::Site {
        /// Id of the row: lower-case letters, digits and hyphens, unique over all tables of the file.
        required id: String,
        /// The name people see.
        required label: String,
        /// Free note.
        optional note: String,
        /// Clear width of the gate.
        optional gate_width: Option<Length>,
        /// Clear height of the gate; of an open gateway a height that everything passes.
        optional gate_height: Option<Length>,
        /// Width of the path behind it.
        optional path_width: Option<Length>,
        /// Whether the path turns a right angle.
        optional right_angle_turn: Option<bool>,
        /// Greatest load the ground or a cover takes on one axle.
        optional greatest_axle_load: Option<Mass>,
    }
}
