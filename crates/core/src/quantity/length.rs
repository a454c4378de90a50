//! Lengths.

use super::macros::quantity;

quantity! {
    /// A length, held in metres.
    ///
    /// # Source
    /// The international inch of 25.4 mm and foot of 304.8 mm are exact (NIST SP 811, appendix B).
    ///
    /// # Examples
    /// ```
    /// use fitup_core::quantity::Length;
    /// assert_eq!(Length::from_inch(2.0).mm(), 50.8);
    /// ```
    Length / LengthUnit {
        /// Millimetre.
        Millimetre, from_mm, mm, "mm", 0.001;
        /// Centimetre.
        Centimetre, from_cm, cm, "cm", 0.01;
        /// Metre.
        Metre, from_m, m, "m", 1.0;
        /// International inch.
        Inch, from_inch, inch, "in", 0.0254;
        /// International foot.
        Foot, from_foot, foot, "ft", 0.3048;
    }
}
