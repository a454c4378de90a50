//! Parts, replacements and the lists a parts catalogue prints.

/// A part number, compared as written.
pub type PartNumber = String;

/// One record of a part being replaced.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Replacement {
    /// What replaces it: one part, or several that together take its place (a split).
    pub by: Vec<PartNumber>,
    /// Whether the old part also serves for the new one.
    pub both_ways: bool,
}

/// A part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// Number.
    pub number: PartNumber,
    /// Name.
    pub name: String,
    /// Its replacement, if it has been replaced.
    pub replaced: Option<Replacement>,
}

/// One printed line of a parts list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PartsListRow {
    /// Assembly heading.
    pub assembly: String,
    /// Position on the exploded drawing.
    pub position: String,
    /// Part number.
    pub part: PartNumber,
    /// Description.
    pub description: String,
    /// Quantity.
    pub quantity: u32,
}

/// What the maker prints as an item's parts.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PartsList {
    /// The lines, in printed order.
    pub rows: Vec<PartsListRow>,
}
