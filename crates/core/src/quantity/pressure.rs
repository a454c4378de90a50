//! Pressures.

use super::macros::quantity;

quantity! {
    /// A pressure, held in pascals.
    ///
    /// # Source
    /// 1 psi = 1 lbf/in² = 0.453 592 37 kg × 9.806 65 m/s² / (0.0254 m)² (NIST SP 811, appendix B).
    Pressure / PressureUnit {
        /// Pascal.
        Pascal, from_pa, pa, "Pa", 1.0;
        /// Kilopascal.
        Kilopascal, from_kpa, kpa, "kPa", 1e3;
        /// Megapascal.
        Megapascal, from_mpa, mpa, "MPa", 1e6;
        /// Bar.
        Bar, from_bar, bar, "bar", 1e5;
        /// Pound-force per square inch.
        Psi, from_psi, psi, "psi", 0.453_592_37 * 9.806_65 / (0.0254 * 0.0254);
    }
}
