//! Mutation testing of the rooms that decide answers.

use crate::failure::{Failure, failure};
use crate::tools::{ensure_mutants, tooled};

/// The rooms of the core that decide answers.
const ROOMS: [&str; 4] = ["fit", "search", "dimension", "plane"];

/// Each pass runs the tests that go with it on what the passes before it did not notice: the core's own first, because
/// they are built in seconds, then the examples of its documentation, then those that compare findings and figures with
/// published values and second methods.
const PASSES: [&[&str]; 3] = [
    &["--test-package", "fitup-core", "--", "--lib"],
    &["--test-package", "fitup-core", "--iterate", "--", "--doc"],
    &["--test-package", "fitup-tests", "--iterate", "--", "--tests"],
];

/// Changes the code of [`ROOMS`] one place at a time and sees whether a test notices. All of it takes days; a part
/// spread evenly over the files is `--sharding round-robin --shard 0/40`. Further arguments go to cargo-mutants.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    ensure_mutants()?;
    let mut left = Ok(());
    for pass in PASSES {
        left = run(pass, arguments);
    }
    left.map_err(|status| {
        let mend = "write tests for what target/mutants/mutants.out/missed.txt lists";
        failure("cargo mutants", status, mend)
    })
}

fn run(pass: &[&str], arguments: &[String]) -> Result<(), String> {
    let mut mutants = tooled("cargo");
    mutants.args(["mutants", "--package", "fitup-core", "--output", "target/mutants", "--colors", "never"]);
    if !arguments.iter().any(|argument| argument == "--file") {
        for room in ROOMS {
            mutants.args(["--file", &format!("crates/core/src/{room}/**/*.rs")]);
        }
    }
    // Thousands of random catalogues would be tried on every mutant; hundreds notice what thousands do.
    mutants.env("FITUP_CATALOGUES", "300");
    // Its own progress is better than ours: it is left to the terminal.
    let status = mutants.args(arguments).args(pass).status().map_err(|error| error.to_string())?;
    if status.success() { Ok(()) } else { Err(status.to_string()) }
}
