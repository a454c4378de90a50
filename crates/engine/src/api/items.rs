//! What a catalogue lists, as plain data.

use fitup_core::item::{Body, Catalogue, ItemRef};
use serde::Serialize;

/// The tables of a catalogue.
#[derive(Serialize)]
pub struct ItemsReport {
    machines: Vec<ItemReport>,
    frames: Vec<ItemReport>,
    seats: Vec<ItemReport>,
    implements: Vec<ItemReport>,
    adapters: Vec<ItemReport>,
    trailers: Vec<NamedReport>,
    sites: Vec<NamedReport>,
}

#[derive(Serialize)]
struct ItemReport {
    id: String,
    label: String,
    series: String,
    /// In the catalogue's currency; `null` = on request.
    price: Option<f64>,
    ports: Vec<PortReport>,
    /// Whether it has a parts list.
    parts_list: bool,
}

#[derive(Serialize)]
struct PortReport {
    name: String,
    role: &'static str,
    kind: &'static str,
}

#[derive(Serialize)]
struct NamedReport {
    id: String,
    label: String,
}

impl ItemsReport {
    /// Everything that a build may name.
    pub fn of(catalogue: &Catalogue) -> Self {
        let table = |kind: &str| {
            let items = catalogue.items().filter(|item| item.kind() == kind);
            items.map(|item| one(catalogue.body(item))).collect()
        };
        let named = |(id, label): (&String, &String)| NamedReport { id: id.clone(), label: label.clone() };
        Self {
            machines: table("machine"),
            frames: table("frame"),
            seats: table("seat"),
            implements: table("implement"),
            adapters: table("adapter"),
            trailers: catalogue.trailers.iter().map(|row| named((&row.id, &row.label))).collect(),
            sites: catalogue.sites.iter().map(|row| named((&row.id, &row.label))).collect(),
        }
    }
}

fn one(body: &Body) -> ItemReport {
    ItemReport {
        id: body.id.clone(),
        label: body.label.clone(),
        series: body.series.clone(),
        price: body.price.map(|price| price.hundredths() as f64 / 100.0),
        ports: body
            .ports
            .iter()
            .map(|port| PortReport { name: port.name.clone(), role: port.role.word(), kind: port.kind.word() })
            .collect(),
        parts_list: !body.parts_list.rows.is_empty(),
    }
}

/// The item of an id.
pub fn item_of(catalogue: &Catalogue, id: &str) -> Option<ItemRef> {
    catalogue.items().find(|&item| catalogue.body(item).id == id)
}
