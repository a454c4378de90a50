//! Clearance holes by standard: what to drill for a bolt.

/// How much play a hole is meant to have.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Series {
    /// Fine (ISO) or close (inch), H12.
    Fine,
    /// Medium or normal, H13.
    Medium,
    /// Coarse or loose, H14.
    Coarse,
}

/// Metric clearance hole for a bolt of nominal diameter `bolt` metres; `None` for a size that the table lacks.
///
/// # Source
/// ISO 273:1979, read in secondary tables; M5, M18, M22, M27 and M30 from memory.
///
/// # Examples
/// M12, medium: 13.5 mm.
/// ```
/// use fitup_core::fit::mating::clearance_hole::{Series, metric};
/// assert_eq!(metric(0.012, Series::Medium), Some(0.0135));
/// assert_eq!(metric(0.013, Series::Medium), None);
/// ```
pub fn metric(bolt: f64, series: Series) -> Option<f64> {
    /// Bolt; fine, medium, coarse; millimetres.
    const TABLE: [[f64; 4]; 13] = [
        [5.0, 5.3, 5.5, 5.8],
        [6.0, 6.4, 6.6, 7.0],
        [8.0, 8.4, 9.0, 10.0],
        [10.0, 10.5, 11.0, 12.0],
        [12.0, 13.0, 13.5, 14.5],
        [14.0, 15.0, 15.5, 16.5],
        [16.0, 17.0, 17.5, 18.5],
        [18.0, 19.0, 20.0, 21.0],
        [20.0, 21.0, 22.0, 24.0],
        [22.0, 23.0, 24.0, 26.0],
        [24.0, 25.0, 26.0, 28.0],
        [27.0, 28.0, 30.0, 32.0],
        [30.0, 31.0, 33.0, 35.0],
    ];
    let row = TABLE.iter().find(|row| (row[0] - bolt * 1e3).abs() < 1e-6)?;
    Some(row[column(series)] * 1e-3)
}

/// Inch clearance hole, least and greatest diameter in metres, for a bolt of nominal diameter `bolt` metres.
///
/// # Source
/// ANSI/ASME B18.2.8-1999 (R2017), table 1a. Loose: read in Machinery's Handbook, 31st edition, p. 1741; normal and close from
/// memory, the normal minima of 1/4 to 7/16 supported by the drills printed there. Web drill charts follow an older
/// practice and differ.
///
/// # Examples
/// 1/2 in, loose: 0.609 to 0.625 in.
/// ```
/// use fitup_core::fit::mating::clearance_hole::{Series, inch};
/// let (least, greatest) = inch(0.0127, Series::Coarse).unwrap();
/// assert!((least - 0.609 * 0.0254).abs() < 1e-12 && (greatest - 0.625 * 0.0254).abs() < 1e-12);
/// ```
pub fn inch(bolt: f64, series: Series) -> Option<(f64, f64)> {
    /// Bolt in sixteenths; close, normal, loose, least and greatest each; thousandths of an inch.
    const TABLE: [[f64; 7]; 9] = [
        [4.0, 266.0, 272.0, 281.0, 290.0, 297.0, 311.0],
        [5.0, 328.0, 334.0, 344.0, 354.0, 359.0, 373.0],
        [6.0, 391.0, 397.0, 406.0, 416.0, 422.0, 438.0],
        [7.0, 453.0, 460.0, 469.0, 479.0, 484.0, 500.0],
        [8.0, 531.0, 538.0, 562.0, 572.0, 609.0, 625.0],
        [10.0, 656.0, 663.0, 688.0, 698.0, 734.0, 754.0],
        [12.0, 781.0, 789.0, 812.0, 824.0, 906.0, 926.0],
        [14.0, 906.0, 914.0, 938.0, 950.0, 1031.0, 1051.0],
        [16.0, 1031.0, 1039.0, 1094.0, 1106.0, 1156.0, 1181.0],
    ];
    let sixteenths = bolt * 16.0 / 0.0254;
    let row = TABLE.iter().find(|row| (row[0] - sixteenths).abs() < 1e-6)?;
    let first = 2 * column(series) - 1;
    Some((row[first] * 25.4e-6, row[first + 1] * 25.4e-6))
}

const fn column(series: Series) -> usize {
    match series {
        Series::Fine => 1,
        Series::Medium => 2,
        Series::Coarse => 3,
    }
}

/// Position tolerance zone of each plate, metres in diameter, with clearance holes in both (floating fastener).
///
/// # Source
/// ASME Y14.5, appendix B: T = H − F, the smallest hole less the largest fastener.
///
/// # Examples
/// M12 in 13.5 mm holes: 1.5 mm.
/// ```
/// use fitup_core::fit::mating::clearance_hole::floating_tolerance;
/// assert!((floating_tolerance(0.0135, 0.012) - 0.0015).abs() < 1e-15);
/// ```
pub fn floating_tolerance(hole: f64, fastener: f64) -> f64 {
    hole - fastener
}

/// Position tolerance zone of each plate, metres in diameter, with one plate threaded (fixed fastener).
///
/// # Source
/// ASME Y14.5, appendix B: T = (H − F) / 2, with a projected zone on the threaded plate.
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::clearance_hole::fixed_tolerance;
/// assert!((fixed_tolerance(0.0135, 0.012) - 0.00075).abs() < 1e-15);
/// ```
pub fn fixed_tolerance(hole: f64, fastener: f64) -> f64 {
    0.5 * (hole - fastener)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_series_are_in_order_and_above_the_bolt() {
        for bolt in [6, 8, 10, 12, 14, 16, 18, 20, 22, 24] {
            let bolt = f64::from(bolt) * 1e-3;
            let hole = |series| metric(bolt, series).unwrap();
            assert!(bolt < hole(Series::Fine) && hole(Series::Fine) < hole(Series::Medium));
            assert!(hole(Series::Medium) < hole(Series::Coarse));
        }
        for sixteenths in [4, 5, 6, 7, 8, 10, 12, 14, 16] {
            let bolt = f64::from(sixteenths) * 0.0254 / 16.0;
            let hole = |series| inch(bolt, series).unwrap();
            for series in [Series::Fine, Series::Medium, Series::Coarse] {
                assert!(hole(series).0 < hole(series).1 && bolt < hole(series).0);
            }
            assert!(hole(Series::Fine).0 < hole(Series::Medium).0 && hole(Series::Medium).0 < hole(Series::Coarse).0);
        }
    }

    #[test]
    fn sizes_that_are_not_in_the_table_have_no_hole() {
        assert_eq!((metric(0.007, Series::Fine), inch(0.012, Series::Fine)), (None, None));
        assert_eq!((metric(f64::NAN, Series::Fine), inch(-0.0127, Series::Fine)), (None, None));
    }

    #[test]
    fn tolerances_are_the_play_and_half_of_it() {
        assert!((floating_tolerance(0.5625, 0.5) - 0.0625).abs() < 1e-15);
        assert!((fixed_tolerance(0.5625, 0.5) - 0.03125).abs() < 1e-15);
        assert!(floating_tolerance(0.5, 0.5625) < 0.0);
    }
}
