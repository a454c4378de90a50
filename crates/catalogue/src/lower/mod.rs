//! From the file's records to the core's catalogue.

mod body;
mod guide;
mod items;
mod path;
mod path_text;
mod port;
mod units;

use fitup_core::item as core;

use self::body::PartsLists;
pub use self::units::Units;
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
        parts: file.parts.iter().map(|row| (row.number.clone(), part(row))).collect(),
        trailers: file.trailers.iter().map(|row| items::trailer(row, units)).collect(),
        sites: file.sites.iter().map(|row| items::site(row, units)).collect(),
        ..core::Catalogue::default()
    };
    macro_rules! table {
        ($table:ident, |$row:ident, $body:ident| $make:expr) => {
            for (index, $row) in file.$table.iter().enumerate() {
                let table = At::top(stringify!($table));
                let $body = body::body($row.body(), table.index(index), units, &mut lists, report);
                catalogue.$table.push($make);
            }
        };
    }
    table!(machines, |row, body| items::machine(row, body, units));
    table!(frames, |row, body| items::frame(row, body));
    table!(seats, |row, body| items::seat(row, body, units));
    table!(implements, |row, body| items::implement(row, body, units));
    table!(adapters, |row, body| items::adapter(row, body, units));
    catalogue.guide = file.guide.as_ref().map(|it| guide::guide(it, &catalogue));
    catalogue
}

fn part(row: &crate::wire::part::Part) -> core::Part {
    core::Part {
        number: row.number.clone(),
        name: row.name.clone(),
        replaced: row.replaced.as_ref().map(|it| core::Replacement {
            by: it.by.clone(),
            both_ways: it.serves == crate::wire::part::Serves::BothWays,
        }),
    }
}

fn parts_lists(file: &CatalogueFile) -> PartsLists {
    let mut lists = PartsLists::default();
    for row in &file.parts_lists {
        lists.or_insert_with(row.item.clone(), Vec::new).push(core::PartsListRow {
            assembly: row.assembly.clone(),
            position: row.position.clone(),
            part: row.part.clone(),
            description: row.description.clone(),
            quantity: row.quantity,
        });
    }
    lists
}
