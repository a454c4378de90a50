//! Decimal numbers as people and files write them.

/// Digits of a number that are looked at; a `u64` holds no more, and an `f64` tells no more than 17.
const MOST_DIGITS: u32 = 19;

/// The number that a text writes: digits with perhaps a sign, a point and an exponent of ten.
///
/// Accuracy: the `f64` nearest to the first 19 digits, as the standard library reads them, for up
/// to 19 places after the point and whole numbers up to 10³⁸; beyond that within one unit in the
/// last place. The standard library's reader is exact for everything and brings a table of 10 kB,
/// which every visitor would have to load.
///
/// # Examples
/// ```
/// use fitup_core::quantity::decimal;
/// assert_eq!(decimal("-12.5e1"), Some(-125.0));
/// assert_eq!(decimal("12 mm"), None);
/// ```
pub fn decimal(text: &str) -> Option<f64> {
    let (negative, rest) = match text.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let (number, exponent) = match rest.split_once(['e', 'E']) {
        None => (rest, 0),
        // Beyond what the exponent of an `f64` can be, more makes no difference.
        Some((number, exponent)) => (number, exponent.parse::<i32>().ok()?.clamp(-2000, 2000)),
    };
    let (whole, fraction) = number.split_once('.').unwrap_or((number, ""));
    if whole.is_empty() && fraction.is_empty() {
        return None;
    }
    let (mut digits, mut count, mut ten) = (0u64, 0u32, exponent);
    for (at, byte) in whole.bytes().chain(fraction.bytes()).enumerate() {
        let digit = byte.wrapping_sub(b'0');
        if digit > 9 {
            return None;
        }
        let is_looked_at = count < MOST_DIGITS;
        if is_looked_at {
            digits = digits * 10 + u64::from(digit);
            count += u32::from(digits > 0);
        }
        match at < whole.len() {
            true if !is_looked_at => ten += 1,
            false if is_looked_at => ten -= 1,
            _ => {}
        }
    }
    let value = times_ten_to(digits, ten);
    Some(if negative { -value } else { value })
}

/// `digits · 10^ten`, rounded to the nearest `f64` as far as [`decimal`] says.
fn times_ten_to(digits: u64, ten: i32) -> f64 {
    match ten {
        _ if digits == 0 => 0.0,
        0..=19 => (u128::from(digits) * 10u128.pow(ten.unsigned_abs())) as f64,
        20.. => digits as f64 * libm::pow(10.0, f64::from(ten)),
        _ => divided_by_ten_to(digits, ten.unsigned_abs()),
    }
}

/// Long division, 19 places at a time: the quotient keeps 63 bits and more.
fn divided_by_ten_to(digits: u64, mut places: u32) -> f64 {
    let (mut quotient, mut halvings) = (u128::from(digits), 0);
    while places > 0 {
        let now = places.min(MOST_DIGITS);
        let divisor = 10u128.pow(now);
        let shift = quotient.leading_zeros();
        let dividend = quotient << shift;
        // What is left over only says that the quotient is a little more than it shows.
        quotient = (dividend / divisor) | u128::from(dividend % divisor > 0);
        halvings += shift.cast_signed();
        places -= now;
    }
    libm::scalbn(quotient as f64, -halvings)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_as_the_standard_library_reads_them() {
        let mut state = 1u64;
        let mut next = move || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            state >> 11
        };
        for _ in 0..20_000 {
            let (digits, places) = (next(), next() % 16);
            let value = digits as f64 / 10f64.powi(i32::try_from(places).unwrap());
            for text in [format!("{value:?}"), format!("-{value:.3}"), format!("{:.11e}", value / 1e9)] {
                assert_eq!(decimal(&text), text.parse().ok(), "{text}");
            }
        }
        for text in
            ["0", "-0", "007", ".5", "5.", "1e3", "1E-3", "+2", "9007199254740993", "0.1", "123456789012345678901"]
        {
            assert_eq!(decimal(text), text.parse().ok(), "{text}");
        }
        assert_eq!(decimal("1e999"), Some(f64::INFINITY));
        assert_eq!(decimal("1e-999"), Some(0.0));
    }

    #[test]
    fn very_small_numbers_are_read_to_the_last_place() {
        for text in ["1.2345e-30", "7e-25", "0.00000000000000000000031"] {
            let (ours, theirs) = (decimal(text).unwrap(), text.parse::<f64>().unwrap());
            assert!(ours.to_bits().abs_diff(theirs.to_bits()) <= 1, "{text}");
        }
    }

    #[test]
    fn what_is_no_number_is_none() {
        for text in ["", "-", ".", "e5", "1e", "1e5.5", "1 2", "1,5", "NaN", "inf", "--1", "0x10", "１"] {
            assert_eq!(decimal(text), None, "{text}");
        }
    }
}
