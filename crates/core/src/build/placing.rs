//! Placing the stack: each item stands where its joint puts it.

use std::mem::discriminant;

use crate::item::{Body, Catalogue, End, ItemRef, Point3, Port, Pose, Role, Towards};
use crate::quantity::{Angle, Length};

use super::Build;

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
        let (sin, cos) = libm::sincos(self.pitch.rad());
        Point3 { x: self.at.x + x * cos - local.z * sin, y: self.at.y + y, z: self.at.z + x * sin + local.z * cos }
    }

    /// A local side-view point (x, z) in the machine's axes.
    pub fn side(&self, x: Length, z: Length) -> (Length, Length) {
        let p = self.point(Point3 { x, y: Length::ZERO, z });
        (p.x, p.z)
    }
}

/// An item with its place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// The item.
    pub item: ItemRef,
    /// Which of several equal items (adapters used twice), counted from 0.
    pub copy: usize,
    /// Its place.
    pub placement: Placement,
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
}

impl Stack {
    /// The place of an item, if it has one (the first of several equal ones).
    pub fn placement(&self, item: ItemRef) -> Option<Placement> {
        self.placed.iter().find(|p| p.item == item).map(|p| p.placement)
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
/// Frame: the machine's axes. Placing follows the ports' poses: reference points coincide, faces
/// look at each other. Valid for any build; without a machine the frame or the implement takes
/// the origin, so that parts of a build can be drawn by themselves.
pub fn place(catalogue: &Catalogue, build: &Build) -> Stack {
    let mut stack = Stack::default();
    let mut waiting = build.items();
    let Some(root) = waiting.iter().position(|item| !matches!(item, ItemRef::Adapter(_) | ItemRef::Seat(_))) else {
        stack.loose = waiting;
        return stack;
    };
    let root = waiting.remove(root);
    stack.placed.push(Placed { item: root, copy: 0, placement: Placement::default() });

    // Real items first, so that an adapter goes in only where nothing meets directly.
    while let Some((index, joint, placement)) = next_to_place(catalogue, &stack, &waiting) {
        let item = waiting.remove(index);
        let copy = stack.placed.iter().filter(|p| p.item == item).count();
        stack.placed.push(Placed { item, copy, placement });
        stack.joints.push(joint);
    }
    stack.loose = waiting;
    join_the_rest(catalogue, &mut stack);
    find_open(catalogue, build, &mut stack);
    stack.joints.sort_by_key(|joint| (joint.carrier.0, joint.role, joint.carried.0, joint.carrier.1, joint.carried.1));
    stack
}

/// Roles that place an item, in the order they are tried.
const PLACING: [Role; 4] = [Role::AxleAnchor, Role::Rack, Role::Hitch, Role::SeatDeck];

type Next = (usize, StackJoint, Placement);

fn next_to_place(catalogue: &Catalogue, stack: &Stack, waiting: &[ItemRef]) -> Option<Next> {
    let asked = |role: Role| {
        waiting.iter().any(|&item| {
            !matches!(item, ItemRef::Adapter(_))
                && catalogue.body(item).ports.iter().any(|p| p.role == role && p.end == End::Carried)
        })
    };
    let candidates = |adapters: bool| {
        waiting.iter().enumerate().filter(move |(_, item)| matches!(item, ItemRef::Adapter(_)) == adapters)
    };
    for role in PLACING {
        // An adapter that carries what is asked for goes in before the item that asks.
        if asked(role) {
            for (index, &item) in candidates(true) {
                let body = catalogue.body(item);
                if body.ports.iter().any(|p| p.role == role && p.end == End::Carrier)
                    && let Some((joint, placement)) = PLACING.iter().find_map(|&by| meet(catalogue, stack, body, by))
                {
                    return Some((index, joint, placement));
                }
            }
        }
        for (index, &item) in candidates(false) {
            if let Some((joint, placement)) = meet(catalogue, stack, catalogue.body(item), role) {
                return Some((index, joint, placement));
            }
        }
    }
    None
}

/// The joint of `role` by which `body` meets the stack, and the place that gives it. The latest
/// placed item that offers a free port carries; a port of the same kind is taken before another.
fn meet(catalogue: &Catalogue, stack: &Stack, body: &Body, role: Role) -> Option<(StackJoint, Placement)> {
    let carried_index = body.ports.iter().position(|p| p.role == role && p.end == End::Carried)?;
    let carried = &body.ports[carried_index];
    let carrier = free_carrier(catalogue, stack, stack.placed.len(), carried)?;
    let placed = &stack.placed[carrier.0];
    let port = &catalogue.body(placed.item).ports[carrier.1];
    let placement = against(&placed.placement, port, carried);
    Some((StackJoint { role, carrier, carried: (stack.placed.len(), carried_index) }, placement))
}

/// The free carrier port that answers `carried`, of the latest placed item that has one.
fn free_carrier(catalogue: &Catalogue, stack: &Stack, carried_at: usize, carried: &Port) -> Option<(usize, usize)> {
    (0..stack.placed.len()).rev().filter(|&at| at != carried_at).find_map(|at| {
        let ports = &catalogue.body(stack.placed[at].item).ports;
        let free = |same_kind: bool| {
            ports.iter().enumerate().position(|(index, port)| {
                port.role == carried.role
                    && port.end == End::Carrier
                    && (!same_kind || discriminant(&port.kind) == discriminant(&carried.kind))
                    && !is_taken(stack, (at, index))
            })
        };
        free(true).or_else(|| free(false)).map(|index| (at, index))
    })
}

fn is_taken(stack: &Stack, port: (usize, usize)) -> bool {
    stack.joints.iter().any(|joint| joint.carrier == port || joint.carried == port)
}

/// The place of an item whose port `carried` meets `carrier` of an item placed at `base`.
fn against(base: &Placement, carrier: &Port, carried: &Port) -> Placement {
    let (Some(carrier), Some(carried)) = (carrier.pose, carried.pose) else {
        return *base;
    };
    let turned = base.reversed != needs_turning(carrier, carried);
    let rotation = Placement { at: Point3::default(), pitch: base.pitch, reversed: turned };
    let target = base.point(carrier.at);
    let offset = rotation.point(carried.at);
    Placement { at: Point3 { x: target.x - offset.x, y: target.y - offset.y, z: target.z - offset.z }, ..rotation }
}

/// Whether two faces look the same way along x or y, so that the carried item has to turn round.
fn needs_turning(carrier: Pose, carried: Pose) -> bool {
    let level = |face| matches!(face, Towards::Front | Towards::Rear | Towards::Left | Towards::Right);
    carrier.faces == carried.faces && level(carrier.faces)
}

/// Joints between items that are placed already: closure, lines, drive, wiring.
fn join_the_rest(catalogue: &Catalogue, stack: &mut Stack) {
    for carried_at in 1..stack.placed.len() {
        let body = catalogue.body(stack.placed[carried_at].item);
        for (carried_index, carried) in body.ports.iter().enumerate() {
            if carried.end != End::Carried || is_taken(stack, (carried_at, carried_index)) {
                continue;
            }
            if belongs_to_other_mount(stack, carried_at, body, carried.role) {
                continue;
            }
            let partner = free_carrier(catalogue, stack, carried_at, carried);
            if let Some(carrier) = partner {
                stack.joints.push(StackJoint { role: carried.role, carrier, carried: (carried_at, carried_index) });
            }
        }
    }
}

/// Whether a rack or hitch port is idle because its item is carried by the other of the two.
fn belongs_to_other_mount(stack: &Stack, at: usize, body: &Body, role: Role) -> bool {
    let other = match role {
        Role::Rack => Role::Hitch,
        Role::Hitch => Role::Rack,
        _ => return false,
    };
    stack.joints.iter().any(|j| j.carried.0 == at && body.ports[j.carried.1].role == other)
}

/// Carried ports of the build's items that nothing answers although their carrier is chosen.
fn find_open(catalogue: &Catalogue, build: &Build, stack: &mut Stack) {
    for (at, placed) in stack.placed.iter().enumerate().skip(1) {
        for (index, port) in catalogue.body(placed.item).ports.iter().enumerate() {
            let answered = is_taken(stack, (at, index))
                || belongs_to_other_mount(stack, at, catalogue.body(placed.item), port.role);
            if port.end == End::Carried && !answered {
                stack.open.push(OpenPort { role: port.role, item: placed.item, port: index });
            }
        }
    }
    for &item in &stack.loose {
        if carrier_is_chosen(build, item) {
            for (index, port) in catalogue.body(item).ports.iter().enumerate() {
                if port.end == End::Carried {
                    stack.open.push(OpenPort { role: port.role, item, port: index });
                }
            }
        }
    }
}

fn carrier_is_chosen(build: &Build, item: ItemRef) -> bool {
    match item {
        ItemRef::Machine(_) => false,
        ItemRef::Frame(_) => build.machine.is_some(),
        ItemRef::Adapter(_) => true,
        ItemRef::Seat(_) | ItemRef::Implement(_) => build.machine.is_some() && build.carrying != super::Carrying::Open,
    }
}
