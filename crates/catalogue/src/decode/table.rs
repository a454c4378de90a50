//! Row by row through the file.

use serde::de::DeserializeOwned;

use super::fault::{Fault, Spot, Wrong};
use super::value::Source;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::tree::{Entry, Kind, Node};
use crate::wire::{CatalogueFile, FORMAT, guide, part};

/// Most faults written down in one row before it is given up. No source: more say nothing new.
const FAULTS_A_ROW: usize = 60;

/// A decoded file. Where a value was wrong, something of its sort stands in its place.
pub struct Decoded {
    /// The file.
    pub file: CatalogueFile,
    /// Paths of the values that were wrong.
    pub invented: Vec<String>,
}

/// Decodes a file; every fault goes into the report. `None` when the file is of another format
/// or no catalogue at all.
pub fn decode(tree: &mut Node<'_>, report: &mut Report) -> Option<Decoded> {
    if !is_ours(tree, report) {
        return None;
    }
    let mut invented = Vec::new();
    macro_rules! take {
        ($( $table:ident: $row:ty, $path:literal, $($field:literal).+; )+) => { $(
            let $table: Vec<$row> = rows(tree, $path, &[$($field),+], report, &mut invented);
        )+ };
    }
    take! {
        machines: crate::wire::machine::Machine, "machines", "machines";
        frames: crate::wire::frame::Frame, "frames", "frames";
        seats: crate::wire::seat::Seat, "seats", "seats";
        implements: crate::wire::implement::Implement, "implements", "implements";
        adapters: crate::wire::adapter::Adapter, "adapters", "adapters";
        parts: part::Part, "parts", "parts";
        parts_lists: part::PartsListRow, "parts_lists", "parts_lists";
        sets: guide::GuideSet, "guide.sets", "guide"."sets";
        trailers: crate::wire::trailer::Trailer, "trailers", "trailers";
        sites: crate::wire::site::Site, "sites", "sites";
    }
    // The rows are decoded; the rest of the file is decoded around empty tables.
    let held = hold_tables(tree);
    let mut file: CatalogueFile = value(tree, "", report, &mut invented);
    give_back(tree, held);
    if let Some(guide) = &mut file.guide {
        guide.sets = sets;
    }
    let file =
        CatalogueFile { machines, frames, seats, implements, adapters, parts, parts_lists, trailers, sites, ..file };
    Some(Decoded { file, invented })
}

/// Whether the file is a catalogue of this format; says so if not.
fn is_ours(tree: &Node<'_>, report: &mut Report) -> bool {
    if !matches!(tree.kind, Kind::Record(_)) {
        report.add(Problem::new(Code::WrongType, "").with("found", tree.word()).with("expected", "record"));
        return false;
    }
    let ours = FORMAT.to_string();
    let problem = match tree.field("format").map(|node| &node.kind) {
        None => Problem::new(Code::MissingFormat, ""),
        Some(Kind::Number(number)) if *number == ours => return true,
        Some(Kind::Number(number)) if number.parse::<u32>().is_ok_and(|number| number > FORMAT) => {
            Problem::new(Code::NewerFormat, "format").with("found", number.as_ref())
        }
        Some(Kind::Number(number)) => Problem::new(Code::UnknownFormat, "format").with("found", shortened(number)),
        Some(_) => {
            let found = tree.field("format").map_or("null", Node::word);
            Problem::new(Code::UnknownFormat, "format").with("found", found)
        }
    };
    report.add(problem.with("expected", ours));
    false
}

/// The rows of the table that `fields` lead to. A table that is no list is left for the decoding
/// of the file around it.
fn rows<T: DeserializeOwned>(
    tree: &mut Node<'_>,
    path: &str,
    fields: &[&str],
    report: &mut Report,
    invented: &mut Vec<String>,
) -> Vec<T> {
    let table = fields.iter().try_fold(tree, |node, field| node.field_mut(field));
    let Some(Kind::List(nodes)) = table.map(|table| &mut table.kind) else { return Vec::new() };
    nodes.iter_mut().enumerate().map(|(index, node)| row(node, path, index, report, invented)).collect()
}

fn row<T: DeserializeOwned>(
    node: &mut Node<'_>,
    path: &str,
    index: usize,
    report: &mut Report,
    invented: &mut Vec<String>,
) -> T {
    // Nearly every row is good: the path is only written where it is not.
    match T::deserialize(Source(node)) {
        Ok(row) => row,
        Err(_) => value(node, &format!("{path}[{index}]"), report, invented),
    }
}

/// The value of a node, whatever it takes: after each fault the value at fault is replaced.
fn value<T: DeserializeOwned>(node: &mut Node<'_>, path: &str, report: &mut Report, invented: &mut Vec<String>) -> T {
    for _ in 0..FAULTS_A_ROW {
        match T::deserialize(Source(node)) {
            Ok(value) => return value,
            Err(fault) => {
                let problem = mend(node, path, &fault, report);
                invented.push(match fault.0.wrong {
                    Wrong::MissingField(name) => joined(&problem.path, name),
                    _ => problem.path.clone(),
                });
                report.add(problem);
                if report.is_full() {
                    break;
                }
            }
        }
    }
    invented.push(path.to_owned());
    let anything = Node { at: node.at, kind: Kind::Anything };
    T::deserialize(Source(&anything)).expect("a node that stands for anything decodes into every wire type")
}

/// The problem of a fault; the tree is changed so that the fault does not come again.
fn mend(root: &mut Node<'_>, path: &str, fault: &Fault, report: &mut Report) -> Problem {
    let mut path = path.to_owned();
    let mut node = root;
    for &step in fault.0.way.iter().rev() {
        node = match &mut node.kind {
            Kind::List(nodes) => {
                path = format!("{path}[{step}]");
                &mut nodes[step]
            }
            Kind::Record(entries) => {
                path = joined(&path, &entries[step].name);
                &mut entries[step].value
            }
            _ => unreachable!("a way only leads through lists and records"),
        };
    }
    let (code, args) = told(&fault.0.wrong, report);
    let mut at = node.at;
    match (&fault.0.wrong, fault.0.spot, &mut node.kind) {
        (Wrong::MissingField(name), _, Kind::Record(entries)) => {
            let value = Node { at, kind: Kind::Anything };
            entries.push(Entry { at, name: (*name).into(), value });
        }
        (Wrong::UnknownField { .. } | Wrong::DuplicateField(_), Spot::Entry(index), Kind::Record(entries)) => {
            let entry = entries.remove(index);
            at = entry.at;
            path = joined(&path, &shortened(&entry.name));
        }
        (_, Spot::Entry(index), Kind::Record(entries)) => {
            at = entries[index].at;
            node.kind = Kind::Anything;
        }
        (_, _, kind) => *kind = Kind::Anything,
    }
    Problem { at: Some(at), args, ..Problem::new(code, path) }
}

fn joined(path: &str, field: &str) -> String {
    if path.is_empty() { field.to_owned() } else { format!("{path}.{field}") }
}

type Args = Vec<(&'static str, String)>;

fn told(wrong: &Wrong, report: &mut Report) -> (Code, Args) {
    match wrong {
        Wrong::Type { found, expected } => {
            (Code::WrongType, vec![("found", found.clone()), ("expected", expected.clone())])
        }
        Wrong::UnknownField { name, known } => (Code::UnknownField, choice(name, known, report)),
        Wrong::MissingField(name) => (Code::MissingField, vec![("field", (*name).into())]),
        Wrong::DuplicateField(name) => (Code::DuplicateField, vec![("field", (*name).into())]),
        Wrong::UnknownWord { word, known } => (Code::UnknownWord, choice(word, known, report)),
        Wrong::NotExactlyOne { found, known } => {
            (Code::NotExactlyOne, vec![("found", found.join(", ")), ("expected", known.join(", "))])
        }
        Wrong::NotFinite(found) => (Code::NumberNotFinite, vec![("found", found.clone())]),
        Wrong::OutOfRange { found, least, greatest } => (
            Code::NumberOutOfRange,
            vec![("found", found.clone()), ("least", least.clone()), ("greatest", greatest.clone())],
        ),
        Wrong::NotWhole(found) => (Code::NumberNotWhole, vec![("found", found.clone())]),
        Wrong::UnsafeCharacter(c) => (Code::UnsafeCharacter, vec![("found", format!("U+{:04X}", u32::from(*c)))]),
        Wrong::TooLong(length) => (
            Code::TextTooLong,
            vec![("found", length.to_string()), ("greatest", super::value::GREATEST_TEXT.to_string())],
        ),
    }
}

fn choice(found: &str, known: &'static [&'static str], report: &mut Report) -> Args {
    let mut args = vec![("found", found.to_owned()), ("expected", known.join(", "))];
    args.extend(report.nearest(found, known.iter().copied()).map(|near| ("suggestion", near)));
    args
}

/// The lists taken out of the tree, by the fields that lead to them.
type Held<'t> = Vec<(&'static [&'static str], Vec<Node<'t>>)>;

const TABLES: [&[&str]; 10] = [
    &["machines"],
    &["frames"],
    &["seats"],
    &["implements"],
    &["adapters"],
    &["parts"],
    &["parts_lists"],
    &["guide", "sets"],
    &["trailers"],
    &["sites"],
];

fn hold_tables<'t>(tree: &mut Node<'t>) -> Held<'t> {
    let mut held = Held::new();
    for fields in TABLES {
        if let Some(nodes) = list_at(tree, fields) {
            held.push((fields, std::mem::take(nodes)));
        }
    }
    held
}

fn give_back<'t>(tree: &mut Node<'t>, held: Held<'t>) {
    for (fields, rows) in held {
        if let Some(nodes) = list_at(tree, fields) {
            *nodes = rows;
        }
    }
}

fn list_at<'n, 't>(tree: &'n mut Node<'t>, fields: &[&str]) -> Option<&'n mut Vec<Node<'t>>> {
    let node = fields.iter().try_fold(tree, |node, field| node.field_mut(field))?;
    match &mut node.kind {
        Kind::List(nodes) => Some(nodes),
        _ => None,
    }
}
