//! The header: what the file calls itself and which units its numbers are in.

use super::define::record;

record! {
    /// The units that every number of the file is written in. All are required: there is no default.
    #[derive(Eq)]
    pub struct Units {
        /// Lengths: `mm`, `cm`, `m`, `in` or `ft`.
        required length: String,
        /// Masses: `kg` or `lb`.
        required mass: String,
        /// Pressures: `Pa`, `kPa`, `MPa`, `bar` or `psi`.
        required pressure: String,
        /// Flows: `m3/s`, `L/min` or `gal/min` (US gallons).
        required flow: String,
        /// Powers: `W`, `kW` or `hp` (mechanical).
        required power: String,
        /// Angles: `deg` or `rad`.
        required angle: String,
        /// Currency of every price, as ISO 4217 writes it: three capital letters.
        required money: String,
    }
}
