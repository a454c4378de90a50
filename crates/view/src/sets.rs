//! The best complete sets.

use serde::{Deserialize, Serialize};

use crate::{SetOrder, Step, Verdict};

/// The view of the best complete sets.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Sets {
    /// What the picks of the build are, and whether each is kept.
    pub kept: Vec<(Step, String, bool)>,
    /// What sets of one answer can be ordered by.
    pub orders: Vec<(SetOrder, String)>,
    /// The sets, best first; `None` = they are being looked for.
    pub found: Option<Vec<SetShown>>,
    /// What is said above them.
    pub says: Option<String>,
}

/// One complete set.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SetShown {
    /// The build, as a link carries it.
    pub build: String,
    /// Its items, without those that every set has.
    pub name: String,
    /// What it comes to.
    pub verdict: Verdict,
    /// That in a word.
    pub word: String,
    /// That nothing beats it.
    pub unbeaten: Option<String>,
    /// What it is ranked by: names and values.
    pub measures: Vec<(String, String)>,
}
