//! Which column of a sheet holds what, by its headings, and what a sheet has that no heading speaks of.

use std::collections::{BTreeMap, BTreeSet};

use super::cell::is_own;
use super::layout::{Column, Table};
use super::sheet::letters;
use super::to_file::Reader;
use super::{Cell, Sheet};
use crate::problem::Code;
use crate::shortened::shortened;

/// The heading of a column that is the keeper's own, besides those that begin with `#`.
pub const REMARKS: &str = "remarks";

/// A sheet with the columns that its headings name.
pub struct Matched {
    /// Which sheet.
    pub index: usize,
    /// Where each key column stands.
    pub keys: Vec<Option<usize>>,
    /// The table's columns and where they stand.
    pub columns: Vec<(Column, usize)>,
}

impl Matched {
    /// Whether nothing stands in the row that would be read.
    pub fn is_blank(&self, row: &[Cell]) -> bool {
        let keys = self.keys.iter().flatten();
        keys.chain(self.columns.iter().map(|(_, at)| at)).all(|&at| row.get(at).is_none_or(Cell::is_blank))
    }

    /// The heading of the column that stands here.
    fn heading(&self, table: &Table, at: usize) -> Option<String> {
        let key = self.keys.iter().position(|key| *key == Some(at)).map(|nth| table.keys[nth].to_owned());
        key.or_else(|| self.columns.iter().find(|(_, column)| *column == at).map(|(column, _)| column.heading()))
    }
}

/// A heading and the unit that stands behind it: `track [mm]`.
pub fn heading_and_unit(text: &str) -> (&str, Option<&str>) {
    let text = text.trim();
    let with_unit = text.strip_suffix(']').and_then(|text| text.rsplit_once('['));
    with_unit.map_or((text, None), |(heading, unit)| (heading.trim_end(), Some(unit.trim())))
}

/// Whether a row is the keeper's own: its first cell says so.
pub fn is_own_row(row: &[Cell]) -> bool {
    matches!(row.first(), Some(Cell::Text(text)) if is_own(text))
}

impl Reader<'_> {
    /// Matches a sheet's headings with a table's columns. What no column of the table is, is told.
    pub fn matched(&mut self, index: usize, sheet: &Sheet, table: &Table) -> Matched {
        let headings = sheet.rows.first().map_or(&[][..], Vec::as_slice);
        let mut matched = Matched { index, keys: vec![None; table.keys.len()], columns: Vec::new() };
        let mut nameless: BTreeSet<usize> = BTreeSet::new();
        for (at, cell) in headings.iter().enumerate() {
            let text = cell.text();
            let (heading, unit) = heading_and_unit(&text);
            if heading.is_empty() {
                nameless.insert(at);
                continue;
            }
            if is_own(heading) || heading.eq_ignore_ascii_case(REMARKS) {
                continue;
            }
            let place = self.place(index, 1, heading);
            if let Some(key) = table.keys.iter().position(|key| *key == heading) {
                if matched.keys[key].is_some() {
                    self.report.fault_at(Code::DuplicateField, place, vec![("field", shortened(heading))]);
                } else {
                    matched.keys[key] = Some(at);
                }
            } else if let Some(column) = table.columns.iter().find(|column| column.heading() == heading) {
                self.unit(column, unit, place);
                if matched.columns.iter().any(|(known, _)| known.path == column.path) {
                    self.report.fault_at(Code::DuplicateField, place, vec![("field", shortened(heading))]);
                } else {
                    matched.columns.push((column.clone(), at));
                }
            } else {
                let known =
                    table.columns.iter().map(Column::heading).chain(table.keys.iter().map(|key| (*key).to_owned()));
                let known: Vec<String> = known.collect();
                let suggestion = self.report.nearest(heading, known.iter().map(String::as_str));
                self.problem(Code::UnknownColumn, place, heading, suggestion);
                self.follows.columns.insert((index, heading.to_owned()));
            }
        }
        for (key, found) in table.keys.iter().zip(&matched.keys) {
            if found.is_none() && !sheet.rows.is_empty() {
                let place = self.place(index, 1, "");
                self.report.fault_at(Code::MissingField, place, vec![("field", (*key).to_owned())]);
            }
        }
        self.merged(sheet, table, &matched, &mut nameless);
        self.nameless(sheet, &matched, headings.len(), &nameless);
        self.hidden(sheet, &matched);
        matched
    }

    /// Tells of a unit behind a heading that is not the header's, once for all headings of the quantity.
    fn unit(&mut self, column: &Column, unit: Option<&str>, place: u32) {
        let (Some(unit), Some(quantity)) = (unit, column.quantity.as_deref()) else { return };
        let Some(expected) = self.units.get(quantity).filter(|expected| *expected != unit) else { return };
        if !self.follows.units.insert(quantity.to_owned()) {
            return;
        }
        let args = vec![("found", shortened(unit)), ("expected", shortened(expected))];
        self.report.fault_at(Code::UnitInHeading, place, args);
    }

    /// Tells of cells that are merged where something is read: all but the first of them are empty.
    fn merged(&mut self, sheet: &Sheet, table: &Table, matched: &Matched, nameless: &mut BTreeSet<usize>) {
        for merged in &sheet.merged {
            let rows = merged.first.0 as usize..=(merged.last.0 as usize).min(sheet.rows.len().saturating_sub(1));
            let is_read = |nth: usize| {
                sheet.rows.get(nth).is_some_and(|row| nth == 0 || !(is_own_row(row) || row.iter().all(Cell::is_blank)))
            };
            if !rows.clone().any(is_read) {
                continue;
            }
            let at = self.place(matched.index, merged.first.0 + 1, &letters(merged.first.1));
            self.report.fault_at(Code::MergedCells, at, vec![("found", merged.range())]);
            for column in merged.first.1 as usize..=(merged.last.1 as usize).min(merged.first.1 as usize + 511) {
                if merged.first.0 == 0 {
                    nameless.remove(&column);
                }
                let Some(heading) = matched.heading(table, column) else { continue };
                for row in rows.clone() {
                    let row = u32::try_from(row + 1).unwrap_or(u32::MAX);
                    self.follows.cells.insert((matched.index, row, heading.clone()));
                }
            }
        }
    }

    /// Tells of columns in which something stands under no heading.
    fn nameless(&mut self, sheet: &Sheet, matched: &Matched, headings: usize, nameless: &BTreeSet<usize>) {
        let mut first: BTreeMap<usize, (u32, String)> = BTreeMap::new();
        for (nth, row) in (1..).zip(&sheet.rows).skip(1) {
            if is_own_row(row) {
                continue;
            }
            for (at, cell) in row.iter().enumerate() {
                let is_merged =
                    sheet.merged.iter().any(|it| it.first.0 == 0 && (it.first.1..=it.last.1).contains(&column(at)));
                if (nameless.contains(&at) || at >= headings) && !is_merged && !cell.is_blank() {
                    first.entry(at).or_insert_with(|| (nth, cell.text()));
                }
            }
        }
        for (at, (row, text)) in first {
            let place = self.place(matched.index, row, &letters(column(at)));
            self.report.fault_at(Code::NoHeading, place, vec![("found", shortened(&text))]);
        }
    }

    /// Tells of rows that are hidden and read.
    fn hidden(&mut self, sheet: &Sheet, matched: &Matched) {
        let is_read = |row: &&u32| {
            let cells = sheet.rows.get((**row as usize).saturating_sub(1));
            **row > 1 && cells.is_some_and(|cells| !is_own_row(cells) && !matched.is_blank(cells))
        };
        let rows: Vec<u32> = sheet.hidden.iter().filter(is_read).copied().collect();
        for run in rows.chunk_by(|a, b| a + 1 == *b) {
            let (Some(first), Some(last)) = (run.first(), run.last()) else { continue };
            let at = self.place(matched.index, *first, "");
            let args = vec![("first", first.to_string()), ("last", last.to_string())];
            self.report.fault_at(Code::HiddenRows, at, args);
        }
    }
}

fn column(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_heading_may_have_its_unit_behind_it() {
        assert_eq!(heading_and_unit(" rear.track [mm] "), ("rear.track", Some("mm")));
        assert_eq!(heading_and_unit("rear.track"), ("rear.track", None));
        assert_eq!(heading_and_unit("]"), ("]", None));
    }
}
