//! Patterns that do not meet as they are: opened up, drilled, or not at all.
//!
//! That holes have to be made is *bolts up with work* whether or not it is decided; a decision ([`Change`](crate::build::Change))
//! turns what is needed into what is planned; the workshop time is the same. Holes made at the unit are made to meet, so that the
//! uncertainty of the drawings is not weighed against them.

use super::holes::{Plates, count};
use super::overlay::{add_drilled, overlay};
use super::{Mating, Meeting, Side};
use crate::finding::{Caution, Finding, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::decided::{DRILLING, OPENING, opening_work, times};
use crate::fit::lay::pattern_of;
use crate::fit::mating::bolt_pattern::{self as pattern, Drilling, Opening, Registration};
use crate::quantity::Length;

/// What would make the holes meet: opening up is tried before drilling. `missed` is the best lay as they are and its worst case.
pub(super) fn mend(
    context: &Context,
    meeting: &Meeting,
    plates: &Plates,
    missed: Option<(&Registration, Length)>,
) -> Mating {
    if let Some(opening) = &plates.lay.opening {
        return Mating {
            findings: vec![needs_opening(meeting, plates, opening)],
            overlay: Some(overlay(plates, &opening.registration)),
        };
    }
    if let Some(drilling) = &plates.lay.drilling {
        return drill(context, meeting, plates, drilling);
    }
    let mut finding = meeting.finding("holes-miss", Verdict::WontMount).with("bolts", plates.bolts());
    if let Some((found, worst_case)) = missed {
        finding = finding
            .with("margin", Value::Length(Length::from_m(found.margin)))
            .with("worst-case", Value::Length(worst_case));
    }
    Mating { findings: vec![finding], overlay: missed.map(|(found, _)| overlay(plates, found)) }
}

fn needs_opening(meeting: &Meeting, plates: &Plates, opening: &Opening) -> Finding {
    let mut finding = work(meeting, "holes-need-opening")
        .with("bolts", plates.bolts())
        .with("open-by", Value::Length(Length::from_m(opening.greatest)))
        .with("margin", Value::Length(Length::from_m(opening.registration.margin)));
    for (side, name) in [(pattern::Side::A, "open-carrier"), (pattern::Side::B, "open-carried")] {
        let most = opening.holes.iter().filter(|hole| hole.side == side).map(|hole| hole.by).reduce(f64::max);
        if let Some(most) = most {
            finding = finding.with(name, Value::Length(Length::from_m(most)));
        }
    }
    finding
        .with("carrier-port", port_name(meeting, Side::Carrier))
        .with("carried-port", port_name(meeting, Side::Carried))
        .with("work", Value::Work(times(OPENING, opening.holes.len())))
}

/// One finding for each plate that is drilled.
fn drill(context: &Context, meeting: &Meeting, plates: &Plates, drilling: &Drilling) -> Mating {
    let mut drawn = overlay(plates, &drilling.registration);
    let mut findings = Vec::new();
    for (into, side) in [(pattern::Side::A, Side::Carrier), (pattern::Side::B, Side::Carried)] {
        let holes: Vec<pattern::Drilled> = drilling.holes.iter().copied().filter(|hole| hole.into == into).collect();
        if holes.is_empty() {
            continue;
        }
        let (item, port) = meeting.end(side);
        let decided = context.is_drilled(item, &port.name);
        let finding = work(meeting, if decided { "holes-drilled" } else { "holes-need-drilling" })
            .with("bolts", plates.bolts())
            .with("drill", count(holes.len()))
            .with("margin", Value::Length(Length::from_m(drilling.registration.margin)))
            .with("side", Value::Item(item))
            .with("port", port_name(meeting, side))
            .with("work", Value::Work(times(DRILLING, holes.len())));
        if decided {
            add_drilled(&mut drawn, &holes);
        }
        findings.push(finding);
    }
    Mating { findings, overlay: Some(drawn) }
}

/// Holes that meet once they are opened up as decided: one finding for each plate that is.
pub(super) fn opened_up(context: &Context, meeting: &Meeting, plates: &Plates, found: &Registration) -> Mating {
    let mut findings = Vec::new();
    for (side, end) in [(Side::Carrier, meeting.carrier), (Side::Carried, meeting.carried)] {
        let Some(by) = context.opened_by(end.0, end.1) else { continue };
        let (item, port) = meeting.end(side);
        let hours = pattern_of(&port.kind).map(opening_work).unwrap_or_default();
        findings.push(
            work(meeting, "holes-opened")
                .with("bolts", plates.bolts())
                .with("open-by", Value::Length(by))
                .with("margin", Value::Length(Length::from_m(found.margin)))
                .with("side", Value::Item(item))
                .with("port", port_name(meeting, side))
                .with("work", Value::Work(hours)),
        );
    }
    Mating { findings, overlay: Some(overlay(plates, found)) }
}

fn work(meeting: &Meeting, code: &'static str) -> Finding {
    meeting.finding(code, Verdict::BoltsUpWithWork).caution(Caution::DrillingOrWelding)
}

fn port_name(meeting: &Meeting, side: Side) -> Value {
    Value::Label(meeting.end(side).1.name.clone())
}
