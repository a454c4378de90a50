//! Two hole patterns as they are drawn over each other.

use super::holes::Plates;
use crate::fit::mating::bolt_pattern::{self as pattern, Lay};
use crate::item::{Hole, HoleKind, Slot};
use crate::quantity::{Angle, Length, Stated};

/// Two hole patterns in the carrier port's plane.
#[derive(Debug, Clone, PartialEq)]
pub struct Overlay {
    /// Holes of the carrier.
    pub carrier: Vec<Hole>,
    /// Holes of the carried item, moved by the motion found.
    pub carried: Vec<Hole>,
    /// Bolt diameter.
    pub bolt: Length,
    /// Pairs (carrier hole, carried hole) with the margin of each.
    pub pairs: Vec<(usize, usize, Length)>,
    /// Least margin; negative = the bolts do not go in.
    pub margin: Length,
    /// Whether the plate had to be turned over.
    pub flipped: bool,
    /// Rotation found.
    pub rotation: Angle,
    /// Shift found, (u, v).
    pub shift: (Length, Length),
}

/// The carried pattern moved by the motion found, over the carrier's.
pub(super) fn overlay(plates: &Plates, found: &Lay) -> Overlay {
    let motion = found.motion;
    let flipped = motion.face == pattern::Face::Flipped;
    // The carried pattern is written as one looks at its own face, and is seen here through its back.
    let turned = |direction: Angle| {
        let own = if flipped { direction } else { Angle::from_deg(180.0) - direction };
        own + Angle::from_rad(motion.turn)
    };
    Overlay {
        carrier: plates.carrier.to_vec(),
        carried: plates
            .carried
            .iter()
            .map(|hole| {
                let [u, v] = motion.applied([0.0 - hole.u.value.m(), hole.v.value.m()]).map(Length::from_m);
                Hole {
                    u: Stated { value: u, ..hole.u },
                    v: Stated { value: v, ..hole.v },
                    slot: hole.slot.map(|slot| Slot { direction: turned(slot.direction), ..slot }),
                    ..*hole
                }
            })
            .collect(),
        bolt: plates.pair.bolt,
        pairs: found.pairs.iter().map(|pair| (pair.a, pair.b, Length::from_m(pair.margin))).collect(),
        margin: Length::from_m(found.margin),
        flipped,
        rotation: Angle::from_rad(motion.turn),
        shift: (Length::from_m(motion.shift_u), Length::from_m(motion.shift_v)),
    }
}

/// Adds holes drilled through others to an overlay: round, of the diameter of the hole they are marked through, and bolted.
pub(super) fn add_drilled(overlay: &mut Overlay, holes: &[pattern::Drilled]) {
    for hole in holes {
        let (from, into) = match hole.into {
            pattern::Plate::A => (&overlay.carried, &overlay.carrier),
            pattern::Plate::B => (&overlay.carrier, &overlay.carried),
        };
        let Some(&through) = from.get(hole.through) else { continue };
        let made = into.len();
        let drilled = Hole { slot: None, kind: HoleKind::Plain, ..through };
        let play = through.diameter.value - overlay.bolt;
        match hole.into {
            pattern::Plate::A => {
                overlay.carrier.push(drilled);
                overlay.pairs.push((made, hole.through, play));
            }
            pattern::Plate::B => {
                overlay.carried.push(drilled);
                overlay.pairs.push((hole.through, made, play));
            }
        }
    }
}
