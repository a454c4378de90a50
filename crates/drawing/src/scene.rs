//! A picture as plain data: primitives on a sheet, in millimetres.

use fitup_core::item::ItemRef;
use fitup_core::plane::Point;

use crate::fact::Fact;
use crate::look::{Letter, Look};

/// A picture.
///
/// Units: millimetres of the sheet, x to the right, y down, origin in the upper left corner. One
/// millimetre of the sheet is meant to be one millimetre on paper or CSS `mm` on a screen, so that line
/// widths and letters keep their standard sizes whatever the scale.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Scene {
    /// Width of the sheet.
    pub width: f64,
    /// Height of the sheet.
    pub height: f64,
    /// How many real millimetres one millimetre of the sheet stands for.
    pub scale: f64,
    /// What is drawn, farthest first.
    pub nodes: Vec<Node>,
    /// What the picture says, for its text alternative.
    pub facts: Vec<Fact>,
}

/// One thing drawn.
#[derive(Debug, Clone, PartialEq)]
pub enum Node {
    /// Things that belong together.
    Group(Group),
    /// A path.
    Path(Path),
    /// A circle.
    Circle(Circle),
    /// A text.
    Text(Text),
}

/// Things that belong together.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Group {
    /// What touching it opens.
    pub target: Option<Target>,
    /// What is in it, farthest first.
    pub nodes: Vec<Node>,
}

/// What a part of a picture stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Target {
    /// An item of the build.
    Item(ItemRef),
    /// A joint, by its index in the answer.
    Joint(usize),
    /// A finding, by its index in the answer.
    Finding(usize),
    /// A figure.
    Figure(FigureName),
    /// A pair of an overlay of hole patterns, by its index.
    Pair(usize),
    /// What lies beneath to compare with.
    Ghost,
    /// The surroundings: ground, ramp, trailer, gate.
    Ground,
}

impl Target {
    /// Its name, as the printed picture holds it: `joint-2`, `pair-0`, `item-frame`. Figures, ghosts
    /// and surroundings open nothing and have none.
    pub fn name(self) -> Option<String> {
        Some(match self {
            Self::Joint(index) => format!("joint-{index}"),
            Self::Finding(index) => format!("finding-{index}"),
            Self::Pair(index) => format!("pair-{index}"),
            Self::Item(item) => format!("item-{}", item.kind()),
            Self::Figure(_) | Self::Ghost | Self::Ground => return None,
        })
    }
}

/// A figure that a picture shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FigureName {
    /// Overall length.
    Length,
    /// Overall width.
    Width,
    /// Overall height.
    Height,
    /// Wheelbase.
    Wheelbase,
    /// Rear overhang.
    RearOverhang,
    /// Front overhang.
    FrontOverhang,
    /// Ground clearance.
    GroundClearance,
    /// Departure angle.
    Departure,
    /// Approach angle.
    Approach,
    /// Breakover angle.
    Breakover,
    /// Load on the front axle.
    FrontLoad,
    /// Load on the rear axle.
    RearLoad,
    /// Total mass.
    Mass,
    /// Centre of gravity.
    CentreOfGravity,
    /// Track of the rear axle.
    RearTrack,
    /// Ramp angle.
    RampAngle,
    /// Least clearance over a ramp.
    RampClearance,
    /// Deck height.
    DeckHeight,
    /// Deck length.
    DeckLength,
    /// Height on the deck.
    HeightOnDeck,
    /// Nose load of a trailer.
    NoseLoad,
    /// Digging depth.
    DigDepth,
    /// Digging reach.
    DigReach,
    /// Loading height.
    LoadHeight,
    /// Swing arc.
    SwingArc,
    /// Stabiliser spread.
    StabiliserSpread,
    /// Gate width.
    GateWidth,
    /// Path width.
    PathWidth,
    /// Swing-out.
    SwingOut,
    /// Least margin of a hole pattern.
    Margin,
}

/// A path.
#[derive(Debug, Clone, PartialEq)]
pub struct Path {
    /// How it looks.
    pub look: Look,
    /// Its steps.
    pub steps: Vec<PathStep>,
}

/// One step of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PathStep {
    /// Start at a point.
    Move(Point),
    /// Straight to a point.
    Line(Point),
    /// A cubic curve over two control points.
    Cubic([Point; 3]),
    /// Back to the start.
    Close,
}

/// A circle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circle {
    /// How it looks.
    pub look: Look,
    /// Its centre.
    pub centre: Point,
    /// Its radius.
    pub radius: f64,
}

/// A text.
#[derive(Debug, Clone, PartialEq)]
pub struct Text {
    /// How it is lettered.
    pub letter: Letter,
    /// Where its baseline starts, is centred or ends, by `anchor`.
    pub at: Point,
    /// Which part of the text is at `at`.
    pub anchor: Anchor,
    /// How far it is turned, degrees, counter-clockwise as seen.
    pub turn: f64,
    /// Height of the letters' em, millimetres.
    pub size: f64,
    /// The words, ready for people.
    pub words: String,
}

/// Which part of a text lies at its point.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Anchor {
    /// Its start.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

impl Scene {
    /// Every primitive, groups opened, in the order drawn, each with the innermost target it belongs to.
    pub fn flat(&self) -> Vec<(Option<Target>, &Node)> {
        let mut out = Vec::new();
        collect(&self.nodes, None, &mut out);
        out
    }

    /// The texts, in the order drawn.
    pub fn words(&self) -> Vec<&str> {
        self.flat()
            .into_iter()
            .filter_map(|(_, node)| match node {
                Node::Text(text) => Some(text.words.as_str()),
                _ => None,
            })
            .collect()
    }
}

fn collect<'a>(nodes: &'a [Node], target: Option<Target>, out: &mut Vec<(Option<Target>, &'a Node)>) {
    for node in nodes {
        match node {
            Node::Group(group) => collect(&group.nodes, group.target.or(target), out),
            other => out.push((target, other)),
        }
    }
}
