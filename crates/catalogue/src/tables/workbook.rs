//! Tables as the worksheets of a workbook (Office Open XML).

use std::io::Cursor;

use calamine::{Data, DataRef, Reader, Xlsx};
use rust_xlsxwriter::{Format, Workbook};

use super::{Cell, Sheet};

/// Most columns and rows of a worksheet that are read, and most cells of a workbook: a hostile
/// workbook may name cells anywhere. No source.
const MOST_COLUMNS: u32 = 512;
const MOST_ROWS: u32 = 200_000;
const MOST_CELLS: usize = 1_000_000;

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
            let is_note = matches!(cells.first(), Some(Cell::Text(text)) if text.starts_with('#'));
            for (column, cell) in (0..).zip(cells) {
                match cell {
                    Cell::Empty => Ok(&mut *worksheet),
                    Cell::Text(text) if row == 0 => worksheet.write_string_with_format(row, column, text, &heading),
                    Cell::Text(text) if is_note => worksheet.write_string_with_format(row, column, text, &note),
                    Cell::Text(text) => worksheet.write_string(row, column, text),
                    Cell::Number(number) => worksheet.write_number(row, column, *number),
                    Cell::Flag(flag) => worksheet.write_boolean(row, column, *flag),
                }
                .map_err(failed)?;
            }
        }
    }
    workbook.save_to_buffer().map_err(|error| error.to_string())
}

/// The tables of a workbook's bytes.
///
/// # Errors
/// What the reader says, or that the workbook is too large.
pub fn sheets_of_workbook(bytes: &[u8]) -> Result<Vec<Sheet>, String> {
    let mut workbook: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).map_err(|error| error.to_string())?;
    let mut sheets = Vec::new();
    let mut count = 0;
    for name in workbook.sheet_names() {
        let failed = |error: calamine::XlsxError| format!("{name}: {error}");
        let mut cells = workbook.worksheet_cells_reader(&name).map_err(failed)?;
        let mut rows: Vec<Vec<Cell>> = Vec::new();
        while let Some(cell) = cells.next_cell().map_err(failed)? {
            let (row, column) = cell.get_position();
            let held = held(cell.get_value());
            if held == Cell::Empty {
                continue;
            }
            count += 1;
            if row >= MOST_ROWS || column >= MOST_COLUMNS || count > MOST_CELLS {
                return Err(format!(
                    "{name}: more than {MOST_ROWS} rows, {MOST_COLUMNS} columns or {MOST_CELLS} cells in all"
                ));
            }
            let (row, column) = (row as usize, column as usize);
            if rows.len() <= row {
                rows.resize_with(row + 1, Vec::new);
            }
            if rows[row].len() <= column {
                rows[row].resize_with(column + 1, Cell::default);
            }
            rows[row][column] = held;
        }
        sheets.push(Sheet { name: name.clone(), shown: name, rows });
    }
    Ok(sheets)
}

fn held(value: &DataRef<'_>) -> Cell {
    match Data::from(value.clone()) {
        Data::Empty => Cell::Empty,
        Data::Int(whole) => Cell::Number(whole as f64),
        Data::Float(number) => Cell::Number(number),
        Data::Bool(flag) => Cell::Flag(flag),
        Data::String(text) | Data::DateTimeIso(text) | Data::DurationIso(text) => Cell::Text(text),
        Data::DateTime(date) => {
            let (year, month, day, ..) = date.to_ymd_hms_milli();
            Cell::Text(format!("{year:04}-{month:02}-{day:02}"))
        }
        Data::Error(error) => Cell::Text(error.to_string()),
    }
}
