//! The options of the open step.

use serde::{Deserialize, Serialize};

use crate::{Step, Verdict};

/// The options of a step: as many cards as are asked for, of so many.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Options {
    /// The step.
    pub step: Step,
    /// All options of the step, searched or not.
    pub all: u32,
    /// Those that answer the search.
    pub found: u32,
    /// The first of these.
    pub cards: Vec<Card>,
}

/// One option.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Card {
    /// Its id; `None` = the bare hitch.
    pub id: Option<String>,
    /// Whether it is picked.
    pub chosen: bool,
    /// Its label.
    pub name: String,
    /// Its price, or that it is on hand.
    pub price: String,
    /// The best that is still reachable through it; the mark's shape.
    pub verdict: Option<Verdict>,
    /// Whether the mark has the colour of an answer.
    pub coloured: bool,
    /// The verdict in a word.
    pub word: String,
    /// Why it is no better.
    pub why: String,
    /// Its outline as SVG text.
    pub shape: String,
}
