//! References: each leads to a row that is there.

use std::collections::BTreeSet;

use super::each_item;
use super::ids::{Known, Row};
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
use crate::wire::guide::{ANY, WITHOUT};

/// Checks every reference of the file.
pub fn references(file: &CatalogueFile, known: &Known<'_>, report: &mut Report) {
    each_item(file, |at, body| {
        let listed_with = at.field("listed_with");
        for (index, id) in body.listed_with.iter().enumerate() {
            item(id, None, known, listed_with.index(index), report);
            if id == body.id {
                report.add(Problem::new(Code::ListedWithItself, listed_with.index(index)));
            }
        }
        named_twice(body.listed_with, listed_with, report);
        for (index, port) in body.ports.iter().enumerate() {
            for (nth, number) in port.parts.iter().enumerate() {
                part(number, known, at.field("ports").index(index).field("parts").index(nth), report);
            }
        }
    });
    let tables = [("machines", "fitted", "equipment"), ("equipment", "machines", "machines")];
    for (table, field, meant) in tables {
        let top = At::top(table);
        let of_machines = file.machines.iter().map(|row| &row.fitted);
        let of_equipment = file.equipment.iter().map(|row| &row.machines);
        let lists: Vec<_> = if table == "machines" { of_machines.collect() } else { of_equipment.collect() };
        for (index, ids) in lists.into_iter().enumerate() {
            let at = top.index(index);
            let at = at.field(field);
            ids.iter().enumerate().for_each(|(nth, id)| item(id, Some(meant), known, at.index(nth), report));
        }
    }
    let parts = At::top("parts");
    for (index, row) in file.parts.iter().enumerate() {
        let at = parts.index(index);
        let at = at.field("replaced");
        let at = at.field("by");
        let by = row.replaced.as_ref().map_or(&[][..], |replaced| &replaced.by);
        for (nth, number) in by.iter().enumerate() {
            part(number, known, at.index(nth), report);
        }
        named_twice(by, at, report);
    }
    let lists = At::top("parts_lists");
    for (index, row) in file.parts_lists.iter().enumerate() {
        let at = lists.index(index);
        item(&row.item, None, known, at.field("item"), report);
        part(&row.part, known, at.field("part"), report);
    }
    let guide = At::top("guide");
    let sets = guide.field("sets");
    for (index, set) in file.guide.iter().flat_map(|guide| &guide.sets).enumerate() {
        let at = sets.index(index);
        let columns = [
            ("machine", &set.machine, "machines"),
            ("frame", &set.frame, "frames"),
            ("seat", &set.seat, "seats"),
            ("implement", &set.implement, "implements"),
        ];
        for (column, id, table) in columns {
            if id != ANY && id != WITHOUT {
                item(id, Some(table), known, at.field(column), report);
            }
        }
    }
}

/// Reports what a list names again.
pub fn named_twice(names: &[String], at: At<'_>, report: &mut Report) {
    let mut named: BTreeSet<&str> = BTreeSet::default();
    for (index, name) in names.iter().enumerate() {
        if !named.insert(name) {
            report.add(Problem::new(Code::NamedTwice, at.index(index)).with("found", shortened(name)));
        }
    }
}

/// An item of any table, or of the one named.
fn item(id: &str, table: Option<&'static str>, known: &Known<'_>, at: At<'_>, report: &mut Report) {
    let is_meant = |row: &Row| match table {
        Some(table) => table == row.0,
        None => !["trailers", "sites"].contains(&row.0),
    };
    let is_known = known.rows.get(id).is_some_and(is_meant);
    if is_known || report.skips() {
        return;
    }
    let of_table = known.rows.iter().filter(|(_, row)| is_meant(row));
    let suggestion = report.nearest(id, of_table.map(|(&id, _)| id));
    let problem = Problem::new(Code::UnknownReference, at).with("found", shortened(id));
    let problem = problem.with("table", table.unwrap_or("items"));
    report.add(with_suggestion(problem, suggestion));
}

fn part(number: &str, known: &Known<'_>, at: At<'_>, report: &mut Report) {
    if known.parts.contains_key(number) || report.skips() {
        return;
    }
    // Part numbers are all near one another: only one that is the same but for how it is written is meant.
    let meant = plain_number(number);
    let suggestion = known.parts.keys().find(|other| plain_number(other) == meant).map(|&other| other.to_owned());
    let problem = Problem::new(Code::UnknownPart, at).with("found", shortened(number));
    report.add(with_suggestion(problem, suggestion));
}

/// A part number without what people write now so, now so: capitals, blanks, hyphens, dots, strokes; and
/// with the digits that letters are taken for.
pub fn plain_number(number: &str) -> String {
    let kept = number.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_uppercase);
    kept.map(|c| match c {
        'O' => '0',
        'I' => '1',
        c => c,
    })
    .collect()
}

fn with_suggestion(problem: Problem, suggestion: Option<String>) -> Problem {
    match suggestion {
        Some(near) => problem.with("suggestion", near),
        None => problem,
    }
}
