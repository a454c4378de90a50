//! Every check there is, in the order in which they are cheapest to fail.

use std::time::Instant;

use crate::build::{dist, release};
use crate::failure::{Failure, failure};
use crate::run::quietly;
use crate::tools::{axe_script, ensure_browser, ensure_build, folder, tooled};
use crate::{flag_value, size, tidy};

/// A step: name, what it proves, and how.
type Step = (&'static str, &'static str, fn() -> Result<(), Failure>);

const STEPS: &[Step] = &[
    ("tools", "everything needed is installed", || ensure_build().and_then(|()| ensure_browser())),
    ("format", "the code is formatted", || cargo("format", &["fmt", "--all", "--check"], "run cargo fmt --all")),
    ("tidy", "the house's invariants hold", || tidy::command(&[])),
    ("clippy", "no lint fires", || {
        cargo("clippy", &["clippy", "--workspace", "--all-targets", "--", "-D", "warnings"], "mend what clippy names")
    }),
    ("unit", "unit, published-value and property tests pass", || tests("unit tests", &["test", "--workspace"])),
    ("docs", "every public item is documented", docs),
    ("wasm", "the core gives the same answers in wasm", wasm),
    ("site", "the release site builds", || release().map(drop)),
    ("size", "the start page is within its budget", || size::check(false)),
    ("browser", "the widget works in a real browser", browser),
];

/// Runs the steps, or those that `--only` names.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    if arguments.iter().any(|argument| argument == "--list") {
        for (name, what, _) in STEPS {
            println!("{name:<8} {what}");
        }
        return Ok(());
    }
    let only = flag_value(arguments, "--only")?;
    let chosen: Vec<&str> = only.as_deref().map(|names| names.split(',').collect()).unwrap_or_default();
    if let Some(unknown) = chosen.iter().find(|name| !STEPS.iter().any(|(known, _, _)| known == *name)) {
        let known: Vec<&str> = STEPS.iter().map(|(name, _, _)| *name).collect();
        return Err(failure(
            "reading --only",
            format!("no step {unknown:?}"),
            format!("choose from {}", known.join(", ")),
        ));
    }
    let started = Instant::now();
    for (name, what, step) in STEPS {
        if chosen.is_empty() || chosen.contains(name) {
            eprintln!("{name}: {what}");
            step()?;
        }
    }
    eprintln!("all passed in {:.0} s", started.elapsed().as_secs_f64());
    Ok(())
}

fn cargo(what: &str, arguments: &[&str], mend: &str) -> Result<(), Failure> {
    quietly(what, tooled("cargo").args(arguments), mend).map(drop)
}

/// Runs tests and prints the lines that count them.
fn tests(what: &str, arguments: &[&str]) -> Result<(), Failure> {
    let printed = quietly(what, tooled("cargo").args(arguments), "mend the tests named above")?;
    count(&printed);
    Ok(())
}

fn count(printed: &str) {
    let results = printed.lines().filter(|line| line.starts_with("test result:"));
    let (mut passed, mut failed) = (0_u64, 0_u64);
    for line in results {
        let number = |word: &str| -> u64 {
            let words: Vec<&str> = line.split([' ', ';']).collect();
            let at = words.iter().position(|w| *w == word).unwrap_or(0);
            at.checked_sub(1).and_then(|before| words[before].parse().ok()).unwrap_or(0)
        };
        passed += number("passed");
        failed += number("failed");
    }
    println!("{passed} passed, {failed} failed");
}

fn docs() -> Result<(), Failure> {
    let mut rustdoc = tooled("cargo");
    rustdoc.args(["doc", "--workspace", "--no-deps", "--document-private-items"]).env("RUSTDOCFLAGS", "-D warnings");
    quietly("rustdoc", &mut rustdoc, "mend what rustdoc names").map(drop)
}

fn wasm() -> Result<(), Failure> {
    let mut cargo = tooled("cargo");
    cargo.args(["test", "--package", "fitup-tests", "--target", "wasm32-unknown-unknown", "--test", "wasm"]);
    cargo.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", "wasm-bindgen-test-runner");
    let printed = quietly("wasm tests", &mut cargo, "mend the tests named above")?;
    count(&printed);
    Ok(())
}

fn browser() -> Result<(), Failure> {
    if !dist().join("index.html").exists() {
        release()?;
    }
    let mut cargo = tooled("cargo");
    cargo.args(["test", "--package", "fitup-tests", "--features", "browser", "--test", "browser"]);
    cargo.args(["--", "--test-threads", "1"]);
    cargo.env("FITUP_AXE", axe_script()).env("FITUP_DIST", dist()).env("FITUP_TOOLS", folder());
    let printed =
        quietly("browser tests", &mut cargo, "mend the tests named above; screenshots are in target/screens")?;
    count(&printed);
    Ok(())
}
