//! Hydraulic couplers: standard, size and the two halves.

use super::Meeting;
use crate::finding::{Dimension, Finding, Name, Verdict};
use crate::item::{Coupler, End, Role};
use crate::{findings, words};

findings! {
    /// Standard, size and halves go together.
    CouplerFits = "coupler-fits", Fit { line: Line, standard: Name, size: Name }
    /// A hose needs another end.
    CouplerDiffers = "coupler-differs", Fit { line: Line, carrier: Name, carried: Name }
    /// Standard or size is not stated.
    CouplerUnknown = "coupler-unknown", Fit { missing: Dimension, line: Line }
}

words! {
    /// What a hydraulic line is for.
    Line, shown as "role-" { Pressure = "pressure", Return = "return", CaseDrain = "case-drain" }
}

/// Couplers of one standard and size mate if one is the plug and the other the socket; anything
/// else takes other ends on the hoses.
pub(super) fn judge(meeting: &Meeting, carrier: &Coupler, carried: &Coupler) -> Finding {
    let line = line(meeting.role);
    for (side, coupler) in [(End::Carrier, carrier), (End::Carried, carried)] {
        for (what, is_missing) in
            [(&Coupler::STANDARD, coupler.standard.is_empty()), (&Coupler::SIZE, coupler.size.is_empty())]
        {
            if is_missing {
                return meeting.unknown(side, what.name(), |missing| CouplerUnknown { missing, line });
            }
        }
    }
    let halves_meet = match (carrier.gender, carried.gender) {
        (Some(a), Some(b)) => a != b,
        _ => true,
    };
    if carrier.standard == carried.standard && carrier.size == carried.size && halves_meet {
        let fact = CouplerFits { line, standard: carrier.standard.clone(), size: carrier.size.clone() };
        return meeting.finding(fact, Verdict::BoltsUp);
    }
    let name = |coupler: &Coupler| format!("{} {}", coupler.standard, coupler.size);
    let fact = CouplerDiffers { line, carrier: name(carrier), carried: name(carried) };
    meeting.finding(fact, Verdict::BoltsUpWithWork)
}

const fn line(role: Role) -> Line {
    match role {
        Role::Return => Line::Return,
        Role::CaseDrain => Line::CaseDrain,
        _ => Line::Pressure,
    }
}
