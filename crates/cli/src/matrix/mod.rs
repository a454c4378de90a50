//! `matrix`: what fits what, before a catalogue is published.

mod cells;
mod csv;
mod html;
mod text;

use clap::{Args, ValueEnum};
use fitup_core::finding::{Question, Verdict};
use fitup_core::fit::Desk;
use fitup_core::item::{Catalogue, ItemRef, Role};
use fitup_words::{Words, verdict_key};

pub use cells::{Cell, Progress, cells};

use crate::judge::ReaderArguments;

/// What `matrix` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue: a JSON file, a folder of CSV tables or a workbook; `-` reads JSON from the standard input.
    pub catalogue: String,
    /// How the table is printed.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// How the table is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, ValueEnum)]
pub enum Format {
    /// The table alone, a sign for each machine with each implement.
    Short,
    /// The table, then each machine with each implement and the reason of its answer.
    #[default]
    Full,
    /// Data: a list with one record for each machine with each implement.
    Json,
    /// The same records as a table for a spreadsheet (UTF-8, commas).
    Csv,
    /// One page for a browser or the printer that needs nothing else.
    Html,
}

/// The table as it is printed.
pub fn text(desk: &Desk, words: &Words, cells: &[Cell], format: Format) -> String {
    let catalogue = desk.catalogue();
    match format {
        Format::Short => text::table(catalogue, words, cells),
        Format::Full => text::table(catalogue, words, cells) + "\n" + &text::reasons(catalogue, words, cells),
        Format::Json => {
            let records: Vec<cells::Record> = cells.iter().map(|cell| cell.record(catalogue)).collect();
            serde_json::to_string_pretty(&records).expect("text and numbers are JSON") + "\n"
        }
        Format::Csv => csv::csv(catalogue, words, cells),
        Format::Html => html::page(catalogue, words, cells),
    }
}

/// How far the table is, in a line.
pub fn progress_text(words: &Words, Progress { done, machines, left }: Progress) -> String {
    let seconds = i64::try_from(left.as_secs().saturating_add(1)).unwrap_or(i64::MAX);
    words.ui("matrix-progress", &[("done", done.into()), ("machines", machines.into()), ("seconds", seconds.into())])
}

/// What a cell is told to be: its sign, its name in data, its word. The one place that chooses it.
struct Told {
    /// One sign keeps a table of many implements narrow; the legend says which.
    mark: char,
    name: &'static str,
    word: String,
}

fn told(words: &Words, verdict: Verdict, question: Question) -> Told {
    let mark = match verdict {
        Verdict::BoltsUp => '●',
        Verdict::BoltsUpWithWork => '◐',
        Verdict::CheckFirst => '?',
        Verdict::WontMount => '×',
    };
    Told { mark, name: verdict_name(verdict), word: words.answer(question, Some(verdict)) }
}

/// What a sign is told to mean: the words of fit and, where a cell may have them, those of work.
fn legend(words: &Words, verdict: Verdict) -> Told {
    let (fit, work) = (told(words, verdict, Question::Fit), told(words, verdict, Question::Work));
    // Where both are a plain yes, fit has the word.
    if verdict == Verdict::BoltsUp || fit.word == work.word {
        return fit;
    }
    Told { word: format!("{} / {}", fit.word, work.word), ..fit }
}

fn verdict_name(verdict: Verdict) -> &'static str {
    let key = verdict_key(verdict);
    key.strip_prefix("verdict-").unwrap_or(key)
}

/// The frame and the seat that a cell's answer was found with; nothing if no build can be completed.
fn through(catalogue: &Catalogue, words: &Words, cell: &Cell) -> Option<(String, String)> {
    let found = cell.found.as_ref()?;
    let label = |item: ItemRef| catalogue.body(item).label.clone();
    let frame = found.frame.map_or_else(|| words.role(Role::Hitch), |frame| label(ItemRef::Frame(frame)));
    Some((frame, label(ItemRef::Seat(found.seat))))
}

/// "with this frame, that seat", or what is nearest where nothing mounts.
fn through_text(catalogue: &Catalogue, words: &Words, cell: &Cell) -> String {
    let (Some(found), Some((frame, seat))) = (&cell.found, through(catalogue, words, cell)) else {
        return words.ui("matrix-none", &[]);
    };
    let key = if found.verdict == Verdict::WontMount { "matrix-nearest" } else { "matrix-with" };
    words.ui(key, &[("frame", frame.into()), ("seat", seat.into())])
}
