//! Hole patterns laid on each other once for the whole catalogue.

use crate::fit::mating::bolt_pattern::{
    self as pattern, Drilling, Flip, Opening, PatternFault, RESOLUTION, Registered, Registration, Side, USUAL_EFFORT,
    drilling, opening, register_within,
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
    /// How near the bolts come to going in.
    pub outcome: Outcome,
    /// Holes opened up so that the bolts go in, if they do not as they are.
    pub opening: Option<Opening>,
    /// Holes drilled so that the bolts go in, if they do not as they are.
    pub drilling: Option<Drilling>,
}

/// What laying one plate on the other came to.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Outcome {
    /// The best lay.
    Best(Registration),
    /// So many bolts cannot go in, wherever the plates lie.
    NoPairing,
    /// The best lay is not known, but none has a margin above this.
    AtMost(Length),
    /// Too many holes to be compared at all.
    TooMany,
    /// A pattern that means nothing.
    Senseless,
}

impl Outcome {
    /// The best lay, where it is known.
    pub const fn best(&self) -> Option<&Registration> {
        match self {
            Self::Best(best) => Some(best),
            _ => None,
        }
    }

    /// Whether the bolts certainly do not go in as the plates are.
    fn misses(&self) -> bool {
        match self {
            Self::Best(best) => !best.fits(),
            Self::NoPairing => true,
            Self::AtMost(margin) => margin.m() < -RESOLUTION,
            Self::TooMany | Self::Senseless => false,
        }
    }
}

/// The work spent on all lays of a catalogue together, in the unit of [`USUAL_EFFORT`]. Own choice, some
/// strewn patterns' worth: ordinary plates take next to nothing of it.
const WHOLE_EFFORT: u64 = 30_000_000;

/// The work that each lay may cost even where others have used up the whole. Own choice, far above an ordinary plate's need.
const LEAST_EFFORT: u64 = 100_000;

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
        let mut left = WHOLE_EFFORT;
        for role in Role::ALL {
            let (Some(carriers), Some(carried)) = (ends.get(&(role, End::Carrier)), ends.get(&(role, End::Carried)))
            else {
                continue;
            };
            for &a in carriers {
                for &b in carried {
                    all.lays.or_insert_with((a, b), || lay_within(patterns[a], patterns[b], &mut left));
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
    let mut left = USUAL_EFFORT;
    lay_within(carrier, carried, &mut left)
}

/// [`lay`] with the work taken from what is `left` for all lays.
fn lay_within(carrier: &BoltPattern, carried: &BoltPattern, left: &mut u64) -> Option<Lay> {
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
    let share = (*left).clamp(LEAST_EFFORT, USUAL_EFFORT);
    let [mut laying, mut opening_up, mut marking] = [share; 3];
    let outcome = match register_within(&a, &b, bolt.m(), required, flip, &mut laying) {
        Ok(Registered::Found(best)) => Outcome::Best(best),
        Ok(Registered::NoPairing { .. }) => Outcome::NoPairing,
        Ok(Registered::Undecided { at_most, .. }) => Outcome::AtMost(Length::from_m(at_most)),
        Err(PatternFault::TooManyHoles { .. }) => Outcome::TooMany,
        Err(_) => Outcome::Senseless,
    };
    let (mut opened, mut drilled) = (None, None);
    if outcome.misses() {
        opened = opening(&a, &b, bolt.m(), required, flip, &mut opening_up).ok().flatten();
        let proposed = drilling(&a, &b, bolt.m(), required, flip, &mut marking).ok().flatten();
        drilled = proposed.filter(|proposed| leaves_metal(proposed, &a, &b));
    }
    *left = left.saturating_sub(3 * share - laying - opening_up - marking);
    Some(Lay { bolt, required, outcome, opening: opened, drilling: drilled })
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
        assert!((lay.outcome.best().unwrap().margin - 0.0015).abs() < 1e-9);
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
    fn plates_known_not_to_meet_are_told_from_those_not_compared() {
        let misses = |outcome: Outcome| outcome.misses();
        let at_most = |mm| Outcome::AtMost(Length::from_mm(mm));
        assert!(misses(Outcome::NoPairing) && misses(at_most(-1.0)));
        assert!(!misses(at_most(0.0)) && !misses(Outcome::TooMany) && !misses(Outcome::Senseless));
        let best = |b: &[(f64, f64)]| lay(&plate(&SQUARE), &plate(b)).unwrap().outcome;
        assert!(!misses(best(&SQUARE)) && misses(best(&[(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 70.0)])));
        let many = plate(&[(0.0, 0.0); pattern::MOST_HOLES + 1]);
        assert_eq!(lay(&many, &plate(&SQUARE)).unwrap().outcome, Outcome::TooMany);
    }

    #[test]
    fn what_one_lay_spends_is_taken_from_all_and_a_little_is_always_left() {
        let mut left = USUAL_EFFORT;
        lay_within(&plate(&SQUARE), &plate(&SQUARE), &mut left).unwrap();
        assert!(left < USUAL_EFFORT && left > USUAL_EFFORT - 1_000, "an ordinary plate takes few hundred: {left}");
        let mut left = 0;
        let ordinary = lay_within(&plate(&SQUARE), &plate(&SQUARE), &mut left).unwrap();
        assert_eq!((ordinary.outcome.best().is_some(), left), (true, 0));
    }

    #[test]
    fn nothing_is_laid_without_holes_or_a_bolt() {
        assert_eq!(lay(&plate(&[]), &plate(&SQUARE)), None);
        let unbolted = BoltPattern { bolt: None, ..plate(&SQUARE) };
        assert_eq!(lay(&unbolted, &unbolted), None);
    }
}
