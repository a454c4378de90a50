//! Undo and redo over builds and what is written to them.

use std::rc::Rc;

use super::Memo;

/// How many steps back one can go. Each is a link of a few hundred bytes and the notes; a day's work stays below it.
const DEPTH: usize = 500;

/// A build, as a link carries it, with what is written to it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Point {
    /// The build.
    pub build: Rc<str>,
    /// What is written to it.
    pub memo: Rc<Memo>,
}

impl Point {
    /// A build to which nothing is written.
    pub fn bare(build: &str) -> Self {
        Self { build: build.into(), memo: Rc::default() }
    }
}

/// The build at hand with the ones before and after it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct History {
    past: Vec<Point>,
    present: Point,
    future: Vec<Point>,
}

impl Default for History {
    fn default() -> Self {
        Self::beginning_with(Point::bare(""))
    }
}

impl History {
    /// A history that begins with a build.
    pub const fn beginning_with(present: Point) -> Self {
        Self { past: Vec::new(), present, future: Vec::new() }
    }

    /// The build at hand.
    pub const fn present(&self) -> &Rc<str> {
        &self.present.build
    }

    /// What is written to it.
    pub const fn memo(&self) -> &Rc<Memo> {
        &self.present.memo
    }

    /// Goes on to another build, to which the same is written.
    pub fn go_on(&mut self, build: &str) {
        if *build != *self.present.build {
            self.go_to(Point { build: build.into(), memo: Rc::clone(&self.present.memo) });
        }
    }

    /// Goes on to another build or to other words; nothing happens if they are those at hand.
    pub fn go_to(&mut self, point: Point) {
        if point == self.present {
            return;
        }
        if self.past.len() == DEPTH {
            self.past.remove(0);
        }
        self.past.push(std::mem::replace(&mut self.present, point));
        self.future.clear();
    }

    /// Begins a job under this id without a step of its own: nobody did anything.
    pub fn begin_job(&mut self, id: String) {
        Rc::make_mut(&mut self.present.memo).id = id;
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
    use super::*;

    #[test]
    fn undo_and_redo_walk_the_same_way_back_and_forth() {
        let mut history = History::default();
        history.go_on("1");
        history.go_on("2");
        history.undo();
        assert_eq!(&**history.present(), "1");
        history.undo();
        assert_eq!(&**history.present(), "");
        assert!(!history.can_undo());
        history.undo();
        history.redo();
        history.redo();
        assert_eq!(&**history.present(), "2");
        assert!(!history.can_redo());
    }

    #[test]
    fn a_new_build_after_undo_ends_the_old_future() {
        let mut history = History::default();
        history.go_on("1");
        history.undo();
        history.go_on("3");
        assert!(!history.can_redo());
    }

    #[test]
    fn the_same_build_again_is_no_step() {
        let mut history = History::default();
        history.go_on("1");
        history.go_on("1");
        history.undo();
        assert!(!history.can_undo());
    }

    #[test]
    fn what_is_written_goes_back_and_forth_with_the_builds() {
        let mut history = History::default();
        history.go_on("1");
        history.begin_job("a".into());
        let memo = Memo { notes: "left pin worn".into(), ..(**history.memo()).clone() };
        history.go_to(Point { build: "1".into(), memo: memo.into() });
        history.go_on("2");
        history.undo();
        assert_eq!((&**history.present(), &*history.memo().notes), ("1", "left pin worn"));
        history.undo();
        assert_eq!((&**history.present(), &*history.memo().notes, &*history.memo().id), ("1", "", "a"));
        history.redo();
        assert_eq!(history.memo().notes, "left pin worn");
    }

    #[test]
    fn the_past_is_bounded() {
        let mut history = History::default();
        for machine in 0..2000 {
            history.go_on(&format!("{machine}"));
        }
        let mut steps = 0;
        while history.can_undo() {
            history.undo();
            steps += 1;
        }
        assert_eq!(steps, DEPTH);
    }
}
