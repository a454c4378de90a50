//! Power take-offs: shaft type, speed and rotation.

use super::Meeting;
use crate::finding::{Count, Dimension, Either, Finding, Name, Verdict};
use crate::item::{End, Line, PowerTakeOff, PtoRotation};
use crate::{findings, words};

findings! {
    /// Shaft type, speed and rotation agree.
    PtoFits = "pto-fits", Fit { shaft_type: Count, speed: Count }
    /// One of them does not.
    PtoDiffers = "pto-differs", Fit {
        dimension: Dimension, carrier: Either<PtoRotation, Name>, carried: Either<PtoRotation, Name>,
    }
    /// Shaft type, speed or rotation is not stated.
    PtoUnknown = "pto-unknown", Fit { missing: Dimension }
}

words! {
    for PtoRotation, shown as "rotation-" { Clockwise = "clockwise", CounterClockwise = "counter-clockwise" }
}

/// Shaft type (ISO 500-1), one common speed, and the same rotation.
pub(super) fn judge(meeting: &Meeting, carrier: &PowerTakeOff, carried: &PowerTakeOff) -> Finding {
    let (Some(shaft), Some(wanted)) = (carrier.shaft_type, carried.shaft_type) else {
        let side = if carrier.shaft_type.is_none() { End::Carrier } else { End::Carried };
        return meeting.unknown(side, PowerTakeOff::SHAFT_TYPE.name(), |missing| PtoUnknown { missing });
    };
    let differs = |dimension: &Line<PowerTakeOff>, verdict, carrier, carried| {
        meeting.finding(PtoDiffers { dimension: dimension.name().to_string(), carrier, carried }, verdict)
    };
    for (side, take_off) in [(End::Carrier, carrier), (End::Carried, carried)] {
        if take_off.speeds.is_empty() {
            return meeting.unknown(side, PowerTakeOff::SPEED.name(), |missing| PtoUnknown { missing });
        }
    }
    let Some(speed) = carrier.speeds.iter().find(|speed| carried.speeds.contains(speed)) else {
        let list = |speeds: &[u16]| Either::B(speeds.iter().map(u16::to_string).collect::<Vec<_>>().join(", "));
        return differs(&PowerTakeOff::SPEED, Verdict::WontMount, list(&carrier.speeds), list(&carried.speeds));
    };
    let (Some(a), Some(b)) = (carrier.rotation, carried.rotation) else {
        let side = if carrier.rotation.is_none() { End::Carrier } else { End::Carried };
        return meeting.unknown(side, PowerTakeOff::ROTATION.name(), |missing| PtoUnknown { missing });
    };
    if a != b {
        return differs(&PowerTakeOff::ROTATION, Verdict::WontMount, Either::A(a), Either::A(b));
    }
    if shaft != wanted {
        // Another yoke or a shaft adapter takes a different spline up.
        let [a, b] = [shaft, wanted].map(|shaft| Either::B(shaft.to_string()));
        return differs(&PowerTakeOff::SHAFT_TYPE, Verdict::BoltsUpWithWork, a, b);
    }
    meeting.finding(PtoFits { shaft_type: shaft.into(), speed: (*speed).into() }, Verdict::BoltsUp)
}
