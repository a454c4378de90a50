//! A bolted joint: how long its bolt must be, where the thread lies, and whether the hole is far enough from edge and
//! neighbour.

use super::input::{InputError, not_negative, positive};
use crate::order;

/// Least distance from a hole's centre to the plate's edge, in hole diameters.
///
/// # Source
/// EN 1993-1-8:2005, table 3.3: e1, e2 at least 1.2 d0. A rule of structural steelwork, used as a guideline.
pub const LEAST_EDGE: f64 = 1.2;

/// Least distance between the centres of two holes, in hole diameters.
///
/// # Source
/// EN 1993-1-8:2005, table 3.3: p1 at least 2.2 d0. A rule of structural steelwork, used as a guideline.
pub const LEAST_SPACING: f64 = 2.2;

/// Pitches of thread that should stand past the nut where nothing else is asked. Common practice, no source.
pub const PITCHES_PAST_NUT: f64 = 2.0;

/// Diameters a bolt should go into a threaded part where nothing else is asked: enough in steel. Common practice, no
/// source.
pub const ENGAGEMENT: f64 = 1.0;

/// Lengths this near each other are equal, metres: a millionth of a micrometre. It keeps decimals equal after sums and
/// changes of unit. Own choice.
const SAME_LENGTH: f64 = 1e-12;

/// Ratios this near each other are equal. Own choice.
const SAME_RATIO: f64 = 1e-9;

/// What is clamped by one bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoltedJoint<'a> {
    /// Diameter of the thread, metres.
    pub thread: f64,
    /// Pitch of the thread, metres.
    pub pitch: f64,
    /// Thickness of each clamped plate from the head on, without the part that is threaded, metres.
    pub plates: &'a [f64],
    /// Thickness of one washer, metres; 0 for none.
    pub washer: f64,
    /// What holds the bolt's end.
    pub end: BoltEnd,
}

/// What holds a bolt's end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BoltEnd {
    /// A nut with a second washer under it.
    Nut {
        /// Its height, metres.
        height: f64,
        /// Pitches of thread that have to stand past it.
        pitches_past: f64,
    },
    /// The last part itself; its washer lies under the head.
    Tapped {
        /// Depth of its thread, metres.
        depth: f64,
        /// How far the bolt has to go in, in diameters.
        engagement: f64,
    },
}

/// A bolt that can be had.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockBolt {
    /// Length under the head, metres.
    pub length: f64,
    /// Length of its thread from the end, metres; `None` where it is not known.
    pub thread: Option<f64>,
}

/// What a joint asks of its bolt, and the bolt for it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoltLength {
    /// Plates and washers together, metres.
    pub grip: f64,
    /// Least length of the bolt under its head, metres.
    pub least: f64,
    /// The shortest bolt that is long enough; `None` when none is.
    pub bolt: Option<FittedBolt>,
}

/// A bolt in its joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FittedBolt {
    /// Its length, metres.
    pub length: f64,
    /// Where its shank ends; `None` where the thread's length is not known.
    pub shank: Option<Shank>,
    /// Whether it meets the bottom of the threaded hole before it clamps; `None` with a nut.
    pub bottoms: Option<bool>,
}

/// Where the unthreaded part of a bolt ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Shank {
    /// It ends before the last contact face, so that thread lies where the parts shear.
    pub thread_in_shear: bool,
    /// It reaches beyond what is clamped: the nut runs out of thread before it clamps.
    pub too_long: bool,
}

/// How far a hole is from what is next to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HoleDistance {
    /// The distance in hole diameters.
    pub ratio: f64,
    /// Whether that is enough.
    pub enough: bool,
}

/// The length a joint's bolt must have, and the shortest of `stock` that has it.
///
/// The grip is the sum of plates and washers: two washers with a nut, one under the head of a bolt that is screwed into the
/// last part. The least length adds nut and thread past it, or what has to go into the thread.
///
/// # Shape
/// One bolt, straight through all plates. Of two bolts of one length the first counts.
///
/// # Units
/// Metres.
///
/// # Valid for
/// Plates that lie on each other without a gap.
///
/// # Accuracy
/// Rounding only. Lengths that differ by 10⁻¹² m or less are equal; equal is long enough, not in shear, does not bottom.
///
/// # Errors
/// A thread, pitch, plate, nut, threaded depth or stock length not above zero, a negative washer, thread length or number of
/// pitches or diameters, or a number that is not finite.
///
/// # Source
/// Common practice, no source; sizes of ISO 4014, ISO 4032 and ISO 7089 in the example.
///
/// # Examples
/// M12 through 10 and 12 mm: 22 + 2 × 2.5 + 10.8 + 2 × 1.75 = 41.3 mm, so 45 mm.
/// ```
/// use fitup_core::dimension::{BoltEnd, BoltedJoint, StockBolt, bolted_joint};
/// let joint = BoltedJoint {
///     thread: 0.012,
///     pitch: 0.00175,
///     plates: &[0.010, 0.012],
///     washer: 0.0025,
///     end: BoltEnd::Nut { height: 0.0108, pitches_past: 2.0 },
/// };
/// let stock = [0.050, 0.045, 0.040].map(|length| StockBolt { length, thread: Some(0.030) });
/// let found = bolted_joint(&joint, &stock).unwrap();
/// assert!((found.least - 0.0413).abs() < 1e-12);
/// assert_eq!(found.bolt.unwrap().length, 0.045);
/// ```
pub fn bolted_joint(joint: &BoltedJoint<'_>, stock: &[StockBolt]) -> Result<BoltLength, InputError> {
    let diameter = positive("thread", joint.thread)?;
    let pitch = positive("pitch", joint.pitch)?;
    let washer = not_negative("washer", joint.washer)?;
    for plate in joint.plates {
        positive("plate", *plate)?;
    }
    for bolt in stock {
        positive("length", bolt.length)?;
        bolt.thread.map_or(Ok(0.0), |thread| not_negative("thread-length", thread))?;
    }
    let plates: f64 = joint.plates.iter().sum();
    let (grip, beyond, last_face) = match joint.end {
        BoltEnd::Nut { height, pitches_past } => {
            let grip = plates + 2.0 * washer;
            let beyond = positive("nut", height)? + not_negative("pitches-past-nut", pitches_past)? * pitch;
            (grip, beyond, grip - washer - joint.plates.last().copied().unwrap_or(0.0))
        }
        BoltEnd::Tapped { depth, engagement } => {
            let grip = plates + washer;
            positive("tapped-depth", depth)?;
            (grip, not_negative("engagement", engagement)? * diameter, grip)
        }
    };
    let least = grip + beyond;
    let mut long_enough: Vec<&StockBolt> = stock.iter().filter(|bolt| bolt.length >= least - SAME_LENGTH).collect();
    order::sort(&mut long_enough, |a, b| a.length.total_cmp(&b.length));
    let bolt = long_enough.first().map(|bolt| FittedBolt {
        length: bolt.length,
        shank: bolt.thread.map(|thread| {
            let shank = bolt.length - thread;
            Shank { thread_in_shear: shank < last_face - SAME_LENGTH, too_long: shank > grip + SAME_LENGTH }
        }),
        bottoms: match joint.end {
            BoltEnd::Nut { .. } => None,
            BoltEnd::Tapped { depth, .. } => Some(bolt.length - grip > depth + SAME_LENGTH),
        },
    });
    Ok(BoltLength { grip, least, bolt })
}

/// How far the centre of a hole of diameter `hole` is from the plate's edge, and whether that is enough.
///
/// # Units
/// Metres.
///
/// # Accuracy
/// A ratio 10⁻⁹ or less below [`LEAST_EDGE`] is enough.
///
/// # Errors
/// A hole not above zero, a negative distance, or a number that is not finite.
///
/// # Examples
/// ```
/// use fitup_core::dimension::edge_distance;
/// assert!(edge_distance(0.014, 0.0168).unwrap().enough);
/// assert!(!edge_distance(0.014, 0.0167).unwrap().enough);
/// ```
pub fn edge_distance(hole: f64, edge: f64) -> Result<HoleDistance, InputError> {
    hole_distance(hole, not_negative("edge", edge)?, LEAST_EDGE)
}

/// How far the centres of two holes of diameter `hole` are from each other, and whether that is enough.
///
/// # Units
/// Metres.
///
/// # Accuracy
/// A ratio 10⁻⁹ or less below [`LEAST_SPACING`] is enough.
///
/// # Errors
/// As [`edge_distance`].
///
/// # Examples
/// ```
/// use fitup_core::dimension::hole_spacing;
/// assert!(hole_spacing(0.014, 0.0308).unwrap().enough);
/// ```
pub fn hole_spacing(hole: f64, spacing: f64) -> Result<HoleDistance, InputError> {
    hole_distance(hole, not_negative("spacing", spacing)?, LEAST_SPACING)
}

fn hole_distance(hole: f64, distance: f64, least: f64) -> Result<HoleDistance, InputError> {
    let ratio = distance / positive("hole", hole)?;
    Ok(HoleDistance { ratio, enough: ratio >= least - SAME_RATIO })
}

#[cfg(test)]
mod tests {
    use super::super::input::Fault;
    use super::*;

    const MM: f64 = 1e-3;

    fn through(plates: &[f64]) -> BoltedJoint<'_> {
        let end = BoltEnd::Nut { height: 10.8 * MM, pitches_past: PITCHES_PAST_NUT };
        BoltedJoint { thread: 12.0 * MM, pitch: 1.75 * MM, plates, washer: 2.5 * MM, end }
    }

    fn of(joint: &BoltedJoint<'_>, length: f64, thread: f64) -> FittedBolt {
        let stock = [StockBolt { length: length * MM, thread: Some(thread * MM) }];
        bolted_joint(joint, &stock).expect("sound").bolt.expect("long enough")
    }

    #[test]
    fn a_bolt_exactly_long_enough_is_and_one_a_hair_shorter_is_not() {
        let plates = [10.0 * MM, 12.0 * MM];
        let bolt =
            |length: f64| bolted_joint(&through(&plates), &[StockBolt { length, thread: None }]).expect("sound").bolt;
        assert!(bolt(41.3 * MM).is_some());
        assert!(bolt((41.3 - 1e-8) * MM).is_none());
    }

    #[test]
    fn the_shank_is_judged_against_the_last_face_and_the_grip() {
        let plates = [10.0 * MM, 12.0 * MM];
        // The last face lies 2.5 + 10 under the head, the nut's washer ends at 27.
        let shank = |shank: f64| of(&through(&plates), 60.0, 60.0 - shank).shank.expect("the thread is known");
        assert_eq!(shank(12.4), Shank { thread_in_shear: true, too_long: false });
        assert_eq!(shank(12.5), Shank { thread_in_shear: false, too_long: false });
        assert_eq!(shank(27.0), Shank { thread_in_shear: false, too_long: false });
        assert_eq!(shank(27.1), Shank { thread_in_shear: false, too_long: true });
    }

    #[test]
    fn a_tapped_parts_own_face_is_the_last_and_its_depth_ends_the_bolt() {
        let plates = [8.0 * MM, 6.0 * MM];
        let end = |depth: f64| BoltEnd::Tapped { depth: depth * MM, engagement: ENGAGEMENT };
        let joint = |depth| BoltedJoint {
            thread: 16.0 * MM,
            pitch: 2.0 * MM,
            plates: &plates,
            washer: 3.0 * MM,
            end: end(depth),
        };
        let fitted = of(&joint(18.0), 35.0, 18.0);
        assert_eq!(fitted.bottoms, Some(false));
        assert_eq!(fitted.shank, Some(Shank { thread_in_shear: false, too_long: false }));
        assert_eq!(of(&joint(17.9), 35.0, 18.1).bottoms, Some(true));
        assert!(of(&joint(17.9), 35.0, 18.1).shank.expect("known").thread_in_shear);
    }

    #[test]
    fn what_cannot_be_is_refused_by_name() {
        let plates = [10.0 * MM, -12.0 * MM];
        let refused = |joint: &BoltedJoint<'_>, stock: &[StockBolt]| bolted_joint(joint, stock).expect_err("unsound");
        assert_eq!(refused(&through(&plates), &[]), InputError { what: "plate", fault: Fault::NotPositive });
        let bolt = StockBolt { length: 0.05, thread: Some(-0.01) };
        assert_eq!(refused(&through(&[0.01]), &[bolt]).what, "thread-length");
        assert_eq!(refused(&through(&[0.01]), &[StockBolt { length: f64::NAN, thread: None }]).what, "length");
        assert_eq!(edge_distance(0.0, 1.0).expect_err("unsound").what, "hole");
        assert_eq!(edge_distance(1.0, -1.0).expect_err("unsound").what, "edge");
        assert_eq!(hole_spacing(1.0, f64::INFINITY).expect_err("unsound").what, "spacing");
    }
}
