//! From tables to the file, every cell with its place.

use std::collections::{BTreeMap, BTreeSet};

use bumpalo::Bump;
use fitup_core::item::Catalogue;

use super::cell::{is_own, members, unguarded};
use super::draft::{Draft, Held, shorten_stated};
use super::follows::Follows;
use super::headings::{Matched, heading_and_unit, is_own_row};
use super::layout::{Column, ITEMS, Place, Sort, Table, tables};
use super::{Cell, Sheet};
use crate::lower::is_unit;
use crate::problem::{Code, Position, Problem, Severity};
use crate::read::{Depth, examine};
use crate::report::Report;
use crate::shortened::shortened;
use crate::tree::{Kind, Node};
use crate::wire::{CatalogueFile, FORMAT};

/// Reads tables as a catalogue file is read, guide and all: the file and the catalogue if no
/// problem is an error, and every problem with its table, row and column.
pub fn read_sheets(sheets: &[Sheet]) -> (Option<(CatalogueFile, Catalogue)>, Vec<Problem>) {
    let memory = Bump::new();
    let mut reader = Reader {
        memory: &memory,
        cells: vec![(0, 1, String::new())],
        report: Report::new(),
        follows: Follows::default(),
        units: units(sheets),
    };
    let tree = reader.file(sheets);
    let mut problems = reader.report.into_problems();
    let (read, found) = examine(tree, Depth::Close);
    let cell = |at: Option<u32>| at.and_then(|at| reader.cells.get(at as usize));
    problems.extend(found.into_iter().filter(|problem| !reader.follows.explains(problem, cell(problem.at))));
    problems.sort_by_key(|problem| problem.at);
    let position = |at: Option<u32>| {
        let (sheet, row, column) = cell(at)?;
        let table = sheets.get(*sheet).map_or_else(String::new, |sheet| sheet.shown.clone());
        Some(Position::Cell { table, row: *row, column: column.clone() })
    };
    for problem in &mut problems {
        problem.position = position(problem.at);
        problem.other = position(problem.other_at);
    }
    let is_usable = problems.iter().all(|problem| problem.code.severity() == Severity::Warning);
    (read.filter(|_| is_usable), problems)
}

/// The header's unit of each quantity, as far as the table of the catalogue itself states it.
fn units(sheets: &[Sheet]) -> BTreeMap<String, String> {
    let Some(sheet) = sheets.iter().find(|sheet| is_table(sheet, "catalogue")) else { return BTreeMap::new() };
    let is_read = |row: &&Vec<Cell>| !is_own_row(row) && !row.iter().all(Cell::is_blank);
    let (Some(headings), Some(row)) = (sheet.rows.first(), sheet.rows.iter().skip(1).find(is_read)) else {
        return BTreeMap::new();
    };
    let unit = |(heading, cell): (&Cell, &Cell)| {
        let text = heading.text();
        let quantity = heading_and_unit(&text).0.strip_prefix("units.")?.to_owned();
        Some((quantity, cell.text().trim().to_owned())).filter(|(quantity, unit)| is_unit(quantity, unit))
    };
    headings.iter().zip(row).filter_map(unit).collect()
}

/// Whether a sheet is that of a table. Spreadsheets take names that differ in capitals for one.
fn is_table(sheet: &Sheet, name: &str) -> bool {
    sheet.name.trim().eq_ignore_ascii_case(name)
}

/// Where an item is: its table and its row there.
type ItemAt = (&'static str, usize);

/// Rows that others belong to.
#[derive(Default)]
struct Rows {
    items: BTreeMap<String, ItemAt>,
    ports: BTreeMap<(String, String), (ItemAt, usize)>,
    /// Ports whose own row names no item that is there.
    astray: BTreeSet<String>,
    /// What was told of not being there, each once a sheet.
    told: BTreeSet<(usize, String, String)>,
}

/// What reads the sheets.
pub struct Reader<'t> {
    memory: &'t Bump,
    /// Sheet, row and column of every place in the tree.
    cells: Vec<(usize, u32, String)>,
    /// What is wrong with the sheets themselves.
    pub report: Report,
    /// What follows from it.
    pub follows: Follows,
    /// The header's unit of each quantity.
    pub units: BTreeMap<String, String>,
}

impl<'t> Reader<'t> {
    fn file(&mut self, sheets: &[Sheet]) -> Node<'t> {
        let tables = tables();
        self.unknown_tables(sheets, &tables);
        let mut file = Draft::record(0);
        let format = self.memory.alloc_str(&FORMAT.to_string());
        file.field("format", 0).held = Held::Leaf(Kind::Number(format));
        let mut rows = Rows::default();
        for table in &tables {
            let mut of_table = sheets.iter().enumerate().filter(|(_, sheet)| is_table(sheet, table.name));
            let Some((index, sheet)) = of_table.next() else {
                if table.place == Place::Top {
                    self.report.add(Problem::new(Code::MissingTable, "").with("table", table.name));
                }
                continue;
            };
            for (again, sheet) in of_table {
                let at = self.place(again, 1, "");
                self.problem(Code::DuplicateTable, at, &sheet.shown, None);
            }
            let matched = self.matched(index, sheet, table);
            let mut count = 0;
            for (at, row) in (1..).zip(&sheet.rows).skip(1) {
                if is_own_row(row) || matched.is_blank(row) {
                    continue;
                }
                let record = self.row(&matched, table, at, row);
                self.put(&mut file, table, &matched, (at, row, count), record, &mut rows);
                count += 1;
            }
        }
        file.frozen(self.memory)
    }

    fn unknown_tables(&mut self, sheets: &[Sheet], tables: &[Table]) {
        for (index, sheet) in sheets.iter().enumerate() {
            if is_own(&sheet.name) || tables.iter().any(|table| is_table(sheet, table.name)) {
                continue;
            }
            let suggestion = self.report.nearest(&sheet.name, tables.iter().map(|table| table.name));
            let at = self.place(index, 1, "");
            self.problem(Code::UnknownTable, at, &sheet.name, suggestion);
        }
    }

    fn put(
        &mut self,
        file: &mut Draft<'t>,
        table: &Table,
        matched: &Matched,
        (at, row, count): (u32, &[Cell], usize),
        record: Draft<'t>,
        rows: &mut Rows,
    ) {
        match table.place {
            Place::Top => {
                // One row; what a second one says stands beside the first and is told by the fields.
                if let (Held::Record(fields), Held::Record(own)) = (&mut file.held, record.held) {
                    fields.extend(own);
                }
            }
            Place::List(path) => {
                if let Some(table) = ITEMS.iter().find(|name| **name == table.name) {
                    rows.items.entry(record.leaf_text("id")).or_insert((table, count));
                }
                let path: Vec<String> = path.iter().map(|field| (*field).to_owned()).collect();
                file.along(&path, record.at).push(record);
            }
            Place::OfItem(field) => {
                let Some(item) = self.key(table, matched, at, row, 0) else { return self.follows.lose(table.name) };
                let found = rows.items.get(&item).copied();
                let Some((found, draft)) = found.and_then(|found| Some((found, item_draft(file, found)?))) else {
                    if field == "ports" {
                        rows.astray.insert(record.leaf_text("name"));
                    }
                    return self.no_item(table, matched, at, &item, rows);
                };
                let list = draft.field(field, record.at);
                if field == "ports" {
                    let nth = if let Held::List(list) = &list.held { list.len() } else { 0 };
                    rows.ports.entry((item, record.leaf_text("name"))).or_insert((found, nth));
                }
                list.push(record);
            }
            Place::OfPort(paths) => {
                let keys = [0, 1].map(|nth| self.key(table, matched, at, row, nth));
                let [Some(item), Some(port)] = keys else { return self.follows.lose(table.name) };
                let found = rows.ports.get(&(item.clone(), port.clone())).copied();
                let Some((found, nth)) = found else { return self.no_port(table, matched, at, [item, port], rows) };
                let Some(Held::List(list)) = item_draft(file, found).map(|item| &mut item.field("ports", 0).held)
                else {
                    return;
                };
                let Some(port) = list.get_mut(nth) else { return };
                let path =
                    paths.iter().find(|path| port.has(&path[..2])).or(paths.first()).copied().unwrap_or_default();
                let path: Vec<String> = path.iter().map(|field| (*field).to_owned()).collect();
                port.along(&path, record.at).push(record);
            }
        }
    }

    /// What names the row above, if what names it can be read.
    fn key(&mut self, table: &Table, matched: &Matched, at: u32, row: &[Cell], nth: usize) -> Option<String> {
        let column = matched.keys.get(nth).copied().flatten()?;
        let heading = table.keys[nth];
        if self.follows.cells.contains(&(matched.index, at, heading.to_owned())) {
            return None;
        }
        let cell = row.get(column).unwrap_or(&Cell::Empty);
        let place = self.place(matched.index, at, heading);
        if !self.is_whole(cell, place) {
            return None;
        }
        if matches!(cell, Cell::Date(_)) {
            self.problem(Code::DateInstead, place, &cell.text(), None);
            return None;
        }
        let text = cell.text();
        Some(self.trimmed(unguarded(&text), place).to_owned())
    }

    /// Tells of an item that is not there, once a sheet: what belongs to it all fails alike.
    fn no_item(&mut self, table: &Table, matched: &Matched, at: u32, item: &str, rows: &mut Rows) {
        self.follows.lose(table.name);
        if rows.told.insert((matched.index, item.to_owned(), String::new())) {
            let suggestion = self.report.nearest(item, rows.items.keys().map(String::as_str));
            let place = self.place(matched.index, at, "item");
            self.no_row(place, item, "items", suggestion);
        }
    }

    fn no_port(&mut self, table: &Table, matched: &Matched, at: u32, [item, port]: [String; 2], rows: &mut Rows) {
        if !rows.items.contains_key(&item) {
            return self.no_item(table, matched, at, &item, rows);
        }
        self.follows.lose(table.name);
        // A port that is told of itself to be nobody's is not told again by every hole of it.
        let is_new = !rows.astray.contains(&port) && rows.told.insert((matched.index, item.clone(), port.clone()));
        if is_new {
            let of_item = rows.ports.keys().filter(|(of, _)| *of == item).map(|(_, port)| port.as_str());
            let suggestion = self.report.nearest(&port, of_item);
            let place = self.place(matched.index, at, "port");
            self.no_row(place, &port, "ports", suggestion);
        }
    }

    fn row(&mut self, matched: &Matched, table: &Table, at: u32, row: &[Cell]) -> Draft<'t> {
        let mut record = Draft::record(self.place(matched.index, at, ""));
        for (column, index) in &matched.columns {
            let cell = row.get(*index).unwrap_or(&Cell::Empty);
            let is_required_text = column.required && column.sort == Sort::Text && column.path.len() == 1;
            let is_filled = if column.sort == Sort::Text { *cell != Cell::Empty } else { !cell.is_blank() };
            if !is_filled && !is_required_text {
                continue;
            }
            let heading = column.heading();
            if self.follows.cells.contains(&(matched.index, at, heading.clone())) && cell.is_blank() {
                continue;
            }
            let place = self.place(matched.index, at, &heading);
            if !self.is_whole(cell, place) || !self.is_no_date(column, cell, place) {
                self.follows.cells.insert((matched.index, at, heading));
                continue;
            }
            if column.sort == Sort::Choice {
                continue;
            }
            let Some(held) = self.held(column, table, cell, place) else {
                self.follows.cells.insert((matched.index, at, heading));
                continue;
            };
            let value = record.along(&column.path, place);
            let value = if column.sort == Sort::Stated { value.field("value", place) } else { value };
            (value.at, value.held) = (place, held);
        }
        for (column, index) in &matched.columns {
            match column.sort {
                Sort::Choice => {
                    let cell = row.get(*index).unwrap_or(&Cell::Empty);
                    let is_told = self.follows.cells.contains(&(matched.index, at, column.heading()));
                    if !cell.is_blank() && !is_told {
                        let place = self.place(matched.index, at, &column.heading());
                        self.choose(&mut record, column, cell.text().trim(), place);
                    }
                }
                Sort::Stated => shorten_stated(&mut record, &column.path),
                _ => {}
            }
        }
        record
    }

    /// Whether a cell holds what was put into it, not what a formula failed to reckon.
    fn is_whole(&mut self, cell: &Cell, place: u32) -> bool {
        match cell {
            Cell::Error(found) => self.problem(Code::CellError, place, found, None),
            Cell::Formula => self.report.fault_at(Code::FormulaWithoutValue, place, Vec::new()),
            _ => return true,
        }
        false
    }

    /// Whether a cell is no date, or one where a date may stand.
    fn is_no_date(&mut self, column: &Column, cell: &Cell, place: u32) -> bool {
        let may_stand = ["date", "edition", "note", "notice"];
        let is_wrong = matches!(cell, Cell::Date(_))
            && !(column.sort == Sort::Text
                && column.path.last().is_some_and(|name| may_stand.contains(&name.as_str())));
        if is_wrong {
            self.problem(Code::DateInstead, place, &cell.text(), None);
        }
        !is_wrong
    }

    /// Sets the word of a choice beside what the other columns say of it.
    fn choose(&mut self, record: &mut Draft<'t>, column: &Column, word: &str, place: u32) {
        let text = Held::Leaf(Kind::Text(self.memory.alloc_str(word)));
        if let Some(Draft { at, held: Held::Record(fields) }) = record.existing(&column.path) {
            *at = place;
            if !fields.iter().any(|(field, _)| field == word) {
                fields.push((word.to_owned(), Draft { at: place, held: text }));
            }
            return;
        }
        let value = record.along(&column.path, place);
        if column.with_record.iter().any(|one| one == word) {
            value.field(word, place);
            value.at = place;
        } else {
            (value.at, value.held) = (place, text);
        }
    }

    fn held(&mut self, column: &Column, table: &Table, cell: &Cell, place: u32) -> Option<Held<'t>> {
        let memory = self.memory;
        let text = |text: &str| Kind::Text(memory.alloc_str(text));
        let number = |written: &str| {
            let written = written.trim();
            // The form of a number in JSON, as far as spreadsheets write it otherwise.
            let is_number =
                written.parse::<f64>().is_ok() && written.bytes().all(|b| b.is_ascii_digit() || b"+-.eE".contains(&b));
            if is_number { Kind::Number(memory.alloc_str(written)) } else { text(written) }
        };
        let held = cell.text();
        Some(Held::Leaf(match column.sort {
            Sort::Text if is_name(table, column) => text(self.trimmed(unguarded(&held), place)),
            Sort::Text => text(unguarded(&held)),
            Sort::Number | Sort::Stated => number(&held),
            Sort::Flag => match held.trim().to_lowercase().as_str() {
                "yes" | "true" => Kind::Flag(true),
                "no" | "false" => Kind::Flag(false),
                _ => text(held.trim()),
            },
            Sort::Word | Sort::Choice => text(held.trim()),
            Sort::Texts | Sort::Numbers => {
                let written = unguarded(&held);
                let all = members(written);
                if written.contains(',') && all.iter().any(|member| member.contains(',')) && !written.contains('"') {
                    let apart = all.iter().flat_map(|member| member.split(',')).map(str::trim);
                    let apart: Vec<&str> = apart.filter(|member| !member.is_empty()).collect();
                    self.problem(Code::CommaInList, place, written, Some(apart.join("; ")));
                    return None;
                }
                let member = |member: String| {
                    let kind = if column.sort == Sort::Texts { text(&member) } else { number(&member) };
                    Draft { at: place, held: Held::Leaf(kind) }
                };
                return Some(Held::List(all.into_iter().map(member).collect()));
            }
        }))
    }

    /// A name without the blanks about it, which are told: nobody sees them, and no other row has them.
    fn trimmed<'s>(&mut self, text: &'s str, place: u32) -> &'s str {
        let trimmed = text.trim();
        if trimmed.len() < text.len() && !trimmed.is_empty() {
            self.problem(Code::BlanksAround, place, text, Some(trimmed.to_owned()));
        }
        trimmed
    }

    /// The number of a new place.
    pub fn place(&mut self, sheet: usize, row: u32, column: &str) -> u32 {
        self.cells.push((sheet, row, column.to_owned()));
        u32::try_from(self.cells.len() - 1).unwrap_or(u32::MAX)
    }

    /// Tells what was found at a place, and what was probably meant.
    pub fn problem(&mut self, code: Code, at: u32, found: &str, suggestion: Option<String>) {
        let mut args = vec![("found", shortened(found))];
        args.extend(suggestion.map(|near| ("suggestion", near)));
        self.report.fault_at(code, at, args);
    }

    fn no_row(&mut self, at: u32, found: &str, table: &str, suggestion: Option<String>) {
        let mut args = vec![("found", shortened(found)), ("table", table.to_owned())];
        args.extend(suggestion.map(|near| ("suggestion", near)));
        self.report.fault_at(Code::UnknownReference, at, args);
    }
}

/// Whether a column's texts are names that other rows repeat letter for letter.
fn is_name(table: &Table, column: &Column) -> bool {
    let names = ["id", "number", "item", "part", "machine", "frame", "seat", "implement"];
    match column.path.as_slice() {
        [one] => names.contains(&one.as_str()) || (table.name == "ports" && one == "name"),
        _ => false,
    }
}

fn item_draft<'d, 't>(file: &'d mut Draft<'t>, (table, index): ItemAt) -> Option<&'d mut Draft<'t>> {
    match &mut file.field(table, 0).held {
        Held::List(rows) => rows.get_mut(index),
        _ => None,
    }
}
