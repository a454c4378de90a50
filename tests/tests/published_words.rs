//! Numbers and units for people against published values.

use fitup_core::quantity::{Flow, Length, Mass, Money, Power, Pressure};
use fitup_words::{Lang, LengthStyle, Reader, Units};

fn metric(lang: Lang) -> Reader {
    Reader::new(lang, Units::Metric)
}

/// 1234567.891 with at most two decimals.
///
/// Source: ECMA-402 `Intl.NumberFormat`, ICU 78.2 with CLDR 48: en-US, de-DE, fr-FR. The French group mark
/// is U+202F. Exact text.
#[test]
fn grouping_and_decimal_mark_of_each_language() {
    assert_eq!(metric(Lang::En).number(1_234_567.891, 2), "1,234,567.89");
    assert_eq!(metric(Lang::De).number(1_234_567.891, 2), "1.234.567,89");
    assert_eq!(metric(Lang::Fr).number(1_234_567.891, 2), "1\u{202f}234\u{202f}567,89");
}

/// Spanish marks groups from five digits on (CLDR 48, `minimumGroupingDigits` 2); run with ICU 78.2: 1234 and
/// 12345 give "1234" and "12.345", 1234567.891 gives "1.234.567,89". Exact text.
#[test]
fn spanish_leaves_four_digits_together() {
    assert_eq!(metric(Lang::Es).number(1234.0, 0), "1234");
    assert_eq!(metric(Lang::Es).number(12_345.0, 0), "12.345");
    assert_eq!(metric(Lang::Es).number(1_234_567.891, 2), "1.234.567,89");
}

/// Rounding of 2.5 and 3.5 to no decimals: 3 and 4.
///
/// Source: ECMA-402, default rounding mode halfExpand. Exact text.
#[test]
fn halves_are_rounded_away_from_zero() {
    assert_eq!(metric(Lang::En).number(2.5, 0), "3");
    assert_eq!(metric(Lang::En).number(3.5, 0), "4");
    assert_eq!(metric(Lang::En).number(-2.5, 0), "\u{2212}3");
}

/// 1.005 to two decimals: its shortest decimal form is rounded, which gives 1.01 (`Intl.NumberFormat`, ICU 78.2).
/// `toFixed` of ECMA-262 rounds the binary value, which lies below 1.005, and gives 1.00: another rule.
#[test]
fn the_shortest_decimal_form_is_what_is_rounded() {
    assert_eq!(metric(Lang::En).number(1.005, 2), "1.01");
}

/// 0.205 as a percentage: "21%" in English, with a no-break space in German, Spanish and French.
///
/// Source: CLDR 48, `percentFormats`; run with ICU 78.2. Exact text.
#[test]
fn percent_signs_of_each_language() {
    assert_eq!(metric(Lang::En).share(0.205), "21%");
    for lang in [Lang::De, Lang::Es, Lang::Fr] {
        assert_eq!(metric(lang).share(0.205), "21\u{a0}%");
    }
}

/// 1,234.50 in euros and in US dollars.
///
/// Source: CLDR 48, `currencyFormats` and `currencies`; run with ICU 78.2. Exact text.
#[test]
fn currencies_of_each_language() {
    let price = Money::from_hundredths(123_450);
    let all = |currency: &str| Lang::ALL.map(|lang| metric(lang).money(price, currency));
    assert_eq!(all("EUR"), ["€1,234.50", "€1,234.50", "1.234,50\u{a0}€", "1234,50\u{a0}€", "1\u{202f}234,50\u{a0}€"]);
    assert_eq!(
        all("USD"),
        ["$1,234.50", "$1,234.50", "1.234,50\u{a0}$", "1234,50\u{a0}US$", "1\u{202f}234,50\u{a0}$US"]
    );
}

/// Three names in a row. Source: CLDR 48, `listPattern-type-standard` of de, es and fr; run with ICU 78.2.
#[test]
fn names_in_a_row() {
    let names = ["a", "b", "c"];
    let lists = [Lang::De, Lang::Es, Lang::Fr].map(|lang| metric(lang).list(&names));
    assert_eq!(lists, ["a, b und c", "a, b y c", "a, b et c"]);
}

/// 683 mm is 26.8898 in; 683 / 25.4 × 16 = 430.2362, so 430 sixteenths: 26 7/8 in.
///
/// Source: the international inch of 25.4 mm (NIST SP 811, appendix B). Exact text.
#[test]
fn a_length_to_the_nearest_sixteenth() {
    let us = Reader::new(Lang::En, Units::Us);
    assert!((683.0_f64 / 25.4 * 16.0 - 430.2362).abs() < 5e-5, "the intermediate value as published");
    assert_eq!(us.length(Length::from_mm(683.0), LengthStyle::Drawn), "26\u{a0}7/8\u{a0}in");
}

/// 4,536 kg is 10,000.1682 lb: a rounded metric limit is not converted back to 10,000 lb exactly, but reads
/// so in whole pounds. 25 hp is 18.6424968 kW; 1 bar is 14.503773773 psi; 1 gal/min, written gpm as the trade does, is 3.785411784 L/min.
///
/// Source: NIST SP 811, appendix B, exact constants. Tolerance: the last place written.
#[test]
fn other_units_of_the_reader() {
    let us = Reader::new(Lang::En, Units::Us);
    assert_eq!(us.mass(Mass::from_kg(4536.0)), "10,000\u{a0}lb");
    assert_eq!(metric(Lang::En).power(Power::from_hp(25.0)), "18.6\u{a0}kW");
    assert_eq!(us.power(Power::from_kw(18.642_496_8)), "25\u{a0}hp");
    assert_eq!(us.pressure(Pressure::from_bar(100.0)), "1,450\u{a0}psi");
    assert_eq!(us.flow(Flow::from_l_min(37.854_117_84)), "10\u{a0}gpm");
}
