//! Opening the catalogue that a task works on.

use fitup_catalogue::{Severity, read_bytes};
use fitup_core::item::Catalogue;

use crate::check::{english, place};

/// How many problems are told before the rest is left to `check`.
const TOLD: usize = 5;

/// The catalogue of a file.
///
/// # Errors
/// The file cannot be read, or has mistakes: the first few, each with its place.
pub fn open_catalogue(path: &str, read: impl Fn(&str) -> Result<Vec<u8>, String>) -> Result<Catalogue, String> {
    let reading = read_bytes(&read(path)?);
    if let Some(catalogue) = reading.catalogue {
        return Ok(catalogue);
    }
    let errors: Vec<_> = reading.problems.iter().filter(|it| it.code.severity() == Severity::Error).collect();
    let words = english();
    let mut told: Vec<String> = errors
        .iter()
        .take(TOLD)
        .map(|problem| format!("{path}:{}: {}", place(problem), words.problem(problem).sentence))
        .collect();
    told.push(format!(
        "the catalogue has {} {} and cannot be used; \"fitup check {path}\" shows all with their mends",
        errors.len(),
        if errors.len() == 1 { "mistake" } else { "mistakes" }
    ));
    Err(told.join("\nfitup: "))
}
