//! The `<fit-up>` element.
fn main() {}
