//! `lists`: two parts lists compared, and what follows for a joint.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::process::ExitCode;

use clap::Args;
use fitup_catalogue::{PartsText, read_parts_bytes};
use fitup_core::item::{Catalogue, bears_joint};
use fitup_core::search::{AssemblySameness, LineSameness, ListsCompared, lists};
use fitup_words::Words;

use crate::catalogue::open_catalogue;
use crate::check::Format;
use crate::judge::LanguageArgument;

/// What `lists` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The first list: a file with CSV or text copied out of a parts catalogue, `-` for the standard input, or with
    /// `--catalogue` the id of an item whose list it is.
    pub first: String,
    /// The second list, in the same way.
    pub second: String,
    /// A catalogue that says which parts replace which, and which assemblies bear a joint.
    #[arg(long, value_name = "FILE")]
    pub catalogue: Option<String>,
    /// How the answer is printed: the assemblies, the lines that differ as well, or as data with every line.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
    /// The language of the sentences.
    #[command(flatten)]
    pub language: LanguageArgument,
}

/// Compares the lists and says what to print and how to exit: 0 if they are the same, 1 if anything differs.
///
/// # Errors
/// A file cannot be read or is no parts list: what is wrong, in which line, and what to do.
pub fn run(
    arguments: &Arguments,
    read: impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<(String, ExitCode), String> {
    let words = arguments.language.words();
    let catalogue = arguments.catalogue.as_ref().map(|file| open_catalogue(&words, file)).transpose()?;
    let list = |name: &str| list_of(name, catalogue.as_ref(), &words, &read);
    let [first, second] = [list(&arguments.first)?, list(&arguments.second)?];
    let none = BTreeMap::new();
    let parts = catalogue.as_ref().map_or(&none, |catalogue| &catalogue.parts);
    let bears = |heading: &str| catalogue.as_ref().is_some_and(|catalogue| bears_joint(catalogue, heading));
    let found = lists([&first.list, &second.list], parts, bears);
    let text = match arguments.format {
        Format::Short => text(&words, &found, false),
        Format::Full => text(&words, &found, true),
        Format::Json => {
            let report = words.lists_report(&found, [&first.faults, &second.faults]);
            serde_json::to_string_pretty(&report).expect("text, numbers and lists of them are JSON") + "\n"
        }
    };
    let mut out = String::new();
    if arguments.format != Format::Json {
        for (name, list) in [(&arguments.first, &first), (&arguments.second, &second)] {
            for fault in &list.faults {
                let _ = writeln!(out, "{name}: {}", words.list_fault(fault));
            }
        }
    }
    out.push_str(&text);
    let is_same = found.assemblies.iter().all(|assembly| assembly.sameness == AssemblySameness::Same);
    let text = out.chars().filter(|&sign| sign == '\n' || !sign.is_control()).collect();
    Ok((text, ExitCode::from(u8::from(!is_same))))
}

/// The list of an item of the catalogue, or else of a file.
fn list_of(
    name: &str,
    catalogue: Option<&Catalogue>,
    words: &Words,
    read: &impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<PartsText, String> {
    let item = catalogue.and_then(|catalogue| {
        let item = catalogue.items().find(|&item| catalogue.body(item).id == name)?;
        Some(&catalogue.body(item).parts_list)
    });
    if let Some(list) = item {
        return Ok(PartsText { list: list.clone(), faults: Vec::new() });
    }
    let list = read_parts_bytes(&read(name)?);
    if list.list.rows.is_empty() {
        let told: Vec<String> =
            list.faults.iter().map(|fault| format!("{name}: {}", words.list_fault(fault))).collect();
        return Err(told.join("\nfitup: "));
    }
    Ok(list)
}

fn text(words: &Words, found: &ListsCompared, with_lines: bool) -> String {
    let mut out = String::new();
    for assembly in &found.assemblies {
        let (told, follows) = words.assembly_compared(assembly);
        let _ = writeln!(out, "{told}");
        if let Some(follows) = follows {
            let _ = writeln!(out, "  → {follows}");
        }
        let is_in_both = !matches!(assembly.sameness, AssemblySameness::OnlyFirst | AssemblySameness::OnlySecond);
        let differ = assembly.lines.iter().filter(|line| line.sameness != LineSameness::Same);
        for line in differ.filter(|_| with_lines && is_in_both) {
            let _ = writeln!(out, "  {}", words.line_compared(line));
        }
    }
    out
}
