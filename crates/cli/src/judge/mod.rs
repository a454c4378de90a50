//! `judge`: what one build comes to.

mod build;
mod print;

use std::process::ExitCode;

use clap::Args;
use fitup_core::finding::Verdict;
use fitup_core::fit::{Desk, judge, whole};
use fitup_core::search::remedies;
use fitup_words::{Lang, Units, Words};

pub use build::build_of;
pub use print::{full, short};

use crate::catalogue::open_catalogue;
use crate::check::Format;

/// What `judge` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue's JSON file; `-` reads the standard input.
    pub catalogue: String,
    /// JSON file with a build, or a list of named builds; `-` reads the standard input. Left out
    /// if the build is named by the options below.
    pub build: Option<String>,
    /// Name of the build in a list of builds.
    #[arg(long = "build", value_name = "NAME")]
    pub named: Option<String>,
    /// Id of the machine.
    #[arg(long, value_name = "ID")]
    pub machine: Option<String>,
    /// Id of the mounting frame, or `hitch` for the bare three-point hitch.
    #[arg(long, value_name = "ID")]
    pub frame: Option<String>,
    /// Id of the seat arrangement.
    #[arg(long, value_name = "ID")]
    pub seat: Option<String>,
    /// Id of the implement.
    #[arg(long, value_name = "ID")]
    pub implement: Option<String>,
    /// Id of an adapter; may be given more than once.
    #[arg(long = "adapter", value_name = "ID")]
    pub adapters: Vec<String>,
    /// Id of the trailer.
    #[arg(long, value_name = "ID")]
    pub trailer: Option<String>,
    /// Id of the site.
    #[arg(long, value_name = "ID")]
    pub site: Option<String>,
    /// How the answer is printed: in a few sentences, with everything for the workshop, or as data.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// Whom sentences and figures are for.
#[derive(Debug, Clone, Args)]
pub struct ReaderArguments {
    /// Language: en, de, es or fr.
    #[arg(long, default_value = "en", value_parser = lang)]
    pub lang: Lang,
    /// Units: metric or us.
    #[arg(long, default_value = "metric", value_parser = units)]
    pub units: Units,
}

impl ReaderArguments {
    /// The texts for this reader.
    pub fn words(&self) -> Words {
        Words::new(self.lang, self.units)
    }
}

fn lang(tag: &str) -> Result<Lang, String> {
    Lang::from_tag(tag).ok_or_else(|| {
        let tags: Vec<&str> = Lang::ALL.iter().map(|lang| lang.tag()).collect();
        format!("there is no language \"{tag}\" here; there are: {}", tags.join(", "))
    })
}

fn units(name: &str) -> Result<Units, String> {
    Units::from_name(name).ok_or_else(|| format!("there are no units \"{name}\"; there are: metric, us"))
}

/// Judges the build and says what to print and how to exit: 0 if it bolts up, with work or
/// without; 1 if something is open or blocks.
///
/// # Errors
/// The catalogue or the build cannot be read, or the build names what the catalogue does not have.
pub fn run(
    arguments: &Arguments,
    read: impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<(String, ExitCode), String> {
    let catalogue = open_catalogue(&arguments.catalogue, &read)?;
    let build = build_of(arguments, &catalogue, &read)?;
    let desk = Desk::new(catalogue);
    let answer = judge(&desk, &build);
    let words = arguments.reader.words();
    let catalogue = desk.catalogue();
    let text = match arguments.format {
        Format::Short => short(&words, &desk, &build, &answer),
        Format::Full => full(&words, &desk, &build, &answer),
        Format::Json => {
            let report = words.report_with(catalogue, &build, &answer, &whole(&desk, &build), &remedies(&desk, &build));
            let pretty = serde_json::to_string_pretty(&report);
            pretty.expect("text, numbers and lists of them are JSON") + "\n"
        }
    };
    let mounts = matches!(answer.verdict, Verdict::BoltsUp | Verdict::BoltsUpWithWork);
    Ok((text, ExitCode::from(u8::from(!mounts))))
}
