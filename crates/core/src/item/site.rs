//! Places the finished machine has to get into.

use crate::quantity::{Length, Mass};

/// A site.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Site {
    /// The row's id.
    pub id: String,
    /// The name people see.
    pub label: String,
    /// Free note.
    pub note: String,
    /// Clear width of the gate.
    pub gate_width: Option<Length>,
    /// Clear height of the gate.
    pub gate_height: Option<Length>,
    /// Width of the path behind it.
    pub path_width: Option<Length>,
    /// Whether the path turns a right angle.
    pub right_angle_turn: Option<bool>,
    /// Greatest load the ground or a cover takes on one axle.
    pub greatest_axle_load: Option<Mass>,
}
