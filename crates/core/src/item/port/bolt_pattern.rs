//! Holes in a plate.

use super::table::table;
use crate::quantity::{Angle, Length, Stated, Torque};

/// Holes in a plate, in the port's plane (u to the right when looking at the face with v up).
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BoltPattern {
    /// The holes; empty = not known.
    pub holes: Vec<Hole>,
    /// Thickness of the plate; of tapped holes how deep they are threaded.
    pub plate: Option<Length>,
    /// What the plate is made of.
    pub metal: Option<Metal>,
    /// Bolt diameter the joint is made with.
    pub bolt: Option<Stated<Length>>,
    /// How far the plate reaches at least, on every side, beyond the centres of its outermost holes.
    pub edge: Option<Stated<Length>>,
    /// Of a pair of side plates: the width over a machine's two faces, or between a frame's two plates.
    pub pair_width: Option<Stated<Length>>,
    /// Thread of the bolts, and of the tapped holes: "M12", "M12x1.25", "1/2-13 UNC".
    pub thread: Option<String>,
    /// Property class of the bolts, as it is stamped on their heads: "8.8", "10.9", "grade 8".
    pub class: Option<String>,
    /// Torque that the bolts are tightened to.
    pub torque: Option<Torque>,
    /// Least number of bolts; `None` = every hole of the side with fewer, to be asked where the sides have not equally many.
    pub required: Option<u32>,
    /// Whether the plate may be turned round or over.
    pub may_flip: bool,
}

/// One hole.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hole {
    /// To the right.
    pub u: Stated<Length>,
    /// Along the port's up.
    pub v: Stated<Length>,
    /// Diameter; of a slot, its width; of a tapped hole, the thread's nominal diameter.
    pub diameter: Stated<Length>,
    /// Plain or tapped.
    pub kind: HoleKind,
    /// Slot, if it is one.
    pub slot: Option<Slot>,
}

impl Hole {
    /// A plain round hole as a drawing gives it.
    pub const fn drawn(u: Length, v: Length, diameter: Length) -> Self {
        Self {
            u: Stated::drawn(u),
            v: Stated::drawn(v),
            diameter: Stated::drawn(diameter),
            kind: HoleKind::Plain,
            slot: None,
        }
    }
}

/// What a plate is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Metal {
    /// Steel.
    Steel,
    /// Cast iron.
    CastIron,
    /// Aluminium.
    Aluminium,
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

table! {
    BoltPattern, besides [plate, metal, thread, class, torque, required, may_flip], each ["hole" holes: Hole]
    told HOLES "holes";
    told THREAD "thread";
    told PLATE "plate";
    told METAL "metal";
    size BOLT "bolt" bolt;
    distance EDGE "edge" edge;
    size PAIR_WIDTH "pair-width" pair_width;
}

table! {
    Hole, besides [kind, slot]
    place U "u" u;
    place V "v" v;
    size DIAMETER "diameter" diameter;
}
