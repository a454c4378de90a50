//! How things are drawn: line types, tones and lettering, each with the class that a style sheet
//! gives its width and colour. No colour stands here.

use fitup_core::finding::Verdict;
use fitup_core::item::ShapeRole;

/// Line and tone of a primitive.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Look {
    /// Line type.
    pub pen: Pen,
    /// What the inside is filled with.
    pub tone: Tone,
}

impl Look {
    /// A line without a filling.
    pub const fn line(pen: Pen) -> Self {
        Self { pen, tone: Tone::Empty }
    }

    /// A filling without a line.
    pub const fn fill(tone: Tone) -> Self {
        Self { pen: Pen::Bare, tone }
    }

    /// A filled shape with its outline.
    pub const fn new(pen: Pen, tone: Tone) -> Self {
        Self { pen, tone }
    }

    /// The classes, as a `class` attribute holds them.
    pub fn classes(self) -> String {
        format!("{} {}", self.pen.class(), self.tone.class())
    }
}

/// Line types.
///
/// Source: ISO 128-2:2020 for the types and the ratio 1 : 2 of thin to thick; the group with a thick
/// line of 0.5 mm is its preferred one for sheets of this size (from memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pen {
    /// No line.
    Bare,
    /// Visible outline: continuous, thick.
    Outline,
    /// Continuous, thin: edges within an outline, hatching.
    Thin,
    /// Dimension, extension and leader lines: continuous, thin.
    Dimension,
    /// Centre line: long dash, dot, thin.
    Centre,
    /// Hidden outline: dashed, thin.
    Hidden,
    /// Neighbouring part or other position: long dash, two dots, thin.
    Phantom,
    /// The ground: continuous, thick.
    Ground,
    /// What lies beneath to compare with: continuous, thin, pale.
    Ghost,
    /// What can be touched or moves.
    Accent,
    /// A halo that parts a marker from what is beneath.
    Halo,
    /// A thick line in the colour of a verdict.
    Verdict(Verdict),
}

impl Pen {
    /// Its class.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Bare => "p-bare",
            Self::Outline => "p-outline",
            Self::Thin => "p-thin",
            Self::Dimension => "p-dimension",
            Self::Centre => "p-centre",
            Self::Hidden => "p-hidden",
            Self::Phantom => "p-phantom",
            Self::Ground => "p-ground",
            Self::Ghost => "p-ghost",
            Self::Accent => "p-accent",
            Self::Halo => "p-halo",
            Self::Verdict(verdict) => match verdict {
                Verdict::BoltsUp => "p-bolts-up",
                Verdict::BoltsUpWithWork => "p-with-work",
                Verdict::CheckFirst => "p-check-first",
                Verdict::WontMount => "p-wont-mount",
            },
        }
    }
}

/// What the inside of a shape is filled with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Tone {
    /// Nothing.
    Empty,
    /// The sheet's own colour.
    Paper,
    /// The colour of the lines.
    Ink,
    /// Tyre rubber.
    Tyre,
    /// A tyre's lugs.
    Lug,
    /// A wheel's rim.
    Rim,
    /// A shape of an item, by what it shows.
    Shape(ShapeRole),
    /// The pale area of an angle.
    Wedge,
    /// An area that is swept or reached.
    Area,
    /// The ground below its line, a ramp, a deck.
    Earth,
    /// The carrying plate of an overlay.
    Carrier,
    /// The carried plate of an overlay.
    Carried,
    /// The colour of a verdict.
    Verdict(Verdict),
    /// What can be touched or moves.
    Accent,
}

impl Tone {
    /// Its class.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Empty => "t-empty",
            Self::Paper => "t-paper",
            Self::Ink => "t-ink",
            Self::Tyre => "t-tyre",
            Self::Lug => "t-lug",
            Self::Rim => "t-rim",
            Self::Shape(role) => shape_class(role),
            Self::Wedge => "t-wedge",
            Self::Area => "t-area",
            Self::Earth => "t-earth",
            Self::Carrier => "t-carrier",
            Self::Carried => "t-carried",
            Self::Verdict(verdict) => match verdict {
                Verdict::BoltsUp => "t-bolts-up",
                Verdict::BoltsUpWithWork => "t-with-work",
                Verdict::CheckFirst => "t-check-first",
                Verdict::WontMount => "t-wont-mount",
            },
            Self::Accent => "t-accent",
        }
    }
}

const fn shape_class(role: ShapeRole) -> &'static str {
    match role {
        ShapeRole::Body => "t-body",
        ShapeRole::Bonnet => "t-bonnet",
        ShapeRole::Detail => "t-detail",
        ShapeRole::Glass => "t-glass",
        ShapeRole::Cab => "t-cab",
        ShapeRole::RollOverBar | ShapeRole::RollOverBarFolded => "t-bar",
        ShapeRole::Tyre => "t-tyre",
        ShapeRole::Seat | ShapeRole::SeatFolded => "t-seat",
        ShapeRole::Control => "t-control",
        ShapeRole::FrameRail => "t-frame",
        ShapeRole::Rack => "t-rack",
        ShapeRole::Hitch => "t-hitch",
        ShapeRole::Boom | ShapeRole::Dipper => "t-arm",
        ShapeRole::Bucket => "t-bucket",
        ShapeRole::Cylinder => "t-cylinder",
        ShapeRole::Stabiliser => "t-stabiliser",
        ShapeRole::Console => "t-console",
        ShapeRole::Tool => "t-tool",
        ShapeRole::Guard => "t-guard",
        ShapeRole::Weight => "t-weight",
        ShapeRole::Adapter => "t-adapter",
    }
}

/// Lettering.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Letter {
    /// The value of a dimension, figures of equal width.
    Dimension,
    /// A label.
    Label,
    /// A label that stands back.
    Quiet,
}

impl Letter {
    /// Its class.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Dimension => "l-dimension",
            Self::Label => "l-label",
            Self::Quiet => "l-quiet",
        }
    }
}
