//! Parts, their replacements, and the lists a parts catalogue prints.

use super::define::{record, words};

record! {
    /// A part.
    #[derive(Eq)]
    pub struct Part {
        /// Part number, compared as written; unique.
        required number: String,
        /// Name.
        required name: String,
        /// What replaced it, if it has been replaced.
        optional replaced: Option<Replacement>,
    }
}

record! {
    /// The record of a part being replaced.
    #[derive(Eq)]
    pub struct Replacement {
        /// Numbers of what replaces it: one part, or several that together take its place.
        required by: Vec<String>,
        /// Whether the old part also serves for the new one.
        required serves: Serves,
    }
}

words! {
    /// Which way a replacement holds.
    pub enum Serves {
        /// The new part serves for the old, and the old for the new.
        BothWays "both_ways",
        /// The new part serves for the old only.
        ForwardOnly "forward_only",
    }
}

record! {
    /// One printed line of an item's parts list.
    #[derive(Eq)]
    pub struct PartsListRow {
        /// Id of the item.
        required item: String,
        /// Assembly heading.
        required assembly: String,
        /// Position on the exploded drawing.
        required position: String,
        /// Part number, one of the table of parts.
        required part: String,
        /// Description as printed.
        optional description: String,
        /// Quantity.
        required quantity: u32,
    }
}
