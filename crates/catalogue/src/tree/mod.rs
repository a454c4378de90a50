//! The file as a tree in which every value knows its place.
//!
//! JSON text and the authoring tables both become this tree; decoding, checking and locating
//! are the same for both.

mod json;
mod locate;

pub use bumpalo::Bump;
pub use json::parse;
pub use locate::{Lines, find, locate, row_id};

/// Greatest size of a file, bytes. A catalogue of 400 machines, 150 frames and 1,500 implements has some
/// 18 MB as it is written; no source.
pub const GREATEST_SIZE: usize = 48 << 20;

/// Greatest number of values in a file: holds the tree of a hostile file to some 150 MB. A file of
/// 5 MB has half a million. No source.
pub const GREATEST_COUNT: usize = 3_000_000;

/// Greatest depth of nesting; the format itself needs 9. No source.
pub const GREATEST_DEPTH: usize = 32;

/// A value and its place. A tree lives in one block of memory and is let go of in one: a file of
/// 5 MB has half a million values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Node<'t> {
    /// Where it starts: a byte of the text, or the number of a cell.
    pub at: u32,
    /// What it is.
    pub kind: Kind<'t>,
}

/// What a value is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Kind<'t> {
    /// `null`.
    Null,
    /// `true` or `false`.
    Flag(bool),
    /// A number as written; may be `NaN` or too great for a machine's number.
    Number(&'t str),
    /// Text.
    Text(&'t str),
    /// A list.
    List(&'t [Node<'t>]),
    /// A record.
    Record(&'t [Entry<'t>]),
}

/// One field of a record.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Entry<'t> {
    /// Where the field's name starts.
    pub at: u32,
    /// The field's name.
    pub name: &'t str,
    /// Its value.
    pub value: Node<'t>,
}

impl<'t> Node<'t> {
    /// The value of a field, if this is a record that has it.
    pub fn field(self, name: &str) -> Option<Node<'t>> {
        match self.kind {
            Kind::Record(entries) => entries.iter().find(|entry| entry.name == name).map(|entry| entry.value),
            _ => None,
        }
    }

    /// The text, if it is one.
    pub const fn text(self) -> Option<&'t str> {
        match self.kind {
            Kind::Text(text) => Some(text),
            _ => None,
        }
    }

    /// What it is, in a word: the `found` of a problem.
    pub const fn word(self) -> &'static str {
        match self.kind {
            Kind::Null => "null",
            Kind::Flag(_) => "flag",
            Kind::Number(_) => "number",
            Kind::Text(_) => "text",
            Kind::List(_) => "list",
            Kind::Record(_) => "record",
        }
    }
}
