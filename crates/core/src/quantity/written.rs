//! Numbers written in decimals, the way back of [`decimal`](super::decimal()).
//!
//! The standard library's writer works for every number there is and brings 14 kB for it, which
//! every visitor would have to load; the figures of machines need no more than whole arithmetic.

use super::decimal;

/// Most places after the point: what a `u64` holds.
const MOST_PLACES: u32 = 19;

/// Greatest number that is written; a greater one is written as this.
const GREATEST: f64 = 1e18;

/// A number with so many places after the point, at most 19; a half goes to the even digit.
///
/// Accuracy: exact below 10¹⁸, as the standard library writes it. A number that is not finite is
/// written as `NaN`.
///
/// # Examples
/// ```
/// use fitup_core::quantity::fixed;
/// assert_eq!(fixed(-25.078, 2), "-25.08");
/// assert_eq!(fixed(0.125, 2), "0.12");
/// assert_eq!(fixed(3.0, 0), "3");
/// ```
pub fn fixed(value: f64, places: u32) -> String {
    if !value.is_finite() {
        return "NaN".to_owned();
    }
    let places = places.min(MOST_PLACES);
    let one = 10u128.pow(places);
    let digits = times(value.abs().min(GREATEST), one);
    let sign = if value.is_sign_negative() { "-" } else { "" };
    let (whole, fraction) = (of_64_bits(digits / one), of_64_bits(digits % one));
    let mut text = format!("{sign}{whole}");
    if places > 0 {
        let fraction = fraction.to_string();
        text.push('.');
        text.extend(std::iter::repeat_n('0', places as usize - fraction.len()));
        text.push_str(&fraction);
    }
    text
}

/// A number below 10¹⁹: the standard library writes those of 128 bits by a routine of its own.
fn of_64_bits(number: u128) -> u64 {
    u64::try_from(number).unwrap_or(u64::MAX)
}

/// `value · factor`, rounded to the nearest whole number, a half to the even one.
fn times(value: f64, factor: u128) -> u128 {
    let bits = value.to_bits();
    let (fraction, exponent) = (bits & ((1 << 52) - 1), (bits >> 52) as u32);
    // value = mantissa · 2^(exponent − 1075); the smallest numbers have no leading one.
    let mantissa = if exponent == 0 { fraction } else { fraction | (1 << 52) };
    let product = u128::from(mantissa) * factor;
    let exponent = exponent.max(1);
    if exponent >= 1075 {
        return product << (exponent - 1075);
    }
    let halvings = 1075 - exponent;
    if halvings >= u128::BITS {
        return 0;
    }
    let (whole, rest, half) = (product >> halvings, product & ((1 << halvings) - 1), 1 << (halvings - 1));
    whole + u128::from(rest > half || (rest == half && whole & 1 == 1))
}

/// A number with as few places after the point as tell it from every other number; 19 at most.
///
/// # Examples
/// ```
/// use fitup_core::quantity::shortest;
/// assert_eq!(shortest(25.1), "25.1");
/// assert_eq!(shortest(300.0), "300");
/// ```
pub fn shortest(value: f64) -> String {
    let longer = (0..MOST_PLACES).map(|places| fixed(value, places));
    longer.into_iter().find(|text| decimal(text) == Some(value)).unwrap_or_else(|| fixed(value, MOST_PLACES))
}

/// The places after the point that give a number so many significant digits.
///
/// # Examples
/// ```
/// use fitup_core::quantity::places;
/// assert_eq!([123.4, 0.5, 0.000_12].map(|value| places(value, 12)), [9, 12, 15]);
/// ```
pub fn places(value: f64, significant: u32) -> u32 {
    let (mut rest, mut places) = (value.abs().min(GREATEST), significant);
    while rest >= 1.0 {
        rest /= 10.0;
        places = places.saturating_sub(1);
    }
    while rest > 0.0 && rest < 0.1 && places < MOST_PLACES {
        rest *= 10.0;
        places += 1;
    }
    places
}

#[cfg(test)]
mod tests {
    use super::*;

    fn numbers() -> impl Iterator<Item = f64> {
        let mut state = 1u64;
        std::iter::repeat_with(move || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            state >> 11
        })
        .take(20_000)
        .enumerate()
        .map(|(at, number)| {
            let value = number as f64 / 10f64.powi(i32::try_from(at % 30).unwrap());
            if at % 7 == 0 { -value } else { value }
        })
    }

    #[test]
    fn numbers_are_written_as_the_standard_library_writes_them() {
        for value in numbers().chain([0.0, -0.0, 0.5, 1.5, 2.5, 0.125, 0.375, 1e-300, 5e-324, 999.995, 1e15]) {
            for places in [0, 1, 2, 3, 11, 19] {
                assert_eq!(fixed(value, places), format!("{value:.*}", places as usize), "{value:e}");
            }
        }
        assert_eq!(fixed(f64::MAX, 0), "1000000000000000000");
        assert_eq!(fixed(f64::NAN, 2), "NaN");
    }

    #[test]
    fn the_shortest_form_reads_back_as_the_same_number() {
        for value in numbers().filter(|value| *value == 0.0 || value.abs() > 1e-2) {
            let text = shortest(value);
            assert_eq!(decimal(&text), Some(value), "{text}");
            assert!(text.len() <= value.to_string().len(), "{text}");
        }
    }
}
