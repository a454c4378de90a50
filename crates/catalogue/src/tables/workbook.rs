//! Tables written as the worksheets of a workbook (Office Open XML).

use rust_xlsxwriter::{Color, Format, FormatAlign, Workbook, Worksheet, XlsxError};

use super::dressed::{dress, heading_format};
use super::headings::is_own_row;
use super::layout::tables;
use super::{Cell, Sheet};

/// The bytes of a workbook with a worksheet for each table: headings that stay in sight, columns of
/// names in the format of text, words and names to choose from.
///
/// # Errors
/// What the writer says: a worksheet's cell holds at most 32,767 characters.
pub fn workbook(sheets: &[Sheet]) -> Result<Vec<u8>, String> {
    let tables = tables();
    let mut workbook = Workbook::new();
    for sheet in sheets {
        let failed = |error: XlsxError| format!("{}: {error}", sheet.shown);
        let worksheet = workbook.add_worksheet();
        worksheet.set_name(&sheet.name).map_err(failed)?;
        worksheet.set_freeze_panes(1, 1).map_err(failed)?;
        let table = tables.iter().find(|table| table.name == sheet.name);
        if let Some(table) = table {
            dress(worksheet, table, sheet, sheets).map_err(failed)?;
        }
        fill(worksheet, sheet, |heading| heading_format(table, heading)).map_err(failed)?;
    }
    workbook.save_to_buffer().map_err(|error| error.to_string())
}

fn fill(worksheet: &mut Worksheet, sheet: &Sheet, heading: impl Fn(&str) -> Format) -> Result<(), XlsxError> {
    let note = Format::new().set_italic().set_font_color(Color::RGB(0x0060_6060)).set_align(FormatAlign::Top);
    let wrapped = note.clone().set_text_wrap();
    for (row, cells) in (0..).zip(&sheet.rows) {
        let is_note = row > 0 && is_own_row(cells);
        for (column, cell) in (0..).zip(cells) {
            match cell {
                Cell::Empty | Cell::Formula => continue,
                Cell::Text(text) if row == 0 => {
                    worksheet.write_string_with_format(row, column, text, &heading(text))?
                }
                Cell::Text(text) if is_note => worksheet.write_string_with_format(row, column, text, &wrapped)?,
                Cell::Text(text) | Cell::Date(text) | Cell::Error(text) => worksheet.write_string(row, column, text)?,
                Cell::Number(number) if is_note => worksheet.write_number_with_format(row, column, *number, &note)?,
                Cell::Number(number) => worksheet.write_number(row, column, *number)?,
                Cell::Flag(flag) => worksheet.write_boolean(row, column, *flag)?,
            };
        }
    }
    Ok(())
}
