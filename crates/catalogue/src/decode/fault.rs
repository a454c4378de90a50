//! What goes wrong when a value is not what the format wants, and where.

use std::fmt;

use serde::de;

use crate::shortened::shortened;

/// What is wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum Wrong {
    /// A value of another sort.
    Type {
        /// What stands there, in a word.
        found: String,
        /// What is wanted, in a word.
        expected: String,
    },
    /// A field the record does not have.
    UnknownField {
        /// The name.
        name: String,
        /// The record's fields.
        known: &'static [&'static str],
    },
    /// A field the record has to have.
    MissingField(&'static str),
    /// A field that stands twice.
    DuplicateField(&'static str),
    /// A word that is none of those wanted.
    UnknownWord {
        /// The word.
        word: String,
        /// The wanted ones.
        known: &'static [&'static str],
    },
    /// A record that has to have exactly one of some fields.
    NotExactlyOne {
        /// The fields found.
        found: Vec<String>,
        /// The fields there may be.
        known: &'static [&'static str],
    },
    /// A number that is none, or too great for one.
    NotFinite(String),
    /// A number out of range.
    OutOfRange {
        /// The number as written.
        found: String,
        /// Least.
        least: String,
        /// Greatest.
        greatest: String,
    },
    /// A number that ought to be whole.
    NotWhole(String),
    /// Text that may not stand in a file: its first unsafe character.
    UnsafeCharacter(char),
    /// Text that is too long: how long it is.
    TooLong(usize),
}

/// Which part of a value the fault is in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Spot {
    /// Not found out yet.
    #[default]
    Unknown,
    /// The value itself.
    Value,
    /// The field of a record by its index among the entries.
    Entry(usize),
}

/// A fault and the way to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault(pub Box<Inner>);

/// The inside of a [`Fault`].
#[derive(Debug, Clone, PartialEq)]
pub struct Inner {
    /// What is wrong.
    pub wrong: Wrong,
    /// Which part of the value at the end of the way.
    pub spot: Spot,
    /// The way to the value, last step first: indices of list elements and of record entries.
    pub way: Vec<usize>,
}

impl Fault {
    /// A fault whose place is not known yet.
    pub fn new(wrong: Wrong) -> Self {
        Self(Box::new(Inner { wrong, spot: Spot::Unknown, way: Vec::new() }))
    }

    /// At this spot of the value in hand, unless the fault lies deeper.
    #[must_use]
    pub fn at(mut self, spot: Spot) -> Self {
        if self.0.spot == Spot::Unknown {
            self.0.spot = spot;
        }
        self
    }

    /// One step further from the fault.
    #[must_use]
    pub fn below(mut self, step: usize) -> Self {
        self.0.way.push(step);
        self
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        write!(f, "{:?}", self.0)
    }
}

impl std::error::Error for Fault {}

impl de::Error for Fault {
    fn custom<T: fmt::Display>(message: T) -> Self {
        Self::new(Wrong::Type { found: "value".into(), expected: message.to_string() })
    }

    fn invalid_type(found: de::Unexpected, expected: &dyn de::Expected) -> Self {
        let found = match found {
            de::Unexpected::Bool(_) => "flag",
            de::Unexpected::Unsigned(_) | de::Unexpected::Signed(_) | de::Unexpected::Float(_) => "number",
            de::Unexpected::Str(_) | de::Unexpected::UnitVariant => "text",
            de::Unexpected::Unit | de::Unexpected::Option => "null",
            de::Unexpected::Seq => "list",
            de::Unexpected::Map | de::Unexpected::NewtypeVariant | de::Unexpected::StructVariant => "record",
            _ => "value",
        };
        Self::new(Wrong::Type { found: found.into(), expected: expected.to_string() })
    }

    fn unknown_variant(word: &str, known: &'static [&'static str]) -> Self {
        Self::new(Wrong::UnknownWord { word: shortened(word), known })
    }

    fn unknown_field(name: &str, known: &'static [&'static str]) -> Self {
        Self::new(Wrong::UnknownField { name: shortened(name), known })
    }

    fn missing_field(name: &'static str) -> Self {
        Self::new(Wrong::MissingField(name))
    }

    fn duplicate_field(name: &'static str) -> Self {
        Self::new(Wrong::DuplicateField(name))
    }
}
