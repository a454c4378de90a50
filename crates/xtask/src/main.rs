//! Build, serve and test commands of the project.
fn main() {}
