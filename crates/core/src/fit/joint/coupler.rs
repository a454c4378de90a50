//! Hydraulic couplers: standard, size and the two halves.

use super::{Meeting, Side};
use crate::finding::{Finding, Value, Verdict};
use crate::item::{Coupler, Role};

/// Couplers of one standard and size mate if one is the plug and the other the socket; anything
/// else takes other ends on the hoses.
pub(super) fn judge(meeting: &Meeting, carrier: &Coupler, carried: &Coupler) -> Finding {
    let line = Value::Label(line_name(meeting.role).to_owned());
    for (side, coupler) in [(Side::Carrier, carrier), (Side::Carried, carried)] {
        for (what, is_missing) in [("standard", coupler.standard.is_empty()), ("size", coupler.size.is_empty())] {
            if is_missing {
                return meeting.unknown("coupler-unknown", side, what).with("line", line);
            }
        }
    }
    let halves_meet = match (carrier.gender, carried.gender) {
        (Some(a), Some(b)) => a != b,
        _ => true,
    };
    if carrier.standard == carried.standard && carrier.size == carried.size && halves_meet {
        return meeting
            .finding("coupler-fits", Verdict::BoltsUp)
            .with("line", line)
            .with("standard", Value::Label(carrier.standard.clone()))
            .with("size", Value::Label(carrier.size.clone()));
    }
    let name = |coupler: &Coupler| Value::Label(format!("{} {}", coupler.standard, coupler.size));
    meeting
        .finding("coupler-differs", Verdict::BoltsUpWithWork)
        .with("line", line)
        .with("carrier", name(carrier))
        .with("carried", name(carried))
}

/// The line as figures name it; the words translate it.
const fn line_name(role: Role) -> &'static str {
    match role {
        Role::Return => "return",
        Role::CaseDrain => "case-drain",
        _ => "pressure",
    }
}
