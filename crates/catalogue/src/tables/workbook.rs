//! Tables written as the worksheets of a workbook (Office Open XML).

use rust_xlsxwriter::{Format, Workbook};

use super::cell::is_own;
use super::{Cell, Sheet};

/// The bytes of a workbook with a worksheet for each table.
///
/// # Errors
/// What the writer says: a worksheet's cell holds at most 32,767 characters.
pub fn workbook(sheets: &[Sheet]) -> Result<Vec<u8>, String> {
    let mut workbook = Workbook::new();
    let (heading, note) = (Format::new().set_bold(), Format::new().set_italic().set_text_wrap());
    for sheet in sheets {
        let failed = |error: rust_xlsxwriter::XlsxError| format!("{}: {error}", sheet.shown);
        let worksheet = workbook.add_worksheet();
        worksheet.set_name(&sheet.name).map_err(failed)?;
        worksheet.set_freeze_panes(1, 0).map_err(failed)?;
        for (row, cells) in (0..).zip(&sheet.rows) {
            let is_note = matches!(cells.first(), Some(Cell::Text(text)) if is_own(text));
            for (column, cell) in (0..).zip(cells) {
                match cell {
                    Cell::Empty | Cell::Formula => Ok(&mut *worksheet),
                    Cell::Text(text) if row == 0 => worksheet.write_string_with_format(row, column, text, &heading),
                    Cell::Text(text) if is_note => worksheet.write_string_with_format(row, column, text, &note),
                    Cell::Text(text) | Cell::Date(text) | Cell::Error(text) => {
                        worksheet.write_string(row, column, text)
                    }
                    Cell::Number(number) => worksheet.write_number(row, column, *number),
                    Cell::Flag(flag) => worksheet.write_boolean(row, column, *flag),
                }
                .map_err(failed)?;
            }
        }
    }
    workbook.save_to_buffer().map_err(|error| error.to_string())
}
