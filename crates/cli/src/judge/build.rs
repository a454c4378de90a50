//! The build that is asked about: from a file, a list of builds, or options.

use std::fmt::Write as _;

use fitup_catalogue::decode::{Report, in_format};
use fitup_catalogue::tree::{self, Bump, Kind, Node};
use fitup_catalogue::{BUILD_FORMAT, BuildFile, Problem, Unresolved, UnresolvedIn};
use fitup_core::build::Build;
use fitup_core::item::{Catalogue, ItemRef};
use fitup_words::Words;

use super::Arguments;
use super::said::say;
use crate::check::place;

/// The build of the arguments against a catalogue.
///
/// # Errors
/// The file cannot be read, is no build, holds no build of the name, or names what the catalogue
/// does not have: everything of it, each with what is near.
pub fn build_of(
    words: &Words,
    arguments: &Arguments,
    catalogue: &Catalogue,
    read: impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<Build, String> {
    let (place, mut file) = match &arguments.build {
        Some(path) => {
            (path.as_str(), with_options(from_file(words, path, arguments.named.as_deref(), &read(path)?)?, arguments))
        }
        None if arguments.named.is_some() => {
            return Err("--build names a build of a list; give the list's file after the catalogue".to_owned());
        }
        None => ("the options", with_options(BuildFile::default(), arguments)),
    };
    if file == BuildFile::default() {
        return Err(
            "no build is given; give a build's JSON file, or --machine, --frame, --seat and --implement".to_owned()
        );
    }
    say(&mut file, &arguments.said, catalogue, words)?;
    let (build, unresolved) = file.resolve(catalogue);
    if unresolved.is_empty() {
        return Ok(build);
    }
    let lines: Vec<String> =
        unresolved.iter().map(|it| format!("{place}: {}", unresolved_text(catalogue, it))).collect();
    Err(lines.join("\nfitup: "))
}

/// Options stand over what a file says.
fn with_options(mut file: BuildFile, arguments: &Arguments) -> BuildFile {
    for (option, field) in [
        (&arguments.machine, &mut file.machine),
        (&arguments.seat, &mut file.seat),
        (&arguments.implement, &mut file.implement),
        (&arguments.trailer, &mut file.trailer),
        (&arguments.site, &mut file.site),
    ] {
        if option.is_some() {
            field.clone_from(option);
        }
    }
    match arguments.frame.as_deref() {
        Some("hitch") => (file.frame, file.hitch) = (None, true),
        Some(frame) => (file.frame, file.hitch) = (Some(frame.to_owned()), false),
        None => {}
    }
    file.adapters.extend(arguments.adapters.iter().cloned());
    file
}

fn from_file(words: &Words, path: &str, name: Option<&str>, bytes: &[u8]) -> Result<BuildFile, String> {
    let text = std::str::from_utf8(bytes).map_err(|error| format!("{path}: {error}; give a file in UTF-8"))?;
    let told = |mut problems: Vec<Problem>| {
        tree::locate(text, &mut problems);
        problems.iter().map(|problem| problem_text(words, path, problem)).collect::<Vec<_>>().join("\nfitup: ")
    };
    let memory = Bump::new();
    let tree = tree::parse(text, &memory).map_err(|problem| told(vec![*problem]))?;
    let mut report = Report::new();
    let file = in_format(named(path, name, tree)?, BUILD_FORMAT, &mut report);
    let problems = report.into_problems();
    file.filter(|_| problems.is_empty()).ok_or_else(|| told(problems))
}

fn problem_text(words: &Words, path: &str, problem: &Problem) -> String {
    let told = words.problem(problem);
    let key = if problem.path.is_empty() { String::new() } else { format!(" ({})", problem.path) };
    format!("{path}:{}{key}: {} {}", place(problem), told.sentence, told.mend)
}

/// The build of the name in a list of them, or the one that the file is.
fn named<'t>(path: &str, name: Option<&str>, tree: Node<'t>) -> Result<Node<'t>, String> {
    let Kind::List(list) = tree.field("builds").unwrap_or(tree).kind else {
        return match name {
            None => Ok(tree),
            Some(name) => Err(format!("{path} is one build and no list; leave out --build {name}")),
        };
    };
    let names: Vec<&str> = list.iter().filter_map(|&entry| name_of(entry)).collect();
    let Some(name) = name else {
        return Err(format!("{path} is a list of builds; say which with --build: {}", names.join(", ")));
    };
    let entry = list.iter().find(|&&entry| name_of(entry) == Some(name)).ok_or_else(|| {
        let near = near(name, &names).map_or_else(|| ".".to_owned(), |near| format!("; did you mean \"{near}\"?"));
        format!("{path} has no build called \"{name}\"{near} It has: {}", names.join(", "))
    })?;
    Ok(entry.field("build").unwrap_or(*entry))
}

fn name_of(entry: Node<'_>) -> Option<&str> {
    entry.field("name").or_else(|| entry.field("id")).and_then(Node::text)
}

fn unresolved_text(catalogue: &Catalogue, unresolved: &Unresolved) -> String {
    let text = &unresolved.text;
    let of_table = |of: fn(&ItemRef) -> bool| -> Vec<&str> {
        catalogue.items().filter(of).map(|item| catalogue.body(item).id.as_str()).collect()
    };
    let (table, ids) = match unresolved.place {
        UnresolvedIn::Machine => ("machine", of_table(|item| matches!(item, ItemRef::Machine(_)))),
        UnresolvedIn::Frame => ("frame", of_table(|item| matches!(item, ItemRef::Frame(_)))),
        UnresolvedIn::Seat => ("seat", of_table(|item| matches!(item, ItemRef::Seat(_)))),
        UnresolvedIn::Implement => ("implement", of_table(|item| matches!(item, ItemRef::Implement(_)))),
        UnresolvedIn::Adapter => ("adapter", of_table(|item| matches!(item, ItemRef::Adapter(_)))),
        UnresolvedIn::Trailer => ("trailer", catalogue.trailers.iter().map(|row| row.id.as_str()).collect()),
        UnresolvedIn::Site => ("site", catalogue.sites.iter().map(|row| row.id.as_str()).collect()),
        UnresolvedIn::Change => return format!("the change \"{text}\" cannot be made in this catalogue"),
        UnresolvedIn::Pose => return format!("the arm's pose has an angle of {text}, beyond what its link allows"),
        UnresolvedIn::Measured => return format!("the measurement of \"{text}\" belongs to nothing in this catalogue"),
        UnresolvedIn::MeasuredValue => {
            return format!(
                "the measurement {text} cannot be: a size is above zero and at most 100 m; give what the tool shows"
            );
        }
        UnresolvedIn::MeasuredHalfRange => {
            return format!(
                "the measurement {text} cannot be: it may be off by zero or more, and by no more than the size itself"
            );
        }
        UnresolvedIn::NumberRead => {
            return format!("the part number read at \"{text}\" is none, or there is no such port in this catalogue");
        }
        UnresolvedIn::Looked => {
            return format!("what was looked for on \"{text}\" belongs to nothing in this catalogue");
        }
        UnresolvedIn::Serial => return format!("the serial number of \"{text}\" belongs to nothing in this catalogue"),
        UnresolvedIn::OnHand => return format!("\"{text}\" is on hand, but not in this catalogue"),
    };
    match near(text, &ids) {
        Some(near) => format!("there is no {table} \"{text}\" in this catalogue; did you mean \"{near}\"?"),
        None => format!("there is no {table} \"{text}\" in this catalogue; it has: {}", shown(&ids)),
    }
}

/// Ids up to a number that still can be read; a large catalogue has thousands.
const SHOWN: usize = 12;

fn shown(ids: &[&str]) -> String {
    let mut text = ids.iter().take(SHOWN).copied().collect::<Vec<_>>().join(", ");
    if ids.len() > SHOWN {
        let _ = write!(text, " and {} more", ids.len() - SHOWN);
    }
    text
}

/// The name nearest to the one that was given, if one is near.
fn near(given: &str, names: &[&str]) -> Option<String> {
    Report::new().nearest(given, names.iter().copied())
}
