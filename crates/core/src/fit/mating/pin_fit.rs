//! Running fits of pins in bores: how much clearance they were made with.

/// A fit on the hole basis.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PinFit {
    /// H7/g6, sliding.
    Sliding,
    /// H8/f7, close running.
    CloseRunning,
    /// H9/d9, free running.
    FreeRunning,
    /// H11/c11, loose running: the usual one for pins in weldments.
    LooseRunning,
}

/// How far bore and pin may lie from the nominal diameter, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Bore, upper deviation. The lower one is zero on the hole basis.
    pub bore_upper: f64,
    /// Pin, upper deviation (negative: every pin is smaller than nominal).
    pub pin_upper: f64,
    /// Pin, lower deviation.
    pub pin_lower: f64,
}

impl Limits {
    /// Least clearance: smallest bore, largest pin.
    pub fn least_clearance(&self) -> f64 {
        -self.pin_upper
    }

    /// Greatest clearance: largest bore, smallest pin.
    pub fn greatest_clearance(&self) -> f64 {
        self.bore_upper - self.pin_lower
    }
}

/// One range of nominal sizes. Micrometres.
struct Range {
    /// Over this …
    over: f64,
    /// … up to and including this, millimetres.
    up_to: f64,
    /// Standard tolerances IT6, IT7, IT8, IT9, IT11.
    grades: [f64; 5],
    /// Least clearances of g, f, d, c.
    gaps: [f64; 4],
}

/// Source: ISO 286-1:2010 table 1 and ISO 286-2. Over 18 to 50: printed in an engineer's data book (from BS 4500), d from
/// memory. Over 10 to 18 and over 50 to 80: from memory, the grades checked against the ISO tolerance unit.
const RANGES: [Range; 6] = [
    Range { over: 10.0, up_to: 18.0, grades: [11.0, 18.0, 27.0, 43.0, 110.0], gaps: [6.0, 16.0, 50.0, 95.0] },
    Range { over: 18.0, up_to: 30.0, grades: [13.0, 21.0, 33.0, 52.0, 130.0], gaps: [7.0, 20.0, 65.0, 110.0] },
    Range { over: 30.0, up_to: 40.0, grades: [16.0, 25.0, 39.0, 62.0, 160.0], gaps: [9.0, 25.0, 80.0, 120.0] },
    Range { over: 40.0, up_to: 50.0, grades: [16.0, 25.0, 39.0, 62.0, 160.0], gaps: [9.0, 25.0, 80.0, 130.0] },
    Range { over: 50.0, up_to: 65.0, grades: [19.0, 30.0, 46.0, 74.0, 190.0], gaps: [10.0, 30.0, 100.0, 140.0] },
    Range { over: 65.0, up_to: 80.0, grades: [19.0, 30.0, 46.0, 74.0, 190.0], gaps: [10.0, 30.0, 100.0, 150.0] },
];

/// Limits of a fit at a nominal diameter in metres; `None` outside over 10 to 80 mm.
///
/// # Units
/// Metres.
///
/// # Source
/// ISO 286-1:2010 and ISO 286-2:2010; see the table in this file for how each row is known. A size equal to a range's upper limit
/// belongs to that range.
///
/// # Examples
/// H8/f7 at 25 mm: bore +33/0, pin −20/−41 µm, so 20 to 74 µm of clearance.
/// ```
/// use fitup_core::fit::mating::pin_fit::{PinFit, limits};
/// let limits = limits(PinFit::CloseRunning, 0.025).unwrap();
/// assert!((limits.least_clearance() - 20e-6).abs() < 1e-12);
/// assert!((limits.greatest_clearance() - 74e-6).abs() < 1e-12);
/// ```
pub fn limits(fit: PinFit, nominal: f64) -> Option<Limits> {
    // A nanometre of slack keeps a metric size at its range's end in that range.
    let mm = nominal * 1e3;
    let range = RANGES.iter().find(|range| mm > range.over + 1e-6 && mm <= range.up_to + 1e-6)?;
    // Grade of the bore, grade of the pin, letter of the pin.
    let (bore, pin, letter) = match fit {
        PinFit::Sliding => (1, 0, 0),
        PinFit::CloseRunning => (2, 1, 1),
        PinFit::FreeRunning => (3, 3, 2),
        PinFit::LooseRunning => (4, 4, 3),
    };
    let gap = range.gaps[letter];
    Some(Limits {
        bore_upper: range.grades[bore] * 1e-6,
        pin_upper: -gap * 1e-6,
        pin_lower: -(gap + range.grades[pin]) * 1e-6,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const FITS: [PinFit; 4] = [PinFit::Sliding, PinFit::CloseRunning, PinFit::FreeRunning, PinFit::LooseRunning];

    #[test]
    fn looser_fits_have_more_clearance() {
        for mm in [12.0, 20.0, 35.0, 45.0, 60.0, 70.0] {
            for pair in FITS.windows(2) {
                let (tight, loose) = (limits(pair[0], mm * 1e-3).unwrap(), limits(pair[1], mm * 1e-3).unwrap());
                assert!(tight.least_clearance() < loose.least_clearance());
                assert!(tight.greatest_clearance() < loose.greatest_clearance());
                assert!(0.0 < tight.least_clearance() && tight.least_clearance() < tight.greatest_clearance());
            }
        }
    }

    #[test]
    fn the_ranges_end_where_the_next_begins_and_include_their_upper_end() {
        let least =
            |mm: f64| limits(PinFit::LooseRunning, mm * 1e-3).map(|limits| (limits.least_clearance() * 1e6).round());
        assert_eq!(
            (least(10.0), least(10.001), least(18.0), least(18.001)),
            (None, Some(95.0), Some(95.0), Some(110.0))
        );
        assert_eq!(
            (least(30.0), least(30.001), least(40.0), least(40.001)),
            (Some(110.0), Some(120.0), Some(120.0), Some(130.0))
        );
        assert_eq!(
            (least(50.0), least(50.001), least(65.0), least(65.001)),
            (Some(130.0), Some(140.0), Some(140.0), Some(150.0))
        );
        assert_eq!((least(80.0), least(80.001), least(f64::NAN), least(-20.0)), (Some(150.0), None, None, None));
    }

    #[test]
    fn the_grades_agree_with_the_tolerance_unit() {
        // i = 0.45 D^(1/3) + 0.001 D micrometres with D the geometric mean of the basic range; 10, 16, 25, 40 and 100 i.
        for (lo, hi, place) in [(10.0, 18.0, 0), (18.0, 30.0, 1), (30.0, 50.0, 2), (50.0, 80.0, 4)] {
            let mean: f64 = lo * hi;
            let mean = mean.sqrt();
            let unit = 0.45 * libm::cbrt(mean) + 0.001 * mean;
            for (grade, times) in RANGES[place].grades.iter().zip([10.0, 16.0, 25.0, 40.0, 100.0]) {
                assert!((grade - times * unit).abs() < 0.04 * grade, "{grade} against {}", times * unit);
            }
        }
    }
}
