//! Undo and redo over builds.

use std::rc::Rc;

use fitup_core::build::Build;

/// How many builds back one can go. Each is a few hundred bytes; a day's work stays below it.
const DEPTH: usize = 500;

/// The build at hand with the ones before and after it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct History {
    past: Vec<Rc<Build>>,
    present: Rc<Build>,
    future: Vec<Rc<Build>>,
}

impl History {
    /// A history that begins with a build.
    pub fn beginning_with(build: Build) -> Self {
        Self { present: Rc::new(build), ..Self::default() }
    }

    /// The build at hand.
    pub const fn present(&self) -> &Rc<Build> {
        &self.present
    }

    /// Goes on to a build; nothing happens if it is the one at hand.
    pub fn go_on(&mut self, build: Build) {
        if build == *self.present {
            return;
        }
        if self.past.len() == DEPTH {
            self.past.remove(0);
        }
        self.past.push(std::mem::replace(&mut self.present, Rc::new(build)));
        self.future.clear();
    }

    /// Whether there is something to undo.
    pub const fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is something to redo.
    pub const fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// One back.
    pub fn undo(&mut self) {
        if let Some(before) = self.past.pop() {
            self.future.push(std::mem::replace(&mut self.present, before));
        }
    }

    /// One forward again.
    pub fn redo(&mut self) {
        if let Some(after) = self.future.pop() {
            self.past.push(std::mem::replace(&mut self.present, after));
        }
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::item::MachineId;

    use super::*;

    fn with(machine: u32) -> Build {
        Build { machine: Some(MachineId(machine)), ..Build::default() }
    }

    #[test]
    fn undo_and_redo_walk_the_same_way_back_and_forth() {
        let mut history = History::default();
        history.go_on(with(1));
        history.go_on(with(2));
        history.undo();
        assert_eq!(**history.present(), with(1));
        history.undo();
        assert_eq!(**history.present(), Build::default());
        assert!(!history.can_undo());
        history.undo();
        history.redo();
        history.redo();
        assert_eq!(**history.present(), with(2));
        assert!(!history.can_redo());
    }

    #[test]
    fn a_new_build_after_undo_ends_the_old_future() {
        let mut history = History::default();
        history.go_on(with(1));
        history.undo();
        history.go_on(with(3));
        assert!(!history.can_redo());
    }

    #[test]
    fn the_same_build_again_is_no_step() {
        let mut history = History::default();
        history.go_on(with(1));
        history.go_on(with(1));
        history.undo();
        assert!(!history.can_undo());
    }

    #[test]
    fn the_past_is_bounded() {
        let mut history = History::default();
        for machine in 0..2000 {
            history.go_on(with(machine));
        }
        let mut steps = 0;
        while history.can_undo() {
            history.undo();
            steps += 1;
        }
        assert_eq!(steps, DEPTH);
    }
}
