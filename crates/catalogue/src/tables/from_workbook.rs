//! The worksheets of a workbook as tables: Office Open XML (.xlsx) and `OpenDocument` (.ods).

use std::io::Cursor;

use calamine::{Data, DataRef, Ods, Reader, Xlsx};

use super::unseen::{Unseen, unseen_of_ods, unseen_of_xlsx};
use super::{Cell, Merged, Sheet};

/// Most columns and rows of a worksheet that are read, and most cells of a workbook: a hostile
/// workbook may name cells anywhere. No source.
const MOST_COLUMNS: u32 = 512;
const MOST_ROWS: u32 = 200_000;
const MOST_CELLS: usize = 4_000_000;

/// The tables of a workbook's bytes, of whichever of the two kinds it is.
///
/// # Errors
/// What the reader says, or that the workbook is too large.
pub fn sheets_of_workbook(bytes: &[u8]) -> Result<Vec<Sheet>, String> {
    // Every OpenDocument file says first of all what it is.
    let is_ods = bytes.windows(OPEN_DOCUMENT.len()).take(200).any(|some| some == OPEN_DOCUMENT);
    if is_ods { of_ods(bytes) } else { of_xlsx(bytes) }
}

const OPEN_DOCUMENT: &[u8] = b"application/vnd.oasis.opendocument.spreadsheet";

fn of_xlsx(bytes: &[u8]) -> Result<Vec<Sheet>, String> {
    let mut workbook: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).map_err(|error| error.to_string())?;
    let mut unseen = unseen_of_xlsx(bytes);
    let mut sheets = Vec::new();
    let mut count = 0;
    for name in workbook.sheet_names() {
        let failed = |error: calamine::XlsxError| format!("{name}: {error}");
        let merged = workbook.merge_cells_by_sheet_name(&name).unwrap_or_default();
        let mut grid = Grid::new(&name, &mut count);
        let mut cells = workbook.worksheet_cells_reader(&name).map_err(failed)?;
        while let Some(cell) = cells.next_cell_with_formula_metadata().map_err(failed)? {
            let held = match &cell.value {
                DataRef::Empty if cell.formula.is_some() => Cell::Formula,
                value => held(value.clone().into()),
            };
            grid.put(cell.pos, held)?;
        }
        let merged = merged.into_iter().map(|it| Merged { first: it.start, last: it.end }).collect();
        let Unseen { hidden, .. } = unseen.remove(&name).unwrap_or_default();
        sheets.push(Sheet { merged, hidden, ..Sheet::of(&name, &name, grid.rows) });
    }
    Ok(sheets)
}

fn of_ods(bytes: &[u8]) -> Result<Vec<Sheet>, String> {
    let mut workbook: Ods<_> = Ods::new(Cursor::new(bytes)).map_err(|error| error.to_string())?;
    let mut unseen = unseen_of_ods(bytes);
    let mut sheets = Vec::new();
    let mut count = 0;
    for name in workbook.sheet_names() {
        let failed = |error: calamine::OdsError| format!("{name}: {error}");
        let (values, formulas) =
            (workbook.worksheet_range(&name).map_err(failed)?, workbook.worksheet_formula(&name).map_err(failed)?);
        let mut grid = Grid::new(&name, &mut count);
        let (top, left) = values.start().unwrap_or_default();
        for (row, column, value) in values.used_cells() {
            let at = |first: u32, offset: usize| first.saturating_add(u32::try_from(offset).unwrap_or(u32::MAX));
            grid.put((at(top, row), at(left, column)), held(value.clone()))?;
        }
        let (top, left) = formulas.start().unwrap_or_default();
        for (row, column, formula) in formulas.used_cells() {
            let at = |first: u32, offset: usize| first.saturating_add(u32::try_from(offset).unwrap_or(u32::MAX));
            if !formula.is_empty() && grid.is_empty((at(top, row), at(left, column))) {
                grid.put((at(top, row), at(left, column)), Cell::Formula)?;
            }
        }
        let Unseen { hidden, merged } = unseen.remove(&name).unwrap_or_default();
        sheets.push(Sheet { merged, hidden, ..Sheet::of(&name, &name, grid.rows) });
    }
    Ok(sheets)
}

/// The cells of a worksheet on their way into rows.
struct Grid<'a> {
    name: &'a str,
    count: &'a mut usize,
    rows: Vec<Vec<Cell>>,
}

impl<'a> Grid<'a> {
    const fn new(name: &'a str, count: &'a mut usize) -> Self {
        Self { name, count, rows: Vec::new() }
    }

    fn put(&mut self, (row, column): (u32, u32), held: Cell) -> Result<(), String> {
        if held == Cell::Empty {
            return Ok(());
        }
        *self.count += 1;
        if row >= MOST_ROWS || column >= MOST_COLUMNS || *self.count > MOST_CELLS {
            return Err(format!(
                "{}: more than {MOST_ROWS} rows, {MOST_COLUMNS} columns or {MOST_CELLS} cells in all",
                self.name
            ));
        }
        let (row, column) = (row as usize, column as usize);
        if self.rows.len() <= row {
            self.rows.resize_with(row + 1, Vec::new);
        }
        if self.rows[row].len() <= column {
            self.rows[row].resize_with(column + 1, Cell::default);
        }
        self.rows[row][column] = held;
        Ok(())
    }

    fn is_empty(&self, (row, column): (u32, u32)) -> bool {
        let cell = self.rows.get(row as usize).and_then(|row| row.get(column as usize));
        cell.is_none_or(|cell| *cell == Cell::Empty)
    }
}

fn held(value: Data) -> Cell {
    match value {
        Data::Empty => Cell::Empty,
        Data::Int(whole) => Cell::Number(whole as f64),
        Data::Float(number) => Cell::Number(number),
        Data::Bool(flag) => Cell::Flag(flag),
        Data::String(text) => Cell::of_text(&text),
        Data::DateTimeIso(text) | Data::DurationIso(text) => Cell::Date(text),
        Data::DateTime(date) => {
            let (year, month, day, ..) = date.to_ymd_hms_milli();
            Cell::Date(format!("{year:04}-{month:02}-{day:02}"))
        }
        Data::Error(error) => Cell::Error(error.to_string()),
    }
}
