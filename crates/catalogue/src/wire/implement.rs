//! The table of implements.

use serde::{Deserialize, Serialize};

use super::body::{Point, item_row};
use super::value::{Angle, Flow, Length, Mass, Power, Pressure};

item_row! {
    /// An implement. Local origin: the reference point of its mount, on the carrier's face. Mass and centre of gravity
    /// are in transport.
    Implement {
        /// Kind.
        kind: ImplementKind,
        /// How it is carried.
        mount: Mount,
        /// Digging arm, if it is one and its links are known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        arm: Option<DiggingArm>,
        /// Where the operator's levers are, if it has any.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        console: Option<Point>,
        /// Whether it is worked from a seat facing the rear; left out = false.
        #[serde(default, skip_serializing_if = "is_no")]
        worked_from_seat: bool,
        /// What it asks of the hydraulics, if it has any.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        hydraulics: Option<HydraulicNeed>,
        /// Least power at the take-off or engine.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        power_least: Option<Power>,
        /// Greatest power it stands.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        power_most: Option<Power>,
        /// Whether it brings its own seat; left out = false.
        #[serde(default, skip_serializing_if = "is_no")]
        own_seat: bool,
        /// Width over all in transport, if it is wider than its outline says.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        transport_width: Option<Length>,
    }
}

/// The kinds of implement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
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
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Mount {
    /// On a frame's rack.
    Rack,
    /// On the three-point hitch.
    ThreePoint,
}

/// What an implement asks of the hydraulics.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HydraulicNeed {
    /// Least flow it works with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flow_min: Option<Flow>,
    /// Greatest flow it stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flow_max: Option<Flow>,
    /// Least pressure it works with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_min: Option<Pressure>,
    /// Greatest pressure it stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_max: Option<Pressure>,
    /// Double-acting outlets it occupies.
    pub outlets: u32,
    /// Whether it has to be fed by power-beyond; left out = false.
    #[serde(default, skip_serializing_if = "is_no")]
    pub power_beyond: bool,
}

/// A digging arm: boom, dipper and bucket on a swing post. u runs outward (to the rear) from the swing centre.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct DiggingArm {
    /// Swing centre, x in the implement's axes.
    pub swing_x: Length,
    /// Boom foot, outward from the swing centre.
    pub foot_u: Length,
    /// Boom foot, z in the implement's axes.
    pub foot_z: Length,
    /// Boom; its angles are over the horizontal.
    pub boom: ArmLink,
    /// Dipper; its angles are against the boom, 0 = straight on, negative = folded down.
    pub dipper: ArmLink,
    /// Bucket; its angles are against the dipper.
    pub bucket: ArmLink,
    /// Swing to either side.
    pub swing: Angle,
    /// Stabilisers.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stabilisers: Option<Stabilisers>,
    /// Load the hydraulics lift at full reach at ground level.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lift_at_full_reach: Option<Mass>,
}

/// One link of a digging arm.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ArmLink {
    /// Pin to pin, or pin to tip.
    pub length: Length,
    /// Least angle.
    pub least: Angle,
    /// Greatest angle.
    pub greatest: Angle,
    /// Angle in transport.
    pub transport: Angle,
    /// Mass of the link with its cylinder.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mass: Option<Mass>,
    /// Centre of gravity along the link from its first pin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub centre: Option<Length>,
}

/// Stabilisers.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Stabilisers {
    /// Centre to centre of the pads, down.
    pub spread: Length,
    /// Width over the stabilisers in transport.
    pub transport_width: Length,
    /// x of the pads in the implement's axes.
    pub x: Length,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde passes a reference")]
fn is_no(flag: &bool) -> bool {
    !*flag
}
