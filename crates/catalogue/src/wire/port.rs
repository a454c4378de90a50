//! Ports, with the dimensions that decide whether they mate.

use fitup_core::item as core;

use super::body::{Point, Serials};
use super::define::{choice, record, words};
use super::value::{Angle, Length, Mass, Power, Source, Stated, Torque};

record! {
    /// A connecting place of an item.
    pub struct Port {
        /// Name, unique within its item.
        required name: String,
        /// What it is for; ports of one role meet in a joint.
        required role: Role,
        /// Which side of the joint it is.
        required end: End,
        /// Where it is and how it looks; left out for lines and wiring, which place nothing.
        optional pose: Option<Pose>,
        /// Numbers of the parts that bear it; left out = not known.
        optional parts: Vec<String>,
        /// Serial numbers of the item that have this port; left out = all.
        optional serials: Option<Serials>,
        /// Half range of every length of this port that states none of its own.
        optional tolerance: Option<Length>,
        /// Where the lengths come from; left out = drawing.
        optional source: Source,
        /// What decides whether it mates: exactly one kind.
        required kind: PortKind,
    }
}

words! {
    /// What a port is for.
    pub enum Role => core::Role {
        /// Frame to the machine's rear axle: this joint places the frame.
        AxleAnchor "axle_anchor",
        /// Frame to the machine's front.
        FrontAnchor "front_anchor",
        /// Implement to the frame's rack.
        Rack "rack",
        /// Implement to the machine's three-point hitch.
        Hitch "hitch",
        /// Seat to its deck.
        SeatDeck "seat_deck",
        /// Drive shaft.
        PowerTakeOff "power_take_off",
        /// Hydraulic pressure line.
        Pressure "pressure",
        /// Hydraulic return line.
        Return "return",
        /// Case drain line of a hydraulic motor.
        CaseDrain "case_drain",
        /// Wiring: seat switch, lights.
        Wiring "wiring",
    }
}

words! {
    /// Which side of a joint a port is on.
    pub enum End => core::End {
        /// The side that carries or supplies.
        Carrier "carrier",
        /// The side that is carried or supplied.
        Carried "carried",
    }
}

record! {
    /// Where a port sits and how it looks, in its item's local axes.
    #[derive(Copy)]
    pub struct Pose {
        /// Reference point of the port.
        required at: Point,
        /// The way its face looks.
        required faces: Towards,
        /// The way its v axis points; at a right angle to `faces`.
        required up: Towards,
    }
}

words! {
    /// One of the six directions along the axes.
    pub enum Towards => core::Towards {
        /// +x.
        Front "front",
        /// −x.
        Rear "rear",
        /// +y.
        Left "left",
        /// −y.
        Right "right",
        /// +z.
        Up "up",
        /// −z.
        Down "down",
    }
}

choice! {
    /// The kinds of port.
    pub enum PortKind => core::PortKind {
        /// Holes in a plate.
        BoltPattern(BoltPattern) "bolt_pattern",
        /// Pins in lugs or clevises.
        Pins(Pins) "pins",
        /// Hooks on a bar, held by a latch pin.
        HookRack(HookRack) "hook_rack",
        /// Three-point hitch.
        ThreePoint(ThreePoint) "three_point",
        /// Power take-off.
        PowerTakeOff(PowerTakeOff) "power_take_off",
        /// Hydraulic coupler.
        Coupler(Coupler) "coupler",
        /// Seat base: a bolt pattern with a pedestal.
        SeatBase(SeatBase) "seat_base",
        /// Electric connector.
        Electric(Electric) "electric",
    }
}

record! {
    /// Holes in a plate, in the port's plane.
    pub struct BoltPattern {
        /// The holes.
        required holes: Vec<Hole>,
        /// Thickness of the plate; of tapped holes how deep they are threaded.
        optional plate: Option<Length>,
        /// What the plate is made of; left out = not known.
        optional metal: Option<Metal>,
        /// Bolt diameter the joint is made with.
        optional bolt: Option<Length>,
        /// How far the plate reaches at least, on every side, beyond the centres of its outermost holes; left out = not known.
        optional edge: Option<Length>,
        /// Of a pair of side plates: the width over a machine's two faces, or between a frame's two plates.
        optional pair_width: Option<Length>,
        /// Thread of the bolts, and of the tapped holes: "M12", "M12x1.25", "1/2-13 UNC".
        optional thread: Option<String>,
        /// Property class of the bolts, as it is stamped on their heads: "8.8", "10.9", "grade 8"; left out = see the manual.
        optional class: Option<String>,
        /// Torque that the bolts are tightened to, in newton metres; left out = see the manual.
        optional torque: Option<Torque>,
        /// Least number of bolts; left out = every hole of the side with fewer, to be asked where the sides have not equally many.
        optional required: Option<u32>,
        /// Whether the plate may be turned round or over; left out = false.
        optional may_flip: bool,
    }
}

record! {
    /// One hole.
    #[derive(Copy)]
    pub struct Hole {
        /// To the right when looking at the face with v up.
        required u: Length,
        /// Along the port's `up`.
        required v: Length,
        /// Diameter; of a slot its width, of a tapped hole the thread's nominal diameter.
        required diameter: Length,
        /// Plain or tapped; left out = plain.
        optional kind: HoleKind,
        /// Travel, if it is a slot.
        optional slot: Option<Slot>,
    }
}

words! {
    /// What a plate is made of.
    pub enum Metal => core::Metal {
        /// Steel.
        Steel "steel",
        /// Cast iron, as machines' housings are.
        CastIron "cast_iron",
        /// Aluminium.
        Aluminium "aluminium",
    }
}

words! {
    /// How a hole holds its bolt.
    #[derive(Default)]
    pub enum HoleKind => core::HoleKind {
        /// A clearance hole.
        #[default]
        Plain "plain",
        /// A thread.
        Tapped "tapped",
    }
}

record! {
    /// A slot's travel.
    #[derive(Copy)]
    pub struct Slot => core::Slot {
        /// Centre to centre of the end radii.
        required travel: Length,
        /// Direction against u, counter-clockwise.
        required direction: Angle,
    }
}

record! {
    /// Pins in lugs or clevises.
    pub struct Pins => core::Pins {
        /// Which half of the joint this is.
        required form: PinForm,
        /// The points, in any order: which meets which is told by where they are.
        required points: Vec<PinPoint>,
        /// Distance between left and right, centre to centre.
        optional spread: Option<Stated<Length>>,
    }
}

words! {
    /// Which half of a pinned joint a port is.
    pub enum PinForm => core::PinForm {
        /// A lug with a bore, entering a clevis.
        Lug "lug",
        /// A clevis with its pin.
        Clevis "clevis",
    }
}

record! {
    /// One pinned point.
    pub struct PinPoint => core::PinPoint {
        /// Name as drawn, such as "lower left".
        required name: String,
        /// Bore of a lug, pin of a clevis.
        optional diameter: Option<Stated<Length>>,
        /// Thickness of a lug, gap of a clevis.
        optional width: Option<Stated<Length>>,
        /// Centre height over the port's reference point.
        optional height: Option<Stated<Length>>,
        /// How far to the right of the port's reference point when looking at the face; left out = not known.
        optional across: Option<Stated<Length>>,
    }
}

record! {
    /// Hooks on a bar.
    pub struct HookRack => core::HookRack {
        /// Which half of the joint this is.
        required side: HookSide,
        /// Diameter of the bar, or opening of the hook.
        optional diameter: Option<Stated<Length>>,
        /// Distance between the two hooks, or length between the bar's ends.
        optional spread: Option<Stated<Length>>,
        /// From the bar's centre down to the latch pin.
        optional drop: Option<Stated<Length>>,
        /// Diameter of the latch pin, or of its bore.
        optional latch: Option<Stated<Length>>,
        /// From the rack's face back to the bar's centre.
        optional setback: Option<Stated<Length>>,
    }
}

words! {
    /// Which half of a hook rack a port is.
    pub enum HookSide => core::HookSide {
        /// The bar and the latch bore, on the rack.
        Bar "bar",
        /// The hooks and the latch pin, on the implement.
        Hook "hook",
    }
}

record! {
    /// A three-point hitch.
    pub struct ThreePoint => core::ThreePoint {
        /// Categories it serves as ISO 730 names them: "1N", "1", "2N", "2" …; left out = not known.
        optional categories: Vec<String>,
        /// Whether a quick-attach frame is fitted; left out = false.
        optional quick_attach: bool,
        /// Lift capacity at the lower hitch points (ISO 789-2), carrier side.
        optional lift: Option<Mass>,
        /// Lift capacity 610 mm behind the points (ISO 789-2), carrier side.
        optional lift_610: Option<Mass>,
        /// Diameter of the lower hitch pins (carried side) or ball bores (carrier side).
        optional lower_pin: Option<Stated<Length>>,
        /// Diameter of the upper hitch pin.
        optional upper_pin: Option<Stated<Length>>,
        /// Lower hitch point span, shoulder to shoulder.
        optional span: Option<Stated<Length>>,
        /// Mast height.
        optional mast: Option<Stated<Length>>,
    }
}

record! {
    /// A power take-off.
    pub struct PowerTakeOff => core::PowerTakeOff {
        /// Type of ISO 500-1: 1, 2, 3 or 4.
        optional shaft_type: Option<u8>,
        /// Speeds in revolutions per minute that it gives, or needs.
        optional speeds: Vec<u16>,
        /// Rotation seen from behind the machine; left out = not known.
        optional rotation: Option<PtoRotation>,
        /// Power it gives.
        optional power: Option<Power>,
    }
}

words! {
    /// Which way a power take-off turns, seen from behind the machine.
    pub enum PtoRotation => core::PtoRotation {
        /// Clockwise.
        Clockwise "clockwise",
        /// Counter-clockwise.
        CounterClockwise "counter_clockwise",
    }
}

record! {
    /// A hydraulic coupler.
    #[derive(Eq)]
    pub struct Coupler => core::Coupler {
        /// Standard, as it writes itself: "ISO 7241-A", "ISO 7241-B", "ISO 16028", "37° flare".
        required standard: String,
        /// Size as the standard names it: "12.5", "-8".
        required size: String,
        /// Which half; left out = not known.
        optional gender: Option<CouplerGender>,
    }
}

words! {
    /// Which half of a coupler an end is.
    pub enum CouplerGender => core::CouplerGender {
        /// The plug.
        Male "male",
        /// The socket.
        Female "female",
    }
}

record! {
    /// A seat base.
    pub struct SeatBase => core::SeatBase {
        /// Its holes.
        required pattern: BoltPattern,
        /// Height of the pedestal from the deck to the seat's underside.
        optional pedestal: Option<Length>,
    }
}

record! {
    /// An electric connector.
    #[derive(Eq)]
    pub struct Electric => core::Electric {
        /// Connector, in the catalogue's words; equal words mate.
        required connector: String,
        /// Function, in the catalogue's words.
        required function: String,
    }
}
