//! Two hole patterns as they are drawn over each other.

use super::holes::Plates;
use crate::fit::answer::{Overlay, OverlayHole};
use crate::fit::mating::bolt_pattern::{self as pattern, Registration};
use crate::item::{Hole, HoleKind};
use crate::quantity::{Angle, Length};

/// The carried pattern moved by the motion found, over the carrier's.
pub(super) fn overlay(plates: &Plates, found: &Registration) -> Overlay {
    let motion = found.motion;
    let flipped = motion.face == pattern::Face::Flipped;
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

fn drawn(hole: &Hole, u: Length, v: Length, direction: &dyn Fn(Angle) -> Angle) -> OverlayHole {
    OverlayHole {
        u,
        v,
        diameter: hole.diameter,
        slot: hole.slot.map(|slot| (slot.travel, direction(slot.direction))),
        tapped: hole.kind == HoleKind::Tapped,
    }
}

/// Adds holes drilled through others to an overlay: round, of the diameter of the hole they are marked through, and bolted.
pub(super) fn add_drilled(overlay: &mut Overlay, holes: &[pattern::Drilled]) {
    for hole in holes {
        let (from, into) = match hole.into {
            pattern::Side::A => (&overlay.carried, &overlay.carrier),
            pattern::Side::B => (&overlay.carrier, &overlay.carried),
        };
        let Some(&through) = from.get(hole.through) else { continue };
        let made = into.len();
        let drilled = OverlayHole { slot: None, tapped: false, ..through };
        let play = through.diameter - overlay.bolt;
        match hole.into {
            pattern::Side::A => {
                overlay.carrier.push(drilled);
                overlay.pairs.push((made, hole.through, play));
            }
            pattern::Side::B => {
                overlay.carried.push(drilled);
                overlay.pairs.push((hole.through, made, play));
            }
        }
    }
}
