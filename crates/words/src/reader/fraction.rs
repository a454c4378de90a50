//! Inches in fractions, as a workshop's rule and drill index are marked.

use super::number::{NO_BREAK, NOT_A_NUMBER};

/// A length in whole inches and a fraction in lowest terms: `26 7/8`.
///
/// Units: inches in; the parts of an inch (a power of two) say how fine.
/// Accuracy: to the nearest part, halves up.
/// The value is taken without its sign.
pub(super) fn inches(inches: f64, parts: u32) -> String {
    match split(inches, parts) {
        None => NOT_A_NUMBER.to_owned(),
        Some((whole, 0, _)) => whole.to_string(),
        Some((0, over, under)) => format!("{over}/{under}"),
        Some((whole, over, under)) => format!("{whole}{NO_BREAK}{over}/{under}"),
    }
}

/// Feet, and what is left in whole inches and a fraction, rounded to the nearest part before the
/// feet are taken out, so that no `12 in` is left over.
pub(super) fn feet(inches_in: f64, parts: u32) -> Option<(u64, String)> {
    let (whole, over, under) = split(inches_in, parts)?;
    let (feet, left) = (whole / 12, whole % 12);
    Some((feet, inches(left as f64 + f64::from(over) / f64::from(under), parts)))
}

/// Whole inches, and the fraction over and under the line in lowest terms.
fn split(inches: f64, parts: u32) -> Option<(u64, u32, u32)> {
    let counted = (inches.abs() * f64::from(parts)).round();
    if !counted.is_finite() || counted >= 1e12 {
        return None;
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 0 and 1e12")]
    let counted = counted as u64;
    let parts = u64::from(parts);
    let (whole, mut over, mut under) = (counted / parts, counted % parts, parts);
    while over > 0 && over.is_multiple_of(2) {
        over /= 2;
        under /= 2;
    }
    let small = |n: u64| u32::try_from(n).expect("no more than the parts of an inch");
    Some((whole, small(over), small(under)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fractions_are_in_lowest_terms() {
        assert_eq!(inches(0.5, 16), "1/2");
        assert_eq!(inches(0.9375, 16), "15/16");
        assert_eq!(inches(0.99, 16), "1");
        assert_eq!(inches(0.0, 16), "0");
        assert_eq!(inches(12.75, 32), "12\u{a0}3/4");
    }

    #[test]
    fn no_twelve_inches_are_left_beside_the_feet() {
        assert_eq!(feet(35.99, 16), Some((3, "0".to_owned())));
        assert_eq!(feet(40.5, 2), Some((3, "4\u{a0}1/2".to_owned())));
    }

    #[test]
    fn what_is_no_length_is_none() {
        assert_eq!(feet(f64::NAN, 16), None);
        assert_eq!(inches(f64::INFINITY, 16), NOT_A_NUMBER);
    }
}
