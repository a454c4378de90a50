//! Builds side by side.

use serde::{Deserialize, Serialize};

use crate::{Headline, Picture, Verdict};

/// The comparison.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Compare {
    /// The builds: the one at hand, then those that are pinned.
    pub builds: Vec<Compared>,
    /// What they come to, line by line.
    pub rows: Vec<CompareRow>,
    /// Their outlines laid over each other.
    pub picture: Picture,
    /// What to do, or that there is no difference.
    pub says: Option<String>,
}

/// A build of a comparison.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Compared {
    /// What it is called in the drawing and over its column.
    pub name: String,
    /// The build, as a link carries it.
    pub build: String,
    /// What stands over its answer.
    pub headline: Headline,
}

/// A line of a comparison.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CompareRow {
    /// What it is about.
    pub name: String,
    /// A value each; with a verdict where it is an answer.
    pub values: Vec<(Option<Verdict>, String)>,
    /// Whether they differ.
    pub differs: bool,
}
