//! What a dimension function answers when a number it was given cannot be computed with.

use crate::plane::Point;

/// Largest magnitude of a number that is computed with: a million metres, kilograms or newtons.
/// Ten thousand times any machine, and small enough that no square or product overflows. Common practice, no
/// source.
pub const LARGEST: f64 = 1e6;

/// Smallest number that counts as above zero: a millionth of a micrometre, a millionth of a milligram. Below it squares
/// and quotients leave what numbers can hold. Common practice, no source.
pub const SMALLEST: f64 = 1e-12;

/// A number that cannot be computed with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InputError {
    /// The quantity, kebab-case.
    pub what: &'static str,
    /// What is wrong with it.
    pub fault: Fault,
}

/// What is wrong with a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fault {
    /// It is infinite or not a number.
    NotFinite,
    /// Its magnitude is above [`LARGEST`].
    TooLarge,
    /// It is negative and must not be.
    Negative,
    /// It is zero or negative and must be above zero.
    NotPositive,
    /// It lies below the stated least value, in SI units.
    Below(f64),
    /// It lies above the stated greatest value, in SI units.
    Above(f64),
    /// Its two ends are in the wrong order.
    Unordered,
    /// It is too short for what the other numbers ask of it.
    TooShort,
}

/// `value`, if it can be computed with.
///
/// # Errors
/// Infinite, not a number, or above [`LARGEST`] in magnitude.
pub(crate) fn sound(what: &'static str, value: f64) -> Result<f64, InputError> {
    let fault = if !value.is_finite() {
        Fault::NotFinite
    } else if value.abs() > LARGEST {
        Fault::TooLarge
    } else {
        return Ok(value);
    };
    Err(InputError { what, fault })
}

/// `value`, if it is above zero.
///
/// # Errors
/// As [`sound`], zero or less, and above zero but below [`SMALLEST`].
pub(crate) fn positive(what: &'static str, value: f64) -> Result<f64, InputError> {
    if sound(what, value)? <= 0.0 {
        Err(InputError { what, fault: Fault::NotPositive })
    } else if value < SMALLEST {
        Err(InputError { what, fault: Fault::Below(SMALLEST) })
    } else {
        Ok(value)
    }
}

/// `value`, if it is zero or above.
///
/// # Errors
/// As [`sound`], and below zero.
pub(crate) fn not_negative(what: &'static str, value: f64) -> Result<f64, InputError> {
    if sound(what, value)? >= 0.0 { Ok(value) } else { Err(InputError { what, fault: Fault::Negative }) }
}

/// `value`, if it lies between `least` and `most`.
///
/// # Errors
/// As [`sound`], and outside the two.
pub(crate) fn between(what: &'static str, value: f64, least: f64, most: f64) -> Result<f64, InputError> {
    let value = sound(what, value)?;
    if value < least {
        Err(InputError { what, fault: Fault::Below(least) })
    } else if value > most {
        Err(InputError { what, fault: Fault::Above(most) })
    } else {
        Ok(value)
    }
}

/// Nothing, if every point of every line can be computed with.
///
/// # Errors
/// A number of a point that is not [`sound`].
pub(crate) fn sound_points<L: AsRef<[Point]>>(what: &'static str, lines: &[L]) -> Result<(), InputError> {
    for point in lines.iter().flat_map(AsRef::as_ref) {
        sound(what, point.x)?;
        sound(what, point.y)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fault<T>(result: Result<T, InputError>) -> Option<Fault> {
        result.err().map(|error| error.fault)
    }

    #[test]
    fn each_fault_is_told_apart() {
        assert_eq!(fault(sound("a", f64::NAN)), Some(Fault::NotFinite));
        assert_eq!(fault(sound("a", f64::NEG_INFINITY)), Some(Fault::NotFinite));
        assert_eq!(fault(sound("a", -1.1e6)), Some(Fault::TooLarge));
        assert_eq!(fault(sound("a", 1e6)), None);
        assert_eq!(fault(positive("a", 0.0)), Some(Fault::NotPositive));
        assert_eq!(fault(positive("a", 1e-300)), Some(Fault::Below(SMALLEST)));
        assert_eq!(fault(positive("a", SMALLEST)), None);
        assert_eq!(fault(not_negative("a", -1e-300)), Some(Fault::Negative));
        assert_eq!(fault(not_negative("a", 0.0)), None);
        assert_eq!(fault(between("a", 0.9, 1.0, 2.0)), Some(Fault::Below(1.0)));
        assert_eq!(fault(between("a", 2.1, 1.0, 2.0)), Some(Fault::Above(2.0)));
        assert_eq!(fault(between("a", 1.0, 1.0, 2.0)), None);
        assert_eq!(fault(between("a", 2.0, 1.0, 2.0)), None);
        assert_eq!(fault(between("a", f64::NAN, 1.0, 2.0)), Some(Fault::NotFinite));
    }

    #[test]
    fn one_bad_point_among_many_is_found() {
        let good = vec![Point::new(0.0, 1.0); 3];
        let bad = vec![Point::new(0.0, 1.0), Point::new(0.0, f64::NAN)];
        assert_eq!(sound_points("p", std::slice::from_ref(&good)), Ok(()));
        assert_eq!(sound_points("p", &[good, bad]), Err(InputError { what: "p", fault: Fault::NotFinite }));
        assert_eq!(sound_points::<Vec<Point>>("p", &[]), Ok(()));
        let far = vec![Point::new(2e6, 0.0)];
        assert_eq!(sound_points("p", &[far]), Err(InputError { what: "p", fault: Fault::TooLarge }));
    }
}
