//! Everything the widget remembers, as plain data with one pure reducer. No web types here, so
//! that all of it is tested natively.
#![allow(dead_code, reason = "the whole vocabulary of edits stands here; views take it up one by one")]

mod action;
mod address;
mod edit;
pub mod entry;
mod history;
mod options;
mod pick;
mod prefs;
mod rows;
mod session;
mod trouble;

pub use action::Action;
pub use address::{Address, Key};
pub use edit::Edit;
pub use history::History;
pub use options::{Sort, options};
pub use pick::Pick;
pub use prefs::{DrawingView, Mode, Theme, View};
pub use rows::{Row, rows};
pub use session::{Session, Supply};
pub use trouble::{Notice, Trouble};
