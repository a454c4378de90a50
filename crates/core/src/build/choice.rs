//! A build: the choices, changes, measurements and what is on hand.

use std::collections::{BTreeMap, BTreeSet};

use super::{ArmAngles, Measurement, NumberRead, Presence};
use crate::item::{
    AdapterId, EquipmentId, FrameId, GuideRow, ImplementId, ItemRef, MachineId, Named, SeatId, SeatState, SiteId,
    Switched, TrailerId,
};
use crate::quantity::{Length, Mass};

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
    /// How the operator's seat stands while somebody works from the seat behind it.
    DriverSeat(SeatState),
    /// How the seat behind stands while the machine is driven.
    RearSeat(SeatState),
    /// Fold the roll-over bar where it has to be folded (for transport and storage only).
    FoldRollOverBar,
    /// Take this off the machine.
    TakeOff(EquipmentId),
    /// Put this on the machine.
    PutOn(EquipmentId),
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

/// A build: what is chosen in the four steps, and everything beside it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Build {
    /// What is chosen in the four steps.
    pub choices: Choices,
    /// What goes with it, whatever is chosen.
    pub side: Side,
}

/// What is chosen in the four steps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Choices {
    /// Machine.
    pub machine: Option<MachineId>,
    /// Frame or hitch.
    pub carrying: Carrying,
    /// Seat arrangement.
    pub seating: Seating,
    /// Implement.
    pub implement: Option<ImplementId>,
}

impl Choices {
    /// What a set of the guide names; where it admits any item, the step stays open.
    pub fn listed(row: &GuideRow) -> Self {
        Self {
            machine: row.machine.item(),
            carrying: match row.frame {
                Named::Any => Carrying::Open,
                Named::Without => Carrying::Hitch,
                Named::This(frame) => Carrying::Frame(frame),
            },
            seating: row.seat.item().map_or(Seating::Open, Seating::This),
            implement: row.implement.item(),
        }
    }
}

/// What goes with the choices of a build: parts between them, work decided on, what was found on the units, where it all goes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Side {
    /// Adapters, each wherever it joins; the same one may be there twice.
    pub adapters: Vec<AdapterId>,
    /// Work decided on.
    pub changes: Vec<Change>,
    /// Measurements; of two of the same dimension the later counts.
    pub measured: Vec<Measurement>,
    /// Part numbers read off the units; of two readings of one port the later counts.
    pub read: Vec<NumberRead>,
    /// What was looked for: (item, what) → there or not.
    pub looked: BTreeMap<(ItemRef, String), Presence>,
    /// Serial numbers of the units in the yard.
    pub serials: BTreeMap<ItemRef, u64>,
    /// What is on hand and need not be bought.
    pub on_hand: BTreeSet<ItemRef>,
    /// Trailer.
    pub trailer: Option<TrailerId>,
    /// Site.
    pub site: Option<SiteId>,
    /// Pose that the digging arm is shown in at work. No finding rests on it.
    pub pose: Option<ArmAngles>,
}

impl Side {
    /// How the operator's seat is decided to stand while somebody works behind it; of several decisions the one that moves it
    /// the most, so that their order is of no matter.
    pub fn driver_seat(&self) -> Option<SeatState> {
        let state = |change: &Change| if let Change::DriverSeat(state) = change { Some(*state) } else { None };
        self.changes.iter().filter_map(state).max()
    }

    /// How the seat behind is decided to stand while the machine is driven; of several decisions the one that moves it the most.
    pub fn rear_seat(&self) -> Option<SeatState> {
        let state = |change: &Change| if let Change::RearSeat(state) = change { Some(*state) } else { None };
        self.changes.iter().filter_map(state).max()
    }

    /// The equipment that is put on or taken off; of several decisions about one piece the last.
    pub fn switched(&self) -> Switched {
        let switched = |change: &Change| match *change {
            Change::PutOn(id) => Some((id, true)),
            Change::TakeOff(id) => Some((id, false)),
            _ => None,
        };
        self.changes.iter().filter_map(switched).collect()
    }

    /// Decides on a change; a seat that was decided to stand otherwise no longer does, nor is equipment put on that comes off.
    pub fn decide(&mut self, change: Change) {
        self.changes.retain(|known| match (known, &change) {
            (Change::DriverSeat(_), Change::DriverSeat(_)) | (Change::RearSeat(_), Change::RearSeat(_)) => false,
            (Change::PutOn(known) | Change::TakeOff(known), Change::PutOn(of) | Change::TakeOff(of)) => known != of,
            _ => true,
        });
        if !self.changes.contains(&change) {
            self.changes.push(change);
        }
    }

    /// The items of which something is said: measured, read, looked for, changed, its serial number known, on hand.
    pub fn items(&self) -> BTreeSet<ItemRef> {
        let mut items = self.on_hand.clone();
        items.extend(self.measured.iter().map(|measurement| measurement.item));
        items.extend(self.read.iter().map(|read| read.item));
        items.extend(self.looked.keys().map(|(item, _)| *item));
        items.extend(self.serials.keys().copied());
        items.extend(self.changes.iter().filter_map(|change| match change {
            Change::Drill { item, .. } | Change::OpenUp { item, .. } => Some(*item),
            Change::DriverSeat(_)
            | Change::RearSeat(_)
            | Change::FoldRollOverBar
            | Change::TakeOff(_)
            | Change::PutOn(_)
            | Change::Ramps { .. }
            | Change::Gateway { .. }
            | Change::Path { .. }
            | Change::Ballast { .. } => None,
        }));
        items
    }
}

impl From<Choices> for Build {
    /// With nothing beside them.
    fn from(choices: Choices) -> Self {
        Self { choices, side: Side::default() }
    }
}

impl Build {
    /// The same build, changed.
    #[must_use]
    pub fn changed(mut self, change: impl FnOnce(&mut Self)) -> Self {
        change(&mut self);
        self
    }

    /// Every item of the build, carriers first.
    pub fn items(&self) -> Vec<ItemRef> {
        let mut items = Vec::new();
        items.extend(self.choices.machine.map(ItemRef::Machine));
        items.extend(self.choices.carrying.frame().map(ItemRef::Frame));
        items.extend(self.side.adapters.iter().copied().map(ItemRef::Adapter));
        items.extend(self.choices.seating.seat().map(ItemRef::Seat));
        items.extend(self.choices.implement.map(ItemRef::Implement));
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
        self.side.changes.iter().rev().find_map(of)
    }

    /// Hangs ballast in place of what hung before; a mass of zero takes it off.
    pub fn hang(&mut self, mass: Mass, x: Length) {
        self.side.changes.retain(|change| !matches!(change, Change::Ballast { .. }));
        if mass > Mass::ZERO {
            self.side.changes.push(Change::Ballast { mass, x });
        }
    }

    /// Whether all four steps are answered.
    pub fn is_complete(&self) -> bool {
        self.choices.machine.is_some()
            && self.choices.carrying != Carrying::Open
            && self.choices.seating != Seating::Open
            && self.choices.implement.is_some()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_set_of_the_guide_leaves_open_what_it_does_not_name() {
        let any = GuideRow { machine: Named::Any, frame: Named::Any, seat: Named::Any, implement: Named::Any };
        assert_eq!(Choices::listed(&any), Choices::default());
        let row = GuideRow { machine: Named::This(MachineId(3)), frame: Named::Without, ..any };
        let chosen = Choices { machine: Some(MachineId(3)), carrying: Carrying::Hitch, ..Choices::default() };
        assert_eq!(Choices::listed(&row), chosen);
        let frame = Choices::listed(&GuideRow { frame: Named::This(FrameId(0)), seat: Named::This(SeatId(1)), ..any });
        assert_eq!((frame.carrying, frame.seating), (Carrying::Frame(FrameId(0)), Seating::This(SeatId(1))));
    }
}
