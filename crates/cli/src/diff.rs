//! `diff`: what changed between two editions of a catalogue, row by row and answer by answer.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use clap::Args;
use fitup_catalogue::wire::CatalogueFile;
use fitup_core::fit::Desk;
use fitup_words::{Words, verdict_key};
use serde_json::{Value, json};

use crate::judge::ReaderArguments;
use crate::matrix::cells;

/// What `diff` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The earlier edition, in any form.
    pub before: String,
    /// The later edition, in any form.
    pub after: String,
    /// Print data instead of text.
    #[arg(long)]
    pub json: bool,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// One edition.
pub struct Edition<'a> {
    /// Its records.
    pub file: &'a CatalogueFile,
    /// Its catalogue, prepared.
    pub desk: &'a Desk,
}

/// What became of a row: `fields` of one that is in both editions.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Row {
    /// Only in the later edition.
    Added,
    /// Only in the earlier.
    Removed,
    /// In both, with these fields changed.
    Changed(Vec<String>),
}

/// What changed.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Difference {
    /// Table and name of each row that is not the same.
    pub rows: Vec<(String, String, Row)>,
    /// Machine, implement, answer before and after, as the words' keys; only pairs of both editions.
    pub answers: Vec<(String, String, Option<&'static str>, Option<&'static str>)>,
}

/// The tables of rows, with the field that names a row.
const NAMED: [(&str, &str); 8] = [
    ("machines", "id"),
    ("frames", "id"),
    ("seats", "id"),
    ("implements", "id"),
    ("adapters", "id"),
    ("trailers", "id"),
    ("sites", "id"),
    ("parts", "number"),
];

/// Compares two editions.
pub fn difference(before: &Edition<'_>, after: &Edition<'_>, words: &Words) -> Difference {
    let [a, b] = [before.file, after.file].map(|file| serde_json::to_value(file).unwrap_or_default());
    let mut found = Difference::default();
    for (table, name) in NAMED {
        let rows = |file: &Value| -> BTreeMap<String, Value> {
            let rows = file[table].as_array().cloned().unwrap_or_default();
            rows.into_iter().map(|row| (row[name].as_str().unwrap_or_default().to_owned(), row)).collect()
        };
        let (a, b) = (rows(&a), rows(&b));
        for (id, row) in &a {
            match b.get(id) {
                None => found.rows.push((table.to_owned(), id.clone(), Row::Removed)),
                Some(other) if other != row => {
                    found.rows.push((table.to_owned(), id.clone(), Row::Changed(changed(row, other))));
                }
                Some(_) => {}
            }
        }
        let added = b.keys().filter(|id| !a.contains_key(*id));
        found.rows.extend(added.map(|id| (table.to_owned(), id.clone(), Row::Added)));
    }
    for whole in ["units", "guide", "parts_lists"] {
        if a[whole] != b[whole] {
            found.rows.push((whole.to_owned(), String::new(), Row::Changed(changed(&a[whole], &b[whole]))));
        }
    }
    let answers = |edition: &Edition<'_>| -> BTreeMap<(String, String), Option<&'static str>> {
        let catalogue = edition.desk.catalogue();
        let cells = cells(edition.desk, words, |_| {}).into_iter();
        let answer = |cell: crate::matrix::Cell| {
            let machine = catalogue.machine(cell.machine).body.id.clone();
            let implement = catalogue.implement(cell.implement).body.id.clone();
            ((machine, implement), cell.found.map(|found| verdict_key(found.verdict)))
        };
        cells.map(answer).collect()
    };
    let (was, is) = (answers(before), answers(after));
    for ((machine, implement), answer) in was {
        if let Some(now) = is.get(&(machine.clone(), implement.clone())).filter(|now| **now != answer) {
            found.answers.push((machine, implement, answer, *now));
        }
    }
    found
}

/// The names of the fields in which two records differ.
fn changed(a: &Value, b: &Value) -> Vec<String> {
    let keys =
        |value: &Value| value.as_object().map(|fields| fields.keys().cloned().collect::<Vec<_>>()).unwrap_or_default();
    let mut names: Vec<String> = keys(a).into_iter().chain(keys(b)).filter(|name| a[name] != b[name]).collect();
    names.sort_unstable();
    names.dedup();
    names
}

/// The difference as it is printed.
pub fn text(words: &Words, found: &Difference) -> String {
    let mut out = String::new();
    let _ = writeln!(out, "{}", words.ui("diff-rows", &[("count", found.rows.len().into())]));
    for (table, id, row) in &found.rows {
        let told = match row {
            Row::Added => words.ui("diff-added", &[]),
            Row::Removed => words.ui("diff-removed", &[]),
            Row::Changed(fields) => words.ui("diff-changed", &[("fields", fields.join(", ").into())]),
        };
        let name = if id.is_empty() { table.clone() } else { format!("{table} {id}") };
        let _ = writeln!(out, "  {name}: {told}");
    }
    let _ = writeln!(out, "\n{}", words.ui("diff-answers", &[("count", found.answers.len().into())]));
    let word = |key: Option<&str>| key.map_or_else(|| "–".to_owned(), |key| words.ui(key, &[]));
    for (machine, implement, was, is) in &found.answers {
        let _ = writeln!(out, "  {machine} + {implement}: {} → {}", word(*was), word(*is));
    }
    out
}

/// The difference as data.
pub fn data(found: &Difference) -> Value {
    let name = |key: Option<&str>| key.map(|key| key.trim_start_matches("verdict-").to_owned());
    let row = |(table, id, row): &(String, String, Row)| match row {
        Row::Added => json!({"table": table, "row": id, "change": "added"}),
        Row::Removed => json!({"table": table, "row": id, "change": "removed"}),
        Row::Changed(fields) => json!({"table": table, "row": id, "change": "changed", "fields": fields}),
    };
    json!({
        "rows": found.rows.iter().map(row).collect::<Vec<_>>(),
        "answers": found.answers.iter().map(|(machine, implement, was, is)| {
            json!({"machine": machine, "implement": implement, "before": name(*was), "after": name(*is)})
        }).collect::<Vec<_>>(),
    })
}
