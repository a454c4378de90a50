//! Build, serve and test commands of the project: `cargo xtask` lists them.

mod bench;
mod build;
mod failure;
mod first;
mod measure;
mod mutants;
mod proof;
mod run;
mod schema;
mod screens;
mod serve;
mod site;
mod size;
mod test;
mod tidy;
mod tools;

use std::path::PathBuf;
use std::process::ExitCode;

use failure::{Failure, failure};

/// A command: name, what it does, and the function that does it with the remaining arguments.
type Command = (&'static str, &'static str, fn(&[String]) -> Result<(), Failure>);

const COMMANDS: &[Command] = &[
    ("serve", "build the release widget and serve it: serve [--port N] [--no-build]", serve::command),
    ("test", "run every check there is: test [--list] [--only NAME,NAME]", test::command),
    ("tools", "install what is missing: wasm target, wasm-bindgen, Trunk, wasm-opt, Chromium, axe", tools::command),
    ("build", "build the release site into dist/", build::command),
    ("size", "sizes of the start page in parts, against cap and baseline: size [--accept]", size::command),
    ("tidy", "check the house's invariants", tidy::command),
    ("order", "print which room of the core and which floor of fit uses which", tidy::order::command),
    (
        "screens",
        "take the pictures tests/screens.txt lists: screens [--only PART-OF-NAME] [--no-build]",
        screens::command,
    ),
    ("measure", "run Lighthouse on the served start page, as a phone and as a desk computer", measure::command),
    ("schema", "write the JSON Schema of the catalogue format into www/", schema::command),
    ("docs", "build and open the documentation of the code", |_| test::docs(true)),
    ("bench", "run the benchmarks: bench [ARGUMENTS of cargo bench], or in wasm: bench --wasm", bench::command),
    ("mutants", "test the tests of fit and dimension code by changing it: mutants [ARGUMENTS]", mutants::command),
    ("proof", "print published values and second methods beside what the core computes", proof::command),
    ("site", "finish a Trunk build: service worker and compressed copies (Trunk calls it)", site::command),
];

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let Some(name) = arguments.first() else {
        eprintln!("{}", usage());
        return ExitCode::from(2);
    };
    let Some((_, _, command)) = COMMANDS.iter().find(|(known, _, _)| known == name) else {
        eprintln!("no command {name:?}\n{}", usage());
        return ExitCode::from(2);
    };
    match command(&arguments[1..]) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("{failure}");
            ExitCode::FAILURE
        }
    }
}

fn usage() -> String {
    let lines: Vec<String> = COMMANDS.iter().map(|(name, what, _)| format!("  {name:<8} {what}")).collect();
    format!("cargo xtask COMMAND\n{}", lines.join("\n"))
}

/// The repository's root.
fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..").canonicalize().expect("xtask stands two folders deep")
}

/// The value that follows a flag.
fn flag_value(arguments: &[String], flag: &str) -> Result<Option<String>, Failure> {
    match arguments.iter().position(|argument| argument == flag) {
        None => Ok(None),
        Some(at) => match arguments.get(at + 1) {
            Some(value) => Ok(Some(value.clone())),
            None => {
                Err(failure("reading the arguments", format!("{flag} has no value"), format!("write {flag} VALUE")))
            }
        },
    }
}
