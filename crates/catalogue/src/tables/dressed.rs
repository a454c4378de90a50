//! What a worksheet is given beside its cells, so that it is typed into without mistakes.

use rust_xlsxwriter::{Color, DataValidation, DataValidationErrorStyle, Format, Formula, Worksheet, XlsxError};

use super::headings::{heading_and_unit, is_own_row};
use super::layout::{Column, ITEMS, Sort, Table};
use super::{Cell, Sheet};

/// The last row that choices are offered in, counted from 0. No source: some thousand rows of holes
/// are a large catalogue.
const LAST_ROW: u32 = 9_999;

/// The format of a heading: what every row needs stands out.
pub fn heading_format(table: Option<&Table>, text: &str) -> Format {
    let (heading, _) = heading_and_unit(text);
    let is_needed = table.is_some_and(|table| {
        table.keys.contains(&heading)
            || table.columns.iter().any(|column| column.required && column.heading() == heading)
    });
    let format = Format::new().set_bold().set_text_wrap().set_background_color(Color::RGB(0x00E4_EBE4));
    if is_needed { format.set_background_color(Color::RGB(0x00F5_DFA8)) } else { format }
}

/// Gives a table's worksheet its formats, choices and groups of columns.
///
/// # Errors
/// What the writer says.
pub fn dress(worksheet: &mut Worksheet, table: &Table, sheet: &Sheet, sheets: &[Sheet]) -> Result<(), XlsxError> {
    let headings: Vec<String> = sheet.rows.first().into_iter().flatten().map(Cell::text).collect();
    let first = 1 + u32::try_from(sheet.rows.iter().skip(1).take_while(|row| is_own_row(row)).count()).unwrap_or(0);
    worksheet.set_row_height(0, 32)?;
    for (at, text) in (0_u16..).zip(&headings) {
        let (heading, _) = heading_and_unit(text);
        let column = table.columns.iter().find(|column| column.heading() == heading);
        let is_key = table.keys.contains(&heading);
        let is_text = is_key || column.is_some_and(|it| matches!(it.sort, Sort::Text | Sort::Texts | Sort::Numbers));
        if is_text {
            // Or `1-3` becomes a date and `0012` a twelve.
            worksheet.set_column_format(at, &Format::new().set_num_format("@"))?;
        }
        let wide = u32::try_from(text.chars().count()).unwrap_or(60).clamp(10, 26);
        worksheet.set_column_width(at, wide)?;
        if let Some(choice) = choice(table, heading, column, at, first, sheets)? {
            worksheet.add_data_validation(first, at, LAST_ROW, at, &choice)?;
        }
    }
    for (from, to) in groups(&headings) {
        let is_used =
            |row: &Vec<Cell>| row.iter().take(to as usize + 1).skip(from as usize).any(|cell| !cell.is_blank());
        let is_any = sheet.rows.iter().skip(1).any(|row| !is_described(row) && is_used(row));
        if is_any || sheet.rows.len() <= 1 {
            worksheet.group_columns(from, to)?;
        } else {
            worksheet.group_columns_collapsed(from, to)?;
        }
    }
    Ok(())
}

/// Whether a row says what the columns hold: the template's own. What it says is not what is in use.
fn is_described(row: &[Cell]) -> bool {
    is_own_row(row) && row.iter().all(|cell| matches!(cell, Cell::Text(_)))
}

/// Runs of columns that belong to one record inside, by the way there: `rear.track`, `rear.rated`.
fn groups(headings: &[String]) -> Vec<(u16, u16)> {
    let within = |text: &String| {
        let (heading, _) = heading_and_unit(text);
        let steps: Vec<&str> = heading.split('.').collect();
        let kept = if steps[0] == "kind" { 2 } else { 1 };
        (steps.len() > kept).then(|| steps[..kept].join("."))
    };
    let mut runs: Vec<(u16, u16, String)> = Vec::new();
    for (at, text) in (0_u16..).zip(headings) {
        let Some(name) = within(text) else { continue };
        match runs.last_mut() {
            Some((_, to, known)) if *known == name && *to + 1 == at => *to = at,
            _ => runs.push((at, at, name)),
        }
    }
    // A group next to another would be one with it: the first column of each stays outside.
    runs.into_iter().filter(|(from, to, _)| to > from).map(|(from, to, _)| (from + 1, to)).collect()
}

/// What may be chosen in a column.
fn choice(
    table: &Table,
    heading: &str,
    column: Option<&Column>,
    at: u16,
    first: u32,
    sheets: &[Sheet],
) -> Result<Option<DataValidation>, XlsxError> {
    // Where a sheet's own rows begin, counted from 1.
    let begins = |name: &str| {
        let sheet = sheets.iter().find(|sheet| sheet.name == name)?;
        Some(2 + sheet.rows.iter().skip(1).take_while(|row| is_own_row(row)).count())
    };
    let of_table = |name: &str, letter: char| {
        let row = begins(name)?;
        let list = Formula::new(format!("={name}!${letter}${row}:${letter}${}", LAST_ROW + 1));
        Some(DataValidation::new().allow_list_formula(list))
    };
    if heading == "item" {
        let cell = format!("{}{}", super::sheet::letters(u32::from(at)), first + 1);
        let counts =
            ITEMS.iter().filter(|name| begins(name).is_some()).map(|name| format!("COUNTIF({name}!$A:$A,{cell})"));
        let is_there = Formula::new(format!("={}>0", counts.collect::<Vec<_>>().join("+")));
        let told = DataValidation::new().allow_custom(is_there).set_error_style(DataValidationErrorStyle::Warning);
        return told
            .set_error_message(
                "No item has this id: see the sheets of machines, frames, seats, implements, adapters, equipment.",
            )
            .map(Some);
    }
    let named = match (table.name, heading) {
        ("guide", "machine" | "frame" | "seat" | "implement") => of_table(&format!("{heading}s"), 'A'),
        (_, "port") => of_table("ports", 'B'),
        ("parts_lists", "part") => of_table("parts", 'A'),
        _ => None,
    };
    // A name that is not there yet may be typed all the same: `any`, a row that is still to come.
    if let Some(named) = named {
        return Ok(Some(named.show_error_message(false)));
    }
    let Some(column) = column else { return Ok(None) };
    let words: Vec<&str> = match column.sort {
        Sort::Flag => vec!["yes", "no"],
        Sort::Word | Sort::Choice => column.words.iter().map(String::as_str).collect(),
        _ => Vec::new(),
    };
    // A list in a cell's rule has at most 255 characters, as the file format has it.
    let length: usize = words.iter().map(|word| word.len() + 1).sum();
    if words.is_empty() || length > 255 {
        return Ok(None);
    }
    let choice = DataValidation::new().allow_list_strings(&words)?.set_error_style(DataValidationErrorStyle::Warning);
    choice.set_error_message("This is not one of the words that may stand here.").map(Some)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_of_one_record_are_grouped_behind_the_first_of_them() {
        let headings = [
            "id",
            "rear.track [mm]",
            "rear.rated [kg]",
            "rear.bare_load",
            "front.track",
            "kind",
            "kind.pins.form",
            "kind.pins.spread",
            "kind.coupler.size",
        ];
        assert_eq!(groups(&headings.map(str::to_owned)), [(2, 3), (7, 7)]);
    }
}
