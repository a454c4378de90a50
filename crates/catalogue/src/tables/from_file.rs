//! From the file's records to tables.

use serde_json::Value;

use super::cell::{guarded, joined};
use super::layout::{Column, ITEMS, Place, Sort, Table, tables};
use super::{Cell, Sheet};
use crate::wire::CatalogueFile;

/// The tables of a file.
pub fn sheets(file: &CatalogueFile) -> Vec<Sheet> {
    let value = serde_json::to_value(file).expect("wire types are text, numbers, lists and records of them");
    tables().iter().map(|table| sheet(table, &value, rows(table, &value))).collect()
}

/// A table of a file: headings with the header's units, and rows.
pub fn sheet(table: &Table, file: &Value, rows: Vec<Vec<Cell>>) -> Sheet {
    let keys = table.keys.iter().map(|key| (*key).to_owned());
    let heading = |column: &Column| match unit(column, file) {
        Some(unit) => format!("{} [{unit}]", column.heading()),
        None => column.heading(),
    };
    let headings = keys.chain(table.columns.iter().map(heading)).map(Cell::Text).collect();
    let rows = std::iter::once(headings).chain(rows).collect();
    Sheet::of(table.name, table.name, rows)
}

/// The unit of a column's numbers: by the header, or the one that the format gives.
fn unit<'v>(column: &Column, file: &'v Value) -> Option<&'v str> {
    match column.quantity.as_deref()? {
        "hours" => Some("h"),
        "torque" => Some("N m"),
        "share" => Some("0 to 1"),
        quantity => file["units"][quantity].as_str(),
    }
}

/// The rows of a table in a file.
pub fn rows(table: &Table, file: &Value) -> Vec<Vec<Cell>> {
    let list = |value: &Value, path: &[&str]| -> Vec<Value> {
        get(value, path.iter().copied()).and_then(Value::as_array).cloned().unwrap_or_default()
    };
    match table.place {
        Place::Top => vec![row(&[], table, file)],
        Place::List(path) => list(file, path).iter().map(|record| row(&[], table, record)).collect(),
        Place::OfItem(field) => {
            let of_item = |item: &Value| {
                let records = list(item, &[field]);
                let id = text(&item["id"]);
                records.iter().map(|record| row(&[&id], table, record)).collect::<Vec<_>>()
            };
            ITEMS.iter().flat_map(|items| list(file, &[items])).flat_map(|item| of_item(&item)).collect()
        }
        Place::OfPort(paths) => {
            let of_port = |item: &Value, port: &Value| {
                let keys = [text(&item["id"]), text(&port["name"])];
                let records = paths.iter().flat_map(|path| list(port, path));
                records.map(|record| row(&[&keys[0], &keys[1]], table, &record)).collect::<Vec<_>>()
            };
            let of_item =
                |item: &Value| list(item, &["ports"]).iter().flat_map(|port| of_port(item, port)).collect::<Vec<_>>();
            ITEMS.iter().flat_map(|items| list(file, &[items])).flat_map(|item| of_item(&item)).collect()
        }
    }
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

fn get<'v, 'p>(value: &'v Value, path: impl IntoIterator<Item = &'p str>) -> Option<&'v Value> {
    path.into_iter().try_fold(value, |value, field| value.get(field))
}

fn row(keys: &[&str], table: &Table, record: &Value) -> Vec<Cell> {
    let keys = keys.iter().map(|key| Cell::Text(guarded(key)));
    keys.chain(table.columns.iter().map(|column| cell(column, record))).collect()
}

fn cell(column: &Column, record: &Value) -> Cell {
    let Some(value) = get(record, column.path.iter().map(String::as_str)) else { return Cell::Empty };
    match (column.sort, value) {
        (Sort::Stated, Value::Object(long)) => long.get("value").map_or(Cell::Empty, number),
        (Sort::Number | Sort::Stated, value) => number(value),
        (Sort::Flag, Value::Bool(flag)) => Cell::Flag(*flag),
        (Sort::Choice, Value::Object(one)) => one.keys().next().map_or(Cell::Empty, |word| Cell::Text(word.clone())),
        (Sort::Word | Sort::Choice, Value::String(word)) => Cell::Text(word.clone()),
        (Sort::Text, Value::String(text)) if !text.is_empty() => Cell::Text(guarded(text)),
        (Sort::Texts, Value::Array(members)) => Cell::Text(guarded(&joined(members.iter().filter_map(Value::as_str)))),
        (Sort::Numbers, Value::Array(members)) => {
            Cell::Text(members.iter().map(|member| number(member).text()).collect::<Vec<_>>().join("; "))
        }
        _ => Cell::Empty,
    }
}

/// A number. One that a spreadsheet's number cannot hold exactly is written as text.
fn number(value: &Value) -> Cell {
    const EXACT: u64 = 1 << 53;
    match (value.as_u64(), value.as_f64()) {
        (Some(whole), _) if whole > EXACT => Cell::Text(whole.to_string()),
        (_, Some(number)) => Cell::Number(number),
        _ => Cell::Empty,
    }
}
