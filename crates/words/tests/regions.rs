//! A region writes a few texts in its own way, and every other as its language does.
//!
//! Covers: words/build, words/src/lang.rs.

use std::collections::BTreeMap;

use fitup_words::{Lang, texts};

fn by_key(lang: Lang) -> BTreeMap<&'static str, &'static str> {
    texts(lang).lines().filter_map(|line| line.split_once('\t')).collect()
}

#[test]
fn a_region_has_every_text_of_its_language_and_some_of_its_own() {
    let (whole, region) = (by_key(Lang::En), by_key(Lang::EnUs));
    assert!(whole.keys().eq(region.keys()));
    let own = whole.iter().filter(|(key, text)| region[*key] != **text).count();
    assert!((20..200).contains(&own), "{own} texts differ");
}

/// Words that the two countries spell or say differently; what is British stands first.
const SPELT: [(&str, &str); 9] = [
    ("tyre", "tire"),
    ("centre", "center"),
    ("catalogue", "catalog"),
    ("colour", "color"),
    ("grey", "gray"),
    ("metre", "meter"),
    ("judgement", "judgment"),
    ("stabiliser", "stabilizer"),
    ("counter-clockwise", "counterclockwise"),
];

/// Whether a text has a word, alone or with an ending.
fn has(text: &str, word: &str) -> bool {
    text.to_lowercase()
        .split(|c: char| !c.is_alphabetic() && c != '-')
        .any(|it| it.strip_prefix(word).is_some_and(|ending| ["", "s", "d", "ed"].contains(&ending)))
}

#[test]
fn each_side_of_the_ocean_spells_as_it_does() {
    for (british, american) in SPELT {
        for (key, text) in by_key(Lang::En) {
            assert!(!has(text, american), "{key} has \"{american}\", which text/en-US is for: {text}");
        }
        // The element's attribute is called so everywhere.
        for (key, text) in by_key(Lang::EnUs).into_iter().filter(|(key, _)| *key != "ui-catalogue-no-address") {
            assert!(!has(text, british), "{key} has \"{british}\"; write it otherwise in text/en-US: {text}");
        }
    }
}

#[test]
fn a_region_counts_where_it_writes_otherwise() {
    let of = Lang::from_tag;
    assert_eq!([of("en"), of("en-GB"), of("en-AU"), of("EN_us")], [Lang::En, Lang::En, Lang::En, Lang::EnUs].map(Some));
    assert_eq!(
        [of("en-Latn-US"), of("de-US"), of("fr-CA"), of("es-419")],
        [Some(Lang::EnUs), Some(Lang::De), Some(Lang::Fr), Some(Lang::Es)]
    );
    assert_eq!([of(""), of("us"), of("nl-US")], [None; 3]);
}
