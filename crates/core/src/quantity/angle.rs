//! Angles.

use super::macros::quantity;

quantity! {
    /// A plane angle, held in radians.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::quantity::Angle;
    /// assert!((Angle::from_deg(180.0).rad() - std::f64::consts::PI).abs() < 1e-15);
    /// ```
    Angle / AngleUnit {
        /// Radian.
        Radian, from_rad, rad, "rad", 1.0;
        /// Degree.
        Degree, from_deg, deg, "deg", std::f64::consts::PI / 180.0;
    }
}
