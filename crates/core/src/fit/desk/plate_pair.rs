//! Hole patterns laid on each other once for the whole catalogue.
//!
//! Plates that meet look at each other, and each pattern is written as one looks at its own face: so the carried one is laid as
//! it is seen through its back.

use std::collections::{BTreeMap, BTreeSet};

use crate::fit::mating::bolt_pattern::{
    self as pattern, Drilling, Flip, Laid, Lay, Limits, Motion, Opening, PatternFault, RESOLUTION, USUAL_EFFORT,
    centred, drilling, facing_pattern, lay_on_within, opening,
};
use crate::fit::mating::bolted_joint::LEAST_SPACING;
use crate::fit::mating::thread::Thread;
use crate::item::{BoltPattern, Catalogue, End, Hole, HoleKind, ItemRef, Pins, PortKind, Role};
use crate::quantity::Length;

/// What came of laying a carried plate on its carrier's.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct PlatePair {
    /// Bolt diameter.
    pub bolt: Length,
    /// Bolts that have to go in.
    pub required: usize,
    /// How near the bolts come to going in.
    pub outcome: Outcome,
    /// Where the carried plate comes to lie once the bolts are in; nothing moved where they do not go in.
    pub rests: Motion,
    /// The thickness of the carried plate, where it is stated.
    pub plate: Option<Length>,
    /// Holes opened up so that the bolts go in, if they do not as they are.
    pub opening: Option<Opening>,
    /// Holes drilled so that the bolts go in, if they do not as they are.
    pub drilling: Option<Drilling>,
}

/// What laying one plate on the other came to.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Outcome {
    /// The best lay.
    Best(Lay),
    /// So many bolts cannot go in, wherever the plates lie.
    NoPairing,
    /// The best lay is not known, but none has a margin above this.
    AtMost(Length),
    /// Too many holes to be compared at all.
    TooMany,
    /// A pattern that means nothing.
    Senseless,
}

impl PlatePair {
    /// The lay in which the bolts go in: as the plates are, or as they are mended.
    pub fn lay(&self) -> Option<&Lay> {
        let as_it_is = self.outcome.best().filter(|best| best.fits());
        let opened = self.opening.as_ref().map(|opening| &opening.lay);
        as_it_is.or(opened).or(self.drilling.as_ref().map(|drilling| &drilling.lay))
    }
}

impl Outcome {
    /// The best lay, where it is known.
    pub const fn best(&self) -> Option<&Lay> {
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
pub(crate) struct PlatePairs {
    pattern_of_port: BTreeMap<(ItemRef, usize), usize>,
    /// Of pinned ports, the number of their pins: equal ones have one.
    pins_of_port: BTreeMap<(ItemRef, usize), usize>,
    pairs: BTreeMap<(usize, usize), Option<PlatePair>>,
}

impl PlatePairs {
    /// Lays every carried pattern on every carrier's of the same role.
    pub fn of(catalogue: &Catalogue) -> Self {
        let mut plates: Vec<PlateShape> = Vec::new();
        let mut pinned: Vec<&Pins> = Vec::new();
        let mut all = Self::default();
        let mut ends: BTreeMap<(Role, End), BTreeSet<usize>> = BTreeMap::new();
        for item in catalogue.items() {
            for (index, port) in catalogue.body(item).ports.iter().enumerate() {
                if let PortKind::Pins(pins) = &port.kind {
                    let known = pinned.iter().position(|other| *other == pins).unwrap_or_else(|| {
                        pinned.push(pins);
                        pinned.len() - 1
                    });
                    all.pins_of_port.insert((item, index), known);
                }
                let Some(plate) = port.kind.pattern().map(PlateShape::of) else { continue };
                let known = plates.iter().position(|other| *other == plate).unwrap_or_else(|| {
                    plates.push(plate);
                    plates.len() - 1
                });
                all.pattern_of_port.insert((item, index), known);
                ends.entry((port.role, port.end)).or_default().insert(known);
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
                    all.pairs.entry((a, b)).or_insert_with(|| compare_within(&plates[a], &plates[b], &mut left));
                }
            }
        }
        all
    }

    /// The number of a port's pattern or pins: equal ones of one kind have one.
    pub fn number(&self, port: (ItemRef, usize)) -> Option<usize> {
        self.pattern_of_port.get(&port).or_else(|| self.pins_of_port.get(&port)).copied()
    }

    /// The lay of one port's pattern on another's.
    pub fn of_ports(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<&PlatePair> {
        let (a, b) = (self.pattern_of_port.get(&carrier)?, self.pattern_of_port.get(&carried)?);
        self.pairs.get(&(*a, *b))?.as_ref()
    }
}

/// A bolt pattern as it is laid: what it measures, wherever that comes from.
#[derive(Debug, PartialEq)]
struct PlateShape {
    holes: Vec<pattern::Hole>,
    bolt: Option<Length>,
    required: Option<u32>,
    may_flip: bool,
    plate: Option<Length>,
}

impl PlateShape {
    fn of(pattern: &BoltPattern) -> Self {
        Self {
            holes: pattern.holes.iter().map(mating_hole).collect(),
            bolt: bolt_of(pattern),
            required: pattern.required,
            may_flip: pattern.may_flip,
            plate: pattern.plate,
        }
    }
}

/// The thread that a pattern states, if it can be read.
pub(crate) fn thread_of(pattern: &BoltPattern) -> Option<Thread> {
    Thread::read(pattern.thread.as_deref()?)
}

/// The bolt that a pattern states: its thread says the diameter too.
fn bolt_of(pattern: &BoltPattern) -> Option<Length> {
    let thread = thread_of(pattern).map(|thread| Length::from_m(thread.diameter));
    thread.or(pattern.bolt.map(|bolt| bolt.value))
}

/// Lays `carried` on `carrier`; `None` if a pattern has no holes or the bolt is not stated.
pub(crate) fn compare(carrier: &BoltPattern, carried: &BoltPattern) -> Option<PlatePair> {
    let mut left = USUAL_EFFORT;
    compare_within(&PlateShape::of(carrier), &PlateShape::of(carried), &mut left)
}

/// [`compare`] with the work taken from what is `left` for all lays.
fn compare_within(carrier: &PlateShape, carried: &PlateShape, left: &mut u64) -> Option<PlatePair> {
    if carrier.holes.is_empty() || carried.holes.is_empty() {
        return None;
    }
    // Of two the thicker one has to go in; that they differ is said by the joint.
    let bolt = carrier.bolt.into_iter().chain(carried.bolt).reduce(Length::max)?;
    let fewer = carrier.holes.len().min(carried.holes.len());
    let stated = carrier.required.into_iter().chain(carried.required).max();
    let required = stated.map_or(fewer, |n| n as usize);
    let facing = facing_pattern(&carried.holes);
    let share = (*left).clamp(LEAST_EFFORT, USUAL_EFFORT);
    let mut efforts = [share; 3];
    let lay = Laying { a: &carrier.holes, b: &facing, bolt: bolt.m(), required };
    let mut pair = lay.within(Limits::UPRIGHT, &mut efforts);
    if pair.outcome.misses() && carried.may_flip {
        // Turned round or over it may yet go on as it is.
        let mut turned = lay.within(Flip::Allowed.into(), &mut efforts);
        if !turned.outcome.misses() {
            std::mem::swap(&mut pair, &mut turned);
        }
    }
    *left = left.saturating_sub(efforts.iter().map(|effort| share - effort).sum());
    Some(PlatePair { plate: carried.plate, ..pair })
}

/// A pattern to be laid on another, both as seen from before the carrier's face.
struct Laying<'a> {
    a: &'a [pattern::Hole],
    b: &'a [pattern::Hole],
    bolt: f64,
    required: usize,
}

impl Laying<'_> {
    fn within(&self, limits: Limits, [laying, opening_up, marking]: &mut [u64; 3]) -> PlatePair {
        let &Self { a, b, bolt, required } = self;
        let outcome = match lay_on_within(a, b, bolt, required, limits, laying) {
            Ok(Laid::Found(best)) => Outcome::Best(best),
            Ok(Laid::NoPairing { .. }) => Outcome::NoPairing,
            Ok(Laid::Undecided { at_most, .. }) => Outcome::AtMost(Length::from_m(at_most)),
            Err(PatternFault::TooManyHoles { .. }) => Outcome::TooMany,
            Err(_) => Outcome::Senseless,
        };
        let (mut opened, mut drilled) = (None, None);
        if outcome.misses() {
            opened = opening(a, b, bolt, required, limits, opening_up).ok().flatten();
            let proposed = drilling(a, b, bolt, required, limits, marking).ok().flatten();
            drilled = proposed.filter(|proposed| leaves_metal(proposed, a, b));
        }
        let as_it_is = outcome.best().filter(|best| best.fits());
        let mended = opened.as_ref().map(|opening| &opening.lay).or(drilled.as_ref().map(|drilling| &drilling.lay));
        let rests = as_it_is.or(mended).map_or(Motion::NONE, |lay| centred(a, b, bolt, lay));
        let bolt = Length::from_m(bolt);
        PlatePair { bolt, required, outcome, rests, plate: None, opening: opened, drilling: drilled }
    }
}

fn leaves_metal(drilling: &Drilling, a: &[pattern::Hole], b: &[pattern::Hole]) -> bool {
    drilling.holes.iter().all(|hole| {
        let template = if hole.into == pattern::Plate::A { b } else { a };
        let least = template.get(hole.through).map_or(0.0, |through| through.diameter * LEAST_SPACING);
        hole.nearest.is_none_or(|nearest| nearest >= least)
    })
}

pub(crate) fn mating_hole(hole: &Hole) -> pattern::Hole {
    let (u, v, diameter) = (hole.u.value.m(), hole.v.value.m(), hole.diameter.value.m());
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
    use crate::quantity::Stated;

    fn plate(holes: &[(f64, f64)]) -> BoltPattern {
        let mm = Length::from_mm;
        let hole = |&(u, v): &(f64, f64)| Hole::drawn(mm(u), mm(v), mm(13.5));
        BoltPattern {
            holes: holes.iter().map(hole).collect(),
            bolt: Some(Stated::drawn(mm(12.0))),
            ..BoltPattern::default()
        }
    }

    const SQUARE: [(f64, f64); 4] = [(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 60.0)];

    #[test]
    fn equal_plates_keep_the_whole_play() {
        let pair = compare(&plate(&SQUARE), &plate(&SQUARE)).unwrap();
        assert!((pair.outcome.best().unwrap().margin - 0.0015).abs() < 1e-9);
        assert!(pair.opening.is_none() && pair.drilling.is_none());
    }

    #[test]
    fn holes_are_not_drilled_where_no_metal_would_be_left() {
        let mut wanted = plate(&SQUARE);
        wanted.required = Some(4);
        let far = compare(&wanted, &plate(&[(0.0, 0.0), (100.0, 0.0)])).unwrap();
        assert_eq!(far.drilling.map(|drilling| drilling.holes.len()), Some(2));
        let near = compare(&wanted, &plate(&[(0.0, 0.0), (100.0, 0.0), (100.0, 50.0), (0.0, 50.0)])).unwrap();
        assert_eq!(near.drilling, None, "10 mm from an existing hole");
    }

    #[test]
    fn plates_known_not_to_meet_are_told_from_those_not_compared() {
        let misses = |outcome: Outcome| outcome.misses();
        let at_most = |mm| Outcome::AtMost(Length::from_mm(mm));
        assert!(misses(Outcome::NoPairing) && misses(at_most(-1.0)));
        assert!(!misses(at_most(0.0)) && !misses(Outcome::TooMany) && !misses(Outcome::Senseless));
        let best = |b: &[(f64, f64)]| compare(&plate(&SQUARE), &plate(b)).unwrap().outcome;
        assert!(!misses(best(&SQUARE)) && misses(best(&[(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 70.0)])));
        let many = plate(&[(0.0, 0.0); pattern::MOST_HOLES + 1]);
        assert_eq!(compare(&many, &plate(&SQUARE)).unwrap().outcome, Outcome::TooMany);
    }

    #[test]
    fn what_one_lay_spends_is_taken_from_all_and_a_little_is_always_left() {
        let square = PlateShape::of(&plate(&SQUARE));
        let mut left = USUAL_EFFORT;
        compare_within(&square, &square, &mut left).unwrap();
        assert!(left < USUAL_EFFORT && left > USUAL_EFFORT - 1_000, "an ordinary plate takes few hundred: {left}");
        let mut left = 0;
        let ordinary = compare_within(&square, &square, &mut left).unwrap();
        assert_eq!((ordinary.outcome.best().is_some(), left), (true, 0));
    }

    #[test]
    fn nothing_is_laid_without_holes_or_a_bolt() {
        assert_eq!(compare(&plate(&[]), &plate(&SQUARE)), None);
        let unbolted = BoltPattern { bolt: None, ..plate(&SQUARE) };
        assert_eq!(compare(&unbolted, &unbolted), None);
    }
}
