//! The `fitup` command.
//!
//! Answers go to the standard output, chatter to the standard error. Exit 0: clean; 1: findings,
//! or a case that could not be computed; 2: could not run.

use std::io::{Read, Write};
use std::process::ExitCode;

use clap::{Parser, Subcommand};
use fitup_cli::figure;

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
}

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match arguments.task {
        Task::Figure { name, file } => figure_task(&name, &file),
    };
    done.unwrap_or_else(|failure| {
        eprintln!("fitup: {failure}");
        ExitCode::from(2)
    })
}

fn figure_task(name: &str, file: &str) -> Result<ExitCode, String> {
    let compute = figure::find(name).map_err(|unknown| unknown.to_string())?;
    let cases = figure::cases(&read(file)?).map_err(|failure| format!("{file}: {failure}"))?;
    let answers: Vec<figure::Answer> = cases.iter().map(|case| figure::answer(compute, case)).collect();
    let failed = answers.iter().filter(|answer| answer.outcome.is_err()).count();
    print(&figure::to_json(&answers))?;
    if failed == 0 {
        return Ok(ExitCode::SUCCESS);
    }
    eprintln!("fitup: {failed} of {} cases could not be computed", answers.len());
    Ok(ExitCode::from(1))
}

fn read(file: &str) -> Result<String, String> {
    let mut text = String::new();
    if file == "-" {
        std::io::stdin().read_to_string(&mut text).map_err(|error| format!("standard input: {error}"))?;
    } else {
        text = std::fs::read_to_string(file).map_err(|error| format!("{file}: {error}; give a JSON file or -"))?;
    }
    Ok(text)
}

fn print(value: &serde_json::Value) -> Result<(), String> {
    let mut out = std::io::stdout().lock();
    let told = serde_json::to_writer_pretty(&mut out, value).map_err(std::io::Error::from);
    // A reader that closes early (such as `head`) is no failure of ours.
    match told.and_then(|()| writeln!(out)) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => Err(format!("standard output: {error}")),
        _ => Ok(()),
    }
}
