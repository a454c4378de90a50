//! Tables for a new catalogue: headings, what each column holds, and a row as an example.

use serde_json::Value;

use super::cell::guarded;
use super::from_file::{rows, sheet};
use super::headings::REMARKS;
use super::layout::{Column, Place, Sort, Table, tables};
use super::{Cell, Sheet};

/// The units that a new catalogue is written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum TemplateUnits {
    /// Millimetres, kilograms, bar, litres a minute, kilowatts; prices in EUR.
    #[default]
    Metric,
    /// Inches, pounds, psi, gallons a minute, horsepower; prices in USD.
    Us,
}

impl TemplateUnits {
    /// Quantity and unit.
    const fn units(self) -> [(&'static str, &'static str); 7] {
        match self {
            Self::Metric => [
                ("length", "mm"),
                ("mass", "kg"),
                ("pressure", "bar"),
                ("flow", "L/min"),
                ("power", "kW"),
                ("angle", "deg"),
                ("money", "EUR"),
            ],
            Self::Us => [
                ("length", "in"),
                ("mass", "lb"),
                ("pressure", "psi"),
                ("flow", "gal/min"),
                ("power", "hp"),
                ("angle", "deg"),
                ("money", "USD"),
            ],
        }
    }
}

/// The file whose first rows are the examples: invented, in millimetres and kilograms.
const EXAMPLE: &str = include_str!("../../tests/minimal.json");

/// Tables for a new catalogue. The table of the catalogue itself has its row, with the units; in all
/// others what the columns hold and an example stand in notes, which are passed over, and there is a
/// column for remarks.
pub fn template(units: TemplateUnits) -> Vec<Sheet> {
    let mut file: Value = serde_json::from_str(EXAMPLE).expect("the example is JSON");
    let examples: Vec<Vec<Vec<Cell>>> = tables().iter().map(|table| rows(table, &file)).collect();
    for (quantity, unit) in units.units() {
        file["units"][quantity] = unit.into();
    }
    let header = serde_json::json!({ "name": "New catalogue", "units": file["units"] });
    let one = |(table, examples): (&Table, &Vec<Vec<Cell>>)| {
        let mut notes = vec![notes(table)];
        if table.place == Place::Top {
            notes.extend(rows(table, &header));
        } else if let Some(example) = examples.first() {
            notes.push(as_note(example.clone(), units));
        }
        let mut sheet = sheet(table, &file, notes);
        for (row, cell) in sheet.rows.iter_mut().zip([REMARKS, "Anything; it is not published."]) {
            row.push(Cell::Text(cell.to_owned()));
        }
        sheet
    };
    tables().iter().zip(&examples).map(one).collect()
}

/// What each column holds, as a note.
fn notes(table: &Table) -> Vec<Cell> {
    let keys = table.keys.iter().map(|key| format!("Name of the {key} it belongs to. Required."));
    let mut notes: Vec<String> = keys.chain(table.columns.iter().map(note)).collect();
    if let Some(first) = notes.first_mut() {
        *first = format!("# {first}");
    }
    notes.iter().map(|note| Cell::Text(note.clone())).collect()
}

fn note(column: &Column) -> String {
    let words = column.words.join(", ");
    let holds = match column.sort {
        Sort::Text | Sort::Stated | Sort::Number => String::new(),
        Sort::Flag => " Yes or no.".into(),
        Sort::Word | Sort::Choice => format!(" One of: {words}."),
        Sort::Texts | Sort::Numbers if words.is_empty() => " Several, with semicolons between.".into(),
        Sort::Texts | Sort::Numbers => format!(" Several of these, with semicolons between: {words}."),
    };
    let required = if column.required { " Required." } else { "" };
    format!("{}{holds}{required}", column.meaning)
}

/// An example as a note: to be copied, or looked at and deleted.
fn as_note(mut row: Vec<Cell>, units: TemplateUnits) -> Vec<Cell> {
    let said = match units {
        TemplateUnits::Metric => "# such as",
        TemplateUnits::Us => "# such as (in mm, kg …)",
    };
    if let Some(first) = row.first_mut() {
        *first = Cell::Text(format!("{said} {}", guarded(&first.text())));
    }
    row
}
