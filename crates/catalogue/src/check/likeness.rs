//! What is nearly the same as something else and was hardly meant to be: a word misspelled once, a part
//! number written two ways, two rows under one label, a line that stands twice.

use std::collections::BTreeMap;

use super::each_item;
use super::references::plain_number;
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
use crate::wire::body::Body;
use crate::wire::port::PortKind;

/// The longest label that fits where labels are shown, characters. No source.
const LONGEST_LABEL: usize = 120;

/// Most different words that are compared with one another. No source: a catalogue has some dozens.
const MOST_WORDS: usize = 1_000;

/// Years that such things were made in. Common practice, no source.
const YEARS: std::ops::RangeInclusive<u16> = 1900..=2100;

/// Checks a file for what is nearly the same.
pub fn likeness(file: &CatalogueFile, report: &mut Report) {
    let mut labels: BTreeMap<(String, String), String> = BTreeMap::new();
    each_item(file, |at, body| label(at, body, &mut labels, report));
    words(file, report);
    parts(file, report);
    let table = At::top("parts_lists");
    let mut lines: BTreeMap<[&str; 4], usize> = BTreeMap::new();
    for (index, row) in file.parts_lists.iter().enumerate() {
        let line = [&*row.item, &*row.assembly, &*row.position, &*row.part];
        match lines.get(&line) {
            Some(&first) => {
                report.add(Problem::new(Code::LineTwice, table.index(index)).with("other", table.index(first)));
            }
            None => _ = lines.insert(line, index),
        }
    }
}

fn label(at: At<'_>, body: Body<'_>, labels: &mut BTreeMap<(String, String), String>, report: &mut Report) {
    let count = body.label.chars().count();
    if count > LONGEST_LABEL {
        let problem = Problem::new(Code::LongLabel, at.field("label")).with("found", count);
        report.add(problem.with("greatest", LONGEST_LABEL));
    }
    for (year, end) in body.years.iter().flat_map(|years| [(years.first, "first"), (years.last, "last")]) {
        if let Some(year) = year.filter(|year| !YEARS.contains(year)) {
            report.add(Problem::new(Code::UnlikelyYear, at.field("years").field(end)).with("found", year));
        }
    }
    // What tells two rows of one label apart is shown with them.
    let apart = format!("{:?} {:?} {}", body.years, body.serials, body.series.to_lowercase());
    let table = at.to_string();
    let table = table.split('[').next().unwrap_or_default();
    let shown = format!("{table}/{}", body.label.trim().to_lowercase());
    if body.label.trim().is_empty() {
        return;
    }
    match labels.get(&(shown.clone(), apart.clone())) {
        Some(other) => {
            let problem = Problem::new(Code::SameLabel, at.field("label")).with("found", shortened(body.label));
            report.add(problem.with("other", other));
        }
        None => _ = labels.insert((shown, apart), at.to_string()),
    }
}

/// Free words that stand once, next to one that is in use.
fn words(file: &CatalogueFile, report: &mut Report) {
    let (mut standards, mut sizes) = (Vec::new(), Vec::new());
    each_item(file, |at, body| {
        let ports = at.field("ports");
        for (index, port) in body.ports.iter().enumerate() {
            if let PortKind::Coupler(coupler) = &port.kind {
                let at = ports.index(index);
                let at = at.field("kind");
                let at = at.field("coupler");
                standards.push((coupler.standard.clone(), at.field("standard").to_string()));
                sizes.push((coupler.size.clone(), at.field("size").to_string()));
            }
        }
    });
    rare(&standards, report);
    rare(&sizes, report);
}

/// Reports words that stand once and differ by next to nothing from one that stands more often; a word
/// in another spelling of capitals, blanks and points is always one.
fn rare(words: &[(String, String)], report: &mut Report) {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for (word, _) in words {
        *counts.entry(word).or_default() += 1;
    }
    if counts.len() > MOST_WORDS {
        return;
    }
    for (index, (word, at)) in words.iter().enumerate() {
        if counts[word.as_str()] > 1 {
            continue;
        }
        // Of two words that stand once each, the second is asked about, and only if it is the same to a reader.
        let is_before = |other: &str| words[..index].iter().any(|(earlier, _)| earlier == other);
        let near = |(other, others): &(&&str, &usize)| {
            **other != word
                && is_near(word, other)
                && (**others > 1 || (plain(word) == plain(other) && is_before(other)))
        };
        if let Some((other, _)) = counts.iter().find(near) {
            let problem = Problem::new(Code::RareWord, at).with("found", shortened(word));
            report.add(problem.with("suggestion", *other));
        }
    }
}

fn plain(text: &str) -> String {
    text.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

fn is_near(word: &str, other: &str) -> bool {
    let digits = |text: &str| text.chars().filter(char::is_ascii_digit).collect::<String>();
    let (a, b) = (plain(word), plain(other));
    if a == b {
        return true;
    }
    if digits(&a) != digits(&b) || a.len().min(b.len()) < 6 || a.len().max(b.len()) > 80 {
        return false;
    }
    // A letter at the end after a figure is a kind of its own: ISO 7241-A and -B.
    let but_last = |text: &str| text.chars().rev().skip(1).collect::<String>();
    let ends_apart = but_last(&a) == but_last(&b) && !digits(&a).is_empty();
    !ends_apart && (strsim::osa_distance(&a, &b) <= 2 || a.ends_with(&b) || b.ends_with(&a))
}

/// Part numbers that are one and the same but for how they are written.
fn parts(file: &CatalogueFile, report: &mut Report) {
    let table = At::top("parts");
    let mut known: BTreeMap<String, usize> = BTreeMap::new();
    for (index, row) in file.parts.iter().enumerate() {
        let plain = plain_number(&row.number);
        match known.get(&plain) {
            Some(&first) if file.parts[first].number != row.number && !plain.is_empty() => {
                let problem = Problem::new(Code::SimilarPart, table.index(index).field("number"));
                let problem = problem.with("found", shortened(&row.number));
                report
                    .add(problem.with("like", shortened(&file.parts[first].number)).with("other", table.index(first)));
            }
            Some(_) => {}
            None => _ = known.insert(plain, index),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn near_words_are_the_same_to_a_reader() {
        for (a, b) in [
            ("loader bace", "loader base"),
            ("front loader base", "loader base"),
            ("12,5", "12.5"),
            ("Loader-base", "loader base"),
        ] {
            assert!(is_near(a, b), "{a} {b}");
        }
        for (a, b) in [
            ("belly mower", "loader base"),
            ("-8", "-6"),
            ("ISO 7241-A", "ISO 7241-B"),
            ("cab 2", "cab 3"),
            ("Größe 1 ä", "Größe 1 ö"),
        ] {
            assert!(!is_near(a, b), "{a} {b}");
        }
    }
}
