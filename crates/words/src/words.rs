//! The texts of one language, and how a text is made of them.

use crate::line::{Span, text};
use crate::texts::{Texts, fill};
use crate::{Lang, Reader, Units};

/// Every text in one language, with figures for one reader.
pub struct Words {
    reader: Reader,
    texts: Texts,
}

/// A value that goes into a text.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg {
    /// A count; chooses the plural.
    Count(i64),
    /// A word that only chooses between variants of the text.
    Choice(String),
    /// Spans to put in.
    Spans(Vec<Span>),
}

impl From<&str> for Arg {
    fn from(words: &str) -> Self {
        Self::Spans(vec![Span::Label(words.to_owned())])
    }
}

impl From<String> for Arg {
    fn from(words: String) -> Self {
        Self::Spans(vec![Span::Label(words)])
    }
}

impl From<i64> for Arg {
    fn from(count: i64) -> Self {
        Self::Count(count)
    }
}

impl From<usize> for Arg {
    fn from(count: usize) -> Self {
        Self::Count(i64::try_from(count).unwrap_or(i64::MAX))
    }
}

impl From<Span> for Arg {
    fn from(span: Span) -> Self {
        Self::Spans(vec![span])
    }
}

/// The texts of a language as the build lays them out, ready for [`Words::of_texts`].
///
/// # Examples
/// ```
/// use fitup_words::{Lang, texts};
/// assert!(texts(Lang::De).contains("ui-step-machine\tMaschine"));
/// ```
#[cfg(feature = "languages")]
pub const fn texts(lang: Lang) -> &'static str {
    match lang {
        Lang::En => include_str!(concat!(env!("OUT_DIR"), "/en.txt")),
        Lang::EnUs => include_str!(concat!(env!("OUT_DIR"), "/en-US.txt")),
        Lang::De => include_str!(concat!(env!("OUT_DIR"), "/de.txt")),
        Lang::Es => include_str!(concat!(env!("OUT_DIR"), "/es.txt")),
        Lang::Fr => include_str!(concat!(env!("OUT_DIR"), "/fr.txt")),
    }
}

/// The texts of a language that the page shows by itself: those of the interface that have no value in them.
///
/// # Examples
/// ```
/// use fitup_words::{Lang, page_texts};
/// let texts = page_texts(Lang::Es);
/// assert!(texts.contains("ui-undo\tDeshacer"));
/// assert!(!texts.contains("ui-options\t"), "it counts, and so is the engine's");
/// ```
#[cfg(feature = "languages")]
pub fn page_texts(lang: Lang) -> String {
    let is_own = |line: &&str| line.starts_with("ui-") && !line.contains(crate::marks::OPEN);
    texts(lang).lines().filter(is_own).flat_map(|line| [line, "\n"]).collect()
}

impl Words {
    /// The texts of a language, with figures in these units.
    #[cfg(feature = "languages")]
    pub fn new(lang: Lang, units: Units) -> Self {
        Self::of_texts(lang, texts(lang), units)
    }

    /// The texts of a language as the build laid them out, with figures in these units. What of
    /// them cannot be read is missing.
    pub fn of_texts(lang: Lang, texts: &str, units: Units) -> Self {
        Self { reader: Reader::new(lang, units), texts: Texts::new(texts) }
    }

    /// The reader that figures are written for.
    pub const fn reader(&self) -> Reader {
        self.reader
    }

    /// Whether there is a text for a key (`message` or `message.attribute`).
    pub fn has(&self, key: &str) -> bool {
        self.texts.find(key).is_some()
    }

    /// The text of a key as plain words. A key that has no text is shown as it is.
    ///
    /// # Examples
    /// ```
    /// use fitup_words::{Lang, Units, Words};
    /// let words = Words::new(Lang::En, Units::Metric);
    /// assert_eq!(words.ui("ui-step-machine", &[]), "Machine");
    /// ```
    pub fn ui(&self, key: &str, args: &[(&str, Arg)]) -> String {
        text(&self.spans(key, args))
    }

    /// A label with what belongs to it: "Length: 3,019 mm". The mark between them is the language's.
    pub fn labelled(&self, label: &str, value: &str) -> String {
        self.ui("labelled", &[("label", label.into()), ("value", value.into())])
    }

    /// Clauses in one line.
    pub fn clauses(&self, clauses: &[String]) -> String {
        let join = |first: String, second: &String| {
            self.ui("clauses", &[("first", first.into()), ("second", second.as_str().into())])
        };
        clauses.split_first().map_or_else(String::new, |(first, rest)| rest.iter().fold(first.clone(), join))
    }

    /// The text of a key as spans. A key that has no text is shown as it is.
    pub fn spans(&self, key: &str, args: &[(&str, Arg)]) -> Vec<Span> {
        match self.texts.find(key) {
            Some(text) => fill(text, args, self.reader),
            None => vec![Span::Text(key.to_owned())],
        }
    }
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("reader", &self.reader).finish_non_exhaustive()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_people_wrote_is_put_in_whole_and_never_read_as_a_stand_in() {
        let words = Words::new(Lang::En, Units::Metric);
        let hostile = "a\u{e000}0\u{e001}<b>{ $x }";
        assert_eq!(
            words.ui("ui-not-in-catalogue", &[("id", hostile.into())]),
            format!("{hostile} is not in this catalogue")
        );
    }

    #[test]
    fn counts_choose_the_plural_and_are_grouped() {
        let count = |lang, n: i64| Words::new(lang, Units::Metric).ui("ui-options", &[("count", n.into())]);
        assert_eq!(count(Lang::En, 1), "1 option");
        assert_eq!(count(Lang::En, 1200), "1,200 options");
        assert_eq!(count(Lang::De, 1), "1 Möglichkeit");
        assert_eq!(count(Lang::Fr, 0), "0 option");
        assert_eq!(count(Lang::Es, 3), "3 opciones");
    }

    #[test]
    fn a_key_without_a_text_is_shown_as_it_is() {
        let words = Words::new(Lang::Fr, Units::Us);
        assert_eq!(words.ui("ui-no-such-thing", &[]), "ui-no-such-thing");
        assert!(!words.has("ui-no-such-thing") && words.has("ui-step-machine"));
    }
}
