//! Checks the texts of every language against each other and lays each out for the program.
//!
//! A folder named for a region, `en-US`, holds only what is written otherwise there than in its language.
//!
//! A text that is missing in a language, or that shows other values than the English one, fails
//! the build with the place and the mend.

use std::path::{Path, PathBuf};
use std::{env, fs};

#[path = "build/check.rs"]
mod check;
#[path = "build/lay_out.rs"]
mod lay_out;
#[path = "src/marks.rs"]
mod marks;

const LANGUAGES: [&str; 4] = ["en", "de", "es", "fr"];

/// Regions that write some texts in their own way, each with its language.
const REGIONS: [(&str, &str); 1] = [("en-US", "en")];

fn main() {
    let root = PathBuf::from(env::var("CARGO_MANIFEST_DIR").expect("cargo sets it for build scripts")).join("text");
    let out = PathBuf::from(env::var("OUT_DIR").expect("cargo sets it for build scripts"));
    println!("cargo::rerun-if-changed=build");
    println!("cargo::rerun-if-changed=src/marks.rs");
    println!("cargo::rerun-if-changed=text");
    let mut faults = Vec::new();
    let mut languages = Vec::new();
    for language in LANGUAGES {
        let files = files(&root, language);
        let read = check::read(&files, &mut faults);
        write(&out, language, &lay_out::lay_out(&files, &mut faults));
        languages.push((language, read));
    }
    check::compare(&languages, &mut faults);
    for (region, language) in REGIONS {
        let (own, whole) = (files(&root, region), files(&root, language));
        let (mut own, whole) = (lay_out::lines(&own, &mut faults), lay_out::lines(&whole, &mut faults));
        lay_out::overlay(region, &own, &whole, &mut faults);
        for (key, line) in whole {
            own.entry(key).or_insert(line);
        }
        write(&out, region, &lay_out::join(own));
    }
    if !faults.is_empty() {
        for fault in &faults {
            println!("cargo::error={fault}");
        }
    }
}

/// The text files of a folder, name and text.
fn files(root: &Path, folder: &str) -> Vec<(String, String)> {
    let mut files: Vec<(String, String)> = fs::read_dir(root.join(folder))
        .expect("each language has a folder under text/")
        .map(|entry| entry.expect("the folder can be listed").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "ftl"))
        .map(|path| {
            let name = path.strip_prefix(root).expect("it lies under text/").display().to_string();
            (name, fs::read_to_string(&path).expect("the text file can be read"))
        })
        .collect();
    files.sort();
    files
}

fn write(out: &Path, language: &str, texts: &str) {
    fs::write(out.join(format!("{language}.txt")), texts).expect("OUT_DIR can be written");
}
