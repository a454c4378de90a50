//! The one-way order of crates, of the core's rooms and of the floors of fit.

use std::collections::{BTreeMap, BTreeSet};

use super::File;
use super::uses::uses;
use crate::failure::Failure;

/// Crates, each using only those before it.
const CRATES: &[&str] = &[
    "fitup-core",
    "fitup-yard",
    "fitup-catalogue",
    "fitup-words",
    "fitup-drawing",
    "fitup-view",
    "fitup-engine",
    "fitup-widget",
    "fitup",
    "fitup-bench",
    "xtask",
    "fitup-tests",
];

/// A part of the core and its parts in their order, each using only those before it.
struct Order {
    /// Path below `crates/core/src/`.
    of: &'static [&'static str],
    parts: &'static [&'static str],
}

const ORDERS: &[Order] = &[
    Order {
        of: &[],
        parts: &["order", "quantity", "plane", "space", "item", "finding", "build", "dimension", "fit", "search"],
    },
    Order { of: &["fit"], parts: &["mating", "desk", "context", "joint", "whole", "rule", "judge"] },
];

/// Prints which part of the core uses which.
pub fn command(_: &[String]) -> Result<(), Failure> {
    let files = super::tracked()?;
    for order in ORDERS {
        println!("{}", if order.of.is_empty() { "core".to_owned() } else { order.of.join("/") });
        for (part, used) in graph(order, &files) {
            let used: Vec<&str> = order.parts.iter().copied().filter(|other| used.contains(*other)).collect();
            println!("  {part:<10} uses {}", if used.is_empty() { "none of them".to_owned() } else { used.join(", ") });
        }
    }
    let faults = faults(&files);
    if faults.is_empty() {
        return Ok(());
    }
    Err(crate::failure::failure("order", faults.join("\n        "), "move what both need to the lower of the two"))
}

/// Every use against the order.
pub fn faults(files: &[File]) -> Vec<String> {
    let mut faults: Vec<String> = ORDERS.iter().flat_map(|order| against(order, files)).collect();
    for file in files {
        faults.extend(crate_faults(file).into_iter().map(|fault| format!("{}: {fault}", file.path)));
    }
    faults
}

/// What each part of an order uses of the others, in the order of the parts.
fn graph(order: &Order, files: &[File]) -> Vec<(&'static str, BTreeSet<String>)> {
    let mut used: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    for (part, other, _) in edges(order, files) {
        used.entry(part).or_default().insert(other);
    }
    order.parts.iter().map(|&part| (part, used.remove(part).unwrap_or_default())).collect()
}

fn against(order: &Order, files: &[File]) -> Vec<String> {
    let rank = |part: &str| order.parts.iter().position(|&known| known == part);
    let mut faults = Vec::new();
    for (part, other, path) in edges(order, files) {
        if rank(part) < rank(&other) {
            faults.push(format!("{path}: {part} uses {other}, which stands above it"));
        }
    }
    // A part that has no file, or a file in no part, would be held to nothing.
    for part in order.parts {
        if !files.iter().any(|file| part_of(order, file) == Some(part)) {
            faults.push(format!("crates/core/src: there is no {part}"));
        }
    }
    faults
}

/// Uses of one part by another: the using part, the used one, and the file.
fn edges<'f>(order: &Order, files: &'f [File]) -> Vec<(&'static str, String, &'f str)> {
    let mut edges = Vec::new();
    for file in files {
        let (Some(part), Some(module)) = (part_of(order, file), module_of(file)) else { continue };
        for path in uses(&module, &file.text) {
            let below = path.iter().map(String::as_str);
            if !below.clone().take(order.of.len()).eq(order.of.iter().copied()) {
                continue;
            }
            let used = below.clone().nth(order.of.len());
            if let Some(used) = used.filter(|used| *used != part && order.parts.contains(used)) {
                edges.push((part, used.to_owned(), file.path.as_str()));
            }
        }
    }
    edges
}

/// The part of an order that a file belongs to; none for tests and what lies outside.
fn part_of(order: &Order, file: &File) -> Option<&'static str> {
    let module = module_of(file)?;
    if module.iter().any(|segment| *segment == "tests" || *segment == "laws") {
        return None;
    }
    let rest = module.strip_prefix(order.of)?;
    order.parts.iter().copied().find(|part| rest.first() == Some(part))
}

/// The module path of a file of the core.
fn module_of(file: &File) -> Option<Vec<&str>> {
    let path = file.path.strip_prefix("crates/core/src/")?.strip_suffix(".rs")?;
    let mut segments: Vec<&str> = path.split('/').collect();
    segments.pop_if(|last| *last == "mod");
    Some(segments)
}

/// Dependencies of a crate on one that stands above it.
fn crate_faults(file: &File) -> Vec<String> {
    let name = file.text.lines().find_map(|line| line.strip_prefix("name = \"")?.strip_suffix('"'));
    let is_manifest = file.path.ends_with("/Cargo.toml");
    let Some(name) = name.filter(|_| is_manifest) else { return Vec::new() };
    let Some(rank) = CRATES.iter().position(|&known| known == name) else {
        return vec![format!("{name} has no place in the order of crates")];
    };
    let mut section = "";
    let mut faults = Vec::new();
    for line in file.text.lines() {
        if line.starts_with('[') {
            section = line;
        }
        let used = line.split(['.', ' ', '=']).next().unwrap_or_default();
        let above = CRATES.iter().position(|&known| known == used).is_some_and(|other| other >= rank);
        // Tests of a crate may use what makes their inputs.
        if above && section.contains("dependencies]") && !section.contains("dev-") {
            faults.push(format!("{name} uses {used}, which stands above it"));
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(path: &str, text: &str) -> File {
        File { path: path.to_owned(), text: text.to_owned() }
    }

    const ORDER: Order = Order { of: &["fit"], parts: &["desk", "rule"] };

    #[test]
    fn a_use_of_a_higher_part_is_named_with_its_file() {
        let up = file("crates/core/src/fit/desk/lay.rs", "use crate::fit::rule::RULES;");
        let down = file("crates/core/src/fit/rule/mod.rs", "use super::desk::Desk;");
        let faults = against(&ORDER, &[up, down]);
        assert_eq!(faults, ["crates/core/src/fit/desk/lay.rs: desk uses rule, which stands above it"]);
    }

    #[test]
    fn tests_may_use_anything_and_a_part_without_a_file_is_told() {
        let tests = file("crates/core/src/fit/desk/tests.rs", "use crate::fit::rule::RULES;");
        let desk = file("crates/core/src/fit/desk.rs", "");
        assert_eq!(against(&ORDER, &[tests, desk]), ["crates/core/src: there is no rule"]);
    }

    #[test]
    fn the_graph_tells_what_each_part_uses() {
        let rule = file("crates/core/src/fit/rule/a.rs", "use crate::fit::desk::Desk;");
        let graph = graph(&ORDER, &[rule]);
        assert_eq!(graph[0], ("desk", BTreeSet::new()));
        assert_eq!(graph[1], ("rule", BTreeSet::from(["desk".to_owned()])));
    }

    #[test]
    fn a_crate_that_uses_a_higher_one_is_named() {
        let manifest = |text: &str| file("crates/core/Cargo.toml", text);
        let words = "name = \"fitup-words\"\n[dependencies]\nfitup-widget.workspace = true\n";
        assert_eq!(crate_faults(&manifest(words)), ["fitup-words uses fitup-widget, which stands above it"]);
        let tests = "name = \"fitup-core\"\n[dev-dependencies]\nfitup-yard.workspace = true\n";
        assert!(crate_faults(&manifest(tests)).is_empty());
        assert_eq!(crate_faults(&manifest("name = \"other\"\n")).len(), 1);
    }
}
