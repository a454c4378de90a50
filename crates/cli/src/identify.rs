//! `identify`: which port of the catalogue an unknown unit could be.

use std::fmt::Write as _;
use std::process::ExitCode;

use clap::Args;
use fitup_core::build::Measurement;
use fitup_core::fit::Desk;
use fitup_core::item::{Catalogue, ItemRef, MachineId, PartNumber, PortKind};
use fitup_core::quantity::Length;
use fitup_core::search::{Identified, Observed, identify};
use fitup_words::Words;

use crate::catalogue::open_catalogue;
use crate::check::Format;
use crate::judge::{ReaderArguments, with_tool};

/// What was observed on the unit.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue: a JSON file, a folder of CSV tables or a workbook; `-` reads JSON from the standard input.
    pub catalogue: String,
    /// What kind of connection it is, if that can be seen: bolt-pattern, pins, hook-rack, three-point, seat-base …
    #[arg(long, value_name = "KIND")]
    pub kind: Option<String>,
    /// A dimension that was measured, such as `spread=460 ± 0.5 tape` or `hole-1-to-hole-2=120.1 caliper`. May be given more
    /// than once.
    #[arg(long = "measured", value_name = "DIMENSION=LENGTH")]
    pub measured: Vec<String>,
    /// A part number on the piece. May be given more than once.
    #[arg(long = "read", value_name = "NUMBER")]
    pub numbers: Vec<String>,
    /// How many holes or pins there are.
    #[arg(long, value_name = "NUMBER")]
    pub count: Option<usize>,
    /// How the answer is printed: the leading candidates, all of them with what speaks for each, or as data.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// Candidates that the short form shows.
const SHOWN: usize = 3;

/// Ranks the catalogue's ports and says what to print and how to exit: 0 if there is a candidate, 1 if there is none.
///
/// # Errors
/// The catalogue cannot be read, nothing was observed, or what was cannot be: what it is, and what to write instead.
pub fn run(arguments: &Arguments) -> Result<(String, ExitCode), String> {
    let words = arguments.reader.words();
    let catalogue = open_catalogue(&words, &arguments.catalogue)?;
    let kind = arguments.kind.as_deref().map(|kind| kind_of(&catalogue, kind)).transpose()?;
    let measured = arguments
        .measured
        .iter()
        .map(|text| measurement(text, &words).map_err(|why| format!("--measured \"{text}\": {why}")));
    let measured: Vec<Measurement> = measured.collect::<Result<_, _>>()?;
    let numbers: Vec<PartNumber> = arguments.numbers.iter().map(|number| number.trim().to_owned()).collect();
    if measured.is_empty() && numbers.is_empty() && arguments.count.is_none() {
        return Err("nothing is known of the unit; give --measured, --read or --count".to_owned());
    }
    let count = arguments.count;
    let observed = Observed { kind: kind.as_ref(), half: None, measured: &measured, numbers: &numbers, count };
    let desk = Desk::new(catalogue);
    let found = identify(&desk, &observed);
    let text = match arguments.format {
        Format::Short => text(&words, desk.catalogue(), &found, SHOWN),
        Format::Full => text(&words, desk.catalogue(), &found, usize::MAX),
        Format::Json => {
            let report = words.identify_report(desk.catalogue(), &found);
            serde_json::to_string_pretty(&report).expect("text, numbers and lists of them are JSON") + "\n"
        }
    };
    Ok((text, ExitCode::from(u8::from(found.candidates.is_empty()))))
}

/// A kind of port by its name, as a port of the catalogue has it.
fn kind_of(catalogue: &Catalogue, name: &str) -> Result<PortKind, String> {
    let kinds = || catalogue.items().flat_map(|item| &catalogue.body(item).ports).map(|port| &port.kind);
    kinds().find(|kind| kind.word() == name).cloned().ok_or_else(|| {
        let mut names: Vec<&str> = kinds().map(PortKind::word).collect();
        names.sort_unstable();
        names.dedup();
        format!("--kind \"{name}\": this catalogue has no such ports; it has: {}", names.join(", "))
    })
}

fn measurement(text: &str, words: &Words) -> Result<Measurement, String> {
    let (dimension, value) = text.split_once('=').ok_or("write DIMENSION=LENGTH, such as spread=460 mm")?;
    let (value, tool) = with_tool(value.trim());
    let read = words.reader().typed_sizes(value).map_err(|why| words.misread(value, why))?;
    // Which item it is of is what is asked.
    let item = ItemRef::Machine(MachineId::at(0));
    let readings: Vec<Length> = read.iter().map(|reading| reading.value).collect();
    let first = readings.first().copied().unwrap_or_default();
    let plus_minus = read.iter().filter_map(|reading| reading.plus_minus).reduce(Length::max);
    let one = Measurement { plus_minus, ..Measurement::new(item, "", dimension.trim(), first, tool) };
    Ok(if readings.len() > 1 { one.of_readings(readings) } else { one })
}

fn text(words: &Words, catalogue: &Catalogue, found: &Identified, shown: usize) -> String {
    let mut out = String::new();
    if found.candidates.is_empty() {
        return words.ui("identify-none", &[]) + "\n";
    }
    for candidate in found.candidates.iter().take(shown) {
        let (named, said) = words.candidate(catalogue, candidate);
        let _ = writeln!(out, "{named}");
        for sentence in said {
            let _ = writeln!(out, "  {sentence}");
        }
    }
    if found.candidates.len() > shown {
        let left = found.candidates.len() - shown;
        let _ = writeln!(out, "{}", words.ui("identify-more", &[("count", left.into())]));
    }
    let next = if shown == usize::MAX { usize::MAX } else { 1 };
    for tell in found.tell_apart.iter().take(next) {
        let _ = writeln!(out, "? {}", words.tell_apart(catalogue, found, tell));
    }
    out
}
