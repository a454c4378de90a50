//! Does one plate's bolt pattern go on another's, and with how much to spare?
//!
//! Two plates are laid on each other: shifted, turned, and where the plate allows it flipped, until the bolts go through.
//! [`lay_on`] finds the lay and the pairing of holes that leave the greatest least margin. [`opening()`] and
//! [`drilling()`] say what the workshop could do where that margin is negative.

mod centred;
mod drilling;
mod hole;
mod limits;
mod opening;
mod pair;
mod probability;
mod search;
mod shift;
mod turn;
mod worst_case;

pub use centred::centred;
pub use drilling::{Drilled, Drilling, drilling};
pub use hole::{Hole, HoleKind, Slot, allowance, facing_pattern};
pub use limits::Limits;
pub use opening::{GREATEST_OPENING, Opened, Opening, opening};
pub(super) use pair::beyond;
pub use probability::{
    HalfRange, HoleErrors, Law, MOST_EXACT, PatternProbability, ProbabilityFault, WorstMargin, pattern_probability,
};
pub use worst_case::{HoleError, WorstCase, worst_case};

use super::LARGEST;
use crate::order;
use search::{Centre, Pairing, Plates, Searched, search};

/// How exactly a margin is found, metres: 1e-6 mm. A margin this little below zero counts as zero.
///
/// Far below what can be measured, so it decides nothing in the workshop; it only keeps rounding from turning an exact
/// zero into a misfit. Own choice.
pub const RESOLUTION: f64 = 1e-9;

/// The most holes a pattern may have to be compared at all. Own choice, far above any plate's.
pub const MOST_HOLES: usize = 500;

/// The work spent by [`lay_on`] before it says "undecided", in single hole-to-hole comparisons: well under a second.
///
/// Ordinary plates need a few hundred. Own choice.
pub const USUAL_EFFORT: u64 = 4_000_000;

/// Whether the second plate may be put on with its other face forward.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flip {
    /// Only as drawn.
    Forbidden,
    /// Either face.
    Allowed,
}

/// Which face of the second plate lies forward.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// The face it is drawn from.
    AsDrawn,
    /// The other one: `u` is reversed before the turn.
    Flipped,
}

/// Where the second plate ends up in the first plate's axes: face, then turn, then shift.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Motion {
    /// Which face lies forward.
    pub face: Face,
    /// Turn, radians from `u` towards `v`, in −π..π.
    pub turn: f64,
    /// Shift along `u`, metres.
    pub shift_u: f64,
    /// Shift along `v`, metres.
    pub shift_v: f64,
}

/// Two holes that share a bolt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PairedHoles {
    /// Index in the first pattern.
    pub a: usize,
    /// Index in the second pattern.
    pub b: usize,
    /// What is left of the allowance at this lay, metres; negative: the bolt does not go through.
    pub margin: f64,
}

/// The best lay of the second plate on the first.
#[derive(Clone, Debug, PartialEq)]
pub struct Lay {
    /// The least margin over all pairs, as great as any lay can make it, metres.
    pub margin: f64,
    /// A lay that reaches it. Where the margin is limited by the play of a hole itself, many lays do.
    pub motion: Motion,
    /// The pairs in the order of the first pattern.
    pub pairs: Vec<PairedHoles>,
    /// Holes of the first pattern that get no bolt, in order.
    pub unpaired_a: Vec<usize>,
    /// Holes of the second pattern that get no bolt, in order.
    pub unpaired_b: Vec<usize>,
}

impl Lay {
    /// Whether all bolts go through.
    pub fn fits(&self) -> bool {
        self.margin >= -RESOLUTION
    }
}

/// What came of laying one pattern on the other.
#[derive(Clone, Debug, PartialEq)]
pub enum Laid {
    /// The best lay.
    Found(Lay),
    /// Fewer pairs than required could ever take the bolt, wherever the plates lie.
    NoPairing {
        /// The most pairs that could.
        possible: usize,
    },
    /// The patterns are too large and too irregular to settle with the effort allowed.
    Undecided {
        /// The best lay met with so far, if any: its margin is reached.
        at_least: Option<Lay>,
        /// No lay has a margin above this, metres.
        at_most: f64,
    },
}

impl Laid {
    /// The best lay, where it is known.
    pub fn found(&self) -> Option<&Lay> {
        match self {
            Laid::Found(lay) => Some(lay),
            Laid::NoPairing { .. } | Laid::Undecided { .. } => None,
        }
    }
}

/// Which of the two patterns.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Plate {
    /// The first.
    A,
    /// The second.
    B,
}

/// Why patterns cannot be compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PatternFault {
    /// A coordinate, diameter or travel is not a finite number.
    NotANumber {
        /// In which pattern.
        side: Plate,
        /// Which hole.
        hole: usize,
    },
    /// A coordinate, diameter or travel is beyond [`LARGEST`].
    TooLarge {
        /// In which pattern.
        side: Plate,
        /// Which hole.
        hole: usize,
    },
    /// A diameter is zero or negative.
    NoDiameter {
        /// In which pattern.
        side: Plate,
        /// Which hole.
        hole: usize,
    },
    /// A slot's travel is negative.
    NegativeTravel {
        /// In which pattern.
        side: Plate,
        /// Which hole.
        hole: usize,
    },
    /// The bolt's diameter is zero, negative or not a number.
    NoBolt,
    /// No pair is required: there is nothing to bolt.
    NothingRequired,
    /// More holes than [`MOST_HOLES`].
    TooManyHoles {
        /// In which pattern.
        side: Plate,
        /// How many.
        holes: usize,
    },
}

/// Lays pattern `b` on pattern `a` so that exactly `required` bolts of diameter `bolt` go through with the greatest least margin.
///
/// The margin of a pair is what the two holes allow ([`allowance`]) less the distance of their centres, where a slot takes up
/// offsets along its travel. The lay may be any shift and any turn, and with [`Flip::Allowed`] either face of `b`.
///
/// # Units
/// Metres and radians.
///
/// # Frame
/// Each pattern in its own plate's axes; a motion maps `b` into the axes of `a`.
///
/// # Valid for
/// Rigid flat plates and straight bolts square to them. Up to [`MOST_HOLES`] holes a plate; very large irregular patterns may
/// come back [`Laid::Undecided`], never wrong.
///
/// # Accuracy
/// The margin is the global optimum to within [`RESOLUTION`]: every set of pairs and every turn is either tried or
/// excluded by a bound.
///
/// # Errors
/// A [`PatternFault`] for input that means nothing.
///
/// # Source
/// Floating and fixed fasteners: ASME Y14.5, appendix B. The search is our own.
///
/// # Examples
/// M12 in 13.5 mm holes, both plates drilled alike but one pitch 1 mm longer: each bolt gives 0.5 mm of its 1.5 mm.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, lay_on};
/// let a = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.100, 0.0, 0.0135)];
/// let b = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.101, 0.0, 0.0135)];
/// let laid = lay_on(&a, &b, 0.012, 2, Flip::Forbidden)?;
/// let best = laid.found().expect("two pairs are possible");
/// assert!((best.margin - 0.0010).abs() < 1e-9);
/// assert!(best.fits());
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn lay_on(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    required: usize,
    limits: impl Into<Limits>,
) -> Result<Laid, PatternFault> {
    let mut effort = USUAL_EFFORT;
    lay_on_within(a, b, bolt, required, limits, &mut effort)
}

/// [`lay_on`] with a bound of your own on the work, counted in single hole-to-hole comparisons.
///
/// What was spent is taken from `effort`.
///
/// # Errors
/// As [`lay_on`].
pub fn lay_on_within(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    required: usize,
    limits: impl Into<Limits>,
    effort: &mut u64,
) -> Result<Laid, PatternFault> {
    check(a, b, bolt, required)?;
    let possible = most_pairs(a, b, bolt);
    if possible < required {
        return Ok(Laid::NoPairing { possible });
    }
    let (best, searched) = best_lay(a, b, bolt, required, limits.into(), f64::NEG_INFINITY, effort);
    Ok(match best {
        Some(lay) if !searched.cut_short => Laid::Found(lay),
        at_least => Laid::Undecided { at_least, at_most: searched.at_most },
    })
}

/// A lay with a least margin above `least`, if one is found with this effort: the best, unless the effort ran out.
fn lay_above(
    [a, b]: [&[Hole]; 2],
    bolt: f64,
    required: usize,
    limits: Limits,
    least: f64,
    effort: &mut u64,
) -> Result<Option<Lay>, PatternFault> {
    check(a, b, bolt, required)?;
    if most_pairs(a, b, bolt) < required {
        return Ok(None);
    }
    Ok(best_lay(a, b, bolt, required, limits, least, effort).0)
}

fn best_lay(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    required: usize,
    limits: Limits,
    least: f64,
    effort: &mut u64,
) -> (Option<Lay>, Searched) {
    // The pattern with fewer holes gives the rows: fewer of them have to be left out.
    let swapped = b.len() < a.len();
    let (rows, cols) = if swapped { (b, a) } else { (a, b) };
    let (row_middle, col_middle) = (middle(rows), middle(cols));
    let plates = Plates {
        rows: centres(rows, row_middle, Face::AsDrawn),
        cols: centres(cols, col_middle, Face::AsDrawn),
        flipped_cols: (limits.flip == Flip::Allowed).then(|| centres(cols, col_middle, Face::Flipped)),
        allowances: rows.iter().flat_map(|row| cols.iter().map(|col| allowance(row, col, bolt))).collect(),
        required,
        turns: limits.turns(),
    };
    let searched = search(&plates, least, effort);
    let best = searched.best.as_ref();
    (best.map(|found| lay_of(found, a, b, bolt, [row_middle, col_middle], swapped)), searched)
}

/// The most pairs that could take the bolt at once, wherever the plates lie.
fn most_pairs(a: &[Hole], b: &[Hole], bolt: f64) -> usize {
    let plain = |holes: &[Hole]| holes.iter().filter(|h| h.kind == HoleKind::Plain && h.diameter >= bolt).count();
    let tapped = |holes: &[Hole]| holes.iter().filter(|h| h.kind == HoleKind::Tapped).count();
    // Every pair uses up a clearance hole, and any clearance hole goes with any hole of the other plate.
    (plain(a) + tapped(a)).min(plain(b) + tapped(b)).min(plain(a) + plain(b))
}

fn check(a: &[Hole], b: &[Hole], bolt: f64, required: usize) -> Result<(), PatternFault> {
    if !(bolt > 0.0 && bolt.is_finite()) {
        return Err(PatternFault::NoBolt);
    }
    if required == 0 {
        return Err(PatternFault::NothingRequired);
    }
    for (side, holes) in [(Plate::A, a), (Plate::B, b)] {
        if holes.len() > MOST_HOLES {
            return Err(PatternFault::TooManyHoles { side, holes: holes.len() });
        }
        for (hole, h) in holes.iter().enumerate() {
            let (travel, direction) = h.slot.map_or((0.0, 0.0), |slot| (slot.travel, slot.direction));
            if ![h.u, h.v, h.diameter, travel, direction].iter().all(|x| x.is_finite()) {
                return Err(PatternFault::NotANumber { side, hole });
            }
            if [h.u, h.v, h.diameter, travel].iter().any(|x| x.abs() > LARGEST) {
                return Err(PatternFault::TooLarge { side, hole });
            }
            if h.diameter <= 0.0 {
                return Err(PatternFault::NoDiameter { side, hole });
            }
            if travel < 0.0 {
                return Err(PatternFault::NegativeTravel { side, hole });
            }
        }
    }
    Ok(())
}

fn middle(holes: &[Hole]) -> [f64; 2] {
    let count = holes.len().max(1) as f64;
    [holes.iter().map(|h| h.u / count).sum(), holes.iter().map(|h| h.v / count).sum()]
}

fn centres(holes: &[Hole], middle: [f64; 2], face: Face) -> Vec<Centre> {
    let sign = if face == Face::Flipped { -1.0 } else { 1.0 };
    holes
        .iter()
        .map(|hole| {
            let half = hole.half_travel();
            Centre { at: [sign * (hole.u - middle[0]), hole.v - middle[1]], half_travel: [sign * half[0], half[1]] }
        })
        .collect()
}

/// Puts what the search found back into the plates' own axes.
fn lay_of(
    found: &Pairing,
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    [row_middle, col_middle]: [[f64; 2]; 2],
    swapped: bool,
) -> Lay {
    let face = if found.flipped { Face::Flipped } else { Face::AsDrawn };
    let mirror = if found.flipped { -1.0 } else { 1.0 };
    let (sin, cos) = libm::sincos(found.pose.turn);
    let middle_turned = pair::turned([mirror * col_middle[0], col_middle[1]], sin, cos);
    let shift = [
        found.pose.shift[0] + row_middle[0] - middle_turned[0],
        found.pose.shift[1] + row_middle[1] - middle_turned[1],
    ];
    let turn = libm::remainder(found.pose.turn, core::f64::consts::TAU);
    let motion = Motion { face, turn, shift_u: shift[0], shift_v: shift[1] };
    let motion = if swapped { motion.inverse() } else { motion };
    let mut pairs: Vec<PairedHoles> = found
        .pairs
        .iter()
        .map(|pair| {
            let margin = -search::excess(pair, sin, cos, found.pose.shift);
            let (a, b) = if swapped { (pair.col, pair.row) } else { (pair.row, pair.col) };
            PairedHoles { a, b, margin }
        })
        .collect();
    order::sort_by_key(&mut pairs, |pair| pair.a);
    debug_assert!(pairs.iter().all(|pair| allowance(&a[pair.a], &b[pair.b], bolt).is_some()));
    let unpaired_a = (0..a.len()).filter(|i| pairs.iter().all(|pair| pair.a != *i)).collect();
    let unpaired_b = (0..b.len()).filter(|i| pairs.iter().all(|pair| pair.b != *i)).collect();
    Lay { margin: -found.pose.worst, motion, pairs, unpaired_a, unpaired_b }
}

impl Motion {
    /// Neither flip nor turn nor shift.
    pub const NONE: Self = Self { face: Face::AsDrawn, turn: 0.0, shift_u: 0.0, shift_v: 0.0 };

    /// Where a point of the second plate comes to lie in the axes of the first.
    ///
    /// # Examples
    /// A quarter turn takes (1, 0) to (0, 1).
    /// ```
    /// use fitup_core::fit::mating::bolt_pattern::{Face, Motion};
    /// let quarter = Motion { face: Face::AsDrawn, turn: std::f64::consts::FRAC_PI_2, shift_u: 0.0, shift_v: 0.0 };
    /// let [u, v] = quarter.applied([1.0, 0.0]);
    /// assert!(u.abs() < 1e-15 && (v - 1.0).abs() < 1e-15);
    /// ```
    pub fn applied(&self, [u, v]: [f64; 2]) -> [f64; 2] {
        let (sin, cos) = libm::sincos(self.turn);
        let u = if self.face == Face::Flipped { -u } else { u };
        let [u, v] = pair::turned([u, v], sin, cos);
        [u + self.shift_u, v + self.shift_v]
    }

    /// The motion that undoes this one: it maps the first plate into the axes of the second.
    #[must_use]
    pub fn inverse(&self) -> Self {
        // A flip followed by a turn undoes itself; a plain turn is undone by its opposite.
        let turn = if self.face == Face::Flipped { self.turn } else { -self.turn };
        let back = Motion { face: self.face, turn, shift_u: 0.0, shift_v: 0.0 };
        let [u, v] = back.applied([self.shift_u, self.shift_v]);
        Motion { shift_u: -u, shift_v: -v, ..back }
    }
}

#[cfg(test)]
mod tests;
