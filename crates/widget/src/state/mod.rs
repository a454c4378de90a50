//! Everything the widget remembers, as plain data with one pure reducer. No web types here, so
//! that all of it is tested natively.

mod action;
mod address;
mod bench;
mod history;
mod job;
mod preferences;
mod session;
mod trouble;

pub use action::Action;
pub use address::{Address, Key};
pub use bench::{Bench, Refused};
pub use history::{History, Point};
pub use job::{FileTrouble, Job, Kept, Memo};
pub use preferences::Preferences;
pub use session::{Session, Supply};
pub use trouble::{EngineTrouble, Notice, Trouble};
