//! What every item row holds, and the small records it is made of.

use fitup_core::item as core;

use super::define::{choice, record};
use super::port::Port;
use super::shape::Shape;
use super::value::{Length, Mass, Money, Stated};

/// Defines the wire struct of an item table: the fields of every item and the table's own.
/// After `=>` stands the core's type, if its own fields are the same.
macro_rules! item_row {
    ($(#[$doc:meta])* $name:ident => $core:path {
        $( $(#[$own:meta])* $need:ident $field:ident: $ty:ty, )*
    }) => {
        $crate::wire::body::item_row! {
            $(#[$doc])*
            $name { $( $(#[$own])* $need $field: $ty, )* }
        }

        impl $name {
            /// The core's row, with the fields of every item.
            pub fn lower(&self, body: fitup_core::item::Body, units: $crate::lower::Units) -> $core {
                $core { body, $($field: $crate::lower::Lower::lower(&self.$field, units)),* }
            }
        }
    };
    ($(#[$doc:meta])* $name:ident { $($own:tt)* }) => {
        $crate::wire::define::record! {
            $(#[$doc])*
            pub struct $name {
                /// Id of the row: lower-case letters, digits and hyphens, unique over all tables of the file.
                required id: String,
                /// The name people see.
                required label: String,
                /// The series it belongs to.
                optional series: String,
                /// Years it was made.
                optional years: Option<$crate::wire::body::Years>,
                /// Serial numbers this row speaks of.
                optional serials: Option<$crate::wire::body::Serials>,
                /// Free note; say here where the local origin is.
                optional note: String,
                /// Price; left out = ask.
                optional price: Option<$crate::wire::value::Money>,
                /// Whether the dealer has it; left out = nothing is said.
                optional stock: Option<$crate::wire::body::Stock>,
                /// Mass; of an implement, ready for transport.
                optional mass: Option<$crate::wire::value::Stated<$crate::wire::value::Mass>>,
                /// Centre of gravity in local axes; of an implement, in transport.
                optional centre_of_gravity: Option<$crate::wire::body::Point>,
                $($own)*
                /// Ids of items the maker pairs it with outside the guide, as a kit's instruction sheet does.
                optional listed_with: Vec<String>,
                /// Underside in the side view, in local axes: path data of straight lines.
                optional underside: String,
                /// Outline shapes in local axes.
                optional shapes: Vec<$crate::wire::shape::Shape>,
                /// Connecting places.
                optional ports: Vec<$crate::wire::port::Port>,
            }
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

record! {
    /// Years of making; an end left out is not known.
    #[derive(Copy, Eq, Default)]
    pub struct Years {
        /// First year.
        optional first: Option<u16>,
        /// Last year.
        optional last: Option<u16>,
    }
}

record! {
    /// A range of serial numbers; an end left out is open.
    #[derive(Copy, Eq, Default)]
    pub struct Serials => core::Serials {
        /// First number that belongs.
        optional first: Option<u64>,
        /// Last number that belongs.
        optional last: Option<u64>,
    }
}

choice! {
    /// How the dealer can supply an item.
    #[derive(Copy, Eq)]
    pub enum Stock {
        /// So many stand in the yard, new.
        New(u32) "new",
        /// So many stand in the yard, used.
        Used(u32) "used",
        /// No longer made; only used ones turn up.
        Discontinued "discontinued",
    }
}

record! {
    /// A point in an item's local axes: x forward, y left, z up.
    #[derive(Copy)]
    pub struct Point => core::Point3 {
        /// Forward.
        required x: Length,
        /// To the left; left out = 0.
        optional y: Length,
        /// Up.
        required z: Length,
    }
}
