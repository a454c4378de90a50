//! What every item row holds, and the small records it is made of.

use serde::{Deserialize, Serialize};

use super::port::Port;
use super::shape::Shape;
use super::value::{Length, Mass, Money, Stated};

/// Defines the wire struct of an item table: the fields of every item and the table's own.
macro_rules! item_row {
    ($(#[$doc:meta])* $name:ident { $( $(#[$field_doc:meta])* $field:ident: $ty:ty, )* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            /// Id of the row: lower-case letters, digits and hyphens, unique over all tables of the file.
            pub id: String,
            /// The name people see.
            pub label: String,
            /// The series it belongs to.
            #[serde(default, skip_serializing_if = "String::is_empty")]
            pub series: String,
            /// Years it was made.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub years: Option<$crate::wire::body::Years>,
            /// Serial numbers this row speaks of.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub serials: Option<$crate::wire::body::Serials>,
            /// Free note; say here where the local origin is.
            #[serde(default, skip_serializing_if = "String::is_empty")]
            pub note: String,
            /// Price; left out = ask.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub price: Option<$crate::wire::value::Money>,
            /// Whether the dealer has it; left out = nothing is said.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub stock: Option<$crate::wire::body::Stock>,
            /// Mass; of an implement, ready for transport.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub mass: Option<$crate::wire::value::Stated<$crate::wire::value::Mass>>,
            /// Centre of gravity in local axes; of an implement, in transport.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub centre_of_gravity: Option<$crate::wire::body::Point>,
            $( $(#[$field_doc])* pub $field: $ty, )*
            /// Ids of items the maker pairs it with outside the guide, as a kit's instruction sheet does.
            #[serde(default, skip_serializing_if = "Vec::is_empty")]
            pub listed_with: Vec<String>,
            /// Underside in the side view, in local axes: path data of straight lines.
            #[serde(default, skip_serializing_if = "String::is_empty")]
            pub underside: String,
            /// Outline shapes in local axes.
            #[serde(default, skip_serializing_if = "Vec::is_empty")]
            pub shapes: Vec<$crate::wire::shape::Shape>,
            /// Connecting places.
            #[serde(default, skip_serializing_if = "Vec::is_empty")]
            pub ports: Vec<$crate::wire::port::Port>,
        }

        impl $name {
            /// The fields that every item has.
            pub fn body(&self) -> $crate::wire::body::Body<'_> {
                $crate::wire::body::Body {
                    id: &self.id,
                    label: &self.label,
                    series: &self.series,
                    years: self.years,
                    serials: self.serials,
                    note: &self.note,
                    price: self.price,
                    stock: self.stock,
                    mass: self.mass,
                    centre_of_gravity: self.centre_of_gravity,
                    listed_with: &self.listed_with,
                    underside: &self.underside,
                    shapes: &self.shapes,
                    ports: &self.ports,
                }
            }
        }
    };
}

pub(crate) use item_row;

/// The fields that every item has, whatever its table.
#[derive(Debug, Clone, Copy)]
pub struct Body<'a> {
    /// Id of the row.
    pub id: &'a str,
    /// The name people see.
    pub label: &'a str,
    /// Series.
    pub series: &'a str,
    /// Years made.
    pub years: Option<Years>,
    /// Serial numbers.
    pub serials: Option<Serials>,
    /// Free note.
    pub note: &'a str,
    /// Price.
    pub price: Option<Money>,
    /// Stock.
    pub stock: Option<Stock>,
    /// Mass.
    pub mass: Option<Stated<Mass>>,
    /// Centre of gravity.
    pub centre_of_gravity: Option<Point>,
    /// Items the maker pairs it with.
    pub listed_with: &'a [String],
    /// Underside.
    pub underside: &'a str,
    /// Outline shapes.
    pub shapes: &'a [Shape],
    /// Ports.
    pub ports: &'a [Port],
}

/// Years of making; an end left out is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Years {
    /// First year.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first: Option<u16>,
    /// Last year.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last: Option<u16>,
}

/// A range of serial numbers; an end left out is open.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Serials {
    /// First number that belongs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first: Option<u64>,
    /// Last number that belongs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last: Option<u64>,
}

/// How the dealer can supply an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Stock {
    /// So many stand in the yard, new.
    New(u32),
    /// So many stand in the yard, used.
    Used(u32),
    /// No longer made; only used ones turn up.
    Discontinued,
}

/// A point in an item's local axes: x forward, y left, z up.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Point {
    /// Forward.
    pub x: Length,
    /// To the left; left out = 0.
    #[serde(default, skip_serializing_if = "is_middle")]
    pub y: Length,
    /// Up.
    pub z: Length,
}

/// Whether a sideways distance is none.
#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde passes a reference")]
fn is_middle(y: &Length) -> bool {
    y.0 == 0.0
}
