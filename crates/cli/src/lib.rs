//! What the `fitup` command does, apart from reading its arguments.

pub mod catalogue;
pub mod check;
pub mod figure;
pub mod form;
pub mod judge;
pub mod matrix;
