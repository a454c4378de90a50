//! What the answer says, subject by subject.

use serde::{Deserialize, Serialize};

use crate::{Desk, Grade, Picture, Said, Verdict};

/// What the answer says of one subject.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Row {
    /// A number that no other row has, and that this subject's row has in every answer.
    pub key: u64,
    /// Its worst verdict.
    pub verdict: Verdict,
    /// That verdict in a word.
    pub word: String,
    /// What it is about.
    pub name: String,
    /// The question it belongs to.
    pub question: String,
    /// The two items between which it is.
    pub between: Option<String>,
    /// Its worst finding in a sentence.
    pub line: Said,
    /// How firm the evidence is, in a word, and what that means.
    pub evidence: (Grade, String, String),
    /// Its findings, worst first, if it is opened.
    pub findings: Vec<Finding>,
    /// The joint, if it is one and opened.
    pub joint: Option<Box<Joint>>,
}

/// One finding in full.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Finding {
    /// The question it belongs to.
    pub question: String,
    /// Its verdict.
    pub verdict: Verdict,
    /// That verdict in a word.
    pub word: String,
    /// Its lines.
    pub lines: Vec<Line>,
}

/// A line of a finding.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Line {
    /// What it is for.
    pub role: LineRole,
    /// What it says.
    pub said: Said,
}

/// What a line of a finding is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum LineRole {
    /// It says what is the matter.
    Says,
    /// It says what to check.
    Check,
    /// It says on what the rest stands.
    Rests,
}

/// A joint opened.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Joint {
    /// Its two sides.
    pub sides: [Side; 2],
    /// Its two hole patterns laid over each other, where it has them.
    pub overlay: Option<Picture>,
    /// What can be measured, read and looked for on it; nothing where a desk is looked at already.
    pub desk: Option<Desk>,
}

/// One side of a joint.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Side {
    /// What the item is.
    pub kind: String,
    /// Its label.
    pub label: String,
    /// Part numbers of the port.
    pub parts: Vec<String>,
    /// The port's name.
    pub port: String,
}
