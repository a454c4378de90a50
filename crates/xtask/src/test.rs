//! Every check there is, in the order in which they are cheapest to fail.

use std::process::Command;
use std::time::{Duration, Instant};

use crate::build::{dist, release};
use crate::failure::{Failure, failure};
use crate::run::quietly;
use crate::tools::{axe_script, chromium, ensure_browser, ensure_build, tooled};
use crate::{flag_value, size, tidy};

/// A step: name, what it proves, and how.
type TestStep = (&'static str, &'static str, fn() -> Result<(), Failure>);

const STEPS: &[TestStep] = &[
    ("tools", "everything needed is installed", || ensure_build().and_then(|()| ensure_browser())),
    ("format", "the code is formatted", || cargo("format", &["fmt", "--all", "--check"], "run cargo fmt --all")),
    ("tidy", "the house's invariants hold", || tidy::command(&[])),
    ("clippy", "no lint fires", || {
        let lints = ["clippy", "--workspace", "--all-targets", "--all-features", "--", "-D", "warnings"];
        cargo("clippy", &lints, "mend what clippy names")
    }),
    ("unit", "unit, published-value and property tests pass", || {
        tests("unit tests", tooled("cargo").args(["test", "--workspace"]))
    }),
    ("docs", "every public item is documented", || docs(false)),
    ("wasm", "the core gives the same answers in wasm, bit for bit", wasm),
    ("site", "the release site builds", || release().map(drop)),
    ("size", "the start page has not grown unnoticed", || release().and_then(|_| size::check(false))),
    ("browser", "the widget works in a real browser", browser),
];

/// Runs the steps, or those that `--only` names. One that fails does not keep the rest from
/// running, unless it is the one that installs the tools.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    if arguments.iter().any(|argument| argument == "--list") {
        for (name, what, _) in STEPS {
            println!("{name:<8} {what}");
        }
        return Ok(());
    }
    let steps = chosen(flag_value(arguments, "--only")?.as_deref())?;
    let mut done: Vec<(&str, Duration, bool)> = Vec::new();
    for (name, what, step) in steps {
        eprintln!("{name}: {what}");
        let started = Instant::now();
        let outcome = step();
        done.push((name, started.elapsed(), outcome.is_ok()));
        if let Err(failed) = outcome {
            eprintln!("{failed}");
            if *name == "tools" {
                break;
            }
        }
    }
    for (name, took, passed) in &done {
        println!("{} {name:<8} {:>6.1} s", if *passed { "✓" } else { "✗" }, took.as_secs_f64());
    }
    let failed: Vec<&str> = done.iter().filter(|(_, _, passed)| !passed).map(|(name, _, _)| *name).collect();
    if failed.is_empty() {
        return Ok(());
    }
    let names = failed.join(",");
    Err(failure(
        "cargo xtask test",
        format!("these steps failed: {names}"),
        format!("mend what each says above, then run cargo xtask test --only {names}"),
    ))
}

fn chosen(only: Option<&str>) -> Result<Vec<&'static TestStep>, Failure> {
    let Some(only) = only else { return Ok(STEPS.iter().collect()) };
    let names: Vec<&str> = only.split(',').map(str::trim).collect();
    if let Some(unknown) = names.iter().find(|name| !STEPS.iter().any(|(known, _, _)| known == *name)) {
        let known: Vec<&str> = STEPS.iter().map(|(name, _, _)| *name).collect();
        let mend = format!("choose from {}", known.join(", "));
        return Err(failure("reading --only", format!("no step {unknown:?}"), mend));
    }
    Ok(STEPS.iter().filter(|(name, _, _)| names.contains(name)).collect())
}

fn cargo(what: &str, arguments: &[&str], mend: &str) -> Result<(), Failure> {
    quietly(what, tooled("cargo").args(arguments), mend).map(drop)
}

/// Runs tests and prints the line that counts them.
fn tests(what: &str, command: &mut Command) -> Result<(), Failure> {
    let printed = quietly(what, command, "mend the tests named above")?;
    let (passed, failed) = count(&printed);
    println!("{passed} passed, {failed} failed");
    if passed == 0 {
        return Err(failure(what, "no test ran", "see that the tests are still where the command looks"));
    }
    Ok(())
}

/// How many tests passed and failed, by the closing lines of the test runners.
fn count(printed: &str) -> (u64, u64) {
    let mut counts = (0, 0);
    for line in printed.lines().filter(|line| line.trim_start().starts_with("test result:")) {
        let words: Vec<&str> = line.split([' ', ';']).collect();
        let number = |word: &str| -> u64 {
            let at = words.iter().position(|w| *w == word).and_then(|at| at.checked_sub(1));
            at.and_then(|at| words[at].parse().ok()).unwrap_or_default()
        };
        counts.0 += number("passed");
        counts.1 += number("failed");
    }
    counts
}

/// Builds the documentation; `open` shows it.
pub fn docs(open: bool) -> Result<(), Failure> {
    let mut rustdoc = tooled("cargo");
    rustdoc.args(["doc", "--workspace", "--no-deps", "--document-private-items"]).env("RUSTDOCFLAGS", "-D warnings");
    if open {
        rustdoc.arg("--open");
    }
    quietly("rustdoc", &mut rustdoc, "mend what rustdoc names").map(drop)
}

fn wasm() -> Result<(), Failure> {
    ensure_build()?;
    let mut native = tooled("cargo");
    native.args(["run", "--quiet", "--package", "fitup-tests", "--example", "answers"]);
    let answers = quietly("native answers", &mut native, "mend what is named above")?;
    let path = crate::root().join("target/native-answers.txt");
    std::fs::write(&path, answers + "\n")
        .map_err(|error| failure(format!("writing {}", path.display()), error.to_string(), "make room on the disk"))?;
    let mut wasm = tooled("cargo");
    wasm.args(["test", "--package", "fitup-tests", "--target", "wasm32-unknown-unknown", "--test", "wasm"]);
    wasm.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", "wasm-bindgen-test-runner");
    wasm.env("FITUP_NATIVE_ANSWERS", path);
    tests("wasm tests", &mut wasm)
}

fn browser() -> Result<(), Failure> {
    release()?;
    let mut cargo = in_browser("test")?;
    cargo.args(["--test", "browser", "--", "--test-threads", "1"]);
    tests("browser tests", &mut cargo)
}

/// A cargo command for the package of tests that is told where browser, site and tools are.
pub fn in_browser(what: &str) -> Result<Command, Failure> {
    ensure_browser()?;
    let xtask = std::env::current_exe()
        .map_err(|error| failure("finding xtask's own program", error.to_string(), "run it through cargo xtask"))?;
    let mut cargo = tooled("cargo");
    cargo.args([what, "--package", "fitup-tests", "--features", "browser"]);
    // What failed is told by its message and its picture; the stack of a browser session buries them.
    cargo.env("RUST_BACKTRACE", "0");
    cargo.env("FITUP_AXE", axe_script()).env("FITUP_DIST", dist()).env("FITUP_XTASK", xtask);
    if let Some(chromium) = chromium() {
        cargo.env("FITUP_CHROMIUM", chromium);
    }
    Ok(cargo)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_are_chosen_by_name_and_a_wrong_name_is_told() {
        let names: Vec<&str> = chosen(Some("clippy,format")).expect("known").iter().map(|step| step.0).collect();
        assert_eq!(names, ["format", "clippy"]);
        assert!(chosen(Some("clipy")).expect_err("unknown").to_string().contains("choose from tools"));
        assert_eq!(chosen(None).expect("all").len(), STEPS.len());
    }

    #[test]
    fn tests_are_counted_over_all_runners() {
        let printed = "test result: ok. 3 passed; 0 failed; 1 ignored\n  test result: FAILED. 2 passed; 4 failed; 0 i";
        assert_eq!(count(printed), (5, 4));
        assert_eq!(count("nothing ran"), (0, 0));
    }
}
