//! The maker's guide.

use serde::{Deserialize, Serialize};

/// What a column says that admits whatever stands there.
pub const ANY: &str = "any";

/// What a column says where nothing may stand.
pub const WITHOUT: &str = "without";

/// The maker's guide: the sets sold together.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Guide {
    /// Its name.
    pub name: String,
    /// Its date as ISO 8601 writes it: 2024-03-01.
    pub date: String,
    /// The sets.
    pub sets: Vec<GuideSet>,
}

/// One set of the guide. Each column is an id, `any`, or `without`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct GuideSet {
    /// Machine.
    pub machine: String,
    /// Mounting frame; `without` = on the machine's own hitch.
    pub frame: String,
    /// Seat arrangement.
    pub seat: String,
    /// Implement.
    pub implement: String,
}
