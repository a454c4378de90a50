//! Tie-downs: how many a machine on a trailer needs, and whether they hold enough.

use super::input::{InputError, not_negative, positive};
use super::moment::difference;

/// One tie-down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tie {
    /// Its working load limit, kilograms.
    pub limit: f64,
    /// Working load limit of the weakest anchor it ends at, kilograms, if known.
    pub anchor_limit: Option<f64>,
    /// How it runs.
    pub run: TieRun,
}

/// How a tie-down runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TieRun {
    /// From an anchor on the trailer to one on the machine: half its limit counts.
    Direct,
    /// From an anchor on the trailer, through or around the machine, back to the same side: half its limit counts.
    SameSide,
    /// From an anchor on the trailer, over or through the machine, to one on the other side: all of its limit counts.
    Over,
}

impl TieRun {
    /// Share of the working load limit that counts (49 CFR 393.106(d)).
    const fn counted(self) -> f64 {
        match self {
            Self::Direct | Self::SameSide => 0.5,
            Self::Over => 1.0,
        }
    }
}

/// What is tied down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Article {
    /// Its mass, kilograms.
    pub mass: f64,
    /// Its length along the trailer, metres.
    pub length: f64,
    /// Whether a header board, bulkhead or other cargo keeps it from moving forward.
    pub blocked_forward: bool,
    /// Whether the rule for heavy machinery is followed although the mass does not ask for it yet.
    pub as_heavy_machinery: bool,
}

/// Count and strength of the tie-downs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TieDowns {
    /// Least number of tie-downs.
    pub needed: u32,
    /// Whether there are as many.
    pub count_suffices: bool,
    /// Aggregate working load limit, kilograms.
    pub aggregate: f64,
    /// Least aggregate working load limit, kilograms: half the mass.
    pub least_aggregate: f64,
}

impl TieDowns {
    /// Aggregate beyond what is needed, kilograms; negative when it falls short.
    pub fn margin(&self) -> f64 {
        difference(self.aggregate, self.least_aggregate)
    }

    /// Whether the aggregate suffices; just enough is enough.
    pub fn strength_suffices(&self) -> bool {
        self.margin() >= 0.0
    }
}

/// Length up to which one tie-down may do, metres, as printed: 5 ft, 1.52 m (49 CFR 393.110(b)).
const SHORT: f64 = 1.52;
/// Length that each further tie-down holds, metres, as printed: 10 ft, 3.04 m (49 CFR 393.110(b), (c)).
const STEP: f64 = 3.04;
/// Mass up to which one tie-down may do, kilograms, as printed: 1,100 lb, 500 kg (49 CFR 393.110(b)).
const LIGHT: f64 = 500.0;
/// Mass from which the rule for heavy machinery must be followed, kilograms, as printed: 10,000 lb, 4,536 kg
/// (49 CFR 393.130(a)).
const HEAVY: f64 = 4536.0;
/// Tie-downs that wheeled or tracked heavy machinery has at least (49 CFR 393.130(c)).
const HEAVY_NEEDS: u32 = 4;
/// Share of the mass that the aggregate working load limit reaches at least (49 CFR 393.106(d)).
const NEEDED_SHARE: f64 = 0.5;

/// How many tie-downs an article needs, and whether these hold enough.
///
/// Units: kilograms, metres. Valid for: articles without any other holding; the printed metric figures are used
/// (10 ft is 3.048 m, printed as 3.04 m). A figure to plan with: the rule as it stands, the trailer's and the
/// machine's manual and local law decide. Accuracy: the comparisons are exact, apart from rounding of units.
///
/// Not blocked forward: 1 up to 1.52 m and 500 kg; 2 up to 3.04 m; beyond, 2 and one for every started 3.04 m more.
/// Blocked forward: one for every started 3.04 m. Heavy machinery, from 4,536 kg on or when followed freely: 4 at least.
/// The aggregate is the sum of the weaker of tie-down and anchor, halved unless it runs over to the other side.
///
/// # Errors
/// A mass below zero, a length not above zero, a limit below zero, or a number that is not finite.
///
/// # Source
/// 49 CFR 393.106(d), 393.110(b) and (c), 393.130.
///
/// # Examples
/// Two straps of 350 kg over a machine of 1400 kg hold 700 kg: just half its mass.
/// ```
/// use fitup_core::dimension::{Article, Tie, TieRun, tie_downs};
/// let machine = Article { mass: 1400.0, length: 2.5, blocked_forward: false, as_heavy_machinery: false };
/// let strap = Tie { limit: 350.0, anchor_limit: None, run: TieRun::Over };
/// let found = tie_downs(machine, &[strap, strap]).unwrap();
/// assert!(found.needed == 2 && found.count_suffices && found.strength_suffices());
/// ```
pub fn tie_downs(article: Article, ties: &[Tie]) -> Result<TieDowns, InputError> {
    not_negative("mass", article.mass)?;
    positive("length", article.length)?;
    for tie in ties {
        not_negative("limit", tie.limit)?;
        if let Some(anchor) = tie.anchor_limit {
            not_negative("anchor-limit", anchor)?;
        }
    }
    let needed = needed(article);
    let counts = |tie: &Tie| tie.run.counted() * tie.anchor_limit.map_or(tie.limit, |anchor| anchor.min(tie.limit));
    Ok(TieDowns {
        needed,
        count_suffices: ties.len() >= needed as usize,
        aggregate: ties.iter().fold(0.0, |sum, tie| sum + counts(tie)),
        least_aggregate: NEEDED_SHARE * article.mass,
    })
}

fn needed(article: Article) -> u32 {
    let by_length = if article.blocked_forward {
        steps(article.length)
    } else if !beyond(article.length, SHORT) && article.mass <= LIGHT {
        1
    } else if beyond(article.length, STEP) {
        2 + steps(article.length - STEP)
    } else {
        2
    };
    let heavy = article.as_heavy_machinery || article.mass >= HEAVY;
    if heavy { by_length.max(HEAVY_NEEDS) } else { by_length }
}

/// Whether a length is beyond a limit by more than rounding.
fn beyond(length: f64, limit: f64) -> bool {
    difference(length, limit) > 0.0
}

/// How many steps of [`STEP`] a length has started.
fn steps(length: f64) -> u32 {
    let whole = (length / STEP).round();
    let count = if difference(length, whole * STEP) == 0.0 { whole } else { (length / STEP).ceil() };
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "at least 1 and below 1e6 / 3.04")]
    let count = count.max(1.0) as u32;
    count
}

#[cfg(test)]
mod tests {
    use super::*;

    fn count(mass: f64, mm: f64, blocked_forward: bool) -> u32 {
        needed(Article { mass, length: mm * 0.001, blocked_forward, as_heavy_machinery: false })
    }

    #[test]
    fn a_length_exactly_at_a_step_has_not_started_the_next() {
        for steps in 1..200_u32 {
            let at = f64::from(steps) * 3040.0;
            assert_eq!(count(400.0, at, true), steps, "blocked at {at}");
            assert_eq!(count(400.0, at + 0.001, true), steps + 1, "blocked beyond {at}");
            assert_eq!(count(400.0, at, false), steps + 1, "free at {at}");
            assert_eq!(count(400.0, at + 0.001, false), steps + 2, "free beyond {at}");
        }
    }

    #[test]
    fn one_does_only_for_what_is_short_and_light() {
        assert_eq!(count(500.0, 1520.0, false), 1);
        assert_eq!(count(500.001, 1520.0, false), 2);
        assert_eq!(count(500.0, 1520.001, false), 2);
        assert_eq!(count(3000.0, 1000.0, true), 1);
    }

    #[test]
    fn heavy_machinery_has_four_at_least() {
        assert_eq!(count(4535.9, 3000.0, false), 2);
        assert_eq!(count(4536.0, 3000.0, false), 4);
        assert_eq!(count(4536.0, 20000.0, false), 8);
        let chosen = Article { mass: 900.0, length: 2.0, blocked_forward: true, as_heavy_machinery: true };
        assert_eq!(needed(chosen), 4);
    }

    #[test]
    fn the_weaker_of_tie_and_anchor_counts_and_equality_passes() {
        let article = Article { mass: 0.6, length: 2.0, blocked_forward: false, as_heavy_machinery: false };
        let tie = |limit, anchor_limit, run| Tie { limit, anchor_limit, run };
        let ties =
            [tie(0.2, Some(0.1), TieRun::Over), tie(0.4, None, TieRun::Direct), tie(0.0, None, TieRun::SameSide)];
        let found = tie_downs(article, &ties).expect("sound");
        assert!(found.aggregate > 0.3, "a sum that rounding lifts");
        assert_eq!((found.margin(), found.strength_suffices()), (0.0, true));
        let heavier = tie_downs(Article { mass: 0.600_001, ..article }, &ties).expect("sound");
        assert!(!heavier.strength_suffices());
    }

    #[test]
    fn nothing_tied_holds_nothing() {
        let article = Article { mass: 900.0, length: 2.0, blocked_forward: false, as_heavy_machinery: false };
        let found = tie_downs(article, &[]).expect("sound");
        assert_eq!((found.aggregate.to_bits(), found.count_suffices, found.margin()), (0, false, -450.0));
    }

    #[test]
    fn unsound_numbers_are_named() {
        let article = Article { mass: 900.0, length: 2.0, blocked_forward: false, as_heavy_machinery: false };
        let what = |article, ties: &[Tie]| tie_downs(article, ties).expect_err("unsound").what;
        assert_eq!(what(Article { mass: -1.0, ..article }, &[]), "mass");
        assert_eq!(what(Article { length: 0.0, ..article }, &[]), "length");
        let tie = Tie { limit: 1.0, anchor_limit: Some(-1.0), run: TieRun::Over };
        assert_eq!(what(article, &[tie]), "anchor-limit");
        assert_eq!(what(article, &[Tie { limit: f64::NAN, ..tie }]), "limit");
    }
}
