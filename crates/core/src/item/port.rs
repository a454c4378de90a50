//! Ports: the connecting places of items, and what decides whether two of them mate.

use super::{PartNumber, Point3, Serials};
use crate::quantity::{Angle, Length, Mass, Power, Source, Stated};

/// What a port is for; ports of one role meet in a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// Frame to the machine's rear axle: this joint places the frame.
    AxleAnchor,
    /// Frame to the machine's front: the closure.
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
    /// Every role, in the order joints are shown.
    pub const ALL: [Self; 10] = [
        Self::AxleAnchor,
        Self::FrontAnchor,
        Self::Rack,
        Self::Hitch,
        Self::SeatDeck,
        Self::PowerTakeOff,
        Self::Pressure,
        Self::Return,
        Self::CaseDrain,
        Self::Wiring,
    ];
}

/// Which side of a joint a port is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum End {
    /// The side that carries or supplies.
    Carrier,
    /// The side that is carried or supplied.
    Carried,
}

/// One of the six directions along the axes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
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

/// Where a port sits and how it looks, in its item's local axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// Reference point of the port.
    pub at: Point3,
    /// The way its face looks.
    pub faces: Towards,
    /// The way its v axis points.
    pub up: Towards,
}

/// A connecting place of an item.
#[derive(Debug, Clone, PartialEq)]
pub struct Port {
    /// Name, unique within its item.
    pub name: String,
    /// What it is for.
    pub role: Role,
    /// Which side of the joint it is.
    pub end: End,
    /// Where it is; `None` for lines and wiring, which place nothing.
    pub pose: Option<Pose>,
    /// Numbers of the parts that bear it; empty = not known.
    pub parts: Vec<PartNumber>,
    /// Serial numbers of the item that have this port.
    pub serials: Serials,
    /// Half range of every length of this port that states none of its own.
    pub tolerance: Option<Length>,
    /// Where the lengths come from.
    pub source: Source,
    /// What decides whether it mates.
    pub kind: PortKind,
}

impl Port {
    /// Half range of a length of this port: its own, the port's, or the usual one of its source.
    pub fn half_range(&self, length: &Stated<Length>) -> Length {
        length.plus_minus.or(self.tolerance).unwrap_or(length.source.usual_half_range())
    }

    /// Half range of a length of this port that states none of its own and no source: a hole's place, the port's place.
    pub fn usual_half_range(&self) -> Length {
        self.tolerance.unwrap_or(self.source.usual_half_range())
    }
}

/// The kinds of port, each with the dimensions that decide whether it mates.
#[derive(Debug, Clone, PartialEq)]
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

/// Holes in a plate, in the port's plane (u to the right when looking at the face with v up).
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BoltPattern {
    /// The holes; empty = not known.
    pub holes: Vec<Hole>,
    /// Thickness of the plate.
    pub plate: Option<Length>,
    /// Bolt diameter the joint is made with.
    pub bolt: Option<Length>,
    /// Least number of bolts; `None` = every hole of the side with fewer, to be asked where the sides have not equally many.
    pub required: Option<u32>,
    /// Whether the plate may be turned over.
    pub may_flip: bool,
}

/// One hole.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hole {
    /// To the right.
    pub u: Length,
    /// Along the port's up.
    pub v: Length,
    /// Diameter; of a slot, its width; of a tapped hole, the thread's nominal diameter.
    pub diameter: Length,
    /// Plain or tapped.
    pub kind: HoleKind,
    /// Slot, if it is one.
    pub slot: Option<Slot>,
}

/// How a hole holds its bolt.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum HoleKind {
    /// A clearance hole.
    #[default]
    Plain,
    /// A thread.
    Tapped,
}

/// A slot's travel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slot {
    /// Centre to centre of the end radii.
    pub travel: Length,
    /// Direction against u.
    pub direction: Angle,
}

/// Pins in lugs or clevises.
#[derive(Debug, Clone, PartialEq)]
pub struct Pins {
    /// Which half of the joint this is.
    pub form: PinForm,
    /// The points, left and right or upper and lower as drawn.
    pub points: Vec<PinPoint>,
    /// Distance between left and right, centre to centre.
    pub spread: Option<Stated<Length>>,
}

/// Which half of a pinned joint a port is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PinForm {
    /// A lug with a bore, entering a clevis.
    Lug,
    /// A clevis with its pin.
    Clevis,
}

/// One pinned point.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PinPoint {
    /// Name as drawn ("lower left").
    pub name: String,
    /// Bore of a lug, pin of a clevis.
    pub diameter: Option<Stated<Length>>,
    /// Thickness of a lug, gap of a clevis.
    pub width: Option<Stated<Length>>,
    /// Centre height over the port's reference point.
    pub height: Option<Stated<Length>>,
}

/// Hooks on a bar.
#[derive(Debug, Clone, PartialEq)]
pub struct HookRack {
    /// Which half of the joint this is.
    pub side: HookSide,
    /// Diameter of the bar, or opening of the hook.
    pub diameter: Option<Stated<Length>>,
    /// Distance between the two hooks, or length between the bar's ends.
    pub spread: Option<Stated<Length>>,
    /// From the bar's centre down to the latch pin.
    pub drop: Option<Stated<Length>>,
    /// Latch pin, or its bore.
    pub latch: Option<Stated<Length>>,
    /// From the rack's face back to the bar's centre.
    pub setback: Option<Stated<Length>>,
}

/// Which half of a hook rack a port is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HookSide {
    /// The bar and the latch bore (on the rack).
    Bar,
    /// The hooks and the latch pin (on the implement).
    Hook,
}

/// A three-point hitch.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ThreePoint {
    /// Categories it serves as ISO 730 names them: "1N", "1", "2N", "2" …
    pub categories: Vec<String>,
    /// Whether a quick-attach frame is fitted.
    pub quick_attach: bool,
    /// Lift capacity at the lower hitch points (ISO 789-2), carrier side.
    pub lift: Option<Mass>,
    /// Lift capacity 610 mm behind the points (ISO 789-2), carrier side.
    pub lift_610: Option<Mass>,
    /// Diameter of the lower hitch pins (carried side) or ball bores (carrier side).
    pub lower_pin: Option<Stated<Length>>,
    /// Diameter of the upper hitch pin.
    pub upper_pin: Option<Stated<Length>>,
    /// Lower hitch point span, shoulder to shoulder.
    pub span: Option<Stated<Length>>,
    /// Mast height.
    pub mast: Option<Stated<Length>>,
}

/// Which way a power take-off turns, seen from behind the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PtoRotation {
    /// Clockwise.
    Clockwise,
    /// Counter-clockwise.
    CounterClockwise,
}

/// A power take-off.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PowerTakeOff {
    /// Type of ISO 500-1: 1, 2, 3 or 4.
    pub shaft_type: Option<u8>,
    /// Speeds in revolutions per minute that it gives, or needs.
    pub speeds: Vec<u16>,
    /// Rotation; `None` = not known.
    pub rotation: Option<PtoRotation>,
    /// Power it gives.
    pub power: Option<Power>,
}

/// Which half of a coupler an end is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum CouplerGender {
    /// The plug.
    Male,
    /// The socket.
    Female,
}

/// What a hydraulic line does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum HydraulicLine {
    /// Supply under pressure.
    Pressure,
    /// Return to the tank.
    Return,
    /// Case drain.
    CaseDrain,
}

/// A hydraulic coupler.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Coupler {
    /// Standard, as written by it: "ISO 7241-A", "ISO 7241-B", "ISO 16028", "37° flare".
    pub standard: String,
    /// Size as the standard names it: "12.5", "-8".
    pub size: String,
    /// Which half.
    pub gender: Option<CouplerGender>,
}

/// A seat base.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SeatBase {
    /// Its holes.
    pub pattern: BoltPattern,
    /// Height of the pedestal from the deck to the seat's underside.
    pub pedestal: Option<Length>,
}

/// An electric connector.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Electric {
    /// Connector, in the catalogue's words; equal words mate.
    pub connector: String,
    /// Function, in the catalogue's words.
    pub function: String,
}
