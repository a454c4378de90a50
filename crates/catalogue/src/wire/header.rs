//! The header: what the file calls itself and which units its numbers are in.

use serde::{Deserialize, Serialize};

/// The units that every number of the file is written in. All are required: there is no default.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Units {
    /// Lengths: `mm`, `cm`, `m`, `in` or `ft`.
    pub length: String,
    /// Masses: `kg` or `lb`.
    pub mass: String,
    /// Pressures: `Pa`, `kPa`, `MPa`, `bar` or `psi`.
    pub pressure: String,
    /// Flows: `m3/s`, `L/min` or `gal/min` (US gallons).
    pub flow: String,
    /// Powers: `W`, `kW` or `hp` (mechanical).
    pub power: String,
    /// Angles: `deg` or `rad`.
    pub angle: String,
    /// Currency of every price, as ISO 4217 writes it: three capital letters.
    pub money: String,
}
