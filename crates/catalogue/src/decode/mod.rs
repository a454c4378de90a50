//! From the tree to the wire types, with every fault on the way.
//!
//! Decoding never stops: a value that is wrong is reported, and one of its sort is invented in
//! its place, so that the next fault can be found. What is invented is remembered, and no check
//! speaks of it.

mod choice;
mod record;
mod value;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::tree::{Kind, Node};
use crate::wire::{CatalogueFile, FORMAT};

pub use choice::{chosen, word};
pub use record::{Need, Record, optional, required};

/// What a value of the file decodes into.
pub trait Decode: Sized {
    /// The value; if it is wrong, the report says so and an invented one stands in its place.
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self;

    /// A value that stands in the place of one that is wrong.
    fn invented() -> Self;
}

/// Decodes a file; every fault goes into the report. `None` when the file is of another format
/// or no catalogue at all.
pub fn decode(tree: Node<'_>, report: &mut Report) -> Option<CatalogueFile> {
    is_ours(tree, report).then(|| CatalogueFile::decode(tree, At::TOP, report))
}

/// Whether the file is a catalogue of this format; says so if not.
fn is_ours(tree: Node<'_>, report: &mut Report) -> bool {
    if !matches!(tree.kind, Kind::Record(_)) {
        report.add(Problem::new(Code::WrongType, "").with("found", tree.word()).with("expected", "record"));
        return false;
    }
    let ours = FORMAT.to_string();
    let format = tree.field("format");
    let problem = match format.map(|node| node.kind) {
        None => Problem::new(Code::MissingFormat, ""),
        Some(Kind::Number(number)) if number == ours => return true,
        Some(Kind::Number(number)) if number.parse::<u32>().is_ok_and(|number| number > FORMAT) => {
            Problem::new(Code::NewerFormat, "format").with("found", number)
        }
        Some(Kind::Number(number)) => Problem::new(Code::UnknownFormat, "format").with("found", shortened(number)),
        Some(_) => {
            let found = format.map_or("null", |node| node.word());
            Problem::new(Code::UnknownFormat, "format").with("found", found)
        }
    };
    report.add(problem.with("expected", ours));
    false
}

/// Reports a value of the wrong sort.
pub fn wrong_type(node: Node<'_>, expected: &str, at: At<'_>, report: &mut Report) {
    report.fault(Code::WrongType, at, node.at, || {
        vec![("found", node.word().to_owned()), ("expected", expected.to_owned())]
    });
}
