//! When an engine counts as dead, and whether another is begun.

/// Milliseconds that an engine may take to begin, once its program is there. Ten times what the slowest machine tried takes.
pub const TO_BEGIN: u32 = 20_000;
/// Milliseconds without a sign of life while something is asked. The slowest single step, the first search of a large
/// catalogue, takes a second on a slow machine.
pub const TO_ANSWER: u32 = 8_000;
/// Milliseconds that reading a catalogue may take.
pub const TO_READ: u32 = 60_000;
/// Engines that may end one after the other without one having finished an answer.
const MOST: u8 = 3;

/// What is done when an engine has ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fate {
    /// Another is begun with the same build.
    Again,
    /// That is enough: the user is told and decides.
    Stop,
}

/// Counts the engines that have ended.
#[derive(Debug, Default)]
pub struct Watch {
    ended: u8,
}

impl Watch {
    /// An engine has ended or has been ended.
    pub fn ended(&mut self) -> Fate {
        self.ended += 1;
        if self.ended >= MOST { Fate::Stop } else { Fate::Again }
    }

    /// An answer is whole, down to its last part.
    pub fn finished(&mut self) {
        self.ended = 0;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn three_in_a_row_stop_and_a_whole_answer_between_them_starts_the_count_again() {
        let mut watch = Watch::default();
        assert_eq!((watch.ended(), watch.ended(), watch.ended()), (Fate::Again, Fate::Again, Fate::Stop));
        let mut watch = Watch::default();
        assert_eq!((watch.ended(), watch.ended()), (Fate::Again, Fate::Again));
        watch.finished();
        assert_eq!(watch.ended(), Fate::Again);
    }
}
