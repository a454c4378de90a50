//! Everything the widget remembers, as plain data with one pure reducer. No web types here, so
//! that all of it is tested natively.

mod action;
mod address;
mod edit;
mod history;
mod options;
mod pick;
mod prefs;
mod reach;
mod session;
mod trouble;

pub use action::Action;
pub use address::{Address, Key};
pub use edit::Edit;
pub use history::History;
pub use options::{Sort, options};
pub use pick::{Pick, Step};
pub use prefs::{DrawingView, Mode, Prefs, Theme, View};
pub use reach::{Reach, Reached};
pub use session::Session;
pub use trouble::{Notice, Trouble};
