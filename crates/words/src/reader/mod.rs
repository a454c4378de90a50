//! Figures as a reader wants them: language and units.

mod fraction;
mod length;
mod money;
mod number;
mod quantity;
mod typed;

pub use length::LengthStyle;
pub use typed::{Misread, TypedLength};

use crate::{Lang, Units};
use number::{Sign, Zeros, number};

/// The language and the units that a reader wants figures in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Reader {
    /// Language.
    pub lang: Lang,
    /// Units.
    pub units: Units,
}

impl Reader {
    /// A reader.
    pub const fn new(lang: Lang, units: Units) -> Self {
        Self { lang, units }
    }

    /// A plain number with so many decimals.
    ///
    /// # Examples
    /// ```
    /// use fitup_words::{Lang, Reader, Units};
    /// assert_eq!(Reader::new(Lang::De, Units::Metric).number(1234.5, 1), "1.234,5");
    /// ```
    pub fn number(self, value: f64, decimals: usize) -> String {
        number(self.lang, value, decimals, Zeros::Keep, Sign::Minus)
    }

    /// A count.
    pub fn count(self, count: i64) -> String {
        number(self.lang, count as f64, 0, Zeros::Drop, Sign::Minus)
    }

    /// Names in a row, joined as the language does: "rack, pressure line and return line".
    ///
    /// Source: CLDR 48, `listPattern-type-standard`; English without the comma before the "and".
    pub fn list<S: AsRef<str>>(self, names: &[S]) -> String {
        let and = match self.lang {
            Lang::En | Lang::EnUs => "and",
            Lang::De => "und",
            Lang::Es => "y",
            Lang::Fr => "et",
        };
        match names {
            [] => String::new(),
            [one] => one.as_ref().to_owned(),
            [before @ .., last] => {
                let before: Vec<&str> = before.iter().map(AsRef::as_ref).collect();
                let and = if self.lang == Lang::Es && starts_with_i(last.as_ref()) { "e" } else { and };
                format!("{} {and} {}", before.join(", "), last.as_ref())
            }
        }
    }
}

/// Spanish "y" becomes "e" before the sound of i (CLDR 48, es, the same list pattern).
fn starts_with_i(word: &str) -> bool {
    let small = |letter: char| if letter == 'Í' { 'í' } else { letter.to_ascii_lowercase() };
    let word: String = word.chars().take(3).map(small).collect();
    let sounds_i = ["i", "í", "hi", "hí"].iter().any(|start| word.starts_with(start));
    sounds_i && !["hia", "hie", "hio"].iter().any(|start| word.starts_with(start))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_listed_as_each_language_does() {
        let list = |lang, names: &[&str]| Reader::new(lang, Units::Metric).list(names);
        assert_eq!(list(Lang::En, &[]), "");
        assert_eq!(list(Lang::En, &["rack"]), "rack");
        assert_eq!(list(Lang::En, &["rack", "hitch", "seat"]), "rack, hitch and seat");
        assert_eq!(list(Lang::De, &["a", "b"]), "a und b");
        assert_eq!(list(Lang::Es, &["soporte", "implemento"]), "soporte e implemento");
        assert_eq!(list(Lang::Es, &["agua", "hielo"]), "agua y hielo");
        assert_eq!(list(Lang::Fr, &["a", "b"]), "a et b");
    }

    #[test]
    fn counts_are_grouped() {
        assert_eq!(Reader::new(Lang::En, Units::Metric).count(12_345), "12,345");
        assert_eq!(Reader::new(Lang::Es, Units::Metric).count(1234), "1234");
    }
}
