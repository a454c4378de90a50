//! Power take-offs: shaft type, speed and rotation.

use super::{Meeting, Side};
use crate::finding::{Finding, Value, Verdict};
use crate::item::{PowerTakeOff, PtoRotation};

/// Shaft type (ISO 500-1), one common speed, and the same rotation.
pub(super) fn judge(meeting: &Meeting, carrier: &PowerTakeOff, carried: &PowerTakeOff) -> Finding {
    let (Some(shaft), Some(wanted)) = (carrier.shaft_type, carried.shaft_type) else {
        let side = if carrier.shaft_type.is_none() { Side::Carrier } else { Side::Carried };
        return meeting.unknown("pto-unknown", side, "shaft-type");
    };
    let differs = |dimension: &str, verdict, a: String, b: String| {
        meeting
            .finding("pto-differs", verdict)
            .with("dimension", Value::Label(dimension.to_owned()))
            .with("carrier", Value::Label(a))
            .with("carried", Value::Label(b))
    };
    for (side, take_off) in [(Side::Carrier, carrier), (Side::Carried, carried)] {
        if take_off.speeds.is_empty() {
            return meeting.unknown("pto-unknown", side, "speed");
        }
    }
    let Some(speed) = carrier.speeds.iter().find(|speed| carried.speeds.contains(speed)) else {
        let list = |speeds: &[u16]| speeds.iter().map(u16::to_string).collect::<Vec<_>>().join(", ");
        return differs("speed", Verdict::WontMount, list(&carrier.speeds), list(&carried.speeds));
    };
    if let (Some(a), Some(b)) = (carrier.rotation, carried.rotation)
        && a != b
    {
        return differs("rotation", Verdict::WontMount, turns(a).to_owned(), turns(b).to_owned());
    }
    if shaft != wanted {
        // Another yoke or a shaft adapter takes a different spline up.
        return differs("shaft-type", Verdict::BoltsUpWithWork, shaft.to_string(), wanted.to_string());
    }
    meeting
        .finding("pto-fits", Verdict::BoltsUp)
        .with("shaft-type", Value::Count(shaft.into()))
        .with("speed", Value::Count((*speed).into()))
}

/// The rotation as figures name it; the words translate it.
const fn turns(rotation: PtoRotation) -> &'static str {
    match rotation {
        PtoRotation::Clockwise => "clockwise",
        PtoRotation::CounterClockwise => "counter-clockwise",
    }
}
