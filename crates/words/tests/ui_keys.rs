//! Every key that a view or the command line asks for has a text.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use fitup_words::{Lang, Units, Words};

/// Source files under a folder.
fn sources(folder: &Path, into: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("the folder is there") {
        let path = entry.expect("the folder can be listed").path();
        if path.is_dir() {
            sources(&path, into);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            into.push(path);
        }
    }
}

/// What begins with `"ui-` in a text, up to the first character that keys do not have.
fn keys(text: &str) -> impl Iterator<Item = String> {
    text.match_indices("\"ui-").map(|(at, _)| {
        let is_key = |c: &char| c.is_ascii_lowercase() || c.is_ascii_digit() || *c == '-' || *c == '.';
        text[at + 1..].chars().take_while(is_key).collect()
    })
}

#[test]
fn every_key_that_is_asked_for_has_a_text_in_every_language() {
    let crates = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut files = Vec::new();
    sources(&crates.join("widget/src"), &mut files);
    sources(&crates.join("engine/src"), &mut files);
    sources(&crates.join("view/src"), &mut files);
    sources(&crates.join("cli/src"), &mut files);
    let texts: Vec<String> = files.iter().map(|file| fs::read_to_string(file).expect("a source file")).collect();
    let asked: BTreeSet<String> = texts.iter().flat_map(|text| keys(text)).collect();
    assert!(asked.len() > 20, "the search for keys has found next to nothing");
    for lang in Lang::ALL.into_iter().filter(|lang| lang.base() == *lang) {
        let words = Words::new(lang, Units::Metric);
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("text").join(lang.tag()).join("ui.ftl");
        let written = fs::read_to_string(path).expect("the text file is there");
        for key in &asked {
            // A key put together in the source ("ui-step-" and a name) has to have some text that begins so.
            let is_there = if key.ends_with('-') { written.contains(&format!("\n{key}")) } else { words.has(key) };
            assert!(is_there, "{lang:?} has no text for {key}");
        }
    }
}

#[test]
fn every_text_of_the_interface_is_asked_for() {
    let crates = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut files = Vec::new();
    for folder in ["view/src", "widget/src", "engine/src", "cli/src", "words/src", "core/src/fit"] {
        sources(&crates.join(folder), &mut files);
    }
    let all: String = files.iter().map(|file| fs::read_to_string(file).expect("a source file")).collect();
    let asked: BTreeSet<String> = keys(&all).collect();
    let written =
        fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("text/en/ui.ftl")).expect("it is there");
    let texts = written.lines().filter_map(|line| line.split_once(" =").map(|(key, _)| key));
    for key in texts.filter(|key| key.starts_with("ui-")) {
        let named = asked.iter().any(|it| it == key || it.starts_with(&format!("{key}.")));
        // Put together of "ui-step-" and a name, or of "ui-" and the name of a rule.
        let put_together = asked.iter().any(|it| it.len() > 3 && it.ends_with('-') && key.starts_with(it));
        let of_a_rule = all.contains(&format!("\"{}\"", &key[3..])) && asked.contains("ui-");
        assert!(named || put_together || of_a_rule, "nobody asks for {key}");
    }
}
