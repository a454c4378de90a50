//! The builds that are pinned beside the one at hand.

use super::Session;

/// Builds beside the one at hand at most: more do not fit beside each other.
const MOST_PINNED: usize = 3;

impl Session {
    /// Whether the build at hand can be pinned.
    pub fn can_pin(&self) -> bool {
        self.can_pin_link(self.history.present())
    }

    /// Whether a build can be pinned: something is chosen, it is not pinned yet, and there is room for one more.
    pub fn can_pin_link(&self, link: &str) -> bool {
        let pinned = &self.look.pinned;
        !link.is_empty() && pinned.len() < MOST_PINNED && pinned.iter().all(|known| known != link)
    }

    pub(super) fn pin(&mut self, link: String) {
        if self.can_pin_link(&link) {
            self.look.pinned.push(link);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_build_is_pinned_once_and_no_more_than_find_room() {
        let mut session = Session::default();
        for link in ["", "a", "a", "b", "c", "d"] {
            session.pin(link.to_owned());
        }
        assert_eq!(session.look.pinned, ["a", "b", "c"]);
        assert!(!session.can_pin(), "nothing is chosen");
    }
}
