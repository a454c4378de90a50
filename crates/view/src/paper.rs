//! The fit sheet: what a workshop builds from and a shopper signs, ready made for paper.

use serde::{Deserialize, Serialize};

use crate::{Answered, Headline};

/// The sheet.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Paper {
    /// What it is.
    pub heading: String,
    /// What was chosen.
    pub title: String,
    /// What stands over the answer.
    pub headline: Option<Headline>,
    /// Lines of the head: name and value.
    pub facts: Vec<(String, String)>,
    /// The questions and their answers.
    pub answers: Vec<Answered>,
    /// What follows, in order.
    pub sections: Vec<Section>,
}

/// A part of the sheet under a heading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Section {
    /// The heading.
    pub heading: String,
    /// What stands under it.
    pub blocks: Vec<Block>,
}

/// Something on the sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Block {
    /// A paragraph.
    Said(String),
    /// Names and values.
    Facts(Vec<(String, String)>),
    /// The same, in short, side by side.
    Figures(Vec<(String, String)>),
    /// A table.
    Table {
        /// Its headings.
        head: Vec<String>,
        /// Its rows, a text a cell.
        rows: Vec<Vec<String>>,
        /// Sums under it.
        foot: Vec<Vec<String>>,
        /// How many of the last columns hold figures.
        figures: u32,
    },
    /// Things to do, each with a box to tick and more about it.
    Ticks(Vec<(String, Option<String>)>),
    /// Drawings, each SVG text with what it shows.
    Pictures(Vec<(String, String)>),
    /// Something to lay on the plate: the bar that proves the size, and leaves, each with its name, all SVG text at 1:1.
    Template {
        /// The bar.
        bar: String,
        /// Its leaves.
        leaves: Vec<(String, String)>,
    },
    /// Lines to write on.
    Lines(Vec<String>),
}
