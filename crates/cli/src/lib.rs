//! What the `fitup` command does, apart from reading its arguments.

pub mod catalogue;
pub mod check;
pub mod coverage;
pub mod diff;
pub mod figure;
pub mod form;
pub mod identify;
pub mod judge;
pub mod lists;
pub mod matrix;
pub mod preview;
pub mod sets;
