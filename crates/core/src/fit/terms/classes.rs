//! Options in classes whose members may stand for each other.

use crate::build::Step;
use crate::ordered::Set;

/// One option a step, in the order of [`Step::ALL`].
pub(crate) type Choice = [usize; 4];

/// The options of every step in classes.
#[derive(Debug)]
pub(crate) struct Classes {
    of: [Vec<usize>; 4],
    /// The first option of each class.
    first: [Vec<usize>; 4],
}

impl Classes {
    /// Puts options that are `alike` in one class; those of `apart` stay by themselves.
    pub fn new(options: [usize; 4], apart: &Set<(Step, usize)>, alike: impl Fn(Step, usize, usize) -> bool) -> Self {
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
