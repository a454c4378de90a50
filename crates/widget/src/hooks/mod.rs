//! What the widget shares with the page: the catalogue's file, the address, the words, the clock.

mod use_address;
mod use_catalogue;
mod use_events;
mod use_later;
mod use_room;
mod use_trial;
mod use_words;

pub use use_address::use_address;
pub use use_catalogue::use_catalogue;
pub use use_events::{tell_trouble, use_events};
pub use use_later::use_later;
pub use use_room::use_room;
pub use use_trial::use_trial;
pub use use_words::use_words;
