//! Tables turned from one authoring form into the other with everything that is the keeper's own.

use fitup_core::order;

use super::cell::guarded;
use super::headings::{heading_and_unit, is_own_row};
use super::layout::{Sort, tables};
use super::{Cell, Sheet};

/// The sheets as they are, remarks, notes and sheets of one's own with them. What is a number or a
/// yes by its column becomes one, so that a workbook made of text files can be reckoned with.
pub fn kept(sheets: &[Sheet]) -> Vec<Sheet> {
    let tables = tables();
    let mut all = sheets.to_vec();
    for sheet in &mut all {
        let Some(table) = tables.iter().find(|table| table.name == sheet.name.trim().to_lowercase()) else { continue };
        table.name.clone_into(&mut sheet.name);
        let headings: Vec<String> = sheet.rows.first().into_iter().flatten().map(Cell::text).collect();
        let sort = |heading: &String| {
            let (heading, _) = heading_and_unit(heading);
            table.columns.iter().find(|column| column.heading() == heading).map(|column| column.sort)
        };
        let sorts: Vec<Option<Sort>> = headings.iter().map(sort).collect();
        for row in sheet.rows.iter_mut().skip(1).filter(|row| !is_own_row(row)) {
            for (cell, sort) in row.iter_mut().zip(&sorts) {
                settle(cell, *sort);
            }
        }
    }
    let nth = |sheet: &Sheet| tables.iter().position(|table| table.name == sheet.name).unwrap_or(tables.len());
    order::sort_by_key(&mut all, nth);
    all
}

fn settle(cell: &mut Cell, sort: Option<Sort>) {
    match (&*cell, sort) {
        (Cell::Text(text), Some(Sort::Number | Sort::Stated)) => {
            // A number that a spreadsheet cannot hold exactly stays as it is written.
            if let Some(number) = text.trim().parse::<f64>().ok().filter(|number| number.abs() < 9e15) {
                *cell = Cell::Number(number);
            }
        }
        (Cell::Text(text), Some(Sort::Flag)) => match text.trim().to_lowercase().as_str() {
            "yes" | "true" => *cell = Cell::Flag(true),
            "no" | "false" => *cell = Cell::Flag(false),
            _ => {}
        },
        // In a form that knows text alone, a date is text, and a number that stands for one too.
        (Cell::Number(_) | Cell::Date(_), Some(Sort::Text)) => *cell = Cell::Text(guarded(&cell.text())),
        _ => {}
    }
}
