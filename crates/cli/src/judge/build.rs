//! The build that is asked about: from a file, a list of builds, or options.

use std::fmt::Write as _;

use fitup_catalogue::{BUILD_FORMAT, BuildFile, Unresolved, UnresolvedIn};
use fitup_core::build::Build;
use fitup_core::item::{Catalogue, ItemRef};
use serde_json::Value;

use super::Arguments;
use crate::check::english;

/// The build of the arguments against a catalogue.
///
/// # Errors
/// The file cannot be read, is no build, holds no build of the name, or names what the catalogue
/// does not have: everything of it, each with what is near.
pub fn build_of(
    arguments: &Arguments,
    catalogue: &Catalogue,
    read: impl Fn(&str) -> Result<Vec<u8>, String>,
) -> Result<Build, String> {
    let (place, file) = match &arguments.build {
        Some(path) => {
            (path.as_str(), with_options(from_file(path, arguments.named.as_deref(), &read(path)?)?, arguments))
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

fn from_file(path: &str, name: Option<&str>, bytes: &[u8]) -> Result<BuildFile, String> {
    let value: Value = serde_json::from_slice(bytes).map_err(|error| format!("{path}: {error}"))?;
    let list = value.as_array().or_else(|| value.get("builds").and_then(Value::as_array));
    let build = match (list, name) {
        (None, None) => &value,
        (None, Some(name)) => return Err(format!("{path} is one build and no list; leave out --build {name}")),
        (Some(list), None) => {
            return Err(format!("{path} is a list of builds; say which with --build: {}", names(list).join(", ")));
        }
        (Some(list), Some(name)) => {
            let entry = list.iter().find(|entry| name_of(entry) == Some(name));
            let entry = entry.ok_or_else(|| {
                let near = near(name, names(list)).map(|near| format!("; did you mean \"{near}\"?"));
                format!(
                    "{path} has no build called \"{name}\"{} It has: {}",
                    near.unwrap_or_else(|| ".".to_owned()),
                    names(list).join(", ")
                )
            })?;
            entry.get("build").unwrap_or(entry)
        }
    };
    if let Some(format) = build.get("format").and_then(Value::as_u64)
        && format > u64::from(BUILD_FORMAT)
    {
        return Err(format!(
            "{path}: the build is in format {format}, newer than format {BUILD_FORMAT} that this program reads; use a newer version"
        ));
    }
    BuildFile::read(&build.to_string()).map_err(|problems| {
        let words = english();
        let said = problems.iter().map(|problem| match problem.path.as_str() {
            "" => format!("{path}: {}", words.problem(problem).sentence),
            at => format!("{path} ({at}): {}", words.problem(problem).sentence),
        });
        said.collect::<Vec<_>>().join("\nfitup: ")
    })
}

fn name_of(entry: &Value) -> Option<&str> {
    entry.get("name").or_else(|| entry.get("id")).and_then(Value::as_str)
}

fn names(list: &[Value]) -> Vec<&str> {
    list.iter().filter_map(name_of).collect()
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
        UnresolvedIn::Looked => {
            return format!("what was looked for on \"{text}\" belongs to nothing in this catalogue");
        }
        UnresolvedIn::Serial => return format!("the serial number of \"{text}\" belongs to nothing in this catalogue"),
        UnresolvedIn::OnHand => return format!("\"{text}\" is on hand, but not in this catalogue"),
    };
    match near(text, ids.clone()) {
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
fn near<'n>(given: &str, names: Vec<&'n str>) -> Option<&'n str> {
    names
        .into_iter()
        .map(|name| (strsim::damerau_levenshtein(&given.to_lowercase(), name), name))
        .filter(|(steps, name)| steps * 3 <= name.len())
        .min()
        .map(|(_, name)| name)
}
