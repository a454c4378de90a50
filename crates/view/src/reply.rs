//! What the engine answers, part by part.

use serde::{Deserialize, Serialize};

use crate::{Away, Fact, Headline, Options, Picture, Sets, Sheet, Verdict};

/// A part of the answer to a request.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reply {
    /// The number of the request.
    pub number: u32,
    /// The part.
    pub part: Part,
}

/// A part of an answer, in the order in which they come.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Part {
    /// The sheet, with all that can be said at once.
    Sheet(Box<Sheet>),
    /// What the options still lead to.
    Reached(Reached),
    /// What would help.
    Remedies(Remedies),
    /// Figures of a view of the whole machine that take longer.
    Facts(Vec<Fact>),
    /// The best complete sets.
    Sets(Box<Sets>),
    /// What the page is told of the build, as JSON text: the detail of `fitup-change`.
    Change(String),
    /// The build, ready to be taken along.
    Away(Box<Away>),
}

/// What the options still lead to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reached {
    /// What stands over the answer.
    pub headline: Option<Headline>,
    /// The options of the open step.
    pub options: Option<Options>,
    /// What could come of it, as long as nothing stands.
    pub ghost: Option<Picture>,
}

/// What would help.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Remedies {
    /// The build they are for.
    pub of: String,
    /// Why there are none.
    pub none: Option<String>,
    /// All of them, best first.
    pub found: Vec<Remedy>,
    /// How many of them are shown at once.
    pub at_once: u32,
    /// The button that shows the rest.
    pub more: Option<String>,
}

/// One change of the build that helps.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Remedy {
    /// The build with it.
    pub build: String,
    /// What is done.
    pub steps: Vec<String>,
    /// What it settles.
    pub settles: Option<String>,
    /// What it comes to.
    pub verdict: Verdict,
    /// That in a word.
    pub word: String,
    /// What it changes besides.
    pub effect: String,
    /// What it leaves open.
    pub leaves: Option<String>,
}

/// What came of reading a catalogue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Supplied {
    /// Whether it can be used; if not, the one before stays.
    pub is_usable: bool,
    /// Whether it is of a newer format than this version reads.
    pub is_newer: bool,
    /// What is wrong, as JSON text for `fitup-error`.
    pub problems: String,
}
