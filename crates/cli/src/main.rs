//! The `fitup` command.
//!
//! Answers go to the standard output, chatter to the standard error. Exit 0: clean; 1: findings,
//! or a case that could not be computed; 2: could not run.

use std::io::{Read, Write};
use std::process::ExitCode;
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use clap::{Parser, Subcommand};
use fitup_catalogue::tables::TemplateUnits;
use fitup_cli::catalogue::{open_catalogue, open_records};
use fitup_cli::check::{Format, problems_data, problems_text};
use fitup_cli::judge::LanguageArgument;
use fitup_cli::{coverage, diff, figure, form, identify, judge, lists, matrix, preview, sets};
use fitup_core::fit::Desk;
use fitup_words::{Units, Words};

/// Does this implement fit that machine, through which frame, and what does the result measure?
#[derive(Parser)]
#[command(name = "fitup", version)]
struct Arguments {
    #[command(subcommand)]
    task: Task,
}

#[derive(Subcommand)]
enum Task {
    /// Compute one figure for a case or a list of cases and print a JSON list of id and result.
    Figure {
        /// The figure's name, such as end-angles; a wrong name lists all.
        name: String,
        /// JSON file with one case {"id", "inputs"} or a list of them; `-` reads the standard input.
        file: String,
    },
    /// Find everything that is wrong with catalogues, and what is hardly meant so. Exit 1 if there is anything.
    Check {
        /// JSON files, folders of CSV tables, workbooks (.xlsx, .ods); `-` reads JSON from the standard input.
        #[arg(required = true)]
        files: Vec<String>,
        /// How problems are printed.
        #[arg(long, value_enum, default_value_t)]
        format: Format,
        /// The language that problems are told in.
        #[command(flatten)]
        language: LanguageArgument,
    },
    /// Judge one build: does it fit, by which evidence, and what does the result measure? Exit 0 if it
    /// bolts up, with work or without; 1 if something is open or blocks.
    Judge(Box<judge::Arguments>),
    /// Say which item an unknown unit could be, by what was measured, read and counted on it, and what to look at next. Exit 1
    /// if nothing in the catalogue speaks of it.
    Identify(identify::Arguments),
    /// Name the best complete sets that a partial build can still become, and those that nothing beats. Exit 1 if there is none.
    Sets(Box<sets::Arguments>),
    /// Compare two parts lists, assembly by assembly, and say what follows for a joint. Exit 1 if anything differs.
    Lists(lists::Arguments),
    /// Print which machine takes which implement at best, through any frame and seat.
    Matrix(matrix::Arguments),
    /// Tell what a catalogue still lacks, by how many answers it holds back; listed sets that are not in order; parts lists
    /// that prove nothing. Exit 1 if there is anything.
    Coverage(coverage::Arguments),
    /// Tell what changed between two editions of a catalogue, row by row and answer by answer. Exit 1 if anything did.
    Diff(diff::Arguments),
    /// Print a page that draws every item as its data have it: outlines, origin, ports and holes.
    Preview(preview::Arguments),
    /// Turn a catalogue into another form: JSON file, folder of CSV tables, .xlsx workbook.
    Convert {
        /// The catalogue as it is.
        from: String,
        /// Where it goes; `-` prints JSON.
        to: String,
        /// Write over what is there.
        #[arg(long)]
        force: bool,
        /// The language that problems are told in.
        #[command(flatten)]
        language: LanguageArgument,
    },
    /// Write a workbook or a folder of CSV tables for a new catalogue: headings, what each column holds, an example.
    Template {
        /// An .xlsx workbook, or a folder for CSV tables.
        to: String,
        /// The units it is to be kept in: metric or us.
        #[arg(long, default_value = "metric", value_parser = fitup_cli::judge::units)]
        units: Units,
    },
    /// Print the JSON Schema of the catalogue format.
    Schema,
}

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match arguments.task {
        Task::Figure { name, file } => figure_task(&name, &file),
        Task::Check { files, format, language } => check_task(&language.words(), &files, format),
        Task::Judge(asked) => judge::run(&asked, read_bytes).and_then(|(text, code)| print_text(&text).map(|()| code)),
        Task::Identify(asked) => identify::run(&asked).and_then(|(text, code)| print_text(&text).map(|()| code)),
        Task::Sets(asked) => sets::run(&asked, read_bytes).and_then(|(text, code)| print_text(&text).map(|()| code)),
        Task::Lists(asked) => lists::run(&asked, read_bytes).and_then(|(text, code)| print_text(&text).map(|()| code)),
        Task::Matrix(asked) => matrix_task(&asked),
        Task::Preview(asked) => {
            let words = asked.reader.words();
            open_catalogue(&words, &asked.catalogue)
                .and_then(|catalogue| print_text(&preview::page(&words, &catalogue)))
                .map(|()| ExitCode::SUCCESS)
        }
        Task::Coverage(asked) => coverage_task(&asked),
        Task::Diff(asked) => diff_task(&asked),
        Task::Convert { from, to, force, language } => convert_task(&language.words(), &from, &to, force),
        Task::Template { to, units } => form::write_template(&to, template_units(units)).map(|()| ExitCode::SUCCESS),
        Task::Schema => print(&fitup_catalogue::schema()).map(|()| ExitCode::SUCCESS),
    };
    done.unwrap_or_else(|failure| {
        eprintln!("fitup: {failure}");
        ExitCode::from(2)
    })
}

const fn template_units(units: Units) -> TemplateUnits {
    match units {
        Units::Metric => TemplateUnits::Metric,
        Units::Us => TemplateUnits::Us,
    }
}

fn figure_task(name: &str, file: &str) -> Result<ExitCode, String> {
    let compute = figure::find(name).map_err(|unknown| unknown.to_string())?;
    let answers = figure::answers(compute, &read(file)?).map_err(|failure| format!("{file}: {failure}"))?;
    let failed = answers.iter().filter(|answer| answer.outcome.is_err()).count();
    print(&figure::to_json(&answers))?;
    if failed == 0 {
        return Ok(ExitCode::SUCCESS);
    }
    eprintln!("fitup: {failed} of {} cases could not be computed", answers.len());
    Ok(ExitCode::from(1))
}

fn check_task(words: &Words, files: &[String], format: Format) -> Result<ExitCode, String> {
    let (mut data, mut any) = (Vec::new(), false);
    for file in files {
        let found = form::read(file)?;
        any |= !found.problems.is_empty();
        if format == Format::Json && files.len() > 1 {
            data.push(problems_data(words, file, &found.problems));
        } else {
            print_text(&problems_text(words, file, found.text.as_deref(), &found.problems, format))?;
        }
    }
    if !data.is_empty() {
        print(&data.into())?;
    }
    Ok(ExitCode::from(u8::from(any)))
}

fn convert_task(words: &Words, from: &str, to: &str, force: bool) -> Result<ExitCode, String> {
    let found = form::read(from)?;
    let Some(catalogue) = found.file else {
        print_text(&problems_text(words, from, found.text.as_deref(), &found.problems, Format::Full))?;
        return Ok(ExitCode::from(1));
    };
    if !found.problems.is_empty() {
        eprint!("{}", problems_text(words, from, found.text.as_deref(), &found.problems, Format::Short));
    }
    if to == "-" {
        print_text(&fitup_catalogue::write(&catalogue))?;
    } else {
        form::write_file(to, &catalogue, found.sheets.as_deref(), force)?;
    }
    Ok(ExitCode::SUCCESS)
}

/// How often a long task says how far it is.
const PROGRESS: Duration = Duration::from_secs(2);

fn matrix_task(asked: &matrix::Arguments) -> Result<ExitCode, String> {
    let words = asked.reader.words();
    let desk = Desk::new(open_catalogue(&words, &asked.catalogue)?);
    let told = Mutex::new(Instant::now());
    let cells = matrix::cells(&desk, &words, |progress| {
        let mut told = told.lock().unwrap_or_else(PoisonError::into_inner);
        if told.elapsed() >= PROGRESS {
            *told = Instant::now();
            eprintln!("fitup: {}", matrix::progress_text(&words, progress));
        }
    });
    print_text(&matrix::text(&desk, &words, &cells, asked.format))?;
    Ok(ExitCode::SUCCESS)
}

fn coverage_task(asked: &coverage::Arguments) -> Result<ExitCode, String> {
    let words = asked.reader.words();
    let (file, catalogue) = open_records(&words, &asked.catalogue)?;
    let found = coverage::coverage(&Desk::new(catalogue), &file, &words);
    if asked.json {
        print(&coverage::data(&found))?;
    } else {
        print_text(&coverage::text(&words, &found))?;
    }
    Ok(ExitCode::from(u8::from(!found.is_whole())))
}

fn diff_task(asked: &diff::Arguments) -> Result<ExitCode, String> {
    let words = asked.reader.words();
    let (before, was) = open_records(&words, &asked.before)?;
    let (after, is) = open_records(&words, &asked.after)?;
    let (was, is) = (Desk::new(was), Desk::new(is));
    let found = diff::difference(
        &diff::Edition { file: &before, desk: &was },
        &diff::Edition { file: &after, desk: &is },
        &words,
    );
    if asked.json {
        print(&diff::data(&found))?;
    } else {
        print_text(&diff::text(&words, &found))?;
    }
    Ok(ExitCode::from(u8::from(found != diff::Difference::default())))
}

fn read(file: &str) -> Result<String, String> {
    String::from_utf8(read_bytes(file)?).map_err(|error| format!("{file}: {error}; give a file in UTF-8"))
}

fn read_bytes(file: &str) -> Result<Vec<u8>, String> {
    let mut bytes = Vec::new();
    if file == "-" {
        std::io::stdin().read_to_end(&mut bytes).map_err(|error| format!("standard input: {error}"))?;
    } else {
        bytes = std::fs::read(file).map_err(|error| format!("{file}: {error}; give a JSON file or -"))?;
    }
    Ok(bytes)
}

fn print(value: &serde_json::Value) -> Result<(), String> {
    print_text(&format!("{value:#}\n"))
}

fn print_text(text: &str) -> Result<(), String> {
    // A reader that closes early (such as `head`) is no failure of ours.
    match std::io::stdout().lock().write_all(text.as_bytes()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => Err(format!("standard output: {error}")),
        _ => Ok(()),
    }
}
