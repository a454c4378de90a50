//! What every rule looks at: the build on the desk, placed, with its ports as measured.

pub(crate) mod anchors;
pub(crate) mod decided;
pub(crate) mod found;
pub(crate) mod read;
pub(crate) mod runs;
pub(crate) mod underside;
pub(crate) mod units;

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::rc::Rc;

use self::read::{Borne, Read, read};
use self::units::Units;
use crate::build::{Build, Change, Placement, Stack, place, unmountable};
use crate::fit::desk::Desk;
use crate::fit::desk::plate_pair::PlatePair;
use crate::item::{
    Catalogue, Frame, FrameId, Implement, ImplementId, ItemRef, Machine, MachineId, PartNumber, Port, SeatKind,
    ShapeRole,
};
use crate::quantity::Length;
use crate::space::RigidMotion;

/// A build under judgement.
pub struct Context<'a> {
    pub desk: &'a Desk,
    pub build: &'a Build,
    pub stack: Stack,
    /// Whether only verdicts are asked for: the figures of a finding that says no may then be bounds.
    pub verdict_alone: bool,
    /// The units, as far as something was measured or looked for.
    units: Rc<Units>,
    /// Ports whose holes are opened up, as they are after that, and by how much.
    opened: BTreeMap<(ItemRef, usize), (Port, Length)>,
    /// Part numbers read off the units, by port.
    read: BTreeMap<(ItemRef, usize), Read>,
}

/// The stack of a build: everything where it was found or is drawn to stand.
pub fn stack(desk: &Desk, build: &Build) -> Stack {
    Context::new(desk, build).stack
}

impl<'a> Context<'a> {
    pub fn new(desk: &'a Desk, build: &'a Build) -> Self {
        let desk = desk.standing(&build.side);
        let units = Rc::new(Units::of(desk, &build.side));
        let stack = place(desk.catalogue(), build, &units.at(desk));
        Self::placed(desk, build, &units, stack)
    }

    /// The build with its stack, if it has been placed already.
    pub(crate) fn placed(desk: &'a Desk, build: &'a Build, units: &Rc<Units>, stack: Stack) -> Self {
        let (opened, read) = (BTreeMap::new(), read(desk, build));
        let mut context = Self { desk, build, stack, verdict_alone: false, units: Rc::clone(units), opened, read };
        context.opened = decided::openings(desk.catalogue(), build)
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
        self.units.port(self.desk, (item, index))
    }

    /// Whether a port was measured or looked at on the unit, and differs from the catalogue's.
    pub fn is_measured(&self, port: (ItemRef, usize)) -> bool {
        self.units.is_found(port)
    }

    /// What was read off the piece that bears a port.
    pub(crate) fn read(&self, item: ItemRef, index: usize) -> Option<&Read> {
        self.read.get(&(item, index))
    }

    /// The parts that bear a port, if they are known.
    pub(crate) fn borne(&self, item: ItemRef, index: usize) -> Option<Borne<'_>> {
        Borne::of(self.desk, self.read(item, index), item, index)
    }

    /// Their numbers: as read, else as listed; none if they are not known.
    pub fn bearing(&self, item: ItemRef, index: usize) -> Vec<PartNumber> {
        self.borne(item, index).map(|borne| borne.numbers(self.desk)).unwrap_or_default()
    }

    /// By how much the holes of a port are decided to be opened up.
    pub fn opened_by(&self, item: ItemRef, index: usize) -> Option<Length> {
        self.opened.get(&(item, index)).map(|&(_, by)| by)
    }

    /// Whether the missing holes of a port are decided to be drilled.
    pub fn is_drilled(&self, item: ItemRef, port: &str) -> bool {
        self.build
            .side
            .changes
            .iter()
            .any(|change| matches!(change, Change::Drill { item: of, port: named } if *of == item && named == port))
    }

    /// The lay of two ports' patterns as they were found, their holes not yet opened up.
    pub(crate) fn plate_pair(
        &self,
        carrier: (ItemRef, usize),
        carried: (ItemRef, usize),
    ) -> Option<Cow<'a, PlatePair>> {
        self.units.plate_pair(self.desk, carrier, carried)
    }

    /// The motion from the axes of a joint's carried item into its carrier's.
    pub(crate) fn brought(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<RigidMotion> {
        self.units.brought(self.desk, carrier, carried)
    }

    pub fn machine(&self) -> Option<(MachineId, &'a Machine)> {
        self.build.choices.machine.map(|id| (id, self.catalogue().machine(id)))
    }

    pub fn frame(&self) -> Option<(FrameId, &'a Frame)> {
        self.build.choices.carrying.frame().map(|id| (id, self.catalogue().frame(id)))
    }

    pub fn implement(&self) -> Option<(ImplementId, &'a Implement)> {
        self.build.choices.implement.map(|id| (id, self.catalogue().implement(id)))
    }

    pub fn placement(&self, item: ItemRef) -> Option<Placement> {
        self.stack.placement(item)
    }

    /// Whether the build folds the roll-over bar.
    pub fn bar_is_folded(&self) -> bool {
        self.build.side.changes.contains(&Change::FoldRollOverBar)
    }

    /// Whether an item's shapes of a role are there while the machine is driven: the roll-over bar as the build leaves it, the
    /// seats not folded, an implement's own seat where it is the one that is chosen.
    pub fn shows(&self, item: ItemRef, role: ShapeRole, bare: bool) -> bool {
        let folded = !bare && self.bar_is_folded();
        match role {
            ShapeRole::Seat if matches!(item, ItemRef::Implement(_)) => self.own_seat_is_on(),
            ShapeRole::RollOverBar => !folded,
            ShapeRole::RollOverBarFolded => folded,
            ShapeRole::SeatFolded => false,
            _ => true,
        }
    }

    /// Whether an implement's own seat stays on it: nobody has chosen another yet.
    pub fn own_seat_is_on(&self) -> bool {
        let chosen = self.build.choices.seating.seat().map(|id| self.catalogue().seat(id).kind);
        chosen.is_none_or(|kind| kind == SeatKind::ImplementsOwn)
    }

    /// Everything that stands where it is known to, or the bare machine alone.
    pub fn stand(&self, bare: bool) -> impl Iterator<Item = (ItemRef, Placement)> {
        let machine = self.build.choices.machine.map(ItemRef::Machine);
        let shown = self.stack.placed.iter().filter(move |placed| !bare || Some(placed.item) == machine);
        shown.filter_map(|placed| placed.placement.map(|placement| (placed.item, placement)))
    }

    /// The items of the build that stand on a machine, though where is not stated: a port that places them does not say
    /// where it is, or there is no port to mount them by.
    pub fn without_place(&self) -> Vec<ItemRef> {
        if self.build.choices.machine.is_none() {
            return Vec::new();
        }
        let joined = self.stack.placed.iter().filter(|placed| placed.placement.is_none()).map(|placed| placed.item);
        joined.chain(unmountable(self.catalogue(), self.build, &self.stack.placed)).collect()
    }
}
