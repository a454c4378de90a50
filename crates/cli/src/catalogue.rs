//! Opening the catalogue that a task works on.

use fitup_catalogue::wire::CatalogueFile;
use fitup_catalogue::{Problem, Severity};
use fitup_core::item::Catalogue;
use fitup_words::Words;

use crate::check::place;
use crate::form;

/// How many problems are told before the rest is left to `check`.
const TOLD: usize = 5;

/// The catalogue in any of its forms: JSON, folder of CSV tables, workbook; `-` is JSON from the standard input.
///
/// # Errors
/// The file cannot be read, or has mistakes: the first few, each with its place.
pub fn open_catalogue(words: &Words, path: &str) -> Result<Catalogue, String> {
    let (catalogue, problems) = form::open(path)?;
    catalogue.ok_or_else(|| unusable(words, path, &problems))
}

/// The records of a catalogue in any of its forms, as they are written, and the catalogue.
///
/// # Errors
/// The file cannot be read, or has mistakes: the first few, each with its place.
pub fn open_records(words: &Words, path: &str) -> Result<(CatalogueFile, Catalogue), String> {
    let found = form::read(path)?;
    found.file.zip(found.catalogue).ok_or_else(|| unusable(words, path, &found.problems))
}

/// What keeps a catalogue from being used.
fn unusable(words: &Words, path: &str, problems: &[Problem]) -> String {
    let errors: Vec<_> = problems.iter().filter(|it| it.code.severity() == Severity::Error).collect();
    let mut told: Vec<String> = errors
        .iter()
        .take(TOLD)
        .map(|problem| format!("{path}:{}: {}", place(problem), words.problem(problem).sentence))
        .collect();
    let command = format!("fitup check {path}");
    told.push(words.ui("file-unusable", &[("errors", errors.len().into()), ("command", command.into())]));
    told.join("\nfitup: ")
}
