//! The one shape every answer has. A finding is a fact as data; text is made from it elsewhere.

mod coded;
mod declared;
mod figure;
mod word;

pub use coded::{AxleName, Unstated};
#[doc(hidden)]
pub use declared::kebab;
pub use declared::{Declared, DeclaredFigure, Fact, Question};
pub use figure::{
    Count, Dimension, Drawn, Either, Figure, Fineness, Kind, Margin, Name, NeededLength, NeededMass, PartNumber,
    PartSize, Probability, Quantity, Ratio, Share, Value,
};

use crate::item::{ItemRef, Role};
use crate::quantity::{Length, Tool};

/// What a finding, a joint or a build comes to; better first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Verdict {
    /// It goes on as it is.
    #[default]
    BoltsUp,
    /// It goes on with work or parts.
    BoltsUpWithWork,
    /// Something has to be looked at or measured first.
    CheckFirst,
    /// It does not go on.
    WontMount,
}

impl Verdict {
    /// Every verdict, best first.
    pub const ALL: [Self; 4] = [Self::BoltsUp, Self::BoltsUpWithWork, Self::CheckFirst, Self::WontMount];
}

/// Whether the guide lists the set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Standing {
    /// The guide lists the whole set.
    Listed,
    /// The guide does not list the set; it has been worked out.
    OffGuide,
}

/// Grade of evidence, strongest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Grade {
    /// The guide or the maker's own pairing says so.
    Listed,
    /// The same part bears the joint in a listed set.
    SamePart,
    /// A replacement record links the parts.
    ReplacedPart,
    /// Measured on the unit.
    Measured,
    /// Read from drawings or literature.
    Drawing,
    /// Nothing is known.
    None,
}

/// Why a joint's listing holds, or which values the finding rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Evidence {
    /// Grade.
    pub grade: Grade,
    /// Items listed together that the joint takes its listing from (the two items themselves
    /// when the grade is *listed*).
    pub witness: Option<(ItemRef, ItemRef)>,
    /// Row of the guide that lists the witness, counted from 0.
    pub guide_row: Option<usize>,
    /// Lineage from the witness's part to the build's, for each side that differs.
    pub chains: Vec<Chain>,
    /// Tools the measured values were taken with.
    pub tools: Vec<Tool>,
    /// Part numbers that were read off the unit, where the finding rests on them.
    pub read: Vec<ReadOff>,
}

/// Part numbers read off a unit.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct ReadOff {
    /// The item.
    pub item: ItemRef,
    /// Its port.
    pub port: String,
    /// The numbers.
    pub parts: Vec<String>,
    /// Who read them.
    pub by: String,
    /// When.
    pub when: String,
}

impl Evidence {
    /// Evidence of a grade with no witness.
    pub const fn of(grade: Grade) -> Self {
        Self { grade, witness: None, guide_row: None, chains: Vec::new(), tools: Vec::new(), read: Vec::new() }
    }
}

/// How a part of the build comes to stand for a part of a listed item.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Chain {
    /// The item in the build.
    pub item: ItemRef,
    /// The listed item it stands for at this joint.
    pub stands_for: ItemRef,
    /// Steps from the listed item's part to the build's, empty when they are the same.
    pub steps: Vec<ChainStep>,
    /// The part numbers that bear the joint on the item in the build.
    pub parts: Vec<String>,
}

/// One replacement record used.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct ChainStep {
    /// The old part.
    pub old: String,
    /// What replaced it.
    pub new: Vec<String>,
    /// Whether the old one also serves for the new one.
    pub both_ways: bool,
    /// Whether the step was taken from new to old (allowed only both ways).
    pub backwards: bool,
}

/// What a finding is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Subject {
    /// The joint of this role between two items.
    Joint(Role, ItemRef, ItemRef),
    /// Clearance between two items.
    Clearance(ItemRef, ItemRef),
    /// One item by itself.
    Item(ItemRef),
    /// Hydraulics of the whole build.
    Hydraulics,
    /// Drive of the whole build.
    Drive,
    /// Loads on axles and tyres.
    Loads,
    /// Seat and controls.
    Operator,
    /// Wiring and switches.
    Wiring,
    /// Travelling on a trailer.
    Loading,
    /// Getting into the site.
    Site,
    /// Digging.
    Digging,
    /// The whole build.
    Build,
}

/// The usual cautions, shown with findings they bear on and on the sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Caution {
    /// Fit-up is a planning aid; manuals, ratings, law and a qualified workshop come first.
    PlanningAid,
    /// A digging arm on a three-point hitch can be forced up and over towards the operator.
    ArmOnHitch,
    /// Roll-over bar up and belt worn.
    RollOverBarUp,
    /// Drilling or welding a frame or roll-over structure is the maker's or an engineer's decision.
    DrillingOrWelding,
    /// Front axle too light to steer.
    LightFrontAxle,
    /// Hydraulic oil under pressure.
    HydraulicPressure,
    /// Shafts that turn.
    RotatingShafts,
    /// An implement that hangs on a hoist.
    Hoisting,
    /// Working under raised parts.
    RaisedParts,
    /// A static tip angle is not a safe working slope.
    Slopes,
    /// Excavations: protective systems, utilities located first.
    Excavations,
    /// Loading ramps.
    LoadingRamps,
    /// Tie-down.
    TieDown,
    /// Road limits differ by place.
    RoadLimits,
}

impl Caution {
    /// Every caution, in the order they are shown.
    pub const ALL: [Self; 14] = [
        Self::PlanningAid,
        Self::ArmOnHitch,
        Self::RollOverBarUp,
        Self::DrillingOrWelding,
        Self::LightFrontAxle,
        Self::HydraulicPressure,
        Self::RotatingShafts,
        Self::Hoisting,
        Self::RaisedParts,
        Self::Slopes,
        Self::Excavations,
        Self::LoadingRamps,
        Self::TieDown,
        Self::RoadLimits,
    ];
}

/// What would settle an open finding.
#[derive(Debug, Clone, PartialEq)]
pub enum Check {
    /// Compare the part numbers on two pieces.
    CompareParts {
        /// First item and port.
        a: (ItemRef, String),
        /// Second item and port.
        b: (ItemRef, String),
    },
    /// Measure a dimension of a port.
    Measure {
        /// The item.
        item: ItemRef,
        /// The port's name.
        port: String,
        /// The dimension's name, kebab-case.
        dimension: String,
        /// How precisely, where it is known what would settle it.
        within: Option<Length>,
    },
    /// Measure all of these dimensions: fewer of them do not settle it.
    MeasureAll(Vec<Asked>),
    /// Read the part numbers of a piece: each of these sets of numbers would settle it.
    ReadParts {
        /// The item.
        item: ItemRef,
        /// The port's name.
        port: String,
        /// Sets of part numbers that would, nearest first.
        any_of: Vec<SettlingParts>,
    },
    /// Measure the gap between two shapes, or find out where on their items they sit.
    Gap {
        /// First item and its shape.
        a: (ItemRef, String),
        /// Second item and its shape.
        b: (ItemRef, String),
        /// The gap that is wanted.
        wanted: Length,
    },
    /// Look whether something is there.
    Look {
        /// The item.
        item: ItemRef,
        /// What to look for, in the catalogue's words or a dimension's name.
        what: String,
    },
    /// Find out a value of an item that the catalogue does not state.
    FindOut {
        /// The item.
        item: ItemRef,
        /// The value.
        what: Unstated,
    },
    /// Ask the maker or dealer about the pair.
    Ask {
        /// First item.
        a: ItemRef,
        /// Second item.
        b: ItemRef,
    },
}

/// A dimension to measure, and how precisely.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// The item.
    pub item: ItemRef,
    /// The port's name.
    pub port: String,
    /// The dimension's name, kebab-case.
    pub dimension: String,
    /// Half range that it has to be known to.
    pub within: Length,
}

/// Part numbers that would prove a joint by a listed set, if a piece bore them.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct SettlingParts {
    /// The numbers, all of them on the one piece.
    pub parts: Vec<String>,
    /// The items listed together that the joint would take its listing from, carrier first.
    pub witness: (ItemRef, ItemRef),
    /// Row of the guide that lists the witness, counted from 0.
    pub guide_row: Option<usize>,
}

/// One fact with its verdict, subject, evidence and figures.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// What kind of fact; the words have one sentence for each, see [`crate::fit::declared`].
    pub code: &'static str,
    /// The question it belongs to.
    pub question: Question,
    /// What it is about.
    pub subject: Subject,
    /// What it comes to.
    pub verdict: Verdict,
    /// What it rests on.
    pub evidence: Evidence,
    /// Its figures.
    pub figures: Vec<Figure>,
    /// Cautions that go with it.
    pub cautions: Vec<Caution>,
    /// What is wanted to settle it, if it is open, untried. What is shown comes from [`crate::search::checks`].
    pub checks: Vec<Check>,
}

impl Finding {
    /// A finding of a fact, with no caution or check.
    pub fn of<F: Fact>(fact: F, subject: Subject, verdict: Verdict, grade: Grade) -> Self {
        Self {
            code: F::DECLARED.code,
            question: F::DECLARED.question,
            subject,
            verdict,
            evidence: Evidence::of(grade),
            figures: fact.figures(),
            cautions: Vec::new(),
            checks: Vec::new(),
        }
    }

    /// With a caution more.
    #[must_use]
    pub fn caution(mut self, caution: Caution) -> Self {
        self.cautions.push(caution);
        self
    }

    /// With a check more.
    #[must_use]
    pub fn check(mut self, check: Check) -> Self {
        self.checks.push(check);
        self
    }

    /// The value of a figure by its name.
    pub fn figure(&self, name: &str) -> Option<&Value> {
        self.figures.iter().find(|figure| figure.name == name).map(|figure| &figure.value)
    }
}
