//! Masses.

use super::macros::quantity;

quantity! {
    /// A mass, held in kilograms. A "load" on an axle is the mass whose weight equals the force.
    ///
    /// # Source
    /// The avoirdupois pound of 0.453 592 37 kg is exact (NIST SP 811, appendix B).
    Mass / MassUnit {
        /// Kilogram.
        Kilogram, from_kg, kg, "kg", 1.0;
        /// Avoirdupois pound.
        Pound, from_lb, lb, "lb", 0.453_592_37;
    }
}
