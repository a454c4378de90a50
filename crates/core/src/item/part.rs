//! Parts, replacements and the lists a parts catalogue prints.

/// A part number, compared as written among the numbers of a catalogue; one that a person read is found by its
/// [`plain_number`].
pub type PartNumber = String;

/// A part number without what does not count to a person who reads it: spaces, hyphens and letter case.
///
/// # Examples
/// ```
/// use fitup_core::item::plain_number;
/// assert_eq!(plain_number("AX-1104"), plain_number("ax 11\u{2011}04"));
/// assert_ne!(plain_number("AX-1104"), plain_number("AX-1105"));
/// ```
pub fn plain_number(number: &str) -> String {
    let counts = |c: &char| !c.is_whitespace() && !matches!(c, '-' | '\u{2010}'..='\u{2013}');
    number.chars().filter(counts).map(|c| c.to_ascii_uppercase()).collect()
}

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
