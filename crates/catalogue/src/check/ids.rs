//! Ids: spelled as ids are, and each given once.

use std::collections::BTreeMap;

use std::fmt::Write as _;

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
use crate::wire::guide::{ANY, WITHOUT};

/// The ids of the file; of two that are alike the first counts.
#[derive(Debug)]
pub struct Known<'f> {
    /// Ids of rows.
    pub rows: BTreeMap<&'f str, Row>,
    /// Part numbers.
    pub parts: BTreeMap<&'f str, usize>,
}

/// A row: its table and its index there.
pub type Row = (&'static str, usize);

/// Checks the ids of all rows.
pub fn ids<'f>(file: &'f CatalogueFile, report: &mut Report) -> Known<'f> {
    let mut all: Vec<(&str, Row)> = Vec::new();
    macro_rules! tables {
        ($($table:ident),+) => { $(
            all.extend(file.$table.iter().enumerate().map(|(index, row)| (&*row.id, (stringify!($table), index))));
        )+ };
    }
    tables!(machines, frames, seats, implements, adapters, equipment, trailers, sites);
    let known = Known {
        rows: all.iter().copied().rev().collect(),
        parts: file.parts.iter().enumerate().rev().map(|(index, row)| (&*row.number, index)).collect(),
    };
    for (id, row) in all {
        one(id, row, &known, report);
    }
    let parts = At::top("parts");
    for (index, row) in file.parts.iter().enumerate() {
        let at = parts.index(index);
        super::rows::not_blank(&row.number, at.field("number"), report);
        if let Some(&first) = known.parts.get(&*row.number)
            && first != index
        {
            let problem = Problem::new(Code::DuplicatePart, at.field("number")).with("found", shortened(&row.number));
            report.add(problem.with("other", parts.index(first)));
        }
    }
    known
}

fn one(id: &str, row: Row, known: &Known<'_>, report: &mut Report) {
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
    if let Some(&first) = known.rows.get(id)
        && first != row
    {
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
