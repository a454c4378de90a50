//! Powers.

use super::macros::quantity;

quantity! {
    /// A power, held in watts.
    ///
    /// # Source
    /// The mechanical horsepower is 550 ft·lbf/s (NIST SP 811, appendix B).
    Power / PowerUnit {
        /// Watt.
        Watt, from_w, w, "W", 1.0;
        /// Kilowatt.
        Kilowatt, from_kw, kw, "kW", 1e3;
        /// Mechanical horsepower.
        Horsepower, from_hp, hp, "hp", 550.0 * 0.3048 * 0.453_592_37 * 9.806_65;
    }
}
