//! What only follows from something that is told already.

use std::collections::BTreeSet;

use crate::problem::{Code, Problem};

/// A place: sheet, row and column.
type CellAt = (usize, u32, String);

/// What was told of the sheets, as far as other problems follow from it.
#[derive(Debug, Default)]
pub struct Follows {
    /// Cells that could not be taken as they are.
    pub cells: BTreeSet<CellAt>,
    /// Columns whose heading is not one of the table.
    pub columns: BTreeSet<(usize, String)>,
    /// Quantities whose unit a heading states otherwise than the header.
    pub units: BTreeSet<String>,
    /// Tables of which a row belongs nowhere.
    lost: BTreeSet<&'static str>,
}

impl Follows {
    /// Remembers that a row of a table belongs nowhere.
    pub fn lose(&mut self, table: &'static str) {
        self.lost.insert(table);
    }

    /// Whether a problem only follows from what is told already.
    pub fn explains(&self, problem: &Problem, at: Option<&CellAt>) -> bool {
        if let Some((sheet, row, column)) = at {
            if self.cells.contains(&(*sheet, *row, column.clone())) {
                return true;
            }
            if let (Code::MissingField, Some(field)) = (problem.code, problem.arg("field")) {
                let ends_so = |heading: &str| heading == field || heading.rsplit('.').next() == Some(field);
                // What stands in a cell that cannot be read is not missing, nor what stands in a
                // column whose heading is misspelled.
                let in_row = self.cells.iter().any(|(s, r, heading)| (s, r) == (sheet, row) && ends_so(heading));
                return in_row
                    || self.columns.iter().any(|(s, _)| s == sheet)
                    || (self.lost.contains("holes") && field == "holes")
                    || (self.lost.contains("pin_points") && field == "points");
            }
        }
        match problem.code {
            Code::NoHoles | Code::MoreBoltsThanHoles => self.lost.contains("holes"),
            Code::NoPoints => self.lost.contains("pin_points"),
            Code::MountWithoutPort | Code::AdapterLeadsNowhere | Code::FrameWithoutPort => self.lost.contains("ports"),
            Code::ListedCannotMate | Code::ListedBlocked => !self.lost.is_empty(),
            _ => false,
        }
    }
}
