//! How likely it is that all bolts go in, when no hole is quite where it should be.

mod chance;
mod lay;
mod worst;

use super::pair::Pair;
use super::{Hole, HoleKind, LARGEST, PatternFault, Plate, RESOLUTION, check, middle};
use chance::Chance;
pub use chance::Law;
use lay::Lays;
pub use worst::{MOST_EXACT, WorstMargin};

/// The standard error that sampling goes on to, at the most. Own choice, well below what can matter to anybody.
const SIGMA: f64 = 0.0015;

/// The same for more than [`MANY`] holes, so that the answer does not keep anybody waiting. Own choice.
const SIGMA_OF_MANY: f64 = 0.004;

/// More holes than this are many. Own choice.
const MANY: usize = 16;

/// Samples drawn before the standard error is looked at again. Own choice.
const BATCH: u32 = 16_384;

/// Hole and bolt within this are equally thick, metres: rounding.
const SAME: f64 = 1e-12;

/// The exactness of a worst margin that was searched for, metres; one above it is above zero.
const WORST_CLOSE: f64 = 1e-5;

/// How far holes may be from where they should be, and from as large as they should be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HoleErrors {
    /// Of every coordinate of the first pattern, metres either way.
    pub place_a: f64,
    /// Of every coordinate of the second pattern, metres either way.
    pub place_b: f64,
    /// Of every diameter, metres either way.
    pub diameter: f64,
    /// How the errors are spread.
    pub law: Law,
}

/// How likely all bolts go in, and what is left in the worst case.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PatternProbability {
    /// Probability that some lay lets every bolt through.
    pub all: f64,
    /// Standard error of `all`; 0 where it is exact.
    pub sigma: f64,
    /// The best least margin if every error is as bad as it may be; `None` where a hole may be smaller than the bolt.
    pub worst: Option<WorstMargin>,
}

/// Why the probability cannot be had.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ProbabilityFault {
    /// A pattern or the bolt means nothing.
    Pattern(PatternFault),
    /// The patterns have different numbers of holes.
    Unequal {
        /// Holes of the first.
        a: usize,
        /// Holes of the second.
        b: usize,
    },
    /// A hole is tapped or elongated.
    NotPlainRound {
        /// In which pattern.
        side: Plate,
        /// Which hole.
        hole: usize,
    },
    /// A half range is negative, not a finite number or beyond [`LARGEST`].
    HalfRange(HalfRange),
}

/// Which half range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HalfRange {
    /// Of the first pattern's places.
    PlaceA,
    /// Of the second pattern's places.
    PlaceB,
    /// Of the diameters.
    Diameter,
}

/// How likely all bolts go in when every hole's place and diameter is off by chance.
///
/// Each hole of `a` takes its bolt with the hole of `b` in the same place of the list. Whoever puts the plates together sees the errors
/// and shifts and turns the second plate as it fits best: all go in when some lay leaves every pair's centres no further apart than
/// half of both plays.
///
/// # Shape
/// Plain round holes, as many in each pattern, paired in order; no flip.
///
/// # Units
/// Metres; a probability from 0 to 1.
///
/// # Frame
/// Each pattern in its own plate's axes.
///
/// # Valid for
/// Independent errors of every coordinate and diameter. Rigid flat plates and straight bolts square to them.
///
/// # Accuracy
/// The standard error of the probability is told and at most 0.0015, or 0.004 for more than 16 holes. It is exact, and the
/// error 0, for one pair, without any errors, and where no errors within their ranges can keep a bolt out or let all in. Else it
/// is a sample of chance errors, the same in every run. Each sample is settled to [`RESOLUTION`]. The worst margin is exact to
/// 0.01 mm for up to [`MOST_EXACT`] holes and a lower bound beyond.
///
/// # Errors
/// A [`ProbabilityFault`] for input that means nothing.
///
/// # Source
/// Floating fasteners: ASME Y14.5, appendix B. The sampling is our own.
///
/// # Examples
/// One hole of 12.1 ± 0.3 mm in each plate on a bolt of 12 mm: two thirds of them are large enough, in both four ninths.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Hole, HoleErrors, Law, pattern_probability};
/// let hole = [Hole::plain(0.0, 0.0, 0.0121)];
/// let errors = HoleErrors { place_a: 0.0005, place_b: 0.0005, diameter: 0.0003, law: Law::Uniform };
/// let found = pattern_probability(&hole, &hole, 0.012, &errors)?;
/// assert!((found.all - 4.0 / 9.0).abs() < 1e-12);
/// assert_eq!((found.sigma, found.worst), (0.0, None));
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::ProbabilityFault>(())
/// ```
pub fn pattern_probability(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    errors: &HoleErrors,
) -> Result<PatternProbability, ProbabilityFault> {
    check(a, b, bolt, a.len().max(b.len())).map_err(ProbabilityFault::Pattern)?;
    check_alike(a, b, errors)?;
    let joint = Joint::new(a, b, bolt, *errors);
    let mut lays = Lays::default();
    let worst = joint.always_open().then(|| worst::worst_margin(&joint, &mut lays));
    let (all, sigma) = match joint.settled(worst, &mut lays) {
        Some(certain) => (certain, 0.0),
        None => joint.sampled(&mut lays),
    };
    Ok(PatternProbability { all, sigma, worst })
}

fn check_alike(a: &[Hole], b: &[Hole], errors: &HoleErrors) -> Result<(), ProbabilityFault> {
    if a.len() != b.len() {
        return Err(ProbabilityFault::Unequal { a: a.len(), b: b.len() });
    }
    for (side, holes) in [(Plate::A, a), (Plate::B, b)] {
        let odd = |hole: &Hole| hole.kind != HoleKind::Plain || hole.slot.is_some_and(|slot| slot.travel > 0.0);
        if let Some(hole) = holes.iter().position(odd) {
            return Err(ProbabilityFault::NotPlainRound { side, hole });
        }
    }
    let ranges = [
        (HalfRange::PlaceA, errors.place_a),
        (HalfRange::PlaceB, errors.place_b),
        (HalfRange::Diameter, errors.diameter),
    ];
    match ranges.iter().find(|(_, range)| !(0.0..=LARGEST).contains(range)) {
        Some((which, _)) => Err(ProbabilityFault::HalfRange(*which)),
        None => Ok(()),
    }
}

/// Two patterns to be bolted together, each about its own middle.
struct Joint {
    /// The pairs as they should be.
    pairs: Vec<Pair>,
    /// By how much each pair's two holes are thicker than the bolt.
    plays: Vec<[f64; 2]>,
    errors: HoleErrors,
}

impl Joint {
    fn new(a: &[Hole], b: &[Hole], bolt: f64, errors: HoleErrors) -> Self {
        let (middle_a, middle_b) = (middle(a), middle(b));
        let plays: Vec<[f64; 2]> = a.iter().zip(b).map(|(a, b)| [a.diameter - bolt, b.diameter - bolt]).collect();
        let pair = |(row, (a, b)): (usize, (&Hole, &Hole))| Pair {
            row,
            col: row,
            a: [a.u - middle_a[0], a.v - middle_a[1]],
            b: [b.u - middle_b[0], b.v - middle_b[1]],
            allowance: 0.5 * (plays[row][0] + plays[row][1]),
            slot_a: [0.0; 2],
            slot_b: [0.0; 2],
        };
        let pairs = a.iter().zip(b).enumerate().map(pair).collect();
        Self { pairs, plays, errors }
    }

    /// The pairs with every diameter off by the same.
    fn with_play(&self, more: f64) -> Vec<Pair> {
        self.pairs.iter().map(|pair| Pair { allowance: pair.allowance + more, ..*pair }).collect()
    }

    /// Whether every hole takes the bolt even at its smallest.
    fn always_open(&self) -> bool {
        self.plays.iter().flatten().all(|play| play - self.errors.diameter >= -SAME)
    }

    /// The most that errors of place can take from the best least margin or add to it: what they move a pair's centres against each
    /// other in a lay that stays as it is.
    fn most_moved(&self) -> f64 {
        core::f64::consts::SQRT_2 * (self.errors.place_a + self.errors.place_b)
    }

    /// The probability, where it needs no sampling.
    fn settled(&self, worst: Option<WorstMargin>, lays: &mut Lays) -> Option<f64> {
        let HoleErrors { place_a, place_b, diameter, law } = self.errors;
        let open: f64 = self.plays.iter().flatten().map(|play| chance::at_least(-play, diameter, law)).product();
        if self.pairs.len() == 1 || open == 0.0 {
            return Some(open);
        }
        let exact = place_a == 0.0 && place_b == 0.0 && diameter == 0.0;
        if law == Law::Normal && !exact {
            return None;
        }
        let surely = match worst? {
            WorstMargin::AtLeast(margin) => margin >= -RESOLUTION,
            // Two holes and a pattern without errors need no search.
            WorstMargin::Is(margin) if exact || self.pairs.len() == 2 => margin >= -RESOLUTION,
            WorstMargin::Is(margin) => margin >= WORST_CLOSE,
        };
        if surely {
            return Some(1.0);
        }
        let best = lays.best_margin(&self.with_play(diameter)) + self.most_moved();
        (exact || best < -RESOLUTION).then_some(0.0)
    }

    /// The share of chance errors that let all bolts in, with its standard error.
    fn sampled(&self, lays: &mut Lays) -> (f64, f64) {
        let mut chance = Chance::new();
        let mut pairs = self.pairs.clone();
        let mut draws = vec![0.0; 6 * pairs.len()];
        let HoleErrors { place_a, place_b, diameter, law } = self.errors;
        let enough = if pairs.len() > MANY { SIGMA_OF_MANY } else { SIGMA };
        let (mut fitting, mut drawn) = (0_u32, 0_u32);
        loop {
            for _ in 0..BATCH {
                chance.fill(law, &mut draws);
                let mut open = true;
                for ((pair, by), (nominal, play)) in
                    pairs.iter_mut().zip(draws.chunks_exact(6)).zip(self.pairs.iter().zip(&self.plays))
                {
                    pair.a = [nominal.a[0] + place_a * by[0], nominal.a[1] + place_a * by[1]];
                    pair.b = [nominal.b[0] + place_b * by[2], nominal.b[1] + place_b * by[3]];
                    let plays = [play[0] + diameter * by[4], play[1] + diameter * by[5]];
                    open &= plays.iter().all(|play| *play >= -SAME);
                    pair.allowance = 0.5 * (plays[0] + plays[1]);
                }
                fitting += u32::from(open && lays.all_in(&pairs));
            }
            drawn += BATCH;
            let share = f64::from(fitting) / f64::from(drawn);
            // One more of either kind, so that a sample without exceptions does not pass for a proof.
            let cautious = f64::from(fitting + 1) / f64::from(drawn + 2);
            let sigma = (cautious * (1.0 - cautious) / f64::from(drawn)).sqrt();
            if sigma <= enough {
                return (share, sigma);
            }
        }
    }
}

#[cfg(test)]
mod tests;
