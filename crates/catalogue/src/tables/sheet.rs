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
    /// Cells that are merged, in a workbook.
    pub merged: Vec<Merged>,
    /// Rows that a workbook hides, counted from 1, in order.
    pub hidden: Vec<u32>,
}

/// Cells that are merged into one: rows and columns counted from 0, the last ones with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Merged {
    /// Row and column of the first cell.
    pub first: (u32, u32),
    /// Row and column of the last cell.
    pub last: (u32, u32),
}

impl Sheet {
    /// A table with nothing merged and nothing hidden.
    pub fn of(name: &str, shown: &str, rows: Vec<Vec<Cell>>) -> Self {
        Self { name: name.to_owned(), shown: shown.to_owned(), rows, merged: Vec::new(), hidden: Vec::new() }
    }
}

impl Merged {
    /// The range as spreadsheets write it: `C1:H1`.
    pub fn range(self) -> String {
        let cell = |(row, column): (u32, u32)| format!("{}{}", letters(column), row + 1);
        format!("{}:{}", cell(self.first), cell(self.last))
    }
}

/// A column, counted from 0, as spreadsheets name it: `A`, `Z`, `AA`.
pub fn letters(column: u32) -> String {
    let mut letters = Vec::new();
    let mut left = column + 1;
    while left > 0 {
        left -= 1;
        letters.push(char::from(b'A' + u8::try_from(left % 26).unwrap_or(0)));
        left /= 26;
    }
    letters.iter().rev().collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_named_as_spreadsheets_name_them() {
        for (column, name) in [(0, "A"), (25, "Z"), (26, "AA"), (701, "ZZ"), (702, "AAA")] {
            assert_eq!(letters(column), name);
        }
        assert_eq!(Merged { first: (0, 2), last: (0, 7) }.range(), "C1:H1");
    }
}
