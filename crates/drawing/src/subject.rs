//! What a picture is of.

use fitup_core::build::{ArmAngles, Build, Carrying, Change, Stack};
use fitup_core::item::{Catalogue, FrontSeatEffect, Machine, MachineId};

/// A build with its place of everything, in a pose.
#[derive(Debug, Clone, Copy)]
pub struct Subject<'a> {
    /// Where the items come from.
    pub catalogue: &'a Catalogue,
    /// What is chosen.
    pub build: &'a Build,
    /// Where everything stands.
    pub stack: &'a Stack,
    /// Pose of the digging arm; `None` = as in transport.
    pub pose: Option<ArmAngles>,
}

impl<'a> Subject<'a> {
    /// A build as it stands in transport.
    pub const fn new(catalogue: &'a Catalogue, build: &'a Build, stack: &'a Stack) -> Self {
        Self { catalogue, build, stack, pose: None }
    }

    pub(crate) fn machine(&self) -> Option<(MachineId, &'a Machine)> {
        self.build.machine.map(|id| (id, self.catalogue.machine(id)))
    }

    /// Whether the roll-over bar is drawn folded.
    pub(crate) fn bar_is_folded(&self) -> bool {
        self.build.changes.contains(&Change::FoldRollOverBar)
    }

    /// Whether the operator's own seat is drawn turned round.
    pub(crate) fn seat_is_turned(&self) -> bool {
        let seat = self.build.seating.seat().map(|id| self.catalogue.seat(id));
        seat.is_some_and(|seat| seat.front_seat == FrontSeatEffect::Turns)
    }

    /// The lower links come off or are tied up where a frame takes their place.
    pub(crate) fn links_are_off(&self) -> bool {
        matches!(self.build.carrying, Carrying::Frame(_))
    }
}
