//! What a file may say by its form and still be wrong.
//!
//! The checks of records look at the file as it is written; those of outlines, sizes and listed joints
//! need the core's geometry and judgement and look at the lowered catalogue, row for row the same.

mod centre;
mod crossing;
mod equipment;
mod figures;
mod guide;
mod ids;
mod joints;
mod likeness;
mod lineage;
mod meeting;
mod outlines;
mod ports;
mod ranges;
mod references;
mod rows;
mod seats;
mod sense;
mod sizes;
mod stack;

use fitup_core::item::Catalogue;

use crate::at::At;
use crate::lower::Units;
use crate::report::Report;
use crate::wire::CatalogueFile;
use crate::wire::body::Body;

#[cfg(not(target_arch = "wasm32"))]
pub use guide::{dates, days_of_month, days_of_year};
pub use joints::listed_joints;
pub use outlines::outlines;
pub use sizes::sizes;

/// Checks every record of a file.
pub fn records(file: &CatalogueFile, report: &mut Report) {
    rows::header(file, report);
    let known = ids::ids(file, report);
    references::references(file, &known, report);
    lineage::lineage(&file.parts, report);
    if let Some(guide) = &file.guide {
        guide::guide(guide, report);
    }
    each_item(file, |at, body| {
        rows::body(at, body, report);
        ports::ports(at, body, report);
    });
    rows::own_fields(file, report);
    seats::seats(file, report);
    stack::stack(file, report);
    equipment::equipment(file, report);
}

/// Looks at a file as its keeper would: for what is right in form and hardly meant so.
pub fn closely(file: &CatalogueFile, catalogue: &Catalogue, units: Units, report: &mut Report) {
    likeness::likeness(file, report);
    meeting::meeting(file, report);
    sense::sense(catalogue, units, report);
}

/// Every item row with its place.
fn each_item<'f>(file: &'f CatalogueFile, mut visit: impl FnMut(At<'_>, Body<'f>)) {
    macro_rules! tables {
        ($($table:ident),+) => { $(
            let table = At::top(stringify!($table));
            for (index, row) in file.$table.iter().enumerate() {
                visit(table.index(index), row.body());
            }
        )+ };
    }
    tables!(machines, frames, seats, implements, adapters, equipment);
}
