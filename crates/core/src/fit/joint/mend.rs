//! Patterns that do not meet as they are: opened up, drilled, or not at all.
//!
//! That holes have to be made is *bolts up with work* whether or not it is decided; a decision ([`Change`](crate::build::Change))
//! turns what is needed into what is planned; the workshop time is the same. Holes made at the unit are made to meet, so that the
//! uncertainty of the drawings is not weighed against them.

use super::holes::Plates;
use super::overlay::{add_drilled, overlay};
use super::{Mating, Meeting, metal};
use crate::finding::{Caution, Count, Fact, Finding, Margin, Name, PartSize, Verdict};
use crate::findings;
use crate::fit::context::Context;
use crate::fit::context::decided::{DRILLING, OPENING, opening_work, times};
use crate::fit::mating::bolt_pattern::{self as pattern, Drilling, GREATEST_OPENING, Lay, Opening};
use crate::item::{End, HoleKind, ItemRef};
use crate::quantity::{Length, Work};

findings! {
    /// Neither opening up nor drilling makes the holes meet.
    HolesMiss = "holes-miss", Fit { bolts: Count, margin: Option<Margin>, worst_case: Option<Length> }
    /// The bolts are thicker than the holes, by more than holes are opened up.
    BoltTooThick = "bolt-too-thick", Fit { hole: PartSize, bolt: PartSize, over: Length, side: ItemRef }
    /// Holes have to be opened up, by how much on either side.
    HolesNeedOpening = "holes-need-opening", Fit {
        bolts: Count,
        open_by: Length,
        margin: Margin,
        open_carrier: Option<Length>,
        open_carried: Option<Length>,
        carrier_port: Name,
        carried_port: Name,
        work: Work,
    }
    /// Holes of one plate are opened up as decided.
    HolesOpened = "holes-opened", Fit {
        bolts: Count, open_by: Length, margin: Margin, side: ItemRef, port: Name, work: Work,
    }
    /// Holes have to be drilled into one plate.
    HolesNeedDrilling = "holes-need-drilling", Fit {
        bolts: Count, drill: Count, margin: Margin, side: ItemRef, port: Name, work: Work,
    }
    /// Holes are drilled into one plate as decided.
    HolesDrilled = "holes-drilled", Fit {
        bolts: Count, drill: Count, margin: Margin, side: ItemRef, port: Name, work: Work,
    }
}

/// What would make the holes meet: opening up is tried before drilling. `missed` is the best lay as they are and its worst case.
pub(super) fn mend(context: &Context, meeting: &Meeting, plates: &Plates, missed: Option<(&Lay, Length)>) -> Mating {
    if let Some(opening) = &plates.pair.opening {
        return Mating {
            findings: needs_opening(context, meeting, plates, opening),
            overlay: Some(overlay(plates, &opening.lay)),
        };
    }
    if let Some(drilling) = &plates.pair.drilling {
        return drill(context, meeting, plates, drilling);
    }
    if let Some(thick) = bolt_too_thick(meeting, plates) {
        return thick.into();
    }
    let fact = HolesMiss {
        bolts: plates.bolts(),
        margin: missed.map(|(found, _)| Length::from_m(found.margin)),
        worst_case: missed.map(|(_, worst_case)| worst_case),
    };
    Mating {
        findings: vec![meeting.finding(fact, Verdict::WontMount)],
        overlay: missed.map(|(found, _)| overlay(plates, found)),
    }
}

fn bolt_too_thick(meeting: &Meeting, plates: &Plates) -> Option<Finding> {
    let sides = [(meeting.carrier.0, plates.carrier), (meeting.carried.0, plates.carried)];
    let narrow = sides.into_iter().filter_map(|(side, holes)| {
        let plain = holes.iter().filter(|hole| hole.kind == HoleKind::Plain);
        Some((side, plain.map(|hole| hole.diameter.value).reduce(Length::max)?))
    });
    let (side, hole) = narrow.min_by(|a, b| a.1.m().total_cmp(&b.1.m()))?;
    let (bolt, over) = (plates.pair.bolt, plates.pair.bolt - hole);
    let fact = BoltTooThick { hole, bolt, over, side };
    (over.m() > GREATEST_OPENING).then(|| meeting.finding(fact, Verdict::WontMount))
}

fn needs_opening(context: &Context, meeting: &Meeting, plates: &Plates, opening: &Opening) -> Vec<Finding> {
    let most = |side| {
        let by = opening.holes.iter().filter(|hole| hole.side == side).map(|hole| hole.by);
        by.reduce(f64::max).map(Length::from_m)
    };
    let fact = HolesNeedOpening {
        bolts: plates.bolts(),
        open_by: Length::from_m(opening.greatest),
        margin: Length::from_m(opening.lay.margin),
        open_carrier: most(pattern::Plate::A),
        open_carried: most(pattern::Plate::B),
        carrier_port: port_name(meeting, End::Carrier),
        carried_port: port_name(meeting, End::Carried),
        work: times(OPENING, opening.holes.len()),
    };
    let metal = SIDES.into_iter().filter_map(|(into, side)| {
        let pattern = meeting.end(side).1.kind.pattern()?;
        metal::round(context, meeting, side, &metal::opened(pattern, into, &opening.holes))
    });
    std::iter::once(work(meeting, fact)).chain(metal).collect()
}

const SIDES: [(pattern::Plate, End); 2] = [(pattern::Plate::A, End::Carrier), (pattern::Plate::B, End::Carried)];

/// One finding for each plate that is drilled.
fn drill(context: &Context, meeting: &Meeting, plates: &Plates, drilling: &Drilling) -> Mating {
    let mut drawn = overlay(plates, &drilling.lay);
    let mut findings = Vec::new();
    for (into, end) in SIDES {
        let holes: Vec<pattern::Drilled> = drilling.holes.iter().copied().filter(|hole| hole.into == into).collect();
        if holes.is_empty() {
            continue;
        }
        let (item, port) = meeting.end(end);
        let (bolts, drill, side, port) = (plates.bolts(), holes.len(), item, port.name.clone());
        let margin = Length::from_m(drilling.lay.margin);
        let hours = times(DRILLING, drill);
        findings.push(if context.is_drilled(item, &port) {
            add_drilled(&mut drawn, &holes);
            work(meeting, HolesDrilled { bolts, drill, margin, side, port, work: hours })
        } else {
            work(meeting, HolesNeedDrilling { bolts, drill, margin, side, port, work: hours })
        });
        let other = if end == End::Carrier { End::Carried } else { End::Carrier };
        let through = meeting.end(other).1.kind.pattern();
        let made = through.map(|through| metal::drilled(end, through, &holes)).unwrap_or_default();
        findings.extend(metal::round(context, meeting, end, &made));
    }
    Mating { findings, overlay: Some(drawn) }
}

/// Holes that meet once they are opened up as decided: one finding for each plate that is.
pub(super) fn opened_up(context: &Context, meeting: &Meeting, plates: &Plates, found: &Lay) -> Mating {
    let mut findings = Vec::new();
    for (side, end) in [(End::Carrier, meeting.carrier), (End::Carried, meeting.carried)] {
        let Some(by) = context.opened_by(end.0, end.1) else { continue };
        let (item, port) = meeting.end(side);
        let hours = port.kind.pattern().map(opening_work).unwrap_or_default();
        let fact = HolesOpened {
            bolts: plates.bolts(),
            open_by: by,
            margin: Length::from_m(found.margin),
            side: item,
            port: port_name(meeting, side),
            work: hours,
        };
        findings.push(work(meeting, fact));
        let made = port.kind.pattern().map(metal::decided).unwrap_or_default();
        findings.extend(metal::round(context, meeting, side, &made));
    }
    Mating { findings, overlay: Some(overlay(plates, found)) }
}

fn work<F: Fact>(meeting: &Meeting, fact: F) -> Finding {
    meeting.finding(fact, Verdict::BoltsUpWithWork).caution(Caution::DrillingOrWelding)
}

fn port_name(meeting: &Meeting, side: End) -> String {
    meeting.end(side).1.name.clone()
}
