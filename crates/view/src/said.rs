//! Words with what stands out in them.

use serde::{Deserialize, Serialize};

/// A piece of a sentence.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Span {
    /// Plain words.
    Text(String),
    /// A figure with its unit, kept in one piece.
    Figure(String),
    /// A part number.
    Part(String),
    /// An item's label.
    Item(String),
}

/// A sentence in pieces.
pub type Said = Vec<Span>;
