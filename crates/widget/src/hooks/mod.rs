//! What the widget shares with the page: the engine, the catalogue's file, the address, the texts, the clock, the storage.

mod use_address;
mod use_catalogue;
mod use_engine;
mod use_focus;
mod use_here;
mod use_idle;
mod use_jobs;
mod use_later;
mod use_outside;
mod use_preferences;
mod use_printing;
mod use_room;
mod use_scheme;
mod use_texts;
mod use_update;

pub use use_address::use_address;
pub use use_catalogue::use_catalogue;
pub use use_engine::{tell_trouble, use_engine};
pub use use_focus::use_focus;
pub use use_here::use_here;
pub use use_idle::use_idle;
pub use use_jobs::{forget, use_jobs};
pub use use_later::use_later;
pub use use_outside::use_outside;
pub use use_preferences::{recall, use_preferences};
pub use use_printing::{print_alone, use_printing};
pub use use_room::use_room;
pub use use_scheme::use_scheme;
pub use use_texts::use_texts;
pub use use_update::use_update;
