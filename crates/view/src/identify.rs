//! Which unit it could be.

use serde::{Deserialize, Serialize};

use crate::{Desk, Entry, Kind, Place, Step};

/// What was found on a unit of which nobody knows what it is.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Observed {
    /// What connects it, by the name of the kind of port; `None` = not sure.
    pub kind: Option<String>,
    /// What was found, each thing once.
    pub found: Vec<(Place, Kind, Entry)>,
}

impl Observed {
    /// Takes in what was found, in place of what was found there before.
    pub fn take(&mut self, at: Place, kind: Kind, found: Entry) {
        self.forget(&at, kind);
        self.found.push((at, kind, found));
    }

    /// Forgets what was found.
    pub fn forget(&mut self, at: &Place, kind: Kind) {
        self.found.retain(|(place, of, _)| !(place == at && *of == kind));
    }
}

/// The view of an unknown unit.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Identify {
    /// The kinds of port by their names, and how they are called; "" = not sure.
    pub kinds: Vec<(String, String)>,
    /// The name of the kind that is chosen.
    pub kind: String,
    /// What can be found out.
    pub desk: Desk,
    /// What it could be, likeliest first.
    pub candidates: Vec<Candidate>,
    /// What is said where there is none, or how many more there are.
    pub says: Option<String>,
    /// What to look at next, most telling first.
    pub next: Vec<String>,
}

/// A unit that it could be.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Candidate {
    /// The item.
    pub item: String,
    /// Its port.
    pub port: String,
    /// Item, port and likelihood.
    pub name: String,
    /// What speaks for and against it.
    pub says: Vec<String>,
    /// Its outline as SVG text.
    pub shape: String,
    /// The step that it can be picked in.
    pub step: Option<Step>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_found_twice_stands_once_and_is_forgotten_alone() {
        let at = |what: &str| Place { what: what.into(), ..Place::default() };
        let mut observed = Observed::default();
        observed.take(at("spread"), Kind::Length, Entry::Number("1".into()));
        observed.take(at(""), Kind::Count, Entry::Number("4".into()));
        observed.take(at("spread"), Kind::Length, Entry::Number("2".into()));
        assert_eq!(observed.found.len(), 2);
        observed.forget(&at("spread"), Kind::Length);
        assert_eq!(observed.found, [(at(""), Kind::Count, Entry::Number("4".into()))]);
    }
}
