//! Which form of a text goes with a count.

use crate::Lang;

/// The plural category of a whole number.
///
/// Source: CLDR 48, `plurals` (cardinal) of en, de, es, fr, for whole numbers.
pub fn plural(lang: Lang, count: i64) -> &'static str {
    let count = count.unsigned_abs();
    let millions = count != 0 && count.is_multiple_of(1_000_000);
    match (lang, count) {
        (_, 1) | (Lang::Fr, 0) => "one",
        (Lang::Es | Lang::Fr, _) if millions => "many",
        _ => "other",
    }
}

#[cfg(test)]
mod tests {
    use intl_pluralrules::{PluralCategory, PluralRuleType, PluralRules};

    use super::*;

    #[test]
    fn one_is_told_from_more_as_the_library_does() {
        for lang in Lang::ALL {
            let tag: unic_langid::LanguageIdentifier = lang.base().tag().parse().expect("a language tag");
            let rules = PluralRules::create(tag, PluralRuleType::CARDINAL).expect("a known language");
            for count in (0..1000_i64).chain([10_000, 1_000_000, 1_000_001, 2_000_000]) {
                let theirs = rules.select(count.unsigned_abs()).expect("a category");
                assert_eq!(plural(lang, count) == "one", theirs == PluralCategory::ONE, "{lang:?} {count}");
            }
        }
    }

    /// CLDR 48, `plurals`: 1000000 is the sample of "many" in Spanish and French, and none of English or German has that form.
    #[test]
    fn whole_millions_take_the_form_of_many_in_spanish_and_french() {
        for lang in Lang::ALL {
            let many = if matches!(lang.base(), Lang::Es | Lang::Fr) { "many" } else { "other" };
            for count in [1_000_000, 2_000_000, -3_000_000] {
                assert_eq!(plural(lang, count), many, "{lang:?} {count}");
            }
            for count in [2, 999_999, 1_000_001, 1_500_000] {
                assert_eq!(plural(lang, count), "other", "{lang:?} {count}");
            }
        }
    }
}
