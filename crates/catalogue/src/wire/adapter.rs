//! The table of adapters.

use fitup_core::item as core;

use super::body::item_row;
use super::define::record;
use super::value::{Hours, Length};

item_row! {
    /// An adapter. Its ports of end `carried` go to the carrier, those of end `carrier` take the next item; the
    /// pose between them is in its local axes.
    Adapter {
        /// Hours of work it takes to fit.
        required hours: Hours,
        /// Bores it lines, if it is a sleeve rather than a piece between two faces.
        optional sleeve: Option<Sleeve>,
    }
}

record! {
    /// A sleeve that lines a bore so that a thinner pin fits.
    #[derive(Copy)]
    pub struct Sleeve => core::Sleeve {
        /// Outer diameter.
        required outer: Length,
        /// Inner diameter.
        required inner: Length,
        /// How many come in the set.
        required count: u32,
    }
}
