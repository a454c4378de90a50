//! The sheet: everything that stands on it at once.

use serde::{Deserialize, Serialize};

use crate::{Field, LinkTrouble, Options, Row, Step, Verdict};

/// The sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Sheet {
    /// The build that was asked of, as a link carries it once all of it that cannot be read is left out.
    pub opened: String,
    /// What came of each edit.
    pub outcomes: Vec<Outcome>,
    /// What there is to tell of the link.
    pub notice: Option<Notice>,
    /// The catalogue's name.
    pub catalogue: String,
    /// What is wrong with the catalogue that was read last.
    pub problems: Option<Problems>,
    /// Whether anything is chosen.
    pub begun: bool,
    /// What stands over the answer, where that needs no search.
    pub headline: Option<Headline>,
    /// The questions and their answers.
    pub answers: Vec<Answered>,
    /// The title block's cells.
    pub title: Title,
    /// The figures below the drawing.
    pub figures: Vec<Figure>,
    /// The four steps.
    pub steps: Vec<StepHead>,
    /// What else is in the build.
    pub also: Vec<Also>,
    /// The drawing field.
    pub field: Field,
    /// The options of the open step, where that needs no search.
    pub options: Option<Options>,
    /// The rows of the answer, worst first.
    pub rows: Vec<Row>,
    /// The worst verdict of them all.
    pub worst: Verdict,
    /// The parts, in the view of parts.
    pub parts: Option<Parts>,
    /// The cautions, and the catalogue's own notice.
    pub cautions: Vec<Caution>,
    /// The catalogue's own notice.
    pub own_notice: String,
}

/// What came of an edit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Outcome {
    /// The build after it.
    pub build: String,
    /// Why it did nothing.
    pub refusal: Option<Refusal>,
}

/// Why an edit did nothing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Refusal {
    /// What is wrong with it, and what mends it; empty where what it was meant for is there no more.
    pub says: String,
    /// Whether it is done if it is asked for once more.
    pub is_question: bool,
}

/// What there is to tell of a link.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Notice {
    /// It could not be read.
    Link(LinkTrouble),
    /// It was read; the catalogue does not have everything in it: a sentence for each.
    Missing(Vec<String>),
}

/// What is wrong with a catalogue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Problems {
    /// Whether it is of a newer format than this version reads.
    pub newer: bool,
    /// The first of the mistakes.
    pub listed: Vec<Problem>,
    /// How many more there are, in words.
    pub more: Option<String>,
}

/// One mistake.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Problem {
    /// Where.
    pub place: String,
    /// What.
    pub sentence: String,
    /// What mends it.
    pub mend: String,
}

/// What stands over the answer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Headline {
    /// What shape and colour show; `None` as long as nothing is decided.
    pub verdict: Option<Verdict>,
    /// The answer in a word or two.
    pub word: String,
    /// Why, in a few words.
    pub reason: String,
}

/// A question and its answer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Answered {
    /// The question.
    pub question: String,
    /// The verdict; `None` as long as it is not decided.
    pub verdict: Option<Verdict>,
    /// The answer in the question's own words.
    pub word: String,
    /// In a few words, with its figure.
    pub line: Option<String>,
}

/// The title block's cells.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Title {
    /// Whether the maker's list holds it.
    pub standing: String,
    /// What is to be bought.
    pub to_buy: String,
    /// Workshop time.
    pub work: String,
}

/// A figure of the footprint.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Figure {
    /// Which: the end of its message key.
    pub name: String,
    /// The value.
    pub value: Option<String>,
    /// Its change against the bare machine.
    pub change: Option<String>,
}

/// A step as it stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct StepHead {
    /// The step.
    pub step: Step,
    /// The label of what is picked.
    pub chosen: Option<String>,
    /// The id of the item that is picked; `None` for nothing and for the bare hitch.
    pub item: Option<String>,
    /// Whether that is on hand.
    pub on_hand: bool,
    /// Its outline as SVG text.
    pub shape: String,
    /// Price, "on hand", or how many options there are.
    pub aside: String,
}

/// Something else in the build.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Also {
    /// What it is.
    pub words: String,
    /// Which it is.
    pub extra: Extra,
}

/// What else can be in a build, by its place in its list and the length of that.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Extra {
    /// An adapter.
    Adapter(u32, u32),
    /// Work.
    Change(u32, u32),
}

/// The table of parts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Parts {
    /// Its lines.
    pub lines: Vec<PartsLine>,
    /// What it costs together.
    pub total: String,
    /// Workshop time.
    pub work: String,
    /// The bolts of the joints: a heading and a line for each.
    pub bolts: Option<(String, Vec<String>)>,
    /// What can be on the machine.
    pub equipment: Vec<EquipmentLine>,
    /// What comes off, moves and goes on: a heading and a line for each step.
    pub strip: Option<(String, Vec<String>)>,
}

/// A piece of equipment that can be on the machine.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct EquipmentLine {
    /// Its id.
    pub id: String,
    /// Its label.
    pub label: String,
    /// Whether it is on.
    pub is_on: bool,
}

/// A line of the table of parts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PartsLine {
    /// The item and whether it is on hand; nothing for a fitting.
    pub item: Option<(String, bool)>,
    /// What it is.
    pub kind: String,
    /// Its label.
    pub label: String,
    /// How many.
    pub quantity: String,
    /// Its price, or how it is come by.
    pub price: String,
}

/// A caution.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Caution {
    /// Its heading.
    pub title: String,
    /// What it says.
    pub body: String,
}
