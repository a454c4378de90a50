//! Nuts, washers and the lengths that bolts are made in.

use super::bolted_joint::{BoltLength, Clamped, Into, bolt_for};
use super::thread::{System, Thread};

/// Bolt, greatest height of the nut, thickness of the plain washer; millimetres.
///
/// Source: ISO 4032 (nuts, style 1) and ISO 7089 (washers), from memory.
const METRIC: [[f64; 3]; 13] = [
    [5.0, 4.7, 1.0],
    [6.0, 5.2, 1.6],
    [8.0, 6.8, 1.6],
    [10.0, 8.4, 2.0],
    [12.0, 10.8, 2.5],
    [14.0, 12.8, 2.5],
    [16.0, 14.8, 3.0],
    [18.0, 15.8, 3.0],
    [20.0, 18.0, 3.0],
    [22.0, 19.4, 3.0],
    [24.0, 21.5, 4.0],
    [27.0, 23.8, 4.0],
    [30.0, 25.6, 4.0],
];

/// Bolt in sixteenths of an inch, greatest height of the nut, thickness of the plain washer; thousandths of an inch.
///
/// Source: ASME B18.2.2 (hexagon nuts) and ASME B18.21.1 (washers, type A wide), from memory.
const INCH: [[f64; 3]; 10] = [
    [4.0, 226.0, 65.0],
    [5.0, 273.0, 83.0],
    [6.0, 337.0, 83.0],
    [7.0, 385.0, 83.0],
    [8.0, 448.0, 109.0],
    [9.0, 496.0, 109.0],
    [10.0, 559.0, 134.0],
    [12.0, 665.0, 148.0],
    [14.0, 776.0, 165.0],
    [16.0, 887.0, 165.0],
];

/// Lengths that metric bolts are made in, millimetres.
///
/// Source: ISO 888, from memory.
const METRIC_LENGTHS: [f64; 26] = [
    16.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0, 65.0, 70.0, 80.0, 90.0, 100.0, 110.0, 120.0, 130.0,
    140.0, 150.0, 160.0, 180.0, 200.0, 220.0, 240.0, 260.0,
];

/// Pitches that show past a nut. Common practice, no source.
const PAST_NUT: f64 = 2.0;

/// Height of the nut and thickness of the plain washer for a thread, metres; `None` for a size that no table has.
///
/// # Examples
/// M12: a nut of 10.8 mm, a washer of 2.5 mm.
/// ```
/// use fitup_core::fit::mating::{hardware::nut_and_washer, thread::Thread};
/// let (nut, washer) = nut_and_washer(&Thread::read("M12").unwrap()).unwrap();
/// assert!((nut - 0.0108).abs() < 1e-12 && (washer - 0.0025).abs() < 1e-12);
/// ```
pub fn nut_and_washer(thread: &Thread) -> Option<(f64, f64)> {
    let (table, size, unit): (&[[f64; 3]], f64, f64) = match thread.system {
        System::Metric => (&METRIC, thread.diameter * 1e3, 1e-3),
        System::Inch => (&INCH, thread.diameter * 16.0 / 0.0254, 25.4e-6),
    };
    let [_, nut, washer] = table.iter().find(|row| (row[0] - size).abs() < 1e-6)?;
    Some((nut * unit, washer * unit))
}

/// The shortest length, metres, that bolts of this thread are made in and that does: through `grip` metres of plates, a washer under
/// the head, and either a washer and a nut or `engaged` metres of a tapped hole. `None` where a figure means nothing or no
/// bolt is so long.
///
/// Inch bolts are taken in steps of a quarter of an inch, from three quarters to eight inches: common practice, no source.
///
/// # Examples
/// M12 through 16 + 12 mm with a nut: 28 + 2 × 2.5 + 10.8 + 2 × 1.75 = 47.3 mm, so 50. Into 18 mm of thread: 28 + 2.5 + 18 = 48.5,
/// so 50 as well.
/// ```
/// use fitup_core::fit::mating::{hardware::bolt_length, thread::Thread};
/// let m12 = Thread::read("M12").unwrap();
/// assert!((bolt_length(&m12, 0.028, None).unwrap() - 0.050).abs() < 1e-12);
/// assert!((bolt_length(&m12, 0.028, Some(0.018)).unwrap() - 0.050).abs() < 1e-12);
/// ```
pub fn bolt_length(thread: &Thread, grip: f64, engaged: Option<f64>) -> Option<f64> {
    let (nut, washer) = nut_and_washer(thread)?;
    let into = match engaged {
        None => Into::Nut(nut),
        Some(depth) => Into::Tapped { depth, engagement: depth / thread.diameter },
    };
    let joint = Clamped {
        diameter: thread.diameter,
        pitch: thread.pitch,
        plates: vec![grip],
        washer,
        into,
        past_nut: PAST_NUT,
    };
    let made = |length: f64| BoltLength { length, thread: None };
    let lengths: Vec<BoltLength> = match thread.system {
        System::Metric => METRIC_LENGTHS.iter().map(|mm| made(mm * 1e-3)).collect(),
        System::Inch => (3..=32).map(|quarters| made(f64::from(quarters) * 0.25 * 0.0254)).collect(),
    };
    bolt_for(&joint, &lengths)?.bolt.map(|bolt| bolt.length)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn thread(text: &str) -> Thread {
        Thread::read(text).expect("a thread")
    }

    #[test]
    fn nuts_are_a_little_lower_than_the_bolt_is_thick() {
        for table in [&METRIC[..], &INCH[..]] {
            assert!(table.is_sorted_by(|a, b| a[0] < b[0] && a[1] < b[1] && a[2] <= b[2]));
        }
        assert!(METRIC.iter().all(|[bolt, nut, _]| (0.8..1.0).contains(&(nut / bolt))));
        assert!(INCH.iter().all(|[bolt, nut, _]| (0.8..1.0).contains(&(nut / (bolt * 62.5)))));
    }

    #[test]
    fn an_inch_bolt_is_a_step_longer_than_what_it_clamps() {
        // 1/2-13 through 1 in: 1 + 2 × 0.109 + 0.448 + 2/13 = 1.820 in.
        let length = bolt_length(&thread("1/2-13"), 0.0254, None).unwrap();
        assert!((length - 2.0 * 0.0254).abs() < 1e-12);
    }

    #[test]
    fn what_no_bolt_reaches_through_has_no_length() {
        assert_eq!(bolt_length(&thread("M12"), 0.3, None), None);
        assert_eq!(bolt_length(&thread("M12"), f64::NAN, None), None);
        let odd = Thread { diameter: 0.013, ..thread("M12") };
        assert_eq!((nut_and_washer(&odd), bolt_length(&odd, 0.02, None)), (None, None));
    }
}
