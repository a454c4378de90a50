//! The drawing field: a picture, or a view of the whole machine with its picture, sliders and figures.

use serde::{Deserialize, Serialize};

use crate::{Compare, Desk, Identify, Lists, Sets, Verdict};

/// A picture as SVG text, with its text alternative inside.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Picture {
    /// The markup; empty as long as there is no room for it or nothing to draw.
    pub svg: String,
    /// What is said where nothing can be drawn.
    pub missing: Option<String>,
    /// The row of the answer that each joint's mark opens, by the joint's number.
    pub opens: Vec<Option<u64>>,
    /// The row that the mark of each clash opens, by the finding's number.
    pub clashes: Vec<(u32, u64)>,
}

/// What stands in the drawing field.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Field {
    /// The machine from the side or from above.
    Drawing(Picture),
    /// A view of the whole machine.
    Whole(Box<Whole>),
    /// The desk: all that is open for the build.
    Desk(Box<Desk>),
    /// The best complete sets.
    Sets(Box<Sets>),
    /// Builds side by side.
    Compare(Box<Compare>),
    /// Two parts lists beside each other.
    Lists(Box<Lists>),
    /// Which unit it could be.
    Identify(Box<Identify>),
}

/// A view of the whole machine.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Whole {
    /// Its picture.
    pub picture: Picture,
    /// Whether the picture is as high as it is wide.
    pub tall: bool,
    /// The answer to the view's question, in its own words, with its figure.
    pub answer: Option<(Verdict, String, String)>,
    /// What can be chosen.
    pub chooser: Option<Chooser>,
    /// Ways side by side.
    pub switches: Vec<Switch>,
    /// What can be moved.
    pub sliders: Vec<Slider>,
    /// What comes of it.
    pub facts: Vec<Fact>,
    /// A caution below.
    pub aside: Option<String>,
}

/// A few names to choose one of, or none.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Chooser {
    /// What is chosen.
    pub name: String,
    /// What choosing none is called.
    pub none: String,
    /// Ids and labels.
    pub options: Vec<(String, String)>,
    /// The id of the one chosen.
    pub chosen: Option<String>,
    /// Whether a site is chosen; else a trailer.
    pub of_sites: bool,
}

/// Two ways side by side.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Switch {
    /// What is chosen between.
    pub name: String,
    /// The ways and their names.
    pub ways: Vec<(Way, String)>,
    /// The one taken.
    pub taken: Way,
}

/// A way of looking.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Way {
    /// Up the ramp forwards.
    Forwards,
    /// Up the ramp backwards.
    Backwards,
    /// Drawn on the ramp.
    OnRamp,
    /// Drawn on the deck.
    OnDeck,
}

/// What a slider sets.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Slide {
    /// Length of the ramps, mm.
    Ramps,
    /// Width of the gate, mm.
    Gateway,
    /// Width of the path, mm.
    Path,
    /// Angle of the boom, degrees.
    Boom,
    /// Angle of the dipper, degrees.
    Dipper,
    /// Angle of the bucket, degrees.
    Bucket,
    /// Mass of the ballast, kg.
    BallastMass,
    /// Place of the ballast, mm ahead of the rear axle.
    BallastPlace,
    /// Where the machine is drawn on its way up the ramp, m.
    RampPlace,
}

/// A slider.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Slider {
    /// What it sets.
    pub sets: Slide,
    /// Whether it moves only what is looked at.
    pub looks_only: bool,
    /// What it is called.
    pub name: String,
    /// The value with its unit.
    pub shown: String,
    /// Least value.
    pub least: f64,
    /// Greatest value.
    pub most: f64,
    /// The step between two values.
    pub step: f64,
    /// The value.
    pub value: f64,
}

/// One figure: name, value, a line beneath, and whether it is out of bounds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Fact {
    /// Name.
    pub name: String,
    /// Value with its unit; `None` = not known.
    pub value: Option<String>,
    /// What it is held against.
    pub against: Option<String>,
    /// What a figure out of bounds comes to; nothing if it is within them, or if the answer is in order all the same.
    pub out: Option<Verdict>,
}
