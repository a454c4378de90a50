//! When two items may stand for each other before a rule.

use crate::build::Step;
use crate::item::{Catalogue, Frame, Implement, ItemRef, Machine, Role, Seat};

/// When two items of a step may stand for each other before a rule: everything that the rule
/// reads of them is equal, so that it comes to the same verdict with either, whatever the rest of
/// the build. Two of one step only are compared, and only where the same ports of both meet. The
/// bare hitch is never alike to a frame, nor is an item that the build says something of
/// (measured, looked for, changed) to any other.
#[derive(Clone, Copy)]
pub(in crate::fit) struct Alike {
    pub machine: fn(&Catalogue, &Machine, &Machine) -> bool,
    pub frame: fn(&Catalogue, &Frame, &Frame) -> bool,
    pub seat: fn(&Catalogue, &Seat, &Seat) -> bool,
    pub implement: fn(&Catalogue, &Implement, &Implement) -> bool,
}

/// What a rule reads that asks where items stand. It may ask the place of the items that `stand` names and of the build's
/// adapters, but of the joints no more than whether there is one of certain roles.
#[derive(Clone, Copy)]
pub(in crate::fit) struct Placed {
    /// What it reads of the items themselves.
    pub alike: Alike,
    /// The steps of whose items it asks the place.
    pub stand: &'static [Step],
    /// The two steps, earlier first, of whose items it asks whether they are listed together.
    pub listed: Option<[Step; 2]>,
    /// The roles of which it asks whether any two ports meet.
    pub joined: &'static [Role],
}

impl Placed {
    /// Of a rule that reads nothing.
    pub const NOTHING: Self = Self { alike: Alike::ALL, stand: &[], listed: None, joined: &[] };
}

impl Alike {
    /// Of a rule that reads nothing of any item.
    pub const ALL: Self =
        Self { machine: |_, _, _| true, frame: |_, _, _| true, seat: |_, _, _| true, implement: |_, _, _| true };

    /// Whether two options of a step may stand for each other.
    pub fn options(&self, catalogue: &Catalogue, step: Step, a: usize, b: usize) -> bool {
        match (step.item(a), step.item(b)) {
            (Some(ItemRef::Machine(a)), Some(ItemRef::Machine(b))) => {
                (self.machine)(catalogue, catalogue.machine(a), catalogue.machine(b))
            }
            (Some(ItemRef::Frame(a)), Some(ItemRef::Frame(b))) => {
                (self.frame)(catalogue, catalogue.frame(a), catalogue.frame(b))
            }
            (Some(ItemRef::Seat(a)), Some(ItemRef::Seat(b))) => {
                (self.seat)(catalogue, catalogue.seat(a), catalogue.seat(b))
            }
            (Some(ItemRef::Implement(a)), Some(ItemRef::Implement(b))) => {
                (self.implement)(catalogue, catalogue.implement(a), catalogue.implement(b))
            }
            _ => false,
        }
    }
}
