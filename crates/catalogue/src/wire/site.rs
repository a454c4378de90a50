//! The table of sites.

use serde::{Deserialize, Serialize};

use super::value::{Length, Mass};

/// A place the finished machine has to get into.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// Id of the row: lower-case letters, digits and hyphens, unique over all tables of the file.
    pub id: String,
    /// The name people see.
    pub label: String,
    /// Free note.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// Clear width of the gate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gate_width: Option<Length>,
    /// Clear height of the gate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gate_height: Option<Length>,
    /// Width of the path behind it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub path_width: Option<Length>,
    /// Whether the path turns a right angle; left out = false.
    #[serde(default, skip_serializing_if = "is_no")]
    pub right_angle_turn: bool,
    /// Greatest load the ground or a cover takes on one axle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub greatest_axle_load: Option<Mass>,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde passes a reference")]
fn is_no(flag: &bool) -> bool {
    !*flag
}
