//! Implements: what is carried at the rear.

use super::{Body, Point3};
use crate::quantity::{Angle, Flow, Length, Mass, Power, Pressure};

/// The kinds of implement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ImplementKind {
    /// Digging arm (backhoe).
    DiggingArm,
    /// Post-hole auger.
    Auger,
    /// Stump cutter.
    StumpCutter,
    /// Flail mower.
    Flail,
    /// Rotary cutter.
    RotaryCutter,
    /// Box blade or grader blade.
    Blade,
    /// Pallet forks.
    Forks,
    /// Ballast block.
    Ballast,
}

/// How an implement is carried.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Mount {
    /// On a frame's rack.
    Rack,
    /// On the three-point hitch.
    ThreePoint,
}

/// What an implement asks of the hydraulics.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HydraulicNeed {
    /// Least flow it works with.
    pub flow_min: Option<Flow>,
    /// Greatest flow it stands.
    pub flow_max: Option<Flow>,
    /// Least pressure it works with.
    pub pressure_min: Option<Pressure>,
    /// Greatest pressure it stands.
    pub pressure_max: Option<Pressure>,
    /// Double-acting outlets it occupies.
    pub outlets: u32,
    /// Whether it has to be fed by power-beyond.
    pub power_beyond: bool,
}

/// One link of a digging arm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmLink {
    /// Pin to pin, or pin to tip.
    pub length: Length,
    /// Least angle: boom over the horizontal, dipper and bucket against the link before.
    pub least: Angle,
    /// Greatest angle.
    pub greatest: Angle,
    /// Angle in transport.
    pub transport: Angle,
    /// Mass of the link with its cylinder.
    pub mass: Option<Mass>,
    /// Centre of gravity along the link from its first pin.
    pub centre: Option<Length>,
}

/// Stabilisers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stabilisers {
    /// Centre to centre of the pads, down.
    pub spread: Length,
    /// Width over the stabilisers in transport.
    pub transport_width: Length,
    /// x of the pads in the implement's axes.
    pub x: Length,
}

/// A digging arm: boom, dipper and bucket on a swing post. Measured outward (to the rear) from
/// the swing centre, so that its plane has u = −x.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiggingArm {
    /// Swing centre, x in the implement's axes.
    pub swing_x: Length,
    /// Boom foot, outward from the swing centre.
    pub foot_u: Length,
    /// Boom foot, z in the implement's axes.
    pub foot_z: Length,
    /// Boom.
    pub boom: ArmLink,
    /// Dipper.
    pub dipper: ArmLink,
    /// Bucket.
    pub bucket: ArmLink,
    /// Swing to either side.
    pub swing: Angle,
    /// Stabilisers, if stated.
    pub stabilisers: Option<Stabilisers>,
    /// Load the hydraulics lift at full reach at ground level, if stated.
    pub lift_at_full_reach: Option<Mass>,
}

/// An implement. Its local origin is the reference point of its mount, on the carrier's face.
#[derive(Debug, Clone, PartialEq)]
pub struct Implement {
    /// What every item has; mass and centre of gravity are in transport.
    pub body: Body,
    /// Kind.
    pub kind: ImplementKind,
    /// How it is carried.
    pub mount: Mount,
    /// Digging arm, if it is one and its links are stated.
    pub arm: Option<DiggingArm>,
    /// Where the operator's levers are, if it has any.
    pub console: Option<Point3>,
    /// Whether it is worked from a seat facing the rear.
    pub worked_from_seat: bool,
    /// What it asks of the hydraulics, if it has any.
    pub hydraulics: Option<HydraulicNeed>,
    /// Least power at the take-off or engine.
    pub power_least: Option<Power>,
    /// Greatest power it stands.
    pub power_most: Option<Power>,
    /// Whether it brings its own seat.
    pub own_seat: bool,
    /// Width over all in transport, if it is wider than its outline says.
    pub transport_width: Option<Length>,
}
