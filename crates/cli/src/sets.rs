//! `sets`: the best complete sets that a build can still become.

use std::fmt::Write as _;
use std::process::ExitCode;

use clap::{Args, ValueEnum};
use fitup_core::fit::Desk;
use fitup_core::search::{Searcher, SetOrder, Sets};
use fitup_words::Words;

use crate::catalogue::open_catalogue;
use crate::check::Format;
use crate::judge::{self, build_of};

/// What `sets` is asked.
#[derive(Debug, Clone, Args)]
#[group(id = "sets")]
pub struct Arguments {
    /// The catalogue, and what is chosen and said so far.
    #[command(flatten)]
    pub build: judge::Arguments,
    /// What sets of one answer are ordered by first.
    #[arg(long, value_enum, default_value_t)]
    pub by: By,
}

/// What sets of one answer are ordered by first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, ValueEnum)]
pub enum By {
    /// The cheapest first.
    #[default]
    Price,
    /// The shortest machine first.
    Length,
    /// The greatest departure angle first.
    Departure,
    /// The fewest hours first.
    Hours,
    /// The fewest items to buy first.
    OnHand,
}

impl From<By> for SetOrder {
    fn from(by: By) -> Self {
        match by {
            By::Price => Self::Price,
            By::Length => Self::Length,
            By::Departure => Self::Departure,
            By::Hours => Self::Hours,
            By::OnHand => Self::OnHand,
        }
    }
}

/// Sets that the short form prints.
const SHOWN: usize = 5;

/// Finds the sets and says what to print and how to exit: 0 if there is one, 1 if there is none.
///
/// # Errors
/// The catalogue or the build cannot be read, or the build names what the catalogue does not have.
pub fn run(
    arguments: &Arguments,
    read: impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<(String, ExitCode), String> {
    let asked = &arguments.build;
    let words = asked.reader.words();
    let catalogue = open_catalogue(&words, &asked.catalogue)?;
    let build = build_of(&words, asked, &catalogue, &read)?;
    let desk = Desk::new(catalogue);
    let order = arguments.by.into();
    let found = Searcher::new(&desk).sets(&build, order);
    let text = match asked.format {
        Format::Short => text(&words, &desk, &found, SHOWN),
        Format::Full => text(&words, &desk, &found, usize::MAX),
        Format::Json => {
            let report = words.sets_report(desk.catalogue(), &found, order);
            serde_json::to_string_pretty(&report).expect("text, numbers and lists of them are JSON") + "\n"
        }
    };
    Ok((text, ExitCode::from(u8::from(found.found.is_empty()))))
}

fn text(words: &Words, desk: &Desk, found: &Sets, shown: usize) -> String {
    let mut out = String::new();
    if found.found.is_empty() {
        out.push_str(&words.ui("sets-none", &[]));
        out.push('\n');
    }
    for (at, set) in found.found.iter().take(shown).enumerate() {
        for (line, text) in words.set_lines(desk.catalogue(), set).iter().enumerate() {
            let start = if line == 0 { format!("{:>2}. ", at + 1) } else { "    ".to_owned() };
            let _ = writeln!(out, "{start}{text}");
        }
    }
    if !found.is_exact {
        let _ = writeln!(out, "{}", words.ui("sets-not-all", &[]));
    }
    out.chars().filter(|&sign| sign == '\n' || !sign.is_control()).collect()
}
