//! Hole patterns laid on each other once for the whole catalogue.

use crate::fit::mating::bolt_pattern::{
    self as pattern, Drilling, Flip, Opening, Registered, Registration, Side, drilling, opening, register,
};
use crate::item::{BoltPattern, Catalogue, End, Hole, HoleKind, ItemRef, PortKind, Role};
use crate::ordered::{Map, Set};
use crate::quantity::Length;

/// Least distance between the centres of two holes, in hole diameters: a hole drilled nearer than
/// this leaves too little metal between. Source: EN 1993-1-8, table 3.3, least spacing 2.2 d₀
/// (from memory).
const LEAST_SPACING: f64 = 2.2;

/// What came of laying a carried plate on its carrier's.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Lay {
    /// Bolt diameter.
    pub bolt: Length,
    /// Bolts that have to go in.
    pub required: usize,
    /// The best lay; `None` if so many bolts cannot go in at all.
    pub found: Option<Registration>,
    /// Whether the patterns could be compared.
    pub settled: bool,
    /// Whether they could not because they have too many holes, or too many alike ones, to be compared in time.
    pub too_large: bool,
    /// Holes opened up so that the bolts go in, if they do not as they are.
    pub opening: Option<Opening>,
    /// Holes drilled so that the bolts go in, if they do not as they are.
    pub drilling: Option<Drilling>,
}

/// Every lay that a catalogue's ports can need. Equal patterns are laid once.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Lays {
    pattern_of_port: Map<(ItemRef, usize), usize>,
    lays: Map<(usize, usize), Option<Lay>>,
}

impl Lays {
    /// Lays every carried pattern on every carrier's of the same role.
    pub fn of(catalogue: &Catalogue) -> Self {
        let mut patterns: Vec<&BoltPattern> = Vec::new();
        let mut all = Self::default();
        let mut ends: Map<(Role, End), Set<usize>> = Map::new();
        for item in catalogue.items() {
            for (index, port) in catalogue.body(item).ports.iter().enumerate() {
                let Some(pattern) = pattern_of(&port.kind) else { continue };
                let known = patterns.iter().position(|&other| other == pattern).unwrap_or_else(|| {
                    patterns.push(pattern);
                    patterns.len() - 1
                });
                all.pattern_of_port.insert((item, index), known);
                ends.or_insert_with((port.role, port.end), Set::default).insert(known);
            }
        }
        for role in Role::ALL {
            let (Some(carriers), Some(carried)) = (ends.get(&(role, End::Carrier)), ends.get(&(role, End::Carried)))
            else {
                continue;
            };
            for &a in carriers {
                for &b in carried {
                    all.lays.or_insert_with((a, b), || lay(patterns[a], patterns[b]));
                }
            }
        }
        all
    }

    /// The lay of one port's pattern on another's.
    pub fn of_ports(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<&Lay> {
        let (a, b) = (self.pattern_of_port.get(&carrier)?, self.pattern_of_port.get(&carried)?);
        self.lays.get(&(*a, *b))?.as_ref()
    }
}

/// The bolt pattern of a port, if it has one.
pub(super) const fn pattern_of(kind: &PortKind) -> Option<&BoltPattern> {
    match kind {
        PortKind::BoltPattern(pattern) => Some(pattern),
        PortKind::SeatBase(base) => Some(&base.pattern),
        _ => None,
    }
}

/// Lays `carried` on `carrier`; `None` if a pattern has no holes or the bolt is not stated.
pub(super) fn lay(carrier: &BoltPattern, carried: &BoltPattern) -> Option<Lay> {
    if carrier.holes.is_empty() || carried.holes.is_empty() {
        return None;
    }
    let bolt = carrier.bolt.or(carried.bolt)?;
    let fewer = carrier.holes.len().min(carried.holes.len());
    let stated = carrier.required.into_iter().chain(carried.required).max();
    let required = stated.map_or(fewer, |n| n as usize);
    let flip = if carried.may_flip { Flip::Allowed } else { Flip::Forbidden };
    let plain = |holes: &[Hole]| holes.iter().map(mating_hole).collect::<Vec<_>>();
    let (a, b) = (plain(&carrier.holes), plain(&carried.holes));
    let registered = register(&a, &b, bolt.m(), required, flip);
    let settled = matches!(registered, Ok(Registered::Found(_) | Registered::NoPairing { .. }));
    let too_large =
        matches!(registered, Ok(Registered::Undecided { .. }) | Err(pattern::PatternFault::TooManyHoles { .. }));
    let found = match registered {
        Ok(Registered::Found(found)) => Some(found),
        _ => None,
    };
    let (mut opened, mut drilled) = (None, None);
    if settled && found.as_ref().is_none_or(|found| !found.fits()) {
        opened = opening(&a, &b, bolt.m(), required, flip).ok().flatten();
        let proposed = drilling(&a, &b, bolt.m(), required, flip).ok().flatten();
        drilled = proposed.filter(|proposed| leaves_metal(proposed, &a, &b));
    }
    Some(Lay { bolt, required, found, settled, too_large, opening: opened, drilling: drilled })
}

fn leaves_metal(drilling: &Drilling, a: &[pattern::Hole], b: &[pattern::Hole]) -> bool {
    drilling.holes.iter().all(|hole| {
        let template = if hole.into == Side::A { b } else { a };
        let least = template.get(hole.through).map_or(0.0, |through| through.diameter * LEAST_SPACING);
        hole.nearest.is_none_or(|nearest| nearest >= least)
    })
}

fn mating_hole(hole: &Hole) -> pattern::Hole {
    let (u, v, diameter) = (hole.u.m(), hole.v.m(), hole.diameter.m());
    let made = match hole.kind {
        HoleKind::Plain => pattern::Hole::plain(u, v, diameter),
        HoleKind::Tapped => pattern::Hole::tapped(u, v, diameter),
    };
    match hole.slot {
        Some(slot) => made.slotted(slot.travel.m(), slot.direction.rad()),
        None => made,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plate(holes: &[(f64, f64)]) -> BoltPattern {
        let mm = Length::from_mm;
        let hole =
            |&(u, v): &(f64, f64)| Hole { u: mm(u), v: mm(v), diameter: mm(13.5), kind: HoleKind::Plain, slot: None };
        BoltPattern { holes: holes.iter().map(hole).collect(), bolt: Some(mm(12.0)), ..BoltPattern::default() }
    }

    const SQUARE: [(f64, f64); 4] = [(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 60.0)];

    #[test]
    fn equal_plates_keep_the_whole_play() {
        let lay = lay(&plate(&SQUARE), &plate(&SQUARE)).unwrap();
        assert!((lay.found.unwrap().margin - 0.0015).abs() < 1e-9);
        assert!(lay.opening.is_none() && lay.drilling.is_none());
    }

    #[test]
    fn holes_are_not_drilled_where_no_metal_would_be_left() {
        let mut wanted = plate(&SQUARE);
        wanted.required = Some(4);
        let far = lay(&wanted, &plate(&[(0.0, 0.0), (100.0, 0.0)])).unwrap();
        assert_eq!(far.drilling.map(|drilling| drilling.holes.len()), Some(2));
        let near = lay(&wanted, &plate(&[(0.0, 0.0), (100.0, 0.0), (100.0, 50.0), (0.0, 50.0)])).unwrap();
        assert_eq!(near.drilling, None, "10 mm from an existing hole");
    }

    #[test]
    fn nothing_is_laid_without_holes_or_a_bolt() {
        assert_eq!(lay(&plate(&[]), &plate(&SQUARE)), None);
        let unbolted = BoltPattern { bolt: None, ..plate(&SQUARE) };
        assert_eq!(lay(&unbolted, &unbolted), None);
    }
}
