//! The languages that have been taught.

use fitup_words::{Lang, Units, Words};

/// Texts by language, and the words that were last made of them.
#[derive(Debug, Default)]
pub struct Spoken {
    taught: Vec<(Lang, String)>,
    made: Option<(Lang, Units, std::rc::Rc<Words>)>,
}

impl Spoken {
    /// Learns a language from its texts; false for one that is not known.
    pub fn teach(&mut self, lang: &str, texts: String) -> bool {
        let Some(lang) = Lang::from_tag(lang) else { return false };
        if !self.taught.iter().any(|(known, _)| *known == lang) {
            self.taught.push((lang, texts));
            self.made = None;
        }
        true
    }

    /// The words of a language; if it has not been taught, those of English, or else of the language taught first.
    pub fn words(&mut self, lang: Lang, units: Units) -> Option<std::rc::Rc<Words>> {
        if let Some((of, by, words)) = &self.made
            && (*of, *by) == (lang, units)
        {
            return Some(words.clone());
        }
        let of = |lang| self.taught.iter().find(|(known, _)| *known == lang);
        let (spoken, texts) = of(lang).or_else(|| of(Lang::En)).or_else(|| self.taught.first())?;
        let words = std::rc::Rc::new(Words::of_texts(*spoken, texts, units));
        self.made = Some((lang, units, words.clone()));
        Some(words)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_that_was_not_taught_is_stood_in_for_by_english() {
        let mut spoken = Spoken::default();
        assert!(spoken.words(Lang::De, Units::Metric).is_none());
        assert!(spoken.teach("de", fitup_words::texts(Lang::De).to_owned()));
        assert_eq!(spoken.words(Lang::Fr, Units::Us).map(|words| words.reader().lang), Some(Lang::De));
        assert!(spoken.teach("en", fitup_words::texts(Lang::En).to_owned()));
        assert_eq!(spoken.words(Lang::Fr, Units::Us).map(|words| words.reader().lang), Some(Lang::En));
        assert!(!spoken.teach("nl", String::new()));
    }
}
