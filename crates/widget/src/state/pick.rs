//! The four steps and what can be picked in each.

use fitup_core::build::{Build, Carrying, Seating};
use fitup_core::item::{Catalogue, FrameId, ImplementId, ItemRef, MachineId, SeatId};

/// One of the four steps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// The machine.
    Machine,
    /// The mounting frame, or none.
    Frame,
    /// The seat arrangement.
    Seat,
    /// The implement.
    Implement,
}

impl Step {
    /// Every step, in the order of the item list.
    pub const ALL: [Self; 4] = [Self::Machine, Self::Frame, Self::Seat, Self::Implement];

    /// Its number in the item list and on the drawing's balloons.
    pub const fn number(self) -> usize {
        match self {
            Self::Machine => 1,
            Self::Frame => 2,
            Self::Seat => 3,
            Self::Implement => 4,
        }
    }

    /// Its name in addresses and message keys.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Machine => "machine",
            Self::Frame => "frame",
            Self::Seat => "seat",
            Self::Implement => "implement",
        }
    }

    /// The step of a name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|step| step.name() == name)
    }
}

/// What can be picked in a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pick {
    /// This machine.
    Machine(MachineId),
    /// No frame: the machine's own three-point hitch.
    Hitch,
    /// This frame.
    Frame(FrameId),
    /// This seat arrangement.
    Seat(SeatId),
    /// This implement.
    Implement(ImplementId),
}

impl Pick {
    /// The step it answers.
    pub const fn step(self) -> Step {
        match self {
            Self::Machine(_) => Step::Machine,
            Self::Hitch | Self::Frame(_) => Step::Frame,
            Self::Seat(_) => Step::Seat,
            Self::Implement(_) => Step::Implement,
        }
    }

    /// The item, unless it is the bare hitch.
    pub const fn item(self) -> Option<ItemRef> {
        match self {
            Self::Machine(id) => Some(ItemRef::Machine(id)),
            Self::Hitch => None,
            Self::Frame(id) => Some(ItemRef::Frame(id)),
            Self::Seat(id) => Some(ItemRef::Seat(id)),
            Self::Implement(id) => Some(ItemRef::Implement(id)),
        }
    }

    /// Everything that can be picked in a step, in the catalogue's order.
    pub fn all(catalogue: &Catalogue, step: Step) -> Vec<Self> {
        let count = |rows: usize| 0..rows;
        match step {
            Step::Machine => count(catalogue.machines.len()).map(|i| Self::Machine(MachineId::at(i))).collect(),
            Step::Frame => std::iter::once(Self::Hitch)
                .chain(count(catalogue.frames.len()).map(|i| Self::Frame(FrameId::at(i))))
                .collect(),
            Step::Seat => count(catalogue.seats.len()).map(|i| Self::Seat(SeatId::at(i))).collect(),
            Step::Implement => count(catalogue.implements.len()).map(|i| Self::Implement(ImplementId::at(i))).collect(),
        }
    }

    /// What a build has picked in a step.
    pub fn of(build: &Build, step: Step) -> Option<Self> {
        match step {
            Step::Machine => build.machine.map(Self::Machine),
            Step::Frame => match build.carrying {
                Carrying::Open => None,
                Carrying::Hitch => Some(Self::Hitch),
                Carrying::Frame(id) => Some(Self::Frame(id)),
            },
            Step::Seat => build.seating.seat().map(Self::Seat),
            Step::Implement => build.implement.map(Self::Implement),
        }
    }

    /// Puts the pick into a build, in place of what the step had.
    pub fn put(self, build: &mut Build) {
        match self {
            Self::Machine(id) => build.machine = Some(id),
            Self::Hitch => build.carrying = Carrying::Hitch,
            Self::Frame(id) => build.carrying = Carrying::Frame(id),
            Self::Seat(id) => build.seating = Seating::This(id),
            Self::Implement(id) => build.implement = Some(id),
        }
    }

    /// Takes a step's pick out of a build.
    pub fn clear(build: &mut Build, step: Step) {
        match step {
            Step::Machine => build.machine = None,
            Step::Frame => build.carrying = Carrying::Open,
            Step::Seat => build.seating = Seating::Open,
            Step::Implement => build.implement = None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pick_is_found_where_it_was_put_and_gone_when_cleared() {
        for pick in [
            Pick::Machine(MachineId(2)),
            Pick::Hitch,
            Pick::Frame(FrameId(1)),
            Pick::Seat(SeatId(0)),
            Pick::Implement(ImplementId(5)),
        ] {
            let mut build = Build::default();
            pick.put(&mut build);
            assert_eq!(Pick::of(&build, pick.step()), Some(pick));
            Pick::clear(&mut build, pick.step());
            assert_eq!(build, Build::default());
        }
    }

    #[test]
    fn steps_are_found_by_the_name_they_give() {
        for step in Step::ALL {
            assert_eq!(Step::named(step.name()), Some(step));
        }
        assert_eq!(Step::named("wheels"), None);
    }
}
