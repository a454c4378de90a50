//! The benchmarks, native and in wasm.

use crate::failure::{Failure, failure};
use crate::tools::{ensure_build, tooled};

/// Runs the benchmarks, built to be fast as the command line is; further arguments go to
/// `cargo bench`. With `--wasm`, times in wasm what has a budget there, built as the page is.
/// They measure and never fail a check.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    let mut bench = tooled("cargo");
    let (wasm, rest): (Vec<_>, Vec<_>) = arguments.iter().partition(|argument| *argument == "--wasm");
    if wasm.is_empty() {
        bench.args(["bench", "--package", "fitup-bench", "--profile", "native"]).args(rest);
    } else {
        ensure_build()?;
        bench.args(["test", "--package", "fitup-bench", "--release", "--target", "wasm32-unknown-unknown"]);
        bench.args(["--test", "wasm"]).args(rest).args(["--", "--nocapture"]);
        bench.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", "wasm-bindgen-test-runner");
        bench.env("WASM_BINDGEN_TEST_TIMEOUT", "900");
    }
    // The benchmarks print their own progress: it is left to the terminal.
    let status = bench.status().map_err(|error| failure("the benchmarks", error.to_string(), "install Rust"))?;
    if status.success() {
        Ok(())
    } else {
        Err(failure("the benchmarks", status.to_string(), "mend what is named above"))
    }
}
