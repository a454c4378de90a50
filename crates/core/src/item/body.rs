//! What every row of an item table holds, whatever it is.

use super::{Catalogue, PartNumber, PartsList, Port, Shape};
use crate::quantity::{Length, Mass, Money, Stated};

/// A point in an item's local axes: x forward, y left, z up.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point3 {
    /// Forward.
    pub x: Length,
    /// To the left.
    pub y: Length,
    /// Up.
    pub z: Length,
}

/// A range of serial numbers; an open end reaches as far as there are numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Serials {
    /// First number that belongs, if there is a first.
    pub first: Option<u64>,
    /// Last number that belongs, if there is a last.
    pub last: Option<u64>,
}

impl Serials {
    /// Whether the range holds every number.
    pub const fn is_open(self) -> bool {
        self.first.is_none() && self.last.is_none()
    }

    /// Whether `number` belongs.
    pub fn holds(self, number: u64) -> bool {
        self.first.is_none_or(|first| first <= number) && self.last.is_none_or(|last| number <= last)
    }
}

/// How the dealer can supply an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Stock {
    /// Nothing is said.
    #[default]
    Unsaid,
    /// So many stand in the yard, new.
    New(u32),
    /// So many stand in the yard, used.
    Used(u32),
    /// No longer made; only used ones turn up.
    Discontinued,
}

/// What every item has.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Body {
    /// The row's id: lower-case words and hyphens, unique over all item tables.
    pub id: String,
    /// The name people see.
    pub label: String,
    /// The series it belongs to, if any.
    pub series: String,
    /// First and last year made, as far as known.
    pub years: (Option<u16>, Option<u16>),
    /// Serial numbers this row speaks of.
    pub serials: Serials,
    /// Free note; says where the local origin is.
    pub note: String,
    /// Price in the catalogue's currency; `None` = ask.
    pub price: Option<Money>,
    /// Whether the dealer has it.
    pub stock: Stock,
    /// Mass.
    pub mass: Option<Stated<Mass>>,
    /// Centre of gravity in local axes (for implements: in transport).
    pub centre_of_gravity: Option<Point3>,
    /// Outline shapes in local axes.
    pub shapes: Vec<Shape>,
    /// Underside polylines in the side view, (x, z) in local axes.
    pub underside: Vec<Vec<(Length, Length)>>,
    /// Connecting places.
    pub ports: Vec<Port>,
    /// What the maker prints as its parts.
    pub parts_list: PartsList,
    /// Ids of items the maker pairs it with outside the guide (a kit's instruction sheet).
    pub listed_with: Vec<String>,
}

impl Body {
    /// Numbers of the parts that bear one of its ports: those the port names, else those of the assembly in its parts list that
    /// is headed like the port (upper and lower case alike). Empty = not known.
    ///
    /// Two units whose assemblies at a joint have equal part numbers are equal there, whatever else changed.
    pub fn bearing(&self, port: &Port) -> Vec<PartNumber> {
        if !port.parts.is_empty() {
            return port.parts.clone();
        }
        let rows = self.parts_list.rows.iter().filter(|row| is_headed(&row.assembly, &port.name));
        rows.map(|row| row.part.clone()).collect()
    }
}

/// Whether some port of a catalogue goes by a heading of a parts list, so that the assembly bears a joint.
pub fn bears_joint(catalogue: &Catalogue, heading: &str) -> bool {
    let mut ports = catalogue.items().flat_map(|item| &catalogue.body(item).ports);
    ports.any(|port| is_headed(heading, &port.name))
}

/// Whether two headings are alike, upper and lower case alike: of the letters of western Europe
/// (Latin-1), which need no table.
fn is_headed(heading: &str, port: &str) -> bool {
    let small = |letter| match letter {
        'À'..='Ö' | 'Ø'..='Þ' => char::from_u32(u32::from(letter) + 32).unwrap_or(letter),
        _ => letter.to_ascii_lowercase(),
    };
    heading.chars().map(small).eq(port.chars().map(small))
}
