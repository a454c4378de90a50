//! Mutation testing of the modules that decide answers.

use std::fs;

use crate::failure::{Failure, failure};
use crate::tools::{ensure_mutants, tooled};

/// The modules of the core that decide answers.
const MODULES: [&str; 4] = ["fit", "search", "dimension", "plane"];

/// Where cargo-mutants leaves what came of each mutant.
const OUT: &str = "target/mutants/mutants.out";

/// Each pass runs the tests that go with it on what the passes before it did not notice: the core's own first, then the
/// files that ask for findings, both of which are built and run in seconds, then the examples of its documentation, and
/// last everything that compares it with published values and second methods.
const PASSES: [&str; 4] = [
    "--test-package fitup-core -- --lib",
    "--test-package fitup-tests --baseline skip --timeout 120 -- --test limits --test findings --test decided \
     --test search --test lineage --test footprint --test whole --test published_mating --test examples",
    "--test-package fitup-core --baseline skip --timeout 120 -- --doc",
    "--test-package fitup-tests --baseline skip --timeout 900 -- --tests",
];

/// Changes the code of [`MODULES`] one place at a time, sees whether a test notices, and prints the share of those that
/// one did. All of it takes days; a part spread evenly over the files is `--sharding round-robin --shard 0/40`.
/// Arguments go to the first pass of cargo-mutants, which chooses the mutants.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    ensure_mutants()?;
    let mut chosen = arguments.to_vec();
    if !arguments.iter().any(|argument| argument == "--file") {
        for module in MODULES {
            chosen.extend(["--file".to_owned(), format!("crates/core/src/{module}/**/*.rs")]);
        }
    }
    let [first, others @ ..] = PASSES;
    run(first, &chosen)?;
    let mut missed = listed("missed");
    let tried = missed.len() + listed("caught").len() + listed("timeout").len();
    for pass in others {
        if missed.is_empty() {
            break;
        }
        let chosen: Vec<String> = missed.iter().flat_map(|name| named(name)).collect();
        run(pass, &chosen)?;
        // cargo-mutants takes in some that no name asked for.
        let again = listed("missed");
        missed.retain(|name| again.contains(name));
    }
    println!("{} of {tried} mutants noticed", tried - missed.len());
    for name in &missed {
        println!("missed: {name}");
    }
    if missed.is_empty() {
        return Ok(());
    }
    Err(failure("cargo mutants", format!("{} mutants missed", missed.len()), "write tests for what they change"))
}

/// Runs one pass; that mutants are missed (status 2) or run out of time (3) is no failure of it.
fn run(pass: &str, chosen: &[String]) -> Result<(), Failure> {
    let mut mutants = tooled("cargo");
    mutants.args(["mutants", "--package", "fitup-core", "--output", "target/mutants", "--colors", "never"]);
    // Thousands of random catalogues would be tried on every mutant; hundreds notice what thousands do.
    mutants.env("FITUP_CATALOGUES", "300");
    // Its own progress is better than ours: it is left to the terminal.
    let status = mutants.args(chosen).args(pass.split_whitespace()).status();
    if matches!(&status, Ok(status) if matches!(status.code(), Some(0 | 2 | 3))) {
        return Ok(());
    }
    let cause = status.map_or_else(|error| error.to_string(), |status| status.to_string());
    Err(failure("cargo mutants", cause, "mend the tests of the unchanged code first, as it says above"))
}

fn listed(outcome: &str) -> Vec<String> {
    let text = fs::read_to_string(format!("{OUT}/{outcome}.txt")).unwrap_or_default();
    text.lines().map(str::to_owned).collect()
}

/// The arguments that choose one mutant, by its name, which begins with its file.
fn named(name: &str) -> [String; 4] {
    let file = name.split(':').next().unwrap_or_default();
    ["--file".to_owned(), file.to_owned(), "--re".to_owned(), exactly(name)]
}

/// A pattern that matches the name of one mutant and no other.
fn exactly(name: &str) -> String {
    let mut pattern = String::from("^");
    for letter in name.chars() {
        if r"\.+*?()|[]{}^$".contains(letter) {
            pattern.push('\\');
        }
        pattern.push(letter);
    }
    pattern.push('$');
    pattern
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_matched_as_it_stands() {
        assert_eq!(exactly("a.rs:1:2: replace + with * in f -> T"), r"^a\.rs:1:2: replace \+ with \* in f -> T$");
    }
}
