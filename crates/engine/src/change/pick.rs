//! What can be picked in a step.

use fitup_core::build::{Build, Step, options};
use fitup_core::item::{Catalogue, ItemRef};

/// An option of a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Pick {
    /// The step.
    pub step: Step,
    /// Its option, as [`Step::item`] counts them.
    pub option: usize,
}

impl Pick {
    /// The item, unless it is the bare hitch.
    pub fn item(self) -> Option<ItemRef> {
        self.step.item(self.option)
    }

    /// Everything that can be picked in a step, in the catalogue's order.
    pub fn all(catalogue: &Catalogue, step: Step) -> Vec<Self> {
        (0..options(catalogue)[step as usize]).map(|option| Self { step, option }).collect()
    }

    /// What a build has picked in a step.
    pub fn of(build: &Build, step: Step) -> Option<Self> {
        step.chosen(build).map(|option| Self { step, option })
    }
}
