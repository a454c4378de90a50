//! `judge`: what one build comes to.

mod build;
mod print;
mod said;

use std::process::ExitCode;

use clap::Args;
use fitup_core::finding::Verdict;
use fitup_core::fit::{Desk, judge, whole};
use fitup_core::search::{Searcher, checks, headline, remedies};
use fitup_words::{Lang, Units, Words};

pub use build::build_of;
pub use print::{full, short};
pub use said::SaidArguments;
pub(crate) use said::with_tool;

use crate::catalogue::open_catalogue;
use crate::check::Format;

/// What `judge` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue: a JSON file, a folder of CSV tables or a workbook; `-` reads JSON from the standard input.
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
    /// What was measured on the units, read off them and looked for.
    #[command(flatten)]
    pub said: SaidArguments,
    /// How the answer is printed: in a few sentences, with everything for the workshop, or as data.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// The language that sentences are in.
#[derive(Debug, Clone, Copy, Args)]
pub struct LanguageArgument {
    /// Language: en, en-US, de, es or fr.
    #[arg(long, default_value = "en", value_parser = lang)]
    pub lang: Lang,
}

impl LanguageArgument {
    /// The texts in this language.
    pub fn words(self) -> Words {
        Words::new(self.lang, Units::Metric)
    }
}

/// Whom sentences and figures are for.
#[derive(Debug, Clone, Args)]
pub struct ReaderArguments {
    /// Language of the sentences.
    #[command(flatten)]
    pub language: LanguageArgument,
    /// Units: metric or us.
    #[arg(long, default_value = "metric", value_parser = units)]
    pub units: Units,
}

impl ReaderArguments {
    /// The texts for this reader.
    pub fn words(&self) -> Words {
        Words::new(self.language.lang, self.units)
    }
}

fn lang(tag: &str) -> Result<Lang, String> {
    Lang::from_tag(tag).ok_or_else(|| {
        let tags: Vec<&str> = Lang::ALL.iter().map(|lang| lang.tag()).collect();
        format!("there is no language \"{tag}\" here; there are: {}", tags.join(", "))
    })
}

/// The units of a name.
///
/// # Errors
/// There are none of this name; which there are.
pub fn units(name: &str) -> Result<Units, String> {
    Units::from_name(name).ok_or_else(|| format!("there are no units \"{name}\"; there are: metric, us"))
}

/// Judges the build and says what to print and how to exit: 0 if every question that is asked is
/// a yes, with work or without; 1 if something is open, not chosen yet, or blocks.
///
/// # Errors
/// The catalogue or the build cannot be read, or the build names what the catalogue does not have.
pub fn run(
    arguments: &Arguments,
    read: impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<(String, ExitCode), String> {
    let words = arguments.reader.words();
    let catalogue = open_catalogue(&words, &arguments.catalogue)?;
    let build = build_of(&words, arguments, &catalogue, &read)?;
    let desk = Desk::new(catalogue);
    let answer = judge(&desk, &build);
    let headline = headline(&mut Searcher::new(&desk), &build);
    let catalogue = desk.catalogue();
    let text = match arguments.format {
        Format::Short => short(&words, &desk, &build, &answer, headline.as_ref()),
        Format::Full => full(&words, &desk, &build, &answer, headline.as_ref()),
        Format::Json => {
            let report = words.report_with(
                catalogue,
                &build,
                &answer,
                headline.as_ref(),
                &whole(&desk, &build),
                (&checks(&desk, &build, &answer), &remedies(&desk, &build).found),
            );
            let pretty = serde_json::to_string_pretty(&report);
            pretty.expect("text, numbers and lists of them are JSON") + "\n"
        }
    };
    let is_settled = answer.complete && answer.rank().1 <= Verdict::BoltsUpWithWork;
    Ok((text, ExitCode::from(u8::from(!is_settled))))
}
