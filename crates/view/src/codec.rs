//! The bytes in which page and engine speak.

use serde::Serialize;
use serde::de::DeserializeOwned;

/// What page and engine have to have in common: made of the sources of this crate by its build script, so that a page and an
/// engine of two versions know it before they misread each other.
pub const VERSION: &str = env!("FITUP_VIEW_VERSION");

/// A value as bytes.
pub fn write(value: &impl Serialize) -> Vec<u8> {
    // Nothing here is of a kind that the format cannot write, and memory grows or the program ends.
    postcard::to_allocvec(value).unwrap_or_default()
}

/// The value of bytes; `None` if they are not of that kind.
pub fn read<T: DeserializeOwned>(bytes: &[u8]) -> Option<T> {
    postcard::from_bytes(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Ask, Edit, Entry, Look, Part, Place, Reply, Slide, Step, Tool, Units};

    #[test]
    fn what_is_written_is_read_again() {
        let ask = Ask {
            number: 7,
            build: "1.abc".into(),
            edits: vec![
                Edit::Choose(Step::Frame, None),
                Edit::Enter {
                    at: Place { item: "arm".into(), port: "hooks".into(), what: "spread".into() },
                    found: Entry::Length {
                        readings: vec!["1 1/8".into(), "1 5/32".into()],
                        unit: Units::Us,
                        plus_minus: String::new(),
                        tool: Tool::Tape,
                        note: "worn".into(),
                    },
                    sure: false,
                },
            ],
            tried: Some(Edit::Slide(Slide::Ramps, 1_830.5)),
            look: Look { places: vec![(Slide::RampPlace, -0.25)], ..Look::default() },
            ..Ask::default()
        };
        assert_eq!(read::<Ask>(&write(&ask)), Some(ask));
        let reply = Reply { number: 7, part: Part::Change("{}".into()) };
        assert_eq!(read::<Reply>(&write(&reply)), Some(reply));
    }

    #[test]
    fn what_is_cut_off_or_of_another_kind_is_not_read() {
        let bytes = write(&Ask { build: "1.abc".into(), ..Ask::default() });
        assert_eq!(read::<Ask>(&bytes[..bytes.len() - 1]), None);
        assert_eq!(read::<Reply>(&[0xff; 12]), None);
    }
}
