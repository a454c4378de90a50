//! Options in classes whose members may stand for each other.

use std::collections::BTreeSet;
use std::ops::{Index, IndexMut};

use crate::build::Step;

/// One option a step, in the order of [`Step::ALL`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Choice(pub [usize; 4]);

impl Index<usize> for Choice {
    type Output = usize;

    fn index(&self, step: usize) -> &usize {
        &self.0[step]
    }
}

impl IndexMut<usize> for Choice {
    fn index_mut(&mut self, step: usize) -> &mut usize {
        &mut self.0[step]
    }
}

/// One block of options a step: options with the same ports in the same order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Blocks(pub [usize; 4]);

impl Index<usize> for Blocks {
    type Output = usize;

    fn index(&self, step: usize) -> &usize {
        &self.0[step]
    }
}

/// One class of options a step, as a table counts them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Combination(pub [usize; 4]);

impl Index<usize> for Combination {
    type Output = usize;

    fn index(&self, step: usize) -> &usize {
        &self.0[step]
    }
}

/// The options of every step in classes.
#[derive(Debug)]
pub(crate) struct Classes {
    of: [Vec<usize>; 4],
    /// The first option of each class.
    first: [Vec<usize>; 4],
}

impl Classes {
    /// Puts options that are `alike` in one class; those of `apart` stay by themselves.
    pub fn new(
        options: [usize; 4],
        apart: &BTreeSet<(Step, usize)>,
        alike: impl Fn(Step, usize, usize) -> bool,
    ) -> Self {
        let mut classes = Self { of: Default::default(), first: Default::default() };
        for step in Step::ALL {
            let at = step as usize;
            // Classes that others may join.
            let mut open: Vec<usize> = Vec::new();
            for option in 0..options[at] {
                let own = apart.contains(&(step, option));
                let first = &mut classes.first[at];
                let known = open.iter().copied().find(|&class| !own && alike(step, first[class], option));
                let class = known.unwrap_or_else(|| {
                    first.push(option);
                    if !own {
                        open.push(first.len() - 1);
                    }
                    first.len() - 1
                });
                classes.of[at].push(class);
            }
        }
        classes
    }

    /// The class of an option.
    pub fn of(&self, step: usize, option: usize) -> usize {
        self.of[step][option]
    }

    /// Number of classes of each step.
    pub fn counts(&self) -> [usize; 4] {
        [0, 1, 2, 3].map(|step| self.first[step].len())
    }

    /// An option of a class.
    pub fn first(&self, step: usize, class: usize) -> usize {
        self.first[step][class]
    }

    /// The options of each class.
    pub fn members(&self, step: usize) -> Vec<Vec<usize>> {
        let mut members = vec![Vec::new(); self.first[step].len()];
        for (option, &class) in self.of[step].iter().enumerate() {
            members[class].push(option);
        }
        members
    }
}
