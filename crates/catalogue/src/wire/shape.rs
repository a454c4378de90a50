//! Outline shapes.

use serde::{Deserialize, Serialize};

/// One named shape of an item's outline.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Shape {
    /// Name, for messages.
    pub name: String,
    /// View it belongs to.
    pub view: View,
    /// What it shows.
    pub role: ShapeRole,
    /// What it moves with.
    #[serde(default, skip_serializing_if = "Carrier::is_item")]
    pub carrier: Carrier,
    /// Whether other items have to keep clear of it; left out = true.
    #[serde(default = "yes", skip_serializing_if = "is_yes")]
    pub clearance: bool,
    /// SVG path data in the view's two axes: side (x, z), plan (x, y), rear (y, z); z up, y left.
    pub path: String,
}

fn yes() -> bool {
    true
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde passes a reference")]
fn is_yes(flag: &bool) -> bool {
    *flag
}

/// A view of the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum View {
    /// From the right-hand side: (x, z).
    Side,
    /// From above: (x, y).
    Plan,
    /// From behind: (y, z).
    Rear,
}

/// What a shape shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ShapeRole {
    /// Main body: gearbox, fenders, floor.
    Body,
    /// Bonnet (hood).
    Bonnet,
    /// Grille, lights and other small features.
    Detail,
    /// Glass of a cab or a screen.
    Glass,
    /// Cab or canopy posts and roof.
    Cab,
    /// Roll-over bar standing.
    RollOverBar,
    /// Roll-over bar folded.
    RollOverBarFolded,
    /// Tyre.
    Tyre,
    /// Seat cushion and back.
    Seat,
    /// Steering wheel, levers and other controls.
    Control,
    /// Rail or plate of a mounting frame.
    FrameRail,
    /// The frame's rear face.
    Rack,
    /// Lower links, top link and their parts.
    Hitch,
    /// Boom of a digging arm.
    Boom,
    /// Dipper of a digging arm.
    Dipper,
    /// Bucket.
    Bucket,
    /// Hydraulic cylinder.
    Cylinder,
    /// Stabiliser leg and pad.
    Stabiliser,
    /// Operator's console of an implement.
    Console,
    /// Working tool: rotor, blade, tine, auger.
    Tool,
    /// Guard, hood or deck of a tool.
    Guard,
    /// Ballast.
    Weight,
    /// Adapter piece.
    Adapter,
}

/// Which body a shape moves with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Carrier {
    /// The item itself.
    #[default]
    Item,
    /// A digging arm's boom: origin at the boom foot, first axis along the boom.
    Boom,
    /// A digging arm's dipper: origin at the boom's end pin, first axis along the dipper.
    Dipper,
    /// A digging arm's bucket: origin at the dipper's end pin, first axis towards the tip.
    Bucket,
}

impl Carrier {
    /// Whether it is the item itself.
    pub fn is_item(&self) -> bool {
        *self == Self::Item
    }
}
