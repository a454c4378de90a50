//! Puts the style sheets together, without comments and indentation.

use std::path::Path;
use std::{env, fs};

/// The parts of the style sheet, tokens first.
const PARTS: [&str; 13] = [
    "../drawing/src/style.css",
    "../../www/style/tokens.css",
    "../../www/style/base.css",
    "../../www/style/layout.css",
    "../../www/style/first.css",
    "../../www/style/field.css",
    "../../www/style/list.css",
    "../../www/style/joints.css",
    "../../www/style/whole.css",
    "../../www/style/idle.css",
    "../../www/style/desk.css",
    "../../www/style/away.css",
    "../../www/style/print.css",
];

fn main() {
    let mut styles = String::new();
    for part in PARTS {
        println!("cargo::rerun-if-changed={part}");
        styles.push_str(&tight(&fs::read_to_string(part).expect("the style sheet is there")));
    }
    let out = env::var("OUT_DIR").expect("cargo sets it for build scripts");
    fs::write(Path::new(&out).join("style.css"), styles).expect("OUT_DIR can be written");
}

/// A style sheet without its comments, a line for each declaration, without indentation.
fn tight(sheet: &str) -> String {
    let mut kept = String::new();
    let mut rest = sheet;
    while let Some((before, after)) = rest.split_once("/*") {
        kept.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept.push_str(rest);
    let lines = kept.lines().map(str::trim).filter(|line| !line.is_empty());
    lines.flat_map(|line| [line, "\n"]).collect()
}
