//! Every kind of finding has its sentences in every language, each written down as it reads.
//!
//! Covers: core/src/finding, words/src.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use fitup_core::finding::{Declared, Finding, Kind};
use fitup_core::fit::{declaration, declared};
use fitup_core::item::dimension_names;
use fitup_words::{Lang, LineRole, Units, Words};
use fitup_yard::Yard;

mod samples;

#[allow(dead_code, clippy::format_push_string, reason = "shared with the build script, which uses the rest")]
#[path = "../build/check.rs"]
mod check;

/// Variables that a text may use beside the figures of its code.
const ALWAYS: [&str; 4] = ["a", "b", "roles-name", "missing-of"];

fn text_of(lang: Lang, file: &str) -> check::Texts {
    let path = format!("{}/text/{}/{file}.ftl", env!("CARGO_MANIFEST_DIR"), lang.tag());
    let text = std::fs::read_to_string(&path).expect("the text file is there");
    let mut faults = Vec::new();
    let texts = check::read(&[(path, text)], &mut faults);
    assert!(faults.is_empty(), "{faults:?}");
    texts
}

/// The languages that have every text of their own; a region has but a few.
fn languages() -> impl Iterator<Item = Lang> {
    Lang::ALL.into_iter().filter(|lang| lang.base() == *lang)
}

/// The texts of findings in every language.
fn texts() -> Vec<check::Texts> {
    languages().map(|lang| text_of(lang, "findings")).collect()
}

/// Samples of every kind of finding, in every way that its texts can read.
static SAMPLES: LazyLock<Vec<Finding>> = LazyLock::new(samples_of_the_texts);

fn samples_of_the_texts() -> Vec<Finding> {
    let texts = texts();
    let any = |code: &str, uses: &dyn Fn(&check::Shows) -> bool| {
        let of_code = |key: &str| key.split('.').next() == Some(code);
        texts.iter().flatten().any(|(key, shows)| of_code(key) && uses(shows))
    };
    samples::samples(&samples::Uses {
        shows: &|code, name| any(code, &|shows| shows.shown.contains(name)),
        chooses_by: &|code, name| any(code, &|shows| shows.chosen_by.contains(name)),
    })
}

#[test]
fn the_samples_try_every_coded_word_that_a_text_chooses_by() {
    let ways = |code: &str| SAMPLES.iter().filter(|finding| finding.code == code).count();
    // Three places each without a ramp that would clear, and three ways to drive; one reading has all.
    assert_eq!(ways("ramp-drags"), 1 + 2 + 2 + 1);
    assert_eq!(ways("power-short"), 1);
    assert!(declared().all(|declared| ways(declared.code) > 0));
}

#[test]
fn every_code_has_its_three_texts_and_every_text_its_code() {
    for lang in languages() {
        let mut wanted: BTreeSet<String> = BTreeSet::new();
        for Declared { code, .. } in declared() {
            wanted.extend([(*code).to_owned(), format!("{code}.short"), format!("{code}.workshop")]);
        }
        // What an answer is "with" where the finding is one to do: "front ballast".
        let found: BTreeSet<String> =
            text_of(lang, "findings").into_keys().filter(|key| key.rsplit('.').next() != Some("with")).collect();
        assert_eq!(found, wanted, "{lang:?}");
    }
}

/// Whether a figure is never to be shown by its own name: a coded word or the name of a dimension.
fn is_coded(kind: Kind) -> bool {
    match kind {
        Kind::Word { .. } | Kind::Dimension => true,
        Kind::Either(kinds) => kinds.iter().all(|&kind| is_coded(kind)),
        _ => false,
    }
}

/// Whether a figure has a name to be shown by.
fn is_named(kind: Kind) -> bool {
    match kind {
        Kind::Word { shown, .. } => shown.is_some(),
        Kind::Dimension => true,
        Kind::Either(kinds) => kinds.iter().any(|&kind| is_named(kind)),
        _ => false,
    }
}

#[test]
fn a_text_uses_only_the_figures_of_its_code_and_never_shows_a_coded_word() {
    for texts in texts() {
        for (key, shows) in texts {
            let code = key.split('.').next().unwrap_or_default();
            let figures = declaration(code).expect("a declared code").figures;
            let by = |name: &str| figures.iter().find(|figure| figure.name == name);
            let by_shown = |name: &str| figures.iter().any(|figure| figure.shown == name && is_named(figure.kind));
            for name in shows.shown.iter().filter(|name| !ALWAYS.contains(&name.as_str())) {
                let is_known = by(name).is_some_and(|figure| !is_coded(figure.kind)) || by_shown(name);
                assert!(is_known, "{key} shows ${name}, which its findings do not carry, or not to be shown");
            }
            for name in shows.chosen_by.iter().filter(|name| !ALWAYS.contains(&name.as_str())) {
                // Which way a figure goes is told by the figure.
                let known = by(name).or_else(|| by(name.strip_suffix("-way")?));
                assert!(known.is_some(), "{key} chooses by ${name}, which its findings do not carry");
            }
        }
    }
}

#[test]
fn every_coded_word_that_is_shown_has_a_name_in_every_language() {
    fn named(kind: Kind) -> Vec<String> {
        match kind {
            Kind::Word { words, shown: Some(start) } => words.iter().map(|word| format!("{start}{word}")).collect(),
            Kind::Either(kinds) => kinds.iter().flat_map(|&kind| named(kind)).collect(),
            _ => Vec::new(),
        }
    }
    let figures = declared().flat_map(|declared| declared.figures).flat_map(|figure| named(figure.kind));
    let keys: BTreeSet<String> = figures.chain(dimension_names().map(|name| format!("value-{name}"))).collect();
    assert!(keys.contains("value-mass") && keys.contains("axle-front"));
    for lang in Lang::ALL {
        let words = Words::new(lang, Units::Metric);
        let without: Vec<&String> = keys.iter().filter(|key| !words.has(key)).collect();
        assert!(without.is_empty(), "{lang:?} has no name for {without:?}");
    }
}

#[test]
fn no_sentence_shows_a_key_a_stand_in_or_an_absent_figure() {
    let catalogue = Yard::new().catalogue;
    for lang in Lang::ALL {
        for units in [Units::Metric, Units::Us] {
            let words = Words::new(lang, units);
            for finding in SAMPLES.iter() {
                let mut all = vec![words.shopper(&catalogue, finding).text(), words.short(&catalogue, finding)];
                all.extend(words.workshop(&catalogue, finding).iter().map(fitup_words::Line::text));
                for text in all {
                    let says_none =
                        !lang.is_english() && text.split(|c: char| !c.is_alphabetic()).any(|word| word == "none");
                    assert!(!says_none, "{lang:?} {}: {text}", finding.code);
                    assert!(
                        !text.contains(['{', '}', '\u{e000}', '\u{e001}', '—']),
                        "{lang:?} {}: {text}",
                        finding.code
                    );
                    assert!(!text.contains("  ") && !text.contains(" ."), "{lang:?} {}: {text}", finding.code);
                }
            }
        }
    }
}

#[test]
fn sentences_end_with_a_stop_and_short_texts_do_not() {
    let catalogue = Yard::new().catalogue;
    for lang in Lang::ALL {
        let words = Words::new(lang, Units::Metric);
        for finding in SAMPLES.iter() {
            assert!(words.shopper(&catalogue, finding).text().ends_with('.'), "{lang:?} {}", finding.code);
            for line in words.workshop(&catalogue, finding) {
                let end = if line.role == LineRole::Step { &['.', ':', ')'][..] } else { &['.', '?', ')'][..] };
                assert!(line.text().ends_with(end), "{lang:?} {}: {}", finding.code, line.text());
            }
            assert!(!words.short(&catalogue, finding).ends_with('.'), "{lang:?} {}", finding.code);
        }
    }
}

#[test]
fn nobody_is_shouted_at() {
    for lang in languages() {
        for file in ["findings", "explain", "matrix", "problems", "terms", "ui"] {
            let path = format!("{}/text/{}/{file}.ftl", env!("CARGO_MANIFEST_DIR"), lang.tag());
            let text = std::fs::read_to_string(&path).expect("the text file is there");
            assert!(!text.contains('!') && !text.contains('¡'), "{path} has an exclamation mark");
        }
    }
}

/// Everything that is said of every sample, to be read aloud; what it rests on where that is said for the first time.
fn said(lang: Lang, units: Units) -> String {
    let (catalogue, words) = (Yard::new().catalogue, Words::new(lang, units));
    let (mut out, mut evidence) = (String::new(), BTreeSet::new());
    for finding in SAMPLES.iter() {
        let mut add = |mark: &str, text: &str| out.extend([mark, " ", text, "\n"]);
        add("#", finding.code);
        add("shopper ", &words.shopper(&catalogue, finding).text());
        add("short   ", &words.short(&catalogue, finding));
        for line in words.workshop(&catalogue, finding) {
            if line.role != LineRole::Evidence || evidence.insert(line.text()) {
                add("workshop", &line.text());
            }
        }
        out.push('\n');
    }
    out
}

/// French puts a space before its high marks, which no line may break at; Spanish and German have none there.
#[test]
fn marks_stand_as_each_language_has_them() {
    let high = [':', ';', '?', '»', '%'];
    for lang in languages() {
        for file in ["explain", "findings", "matrix", "problems", "terms", "ui"] {
            let path = format!("{}/text/{}/{file}.ftl", env!("CARGO_MANIFEST_DIR"), lang.tag());
            let text = std::fs::read_to_string(&path).expect("the text file is there");
            for line in text.lines().filter(|line| !line.starts_with('#')) {
                // Between a variant's key and its text the space is no part of the text.
                let is_variant = line.trim_start().starts_with(['[', '*']);
                let line = line.split_once("] ").filter(|_| is_variant).map_or(line, |(_, text)| text);
                let letters: Vec<char> = line.chars().collect();
                for pair in letters.windows(2) {
                    let is_loose = matches!(pair, [' ', mark] if high.contains(mark)) || pair == ['«', ' '];
                    assert!(!is_loose, "{path}: a plain space at a mark: {line}");
                }
                assert!(!line.contains('\'') && !line.contains("..."), "{path}: a typewriter's mark: {line}");
            }
        }
    }
}

#[test]
fn english_reads_so() {
    insta::assert_snapshot!(said(Lang::En, Units::Metric));
}

#[test]
fn english_in_us_units_reads_so() {
    insta::assert_snapshot!(said(Lang::En, Units::Us));
}

#[test]
fn german_reads_so() {
    insta::assert_snapshot!(said(Lang::De, Units::Metric));
}

#[test]
fn spanish_reads_so() {
    insta::assert_snapshot!(said(Lang::Es, Units::Metric));
}

#[test]
fn french_reads_so() {
    insta::assert_snapshot!(said(Lang::Fr, Units::Metric));
}
