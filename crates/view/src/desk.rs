//! What can be measured, read or looked for on a unit, one thing at a time.

use serde::{Deserialize, Serialize};

use crate::{Photo, PhotoShown, Picture, Said, Tool, Units};

/// A place of a unit, by ids and names.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Place {
    /// The item.
    pub item: String,
    /// Its port; empty for the unit as a whole.
    pub port: String,
    /// The dimension, or what is looked for; empty for numbers.
    pub what: String,
}

/// What kind of thing is found out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Kind {
    /// A length, measured.
    Length,
    /// Part numbers, read off.
    Numbers,
    /// Whether it is there.
    Presence,
    /// A serial number.
    Serial,
    /// How many holes or points there are.
    Count,
}

/// What was found.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Entry {
    /// A length.
    Length {
        /// Every reading as it was typed.
        readings: Vec<String>,
        /// The units that a number without one is in.
        unit: Units,
        /// How far it may be off as it was typed; empty = as the tool usually is.
        plus_minus: String,
        /// What it was measured with.
        tool: Tool,
        /// A note.
        note: String,
    },
    /// Part numbers.
    Numbers {
        /// As they were typed.
        typed: String,
        /// Who read them.
        by: String,
    },
    /// Whether it is there.
    Presence(bool),
    /// A serial number or a count, as it was typed.
    Number(String),
    /// How far the holes of a port are apart, marked on a photograph.
    Photo(Photo),
}

/// What is open on a desk, what was found, and what is found out now.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Desk {
    /// How far it is: "2 of 5"; or that nothing is open.
    pub progress: String,
    /// What is open, that which settles most first.
    pub tasks: Vec<Task>,
    /// The one at hand.
    pub now: Option<Box<Now>>,
    /// What was found.
    pub taken: Vec<Taken>,
    /// What has to be found out and cannot be entered.
    pub besides: Vec<Said>,
    /// The mark before decimals.
    pub decimal_mark: String,
    /// The tools and how they are called.
    pub tools: Vec<(Tool, String)>,
}

impl Desk {
    /// The task at hand, and those that follow it.
    pub fn from_here(&self) -> Vec<u64> {
        let keys = self.tasks.iter().map(|task| task.key);
        keys.skip_while(|key| self.now.as_ref().is_some_and(|now| now.key != *key)).collect()
    }
}

/// Something that is open.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Task {
    /// A number that no other has.
    pub key: u64,
    /// What it is.
    pub name: String,
    /// Of what.
    pub of: String,
}

/// What is found out now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Now {
    /// Its task's number.
    pub key: u64,
    /// Where.
    pub at: Place,
    /// Of what kind it is.
    pub kind: Kind,
    /// What it is.
    pub name: String,
    /// Of what.
    pub of: String,
    /// How it is done and what hangs on it, a sentence each.
    pub says: Vec<String>,
    /// Where it is done.
    pub picture: Picture,
    /// The tool that is good enough for it.
    pub tool: Tool,
    /// What the marks on a photograph come to; `None` where nothing can be taken from one.
    pub photo: Option<PhotoShown>,
}

/// Something that was found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Taken {
    /// Where.
    pub at: Place,
    /// Of what kind it is.
    pub kind: Kind,
    /// All of it in a line.
    pub line: String,
    /// Whether it could not be understood.
    pub is_wrong: bool,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn from_here_on_what_was_passed_over_is_left_out() {
        let task = |key| Task { key, name: String::new(), of: String::new() };
        let now = Now {
            key: 2,
            at: Place::default(),
            kind: Kind::Length,
            name: String::new(),
            of: String::new(),
            says: Vec::new(),
            picture: Picture::default(),
            tool: Tool::Caliper,
            photo: None,
        };
        let mut desk = Desk { tasks: [1, 2, 3].map(task).to_vec(), ..Desk::default() };
        assert_eq!(desk.from_here(), [1, 2, 3]);
        desk.now = Some(Box::new(now));
        assert_eq!(desk.from_here(), [2, 3]);
    }
}
