//! Money.

use fitup_core::quantity::Money;

use super::Reader;
use super::number::{MINUS, NO_BREAK, Sign, Zeros, number};
use crate::Lang;

impl Reader {
    /// An amount in the currency with this ISO 4217 code; hundredths only where there are any.
    ///
    /// Source: CLDR 48, `currencyFormats` and `currencies` of en, de, es, fr; a currency that is
    /// not in the table is named by its code.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::quantity::Money;
    /// use fitup_words::{Lang, Reader, Units};
    /// let price = Money::from_hundredths(123_450);
    /// assert_eq!(Reader::new(Lang::En, Units::Us).money(price, "USD"), "$1,234.50");
    /// assert_eq!(Reader::new(Lang::De, Units::Metric).money(price, "EUR"), "1.234,50\u{a0}€");
    /// ```
    pub fn money(self, amount: Money, currency: &str) -> String {
        let sign = if amount.hundredths() < 0 { String::from(MINUS) } else { String::new() };
        self.amount(amount, currency, &sign)
    }

    fn amount(self, amount: Money, currency: &str, sign: &str) -> String {
        let hundredths = amount.hundredths().unsigned_abs();
        let decimals = if hundredths.is_multiple_of(100) { 0 } else { 2 };
        let digits = number(self.lang, hundredths as f64 / 100.0, decimals, Zeros::Keep, Sign::Minus);
        let symbol = symbol(self.lang, currency);
        match (self.lang.is_english(), symbol) {
            (true, Some(symbol)) => format!("{sign}{symbol}{digits}"),
            (true, None) => format!("{sign}{currency}{NO_BREAK}{digits}"),
            (false, symbol) => format!("{sign}{digits}{NO_BREAK}{}", symbol.unwrap_or(currency)),
        }
    }
}

const fn symbol(lang: Lang, currency: &str) -> Option<&'static str> {
    Some(match (currency.as_bytes(), lang) {
        (b"EUR", _) => "€",
        (b"GBP", Lang::Fr) => "£GB",
        (b"GBP", Lang::Es) => return None,
        (b"GBP", _) => "£",
        (b"USD", Lang::En | Lang::EnUs | Lang::De) => "$",
        (b"USD", Lang::Es) => "US$",
        (b"USD", Lang::Fr) => "$US",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Units;

    #[test]
    fn whole_amounts_have_no_hundredths_and_differences_have_a_sign() {
        let en = Reader::new(Lang::En, Units::Us);
        assert_eq!(en.money(Money::from_hundredths(1_234_500), "USD"), "$12,345");
        assert_eq!(en.money(Money::from_hundredths(1_234_500), "SEK"), "SEK\u{a0}12,345");
        assert_eq!(en.money(Money::from_hundredths(-5_000), "USD"), "\u{2212}$50");
    }
}
