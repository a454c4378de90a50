//! Plain labels for tests: millimetres, degrees, kilograms.

use fitup_core::finding::Verdict;
use fitup_core::quantity::{Angle, Length, Mass};

use crate::sheet::Labels;

pub(crate) struct Plain;

impl Labels for Plain {
    fn length(&self, value: Length) -> String {
        format!("{} mm", crate::svg::number(value.mm()))
    }
    fn angle(&self, value: Angle) -> String {
        format!("{:.1}°", value.deg())
    }
    fn mass(&self, value: Mass) -> String {
        format!("{:.0} kg", value.kg())
    }
    fn verdict(&self, verdict: Verdict) -> String {
        format!("{verdict:?}")
    }
}
