//! From the tree to typed records, with every fault on the way.
//!
//! Decoding never stops: a value that is wrong is reported, and one of its sort is invented in
//! its place, so that the next fault can be found. What is invented is remembered, and no check
//! speaks of it.

mod choice;
mod define;
mod record;
mod value;

use bumpalo::Bump;
use fitup_core::order;

use crate::problem::{Code, Problem};
use crate::shortened::shortened;
use crate::tree::{self, Kind, Node, locate};

pub use crate::at::At;
pub use crate::report::Report;
pub use choice::{chosen, word};
pub use record::{Need, Record, bare, nullable, optional, required};
pub use value::{Filled, not_number};

/// What a value of the file decodes into.
pub trait Decode: Sized {
    /// The value; if it is wrong, the report says so and an invented one stands in its place.
    fn decode(node: Node<'_>, at: At<'_>, report: &mut Report) -> Self;

    /// A value that stands in the place of one that is wrong.
    fn invented() -> Self;
}

/// Reads a JSON text as a value.
///
/// # Errors
/// Everything that is wrong with it, with its place.
pub fn read<T: Decode>(text: &str) -> Result<T, Vec<Problem>> {
    read_text(text, |tree, report| Some(T::decode(tree, At::TOP, report)))
}

/// Reads a JSON text as a record that is in one `format`.
///
/// # Errors
/// Everything that is wrong with it, with its place; of another format only that it is.
pub fn read_format<T: Decode>(text: &str, format: u32) -> Result<T, Vec<Problem>> {
    read_text(text, |tree, report| in_format(tree, format, report))
}

fn read_text<T>(text: &str, decode: impl Fn(Node<'_>, &mut Report) -> Option<T>) -> Result<T, Vec<Problem>> {
    let memory = Bump::new();
    let mut report = Report::new();
    let read = match tree::parse(text, &memory) {
        Ok(tree) => decode(tree, &mut report),
        Err(problem) => {
            report.add(*problem);
            None
        }
    };
    match (read, report.into_problems()) {
        (Some(read), problems) if problems.is_empty() => Ok(read),
        (_, mut problems) => {
            order::sort_by_key(&mut problems, |problem| problem.at);
            locate(text, &mut problems);
            Err(problems)
        }
    }
}

/// Decodes a record that is in one `format`; every fault goes into the report. `None` when it is no
/// record or in another format, which is then all that is said of it.
pub fn in_format<T: Decode>(tree: Node<'_>, format: u32, report: &mut Report) -> Option<T> {
    is_format(tree, format, report).then(|| T::decode(tree, At::TOP, report))
}

/// Whether the file is a record of this format; says so if not.
fn is_format(tree: Node<'_>, newest: u32, report: &mut Report) -> bool {
    if !matches!(tree.kind, Kind::Record(_)) {
        wrong_type(tree, "record", At::TOP, report);
        return false;
    }
    let ours = newest.to_string();
    let format = tree.field("format");
    let problem = match format.map(|node| node.kind) {
        None => Problem::new(Code::MissingFormat, ""),
        Some(Kind::Number(number)) if number == ours => return true,
        Some(Kind::Number(number)) if number.parse::<u32>().is_ok_and(|number| number > newest) => {
            Problem::new(Code::NewerFormat, "format").with("found", number)
        }
        Some(Kind::Number(number)) => Problem::new(Code::UnknownFormat, "format").with("found", shortened(number)),
        Some(_) => {
            let found = format.map_or("null", |node| node.word());
            Problem::new(Code::UnknownFormat, "format").with("found", found)
        }
    };
    let problem = Problem { at: Some(format.unwrap_or(tree).at), ..problem };
    report.add(problem.with("expected", ours));
    false
}

/// Reports a value of the wrong sort.
pub fn wrong_type(node: Node<'_>, expected: &str, at: At<'_>, report: &mut Report) {
    report.fault(Code::WrongType, at, node.at, || {
        vec![("found", node.word().to_owned()), ("expected", expected.to_owned())]
    });
}
