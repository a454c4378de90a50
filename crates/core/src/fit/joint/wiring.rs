//! Electric connectors: equal connectors with the same function mate.

use super::Meeting;
use crate::finding::{Finding, Value, Verdict};
use crate::item::Electric;

pub(super) fn judge(meeting: &Meeting, carrier: &Electric, carried: &Electric) -> Finding {
    if carrier == carried {
        meeting.finding("wiring-fits", Verdict::BoltsUp).with("connector", Value::Label(carrier.connector.clone()))
    } else {
        meeting
            .finding("wiring-differs", Verdict::BoltsUpWithWork)
            .with("carrier", Value::Label(carrier.connector.clone()))
            .with("carried", Value::Label(carried.connector.clone()))
    }
}
