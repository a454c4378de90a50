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
}
