//! From the file's records to the core's catalogue.

mod body;
mod guide;
mod items;
mod path;
mod path_text;
mod port;
mod units;

#[cfg(test)]
mod tests;

use fitup_core::item as core;

use self::body::PartsLists;
#[cfg(feature = "tables")]
pub use self::units::is_unit;
pub use self::units::{Lower, Units};
use crate::at::At;
use crate::report::Report;
use crate::wire::CatalogueFile;

/// The core's catalogue of a file, row for row. Where something cannot be lowered, the report
/// says so and nothing stands in its place.
pub fn lower(file: &CatalogueFile, units: Units, report: &mut Report) -> core::Catalogue {
    let mut lists = parts_lists(file);
    let mut catalogue = core::Catalogue {
        name: core::CatalogueName {
            name: file.name.clone(),
            edition: file.edition.clone(),
            notice: file.notice.clone(),
            currency: file.units.money.clone(),
        },
        parts: file.parts.iter().map(|row| (row.number.clone(), row.lower(units))).collect(),
        trailers: file.trailers.lower(units),
        sites: file.sites.lower(units),
        ..core::Catalogue::default()
    };
    macro_rules! tables {
        ($($table:ident),+) => { $(
            for (index, row) in file.$table.iter().enumerate() {
                let table = At::top(stringify!($table));
                let body = body::body(row.body(), table.index(index), units, &mut lists, report);
                catalogue.$table.push(row.lower(body, units));
            }
        )+ };
    }
    tables!(machines, frames, seats, implements, adapters, equipment);
    catalogue.guide = file.guide.as_ref().map(|it| guide::guide(it, &catalogue));
    catalogue
}

fn parts_lists(file: &CatalogueFile) -> PartsLists {
    let mut lists = PartsLists::default();
    for row in &file.parts_lists {
        lists.entry(row.item.clone()).or_default().push(core::PartsListRow {
            assembly: row.assembly.clone(),
            position: row.position.clone(),
            part: row.part.clone(),
            description: row.description.clone(),
            quantity: row.quantity,
        });
    }
    lists
}
