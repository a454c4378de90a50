//! Labels without a language, for tests and the example.

use fitup_core::finding::Verdict;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::Labels;

pub struct Plain;

impl Labels for Plain {
    fn length(&self, value: Length) -> String {
        format!("{:.0}", value.mm())
    }
    fn angle(&self, value: Angle) -> String {
        format!("{:.0}°", value.deg())
    }
    fn mass(&self, value: Mass) -> String {
        format!("{:.0} kg", value.kg())
    }
    fn verdict(&self, verdict: Verdict) -> String {
        format!("{verdict:?}")
    }
}
