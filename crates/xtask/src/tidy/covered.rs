//! Whether every source file is tested: beside the code, or by a test file that says which folder it covers.

use super::File;

/// How a test file says what it covers: a line of its head with paths below `crates/`, parted by commas.
const COVERS: &str = "//! Covers: ";

/// Source files with functions and no test, and test files that say they cover what is not there.
pub fn faults(files: &[File]) -> Vec<String> {
    let mut faults = Vec::new();
    let mut covered: Vec<String> = Vec::new();
    for file in files.iter().filter(|file| is_rust(file) && is_test(file)) {
        for line in file.text.lines().filter_map(|line| line.strip_prefix(COVERS)) {
            for path in line.trim_end_matches('.').split(", ") {
                let path = format!("crates/{path}");
                if !files.iter().any(|source| is_below(&source.path, &path)) {
                    faults.push(format!("{}: covers {path}, which is not there", file.path));
                }
                covered.push(path);
            }
        }
    }
    for file in files.iter().filter(|file| is_rust(file) && file.path.contains("/src/") && !is_test(file)) {
        let does = file.text.lines().any(|line| line.contains("fn ") && !line.trim_start().starts_with("//"));
        let beside = has_tests(&file.text) || files.iter().any(|other| is_beside(&other.path, &file.path));
        if does && !beside && !covered.iter().any(|path| is_below(&file.path, path)) {
            faults.push(format!("{}: has no test beside it, and no test file says it covers it", file.path));
        }
    }
    faults
}

fn is_rust(file: &File) -> bool {
    std::path::Path::new(&file.path).extension().is_some_and(|extension| extension == "rs")
        && (file.path.starts_with("crates/") || file.path.starts_with("tests/"))
}

/// Whether a file is a test, makes the inputs of tests, or starts them: the commands of xtask mostly start other programs, and
/// are tested where they decide something.
fn is_test(file: &File) -> bool {
    let made_for_tests = ["crates/yard/", "crates/bench/", "crates/xtask/", "tests/"];
    let folders = ["/tests/", "/examples/", "/benches/"];
    made_for_tests.iter().any(|start| file.path.starts_with(start))
        || folders.iter().any(|folder| file.path.contains(folder))
        || ["/tests.rs", "/laws.rs"].iter().any(|end| file.path.ends_with(end))
}

/// Tests of its own, or an example that is run.
fn has_tests(text: &str) -> bool {
    let opens_tests = |pair: &[&str]| pair[0].trim() == "#[cfg(test)]" && pair[1].contains("mod ");
    let lines: Vec<&str> = text.lines().collect();
    lines.windows(2).any(opens_tests) || text.lines().any(|line| line.trim_start().starts_with("/// ```"))
}

/// Whether `other` holds the tests of `path`: `a/tests.rs` those of `a/mod.rs`, `a/b.rs` and so on in its folder.
fn is_beside(other: &str, path: &str) -> bool {
    let folder = path.rsplit_once('/').map_or("", |(folder, _)| folder);
    let tests = other.strip_suffix("/tests.rs").or_else(|| other.strip_suffix("/tests/mod.rs"));
    tests == Some(folder)
}

/// Whether a path is that of a folder or file, or lies below it.
fn is_below(path: &str, folder: &str) -> bool {
    path.strip_prefix(folder).is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(path: &str, text: &str) -> File {
        File { path: path.to_owned(), text: text.to_owned() }
    }

    #[test]
    fn a_file_without_a_test_is_named_until_something_tests_it() {
        let bare = || file("crates/core/src/fit/a.rs", "pub fn a() {}\n");
        assert_eq!(faults(&[bare()]).len(), 1);
        let own = file("crates/core/src/fit/a.rs", "pub fn a() {}\n#[cfg(test)]\nmod tests {}\n");
        assert!(faults(&[own]).is_empty());
        assert!(faults(&[bare(), file("crates/core/src/fit/tests.rs", "")]).is_empty());
        assert!(faults(&[bare(), file("tests/tests/a.rs", "//! Covers: core/src/fit.\n")]).is_empty());
        assert_eq!(faults(&[bare(), file("tests/tests/a.rs", "//! Covers: core/src/fi.\n")]).len(), 2);
    }

    #[test]
    fn a_file_of_types_alone_needs_none() {
        assert!(faults(&[file("crates/core/src/a.rs", "//! A fn of types.\npub struct A;\n")]).is_empty());
    }

    #[test]
    fn a_test_that_covers_nothing_is_named() {
        let faults = faults(&[file("tests/tests/a.rs", "//! Covers: core/src/gone.\n")]);
        assert_eq!(faults, ["tests/tests/a.rs: covers crates/core/src/gone, which is not there"]);
    }
}
