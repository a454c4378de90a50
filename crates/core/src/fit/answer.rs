//! The whole answer for one build.

use crate::build::Stack;
use crate::finding::{Caution, Finding, Standing, Verdict};
use crate::item::{ItemRef, Role};
use crate::quantity::{Angle, Length, Mass, Money, Work};

/// Everything that is known of a build, as data.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The worst finding's verdict.
    pub verdict: Verdict,
    /// Whether the guide lists the set; `None` until all four steps are answered.
    pub standing: Option<Standing>,
    /// Row of the guide that lists the whole set.
    pub guide_row: Option<usize>,
    /// Whether all four steps are answered.
    pub complete: bool,
    /// The findings, worst first, then in the order of subjects.
    pub findings: Vec<Finding>,
    /// The joints of the stack, in stack order.
    pub joints: Vec<Joint>,
    /// Where everything stands.
    pub stack: Stack,
    /// What the finished machine measures.
    pub footprint: Footprint,
    /// What the bare machine measures, to compare with.
    pub bare: Footprint,
    /// What has to be bought and done.
    pub parts: PartsToBuy,
    /// The cautions that go with it, each once, in the order they are shown.
    pub cautions: Vec<Caution>,
}

/// One joint, with what it comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Joint {
    /// What it is for.
    pub role: Role,
    /// Carrying item and its port's name.
    pub carrier: (ItemRef, String),
    /// Carried item and its port's name; `None` if nothing of the build answers.
    pub carried: (ItemRef, String),
    /// Part numbers that bear the carrier's port.
    pub carrier_parts: Vec<String>,
    /// Part numbers that bear the carried port.
    pub carried_parts: Vec<String>,
    /// The worst verdict of its findings.
    pub verdict: Verdict,
    /// Indices of its findings in [`Answer::findings`], worst first.
    pub findings: Vec<usize>,
    /// The carried hole pattern laid over the carrier's, if both are known.
    pub overlay: Option<Overlay>,
    /// Where the joint is, in the machine's axes, (x, y, z), if it has a place.
    pub at: Option<(Length, Length, Length)>,
}

/// Two hole patterns in the carrier port's plane.
#[derive(Debug, Clone, PartialEq)]
pub struct Overlay {
    /// Holes of the carrier.
    pub carrier: Vec<OverlayHole>,
    /// Holes of the carried item, moved by the motion found.
    pub carried: Vec<OverlayHole>,
    /// Bolt diameter.
    pub bolt: Length,
    /// Pairs (carrier hole, carried hole) with the margin of each.
    pub pairs: Vec<(usize, usize, Length)>,
    /// Least margin; negative = the bolts do not go in.
    pub margin: Length,
    /// Whether the plate had to be turned over.
    pub flipped: bool,
    /// Rotation found.
    pub rotation: Angle,
    /// Shift found, (u, v).
    pub shift: (Length, Length),
}

/// A hole as drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OverlayHole {
    /// To the right.
    pub u: Length,
    /// Up.
    pub v: Length,
    /// Diameter, or width of a slot.
    pub diameter: Length,
    /// Travel and direction of a slot.
    pub slot: Option<(Length, Angle)>,
    /// Whether it is tapped.
    pub tapped: bool,
}

/// What the machine measures as it stands in transport. Missing data give `None`, never a guess.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Footprint {
    /// Overall length.
    pub length: Option<Length>,
    /// Overall width.
    pub width: Option<Length>,
    /// Overall height, roll-over bar up unless the build folds it.
    pub height: Option<Length>,
    /// Wheelbase.
    pub wheelbase: Option<Length>,
    /// From the rear axle centre to the rearmost point.
    pub rear_overhang: Option<Length>,
    /// From the front axle centre to the foremost point.
    pub front_overhang: Option<Length>,
    /// Least height of the underside over the ground.
    pub ground_clearance: Option<Length>,
    /// Departure angle (49 CFR 523.2).
    pub departure: Option<EndAngle>,
    /// Approach angle (49 CFR 523.2).
    pub approach: Option<EndAngle>,
    /// Breakover angle (49 CFR 523.2).
    pub breakover: Option<EndAngle>,
    /// Total mass with operator.
    pub mass: Option<Mass>,
    /// Load on the front axle.
    pub front_load: Option<Mass>,
    /// Load on the rear axle.
    pub rear_load: Option<Mass>,
    /// Extent forward and rearward in the machine's axes: (least x, greatest x).
    pub extent_x: Option<(Length, Length)>,
}

/// An angle with the point of the underside that limits it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EndAngle {
    /// The angle.
    pub angle: Angle,
    /// The item that limits it.
    pub item: ItemRef,
    /// The limiting point, x in the machine's axes.
    pub x: Length,
    /// The limiting point, z.
    pub z: Length,
}

/// What has to be bought and done.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PartsToBuy {
    /// One line an item of the build, carriers first.
    pub lines: Vec<PartsLine>,
    /// Things the frame needs on the machine that are no items of the catalogue and not on the machine as it is sold.
    pub fittings: Vec<String>,
    /// Sum over the lines to buy; `None` if one of them has no price.
    pub total: Option<Money>,
    /// Workshop time of adapters and of holes decided to be drilled or opened up, as far as stated.
    pub work: Work,
}

/// One line of the parts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartsLine {
    /// The item.
    pub item: ItemRef,
    /// How many.
    pub quantity: u32,
    /// How it is come by.
    pub come_by: ComeBy,
    /// Price of one; `None` = ask.
    pub price: Option<Money>,
}

/// How an item is come by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ComeBy {
    /// Has to be bought.
    Buy,
    /// Is on hand.
    OnHand,
    /// Comes with this other item.
    ComesWith(ItemRef),
}
