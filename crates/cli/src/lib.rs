//! What the `fitup` command does, apart from reading its arguments.

pub mod figure;
