//! From tables to the file, every cell with its place.

use std::collections::BTreeMap;

use bumpalo::Bump;
use fitup_core::item::Catalogue;

use super::cell::{members, unguarded};
use super::layout::{Column, ITEMS, Place, Sort, Table, tables};
use super::{Cell, Sheet};
use crate::problem::{Code, Position, Problem, Severity};
use crate::read::{Depth, examine};
use crate::report::Report;
use crate::shortened::shortened;
use crate::tree::{Entry, Kind, Node};
use crate::wire::{CatalogueFile, FORMAT};

/// Reads tables as a catalogue file is read, guide and all: the file and the catalogue if no
/// problem is an error, and every problem with its table, row and column.
pub fn read_sheets(sheets: &[Sheet]) -> (Option<(CatalogueFile, Catalogue)>, Vec<Problem>) {
    let memory = Bump::new();
    let mut reader = Reader { memory: &memory, cells: vec![(0, 1, String::new())], report: Report::new() };
    let tree = reader.file(sheets);
    let mut problems = reader.report.into_problems();
    let (read, found) = examine(tree, Depth::Close);
    problems.extend(found);
    problems.sort_by_key(|problem| problem.at);
    for problem in &mut problems {
        if let Some((sheet, row, column)) = problem.at.and_then(|at| reader.cells.get(at as usize)) {
            let table = sheets.get(*sheet).map_or_else(String::new, |sheet| sheet.shown.clone());
            problem.position = Some(Position::Cell { table, row: *row, column: column.clone() });
        }
    }
    let is_usable = problems.iter().all(|problem| problem.code.severity() == Severity::Warning);
    (read.filter(|_| is_usable), problems)
}

/// A value on its way into the tree.
#[derive(Debug)]
struct Draft<'t> {
    at: u32,
    held: Held<'t>,
}

#[derive(Debug)]
enum Held<'t> {
    Leaf(Kind<'t>),
    List(Vec<Draft<'t>>),
    Record(Vec<(String, Draft<'t>)>),
}

impl<'t> Draft<'t> {
    const fn record(at: u32) -> Self {
        Self { at, held: Held::Record(Vec::new()) }
    }

    /// The value of a field, made if it is not there yet.
    fn field(&mut self, name: &str, at: u32) -> &mut Self {
        if !matches!(self.held, Held::Record(_)) {
            self.held = Held::Record(Vec::new());
        }
        let Held::Record(fields) = &mut self.held else { unreachable!("it was made a record") };
        let index = fields.iter().position(|(field, _)| field == name).unwrap_or_else(|| {
            fields.push((name.to_owned(), Self::record(at)));
            fields.len() - 1
        });
        &mut fields[index].1
    }

    fn along(&mut self, path: &[String], at: u32) -> &mut Self {
        path.iter().fold(self, |draft, name| draft.field(name, at))
    }

    fn existing(&mut self, path: &[String]) -> Option<&mut Self> {
        path.iter().try_fold(self, |draft, name| match &mut draft.held {
            Held::Record(fields) => fields.iter_mut().find(|(field, _)| field == name).map(|(_, value)| value),
            _ => None,
        })
    }

    fn push(&mut self, member: Self) {
        if let Held::List(list) = &mut self.held {
            list.push(member);
        } else {
            self.held = Held::List(vec![member]);
        }
    }

    fn frozen(self, memory: &'t Bump) -> Node<'t> {
        let kind = match self.held {
            Held::Leaf(kind) => kind,
            Held::List(list) => {
                let nodes: Vec<Node> = list.into_iter().map(|draft| draft.frozen(memory)).collect();
                Kind::List(memory.alloc_slice_copy(&nodes))
            }
            Held::Record(fields) => {
                let entry = |(name, value): (String, Self)| {
                    let value = value.frozen(memory);
                    Entry { at: value.at, name: memory.alloc_str(&name), value }
                };
                let entries: Vec<Entry> = fields.into_iter().map(entry).collect();
                Kind::Record(memory.alloc_slice_copy(&entries))
            }
        };
        Node { at: self.at, kind }
    }
}

/// Where an item is: its table and its row there.
type ItemAt = (&'static str, usize);

struct Reader<'t> {
    memory: &'t Bump,
    /// Sheet, row and column of every place in the tree.
    cells: Vec<(usize, u32, String)>,
    report: Report,
}

/// A sheet with the columns that its headings name.
struct Matched<'s> {
    index: usize,
    sheet: &'s Sheet,
    /// Where each key column stands.
    keys: Vec<Option<usize>>,
    /// The table's columns and where they stand.
    columns: Vec<(Column, usize)>,
}

impl<'t> Reader<'t> {
    fn file(&mut self, sheets: &[Sheet]) -> Node<'t> {
        let tables = tables();
        self.unknown_tables(sheets, &tables);
        let mut file = Draft::record(0);
        let format = self.memory.alloc_str(&FORMAT.to_string());
        file.field("format", 0).held = Held::Leaf(Kind::Number(format));
        let mut items: BTreeMap<String, ItemAt> = BTreeMap::new();
        let mut ports: BTreeMap<(String, String), (ItemAt, usize)> = BTreeMap::new();
        for table in &tables {
            let Some((index, sheet)) = sheets.iter().enumerate().find(|(_, sheet)| sheet.name == table.name) else {
                if table.place == Place::Top {
                    self.report.add(Problem::new(Code::MissingTable, "").with("table", table.name));
                }
                continue;
            };
            let matched = self.matched(index, sheet, table);
            let mut count = 0;
            for (at, row) in (1..).zip(&sheet.rows) {
                let is_note = matches!(row.first(), Some(Cell::Text(text)) if text.starts_with('#'));
                if at == 1 || is_note || row.iter().all(Cell::is_blank) {
                    continue;
                }
                let record = self.row(&matched, at, row);
                self.put(&mut file, table, &matched, (at, row, count), record, &mut items, &mut ports);
                count += 1;
            }
        }
        file.frozen(self.memory)
    }

    fn unknown_tables(&mut self, sheets: &[Sheet], tables: &[Table]) {
        for (index, sheet) in sheets.iter().enumerate() {
            if tables.iter().any(|table| table.name == sheet.name) {
                continue;
            }
            let suggestion = self.report.nearest(&sheet.name, tables.iter().map(|table| table.name));
            let at = self.place(index, 1, "");
            self.problem(Code::UnknownTable, at, &sheet.name, suggestion);
        }
    }

    #[expect(clippy::too_many_arguments, reason = "a row with its place, and the rows it may belong to")]
    fn put(
        &mut self,
        file: &mut Draft<'t>,
        table: &Table,
        matched: &Matched<'_>,
        (at, row, count): (u32, &[Cell], usize),
        record: Draft<'t>,
        items: &mut BTreeMap<String, ItemAt>,
        ports: &mut BTreeMap<(String, String), (ItemAt, usize)>,
    ) {
        let key = |nth: usize| -> String {
            let cell = matched.keys.get(nth).copied().flatten().and_then(|column| row.get(column));
            cell.map(|cell| unguarded(&cell.text()).to_owned()).unwrap_or_default()
        };
        match table.place {
            Place::Top => {
                // One row; what a second one says stands beside the first and is told by the fields.
                if let (Held::Record(fields), Held::Record(own)) = (&mut file.held, record.held) {
                    fields.extend(own);
                }
            }
            Place::List(path) => {
                if let Some(table) = ITEMS.iter().find(|name| **name == table.name) {
                    items.entry(id_of(&record)).or_insert((table, count));
                }
                let path: Vec<String> = path.iter().map(|field| (*field).to_owned()).collect();
                file.along(&path, record.at).push(record);
            }
            Place::OfItem(field) => {
                let item = key(0);
                let Some(&found) = items.get(&item) else { return self.unknown_key(matched, at, 0, &item, items) };
                let Some(draft) = item_draft(file, found) else { return };
                let list = draft.field(field, record.at);
                if field == "ports" {
                    let nth = if let Held::List(list) = &list.held { list.len() } else { 0 };
                    ports.entry((item, name_of(&record))).or_insert((found, nth));
                }
                list.push(record);
            }
            Place::OfPort(paths) => {
                let (item, port) = (key(0), key(1));
                let Some(&(found, nth)) = ports.get(&(item.clone(), port.clone())) else {
                    if items.contains_key(&item) {
                        let of_item = ports.keys().filter(|(of, _)| *of == item).map(|(_, port)| port.as_str());
                        let suggestion = self.report.nearest(&port, of_item);
                        let place = self.place(matched.index, at, "port");
                        return self.problem(Code::UnknownReference, place, &port, suggestion);
                    }
                    return self.unknown_key(matched, at, 0, &item, items);
                };
                let Some(Held::List(list)) = item_draft(file, found).map(|item| &mut item.field("ports", 0).held)
                else {
                    return;
                };
                let Some(port) = list.get_mut(nth) else { return };
                let path =
                    paths.iter().find(|path| has(port, &path[..2])).or(paths.first()).copied().unwrap_or_default();
                let path: Vec<String> = path.iter().map(|field| (*field).to_owned()).collect();
                port.along(&path, record.at).push(record);
            }
        }
    }

    fn unknown_key(&mut self, matched: &Matched<'_>, at: u32, nth: usize, key: &str, items: &BTreeMap<String, ItemAt>) {
        let suggestion = self.report.nearest(key, items.keys().map(String::as_str));
        let place = self.place(matched.index, at, if nth == 0 { "item" } else { "port" });
        self.problem(Code::UnknownReference, place, key, suggestion);
    }

    fn matched<'s>(&mut self, index: usize, sheet: &'s Sheet, table: &Table) -> Matched<'s> {
        let empty = Vec::new();
        let headings = sheet.rows.first().unwrap_or(&empty);
        let mut matched = Matched { index, sheet, keys: vec![None; table.keys.len()], columns: Vec::new() };
        for (at, cell) in headings.iter().enumerate() {
            let heading = cell.text().trim().to_owned();
            if heading.is_empty() {
                continue;
            }
            let place = self.place(index, 1, &heading);
            if let Some(key) = table.keys.iter().position(|key| *key == heading) {
                matched.keys[key] = Some(at);
            } else if let Some(column) = table.columns.iter().find(|column| column.heading() == heading) {
                if matched.columns.iter().any(|(known, _)| known.path == column.path) {
                    self.report.fault_at(Code::DuplicateField, place, vec![("field", shortened(&heading))]);
                } else {
                    matched.columns.push((column.clone(), at));
                }
            } else {
                let known: Vec<String> = table
                    .keys
                    .iter()
                    .map(|key| (*key).to_owned())
                    .chain(table.columns.iter().map(Column::heading))
                    .collect();
                let suggestion = self.report.nearest(&heading, known.iter().map(String::as_str));
                let mut args = vec![("found", shortened(&heading)), ("expected", known.join(", "))];
                args.extend(suggestion.map(|near| ("suggestion", near)));
                self.report.fault_at(Code::UnknownField, place, args);
            }
        }
        for (key, found) in table.keys.iter().zip(&matched.keys) {
            if found.is_none() {
                let place = self.place(index, 1, "");
                self.report.fault_at(Code::MissingField, place, vec![("field", (*key).to_owned())]);
            }
        }
        matched
    }

    fn row(&mut self, matched: &Matched<'_>, at: u32, row: &[Cell]) -> Draft<'t> {
        let mut record = Draft::record(self.place(matched.index, at, ""));
        for (column, index) in &matched.columns {
            let cell = row.get(*index).unwrap_or(&Cell::Empty);
            let is_required_text = column.required && column.sort == Sort::Text && column.path.len() == 1;
            let is_filled = if column.sort == Sort::Text { *cell != Cell::Empty } else { !cell.is_blank() };
            if !is_filled && !is_required_text {
                continue;
            }
            let place = self.place(matched.index, at, &column.heading());
            match column.sort {
                Sort::Choice => {}
                Sort::Stated => {
                    let held = self.held(Sort::Number, cell, place);
                    let value = record.along(&column.path, place).field("value", place);
                    (value.at, value.held) = (place, held);
                }
                sort => {
                    let held = self.held(sort, cell, place);
                    let value = record.along(&column.path, place);
                    (value.at, value.held) = (place, held);
                }
            }
        }
        for (column, index) in &matched.columns {
            match column.sort {
                Sort::Choice => {
                    let cell = row.get(*index).unwrap_or(&Cell::Empty);
                    if !cell.is_blank() {
                        let place = self.place(matched.index, at, &column.heading());
                        self.choose(&mut record, column, cell.text().trim(), place);
                    }
                }
                Sort::Stated => shorten_stated(&mut record, &column.path),
                _ => {}
            }
        }
        let _ = matched.sheet;
        record
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

    fn held(&mut self, sort: Sort, cell: &Cell, place: u32) -> Held<'t> {
        let memory = self.memory;
        let text = |text: &str| Kind::Text(memory.alloc_str(text));
        let number = |written: &str| {
            let written = written.trim();
            let is_number =
                written.parse::<f64>().is_ok() && written.bytes().all(|b| b.is_ascii_digit() || b"+-.eE".contains(&b));
            if is_number { Kind::Number(memory.alloc_str(written)) } else { text(written) }
        };
        let held = cell.text();
        Held::Leaf(match sort {
            Sort::Text => text(unguarded(&held)),
            Sort::Number | Sort::Stated => number(&held),
            Sort::Flag => match held.trim().to_lowercase().as_str() {
                "yes" | "true" => Kind::Flag(true),
                "no" | "false" => Kind::Flag(false),
                _ => text(&held),
            },
            Sort::Word | Sort::Choice => text(held.trim()),
            Sort::Texts | Sort::Numbers => {
                let member = |member: String| {
                    let kind = if sort == Sort::Texts { text(&member) } else { number(&member) };
                    Draft { at: place, held: Held::Leaf(kind) }
                };
                return Held::List(members(unguarded(&held)).into_iter().map(member).collect());
            }
        })
    }

    fn place(&mut self, sheet: usize, row: u32, column: &str) -> u32 {
        self.cells.push((sheet, row, column.to_owned()));
        u32::try_from(self.cells.len() - 1).unwrap_or(u32::MAX)
    }

    fn problem(&mut self, code: Code, at: u32, found: &str, suggestion: Option<String>) {
        let mut args = vec![("found", shortened(found))];
        if code == Code::UnknownReference {
            args.push(("table", "items".to_owned()));
        }
        args.extend(suggestion.map(|near| ("suggestion", near)));
        self.report.fault_at(code, at, args);
    }
}

/// A stated number without half range and source is the number alone.
fn shorten_stated(record: &mut Draft<'_>, path: &[String]) {
    let Some(stated) = record.existing(path) else { return };
    if let Held::Record(fields) = &mut stated.held
        && fields.len() == 1
        && let Some((name, value)) = fields.pop()
    {
        if name == "value" {
            *stated = value;
        } else {
            fields.push((name, value));
        }
    }
}

fn item_draft<'d, 't>(file: &'d mut Draft<'t>, (table, index): ItemAt) -> Option<&'d mut Draft<'t>> {
    match &mut file.field(table, 0).held {
        Held::List(rows) => rows.get_mut(index),
        _ => None,
    }
}

fn leaf_text(record: &Draft<'_>, field: &str) -> String {
    let Held::Record(fields) = &record.held else { return String::new() };
    let value = fields.iter().find(|(name, _)| name == field).map(|(_, value)| &value.held);
    if let Some(Held::Leaf(Kind::Text(text))) = value { (*text).to_owned() } else { String::new() }
}

fn id_of(record: &Draft<'_>) -> String {
    leaf_text(record, "id")
}

fn name_of(record: &Draft<'_>) -> String {
    leaf_text(record, "name")
}

fn has(draft: &mut Draft<'_>, path: &[&str]) -> bool {
    let path: Vec<String> = path.iter().map(|field| (*field).to_owned()).collect();
    draft.existing(&path).is_some()
}
