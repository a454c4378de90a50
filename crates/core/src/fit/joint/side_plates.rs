//! A frame's pair of side plates over a machine's pair of faces.

use super::Meeting;
use super::uncertain::{Decided, Weighed};
use crate::finding::{Dimension, Finding, PartSize, Probability, Verdict};
use crate::findings;
use crate::fit::mating::side_plates::{MOST_SHIMS, Over, side_plates};
use crate::item::{BoltPattern, DimensionName, End, Port, Role, Towards};
use crate::quantity::Length;

findings! {
    /// The plates lie wider than the machine: shims fill the gap.
    PlatesNeedShims = "plates-need-shims", Fit { between: PartSize, over: PartSize, gap: Length, limit: Length }
    /// The plates lie wider than shims make up for.
    PlatesTooWide = "plates-too-wide", Fit { between: PartSize, over: PartSize, gap: Length, limit: Length }
    /// The plates do not go over the machine.
    PlatesTooNarrow = "plates-too-narrow", Fit { between: PartSize, over: PartSize, short: Length }
    /// Too close to call.
    PlatesMayFit = "plates-may-fit", Fit {
        between: PartSize,
        over: PartSize,
        gap: Length,
        limit: Length,
        worst_case: Length,
        probability: Probability,
        settles: Option<Length>,
    }
    /// A width is not stated.
    PlatesUnknown = "plates-unknown", Fit { missing: Dimension }
}

/// The width between the frame's plates against the width over the machine's faces, where an anchor has plates on both sides of the
/// machine: those look sideways, or say how wide the pair is.
pub(super) fn judge(meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Option<Finding> {
    if !is_pair(meeting, [carrier, carried]) {
        return None;
    }
    let (over, between) = match (carrier.pair_width, carried.pair_width) {
        (Some(over), Some(between)) => (over, between),
        (None, _) => return Some(unknown(meeting, End::Carrier)),
        (Some(_), None) => return Some(unknown(meeting, End::Carried)),
    };
    let ranges = [meeting.carrier_port.half_range(&over), meeting.carried_port.half_range(&between)];
    let (over, between) = (over.value, between.value);
    let Some(laid) = side_plates(between.m(), over.m()) else { return Some(unknown(meeting, End::Carried)) };
    let Some(weighed) = Weighed::new(Length::from_m(laid.margin_narrow.min(laid.margin_wide)), &ranges) else {
        return Some(unknown(meeting, End::Carried));
    };
    let (gap, limit) = (Length::from_m(laid.gap), Length::from_m(MOST_SHIMS));
    match (weighed.decided, laid.over) {
        (Decided::Open, _) => {
            let (worst_case, probability, settles) = (weighed.worst_case(), weighed.probability(), weighed.settles());
            let fact = PlatesMayFit { between, over, gap, limit, worst_case, probability, settles };
            let (item, port) = meeting.end(if ranges[0] > ranges[1] { End::Carrier } else { End::Carried });
            let check = weighed.check(item, &port.name, NAME);
            Some(meeting.finding(fact, Verdict::CheckFirst).check(check))
        }
        (_, Over::TooNarrow) => {
            Some(meeting.finding(PlatesTooNarrow { between, over, short: -gap }, Verdict::WontMount))
        }
        (_, Over::TooWide) => Some(meeting.finding(PlatesTooWide { between, over, gap, limit }, Verdict::WontMount)),
        (_, Over::Shimmed) => {
            Some(meeting.finding(PlatesNeedShims { between, over, gap, limit }, Verdict::BoltsUpWithWork))
        }
        (_, Over::Snug) => None,
    }
}

const NAME: DimensionName = BoltPattern::PAIR_WIDTH.name();

/// Whether the joint is an anchor with plates on both sides of the machine.
pub(super) fn is_pair(meeting: &Meeting, both: [&BoltPattern; 2]) -> bool {
    let sideways = |port: &Port| port.pose.is_some_and(|pose| matches!(pose.faces, Towards::Left | Towards::Right));
    matches!(meeting.role, Role::AxleAnchor | Role::FrontAnchor)
        && (both.iter().any(|pattern| pattern.pair_width.is_some())
            || sideways(meeting.carrier_port) && sideways(meeting.carried_port))
}

fn unknown(meeting: &Meeting, side: End) -> Finding {
    meeting.unknown(side, NAME, |missing| PlatesUnknown { missing })
}
