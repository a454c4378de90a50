//! Every kind of finding has its sentences in every language, each written down as it reads.

use std::collections::BTreeSet;

use fitup_core::fit::{CODES, MISSING};
use fitup_words::{Lang, LineRole, Units, Words};
use fitup_yard::Yard;

mod samples;

#[allow(dead_code, clippy::format_push_string, reason = "shared with the build script, which uses the rest")]
#[path = "../build/check.rs"]
mod check;

/// Variables that a text may use beside the figures of its code.
const ALWAYS: [&str; 4] = ["a", "b", "roles-name", "missing-of"];

/// Figures that are coded words: they choose and are never shown.
const CODED: [&str; 16] = [
    "axle",
    "bar",
    "dimension",
    "kind",
    "line",
    "missing",
    "need",
    "reason",
    "role",
    "rule",
    "station",
    "supplier",
    "way",
    "place",
    "rating",
    "heading",
];

fn text_of(lang: Lang, file: &str) -> check::Texts {
    let path = format!("{}/text/{}/{file}.ftl", env!("CARGO_MANIFEST_DIR"), lang.tag());
    let text = std::fs::read_to_string(&path).expect("the text file is there");
    let mut faults = Vec::new();
    let texts = check::read(&[(path, text)], &mut faults);
    assert!(faults.is_empty(), "{faults:?}");
    texts
}

#[test]
fn the_samples_have_every_code_and_no_other() {
    let sampled: BTreeSet<&str> = samples::samples().iter().map(|finding| finding.code).collect();
    let listed: BTreeSet<&str> = CODES.iter().map(|(code, _)| *code).collect();
    assert_eq!(sampled, listed);
}

#[test]
fn the_samples_carry_only_the_figures_listed_for_their_code() {
    for finding in samples::samples() {
        let (_, listed) = CODES.iter().find(|(code, _)| *code == finding.code).expect("a listed code");
        for figure in &finding.figures {
            assert!(listed.contains(&figure.name), "{} carries {}", finding.code, figure.name);
        }
    }
}

#[test]
fn every_code_has_its_three_texts_and_every_text_its_code() {
    for lang in Lang::ALL {
        let mut wanted: BTreeSet<String> = BTreeSet::new();
        for (code, _) in CODES {
            wanted.extend([(*code).to_owned(), format!("{code}.short"), format!("{code}.workshop")]);
        }
        let found: BTreeSet<String> = text_of(lang, "findings").into_keys().collect();
        assert_eq!(found, wanted, "{lang:?}");
    }
}

#[test]
fn a_text_uses_only_the_figures_of_its_code_and_never_shows_a_coded_word() {
    for lang in Lang::ALL {
        for (key, shows) in text_of(lang, "findings") {
            let code = key.split('.').next().unwrap_or_default();
            let (_, figures) = CODES.iter().find(|(known, _)| *known == code).expect("a listed code");
            for name in shows.shown.iter().chain(&shows.chosen_by) {
                let of = name.strip_suffix("-name").or(name.strip_suffix("-way")).unwrap_or(name);
                let known =
                    ALWAYS.contains(&name.as_str()) || figures.contains(&of) || figures.contains(&name.as_str());
                assert!(known, "{lang:?} {key} uses ${name}, which its findings do not carry");
            }
            for coded in shows.shown.iter().filter(|name| CODED.contains(&name.as_str())) {
                // What a seat needs is a length in some findings.
                assert!(coded == "need" && figures.contains(&"need"), "{lang:?} {key} shows the coded word ${coded}");
            }
        }
    }
}

#[test]
fn every_value_that_may_be_missing_has_a_name_in_every_language() {
    for lang in Lang::ALL {
        let words = Words::new(lang, Units::Metric);
        for name in MISSING {
            assert!(words.has(&format!("value-{name}")), "{lang:?} has no name for the value {name}");
        }
    }
}

#[test]
fn no_sentence_shows_a_key_a_stand_in_or_an_absent_figure() {
    let catalogue = Yard::new().catalogue;
    for lang in Lang::ALL {
        for units in [Units::Metric, Units::Us] {
            let words = Words::new(lang, units);
            for finding in samples::samples() {
                let mut all = vec![words.shopper(&catalogue, &finding).text(), words.short(&catalogue, &finding)];
                all.extend(words.workshop(&catalogue, &finding).iter().map(fitup_words::Line::text));
                for text in all {
                    let says_none =
                        lang != Lang::En && text.split(|c: char| !c.is_alphabetic()).any(|word| word == "none");
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
        for finding in samples::samples() {
            assert!(words.shopper(&catalogue, &finding).text().ends_with('.'), "{lang:?} {}", finding.code);
            for line in words.workshop(&catalogue, &finding) {
                let end = if line.role == LineRole::Step { &['.', ':', ')'][..] } else { &['.', '?', ')'][..] };
                assert!(line.text().ends_with(end), "{lang:?} {}: {}", finding.code, line.text());
            }
            assert!(!words.short(&catalogue, &finding).ends_with('.'), "{lang:?} {}", finding.code);
        }
    }
}

#[test]
fn nobody_is_shouted_at() {
    for lang in Lang::ALL {
        for file in ["findings", "explain", "problems", "terms", "ui"] {
            let path = format!("{}/text/{}/{file}.ftl", env!("CARGO_MANIFEST_DIR"), lang.tag());
            let text = std::fs::read_to_string(&path).expect("the text file is there");
            assert!(!text.contains('!') && !text.contains('¡'), "{path} has an exclamation mark");
        }
    }
}

/// Everything that is said of every sample, to be read aloud.
fn said(lang: Lang, units: Units) -> String {
    let (catalogue, words) = (Yard::new().catalogue, Words::new(lang, units));
    let mut out = String::new();
    for finding in samples::samples() {
        let mut add = |mark: &str, text: &str| out.extend([mark, " ", text, "\n"]);
        add("#", finding.code);
        add("shopper ", &words.shopper(&catalogue, &finding).text());
        add("short   ", &words.short(&catalogue, &finding));
        for line in words.workshop(&catalogue, &finding) {
            add("workshop", &line.text());
        }
        out.push('\n');
    }
    out
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
