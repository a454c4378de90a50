//! Volume flows.

use super::macros::quantity;

quantity! {
    /// A volume flow, held in cubic metres per second.
    ///
    /// # Source
    /// The US gallon is 231 cubic inches exactly (NIST SP 811, appendix B).
    Flow / FlowUnit {
        /// Cubic metre per second.
        CubicMetrePerSecond, from_m3_s, m3_s, "m3/s", 1.0;
        /// Litre per minute.
        LitrePerMinute, from_l_min, l_min, "L/min", 0.001 / 60.0;
        /// US gallon per minute.
        GallonPerMinute, from_gal_min, gal_min, "gal/min", 231.0 * 0.0254 * 0.0254 * 0.0254 / 60.0;
    }
}
