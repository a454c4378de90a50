//! Forces.

use super::macros::quantity;

/// Standard acceleration of free fall, m/s²; used only where a cylinder force is turned into the
/// mass it can hold up. Source: 3rd CGPM (1901), exact by definition.
pub const STANDARD_GRAVITY: f64 = 9.806_65;

quantity! {
    /// A force, held in newtons.
    Force / ForceUnit {
        /// Newton.
        Newton, from_n, n, "N", 1.0;
        /// Kilonewton.
        Kilonewton, from_kn, kn, "kN", 1e3;
        /// Pound-force (NIST SP 811, appendix B: one avoirdupois pound under standard gravity).
        PoundForce, from_lbf, lbf, "lbf", 0.453_592_37 * STANDARD_GRAVITY;
    }
}
