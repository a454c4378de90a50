//! A second method: every text comes out as a Fluent library writes it.

use std::collections::BTreeSet;

use fitup_words::{Arg, Lang, Units, Words};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

#[allow(dead_code, reason = "shared with the build script, which uses the rest")]
#[path = "../build/check.rs"]
mod check;

fn files(lang: Lang) -> Vec<(String, String)> {
    let folder = format!("{}/text/{}", env!("CARGO_MANIFEST_DIR"), lang.tag());
    ["explain", "findings", "matrix", "problems", "terms", "ui"]
        .map(|name| {
            let path = format!("{folder}/{name}.ftl");
            let text = std::fs::read_to_string(&path).expect("the text file is there");
            (path, text)
        })
        .into()
}

fn bundle(lang: Lang, files: &[(String, String)]) -> FluentBundle<FluentResource> {
    let mut bundle = FluentBundle::new(vec![lang.tag().parse().expect("a language tag")]);
    bundle.set_use_isolating(false);
    for (path, text) in files {
        bundle.add_resource(FluentResource::try_new(text.clone()).expect(path)).expect(path);
    }
    bundle
}

/// The keys of variants: what a variable that chooses may be.
fn variants(files: &[(String, String)]) -> BTreeSet<String> {
    let lines = files.iter().flat_map(|(_, text)| text.lines());
    let keys = lines.filter_map(|line| line.trim_start().trim_start_matches('*').strip_prefix('[')?.split_once(']'));
    keys.map(|(key, _)| key.to_owned()).collect()
}

#[test]
fn every_text_of_every_choice_and_count_is_as_fluent_writes_it() {
    let mut compared = 0;
    for lang in Lang::ALL.into_iter().filter(|lang| lang.base() == *lang) {
        let files = files(lang);
        let bundle = bundle(lang, &files);
        let words = Words::new(lang, Units::Metric);
        let choices = variants(&files).into_iter().map(Arg::Choice);
        let given: Vec<Arg> = choices.chain([0, 1, 2, 5].map(Arg::Count)).collect();
        for (key, shows) in check::read(&files, &mut Vec::new()) {
            let (id, attribute) = key.split_once('.').map_or((key.as_str(), None), |(id, at)| (id, Some(at)));
            let message = bundle.get_message(id).expect(&key);
            let pattern = match attribute {
                None => message.value().expect(&key),
                Some(name) => message.get_attribute(name).expect(&key).value(),
            };
            for chooser in &given {
                let mut args: Vec<(&str, Arg)> = Vec::new();
                let mut theirs = FluentArgs::new();
                for name in shows.shown.union(&shows.chosen_by) {
                    let arg = if shows.chosen_by.contains(name) { chooser.clone() } else { name.as_str().into() };
                    let value = match &arg {
                        Arg::Count(count) => FluentValue::from(*count),
                        Arg::Choice(word) => FluentValue::from(word.clone()),
                        Arg::Spans(_) => FluentValue::from(name.clone()),
                    };
                    theirs.set(name.clone(), value);
                    args.push((name, arg));
                }
                let mut errors = Vec::new();
                let expected = bundle.format_pattern(pattern, Some(&theirs), &mut errors);
                assert!(errors.is_empty(), "{key}: {errors:?}");
                assert_eq!(words.ui(&key, &args), expected, "{lang:?} {key} with {chooser:?}");
                compared += 1;
            }
        }
    }
    assert!(compared > 10_000, "only {compared} texts were compared");
}
