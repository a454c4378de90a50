//! The `fitup` command.
fn main() {}
