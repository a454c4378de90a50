//! The house's invariants, as far as a test can hold them.

mod covered;
pub mod order;
mod uses;

use std::fs;
use std::process::Command;

use crate::failure::{Failure, failure};

/// A tracked text file.
pub struct File {
    path: String,
    text: String,
}

/// A check: what it holds, and the places of a file that break it.
type Check = (&'static str, fn(&File) -> Vec<String>);

const CHECKS: &[Check] = &[
    ("nothing is left for later", unfinished),
    ("files stay readable", too_long),
    ("element.js holds no logic", long_element),
    ("rooms have names that say something", vague_room),
    ("the core depends on libm alone", core_dependencies),
    ("only the widget knows the browser", browser_outside_widget),
    ("the front end does not compute", computing_widget),
    ("nothing is fetched from elsewhere", foreign_address),
    ("no test is switched off", no_ignored_tests),
];

/// Runs every check over the tracked files.
pub fn command(_: &[String]) -> Result<(), Failure> {
    let files = tracked()?;
    let mut faults = Vec::new();
    for (what, check) in CHECKS {
        for file in &files {
            faults.extend(check(file).into_iter().map(|fault| format!("{}: {fault} ({what})", file.path)));
        }
    }
    faults.extend(top_level(&files));
    faults.extend(order::faults(&files));
    faults.extend(covered::faults(&files));
    if faults.is_empty() {
        println!("tidy: {} checks over {} files", CHECKS.len() + 3, files.len());
        return Ok(());
    }
    Err(failure("tidy", faults.join("\n        "), "mend each place named"))
}

fn tracked() -> Result<Vec<File>, Failure> {
    let listed = Command::new("git").args(["ls-files", "-z"]).current_dir(crate::root()).output();
    let listed = listed.map_err(|error| failure("git ls-files", error.to_string(), "install git"))?;
    let names = String::from_utf8_lossy(&listed.stdout).into_owned();
    Ok(names
        .split('\0')
        .filter(|name| !name.is_empty())
        .filter_map(|name| {
            let text = fs::read_to_string(crate::root().join(name)).ok()?;
            Some(File { path: name.to_owned(), text })
        })
        .collect())
}

fn lines(file: &File, breaks: impl Fn(&str) -> bool) -> Vec<String> {
    let numbered = file.text.lines().enumerate();
    numbered.filter(|(_, line)| breaks(line)).map(|(at, line)| format!("line {}: {}", at + 1, line.trim())).collect()
}

/// This file names what it forbids.
fn is_this_file(file: &File) -> bool {
    file.path == "crates/xtask/src/tidy/mod.rs"
}

fn is_source(file: &File) -> bool {
    ["rs", "js", "css", "html"].iter().any(|extension| file.path.ends_with(&format!(".{extension}")))
}

fn unfinished(file: &File) -> Vec<String> {
    if is_this_file(file) || !is_source(file) {
        return Vec::new();
    }
    let words = ["TODO", "FIXME", "XXX", "HACK", "unimplemented!", "todo!("];
    lines(file, |line| words.iter().any(|word| line.contains(word)))
}

fn no_ignored_tests(file: &File) -> Vec<String> {
    let is_rust = std::path::Path::new(&file.path).extension().is_some_and(|extension| extension == "rs");
    if is_this_file(file) || !is_rust {
        return Vec::new();
    }
    lines(file, |line| line.trim_start().starts_with("#[ignore"))
}

/// Lines a source file may have.
const MOST_LINES: usize = 500;

/// Lines a file of tests may have: it is mostly a list of cases.
const MOST_LINES_OF_TESTS: usize = 800;

fn too_long(file: &File) -> Vec<String> {
    let count = file.text.lines().count();
    let most = if file.path.contains("tests/") { MOST_LINES_OF_TESTS } else { MOST_LINES };
    if is_source(file) && count > most { vec![format!("{count} lines")] } else { Vec::new() }
}

fn long_element(file: &File) -> Vec<String> {
    let count = file.text.lines().count();
    if file.path == "www/element.js" && count > 100 { vec![format!("{count} lines")] } else { Vec::new() }
}

fn vague_room(file: &File) -> Vec<String> {
    let vague = ["util", "utils", "helper", "helpers", "common", "manager", "misc"];
    let parts = file.path.split(['/', '.']);
    parts.filter(|part| vague.contains(part)).map(|part| format!("is called {part:?}")).collect()
}

fn core_dependencies(file: &File) -> Vec<String> {
    if file.path != "crates/core/Cargo.toml" {
        return Vec::new();
    }
    let after = file.text.split("[dependencies]").nth(1).unwrap_or_default();
    let section = after.split("\n[").next().unwrap_or_default();
    let names = section.lines().filter_map(|line| line.split(['.', ' ', '=']).next()).filter(|name| !name.is_empty());
    names.filter(|&name| name != "libm" && !name.starts_with('#')).map(|name| format!("depends on {name}")).collect()
}

fn browser_outside_widget(file: &File) -> Vec<String> {
    let is_manifest = file.path.ends_with("/Cargo.toml") && file.path != "crates/widget/Cargo.toml";
    if !is_manifest {
        return Vec::new();
    }
    lines(file, |line| ["yew", "web-sys", "gloo"].iter().any(|name| line.trim_start().starts_with(name)))
}

/// A line of the widget that names a quantity and an operator: what a text shows of the invariant. What it cannot
/// see is a comparison of two names that nothing on the line tells to be quantities.
fn computing_widget(file: &File) -> Vec<String> {
    if !file.path.starts_with("crates/widget/src/") {
        return Vec::new();
    }
    let quantities = [
        "Length", "Mass", "Angle", "Pressure", "Flow", "Force", "Power", "Money", "Work::", "_MARGIN", ".mm()", ".m()",
        ".kg()", ".deg()", ".rad()", ".si()",
    ];
    let operators = [
        " < ",
        " > ",
        " <= ",
        " >= ",
        " == ",
        " != ",
        " + ",
        " - ",
        " * ",
        " / ",
        ".max(",
        ".min(",
        ".abs()",
        ".clamp(",
        ".total_cmp(",
    ];
    let code = File { path: String::new(), text: file.text.split("#[cfg(test)]").next().unwrap_or_default().into() };
    lines(&code, |line| {
        let names = |words: &[&str]| words.iter().any(|word| line.contains(word));
        !line.trim_start().starts_with("//") && names(&quantities) && names(&operators)
    })
}

fn foreign_address(file: &File) -> Vec<String> {
    let served = file.path.starts_with("www/") || file.path.starts_with("crates/widget/") || file.path == "index.html";
    if !served || file.path.ends_with(".schema.json") || file.path == "www/fonts/OFL.txt" {
        return Vec::new();
    }
    lines(file, |line| {
        let mut rest = line;
        while let Some(at) = rest.find("http") {
            let address = &rest[at..];
            let is_address = address.starts_with("http://") || address.starts_with("https://");
            let is_own = ["http://www.w3.org/", "https://www.w3.org/", "http://127.0.0.1", "http://localhost"]
                .iter()
                .any(|own| address.starts_with(own));
            if is_address && !is_own {
                return true;
            }
            rest = &address[4..];
        }
        false
    })
}

/// What may stand at the top of the tree beside dot files and dot folders.
const TOP: [&str; 11] = [
    "Cargo.toml",
    "Cargo.lock",
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "rust-toolchain.toml",
    "crates",
    "www",
    "tests",
    "index.html",
    "Trunk.toml",
];

fn top_level(files: &[File]) -> Vec<String> {
    let mut faults: Vec<String> = files
        .iter()
        .filter_map(|file| file.path.split('/').next())
        .filter(|top| !top.starts_with('.') && !TOP.contains(top))
        .map(|top| format!("{top} stands at the top of the tree"))
        .collect();
    faults.dedup();
    let readme = files.iter().find(|file| file.path == "README.md");
    let opening = readme.and_then(|file| file.text.split("\n\n").nth(1)).unwrap_or_default();
    if opening.len() < 200 || opening.starts_with(['#', '!', '`', '-']) {
        faults.push("README.md: does not open with the job in one paragraph".to_owned());
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(path: &str, text: &str) -> File {
        File { path: path.to_owned(), text: text.to_owned() }
    }

    #[test]
    fn each_check_has_something_it_catches() {
        let caught: [(usize, File); 12] = [
            (0, file("crates/core/src/a.rs", "// TODO later")),
            (1, file("crates/core/src/a.rs", &"x\n".repeat(501))),
            (1, file("crates/core/src/tests/a.rs", &"x\n".repeat(801))),
            (2, file("www/element.js", &"x\n".repeat(101))),
            (3, file("crates/core/src/utils/a.rs", "")),
            (4, file("crates/core/Cargo.toml", "[dependencies]\nlibm.workspace = true\nserde.workspace = true\n")),
            (5, file("crates/words/Cargo.toml", "web-sys.workspace = true")),
            (6, file("crates/widget/src/views/a.rs", "let low = left < Length::ZERO;")),
            (6, file("crates/widget/src/views/a.rs", "|load: Mass, rated| load - rated")),
            (6, file("crates/widget/src/views/a.rs", "let place = x.mm().abs();")),
            (7, file("www/a.js", "fetch('https://example.org/x')")),
            (8, file("crates/core/src/a.rs", "    #[ignore]")),
        ];
        for (check, file) in caught {
            assert!(!CHECKS[check].1(&file).is_empty(), "{}", CHECKS[check].0);
        }
    }

    #[test]
    fn what_is_in_order_passes_every_check() {
        let fine = [
            file("crates/core/src/ramp.rs", "//! Ramps.\n"),
            file("tests/tests/cases.rs", &"x\n".repeat(800)),
            file(
                "crates/core/Cargo.toml",
                "[dependencies]\nlibm.workspace = true\n\n[dev-dependencies]\nproptest = \"1\"\n",
            ),
            file(
                "crates/widget/src/say.rs",
                "/// a Length - signed\nlet x = |mm: f64| Length::from_mm(mm);\nif at < 3 {}",
            ),
            file("www/icon.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"),
        ];
        for file in &fine {
            for (what, check) in CHECKS {
                assert!(check(file).is_empty(), "{what}: {}", file.path);
            }
        }
    }

    #[test]
    fn a_stray_file_at_the_top_is_named() {
        let opening = format!("# Fit-up\n\n{}\n\n", "The job. ".repeat(30));
        assert!(top_level(&[file("README.md", &opening), file("crates/a/b.rs", ""), file(".ci/run", "")]).is_empty());
        assert_eq!(top_level(&[file("README.md", &opening), file("notes.txt", "")]).len(), 1);
        assert_eq!(top_level(&[file("README.md", "# Fit-up\n\nShort.")]).len(), 1);
    }
}
