//! The core's values against those from outside the project, and against second methods, as one table.

use std::collections::{BTreeMap, BTreeSet};

use crate::failure::{Failure, failure};
use crate::tools::tooled;

/// Tests whose files begin so print what they compare.
const PUBLISHED: &str = "published_*";
const SECOND: &str = "second_*";

/// Prints every published or worked value beside the core's, with its source as it stands beside the check; then what each
/// second method came to over how many inputs, with the test that compares.
pub fn command(_: &[String]) -> Result<(), Failure> {
    let published = told(PUBLISHED)?;
    let mut sources = Sources::default();
    let (mut ids, mut count) = (BTreeSet::new(), 0);
    println!("| value | expected | got | source |\n| --- | --- | --- | --- |");
    for told in &published {
        let Some(row) = Row::of(&told.line) else { continue };
        println!("| {} | {} | {} | {} |", row.id, row.expected, row.got, sources.beside(row.file, row.line)?);
        ids.insert(row.id);
        count += 1;
    }
    println!("\n{count} comparisons of {} published or worked values\n", ids.len());
    println!("| second method: what was compared | what it came to | the test |\n| --- | --- | --- |");
    for Told { test, line } in told(SECOND)? {
        let (what, came_to) = line.split_once(": ").unwrap_or((&line, ""));
        println!("| {what} | {came_to} | {} |", test.replace('_', " "));
    }
    Ok(())
}

/// One comparison as a test prints it.
#[derive(Debug, PartialEq)]
struct Row<'t> {
    id: &'t str,
    expected: &'t str,
    got: &'t str,
    file: &'t str,
    line: usize,
}

impl<'t> Row<'t> {
    fn of(printed: &'t str) -> Option<Self> {
        let mut cells = printed.strip_prefix("| ")?.strip_suffix(" |")?.split(" | ");
        let (id, expected, got) = (cells.next()?, cells.next()?, cells.next()?);
        let (file, line) = cells.next()?.rsplit_once(':')?;
        Some(Self { id, expected, got, file, line: line.parse().ok()? })
    }
}

/// The test files, as far as they were looked into.
#[derive(Default)]
struct Sources(BTreeMap<String, String>);

impl Sources {
    /// The words that stand over the test in which this line is.
    fn beside(&mut self, file: &str, line: usize) -> Result<String, Failure> {
        if !self.0.contains_key(file) {
            let text = std::fs::read_to_string(file).map_err(|error| {
                failure(format!("reading {file}"), error.to_string(), "run it from the project's folder")
            })?;
            self.0.insert(file.to_owned(), text);
        }
        Ok(over_test(self.0.get(file).map_or("", String::as_str), line))
    }
}

/// The documentation of the last test that begins at or above a line, counted from 1; the file's own where it has none.
fn over_test(text: &str, line: usize) -> String {
    let lines: Vec<&str> = text.lines().take(line).collect();
    let test = lines.iter().rposition(|line| line.trim() == "#[test]").unwrap_or(0);
    let words = |line: &str, mark: &str| line.trim().strip_prefix(mark).map(|words| words.trim().to_owned());
    let mut over: Vec<String> = lines[..test].iter().rev().map_while(|line| words(line, "///")).collect();
    over.reverse();
    if over.is_empty() {
        over = text.lines().map_while(|line| words(line, "//!")).collect();
    }
    over.join(" ").replace('|', "/")
}

/// A line that a test prints for people.
#[derive(Debug, PartialEq)]
struct Told {
    test: String,
    line: String,
}

/// The lines that tests print for people.
fn told(tests: &str) -> Result<Vec<Told>, Failure> {
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
fn lines(text: &str) -> Vec<Told> {
    let mut test = String::new();
    let mut all = Vec::new();
    for line in text.lines() {
        let mut line = line;
        if let Some((name, rest)) = line.strip_prefix("test ").and_then(|line| line.split_once(" ... ")) {
            name.clone_into(&mut test);
            line = rest;
        }
        let is_own = line.is_empty() || line == "ok" || line.starts_with("running ") || line.starts_with("test result");
        if !is_own {
            all.push(Told { test: test.clone(), line: line.to_owned() });
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_test_prints_is_told_from_what_its_runner_prints() {
        let text = "\nrunning 2 tests\ntest a ... | s01 | 1 | 1 |\n| s02 | 2 | 2 |\nok\ntest b ... ok\n\ntest result: ok. 2 passed\n";
        let told = |test: &str, line: &str| Told { test: test.to_owned(), line: line.to_owned() };
        assert_eq!(lines(text), [told("a", "| s01 | 1 | 1 |"), told("a", "| s02 | 2 | 2 |")]);
    }

    #[test]
    fn a_value_is_told_with_the_words_over_its_test() {
        let row = Row::of("| s01.a | 1 | 1.5 | tests/a.rs:12 |").unwrap();
        assert_eq!(row, Row { id: "s01.a", expected: "1", got: "1.5", file: "tests/a.rs", line: 12 });
        assert_eq!((Row::of("| a | b |"), Row::of("greatest disagreement 0")), (None, None));
        let text =
            "//! Values.\n\n/// A handbook,\n/// table 3.\n#[test]\nfn a() {\n    near(1);\n}\n\n#[test]\nfn b() {}\n";
        assert_eq!(over_test(text, 7), "A handbook, table 3.");
        assert_eq!(over_test(text, 11), "Values.");
    }
}
