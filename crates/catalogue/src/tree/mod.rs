//! The file as a tree in which every value knows its place.
//!
//! JSON text and the authoring tables both become this tree; decoding, checking and locating
//! are the same for both.

mod json;
mod locate;

use std::borrow::Cow;

pub use json::parse;
pub use locate::{Lines, find, row_id};

/// Greatest size of a file, bytes. A catalogue of thousands of items has some 5 MB; no source.
pub const GREATEST_SIZE: usize = 16 << 20;

/// Greatest number of values in a file: holds the tree of a hostile file to some 100 MB. No source.
pub const GREATEST_COUNT: usize = 2_000_000;

/// Greatest depth of nesting; the format itself needs 9. No source.
pub const GREATEST_DEPTH: usize = 32;

/// A value and its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Node<'t> {
    /// Where it starts: a byte of the text, or the number of a cell.
    pub at: u32,
    /// What it is.
    pub kind: Kind<'t>,
}

/// What a value is.
#[derive(Debug, Clone, PartialEq)]
pub enum Kind<'t> {
    /// `null`.
    Null,
    /// `true` or `false`.
    Flag(bool),
    /// A number as written; may be `NaN` or too great for a machine's number.
    Number(Cow<'t, str>),
    /// Text.
    Text(Cow<'t, str>),
    /// A list.
    List(Vec<Node<'t>>),
    /// A record.
    Record(Vec<Entry<'t>>),
    /// A value that was reported as wrong: stands for whatever is wanted in its place, so that
    /// decoding can go on to the next fault.
    Anything,
}

/// One field of a record.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry<'t> {
    /// Where the field's name starts.
    pub at: u32,
    /// The field's name.
    pub name: Cow<'t, str>,
    /// Its value.
    pub value: Node<'t>,
}

impl<'t> Node<'t> {
    /// The value of a field, if this is a record that has it.
    pub fn field(&self, name: &str) -> Option<&Node<'t>> {
        match &self.kind {
            Kind::Record(entries) => entries.iter().find(|entry| entry.name == name).map(|entry| &entry.value),
            _ => None,
        }
    }

    /// The value of a field, to change.
    pub fn field_mut(&mut self, name: &str) -> Option<&mut Node<'t>> {
        match &mut self.kind {
            Kind::Record(entries) => entries.iter_mut().find(|entry| entry.name == name).map(|entry| &mut entry.value),
            _ => None,
        }
    }

    /// The text, if it is one.
    pub fn text(&self) -> Option<&str> {
        match &self.kind {
            Kind::Text(text) => Some(text),
            _ => None,
        }
    }

    /// What it is, in a word: the `found` of a problem.
    pub fn word(&self) -> &'static str {
        match self.kind {
            Kind::Null => "null",
            Kind::Flag(_) => "flag",
            Kind::Number(_) => "number",
            Kind::Text(_) => "text",
            Kind::List(_) => "list",
            Kind::Record(_) => "record",
            Kind::Anything => "anything",
        }
    }
}
