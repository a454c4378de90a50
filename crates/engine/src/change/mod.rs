//! What is done to a build: edits as the core knows them, and how those of a page are understood.

mod edit;
mod entry;
mod lower;
mod merge;
mod photo;
mod pick;
mod recognise;

pub use edit::Edit;
pub use entry::{measured, number, numbers};
pub use lower::{Refused, ballast_place, edited, step_of};
pub use merge::merge;
pub use photo::{CORNERS, holes as holes_to_mark, taken as taken_from_photo};
pub use pick::Pick;
