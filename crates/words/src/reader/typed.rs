//! Lengths as people write them, read back.

use fitup_core::quantity::{Length, decimal};

use super::{Reader, Units};
use crate::{Lang, Words};

/// A length that was read, with what was written of how far it may be off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TypedLength {
    /// The length.
    pub value: Length,
    /// What was written behind the ±.
    pub plus_minus: Option<Length>,
}

/// Why a length cannot be read, or cannot be one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Misread {
    /// Nothing is written.
    Nothing,
    /// It is not a number with a unit.
    NoLength,
    /// A mark that one reader takes for a decimal mark and another for one between thousands.
    Thousands,
    /// A fraction of a millimetre, centimetre or metre.
    MetricFraction,
    /// Not above zero, where a size is wanted.
    NotAboveZero,
    /// Longer than anything on a machine.
    TooLong,
    /// The half range is below zero or above the length.
    PlusMinus,
}

impl Misread {
    /// The key of the message that tells it.
    pub(crate) const fn key(self) -> &'static str {
        match self {
            Self::Nothing => "misread-nothing",
            Self::NoLength => "misread-no-length",
            Self::Thousands => "misread-thousands",
            Self::MetricFraction => "misread-metric-fraction",
            Self::NotAboveZero => "misread-not-above-zero",
            Self::TooLong => "misread-too-long",
            Self::PlusMinus => "misread-plus-minus",
        }
    }
}

/// A unit that may be written behind a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unit {
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
}

impl Unit {
    fn read(text: &str) -> Option<Self> {
        Some(match text.trim_end_matches('.') {
            "mm" => Self::Millimetre,
            "cm" => Self::Centimetre,
            "m" => Self::Metre,
            "\"" | "''" | "in" | "inch" | "inches" | "zoll" | "po" | "pouce" | "pouces" | "pulg" => Self::Inch,
            "'" | "ft" | "foot" | "feet" | "fuß" | "pi" | "pied" | "pieds" | "pie" | "pies" => Self::Foot,
            _ => return None,
        })
    }

    fn length(self, number: f64) -> Length {
        match self {
            Self::Millimetre => Length::from_mm(number),
            Self::Centimetre => Length::from_cm(number),
            Self::Metre => Length::from_m(number),
            Self::Inch => Length::from_inch(number),
            Self::Foot => Length::from_foot(number),
        }
    }
}

impl Reader {
    /// Reads the size of something as a person writes it: `51.6`, `51,6`, `5.16 cm`, `1 1/8`, `1-1/8"`, `1⅛`, `2' 3"`,
    /// `51.6 ± 0.5`. Without a unit it is in millimetres or inches, by the reader's units.
    ///
    /// # Errors
    /// What is no length, may be read in two ways, or is no size of anything on a machine is refused, never misread.
    ///
    /// # Examples
    /// ```
    /// use fitup_words::{Lang, Misread, Reader, Units};
    /// let metric = Reader::new(Lang::En, Units::Metric);
    /// let read = metric.typed_size("51,6 ± 0,5").unwrap();
    /// assert_eq!((read.value.mm().round(), read.plus_minus.unwrap().mm()), (52.0, 0.5));
    /// assert_eq!(metric.typed_size("2 1/32"), Err(Misread::MetricFraction));
    /// assert_eq!(metric.typed_size("-51.6"), Err(Misread::NotAboveZero));
    /// ```
    pub fn typed_size(self, typed: &str) -> Result<TypedLength, Misread> {
        let read = self.typed_length(typed)?;
        if read.value <= Length::ZERO {
            return Err(Misread::NotAboveZero);
        }
        match read.plus_minus {
            Some(off) if off > read.value => Err(Misread::PlusMinus),
            _ => Ok(read),
        }
    }

    /// As [`Reader::typed_size`], for a place, which may lie on either side of what it is counted from.
    ///
    /// # Errors
    /// As there.
    pub fn typed_length(self, typed: &str) -> Result<TypedLength, Misread> {
        let text = plain(typed);
        let (value, off) = text.split_once('±').map_or((text.as_str(), None), |(value, off)| (value, Some(off)));
        // A unit behind the ± is the unit of both.
        let unit_of = |text: &str| terms(text).ok()?.last()?.1;
        let unit = off.and_then(unit_of).or_else(|| unit_of(value));
        let value = self.one_length(value, unit)?;
        let plus_minus = off.map(|off| self.one_length(off, unit)).transpose()?;
        if value.abs() > fitup_core::fit::LONGEST {
            return Err(Misread::TooLong);
        }
        match plus_minus {
            Some(off) if off < Length::ZERO || off > fitup_core::fit::LONGEST => Err(Misread::PlusMinus),
            _ => Ok(TypedLength { value, plus_minus }),
        }
    }

    /// Reads several readings of one size, `;` between them.
    ///
    /// # Errors
    /// That of the first that cannot be read.
    pub fn typed_sizes(self, typed: &str) -> Result<Vec<TypedLength>, Misread> {
        typed.split(';').map(|one| self.typed_size(one)).collect()
    }

    fn one_length(self, text: &str, unit: Option<Unit>) -> Result<Length, Misread> {
        let usual = unit.unwrap_or(match self.units {
            Units::Metric => Unit::Millimetre,
            Units::Us => Unit::Inch,
        });
        let text = text.trim();
        let (is_negative, text) = match text.strip_prefix('-') {
            Some(rest) => (true, rest.trim_start()),
            None => (false, text.strip_prefix('+').unwrap_or(text).trim_start()),
        };
        let all = terms(text)?;
        let read = |(number, unit): (&str, Option<Unit>), usual| self.number_of(number, unit.unwrap_or(usual));
        let length = match *all.as_slice() {
            [] => return Err(Misread::Nothing),
            [one] => read(one, usual)?,
            [feet @ (_, Some(Unit::Foot)), inches @ (_, None | Some(Unit::Inch))] => {
                read(feet, Unit::Foot)? + read(inches, Unit::Inch)?
            }
            _ => return Err(Misread::NoLength),
        };
        Ok(if is_negative { -length } else { length })
    }

    /// A decimal, a fraction, or a whole and a fraction.
    fn number_of(self, text: &str, unit: Unit) -> Result<Length, Misread> {
        let between_thousands = if self.lang == Lang::En { ',' } else { '.' };
        if text.rsplit_once(between_thousands).is_some_and(|(_, after)| after.len() == 3) {
            return Err(Misread::Thousands);
        }
        let number = if text.contains('/') {
            if !matches!(unit, Unit::Inch | Unit::Foot) {
                return Err(Misread::MetricFraction);
            }
            let (whole, part) = text.rsplit_once([' ', '-']).unwrap_or(("0", text));
            let whole: u32 = whole.trim().parse().map_err(|_| Misread::NoLength)?;
            f64::from(whole) + fraction(part).ok_or(Misread::NoLength)?
        } else {
            let is_plain = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',');
            let text = Some(text).filter(|text| text.chars().all(is_plain)).ok_or(Misread::NoLength)?;
            decimal(&text.replace(',', ".")).ok_or(Misread::NoLength)?
        };
        Ok(unit.length(number))
    }
}

impl Words {
    /// What is wrong with a length that was typed, and what to write instead.
    pub fn misread(&self, typed: &str, why: Misread) -> String {
        self.ui(why.key(), &[("typed", typed.trim().into())])
    }
}

fn fraction(text: &str) -> Option<f64> {
    let (over, under) = text.split_once('/')?;
    let (over, under): (u32, u32) = (over.parse().ok()?, under.parse().ok()?);
    (under > 0 && over < under).then(|| f64::from(over) / f64::from(under))
}

/// One way to write each thing: small letters, plain spaces and marks, fractions with a stroke.
fn plain(typed: &str) -> String {
    let mut text = String::new();
    for c in typed.trim().chars() {
        if let Some(fraction) = one_letter(c) {
            text.push(' ');
            text.push_str(fraction);
            continue;
        }
        text.push(match c {
            '\u{a0}' | '\u{2009}' | '\u{202f}' | '\t' => ' ',
            '\u{2212}' | '\u{2010}'..='\u{2013}' => '-',
            '″' | '”' | '“' => '"',
            '′' | '’' | '‘' => '\'',
            '⁄' => '/',
            other => other.to_ascii_lowercase(),
        });
    }
    for (written, meant) in [("+/-", "±"), ("+-", "±"), (" /", "/"), ("/ ", "/"), (" -", "-"), ("- ", "-")] {
        text = text.replace(written, meant);
    }
    text.trim().to_owned()
}

/// Fractions that are one letter.
const fn one_letter(c: char) -> Option<&'static str> {
    Some(match c {
        '¼' => "1/4",
        '½' => "1/2",
        '¾' => "3/4",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        '⅓' => "1/3",
        '⅔' => "2/3",
        _ => return None,
    })
}

/// Numbers, each with the unit behind it.
fn terms(text: &str) -> Result<Vec<(&str, Option<Unit>)>, Misread> {
    let is_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | ' ' | '-' | '+');
    let mut all = Vec::new();
    let mut rest = text.trim();
    while !rest.is_empty() {
        let (number, behind) = rest.split_at(rest.find(|c| !is_number(c)).unwrap_or(rest.len()));
        let (unit, left) = behind.split_at(behind.find(|c: char| is_number(c) && c != '.').unwrap_or(behind.len()));
        let unit = if unit.is_empty() { None } else { Some(Unit::read(unit).ok_or(Misread::NoLength)?) };
        if number.trim().is_empty() {
            return Err(Misread::NoLength);
        }
        all.push((number.trim(), unit));
        rest = left.trim();
    }
    Ok(all)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(typed: &str, units: Units) -> Result<f64, Misread> {
        Reader::new(Lang::En, units).typed_size(typed).map(|it| (it.value.mm() * 1000.0).round() / 1000.0)
    }

    #[test]
    fn lengths_are_read_as_people_write_them() {
        for (typed, mm) in [
            ("412", 412.0),
            (" 51,6 ", 51.6),
            ("51.6", 51.6),
            ("41.2 cm", 412.0),
            ("1.2 m", 1200.0),
            ("1 1/8 in", 28.575),
            ("1-1/8\"", 28.575),
            ("1⅛\"", 28.575),
            ("1 ⅛ in.", 28.575),
            ("⅞″", 22.225),
            ("3/4\"", 19.05),
            ("2 ft", 609.6),
            ("2' 3\"", 685.8),
            ("2’3 ½”", 698.5),
            ("2 ft 3", 685.8),
            ("51.6 ± 0.5", 51.6),
            ("25.4\u{a0}mm", 25.4),
        ] {
            assert_eq!(read(typed, Units::Metric), Ok(mm), "{typed}");
        }
        for (typed, mm) in [("1 1/8", 28.575), ("1-1/8", 28.575), ("2 1/32", 51.594), ("25.4mm", 25.4), ("2", 50.8)] {
            assert_eq!(read(typed, Units::Us), Ok(mm), "{typed}");
        }
    }

    #[test]
    fn what_is_no_size_is_refused_and_never_misread() {
        use Misread::{MetricFraction, NoLength, NotAboveZero, Nothing, PlusMinus, Thousands, TooLong};
        for (typed, why) in [
            ("", Nothing),
            (" ", Nothing),
            ("2 1/32", MetricFraction),
            ("1/2 mm", MetricFraction),
            ("-51.6", NotAboveZero),
            ("\u{2212}51.6", NotAboveZero),
            ("0", NotAboveZero),
            ("99999999", TooLong),
            ("100000000 mm", TooLong),
            ("1,200", Thousands),
            ("51.6 ± -0.5", PlusMinus),
            ("51.6 ± 60", PlusMinus),
            ("51.6 ±", Nothing),
            ("51.6 ± 0.5 ± 0.1", NoLength),
            ("abc", NoLength),
            ("12 kg", NoLength),
            ("1e999", NoLength),
            ("1e2", NoLength),
            ("1..2", NoLength),
            ("--3", NoLength),
            ("½ of it", NoLength),
            ("12 13", NoLength),
            ("mm", NoLength),
            ("3 mm 2 mm", NoLength),
            ("2\" 3'", NoLength),
        ] {
            assert_eq!(read(typed, Units::Metric), Err(why), "{typed}");
        }
        for typed in ["1/0", "1/2/3", "1 2 1/8", "9/8", "1.5 1/8"] {
            assert_eq!(read(typed, Units::Us), Err(NoLength), "{typed}");
        }
    }

    #[test]
    fn every_refusal_says_what_was_written_and_what_to_write() {
        use Misread::{MetricFraction, NoLength, NotAboveZero, Nothing, PlusMinus, Thousands, TooLong};
        for lang in Lang::ALL {
            let words = Words::new(lang, Units::Metric);
            for why in [MetricFraction, NoLength, NotAboveZero, PlusMinus, Thousands, TooLong] {
                let said = words.misread(" 7 pears ", why);
                assert!(said.contains("7 pears") && said.len() > 40, "{said}");
            }
            assert!(words.misread("", Nothing).contains("2 1/32 in"));
        }
        let said = Words::new(Lang::En, Units::Metric).misread("2 1/32", MetricFraction);
        assert_eq!(said, "“2 1/32” is a fraction, and millimetres have none. If it is in inches, write so: 2 1/32 in.");
    }

    #[test]
    fn the_half_range_has_the_unit_that_is_written() {
        let read = |typed, units| Reader::new(Lang::En, units).typed_size(typed).unwrap();
        let mm = |length: Length| (length.mm() * 1e6).round() / 1e6;
        let both = |typed, units| (mm(read(typed, units).value), read(typed, units).plus_minus.map(mm));
        assert_eq!(both("51.6 ± 0.5", Units::Metric), (51.6, Some(0.5)));
        assert_eq!(both("51.6 +/- 0.5 mm", Units::Us), (51.6, Some(0.5)));
        assert_eq!(both("51.6 mm ± 0.5", Units::Us), (51.6, Some(0.5)));
        assert_eq!(both("1 in ± 1/64", Units::Metric), (25.4, Some(0.396_875)));
        assert_eq!(both("5.16 cm +-0.5 cm", Units::Metric), (51.6, Some(5.0)));
    }

    #[test]
    fn a_mark_that_may_stand_between_thousands_is_not_guessed_at() {
        let read = |typed, lang| Reader::new(lang, Units::Metric).typed_size(typed).map(|it| it.value.mm());
        for (lang, unclear, clear) in [(Lang::En, "1,200", "1.200"), (Lang::De, "1.200 mm", "1,200 mm")] {
            assert_eq!(read(unclear, lang), Err(Misread::Thousands), "{unclear}");
            assert!((read(clear, lang).unwrap() - 1.2).abs() < 1e-9, "{clear}");
            assert!((read("1200", lang).unwrap() - 1200.0).abs() < 1e-9);
        }
    }

    #[test]
    fn a_place_may_lie_on_either_side_and_readings_stand_beside_each_other() {
        let reader = Reader::new(Lang::En, Units::Metric);
        assert_eq!(reader.typed_length("-3").unwrap().value, Length::from_mm(-3.0));
        assert_eq!(reader.typed_sizes("13.5; 13.7").unwrap().len(), 2);
        assert_eq!(reader.typed_sizes("13.5; -1"), Err(Misread::NotAboveZero));
    }
}
