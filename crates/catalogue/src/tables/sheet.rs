//! One table as rows of cells.

use super::Cell;

/// A table.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// Name: that of the table.
    pub name: String,
    /// Name that messages show: file name of a CSV file, name of a worksheet.
    pub shown: String,
    /// Rows; the first has the headings.
    pub rows: Vec<Vec<Cell>>,
}
