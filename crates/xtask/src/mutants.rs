//! Mutation testing of the rooms that decide answers.

use crate::failure::{Failure, failure};
use crate::tools::{ensure_mutants, tooled};

/// Changes fit and dimension code one place at a time and sees whether a test notices. Takes
/// hours; further arguments go to cargo-mutants (`--shard 0/20`, `--file …`).
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    ensure_mutants()?;
    let mut mutants = tooled("cargo");
    mutants.args(["mutants", "--package", "fitup-core", "--test-workspace", "true", "--output", "target/mutants"]);
    if !arguments.iter().any(|argument| argument == "--file") {
        for room in ["fit", "dimension"] {
            mutants.args(["--file", &format!("crates/core/src/{room}/**/*.rs")]);
        }
    }
    mutants.args(arguments);
    // Its own progress is better than ours: it is left to the terminal.
    let status = mutants.status().map_err(|error| failure("cargo mutants", error.to_string(), "cargo xtask tools"))?;
    if status.success() {
        return Ok(());
    }
    Err(failure(
        "cargo mutants",
        status.to_string(),
        "write tests for what target/mutants/mutants.out/missed.txt lists",
    ))
}
