//! A bolt through plates or into a thread: hole against bolt, grip, length, engagement, edge and spacing.

use super::clearance_hole::{Series, inch, metric};
pub use crate::dimension::{LEAST_EDGE, LEAST_SPACING};

/// Differences up to this are none, metres: lengths and limits are decimals. Own choice.
const ROUNDING: f64 = 1e-12;

/// What a clearance hole does with a bolt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum InHole {
    /// The bolt does not enter.
    TooSmall,
    /// The head or washer bears.
    Bears,
    /// A plate washer is needed: the hole is above the coarse series, or the washer no longer covers it all round.
    NeedsPlateWasher,
    /// The hole passes the washer itself.
    WillNotHold,
    /// A size that no table has: not known.
    Unknown,
}

/// Washer outside diameters; bolt and washer, millimetres.
///
/// Source: ISO 7089, read in a public part library; M5, M6, M18, M22, M27 and M30 from memory.
const WASHERS: [[f64; 2]; 13] = [
    [5.0, 10.0],
    [6.0, 12.0],
    [8.0, 16.0],
    [10.0, 20.0],
    [12.0, 24.0],
    [14.0, 28.0],
    [16.0, 30.0],
    [18.0, 34.0],
    [20.0, 37.0],
    [22.0, 39.0],
    [24.0, 44.0],
    [27.0, 50.0],
    [30.0, 56.0],
];

/// What a plain hole does with a bolt of nominal diameter `bolt`, both in metres.
///
/// Above the coarse series (ISO 273 coarse, ASME B18.2.8 loose) a plate washer is asked for, and where the hole comes up to the
/// plain washer's outside (ISO 7089; twice the bolt for inch bolts) the bolt does not hold at all. That the coarse series
/// is the limit is common practice, no source.
///
/// # Examples
/// 22 mm holes on M12 need plate washers; 24 mm holes let the washer through.
/// ```
/// use fitup_core::fit::mating::bolted_joint::{InHole, in_hole};
/// assert_eq!(in_hole(0.0135, 0.012), InHole::Bears);
/// assert_eq!(in_hole(0.022, 0.012), InHole::NeedsPlateWasher);
/// assert_eq!(in_hole(0.024, 0.012), InHole::WillNotHold);
/// assert_eq!(in_hole(0.0119, 0.012), InHole::TooSmall);
/// ```
pub fn in_hole(hole: f64, bolt: f64) -> InHole {
    if !(hole > 0.0 && hole.is_finite() && bolt > 0.0 && bolt.is_finite()) {
        return InHole::Unknown;
    }
    if hole < bolt - ROUNDING {
        return InHole::TooSmall;
    }
    let coarse = metric(bolt, Series::Coarse).or_else(|| inch(bolt, Series::Coarse).map(|(_, greatest)| greatest));
    let Some(coarse) = coarse else { return InHole::Unknown };
    let washer = WASHERS.iter().find(|row| (row[0] * 1e-3 - bolt).abs() < 1e-9).map_or(2.0 * bolt, |row| row[1] * 1e-3);
    if hole <= coarse + ROUNDING {
        InHole::Bears
    } else if hole < washer - ROUNDING {
        InHole::NeedsPlateWasher
    } else {
        InHole::WillNotHold
    }
}

/// What a tapped hole is made in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Metal {
    /// Steel.
    Steel,
    /// Cast iron (tractor housings) or brass.
    CastIron,
    /// Aluminium.
    Aluminium,
}

/// Least thread engagement, in bolt diameters.
///
/// # Source
/// Common rule of the trade (steel 1.0, cast iron and brass 1.5); aluminium 2.0 from memory.
pub const fn least_engagement(metal: Metal) -> f64 {
    match metal {
        Metal::Steel => 1.0,
        Metal::CastIron => 1.5,
        Metal::Aluminium => 2.0,
    }
}

/// What the bolt screws into.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Into {
    /// A nut of this height, metres.
    Nut(f64),
    /// A tapped hole.
    Tapped {
        /// Threaded depth, metres.
        depth: f64,
        /// Engagement asked for, in bolt diameters ([`least_engagement`]).
        engagement: f64,
    },
}

/// A bolt that can be had.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltLength {
    /// Under the head, metres.
    pub length: f64,
    /// Of it threaded, metres; `None` where it is not known.
    pub thread: Option<f64>,
}

/// What is to be bolted.
#[derive(Clone, Debug, PartialEq)]
pub struct Clamped {
    /// Nominal diameter, metres.
    pub diameter: f64,
    /// Pitch, metres.
    pub pitch: f64,
    /// Plates from the head on, without the tapped part, metres.
    pub plates: Vec<f64>,
    /// Thickness of one washer, metres: one under the head, a second under a nut.
    pub washer: f64,
    /// What the bolt screws into.
    pub into: Into,
    /// Pitches that have to show past a nut. Two by usual practice.
    pub past_nut: f64,
}

/// The bolt for a joint.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltChoice {
    /// Plates and washers, metres.
    pub grip: f64,
    /// The least length that does, metres.
    pub least: f64,
    /// The shortest bolt to be had that is not below it.
    pub bolt: Option<BoltLength>,
    /// The thread crosses the last face between the parts, where the bolt is sheared.
    pub thread_in_shear: Option<bool>,
    /// The thread ends before the parts are clamped.
    pub shank_too_long: Option<bool>,
    /// The bolt meets the bottom of a tapped hole before the head bears; `None` with a nut.
    pub bottoms: Option<bool>,
}

/// The bolt for a joint from those that can be had; `None` when a figure is negative or not a number.
///
/// # Units
/// Metres.
///
/// # Source
/// Sum of what is clamped; least engagement by common rule; that the thread should stay out of the shear face is usual practice.
///
/// # Examples
/// M12 through 10 + 12 mm, two 2.5 mm washers, a 10.8 mm nut, one pitch past it: 39.55 mm, so a bolt of 40.
/// ```
/// use fitup_core::fit::mating::bolted_joint::{BoltLength, Clamped, Into, bolt_for};
/// let joint = Clamped {
///     diameter: 0.012, pitch: 0.00175, plates: vec![0.010, 0.012], washer: 0.0025, into: Into::Nut(0.0108), past_nut: 1.0,
/// };
/// let lengths = [0.035, 0.040, 0.045].map(|length| BoltLength { length, thread: Some(0.030) });
/// let choice = bolt_for(&joint, &lengths).expect("plain figures");
/// assert!((choice.least - 0.03955).abs() < 1e-12);
/// assert_eq!(choice.bolt.map(|bolt| bolt.length), Some(0.040));
/// ```
pub fn bolt_for(joint: &Clamped, lengths: &[BoltLength]) -> Option<BoltChoice> {
    let into = match joint.into {
        Into::Nut(height) => [height, 0.0],
        Into::Tapped { depth, engagement } => [depth, engagement],
    };
    let figures =
        joint.plates.iter().chain([&joint.diameter, &joint.pitch, &joint.washer, &joint.past_nut]).chain(&into);
    let threads = lengths.iter().filter_map(|bolt| bolt.thread);
    if !figures.copied().chain(lengths.iter().map(|bolt| bolt.length)).chain(threads).all(|x| (0.0..=1e6).contains(&x))
    {
        return None;
    }
    let washers = if matches!(joint.into, Into::Nut(_)) { 2.0 } else { 1.0 };
    let grip = joint.plates.iter().sum::<f64>() + washers * joint.washer;
    let least = match joint.into {
        Into::Nut(height) => grip + height + joint.past_nut * joint.pitch,
        Into::Tapped { engagement, .. } => grip + engagement * joint.diameter,
    };
    let bolt = lengths
        .iter()
        .filter(|bolt| bolt.length >= least - ROUNDING)
        .min_by(|a, b| a.length.total_cmp(&b.length))
        .copied();
    let shank = bolt.and_then(|bolt| Some(bolt.length - bolt.thread?));
    // The last face between parts: before the last plate and its washer, or where the tapped part begins.
    let last_face = match joint.into {
        Into::Nut(_) => grip - joint.plates.last().copied().unwrap_or(0.0) - joint.washer,
        Into::Tapped { .. } => grip,
    };
    Some(BoltChoice {
        grip,
        least,
        bolt,
        thread_in_shear: shank.map(|shank| shank < last_face - ROUNDING),
        shank_too_long: shank.map(|shank| shank > grip + ROUNDING),
        bottoms: match joint.into {
            Into::Nut(_) => None,
            Into::Tapped { depth, .. } => bolt.map(|bolt| bolt.length - grip > depth + ROUNDING),
        },
    })
}

/// Whether there is metal enough round a hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Metalled {
    /// There is.
    Enough,
    /// Where the edge is, or the next hole, is not known.
    Unknown,
    /// There is not.
    TooLittle,
}

/// Whether a new or opened hole of diameter `hole` keeps its distance from the edge and from the next hole, metres; `None` for a
/// distance that is not known. Without another hole in the plate, hand in infinity.
///
/// Opening a hole raises what it asks for. Too little in one is too little, whatever is not known of the other.
///
/// # Examples
/// 16.5 mm from the edge do for 13.5 mm and no longer for 14.5.
/// ```
/// use fitup_core::fit::mating::bolted_joint::{Metalled, metal_round};
/// assert_eq!(metal_round(0.0135, Some(0.0165), Some(0.060)), Metalled::Enough);
/// assert_eq!(metal_round(0.0145, Some(0.0165), Some(0.060)), Metalled::TooLittle);
/// assert_eq!(metal_round(0.0135, None, Some(0.060)), Metalled::Unknown);
/// ```
pub fn metal_round(hole: f64, edge: Option<f64>, next: Option<f64>) -> Metalled {
    let asked = [(edge, LEAST_EDGE * hole), (next, LEAST_SPACING * hole)];
    let holds = asked.map(|(distance, least)| distance.map(|distance| distance >= least - ROUNDING));
    if holds.contains(&Some(false)) {
        Metalled::TooLittle
    } else if holds.contains(&None) {
        Metalled::Unknown
    } else {
        Metalled::Enough
    }
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;

    fn tapped(depth: f64) -> Clamped {
        let into = Into::Tapped { depth, engagement: least_engagement(Metal::CastIron) };
        Clamped { diameter: 0.016, pitch: 0.002, plates: vec![0.020], washer: 0.003, into, past_nut: 2.0 }
    }

    fn bolts(lengths: &[f64], thread: Option<f64>) -> Vec<BoltLength> {
        lengths.iter().map(|&mm| BoltLength { length: mm * 1e-3, thread: thread.map(|mm| mm * 1e-3) }).collect()
    }

    #[test]
    fn holes_from_too_small_to_far_too_large_have_each_their_answer() {
        let of = |hole: f64| in_hole(hole * 1e-3, 0.012);
        assert_eq!([of(11.9), of(12.0), of(14.5), of(14.6), of(23.9), of(24.0)], {
            use InHole::{Bears, NeedsPlateWasher, TooSmall, WillNotHold};
            [TooSmall, Bears, Bears, NeedsPlateWasher, NeedsPlateWasher, WillNotHold]
        });
        assert_eq!(in_hole(0.0158, 0.0127), InHole::Bears, "loose 1/2 in: up to 0.625 in");
        assert_eq!(in_hole(0.0160, 0.0127), InHole::NeedsPlateWasher);
        assert_eq!(in_hole(0.014, 0.0131), InHole::Unknown);
        assert_eq!(in_hole(f64::NAN, 0.012), InHole::Unknown);
        assert_eq!(in_hole(0.013, 0.0), InHole::Unknown);
    }

    #[test]
    fn a_tapped_joint_asks_for_engagement_and_has_one_washer() {
        let choice = bolt_for(&tapped(0.030), &bolts(&[40.0, 50.0, 60.0], Some(38.0))).unwrap();
        assert!((choice.grip - 0.023).abs() < 1e-12 && (choice.least - 0.047).abs() < 1e-12);
        assert_eq!(choice.bolt.unwrap().length, 0.050);
        // 12 mm of shank, 23 mm of grip.
        assert_eq!(
            (choice.thread_in_shear, choice.shank_too_long, choice.bottoms),
            (Some(true), Some(false), Some(false))
        );
        assert_eq!(bolt_for(&tapped(0.026), &bolts(&[60.0, 50.0], None)).unwrap().bottoms, Some(true));
        assert_eq!(
            bolt_for(&tapped(0.027), &bolts(&[60.0, 50.0], None)).unwrap().bottoms,
            Some(false),
            "just to the bottom"
        );
    }

    #[test]
    fn a_shank_longer_than_the_grip_does_not_clamp() {
        let mut joint = tapped(0.0);
        joint.into = Into::Nut(0.0148);
        let choice = bolt_for(&joint, &bolts(&[70.0], Some(38.0))).unwrap();
        assert_eq!((choice.shank_too_long, choice.thread_in_shear, choice.bottoms), (Some(true), Some(false), None));
    }

    #[test]
    fn without_a_bolt_long_enough_there_is_none() {
        let choice = bolt_for(&tapped(0.03), &bolts(&[40.0], Some(38.0))).unwrap();
        assert_eq!((choice.bolt, choice.thread_in_shear, choice.bottoms), (None, None, None));
        assert!(bolt_for(&tapped(f64::NAN), &[]).is_none());
        assert!(bolt_for(&Clamped { plates: vec![-0.01], ..tapped(0.03) }, &[]).is_none());
    }

    #[test]
    fn what_is_not_known_round_a_hole_is_neither_enough_nor_too_little() {
        let round = |edge, next| metal_round(0.0135, edge, next);
        assert_eq!(round(Some(0.0162), Some(0.0297)), Metalled::Enough, "the limits themselves");
        assert_eq!(round(None, Some(0.02)), Metalled::TooLittle);
        assert_eq!(round(Some(0.0162), None), Metalled::Unknown);
        assert_eq!(round(Some(f64::NAN), Some(0.1)), Metalled::TooLittle, "no number is no distance");
        assert_eq!(round(Some(0.0162), Some(f64::INFINITY)), Metalled::Enough, "the only hole");
    }
}
