//! The table as plain text.

use std::fmt::Write as _;

use fitup_core::finding::Verdict;
use fitup_core::item::Catalogue;
use fitup_words::Words;

use super::{Cell, through_text, told};

/// A line a machine, a sign an implement.
pub(super) fn table(catalogue: &Catalogue, words: &Words, cells: &[Cell]) -> String {
    let width = catalogue.machines.iter().map(|it| it.body.label.chars().count()).max().unwrap_or_default();
    let digits = catalogue.implements.len().to_string().len().max(2);
    let mut out = String::new();
    for (index, implement) in catalogue.implements.iter().enumerate() {
        let _ = writeln!(out, "{:width$} {:>digits$}  {}", "", index + 1, implement.body.label);
    }
    let _ = write!(out, "{:width$} ", "");
    for index in 0..catalogue.implements.len() {
        let _ = write!(out, " {:>digits$}", index + 1);
    }
    out.push('\n');
    for (machine, row) in catalogue.machines.iter().zip(cells.chunks(catalogue.implements.len().max(1))) {
        let _ = write!(out, "{:width$} ", machine.body.label);
        for cell in row {
            let mark = cell.found.as_ref().map_or('-', |found| told(words, found.verdict, found.question).mark);
            let _ = write!(out, " {mark:>digits$}");
        }
        out.push('\n');
    }
    let legend = Verdict::ALL.map(|verdict| {
        let told = super::legend(words, verdict);
        format!("{} {}", told.mark, told.word)
    });
    out.push_str(&legend.join("   "));
    out.push('\n');
    harmless(&out)
}

/// Each cell with its reason.
pub(super) fn reasons(catalogue: &Catalogue, words: &Words, cells: &[Cell]) -> String {
    let mut out = String::new();
    for cell in cells {
        let labels = [&catalogue.machine(cell.machine).body.label, &catalogue.implement(cell.implement).body.label]
            .map(String::as_str);
        let through = through_text(catalogue, words, cell);
        let Some(found) = &cell.found else {
            let _ = writeln!(out, "{}: {through}", labels.join(" + "));
            continue;
        };
        let _ =
            writeln!(out, "{}: {} ({through})", labels.join(" + "), told(words, found.verdict, found.question).word);
        if let Some(reason) = &found.reason {
            let _ = writeln!(out, "  {reason}");
        }
    }
    harmless(&out)
}

/// What a catalogue holds must not steer the terminal.
fn harmless(text: &str) -> String {
    text.chars().filter(|&c| c == '\n' || !c.is_control()).collect()
}
