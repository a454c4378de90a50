//! Lengths.

use fitup_core::quantity::Length;

use super::fraction;
use super::number::{NO_BREAK, NOT_A_NUMBER, Sign, Zeros, number, signed};
use super::{Reader, Units};
use crate::Lang;

/// What a length is of, which says how finely it is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LengthStyle {
    /// Of a whole machine, said in passing: metres to the centimetre; feet and half inches.
    Overall,
    /// As a drawing dimensions a machine: whole millimetres; inches to 1/16, from three feet on to 1/4.
    Drawn,
    /// What is needed at least, rounded up: whole millimetres, from a metre on whole ten of them; inches as drawn.
    Needed,
    /// A change of a drawn dimension, with its sign.
    Change,
    /// Of a part (a bore, a pin, a spread): millimetres to a tenth where there are tenths;
    /// inches in 32nds where the length is one, else in thousandths.
    Part,
    /// A small distance: millimetres to a tenth, below 1 mm to a hundredth; inches as of a part.
    Fine,
    /// A margin: as a small distance, with its sign.
    Margin,
}

/// A length counts as a fraction of an inch if it lies so near to one: half a thousandth, the
/// last place that decimal inches are written to.
const IS_FRACTION: f64 = 0.000_5;

/// Inches up to which lengths are written without feet. Common practice, no source.
const INCHES_ALONE: f64 = 36.0;

/// What is needed is not rounded up for a rounding error: a thousandth of the last place that is shown.
const ROUNDING: f64 = 1e-3;

impl Reader {
    /// A length.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::quantity::Length;
    /// use fitup_words::{Lang, LengthStyle, Reader, Units};
    /// let reader = Reader::new(Lang::En, Units::Us);
    /// assert_eq!(reader.length(Length::from_mm(683.0), LengthStyle::Drawn), "26\u{a0}7/8\u{a0}in");
    /// ```
    pub fn length(self, length: Length, style: LengthStyle) -> String {
        match self.units {
            Units::Metric => self.metric(length, style),
            Units::Us => self.us(length, style),
        }
    }

    /// The unit that a short length is written in, and read in where none is typed.
    pub const fn short_unit(self) -> &'static str {
        match self.units {
            Units::Metric => "mm",
            Units::Us => self.inch(),
        }
    }

    fn metric(self, length: Length, style: LengthStyle) -> String {
        let mm = length.mm();
        let write = |value: f64, decimals, zeros, sign, unit: &str| {
            format!("{}{NO_BREAK}{unit}", number(self.lang, value, decimals, zeros, sign))
        };
        match style {
            LengthStyle::Overall if mm.abs() >= 1000.0 => write(length.m(), 2, Zeros::Keep, Sign::Minus, "m"),
            LengthStyle::Needed => {
                write(up(mm, if mm.abs() < 1000.0 { 1.0 } else { 10.0 }), 0, Zeros::Keep, Sign::Minus, "mm")
            }
            LengthStyle::Overall | LengthStyle::Drawn => write(mm, 0, Zeros::Keep, Sign::Minus, "mm"),
            LengthStyle::Change => write(mm, 0, Zeros::Keep, Sign::Both, "mm"),
            LengthStyle::Part => write(mm, 1, Zeros::Drop, Sign::Minus, "mm"),
            LengthStyle::Fine | LengthStyle::Margin => {
                let (decimals, zeros) = fine(mm);
                let sign = if style == LengthStyle::Margin { Sign::Both } else { Sign::Minus };
                write(mm, decimals, zeros, sign, "mm")
            }
        }
    }

    fn us(self, length: Length, style: LengthStyle) -> String {
        let inch = length.inch();
        match style {
            LengthStyle::Overall => self.feet(inch, 2, Sign::Minus),
            LengthStyle::Drawn => self.feet(inch, drawn_parts(inch), Sign::Minus),
            LengthStyle::Change => self.feet(inch, drawn_parts(inch), Sign::Both),
            LengthStyle::Needed => {
                let parts = drawn_parts(inch);
                self.feet(up(inch, 1.0 / f64::from(parts)), parts, Sign::Minus)
            }
            LengthStyle::Part | LengthStyle::Fine => self.shop_inches(inch, Sign::Minus),
            LengthStyle::Margin => self.shop_inches(inch, Sign::Both),
        }
    }

    fn feet(self, inch: f64, parts: u32, sign: Sign) -> String {
        if inch.abs() < INCHES_ALONE {
            return self.inches(inch, parts, sign);
        }
        let Some((feet, left)) = fraction::feet(inch, parts) else { return NOT_A_NUMBER.to_owned() };
        let sign = signed(inch, false, sign).map(String::from).unwrap_or_default();
        let feet = number(self.lang, feet as f64, 0, Zeros::Keep, Sign::Minus);
        let whole_feet = format!("{sign}{feet}{NO_BREAK}{}", self.foot());
        if left == "0" { whole_feet } else { format!("{whole_feet}{NO_BREAK}{left}{NO_BREAK}{}", self.inch()) }
    }

    fn inches(self, inch: f64, parts: u32, sign: Sign) -> String {
        let text = fraction::inches(inch, parts);
        let sign = signed(inch, text == "0" || text == NOT_A_NUMBER, sign).map(String::from).unwrap_or_default();
        format!("{sign}{text}{NO_BREAK}{}", self.inch())
    }

    /// As a workshop writes what it measures: a fraction where it is one, else thousandths, so that a difference is
    /// written as finely as what it is the difference of.
    fn shop_inches(self, inch: f64, sign: Sign) -> String {
        let nearest = (inch * 32.0).round() / 32.0;
        if (inch - nearest).abs() < IS_FRACTION {
            return self.inches(inch, 32, sign);
        }
        format!("{}{NO_BREAK}{}", number(self.lang, inch, 3, Zeros::Keep, sign), self.inch())
    }

    /// Source: CLDR 48, `units/short/length-inch`.
    const fn inch(self) -> &'static str {
        match self.lang {
            Lang::Fr => "po",
            // "in" is a German word.
            Lang::De => "Zoll",
            _ => "in",
        }
    }

    /// Source: CLDR 48, `units/short/length-foot`.
    const fn foot(self) -> &'static str {
        match self.lang {
            Lang::Fr => "pi",
            Lang::De => "Fuß",
            _ => "ft",
        }
    }
}

/// Decimals of a small distance in millimetres: hundredths below one, then tenths; the zeros that
/// would say more than is known are dropped at both ends of the range.
/// Into how many parts an inch is divided on a drawn length: nobody dimensions a whole machine to a sixteenth. Common
/// practice, no source.
fn drawn_parts(inch: f64) -> u32 {
    if inch.abs() < INCHES_ALONE { 16 } else { 4 }
}

/// Rounded up to a whole number of steps.
fn up(value: f64, step: f64) -> f64 {
    (value / step - ROUNDING).ceil() * step
}

fn fine(mm: f64) -> (usize, Zeros) {
    match mm.abs() {
        ..0.995 => (2, Zeros::Drop),
        0.995..9.95 => (1, Zeros::Keep),
        _ => (1, Zeros::Drop),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn en(units: Units, mm: f64, style: LengthStyle) -> String {
        Reader::new(Lang::En, units).length(Length::from_mm(mm), style).replace(NO_BREAK, " ")
    }

    #[test]
    fn a_whole_machine_is_said_in_metres_or_feet() {
        assert_eq!(en(Units::Metric, 3482.0, LengthStyle::Overall), "3.48 m");
        assert_eq!(en(Units::Metric, 940.0, LengthStyle::Overall), "940 mm");
        assert_eq!(en(Units::Us, 3482.0, LengthStyle::Overall), "11 ft 5 in");
        assert_eq!(en(Units::Us, 3657.6, LengthStyle::Overall), "12 ft");
    }

    #[test]
    fn what_is_needed_is_rounded_up() {
        assert_eq!(en(Units::Metric, 1842.2, LengthStyle::Needed), "1,850 mm");
        assert_eq!(en(Units::Metric, 1_850.000_001, LengthStyle::Needed), "1,850 mm");
        assert_eq!(en(Units::Metric, 612.01, LengthStyle::Needed), "613 mm");
        assert_eq!(en(Units::Us, 1842.2, LengthStyle::Needed), "6 ft 3/4 in");
        assert_eq!(en(Units::Us, 610.0, LengthStyle::Needed), "24 1/16 in");
        assert_eq!(en(Units::Us, 609.6, LengthStyle::Needed), "24 in");
    }

    #[test]
    fn a_drawn_dimension_is_in_millimetres_or_fractions_of_an_inch() {
        assert_eq!(en(Units::Metric, 3482.4, LengthStyle::Drawn), "3,482 mm");
        assert_eq!(en(Units::Us, 3482.0, LengthStyle::Drawn), "11 ft 5 in");
        assert_eq!(en(Units::Us, 683.0, LengthStyle::Drawn), "26 7/8 in");
        assert_eq!(en(Units::Metric, 85.0, LengthStyle::Change), "+85 mm");
        assert_eq!(en(Units::Us, -1100.0, LengthStyle::Change), "\u{2212}3 ft 7 1/4 in");
        assert_eq!(en(Units::Us, 0.0, LengthStyle::Change), "0 in");
    }

    #[test]
    fn a_part_is_a_fraction_only_where_it_is_one() {
        assert_eq!(en(Units::Metric, 25.4, LengthStyle::Part), "25.4 mm");
        assert_eq!(en(Units::Metric, 25.0, LengthStyle::Part), "25 mm");
        assert_eq!(en(Units::Us, 25.4, LengthStyle::Part), "1 in");
        assert_eq!(en(Units::Us, 19.05, LengthStyle::Part), "3/4 in");
        assert_eq!(en(Units::Us, 25.0, LengthStyle::Part), "0.984 in");
    }

    #[test]
    fn a_margin_has_its_sign() {
        assert_eq!(en(Units::Metric, 1.24, LengthStyle::Margin), "+1.2 mm");
        assert_eq!(en(Units::Metric, -0.35, LengthStyle::Margin), "\u{2212}0.35 mm");
        assert_eq!(en(Units::Us, 0.35, LengthStyle::Margin), "+0.014 in");
        assert_eq!(en(Units::Us, -6.35, LengthStyle::Margin), "\u{2212}1/4 in");
        assert_eq!(en(Units::Us, -6.4, LengthStyle::Margin), "\u{2212}0.252 in");
        assert_eq!(en(Units::Us, 0.0, LengthStyle::Margin), "0 in");
        assert_eq!(en(Units::Metric, 0.35, LengthStyle::Fine), "0.35 mm");
        assert_eq!(en(Units::Metric, 0.8, LengthStyle::Fine), "0.8 mm");
        assert_eq!(en(Units::Metric, 38.0, LengthStyle::Fine), "38 mm");
        assert_eq!(en(Units::Metric, 3.0, LengthStyle::Fine), "3.0 mm");
        assert_eq!(en(Units::Metric, 0.0, LengthStyle::Margin), "0 mm");
    }

    #[test]
    fn what_is_no_length_is_a_dash() {
        for units in [Units::Metric, Units::Us] {
            for style in [LengthStyle::Overall, LengthStyle::Drawn, LengthStyle::Part, LengthStyle::Margin] {
                assert!(en(units, f64::NAN, style).starts_with(NOT_A_NUMBER));
            }
        }
    }
}
