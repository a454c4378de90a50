//! What every rule looks at: the build on the desk, placed, with its ports as measured.

use std::collections::BTreeMap;

use super::desk::Desk;
use super::lay::Lay;
use super::measured::as_measured;
use crate::build::{Build, Change, Placement, Stack, place};
use crate::item::{Catalogue, Frame, FrameId, Implement, ImplementId, ItemRef, Machine, MachineId, Port, Seat, SeatId};

/// A build under judgement.
pub(super) struct Context<'a> {
    pub desk: &'a Desk,
    pub build: &'a Build,
    pub stack: Stack,
    /// Ports that differ from the catalogue's by what was measured or looked for.
    measured: BTreeMap<(ItemRef, usize), Port>,
}

impl<'a> Context<'a> {
    pub fn new(desk: &'a Desk, build: &'a Build) -> Self {
        let mut measured = BTreeMap::new();
        if !build.measured.is_empty() || !build.looked.is_empty() {
            for item in build.items() {
                for (index, port) in desk.catalogue().body(item).ports.iter().enumerate() {
                    if let Some(port) = as_measured(build, item, port) {
                        measured.insert((item, index), port);
                    }
                }
            }
        }
        Self { desk, build, stack: place(desk.catalogue(), build), measured }
    }

    pub const fn catalogue(&self) -> &'a Catalogue {
        self.desk.catalogue()
    }

    pub fn port(&self, item: ItemRef, index: usize) -> &Port {
        self.measured.get(&(item, index)).unwrap_or_else(|| &self.desk.catalogue().body(item).ports[index])
    }

    /// The catalogue's lay of two ports' patterns, unless one of them was measured anew.
    pub fn lay(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<&'a Lay> {
        let anew = self.measured.contains_key(&carrier) || self.measured.contains_key(&carried);
        if anew { None } else { self.desk.lay(carrier, carried) }
    }

    pub fn machine(&self) -> Option<(MachineId, &'a Machine)> {
        self.build.machine.map(|id| (id, self.catalogue().machine(id)))
    }

    pub fn frame(&self) -> Option<(FrameId, &'a Frame)> {
        self.build.carrying.frame().map(|id| (id, self.catalogue().frame(id)))
    }

    pub fn seat(&self) -> Option<(SeatId, &'a Seat)> {
        self.build.seating.seat().map(|id| (id, self.catalogue().seat(id)))
    }

    pub fn implement(&self) -> Option<(ImplementId, &'a Implement)> {
        self.build.implement.map(|id| (id, self.catalogue().implement(id)))
    }

    pub fn placement(&self, item: ItemRef) -> Option<Placement> {
        self.stack.placement(item)
    }

    /// Whether something, in the catalogue's words, is on the machine as the build leaves it.
    pub fn is_on(&self, what: &str) -> bool {
        let mut on = self.machine().is_some_and(|(_, machine)| machine.fitted.iter().any(|fitted| fitted == what));
        for change in &self.build.changes {
            match change {
                Change::TakeOff(taken) if taken == what => on = false,
                Change::PutOn(put) if put == what => on = true,
                _ => {}
            }
        }
        on
    }
}
