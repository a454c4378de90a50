//! Every problem of a catalogue has its sentence and its mend in every language, each written down as it reads.

use std::collections::BTreeSet;

use fitup_catalogue::{Code, Position, Problem, SORTS, read};
use fitup_words::{Lang, Units, Words};

#[allow(dead_code, clippy::format_push_string, reason = "shared with the build script, which uses the rest")]
#[path = "../build/check.rs"]
mod check;

/// The languages that have every text of their own; a region has but a few.
fn languages() -> impl Iterator<Item = Lang> {
    Lang::ALL.into_iter().filter(|lang| lang.base() == *lang)
}

fn texts(lang: Lang) -> check::Texts {
    let path = format!("{}/text/{}/problems.ftl", env!("CARGO_MANIFEST_DIR"), lang.tag());
    let text = std::fs::read_to_string(&path).expect("the text file is there");
    let mut faults = Vec::new();
    let texts = check::read(&[(path, text)], &mut faults);
    assert!(faults.is_empty(), "{faults:?}");
    texts
}

/// A problem of each code; of those that may carry a suggestion, one without.
fn samples() -> Vec<Problem> {
    let sample = |code: Code| {
        let value = |name: &str| {
            match (code, name) {
                (Code::WrongType, "found") => "text",
                (Code::WrongType, _) => "number-or-stated",
                (Code::Syntax, "expected") => "comma-or-close-brace",
                (_, "byte") => "17",
                (_, "shown") => "1000",
                (_, "found") => "42",
                (_, "greatest") => "40",
                (_, "least") => "0",
                (_, "other") => "parts[3]",
                (_, "view") => "side",
                (_, "role") => "rack",
                (_, "carrier") => "boom",
                (_, "chain") => "A-1 → A-2 → A-1",
                (Code::MissingFormat | Code::NewerFormat | Code::UnknownFormat, "expected")
                | (_, "x" | "first" | "inner") => "1",
                (_, "y" | "second" | "outer") | (Code::WrongCount, "expected") => "2",
                (_, "expected") => "length, mass",
                (_, "required") => "6",
                (_, "holes") => "4",
                (_, name) => name,
            }
            .to_owned()
        };
        let args = code.args().iter().filter(|name| **name != "suggestion");
        args.fold(Problem::new(code, "machines[3].ports[1]"), |problem, name| problem.with(name, value(name)))
    };
    Code::ALL.iter().map(|&code| sample(code)).collect()
}

#[test]
fn every_code_has_a_sentence_and_a_mend_in_every_language_and_every_text_its_code() {
    let mut wanted: BTreeSet<String> =
        ["line-column", "cell", "suggestion"].iter().map(|name| format!("problem-{name}")).collect();
    wanted.extend(SORTS.iter().map(|sort| format!("sort-{sort}")));
    for code in Code::ALL {
        wanted.extend([format!("problem-{}", code.as_str()), format!("problem-{}.mend", code.as_str())]);
    }
    for lang in languages() {
        let found: BTreeSet<String> = texts(lang).into_keys().collect();
        assert_eq!(found, wanted, "{lang:?}");
    }
}

#[test]
fn a_text_uses_only_the_arguments_of_its_code() {
    for lang in languages() {
        let texts = texts(lang);
        for code in Code::ALL {
            for key in [format!("problem-{}", code.as_str()), format!("problem-{}.mend", code.as_str())] {
                let mut used = texts[&key].shown.union(&texts[&key].chosen_by);
                let unknown = used.find(|name| !code.args().contains(&name.as_str()));
                assert_eq!(unknown, None, "{lang:?} {key}");
            }
        }
    }
}

#[test]
fn what_a_file_holds_stays_as_it_is_and_what_was_meant_stands_for_the_list() {
    let told = |text: &str| {
        let words = Words::new(Lang::En, Units::Metric);
        read(text).problems.iter().map(|problem| words.problem(problem)).collect::<Vec<_>>()
    };
    let misspelt = &told("{\"format\": 1, \"name\": \"A\",\n \"units\": {\"mas\": \"kg\"}}");
    let unknown = misspelt.iter().find(|told| told.sentence.contains("mas”")).expect("a field that is not known");
    assert_eq!(unknown.place, "line 2, column 12 · units.mas");
    assert_eq!(unknown.sentence, "There is no field “mas” here.");
    assert_eq!(unknown.mend, "Did you mean “mass”?");
    let far = &told("{\"format\": 1, \"name\": \"A\",\n \"units\": {\"<b>{ $x }\": 1}}");
    let unknown = far.iter().find(|told| told.sentence.contains("<b>")).expect("a field that is not known");
    assert_eq!(unknown.sentence, "There is no field “<b>{ $x }” here.");
    assert!(unknown.mend.starts_with("Allowed here: ") && unknown.mend.contains("mass"), "{}", unknown.mend);
    assert_eq!(
        told("{")[0].sentence,
        "This is not JSON: found the end of the file, expected a field’s name in double quotes."
    );
}

#[test]
fn a_cell_is_told_by_its_table_row_and_column() {
    let place = |lang, column: &str| {
        let mut problem = Problem::new(Code::BlankText, "");
        problem.position = Some(Position::Cell { table: "seats".into(), row: 1200, column: column.into() });
        Words::new(lang, Units::Metric).problem(&problem).place
    };
    assert_eq!(place(Lang::En, "label"), "seats, row 1200, column label");
    assert_eq!(place(Lang::De, ""), "seats, Zeile 1200");
}

#[test]
fn nothing_where_one_is_wanted_and_rows_of_any_table_are_said_in_words() {
    let sentence = |lang, problem: Problem| Words::new(lang, Units::Metric).problem(&problem).sentence;
    let nothing = || Problem::new(Code::NotExactlyOne, "").with("found", "").with("expected", "new, used");
    assert_eq!(sentence(Lang::En, nothing()), "Nothing stands here; exactly one is needed.");
    assert_eq!(sentence(Lang::De, nothing()), "Hier steht nichts; verlangt ist genau eines.");
    let row = || Problem::new(Code::UnknownReference, "").with("found", "a").with("table", "items");
    assert_eq!(sentence(Lang::En, row()), "There is no “a” in the table of items.");
    assert_eq!(sentence(Lang::De, row()), "„a“ steht nicht in den Artikeltabellen.");
}

/// Everything that is said of every sample, to be read aloud.
fn said(lang: Lang) -> String {
    let words = Words::new(lang, Units::Metric);
    let mut out = String::new();
    for sort in SORTS {
        out.extend([sort, ": ", &words.ui(&format!("sort-{sort}"), &[]), "\n"]);
    }
    for problem in samples() {
        let told = words.problem(&problem);
        for text in [&told.sentence, &told.mend] {
            assert!(text.ends_with('.') && !text.contains(['{', '!', '\u{e000}']), "{lang:?}: {text}");
        }
        out.extend(["\n# ", problem.code.as_str(), "\n", &told.sentence, "\n", &told.mend, "\n"]);
    }
    out
}

#[test]
fn english_reads_so() {
    insta::assert_snapshot!(said(Lang::En));
}

#[test]
fn german_reads_so() {
    insta::assert_snapshot!(said(Lang::De));
}

#[test]
fn spanish_reads_so() {
    insta::assert_snapshot!(said(Lang::Es));
}

#[test]
fn french_reads_so() {
    insta::assert_snapshot!(said(Lang::Fr));
}
