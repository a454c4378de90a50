//! The page for a dealer's web person says what the code does.
//!
//! Covers: widget/EMBEDDING.md.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

fn text(path: &str) -> String {
    fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join(path)).expect(path)
}

/// What stands in the first column of the table under a heading.
fn table(heading: &str) -> BTreeSet<String> {
    let page = text("crates/widget/EMBEDDING.md");
    let section = page.split("\n## ").find(|section| section.starts_with(heading)).expect(heading);
    let cell = |line: &str| line.strip_prefix("| `").and_then(|line| line.split('`').next()).map(str::to_owned);
    section.lines().filter_map(cell).collect()
}

/// Every word of a text that begins so.
fn words(text: &str, beginning: &str) -> BTreeSet<String> {
    let words = text.split(|sign: char| !(sign.is_ascii_alphanumeric() || sign == '-'));
    words.filter(|word| word.starts_with(beginning)).map(str::to_owned).collect()
}

#[test]
fn every_attribute_that_is_live_is_told_and_no_other() {
    let code = text("crates/widget/src/element.rs");
    let list =
        code.split("OBSERVED: [").nth(1).and_then(|rest| rest.split(']').nth(1)).expect("the list of attributes");
    let live: BTreeSet<String> = list.split('"').skip(1).step_by(2).map(str::to_owned).collect();
    assert_eq!(table("Attributes"), live);
}

#[test]
fn every_property_is_told_and_no_other() {
    assert_eq!(
        table("Looks"),
        words(&text("www/style/tokens.css"), "--fitup-").into_iter().filter(|name| name != "--fitup-").collect()
    );
}

#[test]
fn every_event_is_told_and_no_other() {
    let said = [text("crates/widget/src/event.rs"), text("www/fit-up.js")].concat();
    let named = said
        .split('"')
        .skip(1)
        .step_by(2)
        .filter(|name| name.starts_with("fitup-") && !name.contains('.'))
        .map(str::to_owned);
    assert_eq!(table("Events"), named.collect());
}

#[test]
fn the_examples_send_the_policy_under_which_everything_is_tested() {
    let code = text("crates/xtask/src/serve.rs");
    let policy = code.split("POLICY: &str = \"").nth(1).and_then(|rest| rest.split("\";").next()).expect("the policy");
    let policy: String = policy.split("\\\n").map(str::trim_start).collect();
    for example in ["tests/hosting/nginx.conf", "tests/hosting/apache.conf"] {
        assert!(text(example).contains(&policy), "{example}: {policy}");
    }
    let told = table("Policy");
    for directive in policy.split("; ").filter_map(|directive| directive.split(' ').next()) {
        let is_closed = matches!(directive, "default-src" | "base-uri" | "form-action" | "frame-ancestors");
        assert!(is_closed || told.contains(directive), "{directive}");
    }
}

#[test]
fn the_types_of_the_examples_are_those_of_our_own_server() {
    let (code, nginx) = (text("crates/xtask/src/serve.rs"), text("tests/hosting/nginx.conf"));
    for row in text("tests/hosting/objects.csv").lines().skip(1) {
        let (ending, kind) = row.split_once(',').expect("two columns");
        let bare = kind.split(';').next().unwrap_or_default();
        assert!(nginx.contains(bare), "{bare}");
        if !matches!(ending, "ts" | "txt") {
            assert!(code.contains(&format!("Some(\"{ending}\") => \"{bare}")), "{ending} {bare}");
        }
    }
}
