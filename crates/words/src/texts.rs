//! Texts as the build lays them out, and how one is filled in.
//!
//! A line is a key, a tab and the text; the lines are in the order of their keys. In a text a value
//! to show stands as its name between marks (`OPEN name CLOSE`), and a choice as the name and its
//! variants (`OPEN name BAR key BAR text BAR key BAR text CLOSE`), of which the last serves where no
//! key fits. The variants' texts may hold values and choices of their own.

use crate::line::Span;
use crate::marks::{BAR, CLOSE, OPEN};
use crate::plural::plural;
use crate::{Arg, Reader};

/// The texts of a language.
pub struct Texts {
    all: String,
    /// Where each line starts.
    starts: Vec<usize>,
}

impl Texts {
    /// The texts as the build laid them out.
    pub fn new(all: &str) -> Self {
        let breaks = all.bytes().enumerate().filter(|&(_, byte)| byte == b'\n').map(|(at, _)| at + 1);
        Self { all: all.to_owned(), starts: std::iter::once(0).chain(breaks).collect() }
    }

    /// The text of a key, to be filled in.
    pub fn find(&self, key: &str) -> Option<&str> {
        let found = self.starts.binary_search_by(|&start| self.line(start).0.cmp(key)).ok()?;
        Some(self.line(self.starts[found]).1)
    }

    fn line(&self, start: usize) -> (&str, &str) {
        let line = self.all[start..].split('\n').next().unwrap_or_default();
        line.split_once('\t').unwrap_or((line, ""))
    }
}

/// A text with its values put in.
pub fn fill(text: &str, args: &[(&str, Arg)], reader: Reader) -> Vec<Span> {
    let mut filling = Filling { args, reader, words: String::new(), spans: Vec::new() };
    filling.text(text);
    filling.end_words();
    filling.spans
}

struct Filling<'a> {
    args: &'a [(&'a str, Arg)],
    reader: Reader,
    /// Words not yet among the spans.
    words: String,
    spans: Vec<Span>,
}

impl<'a> Filling<'a> {
    fn text(&mut self, mut text: &str) {
        while let Some((before, rest)) = text.split_once(OPEN) {
            self.words.push_str(before);
            let (value, after) = split(rest, CLOSE);
            match value.split_once(BAR) {
                None => self.value(value),
                Some((name, variants)) => self.text(self.chosen(name, variants)),
            }
            text = after;
        }
        self.words.push_str(text);
    }

    fn value(&mut self, name: &str) {
        match self.arg(name) {
            Some(Arg::Count(count)) => {
                self.end_words();
                self.spans.push(Span::Figure { name: "count", text: self.reader.count(*count) });
            }
            Some(Arg::Choice(word)) => self.words.push_str(word),
            Some(Arg::Spans(given)) => {
                self.end_words();
                self.spans.extend_from_slice(given);
            }
            None => self.words.push_str(name),
        }
    }

    fn chosen<'t>(&self, name: &str, mut variants: &'t str) -> &'t str {
        let arg = self.arg(name);
        loop {
            let (key, rest) = split(variants, BAR);
            let (text, rest) = split(rest, BAR);
            let fits = match arg {
                Some(Arg::Count(count)) => key == plural(self.reader.lang, *count) || key.parse() == Ok(*count),
                Some(Arg::Choice(word)) => key == word,
                _ => false,
            };
            if fits || rest.is_empty() {
                return text;
            }
            variants = rest;
        }
    }

    fn arg(&self, name: &str) -> Option<&'a Arg> {
        let found = self.args.iter().find(|(known, _)| *known == name);
        debug_assert!(found.is_some(), "a text wants {name}, which it is not given");
        found.map(|(_, arg)| arg)
    }

    fn end_words(&mut self) {
        if !self.words.is_empty() {
            self.spans.push(Span::Text(std::mem::take(&mut self.words)));
        }
    }
}

/// What stands before the first `mark` that is not inside a value, and what after it.
fn split(text: &str, mark: char) -> (&str, &str) {
    let mut inside = 0usize;
    for (at, letter) in text.char_indices() {
        match letter {
            _ if letter == mark && inside == 0 => return (&text[..at], &text[at + 1..]),
            OPEN => inside += 1,
            CLOSE => inside = inside.saturating_sub(1),
            _ => {}
        }
    }
    (text, "")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::text;
    use crate::{Lang, Units};

    fn filled(pattern: &str, args: &[(&str, Arg)]) -> String {
        let marked: String = pattern
            .chars()
            .map(|letter| match letter {
                '<' => OPEN,
                '|' => BAR,
                '>' => CLOSE,
                other => other,
            })
            .collect();
        text(&fill(&marked, args, Reader::new(Lang::En, Units::Metric)))
    }

    #[test]
    fn values_and_choices_inside_choices_are_put_in() {
        let args = [("n", Arg::Count(1)), ("side", Arg::Choice("left".into())), ("what", "pin".into())];
        assert_eq!(filled("<n> <n|one|hole|other|holes>", &args), "1 hole");
        assert_eq!(filled("a <side|right|b|other|<n|one|c <what>|other|d>> e", &args), "a c pin e");
        assert_eq!(filled("<n|1|exactly one|one|one>", &args), "exactly one");
        assert_eq!(filled("<what|pin|never|other|always>", &args), "always", "spans choose nothing");
    }

    #[test]
    fn broken_texts_are_shown_as_far_as_they_go() {
        assert_eq!(filled("a <n", &[("n", Arg::Count(2))]), "a 2");
        assert_eq!(filled("a <n|", &[("n", Arg::Count(2))]), "a ");
        assert_eq!(filled("a > b", &[]), "a \u{3} b");
    }

    #[test]
    fn keys_are_found_wherever_they_stand() {
        let texts = Texts::new("a\t1\na.b\t2\nab\t3");
        assert_eq!(
            ["a", "a.b", "ab", "b", ""].map(|key| texts.find(key)),
            [Some("1"), Some("2"), Some("3"), None, None]
        );
        assert_eq!(Texts::new("").find("a"), None);
    }
}
