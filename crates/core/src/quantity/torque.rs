//! Tightening torques.

use super::macros::quantity;

quantity! {
    /// A tightening torque, held in newton metres.
    Torque / TorqueUnit {
        /// Newton metre.
        NewtonMetre, from_nm, nm, "N m", 1.0;
        /// Pound-force foot (NIST SP 811, appendix B: a pound-force at a foot).
        PoundForceFoot, from_lbf_ft, lbf_ft, "lbf ft", 0.453_592_37 * super::STANDARD_GRAVITY * 0.3048;
    }
}
