//! Parts, their replacements, and the lists a parts catalogue prints.

use serde::{Deserialize, Serialize};

/// A part.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// Part number, compared as written; unique.
    pub number: String,
    /// Name.
    pub name: String,
    /// What replaced it, if it has been replaced.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub replaced: Option<Replacement>,
}

/// The record of a part being replaced.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Replacement {
    /// Numbers of what replaces it: one part, or several that together take its place.
    pub by: Vec<String>,
    /// Whether the old part also serves for the new one.
    pub serves: Serves,
}

/// Which way a replacement holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Serves {
    /// The new part serves for the old, and the old for the new.
    BothWays,
    /// The new part serves for the old only.
    ForwardOnly,
}

/// One printed line of an item's parts list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PartsListRow {
    /// Id of the item.
    pub item: String,
    /// Assembly heading.
    pub assembly: String,
    /// Position on the exploded drawing.
    pub position: String,
    /// Part number, one of the table of parts.
    pub part: String,
    /// Description as printed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub description: String,
    /// Quantity.
    pub quantity: u32,
}
