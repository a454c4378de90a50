//! What people type for a length, read into one.

use fitup_core::quantity::{Length, decimal};
use fitup_words::{Lang, Reader, Units};

/// Reads a length as typed: `412`, `412,5`, `41.2 cm`, `1 1/8`, `3/4"`. Without a unit it is in
/// millimetres or inches, by the reader's units. What may be a thousand to one reader and a one to another, `1,200` in
/// English and `1.200` elsewhere, is not guessed at.
pub fn length(typed: &str, reader: Reader) -> Option<Length> {
    let typed = typed.trim().to_ascii_lowercase().replace('\u{a0}', " ");
    let split = typed.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | ' ' | '-' | '+')));
    let (number, unit) = split.map_or((typed.as_str(), ""), |at| typed.split_at(at));
    let between_thousands = if reader.lang == Lang::En { ',' } else { '.' };
    if number.trim().rsplit_once(between_thousands).is_some_and(|(_, after)| after.len() == 3) {
        return None;
    }
    let value = number_of(&number.trim().replace(',', "."))?;
    let length = match (unit.trim(), reader.units) {
        ("mm", _) | ("", Units::Metric) => Length::from_mm(value),
        ("cm", _) => Length::from_cm(value),
        ("m", _) => Length::from_m(value),
        ("in" | "\"" | "″" | "po", _) | ("", Units::Us) => Length::from_inch(value),
        ("ft" | "'" | "′" | "pi", _) => Length::from_foot(value),
        _ => return None,
    };
    length.si().is_finite().then_some(length)
}

/// A decimal, a fraction, or a whole and a fraction.
fn number_of(text: &str) -> Option<f64> {
    let fraction = |text: &str| -> Option<f64> {
        let (over, under) = text.split_once('/')?;
        let (over, under): (u32, u32) = (over.trim().parse().ok()?, under.trim().parse().ok()?);
        (under > 0).then(|| f64::from(over) / f64::from(under))
    };
    if let Some(value) = fraction(text) {
        return Some(value);
    }
    if let Some((whole, rest)) = text.split_once(' ')
        && let (Ok(whole), Some(part)) = (whole.parse::<u32>(), fraction(rest))
    {
        return Some(f64::from(whole) + part);
    }
    decimal(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(typed: &str, units: Units) -> Option<f64> {
        length(typed, Reader::new(Lang::En, units)).map(|length| (length.mm() * 1000.0).round() / 1000.0)
    }

    #[test]
    fn lengths_are_read_as_people_type_them() {
        assert_eq!(mm("412", Units::Metric), Some(412.0));
        assert_eq!(mm(" 412,5 ", Units::Metric), Some(412.5));
        assert_eq!(mm("41.2 cm", Units::Metric), Some(412.0));
        assert_eq!(mm("1 1/8", Units::Us), Some(28.575));
        assert_eq!(mm("3/4\"", Units::Metric), Some(19.05));
        assert_eq!(mm("2 ft", Units::Metric), Some(609.6));
        assert_eq!(mm("25.4mm", Units::Us), Some(25.4));
        assert_eq!(mm("-3", Units::Metric), Some(-3.0));
    }

    #[test]
    fn a_mark_that_may_stand_between_thousands_is_not_guessed_at() {
        let read = |typed, lang| length(typed, Reader::new(lang, Units::Metric)).map(Length::mm);
        for (lang, unclear, clear) in [(Lang::En, "1,200", "1.200"), (Lang::De, "1.200 mm", "1,200 mm")] {
            assert_eq!(read(unclear, lang), None, "{unclear}");
            assert!((read(clear, lang).expect("a length") - 1.2).abs() < 1e-9, "{clear}");
            assert!((read("1200", lang).expect("a length") - 1200.0).abs() < 1e-9);
        }
    }

    #[test]
    fn what_is_no_length_is_not_read() {
        for typed in ["", " ", "abc", "1/0", "12 kg", "1e999", "1..2", "--3", "½ of it", "1/2/3"] {
            assert_eq!(mm(typed, Units::Us), None, "{typed}");
        }
    }
}
