//! The core's values against those from outside the project, and against second methods, as one table.

use std::collections::BTreeSet;

use crate::failure::{Failure, failure};
use crate::tools::tooled;

/// Tests whose files begin so print what they compare.
const PUBLISHED: &str = "published_*";
const SECOND: &str = "second_*";

/// Prints every published or worked value beside the core's, with the place of the check, where its source stands; then
/// what each second method came to over how many inputs.
pub fn command(_: &[String]) -> Result<(), Failure> {
    let published = told(PUBLISHED)?;
    let rows: Vec<&String> = published.iter().filter(|line| line.starts_with("| ")).collect();
    let ids: BTreeSet<&str> = rows.iter().filter_map(|row| row.split(" | ").next()).collect();
    println!("| value | expected | got | source beside |\n| --- | --- | --- | --- |");
    for row in &rows {
        println!("{row}");
    }
    println!("\n{} comparisons of {} published or worked values\n\n| second method |\n| --- |", rows.len(), ids.len());
    for line in told(SECOND)? {
        println!("| {line} |");
    }
    Ok(())
}

/// The lines that tests print for people.
fn told(tests: &str) -> Result<Vec<String>, Failure> {
    let mut cargo = tooled("cargo");
    cargo.args(["test", "--quiet", "--package", "fitup-tests", "--test", tests]);
    cargo.args(["--", "--nocapture", "--test-threads", "1", "--format", "pretty"]);
    let mend = "mend the test it names, then run cargo xtask proof again";
    let output = cargo.output().map_err(|error| failure("cargo test", error.to_string(), "install Rust"))?;
    let text = String::from_utf8_lossy(&output.stdout);
    if !output.status.success() {
        return Err(failure("cargo test", text.lines().rev().take(20).collect::<Vec<_>>().join("\n"), mend));
    }
    Ok(lines(&text))
}

/// What is left without the test runner's own words: a test's first line follows its name.
fn lines(text: &str) -> Vec<String> {
    let own = |line: &&str| {
        !(line.is_empty() || *line == "ok" || line.starts_with("running ") || line.starts_with("test result"))
    };
    let after = |line: &str| match line.split_once(" ... ") {
        Some((test, told)) if test.starts_with("test ") => told.to_owned(),
        _ => line.to_owned(),
    };
    text.lines().filter(own).map(after).filter(|line| line != "ok").collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_test_prints_is_told_from_what_its_runner_prints() {
        let text = "\nrunning 2 tests\ntest a ... | s01 | 1 | 1 |\n| s02 | 2 | 2 |\nok\ntest b ... ok\n\ntest result: ok. 2 passed\n";
        assert_eq!(lines(text), ["| s01 | 1 | 1 |", "| s02 | 2 | 2 |"]);
    }
}
