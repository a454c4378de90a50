//! A build: the choices, changes, measurements and what is on hand.

use super::ArmAngles;
use crate::item::{AdapterId, FrameId, ImplementId, ItemRef, MachineId, SeatId, SiteId, TrailerId};
use crate::ordered::{Map, Set};
use crate::quantity::{Length, Mass, Tool};

/// What carries the implement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Carrying {
    /// Not chosen yet.
    #[default]
    Open,
    /// The machine's own three-point hitch, without a frame.
    Hitch,
    /// A mounting frame.
    Frame(FrameId),
}

impl Carrying {
    /// The frame, if there is one.
    pub const fn frame(self) -> Option<FrameId> {
        match self {
            Self::Frame(id) => Some(id),
            _ => None,
        }
    }
}

/// Which seat arrangement is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Seating {
    /// Not chosen yet.
    #[default]
    Open,
    /// This arrangement.
    This(SeatId),
}

impl Seating {
    /// The seat arrangement, if one is chosen.
    pub const fn seat(self) -> Option<SeatId> {
        match self {
            Self::Open => None,
            Self::This(id) => Some(id),
        }
    }
}

/// Work the user has decided on.
#[derive(Debug, Clone, PartialEq)]
pub enum Change {
    /// Drill the missing holes of a bolt pattern, where its joint needs that. The verdict stays *bolts up with work*: the
    /// holes are planned instead of needed, and their workshop time counts.
    Drill {
        /// The item to drill.
        item: ItemRef,
        /// Its port.
        port: String,
    },
    /// Open up the clearance holes of a bolt pattern to this diameter more. A joint that needs it is judged with the larger
    /// holes and stays *bolts up with work*.
    OpenUp {
        /// The item whose holes are opened.
        item: ItemRef,
        /// Its port.
        port: String,
        /// Added to every hole's diameter.
        by: Length,
    },
    /// Flip or slide the operator's seat forward as the seat arrangement asks.
    FrontSeatForward,
    /// Fold the roll-over bar where it has to be folded (for transport and storage only).
    FoldRollOverBar,
    /// Take something off the machine, in the catalogue's words.
    TakeOff(String),
    /// Put something on the machine, in the catalogue's words.
    PutOn(String),
    /// Ramps of this length, along the slope, in place of the trailer's own.
    Ramps {
        /// Their length.
        length: Length,
    },
    /// A gateway of this width in place of the site's own.
    Gateway {
        /// Its width.
        width: Length,
    },
    /// A path of this width behind the gateway in place of the site's own.
    Path {
        /// Its width.
        width: Length,
    },
    /// Ballast at a place.
    Ballast {
        /// Its mass.
        mass: Mass,
        /// Its place in the machine's axes.
        x: Length,
    },
}

/// What the tape or caliper says of the unit in the yard.
#[derive(Debug, Clone, PartialEq)]
pub struct Measurement {
    /// The item.
    pub item: ItemRef,
    /// Its port.
    pub port: String,
    /// The dimension, kebab-case, as the checks name it ("bore", "spread", "hole-3-u").
    pub dimension: String,
    /// The value.
    pub value: Length,
    /// The tool.
    pub tool: Tool,
    /// Half range, if it is said to differ from the tool's usual one.
    pub plus_minus: Option<Length>,
    /// Free note.
    pub note: String,
}

/// Whether something is there on the unit in the yard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Presence {
    /// Seen.
    Yes,
    /// Looked, not there.
    No,
}

/// A build.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Build {
    /// Machine.
    pub machine: Option<MachineId>,
    /// Frame or hitch.
    pub carrying: Carrying,
    /// Seat arrangement.
    pub seating: Seating,
    /// Implement.
    pub implement: Option<ImplementId>,
    /// Adapters, each wherever it joins; the same one may be there twice.
    pub adapters: Vec<AdapterId>,
    /// Work decided on.
    pub changes: Vec<Change>,
    /// Measurements; of two of the same dimension the later counts.
    pub measured: Vec<Measurement>,
    /// What was looked for: (item, what) → there or not.
    pub looked: Map<(ItemRef, String), Presence>,
    /// Serial numbers of the units in the yard.
    pub serials: Map<ItemRef, u64>,
    /// What is on hand and need not be bought.
    pub on_hand: Set<ItemRef>,
    /// Trailer.
    pub trailer: Option<TrailerId>,
    /// Site.
    pub site: Option<SiteId>,
    /// Pose that the digging arm is shown in at work. No finding rests on it.
    pub pose: Option<ArmAngles>,
}

impl Build {
    /// Every item of the build, carriers first.
    pub fn items(&self) -> Vec<ItemRef> {
        let mut items = Vec::new();
        items.extend(self.machine.map(ItemRef::Machine));
        items.extend(self.carrying.frame().map(ItemRef::Frame));
        items.extend(self.adapters.iter().copied().map(ItemRef::Adapter));
        items.extend(self.seating.seat().map(ItemRef::Seat));
        items.extend(self.implement.map(ItemRef::Implement));
        items
    }

    /// The ballast that hangs on the machine, with its place; of several the last.
    pub fn ballast(&self) -> Option<(Mass, Length)> {
        self.last(|change| match *change {
            Change::Ballast { mass, x } => Some((mass, x)),
            _ => None,
        })
    }

    /// Length of the ramps that stand for the trailer's own.
    pub fn ramps(&self) -> Option<Length> {
        self.last(|change| match *change {
            Change::Ramps { length } => Some(length),
            _ => None,
        })
    }

    /// Width of the gateway that stands for the site's own.
    pub fn gateway(&self) -> Option<Length> {
        self.last(|change| match *change {
            Change::Gateway { width } => Some(width),
            _ => None,
        })
    }

    /// Width of the path that stands for the site's own.
    pub fn path(&self) -> Option<Length> {
        self.last(|change| match *change {
            Change::Path { width } => Some(width),
            _ => None,
        })
    }

    fn last<T>(&self, of: impl FnMut(&Change) -> Option<T>) -> Option<T> {
        self.changes.iter().rev().find_map(of)
    }

    /// Hangs ballast in place of what hung before; none of it hangs nowhere.
    pub fn hang(&mut self, mass: Mass, x: Length) {
        self.changes.retain(|change| !matches!(change, Change::Ballast { .. }));
        if mass > Mass::ZERO {
            self.changes.push(Change::Ballast { mass, x });
        }
    }

    /// Whether all four steps are answered.
    pub fn is_complete(&self) -> bool {
        self.machine.is_some()
            && self.carrying != Carrying::Open
            && self.seating != Seating::Open
            && self.implement.is_some()
    }
}
