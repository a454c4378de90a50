//! Numbers as a language writes them.

use fitup_core::quantity::{fixed, places};

use crate::Lang;

/// Joins a number and its unit, so that no line breaks between them.
pub(super) const NO_BREAK: char = '\u{a0}';

/// The true minus sign, as wide as a plus.
pub(super) const MINUS: char = '\u{2212}';

/// Stands for a number that cannot be written.
pub(super) const NOT_A_NUMBER: &str = "—";

/// How a language writes numbers.
///
/// Source: CLDR 48, `symbols` and `decimalFormats` of en, de, es, fr.
struct Marks {
    decimal: char,
    group: char,
    /// Digits before the first group mark from which on groups are marked.
    least_grouped: usize,
}

const fn marks(lang: Lang) -> Marks {
    match lang {
        Lang::En | Lang::EnUs => Marks { decimal: '.', group: ',', least_grouped: 4 },
        Lang::De => Marks { decimal: ',', group: '.', least_grouped: 4 },
        // minimumGroupingDigits is 2: 1234 but 12.345.
        Lang::Es => Marks { decimal: ',', group: '.', least_grouped: 5 },
        Lang::Fr => Marks { decimal: ',', group: '\u{202f}', least_grouped: 4 },
    }
}

/// Whether zeros at the end of the decimals are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Zeros {
    Keep,
    Drop,
}

/// Whether a plus sign is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sign {
    /// Only a minus.
    Minus,
    /// Plus or minus, nothing for zero.
    Both,
}

/// A number with `decimals` decimals, rounded half away from zero in its shortest decimal form
/// (as ECMA-402 does), so that 1.005 becomes 1.01 and 2.5 becomes 3.
///
/// Values that only stand a rounding error of unit conversion below a half (2.249 999 999 999 9 for 2.25) count
/// as the half: the number is first taken to 12 significant digits.
pub(super) fn number(lang: Lang, value: f64, decimals: usize, zeros: Zeros, sign: Sign) -> String {
    let Some((whole, mut fraction)) = rounded(value, decimals) else { return NOT_A_NUMBER.to_owned() };
    if zeros == Zeros::Drop {
        fraction.truncate(fraction.trim_end_matches('0').len());
    }
    let is_zero = whole == "0" && fraction.bytes().all(|digit| digit == b'0');
    let marks = marks(lang);
    let mut text = String::new();
    text.extend(signed(value, is_zero, sign));
    let grouped = whole.len() >= marks.least_grouped;
    for (index, digit) in whole.chars().enumerate() {
        if grouped && index > 0 && (whole.len() - index).is_multiple_of(3) {
            text.push(marks.group);
        }
        text.push(digit);
    }
    if !fraction.is_empty() {
        text.push(marks.decimal);
        text.push_str(&fraction);
    }
    text
}

/// The sign to write before a value.
pub(super) fn signed(value: f64, is_zero: bool, sign: Sign) -> Option<char> {
    match sign {
        _ if is_zero => None,
        _ if value < 0.0 => Some(MINUS),
        Sign::Both => Some('+'),
        Sign::Minus => None,
    }
}

/// Digits before and after the decimal mark of the value without its sign; `None` if it has none
/// or too many to be a figure of a machine.
fn rounded(value: f64, decimals: usize) -> Option<(String, String)> {
    if !value.is_finite() || value.abs() >= 1e15 {
        return None;
    }
    let text = fixed(value.abs(), places(value, 12));
    let (whole, fraction) = text.split_once('.').unwrap_or((&text, ""));
    let mut digits = fraction.bytes().map(|digit| digit - b'0').chain(std::iter::repeat(0));
    let mut kept: Vec<u8> = whole.bytes().map(|digit| digit - b'0').collect();
    kept.extend(digits.by_ref().take(decimals));
    if digits.next() >= Some(5) {
        let mut at = kept.len();
        loop {
            if at == 0 {
                kept.insert(0, 1);
                break;
            }
            at -= 1;
            if kept[at] < 9 {
                kept[at] += 1;
                break;
            }
            kept[at] = 0;
        }
    }
    let all: String = kept.iter().map(|digit| char::from(b'0' + digit)).collect();
    let (whole, fraction) = all.split_at(all.len() - decimals);
    Some((whole.to_owned(), fraction.to_owned()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plain(value: f64, decimals: usize) -> String {
        number(Lang::En, value, decimals, Zeros::Keep, Sign::Minus)
    }

    #[test]
    fn halves_are_rounded_away_from_zero() {
        assert_eq!(plain(2.5, 0), "3");
        assert_eq!(plain(3.5, 0), "4");
        assert_eq!(plain(-2.5, 0), "\u{2212}3");
        assert_eq!(plain(0.05, 1), "0.1");
        assert_eq!(plain(9.995, 2), "10.00");
        assert_eq!(plain(999.95, 1), "1,000.0");
    }

    #[test]
    fn a_value_a_rounding_error_below_a_half_counts_as_the_half() {
        assert_eq!(plain(2.249_999_999_999_999_6, 1), "2.3");
    }

    #[test]
    fn zero_has_no_sign() {
        assert_eq!(plain(-0.04, 1), "0.0");
        assert_eq!(number(Lang::En, 0.0, 1, Zeros::Drop, Sign::Both), "0");
        assert_eq!(number(Lang::En, 0.3, 1, Zeros::Drop, Sign::Both), "+0.3");
    }

    #[test]
    fn what_is_no_figure_is_a_dash() {
        for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, 1e15] {
            assert_eq!(plain(value, 2), NOT_A_NUMBER);
        }
    }

    #[test]
    fn small_and_large_numbers_keep_their_places() {
        assert_eq!(plain(0.000_4, 3), "0.000");
        assert_eq!(plain(0.000_5, 3), "0.001");
        assert_eq!(plain(123_456_789_012.0, 1), "123,456,789,012.0");
        assert_eq!(plain(0.0, 0), "0");
    }
}
