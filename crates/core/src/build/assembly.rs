//! The assembly of a stack: which ports meet, before anything is measured out.

use crate::order;
use std::mem::discriminant;

use crate::item::{Body, Catalogue, End, ItemRef, Port, Role};

use super::{Build, Joined, OpenPort, Placed, Placement, Stack, StackJoint};

/// Which items of a build join which by which ports.
///
/// Builds whose items have the same ports in the same order (role, end and kind of each) have
/// the same assembly, whatever the ports measure and wherever they sit.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Assembly {
    /// The stack of the build it was taken from, everything at the origin.
    stack: Stack,
    /// The joint that places each placed item but the first, in the order they are placed.
    placing: Vec<StackJoint>,
}

impl Assembly {
    /// The stack, everything at the origin.
    pub const fn unplaced(&self) -> &Stack {
        &self.stack
    }

    /// The joints that place an item, by its index in [`Stack::placed`]: its own, then that of what carries it, and so on to
    /// the machine.
    pub fn placing(&self, placed: usize) -> impl Iterator<Item = StackJoint> + '_ {
        let joint = |placed: usize| placed.checked_sub(1).map(|at| self.placing[at]);
        std::iter::successors(joint(placed), move |known| joint(known.carrier.0))
    }

    /// The stack of a build of this assembly: its items in place of those the assembly was taken from.
    pub fn stand(&self, build: &Build, joined: &impl Joined) -> Stack {
        let mut stack = self.stack.clone();
        for open in &mut stack.open {
            open.item = counterpart(build, open.item);
        }
        for item in &mut stack.loose {
            *item = counterpart(build, *item);
        }
        self.place(build, joined, &mut stack.placed);
        stack
    }

    /// The placed items of that stack alone, in a list that was used before, so that no memory is asked for.
    pub fn place(&self, build: &Build, joined: &impl Joined, placed: &mut Vec<Placed>) {
        placed.clone_from(&self.stack.placed);
        for placed in placed.iter_mut() {
            placed.item = counterpart(build, placed.item);
        }
        for (at, joint) in self.placing.iter().enumerate() {
            let base = placed[joint.carrier.0];
            let ends = ((base.item, joint.carrier.1), (placed[at + 1].item, joint.carried.1));
            let place = base.placement.zip(joined.joined(ends.0, ends.1));
            placed[at + 1].placement = place.map(|(base, place)| place.on(&base));
        }
    }
}

/// The item of the build that stands where `item` stood in a build of the same assembly.
fn counterpart(build: &Build, item: ItemRef) -> ItemRef {
    let other = match item {
        ItemRef::Machine(_) => build.choices.machine.map(ItemRef::Machine),
        ItemRef::Frame(_) => build.choices.carrying.frame().map(ItemRef::Frame),
        ItemRef::Seat(_) => build.choices.seating.seat().map(ItemRef::Seat),
        ItemRef::Implement(_) => build.choices.implement.map(ItemRef::Implement),
        ItemRef::Adapter(_) | ItemRef::Equipment(_) => None,
    };
    other.unwrap_or(item)
}

/// Joins the items of a build; [`super::place`] says by which rules.
pub fn assembly(catalogue: &Catalogue, build: &Build) -> Assembly {
    let mut stack = Stack::default();
    let mut waiting = build.items();
    let Some(root) = waiting.iter().position(|item| !matches!(item, ItemRef::Adapter(_) | ItemRef::Seat(_))) else {
        stack.loose = waiting;
        return Assembly { stack, placing: Vec::new() };
    };
    let root = waiting.remove(root);
    stack.placed.push(Placed { item: root, copy: 0, placement: Some(Placement::default()) });

    // Real items first, so that an adapter goes in only where nothing meets directly.
    while let Some((index, joint)) = next_to_place(catalogue, &stack, &waiting) {
        let item = waiting.remove(index);
        let copy = stack.placed.iter().filter(|p| p.item == item).count();
        stack.placed.push(Placed { item, copy, placement: Some(Placement::default()) });
        stack.joints.push(joint);
    }
    stack.loose = waiting;
    let placing = stack.joints.clone();
    join_the_rest(catalogue, &mut stack);
    find_open(catalogue, build, &mut stack);
    order::sort_by_key(&mut stack.joints, |joint| {
        (joint.carrier.0, joint.role, joint.carried.0, joint.carrier.1, joint.carried.1)
    });
    Assembly { stack, placing }
}

/// Roles that place an item, in the order they are tried.
pub(super) const PLACING: [Role; 4] = [Role::AxleAnchor, Role::Rack, Role::Hitch, Role::SeatDeck];

type Next = (usize, StackJoint);

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
                    && let Some(joint) = PLACING.iter().find_map(|&by| meet(catalogue, stack, body, by))
                {
                    return Some((index, joint));
                }
            }
        }
        for (index, &item) in candidates(false) {
            if let Some(joint) = meet(catalogue, stack, catalogue.body(item), role) {
                return Some((index, joint));
            }
        }
    }
    None
}

/// The joint of `role` by which `body` meets the stack. The latest placed item that offers a free
/// port carries; a port of the same kind is taken before another.
fn meet(catalogue: &Catalogue, stack: &Stack, body: &Body, role: Role) -> Option<StackJoint> {
    let carried_index = body.ports.iter().position(|p| p.role == role && p.end == End::Carried)?;
    let carried = &body.ports[carried_index];
    let carrier = free_carrier(catalogue, stack, stack.placed.len(), carried)?;
    Some(StackJoint { role, carrier, carried: (stack.placed.len(), carried_index) })
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
        ItemRef::Machine(_) | ItemRef::Equipment(_) => false,
        ItemRef::Frame(_) => build.choices.machine.is_some(),
        ItemRef::Adapter(_) => true,
        ItemRef::Seat(_) | ItemRef::Implement(_) => {
            build.choices.machine.is_some() && build.choices.carrying != super::Carrying::Open
        }
    }
}
