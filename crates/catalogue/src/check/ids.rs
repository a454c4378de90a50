//! Ids: spelled as ids are, and each given once.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
use crate::wire::guide::{ANY, WITHOUT};

/// The ids of the file, by table.
#[derive(Debug, Default)]
pub struct Known<'f> {
    /// Table of each item, by id.
    pub items: BTreeMap<&'f str, &'static str>,
    /// Part numbers.
    pub parts: BTreeMap<&'f str, usize>,
}

/// Checks the ids of all rows.
pub fn ids<'f>(file: &'f CatalogueFile, report: &mut Report) -> Known<'f> {
    let mut known = Known::default();
    let mut seen = BTreeMap::new();
    macro_rules! tables {
        ($($table:ident),+) => { $(
            for (index, row) in file.$table.iter().enumerate() {
                one(&row.id, (stringify!($table), index), &mut seen, report);
            }
        )+ };
    }
    tables!(machines, frames, seats, implements, adapters, trailers, sites);
    known.items.extend(file.machines.iter().map(|row| (row.id.as_str(), "machines")));
    known.items.extend(file.frames.iter().map(|row| (row.id.as_str(), "frames")));
    known.items.extend(file.seats.iter().map(|row| (row.id.as_str(), "seats")));
    known.items.extend(file.implements.iter().map(|row| (row.id.as_str(), "implements")));
    known.items.extend(file.adapters.iter().map(|row| (row.id.as_str(), "adapters")));

    let parts = At::top("parts");
    for (index, row) in file.parts.iter().enumerate() {
        let at = parts.index(index);
        super::rows::not_blank(&row.number, at.field("number"), report);
        if let Some(first) = known.parts.insert(&row.number, index) {
            known.parts.insert(&row.number, first);
            let problem = Problem::new(Code::DuplicatePart, at.field("number")).with("found", shortened(&row.number));
            report.add(problem.with("other", parts.index(first)));
        }
    }
    known
}

/// A row: its table and its index there.
type Row = (&'static str, usize);

fn one<'f>(id: &'f str, row: Row, seen: &mut BTreeMap<&'f str, Row>, report: &mut Report) {
    let table = At::top(row.0);
    let at = table.index(row.1);
    let place = at.field("id");
    if !is_id(id) {
        let problem = Problem::new(Code::BadId, place).with("found", shortened(id));
        report.add(match spelled_as_id(id) {
            Some(suggestion) => problem.with("suggestion", suggestion),
            None => problem,
        });
    }
    if id == ANY || id == WITHOUT {
        report.add(Problem::new(Code::ReservedId, place).with("found", id));
    }
    let first = *seen.entry(id).or_insert(row);
    if first != row {
        let problem = Problem::new(Code::DuplicateId, place).with("found", shortened(id));
        report.add(problem.with("other", At::top(first.0).index(first.1)));
    }
}

fn is_id(id: &str) -> bool {
    let ends = |end: Option<char>| end.is_some_and(|c| c.is_ascii_lowercase() || c.is_ascii_digit());
    id.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
        && ends(id.chars().next())
        && ends(id.chars().next_back())
}

/// What the id would be in an id's letters, if anything is left of it.
fn spelled_as_id(id: &str) -> Option<String> {
    let mut spelled = String::new();
    for c in id.chars().take(80) {
        if c.is_ascii_alphanumeric() {
            let _ = write!(spelled, "{}", c.to_ascii_lowercase());
        } else if !spelled.ends_with('-') {
            spelled.push('-');
        }
    }
    let spelled = spelled.trim_matches('-');
    is_id(spelled).then(|| spelled.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_id_is_lower_case_words_and_hyphens() {
        for id in ["a", "small-open", "arm-2", "2x"] {
            assert!(is_id(id), "{id}");
        }
        for id in ["", "-a", "a-", "A", "a b", "ä", "a_b", "javascript:x"] {
            assert!(!is_id(id), "{id}");
        }
        assert_eq!(spelled_as_id("Small Open (2)"), Some("small-open-2".into()));
        assert_eq!(spelled_as_id("!!"), None);
    }
}
