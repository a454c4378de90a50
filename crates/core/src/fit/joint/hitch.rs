//! Three-point hitches by category.

use super::{Mating, Meeting, Side};
use crate::finding::{Value, Verdict};
use crate::item::ThreePoint;

/// Categories in the order of their pins, smallest first; N categories keep the pins of their
/// number and take the span of the next smaller one (ISO 730:2009, 3.1.5).
const BY_PIN: [&[&str]; 5] = [&["0"], &["1N", "1"], &["2N", "2"], &["3N", "3"], &["4N", "4"]];

/// One category in common fits; an implement with smaller pins than the hitch's balls goes on with
/// reducing bushings; one with larger pins does not go on.
pub(super) fn judge(meeting: &Meeting, carrier: &ThreePoint, carried: &ThreePoint) -> Mating {
    for (side, hitch) in [(Side::Carrier, carrier), (Side::Carried, carried)] {
        if hitch.categories.is_empty() {
            return meeting.unknown("hitch-unknown", side, "category").into();
        }
    }
    if let Some(common) = carrier.categories.iter().find(|category| carried.categories.contains(category)) {
        return meeting.finding("hitch-fits", Verdict::BoltsUp).with("category", Value::Label(common.clone())).into();
    }
    let pin = |hitch: &ThreePoint| hitch.categories.iter().filter_map(|category| rank(category)).max();
    let (code, verdict) = match (pin(carrier), pin(carried)) {
        (Some(balls), Some(pins)) if pins < balls => ("hitch-needs-bushings", Verdict::BoltsUpWithWork),
        (Some(_), Some(_)) => ("hitch-differs", Verdict::WontMount),
        (None, _) => return meeting.unknown("hitch-unknown", Side::Carrier, "category").into(),
        (_, None) => return meeting.unknown("hitch-unknown", Side::Carried, "category").into(),
    };
    meeting
        .finding(code, verdict)
        .with("carrier", Value::Label(carrier.categories.join(", ")))
        .with("carried", Value::Label(carried.categories.join(", ")))
        .into()
}

fn rank(category: &str) -> Option<usize> {
    BY_PIN.iter().position(|names| names.contains(&category))
}
