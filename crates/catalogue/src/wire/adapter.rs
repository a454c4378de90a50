//! The table of adapters.

use serde::{Deserialize, Serialize};

use super::body::item_row;
use super::value::{Hours, Length};

item_row! {
    /// An adapter. Its ports of end `carried` go to the carrier, those of end `carrier` take the next item; the
    /// pose between them is in its local axes.
    Adapter {
        /// Hours of work it takes to fit.
        hours: Hours,
        /// Bores it lines, if it is a sleeve rather than a piece between two faces.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        sleeve: Option<Sleeve>,
    }
}

/// A sleeve that lines a bore so that a thinner pin fits.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Sleeve {
    /// Outer diameter.
    pub outer: Length,
    /// Inner diameter.
    pub inner: Length,
    /// How many come in the set.
    pub count: u32,
}
