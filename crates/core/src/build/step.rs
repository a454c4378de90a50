//! The four steps of a build and the options of each.

use super::{Build, Carrying, Seating};
use crate::item::{Catalogue, FrameId, ImplementId, ItemRef, MachineId, SeatId};

/// One of the four steps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// Machine.
    Machine,
    /// Frame or hitch.
    Frame,
    /// Seat arrangement.
    Seat,
    /// Implement.
    Implement,
}

impl Step {
    /// The four steps in their usual order.
    pub const ALL: [Self; 4] = [Self::Machine, Self::Frame, Self::Seat, Self::Implement];

    /// Its name, kebab-case, as addresses and messages have it.
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

    /// The item of an option of this step; `None` for the bare hitch, which is option 0 before
    /// the frames.
    pub fn item(self, option: usize) -> Option<ItemRef> {
        match self {
            Self::Machine => Some(ItemRef::Machine(MachineId::at(option))),
            Self::Frame => option.checked_sub(1).map(|frame| ItemRef::Frame(FrameId::at(frame))),
            Self::Seat => Some(ItemRef::Seat(SeatId::at(option))),
            Self::Implement => Some(ItemRef::Implement(ImplementId::at(option))),
        }
    }

    /// The step that an item answers and its option there; `None` for an adapter or equipment.
    pub fn of(item: ItemRef) -> Option<(Self, usize)> {
        match item {
            ItemRef::Machine(id) => Some((Self::Machine, id.index())),
            ItemRef::Frame(id) => Some((Self::Frame, id.index() + 1)),
            ItemRef::Seat(id) => Some((Self::Seat, id.index())),
            ItemRef::Implement(id) => Some((Self::Implement, id.index())),
            ItemRef::Adapter(_) | ItemRef::Equipment(_) => None,
        }
    }

    /// Answers this step of a build with an option.
    pub fn choose(self, build: &mut Build, option: usize) {
        match self {
            Self::Machine => build.choices.machine = Some(MachineId::at(option)),
            Self::Frame => {
                build.choices.carrying = match option.checked_sub(1) {
                    None => Carrying::Hitch,
                    Some(frame) => Carrying::Frame(FrameId::at(frame)),
                }
            }
            Self::Seat => build.choices.seating = Seating::This(SeatId::at(option)),
            Self::Implement => build.choices.implement = Some(ImplementId::at(option)),
        }
    }

    /// Leaves this step of a build open.
    pub fn clear(self, build: &mut Build) {
        match self {
            Self::Machine => build.choices.machine = None,
            Self::Frame => build.choices.carrying = Carrying::Open,
            Self::Seat => build.choices.seating = Seating::Open,
            Self::Implement => build.choices.implement = None,
        }
    }

    /// The option that a build has chosen at this step; `None` while it is open.
    pub fn chosen(self, build: &Build) -> Option<usize> {
        match self {
            Self::Machine => build.choices.machine.map(MachineId::index),
            Self::Frame => match build.choices.carrying {
                Carrying::Open => None,
                Carrying::Hitch => Some(0),
                Carrying::Frame(id) => Some(id.index() + 1),
            },
            Self::Seat => build.choices.seating.seat().map(SeatId::index),
            Self::Implement => build.choices.implement.map(ImplementId::index),
        }
    }
}

/// How many options each step has, in the order of [`Step::ALL`]; the bare hitch is one.
pub fn options(catalogue: &Catalogue) -> [usize; 4] {
    [catalogue.machines.len(), catalogue.frames.len() + 1, catalogue.seats.len(), catalogue.implements.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_option_is_found_where_it_was_chosen_and_gone_when_cleared() {
        for step in Step::ALL {
            for option in [0, 1, 5] {
                let mut build = Build::default();
                step.choose(&mut build, option);
                assert_eq!(step.chosen(&build), Some(option));
                if let Some(item) = step.item(option) {
                    assert_eq!((Step::of(item), build.items()), (Some((step, option)), vec![item]));
                }
                step.clear(&mut build);
                assert_eq!(build, Build::default());
            }
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
