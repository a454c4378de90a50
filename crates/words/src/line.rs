//! Lines of text as data, so that a view can mark what is a figure, a part number or an item.

use fitup_core::finding::Subject;
use fitup_core::item::ItemRef;

/// A stretch of a line.
#[derive(Debug, Clone, PartialEq)]
pub enum Span {
    /// Plain words.
    Text(String),
    /// A figure in the reader's units, with the name of the figure it shows.
    Figure {
        /// Name, kebab-case, as the finding has it.
        name: &'static str,
        /// The figure as written.
        text: String,
    },
    /// A part number.
    Part(String),
    /// An item.
    Item {
        /// The item.
        item: ItemRef,
        /// Its label in the catalogue.
        label: String,
    },
    /// Other words of the catalogue: names of ports and shapes, connectors.
    Label(String),
}

impl Span {
    /// The words alone.
    pub fn text(&self) -> &str {
        match self {
            Self::Text(text) | Self::Figure { text, .. } | Self::Part(text) | Self::Label(text) => text,
            Self::Item { label, .. } => label,
        }
    }
}

/// What a line is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LineRole {
    /// The finding itself, in a sentence.
    Sentence,
    /// What it rests on.
    Evidence,
    /// One step of a lineage chain.
    Step,
    /// The part numbers that bear the joint.
    Parts,
    /// A caution that goes with it.
    Caution,
}

/// A line of text.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// What it is for.
    pub role: LineRole,
    /// Its stretches, in order.
    pub spans: Vec<Span>,
    /// What it is about, so that the drawing can mark it.
    pub target: Option<Subject>,
}

impl Line {
    /// The words alone.
    pub fn text(&self) -> String {
        text(&self.spans)
    }
}

/// The words of spans alone.
pub fn text(spans: &[Span]) -> String {
    spans.iter().map(Span::text).collect()
}
