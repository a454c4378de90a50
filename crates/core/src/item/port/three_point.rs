//! Three-point hitches.

use super::table::table;
use crate::quantity::{Length, Mass, Stated};

/// A three-point hitch.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ThreePoint {
    /// Categories it serves as ISO 730 names them: "1N", "1", "2N", "2" …
    pub categories: Vec<String>,
    /// Whether a quick-attach frame is fitted.
    pub quick_attach: bool,
    /// Lift capacity at the lower hitch points (ISO 789-2), carrier side.
    pub lift: Option<Mass>,
    /// Lift capacity 610 mm behind the points (ISO 789-2), carrier side.
    pub lift_610: Option<Mass>,
    /// Diameter of the lower hitch pins (carried side) or ball bores (carrier side).
    pub lower_pin: Option<Stated<Length>>,
    /// Diameter of the upper hitch pin.
    pub upper_pin: Option<Stated<Length>>,
    /// Lower hitch point span, shoulder to shoulder.
    pub span: Option<Stated<Length>>,
    /// Mast height.
    pub mast: Option<Stated<Length>>,
}

table! {
    ThreePoint, besides [categories, quick_attach, lift, lift_610]
    told CATEGORY "category";
    size LOWER_PIN "lower-pin" lower_pin;
    size UPPER_PIN "upper-pin" upper_pin;
    size SPAN "span" span;
    size MAST "mast" mast;
}
