//! Electric connectors: equal connectors with the same function mate.

use super::Meeting;
use crate::finding::{Finding, Name, Verdict};
use crate::findings;
use crate::item::Electric;

findings! {
    /// The connectors are equal.
    WiringFits = "wiring-fits", Fit { connector: Name }
    /// One connector has to be changed.
    WiringDiffers = "wiring-differs", Fit { carrier: Name, carried: Name }
}

pub(super) fn judge(meeting: &Meeting, carrier: &Electric, carried: &Electric) -> Finding {
    if carrier == carried {
        meeting.finding(WiringFits { connector: carrier.connector.clone() }, Verdict::BoltsUp)
    } else {
        let fact = WiringDiffers { carrier: carrier.connector.clone(), carried: carried.connector.clone() };
        meeting.finding(fact, Verdict::BoltsUpWithWork)
    }
}
