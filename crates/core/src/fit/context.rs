//! What every rule looks at: the build on the desk, placed, with its ports as measured.

use super::decided;
use super::desk::Desk;
use super::found::Found;
use super::lay::Lay;
use crate::build::{Build, Change, Placement, Stack, place};
use crate::item::{
    Catalogue, Frame, FrameId, Implement, ImplementId, ItemRef, Machine, MachineId, Port, Seat, SeatId, ShapeRole,
};
use crate::ordered::Map;
use crate::quantity::Length;

/// A build under judgement.
pub(super) struct Context<'a> {
    pub desk: &'a Desk,
    pub build: &'a Build,
    pub stack: Stack,
    /// Ports that differ from the catalogue's by what was measured or looked for.
    found: Map<(ItemRef, usize), Found>,
    /// Ports whose holes are opened up, as they are after that, and by how much.
    opened: Map<(ItemRef, usize), (Port, Length)>,
}

impl<'a> Context<'a> {
    pub fn new(desk: &'a Desk, build: &'a Build) -> Self {
        Self::placed(desk, build, place(desk.catalogue(), build))
    }

    /// The build with its stack, if it has been placed already.
    pub fn placed(desk: &'a Desk, build: &'a Build, stack: Stack) -> Self {
        let catalogue = desk.catalogue();
        let mut found = Map::new();
        if !build.measured.is_empty() || !build.looked.is_empty() {
            for item in build.items() {
                for (index, port) in catalogue.body(item).ports.iter().enumerate() {
                    if let Some(port) = Found::of(build, item, port) {
                        found.insert((item, index), port);
                    }
                }
            }
        }
        let mut context = Self { desk, build, stack, found, opened: Map::new() };
        context.opened = decided::openings(catalogue, build)
            .into_iter()
            .map(|((item, index), by)| ((item, index), (decided::opened(context.port_before(item, index), by), by)))
            .collect();
        context
    }

    pub const fn catalogue(&self) -> &'a Catalogue {
        self.desk.catalogue()
    }

    /// A port as it will be: measured, and its holes opened up where that is decided.
    pub fn port(&self, item: ItemRef, index: usize) -> &Port {
        self.opened.get(&(item, index)).map_or_else(|| self.port_before(item, index), |(port, _)| port)
    }

    /// A port as it is now: measured, its holes not yet opened up.
    pub fn port_before(&self, item: ItemRef, index: usize) -> &Port {
        self.found(item, index).map_or_else(|| &self.desk.catalogue().body(item).ports[index], |found| &found.port)
    }

    /// What was measured or looked for on a port, if anything.
    pub fn found(&self, item: ItemRef, index: usize) -> Option<&Found> {
        self.found.get(&(item, index))
    }

    /// By how much the holes of a port are decided to be opened up.
    pub fn opened_by(&self, item: ItemRef, index: usize) -> Option<Length> {
        self.opened.get(&(item, index)).map(|&(_, by)| by)
    }

    /// Whether the missing holes of a port are decided to be drilled.
    pub fn is_drilled(&self, item: ItemRef, port: &str) -> bool {
        self.build
            .changes
            .iter()
            .any(|change| matches!(change, Change::Drill { item: of, port: named } if *of == item && named == port))
    }

    /// The catalogue's lay of two ports' patterns, unless one of them was found otherwise.
    pub fn lay(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<&'a Lay> {
        let otherwise = self.found.contains_key(&carrier) || self.found.contains_key(&carried);
        if otherwise { None } else { self.desk.lay(carrier, carried) }
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

    /// Whether the build folds the roll-over bar.
    pub fn bar_is_folded(&self) -> bool {
        self.build.changes.contains(&Change::FoldRollOverBar)
    }

    /// The roll-over bar that is not there: the folded one, or the standing one where the build folds it.
    pub fn hidden_bar(&self, bare: bool) -> ShapeRole {
        if !bare && self.bar_is_folded() { ShapeRole::RollOverBar } else { ShapeRole::RollOverBarFolded }
    }

    /// Everything that stands where it is known to, or the bare machine alone.
    pub fn stand(&self, bare: bool) -> impl Iterator<Item = (ItemRef, Placement)> {
        let machine = self.build.machine.map(ItemRef::Machine);
        let shown = self.stack.placed.iter().filter(move |placed| !bare || Some(placed.item) == machine);
        shown.filter_map(|placed| placed.placement.map(|placement| (placed.item, placement)))
    }

    /// The items of the build that stand on a machine, though where is not stated: a port that places them does not say
    /// where it is, or there is no port to mount them by.
    pub fn without_place(&self) -> Vec<ItemRef> {
        let is_mounted = |item: ItemRef| self.catalogue().body(item).is_mounted();
        let joined = self.stack.placed.iter().filter(|placed| placed.placement.is_none()).map(|placed| placed.item);
        let loose = self
            .stack
            .loose
            .iter()
            .copied()
            .filter(|&item| matches!(item, ItemRef::Frame(_) | ItemRef::Implement(_)) && !is_mounted(item));
        if self.build.machine.is_some() { joined.chain(loose).collect() } else { Vec::new() }
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
