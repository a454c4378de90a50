//! What a picture is of.

use fitup_core::build::{ArmAngles, Build, Carrying, Change, SeatStands, Stack};
use fitup_core::item::{Catalogue, ItemRef, Machine, MachineId, SeatState};

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
    /// Whether the seats stand as they do while the machine is driven; else as they do while somebody works at the implement.
    pub is_driven: bool,
}

impl<'a> Subject<'a> {
    /// A build with the arm as in transport and the seats as they are worked from.
    pub const fn new(catalogue: &'a Catalogue, build: &'a Build, stack: &'a Stack) -> Self {
        Self { catalogue, build, stack, pose: None, is_driven: false }
    }

    /// The same with the seats as the machine is driven.
    #[must_use]
    pub const fn driven(self) -> Self {
        Self { is_driven: true, ..self }
    }

    pub(crate) fn machine(&self) -> Option<(MachineId, &'a Machine)> {
        self.build.choices.machine.map(|id| (id, self.catalogue.machine(id)))
    }

    /// Whether the roll-over bar is drawn folded.
    pub(crate) fn bar_is_folded(&self) -> bool {
        self.build.side.changes.contains(&Change::FoldRollOverBar)
    }

    /// How the seat of an item stands in the picture.
    pub(crate) fn seat_of(&self, item: ItemRef) -> SeatStands {
        let seats = self.stack.seats;
        match item {
            ItemRef::Machine(_) if !self.is_driven => seats.driver,
            ItemRef::Implement(_) if seats.own_is_off => SeatStands { state: SeatState::Off, ..SeatStands::default() },
            ItemRef::Seat(_) | ItemRef::Implement(_) if self.is_driven => seats.rear,
            _ => SeatStands::default(),
        }
    }

    /// The lower links come off or are tied up where a frame takes their place.
    pub(crate) fn links_are_off(&self) -> bool {
        matches!(self.build.choices.carrying, Carrying::Frame(_))
    }
}
