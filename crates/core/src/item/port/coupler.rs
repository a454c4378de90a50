//! Hydraulic couplers.

use super::table::table;

/// Which half of a coupler an end is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum CouplerGender {
    /// The plug.
    Male,
    /// The socket.
    Female,
}

/// A hydraulic coupler.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Coupler {
    /// Standard, as written by it: "ISO 7241-A", "ISO 7241-B", "ISO 16028", "37° flare".
    pub standard: String,
    /// Size as the standard names it: "12.5", "-8".
    pub size: String,
    /// Which half.
    pub gender: Option<CouplerGender>,
}

table! {
    Coupler, besides [standard, size, gender]
    told STANDARD "standard";
    told SIZE "size";
}
