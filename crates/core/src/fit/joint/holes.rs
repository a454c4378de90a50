//! Bolt patterns: the carried plate laid on the carrier's, bolts through both.

use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting, Side};
use crate::finding::{Caution, Finding, Value, Verdict};
use crate::fit::answer::{Overlay, OverlayHole};
use crate::fit::context::Context;
use crate::fit::lay::{Lay, lay};
use crate::fit::mating::bolt_pattern::{self as pattern, Registration};
use crate::item::{BoltPattern, Hole, HoleKind};
use crate::quantity::{Angle, Length};

/// The holes of both plates against each other.
pub(super) fn judge(context: &Context, meeting: &Meeting, carrier: &BoltPattern, carried: &BoltPattern) -> Mating {
    for (side, holes) in [(Side::Carrier, carrier), (Side::Carried, carried)] {
        if holes.holes.is_empty() {
            return meeting.unknown("holes-unknown", side, "holes").into();
        }
    }
    let known = context.lay(meeting.carrier, meeting.carried);
    let made = if known.is_none() { lay(carrier, carried) } else { None };
    let Some(lay) = known.or(made.as_ref()) else {
        return meeting.unknown("holes-unknown", Side::Carrier, "bolt").into();
    };
    let plates = Plates { carrier: &carrier.holes, carried: &carried.holes, lay };
    match &lay.found {
        // A pattern too large to settle, or one that means nothing, is not known.
        _ if !lay.settled => meeting.unknown("holes-unknown", Side::Carried, "holes").into(),
        Some(found) => weigh(meeting, &plates, found),
        None => mend(meeting, &plates, None),
    }
}

struct Plates<'a> {
    carrier: &'a [Hole],
    carried: &'a [Hole],
    lay: &'a Lay,
}

impl Plates<'_> {
    fn bolts(&self) -> Value {
        Value::Count(i64::try_from(self.lay.required).unwrap_or(i64::MAX))
    }
}

fn weigh(meeting: &Meeting, plates: &Plates, found: &Registration) -> Mating {
    let margin = Length::from_m(found.margin);
    let Some(weighed) = Weighed::new(margin, &meeting.port_half_ranges()) else {
        return meeting.unknown("holes-unknown", Side::Carried, "holes").into();
    };
    let figures = |finding: Finding| {
        finding
            .with("bolts", plates.bolts())
            .with("margin", Value::Length(margin))
            .with("worst-case", Value::Length(weighed.worst_case()))
    };
    let finding = match weighed.decided {
        Decided::Fits => figures(meeting.finding("holes-meet", Verdict::BoltsUp)),
        Decided::Misfits => return mend(meeting, plates, Some((found, weighed.worst_case()))),
        Decided::Open => {
            let tightest = found.pairs.iter().min_by(|p, q| p.margin.total_cmp(&q.margin)).map_or(0, |pair| pair.b);
            let dimension = format!("hole-{}-u", tightest + 1);
            let finding = figures(meeting.finding("holes-may-meet", Verdict::CheckFirst));
            weighed.open(finding, meeting.carried.0, &meeting.carried_port.name, &dimension).check(meeting.compare())
        }
    };
    Mating { findings: vec![finding], overlay: Some(overlay(plates, found)) }
}

/// Patterns that do not meet as they are: opened up, drilled, or not at all.
fn mend(meeting: &Meeting, plates: &Plates, missed: Option<(&Registration, Length)>) -> Mating {
    if let Some(opened) = &plates.lay.opening {
        let finding = meeting
            .finding("holes-need-opening", Verdict::BoltsUpWithWork)
            .with("bolts", plates.bolts())
            .with("open-by", Value::Length(Length::from_m(opened.greatest)))
            .with("margin", Value::Length(Length::from_m(opened.registration.margin)))
            .caution(Caution::DrillingOrWelding);
        return Mating { findings: vec![finding], overlay: Some(overlay(plates, &opened.registration)) };
    }
    if let Some(drilled) = &plates.lay.drilling {
        let side = match drilled.holes.first().map(|hole| hole.into) {
            Some(pattern::Side::A) => meeting.carrier.0,
            _ => meeting.carried.0,
        };
        let finding = meeting
            .finding("holes-need-drilling", Verdict::BoltsUpWithWork)
            .with("bolts", plates.bolts())
            .with("drill", Value::Count(i64::try_from(drilled.holes.len()).unwrap_or(i64::MAX)))
            .with("margin", Value::Length(Length::from_m(drilled.registration.margin)))
            .with("side", Value::Item(side))
            .caution(Caution::DrillingOrWelding);
        return Mating { findings: vec![finding], overlay: Some(overlay(plates, &drilled.registration)) };
    }
    let mut finding = meeting.finding("holes-miss", Verdict::WontMount).with("bolts", plates.bolts());
    if let Some((found, worst_case)) = missed {
        finding = finding
            .with("margin", Value::Length(Length::from_m(found.margin)))
            .with("worst-case", Value::Length(worst_case));
    }
    Mating { findings: vec![finding], overlay: missed.map(|(found, _)| overlay(plates, found)) }
}

fn overlay(plates: &Plates, found: &Registration) -> Overlay {
    let motion = found.motion;
    let flipped = motion.face == pattern::Face::Flipped;
    let drawn = |hole: &Hole, u: Length, v: Length, direction: &dyn Fn(Angle) -> Angle| OverlayHole {
        u,
        v,
        diameter: hole.diameter,
        slot: hole.slot.map(|slot| (slot.travel, direction(slot.direction))),
        tapped: hole.kind == HoleKind::Tapped,
    };
    let moved = |direction: Angle| {
        let own = if flipped { Angle::from_deg(180.0) - direction } else { direction };
        own + Angle::from_rad(motion.turn)
    };
    Overlay {
        carrier: plates.carrier.iter().map(|hole| drawn(hole, hole.u, hole.v, &|d| d)).collect(),
        carried: plates
            .carried
            .iter()
            .map(|hole| {
                let [u, v] = motion.applied([hole.u.m(), hole.v.m()]);
                drawn(hole, Length::from_m(u), Length::from_m(v), &moved)
            })
            .collect(),
        bolt: plates.lay.bolt,
        pairs: found.pairs.iter().map(|pair| (pair.a, pair.b, Length::from_m(pair.margin))).collect(),
        margin: Length::from_m(found.margin),
        flipped,
        rotation: Angle::from_rad(motion.turn),
        shift: (Length::from_m(motion.shift_u), Length::from_m(motion.shift_v)),
    }
}
