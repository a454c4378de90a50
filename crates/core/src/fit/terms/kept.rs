//! The terms of the side that was searched last.

use std::sync::Mutex;

use super::{Terms, side_of};
use crate::build::Build;
use crate::fit::desk::Desk;

/// Terms kept from one search to the next: the four choices change more often than the side. What
/// is kept changes no answer, only how soon it comes; copies of a desk start with nothing.
#[derive(Debug, Default)]
pub(in crate::fit) struct Kept(Mutex<Option<Terms>>);

impl Clone for Kept {
    fn clone(&self) -> Self {
        Self::default()
    }
}

impl Desk {
    /// Searches with the terms of a build's side; `None` if some step has no option.
    pub(crate) fn with_terms<T>(&self, build: &Build, search: impl FnOnce(&mut Terms) -> T) -> Option<T> {
        let side = side_of(build);
        // A search that did not end may have left its terms half made: they are made anew.
        let mut kept = self.kept().0.lock().unwrap_or_else(|broken| {
            let mut kept = broken.into_inner();
            *kept = None;
            kept
        });
        if kept.as_ref().is_none_or(|terms| *terms.side() != side) {
            *kept = Terms::new(self, side);
        }
        kept.as_mut().map(search)
    }
}
