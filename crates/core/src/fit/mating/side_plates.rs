//! A frame's side plates over a machine: the width between them against the width over the machine's faces.

use super::LARGEST;

/// The most that the gaps of both sides together are shimmed, metres: 6 mm. Common practice, no source: above it the bolts bend in
/// the gap, and the frame is one for another machine.
pub const MOST_SHIMS: f64 = 6e-3;

/// A gap up to this is drawn together by the bolts, metres for both sides together: 1 mm. Common practice, no source.
pub const DRAWN_TOGETHER: f64 = 1e-3;

/// Whether the frame goes over the machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Over {
    /// It goes on; the bolts close what gap there is.
    Snug,
    /// It goes on with shims.
    Shimmed,
    /// It is wider than shims make up for.
    TooWide,
    /// It does not go over the machine.
    TooNarrow,
}

/// A frame's side plates over a machine's faces.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SidePlates {
    /// The gap of both sides together, metres; negative: too narrow by this much.
    pub gap: f64,
    /// What becomes of it.
    pub over: Over,
    /// Left before it no longer goes over the machine, metres.
    pub margin_narrow: f64,
    /// Left before shims no longer do, metres.
    pub margin_wide: f64,
}

/// Lays a frame's pair of side plates over a machine; `None` unless both widths are above zero and up to [`LARGEST`].
///
/// # Units
/// Metres.
///
/// # Frame
/// `between`: inside to inside of the plates. `over`: outside to outside of the machine's faces.
///
/// # Examples
/// 604 mm between the plates over 600 mm: 4 mm of shims, 2 on each side. 599 mm never goes on.
/// ```
/// use fitup_core::fit::mating::side_plates::{Over, side_plates};
/// assert_eq!(side_plates(0.604, 0.600).map(|plates| plates.over), Some(Over::Shimmed));
/// assert_eq!(side_plates(0.599, 0.600).map(|plates| plates.over), Some(Over::TooNarrow));
/// ```
pub fn side_plates(between: f64, over: f64) -> Option<SidePlates> {
    let known = |width: f64| width > 0.0 && width <= LARGEST;
    if !known(between) || !known(over) {
        return None;
    }
    let gap = between - over;
    // A nanometre keeps a decimal figure that equals its limit on the limit's side.
    let rounding = 1e-9;
    let laid = if gap < -rounding {
        Over::TooNarrow
    } else if gap <= DRAWN_TOGETHER + rounding {
        Over::Snug
    } else if gap <= MOST_SHIMS + rounding {
        Over::Shimmed
    } else {
        Over::TooWide
    };
    Some(SidePlates { gap, over: laid, margin_narrow: gap, margin_wide: MOST_SHIMS - gap })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn over(between: f64) -> Over {
        side_plates(between * 1e-3, 0.6).unwrap().over
    }

    #[test]
    fn each_width_has_its_answer_and_the_limits_belong_to_the_better_one() {
        assert_eq!(over(599.9), Over::TooNarrow);
        assert_eq!((over(600.0), over(601.0)), (Over::Snug, Over::Snug));
        assert_eq!((over(601.1), over(606.0)), (Over::Shimmed, Over::Shimmed));
        assert_eq!((over(606.1), over(700.0)), (Over::TooWide, Over::TooWide));
    }

    #[test]
    fn the_margins_are_what_is_left_on_either_side() {
        let plates = side_plates(0.604, 0.6).unwrap();
        assert!((plates.margin_narrow - 0.004).abs() < 1e-12 && (plates.margin_wide - 0.002).abs() < 1e-12);
    }

    #[test]
    fn widths_that_are_none_are_not_laid() {
        assert_eq!(side_plates(0.0, 0.6), None);
        assert_eq!(side_plates(0.6, -0.1), None);
        assert_eq!(side_plates(f64::NAN, 0.6), None);
        assert_eq!(side_plates(0.6, f64::INFINITY), None);
    }
}
