//! Placing the stack: each item stands where its joint puts it.

use crate::item::{Body, Catalogue, End, ItemRef, Point3, Port, Role, SeatState};
use crate::quantity::{Angle, Length};

use super::assembly::PLACING;
use super::{Build, assembly};

/// Where an item's local axes lie in the machine's axes: turned half round z first if
/// `reversed`, then pitched, then moved.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Placement {
    /// The local origin.
    pub at: Point3,
    /// Pitch in the side plane, counter-clockwise in (x, z) positive: nose up.
    pub pitch: Angle,
    /// Whether the item is turned half round the vertical.
    pub reversed: bool,
}

impl Placement {
    /// A local point in the machine's axes.
    pub fn point(&self, local: Point3) -> Point3 {
        let (x, y) = if self.reversed { (-local.x, -local.y) } else { (local.x, local.y) };
        // Most items stand level, and outlines have thousands of points.
        let (sin, cos) = if self.pitch == Angle::ZERO { (0.0, 1.0) } else { libm::sincos(self.pitch.rad()) };
        Point3 { x: self.at.x + x * cos - local.z * sin, y: self.at.y + y, z: self.at.z + x * sin + local.z * cos }
    }

    /// This place in its carrier's axes, seen from where the carrier stands.
    #[must_use]
    pub fn on(&self, carrier: &Self) -> Self {
        // Turned half round, what tips the nose up tips it down.
        let pitch = if carrier.reversed { -self.pitch } else { self.pitch };
        Self { at: carrier.point(self.at), pitch: carrier.pitch + pitch, reversed: carrier.reversed != self.reversed }
    }

    /// A local side-view point (x, z) in the machine's axes.
    pub fn side(&self, x: Length, z: Length) -> (Length, Length) {
        let p = self.point(Point3 { x, y: Length::ZERO, z });
        (p.x, p.z)
    }
}

/// What says where joints put what they carry.
///
/// Two ports that meet look at each other; where they are bolted, the lay of their hole patterns shifts and turns what is
/// carried.
pub trait Joined {
    /// The place of a carried item in its carrier's axes, by the item and port of both; `None` where a port does not say where
    /// it is, or where the item would lie on its side or on its head.
    fn joined(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<Placement>;
}

/// An item with its place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// The item.
    pub item: ItemRef,
    /// Which of several equal items (adapters used twice), counted from 0.
    pub copy: usize,
    /// Where it stands; nothing if a port that places it, or what carries it, does not say where it is.
    pub placement: Option<Placement>,
}

/// One joint of a stack: which port of which item carries which.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StackJoint {
    /// Role of both ports.
    pub role: Role,
    /// Index in [`Stack::placed`] of the carrying item, and its port's index.
    pub carrier: (usize, usize),
    /// Index in [`Stack::placed`] of the carried item, and its port's index.
    pub carried: (usize, usize),
}

/// A side of a joint that nothing in the build answers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct OpenPort {
    /// The role that is asked for.
    pub role: Role,
    /// The item that asks.
    pub item: ItemRef,
    /// Its port's index.
    pub port: usize,
}

/// How a seat stands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SeatStands {
    /// Its state.
    pub state: SeatState,
    /// How far it is slid forward.
    pub by: Length,
}

/// How the seats of a build stand: nothing is moved while nothing is judged.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Seats {
    /// The operator's seat while somebody works at the implement.
    pub driver: SeatStands,
    /// The seat behind while the machine is driven.
    pub rear: SeatStands,
    /// Whether the implement's own seat is taken off.
    pub own_is_off: bool,
}

/// The stack of a build.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Stack {
    /// Items in the order they were placed; the machine first. Items that no joint places are
    /// not among them.
    pub placed: Vec<Placed>,
    /// Joints that bring two items of the build together, carriers first.
    pub joints: Vec<StackJoint>,
    /// Ports that have to be answered and are not.
    pub open: Vec<OpenPort>,
    /// Items of the build that nothing places.
    pub loose: Vec<ItemRef>,
    /// How the seats stand.
    pub seats: Seats,
}

impl Stack {
    /// The place of an item, if it has one that is known (the first of several equal ones).
    pub fn placement(&self, item: ItemRef) -> Option<Placement> {
        self.placed.iter().find(|p| p.item == item).and_then(|p| p.placement)
    }

    /// Whether a joint places an item, at a known place or not.
    pub fn holds(&self, item: ItemRef) -> bool {
        self.placed.iter().any(|placed| placed.item == item)
    }

    /// The item that `placed` stands on: the carrier of the joint that placed it.
    fn stands_on(&self, placed: usize) -> Option<usize> {
        let joint = self.joints.iter().find(|joint| joint.carried.0 == placed && PLACING.contains(&joint.role))?;
        Some(joint.carrier.0)
    }

    /// Whether `item` stands on `carrier`, directly or through what is between them.
    ///
    /// An item stands on one other, and the machine on none, so the walk ends.
    pub fn carries(&self, carrier: ItemRef, item: ItemRef) -> bool {
        let mut at = self.placed.iter().position(|placed| placed.item == item);
        for _ in 0..self.placed.len() {
            at = at.and_then(|at| self.stands_on(at));
            match at {
                Some(at) if self.placed[at].item == carrier => return true,
                Some(_) => {}
                None => return false,
            }
        }
        false
    }
}

/// Places the items of a build by their joints.
///
/// The machine stands at the origin. An item is placed by the first carried port, in the order
/// axle anchor, rack, hitch, seat deck, that some placed item (or an adapter on it) answers.
/// Adapters go in wherever one port answers a placed port and the other is asked for by an item
/// not yet placed; an adapter that nothing asks for stays loose. The front anchor places nothing:
/// it is the closure, judged by itself.
///
/// Frame: the machine's axes. Where a joint puts an item is told by `joined`; where it does not know, the item is joined, but its place is
/// not known.
/// Valid for any build; without a machine the frame or the implement takes
/// the origin, so that parts of a build can be drawn by themselves.
pub fn place(catalogue: &Catalogue, build: &Build, joined: &impl Joined) -> Stack {
    assembly(catalogue, build).stand(build, joined)
}

/// Whether an item has a port to be mounted by.
pub fn is_mountable(body: &Body) -> bool {
    body.ports.iter().any(|port| port.end == End::Carried && PLACING.contains(&port.role))
}

/// Frame and implement of a build whose items are placed, where nothing places them because they have no port to be mounted
/// by, or the machine has none that bears anything.
pub fn unmountable(catalogue: &Catalogue, build: &Build, placed: &[Placed]) -> impl Iterator<Item = ItemRef> {
    let hung = [build.choices.carrying.frame().map(ItemRef::Frame), build.choices.implement.map(ItemRef::Implement)];
    let bears = |port: &Port| port.end == End::Carrier && PLACING.contains(&port.role);
    let bare = build.choices.machine.is_some_and(|id| !catalogue.machine(id).body.ports.iter().any(bears));
    let is_placed = move |item| placed.iter().any(|placed| placed.item == item);
    hung.into_iter().flatten().filter(move |&item| (bare || !is_mountable(catalogue.body(item))) && !is_placed(item))
}
