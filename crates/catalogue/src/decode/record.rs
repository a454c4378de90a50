//! Records, field by field.

use super::{Decode, wrong_type};
use crate::at::At;
use crate::problem::Code;
use crate::report::Report;
use crate::shortened::shortened;
use crate::tree::{Entry, Kind, Node};

/// Whether a record can be without a field.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Need {
    /// It has to have it.
    Required,
    /// It may be left out.
    Optional,
}

/// What stands in the place of a field that has to be there until it is decoded.
pub fn required<T: Decode>() -> T {
    T::invented()
}

/// What stands in the place of a field that is left out.
pub fn optional<T: Default>() -> T {
    T::default()
}

/// What stands in the place of a field that is left out or `null`.
pub fn nullable<T: Default>() -> T {
    T::default()
}

/// The name in the file of a field: `type` of `r#type`.
pub const fn bare(field: &'static str) -> &'static str {
    match field.as_bytes() {
        [b'r', b'#', ..] => field.split_at(2).1,
        _ => field,
    }
}

/// A record being decoded. Fields are decoded into their places: handed back one by one, each
/// would be copied twice.
pub struct Record<'t, 'r> {
    at: At<'r>,
    report: &'r mut Report,
    entries: Option<&'t [Entry<'t>]>,
    start: u32,
    /// Where the next field is looked for first: most files keep the order of the format.
    next: usize,
}

impl<'t, 'r> Record<'t, 'r> {
    /// The record of a value. Fields that it does not have or that stand twice are reported.
    pub fn open(node: Node<'t>, at: At<'r>, fields: &[&'static str], report: &'r mut Report) -> Self {
        let Kind::Record(entries) = node.kind else {
            wrong_type(node, "record", at, report);
            return Self { at, report, entries: None, start: node.at, next: 0 };
        };
        let mut next = 0;
        for (index, entry) in entries.iter().enumerate() {
            match from(next, fields.len()).find(|&field| fields[field] == entry.name) {
                Some(field) => {
                    next = field + 1;
                    if entries[..index].iter().any(|earlier| earlier.name == entry.name) {
                        doubled(entry, at, report);
                    }
                }
                None => unknown(entry, at, fields, report),
            }
        }
        Self { at, report, entries: Some(entries), start: node.at, next: 0 }
    }

    /// A field that has to be there, put in its place.
    pub fn required<T: Decode>(&mut self, name: &'static str, place: &mut T) {
        match self.take(name) {
            Some(value) => *place = T::decode(value, self.at.field(name), self.report),
            None => self.missing(name),
        }
    }

    /// A field that may be left out, put in its place if it is there.
    pub fn optional<T: Decode>(&mut self, name: &'static str, place: &mut T) {
        if let Some(value) = self.take(name) {
            *place = T::decode(value, self.at.field(name), self.report);
        }
    }

    /// A field that may be left out or `null`, put in its place if it is neither.
    pub fn nullable<T: Decode>(&mut self, name: &'static str, place: &mut T) {
        if let Some(value) = self.take(name).filter(|value| value.kind != Kind::Null) {
            *place = T::decode(value, self.at.field(name), self.report);
        }
    }

    fn take(&mut self, name: &str) -> Option<Node<'t>> {
        let entries = self.entries?;
        let found = from(self.next, entries.len()).find(|&index| entries[index].name == name)?;
        self.next = found + 1;
        // Of two of the same name the first counts, wherever the search began.
        let first = entries[..found].iter().position(|entry| entry.name == name).unwrap_or(found);
        Some(entries[first].value)
    }

    fn missing(&mut self, name: &'static str) {
        if self.entries.is_some() {
            self.report.fault(Code::MissingField, self.at, self.start, || vec![("field", name.to_owned())]);
            self.report.invented(self.at.field(name));
        }
    }
}

/// Every index below `count`, from `start` on and round.
fn from(start: usize, count: usize) -> impl Iterator<Item = usize> {
    (start.min(count)..count).chain(0..start.min(count))
}

/// Reports a field that stands twice.
pub fn doubled(entry: &Entry<'_>, at: At<'_>, report: &mut Report) {
    report.fault(Code::DuplicateField, at.field(entry.name), entry.at, || vec![("field", entry.name.to_owned())]);
}

fn unknown(entry: &Entry<'_>, at: At<'_>, fields: &[&str], report: &mut Report) {
    let name = shortened(entry.name);
    let suggestion = report.nearest(entry.name, fields.iter().copied());
    report.fault(Code::UnknownField, at.field(&name), entry.at, || {
        let mut args = vec![("found", name.clone()), ("expected", fields.join(", "))];
        args.extend(suggestion.map(|near| ("suggestion", near)));
        args
    });
}
