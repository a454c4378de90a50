//! Opening the catalogue that a task works on.

use fitup_catalogue::Severity;
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
    if let Some(catalogue) = catalogue {
        return Ok(catalogue);
    }
    let errors: Vec<_> = problems.iter().filter(|it| it.code.severity() == Severity::Error).collect();
    let mut told: Vec<String> = errors
        .iter()
        .take(TOLD)
        .map(|problem| format!("{path}:{}: {}", place(problem), words.problem(problem).sentence))
        .collect();
    let command = format!("fitup check {path}");
    told.push(words.ui("file-unusable", &[("errors", errors.len().into()), ("command", command.into())]));
    Err(told.join("\nfitup: "))
}
