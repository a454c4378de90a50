//! Ports, with the dimensions that decide whether they mate.

use serde::{Deserialize, Serialize};

use super::body::{Point, Serials};
use super::value::{Angle, Length, Mass, Power, Source, Stated};

/// A connecting place of an item.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Port {
    /// Name, unique within its item.
    pub name: String,
    /// What it is for; ports of one role meet in a joint.
    pub role: Role,
    /// Which side of the joint it is.
    pub end: End,
    /// Where it is and how it looks; left out for lines and wiring, which place nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pose: Option<Pose>,
    /// Numbers of the parts that bear it; left out = not known.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<String>,
    /// Serial numbers of the item that have this port; left out = all.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub serials: Option<Serials>,
    /// Half range of every length of this port that states none of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance: Option<Length>,
    /// Where the lengths come from; left out = drawing.
    #[serde(default, skip_serializing_if = "Source::is_usual")]
    pub source: Source,
    /// What decides whether it mates: exactly one kind.
    pub kind: PortKind,
}

/// What a port is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Frame to the machine's rear axle: this joint places the frame.
    AxleAnchor,
    /// Frame to the machine's front.
    FrontAnchor,
    /// Implement to the frame's rack.
    Rack,
    /// Implement to the machine's three-point hitch.
    Hitch,
    /// Seat to its deck.
    SeatDeck,
    /// Drive shaft.
    PowerTakeOff,
    /// Hydraulic pressure line.
    Pressure,
    /// Hydraulic return line.
    Return,
    /// Case drain line of a hydraulic motor.
    CaseDrain,
    /// Wiring: seat switch, lights.
    Wiring,
}

impl Role {
    /// The role as the file writes it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::AxleAnchor => "axle_anchor",
            Self::FrontAnchor => "front_anchor",
            Self::Rack => "rack",
            Self::Hitch => "hitch",
            Self::SeatDeck => "seat_deck",
            Self::PowerTakeOff => "power_take_off",
            Self::Pressure => "pressure",
            Self::Return => "return",
            Self::CaseDrain => "case_drain",
            Self::Wiring => "wiring",
        }
    }
}

/// Which side of a joint a port is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum End {
    /// The side that carries or supplies.
    Carrier,
    /// The side that is carried or supplied.
    Carried,
}

/// Where a port sits and how it looks, in its item's local axes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Pose {
    /// Reference point of the port.
    pub at: Point,
    /// The way its face looks.
    pub faces: Towards,
    /// The way its v axis points; at a right angle to `faces`.
    pub up: Towards,
}

/// One of the six directions along the axes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Towards {
    /// +x.
    Front,
    /// −x.
    Rear,
    /// +y.
    Left,
    /// −y.
    Right,
    /// +z.
    Up,
    /// −z.
    Down,
}

impl Towards {
    /// The direction as the file writes it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Rear => "rear",
            Self::Left => "left",
            Self::Right => "right",
            Self::Up => "up",
            Self::Down => "down",
        }
    }
}

/// The kinds of port.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum PortKind {
    /// Holes in a plate.
    BoltPattern(BoltPattern),
    /// Pins in lugs or clevises.
    Pins(Pins),
    /// Hooks on a bar, held by a latch pin.
    HookRack(HookRack),
    /// Three-point hitch.
    ThreePoint(ThreePoint),
    /// Power take-off.
    PowerTakeOff(PowerTakeOff),
    /// Hydraulic coupler.
    Coupler(Coupler),
    /// Seat base: a bolt pattern with a pedestal.
    SeatBase(SeatBase),
    /// Electric connector.
    Electric(Electric),
}

impl PortKind {
    /// The kind as the file writes it.
    pub const fn name(&self) -> &'static str {
        match self {
            Self::BoltPattern(_) => "bolt_pattern",
            Self::Pins(_) => "pins",
            Self::HookRack(_) => "hook_rack",
            Self::ThreePoint(_) => "three_point",
            Self::PowerTakeOff(_) => "power_take_off",
            Self::Coupler(_) => "coupler",
            Self::SeatBase(_) => "seat_base",
            Self::Electric(_) => "electric",
        }
    }
}

/// Holes in a plate, in the port's plane.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct BoltPattern {
    /// The holes.
    pub holes: Vec<Hole>,
    /// Thickness of the plate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plate: Option<Length>,
    /// Bolt diameter the joint is made with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bolt: Option<Length>,
    /// Least number of bolts; left out = every hole of the side with fewer.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub required: Option<u32>,
    /// Whether the plate may be turned over; left out = false.
    #[serde(default, skip_serializing_if = "is_no")]
    pub may_flip: bool,
}

/// One hole.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Hole {
    /// To the right when looking at the face with v up.
    pub u: Length,
    /// Along the port's `up`.
    pub v: Length,
    /// Diameter; of a slot its width, of a tapped hole the thread's nominal diameter.
    pub diameter: Length,
    /// Plain or tapped; left out = plain.
    #[serde(default, skip_serializing_if = "HoleKind::is_plain")]
    pub kind: HoleKind,
    /// Travel, if it is a slot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slot: Option<Slot>,
}

/// How a hole holds its bolt.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum HoleKind {
    /// A clearance hole.
    #[default]
    Plain,
    /// A thread.
    Tapped,
}

impl HoleKind {
    /// Whether it is a clearance hole.
    pub fn is_plain(&self) -> bool {
        *self == Self::Plain
    }
}

/// A slot's travel.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Slot {
    /// Centre to centre of the end radii.
    pub travel: Length,
    /// Direction against u, counter-clockwise.
    pub direction: Angle,
}

/// Pins in lugs or clevises.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Pins {
    /// Which half of the joint this is.
    pub form: PinForm,
    /// The points, left and right or upper and lower as drawn.
    pub points: Vec<PinPoint>,
    /// Distance between left and right, centre to centre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spread: Option<Stated<Length>>,
}

/// Which half of a pinned joint a port is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum PinForm {
    /// A lug with a bore, entering a clevis.
    Lug,
    /// A clevis with its pin.
    Clevis,
}

/// One pinned point.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PinPoint {
    /// Name as drawn, such as "lower left".
    pub name: String,
    /// Bore of a lug, pin of a clevis.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub diameter: Option<Stated<Length>>,
    /// Thickness of a lug, gap of a clevis.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub width: Option<Stated<Length>>,
    /// Centre height over the port's reference point.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height: Option<Stated<Length>>,
}

/// Hooks on a bar.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HookRack {
    /// Which half of the joint this is.
    pub side: HookSide,
    /// Diameter of the bar, or opening of the hook.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub diameter: Option<Stated<Length>>,
    /// Distance between the two hooks, or length between the bar's ends.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spread: Option<Stated<Length>>,
    /// From the bar's centre down to the latch pin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drop: Option<Stated<Length>>,
    /// Diameter of the latch pin, or of its bore.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub latch: Option<Stated<Length>>,
    /// From the rack's face back to the bar's centre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub setback: Option<Stated<Length>>,
}

/// Which half of a hook rack a port is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum HookSide {
    /// The bar and the latch bore, on the rack.
    Bar,
    /// The hooks and the latch pin, on the implement.
    Hook,
}

/// A three-point hitch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ThreePoint {
    /// Categories it serves as ISO 730 names them: "1N", "1", "2N", "2" …; left out = not known.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub categories: Vec<String>,
    /// Whether a quick-attach frame is fitted; left out = false.
    #[serde(default, skip_serializing_if = "is_no")]
    pub quick_attach: bool,
    /// Lift capacity at the lower hitch points (ISO 789-2), carrier side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lift: Option<Mass>,
    /// Lift capacity 610 mm behind the points (ISO 789-2), carrier side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lift_610: Option<Mass>,
    /// Diameter of the lower hitch pins (carried side) or ball bores (carrier side).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lower_pin: Option<Stated<Length>>,
    /// Diameter of the upper hitch pin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub upper_pin: Option<Stated<Length>>,
    /// Lower hitch point span, shoulder to shoulder.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub span: Option<Stated<Length>>,
    /// Mast height.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mast: Option<Stated<Length>>,
}

/// A power take-off.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PowerTakeOff {
    /// Type of ISO 500-1: 1, 2, 3 or 4.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shaft_type: Option<u8>,
    /// Speeds in revolutions per minute that it gives, or needs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub speeds: Vec<u16>,
    /// Rotation seen from behind the machine; left out = not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rotation: Option<PtoRotation>,
    /// Power it gives.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub power: Option<Power>,
}

/// Which way a power take-off turns, seen from behind the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum PtoRotation {
    /// Clockwise.
    Clockwise,
    /// Counter-clockwise.
    CounterClockwise,
}

/// A hydraulic coupler.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Coupler {
    /// Standard, as it writes itself: "ISO 7241-A", "ISO 7241-B", "ISO 16028", "37° flare".
    pub standard: String,
    /// Size as the standard names it: "12.5", "-8".
    pub size: String,
    /// Which half; left out = not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gender: Option<CouplerGender>,
}

/// Which half of a coupler an end is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum CouplerGender {
    /// The plug.
    Male,
    /// The socket.
    Female,
}

/// A seat base.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SeatBase {
    /// Its holes.
    pub pattern: BoltPattern,
    /// Height of the pedestal from the deck to the seat's underside.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pedestal: Option<Length>,
}

/// An electric connector.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Electric {
    /// Connector, in the catalogue's words; equal words mate.
    pub connector: String,
    /// Function, in the catalogue's words.
    pub function: String,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde passes a reference")]
fn is_no(flag: &bool) -> bool {
    !*flag
}
