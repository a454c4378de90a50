//! What the `fitup` command does, apart from reading its arguments.

pub mod check;
pub mod figure;
pub mod problem_text;
