//! A margin is only as good as the figures it comes from: what the tolerances leave of it.

/// Share of a figure that is no more than its rounding: some thousand roundings of a double, far below any tolerance. It
/// keeps a margin that exactly equals its tolerances equal to them after a change of unit. Own choice.
const ROUNDING: f64 = 1e-13;

/// One uncertain figure in a chain of figures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contribution {
    /// The figure lies within plus or minus this.
    pub half_range: f64,
    /// By how much the margin changes when the figure changes by one; only its size matters.
    pub sensitivity: f64,
}

/// What a margin and its uncertainty amount to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// It fits even if every figure is off by all it may, in the wrong direction.
    CertainFit,
    /// It fits unless the errors conspire.
    ProbableFit,
    /// The figures do not say.
    Undecided,
    /// It does not fit unless the errors conspire.
    ProbableMisfit,
    /// It does not fit even if every figure is off by all it may, in the helpful direction.
    CertainMisfit,
}

/// The uncertainty of a margin, and what would settle it.
#[derive(Clone, Debug, PartialEq)]
pub struct Assessment {
    /// Sum of all effects: the margin cannot be off by more.
    pub worst_case: f64,
    /// Root of the sum of squares: what the margin is off by at three standard deviations.
    pub root_sum_square: f64,
    /// What it amounts to.
    pub standing: Standing,
    /// Probability that the margin is not negative, each figure normal and independent with its half range at three
    /// standard deviations.
    pub fit_probability: f64,
    /// The factor on all half ranges together that would make the worst case certain, at most 1; `None` without any effect.
    pub common_scale: Option<f64>,
    /// For each figure: the half range that would settle the worst case by itself, the others staying as they are.
    ///
    /// `None` where even an exact figure would not. May exceed the present half range: that figure is then no obstacle.
    pub settling_worst_case: Vec<Option<f64>>,
    /// The same for the root of the sum of squares.
    pub settling_root_sum_square: Vec<Option<f64>>,
}

/// Judges a margin whose figures are uncertain; `None` when a figure is not a finite number.
///
/// # Shape
/// The margin and the half ranges in one unit (metres throughout); sensitivities plain numbers, 1 where the figure enters directly.
///
/// # Valid for
/// Margins linear in the figures over their ranges. A negative half range counts as its size.
///
/// # Accuracy
/// The probability to 1e-12 absolute.
///
/// # Source
/// Worst-case and statistical (root-sum-square) tolerance stack-up, textbook practice; half range = three standard
/// deviations is the usual convention. Normal distribution: complementary error function of `libm`.
///
/// # Examples
/// A margin of 6 with effects 3 and 4: the worst case is 7, the likely one 5.
/// ```
/// use fitup_core::fit::mating::tolerance::{Contribution, Standing, assess};
/// let three = Contribution { half_range: 3.0, sensitivity: 1.0 };
/// let four = Contribution { half_range: 4.0, sensitivity: -1.0 };
/// let assessed = assess(6.0, &[three, four]).unwrap();
/// assert_eq!((assessed.worst_case, assessed.root_sum_square), (7.0, 5.0));
/// assert_eq!(assessed.standing, Standing::ProbableFit);
/// ```
pub fn assess(margin: f64, contributions: &[Contribution]) -> Option<Assessment> {
    if !margin.is_finite() {
        return None;
    }
    let effects: Vec<f64> = contributions.iter().map(|c| (c.sensitivity * c.half_range).abs()).collect();
    let finite = |c: &Contribution| c.half_range.is_finite() && c.sensitivity.is_finite();
    let worst_case: f64 = effects.iter().sum();
    let square: f64 = effects.iter().map(|effect| effect * effect).sum();
    if !contributions.iter().all(finite) || !worst_case.is_finite() || !square.is_finite() {
        return None;
    }
    let root_sum_square = square.sqrt();
    let size = margin.abs();
    let settling = |index: usize, half_range: f64| {
        let sensitivity = contributions[index].sensitivity.abs();
        (sensitivity > 0.0 && half_range > ROUNDING * size).then(|| half_range / sensitivity)
    };
    // Sums over the others are taken anew: subtracting from the whole would lose their digits.
    let others = |index: usize| effects.iter().enumerate().filter(move |(i, _)| *i != index).map(|(_, effect)| *effect);
    Some(Assessment {
        worst_case,
        root_sum_square,
        standing: standing(margin, worst_case, root_sum_square),
        fit_probability: fit_probability(margin, root_sum_square),
        common_scale: (worst_case > 0.0).then(|| (size / worst_case).min(1.0)),
        settling_worst_case: (0..effects.len()).map(|i| settling(i, size - others(i).sum::<f64>())).collect(),
        settling_root_sum_square: (0..effects.len())
            .map(|i| {
                let left = size * size - others(i).map(|effect| effect * effect).sum::<f64>();
                settling(i, if left > ROUNDING * size * size { left.sqrt() } else { 0.0 })
            })
            .collect(),
    })
}

/// Just enough is enough, also where the figures' own rounding hides it.
fn standing(margin: f64, worst_case: f64, root_sum_square: f64) -> Standing {
    let reaches = |limit: f64, effect: f64| margin - limit >= -ROUNDING * effect;
    if reaches(worst_case, worst_case) {
        Standing::CertainFit
    } else if !reaches(-worst_case, worst_case) {
        Standing::CertainMisfit
    } else if reaches(root_sum_square, root_sum_square) {
        Standing::ProbableFit
    } else if !reaches(-root_sum_square, root_sum_square) {
        Standing::ProbableMisfit
    } else {
        Standing::Undecided
    }
}

/// Probability of a margin at or above zero with three standard deviations of `spread`.
fn fit_probability(margin: f64, spread: f64) -> f64 {
    if spread == 0.0 {
        return if margin >= 0.0 { 1.0 } else { 0.0 };
    }
    0.5 * libm::erfc(-3.0 * margin / spread * core::f64::consts::FRAC_1_SQRT_2)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(margin: f64, effects: &[(f64, f64)]) -> Assessment {
        let contributions: Vec<_> =
            effects.iter().map(|&(half_range, sensitivity)| Contribution { half_range, sensitivity }).collect();
        assess(margin, &contributions).unwrap()
    }

    #[test]
    fn the_standings_meet_at_their_limits() {
        let effects = [(3.0, 1.0), (4.0, -1.0)];
        let standing = |margin| of(margin, &effects).standing;
        assert_eq!(standing(7.0), Standing::CertainFit);
        assert_eq!(standing(6.999), Standing::ProbableFit);
        assert_eq!(standing(5.0), Standing::ProbableFit);
        assert_eq!(standing(4.999), Standing::Undecided);
        assert_eq!(standing(0.0), Standing::Undecided);
        assert_eq!(standing(-5.0), Standing::Undecided);
        assert_eq!(standing(-5.001), Standing::ProbableMisfit);
        assert_eq!(standing(-7.0), Standing::ProbableMisfit);
        assert_eq!(standing(-7.001), Standing::CertainMisfit);
    }

    #[test]
    fn a_margin_that_exactly_equals_its_tolerances_does_so_in_every_unit() {
        // Three times 0.1 sums to a little more than 0.3.
        let effects = [(0.1, 1.0); 3];
        assert!(effects.iter().map(|(half, _)| half).sum::<f64>() > 0.3);
        let equal = of(0.3, &effects);
        assert_eq!(equal.standing, Standing::CertainFit);
        assert!(equal.settling_worst_case.iter().all(|half| (half.unwrap() - 0.1).abs() < 1e-15));
        assert_eq!(of(-0.3, &effects).standing, Standing::ProbableMisfit);
        // 0.1 + 0.2 is a little more than 0.3: nothing is left for the third, neither worst case nor root sum square.
        let used_up = of(0.3, &[(0.1, 1.0), (0.2, 1.0), (1.0, 1.0)]);
        assert_eq!(used_up.settling_worst_case[2], None);
        assert_eq!(of(0.5, &[(0.3, 1.0), (0.4, 1.0), (1.0, 1.0)]).settling_root_sum_square[2], None);
    }

    #[test]
    fn certain_is_asked_before_probable() {
        // With one effect the worst case and the likely case are the same number.
        assert_eq!(of(1.0, &[(1.0, 1.0)]).standing, Standing::CertainFit);
        assert_eq!(of(-1.0, &[(1.0, 1.0)]).standing, Standing::Undecided);
        assert_eq!(of(-1.001, &[(1.0, 1.0)]).standing, Standing::CertainMisfit);
    }

    #[test]
    fn exact_figures_decide_by_the_sign() {
        let exact = of(0.0, &[]);
        assert_eq!((exact.standing, exact.fit_probability, exact.common_scale), (Standing::CertainFit, 1.0, None));
        let short = of(-0.001, &[(0.0, 1.0), (2.0, 0.0)]);
        assert_eq!((short.standing, short.fit_probability, short.common_scale), (Standing::CertainMisfit, 0.0, None));
        assert_eq!(short.settling_worst_case, [Some(0.001), None]);
    }

    #[test]
    fn the_probability_is_that_of_the_normal_distribution() {
        // One standard deviation is a third of the root sum square; table values of the normal distribution.
        assert!((of(1.0, &[(3.0, 1.0)]).fit_probability - 0.841_344_746_068_543).abs() < 1e-12);
        assert!((of(-2.0, &[(3.0, 1.0)]).fit_probability - 0.022_750_131_948_179_2).abs() < 1e-12);
        assert!((of(0.0, &[(3.0, 1.0)]).fit_probability - 0.5).abs() < 1e-15);
    }

    #[test]
    fn one_figure_alone_may_settle_it() {
        let open = of(6.0, &[(3.0, 1.0), (4.0, 2.0)]);
        // Effects 3 and 8: the first cannot make up for the second; the second must come down to (6 − 3) / 2.
        assert_eq!(open.settling_worst_case, [None, Some(1.5)]);
        let rss = open.settling_root_sum_square;
        assert_eq!(rss[0], None);
        assert!((rss[1].unwrap() - 27.0_f64.sqrt() / 2.0).abs() < 1e-12);
        assert!((open.common_scale.unwrap() - 6.0 / 11.0).abs() < 1e-15);
    }

    #[test]
    fn what_settles_it_is_a_length_in_whatever_unit() {
        for unit in [1.0, 1e-3, 1e3] {
            let settling = of(5.0 * unit, &[(3.5 * unit, 1.0), (4.0 * unit, 1.0)]).settling_root_sum_square;
            // √(5² − 4²) and √(5² − 3.5²).
            for (settling, by_hand) in settling.into_iter().zip([3.0, 12.75_f64.sqrt()]) {
                assert!((settling.unwrap() / unit - by_hand).abs() < 1e-12, "{unit}");
            }
        }
    }

    #[test]
    fn the_sign_of_a_sensitivity_or_half_range_does_not_matter() {
        assert_eq!(of(6.0, &[(3.0, 1.0), (4.0, 1.0)]), of(6.0, &[(3.0, -1.0), (-4.0, 1.0)]));
    }

    #[test]
    fn figures_that_are_not_numbers_are_not_judged() {
        let good = Contribution { half_range: 1.0, sensitivity: 1.0 };
        assert_eq!(assess(f64::NAN, &[good]), None);
        assert_eq!(assess(f64::INFINITY, &[good]), None);
        assert_eq!(assess(1.0, &[Contribution { half_range: f64::NAN, ..good }]), None);
        assert_eq!(assess(1.0, &[Contribution { half_range: f64::INFINITY, sensitivity: 0.0 }]), None);
        assert_eq!(assess(1.0, &[Contribution { half_range: 1e200, sensitivity: 1e200 }]), None);
    }

    #[test]
    fn roundings_are_shares_of_the_figures_and_not_lengths() {
        // Three times 14.3 sums to a little more than 42.9.
        let large = [(14.3, 1.0); 3];
        let over = large.iter().map(|(half, _)| half).sum::<f64>() - 42.9;
        assert!(over > ROUNDING / 42.9);
        assert_eq!(of(42.9, &large).standing, Standing::CertainFit);
        assert_eq!(of(-42.9, &large).standing, Standing::ProbableMisfit);
        // What the first two leave of 70.7 is a rounding, and none of a thousandth is.
        let left = |third: f64| of(70.7 + third, &[(10.1, 1.0), (60.599_999_999_999_994, 1.0), (1.0, 1.0)]);
        assert!(left(0.0).settling_worst_case[2].is_none());
        assert!(left(0.001).settling_worst_case[2].is_some());
    }
}
