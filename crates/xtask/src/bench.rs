//! The native benchmarks.

use crate::failure::{Failure, failure};
use crate::tools::tooled;

/// Runs the benchmarks, built to be fast as the command line is; further arguments go to
/// `cargo bench`. They measure and never fail a check.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    let mut bench = tooled("cargo");
    bench.args(["bench", "--package", "fitup-bench", "--profile", "native"]).args(arguments);
    // The benchmarks print their own progress: it is left to the terminal.
    let status = bench.status().map_err(|error| failure("cargo bench", error.to_string(), "install Rust"))?;
    if status.success() { Ok(()) } else { Err(failure("cargo bench", status.to_string(), "mend what is named above")) }
}
