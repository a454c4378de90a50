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

/// Labels as long as feet, inches and sixteenths make them.
#[allow(dead_code, reason = "the example and the tests of this crate use one or the other")]
pub struct Long;

impl Labels for Long {
    fn length(&self, value: Length) -> String {
        let sixteenths = (value.mm() / 25.4 * 16.0).round() as i64;
        format!("{} ft {} {}/16 in", sixteenths / 192, sixteenths % 192 / 16, sixteenths % 16)
    }
    fn angle(&self, value: Angle) -> String {
        format!("{:.1}°", value.deg())
    }
    fn mass(&self, value: Mass) -> String {
        format!("{:.0} lb", value.kg() / 0.453_592_37)
    }
    fn verdict(&self, verdict: Verdict) -> String {
        Plain.verdict(verdict)
    }
}
