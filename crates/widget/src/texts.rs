//! The languages at hand. Each has two files beside the widget's script: the page's own texts, and those of the engine. They
//! are loaded once, when they are first wanted.

use std::cell::RefCell;

use fitup_view::Lang;
use wasm_bindgen::prelude::*;

use crate::fetch::fetch;
use crate::same::Same;

thread_local! {
    static HOME: RefCell<String> = const { RefCell::new(String::new()) };
    static LEARNT: RefCell<Vec<(Lang, Same<Texts>)>> = const { RefCell::new(Vec::new()) };
    static LENT: RefCell<Vec<(Lang, String)>> = const { RefCell::new(Vec::new()) };
}

/// The page's own texts in a language: a line each, key, tab, text, in the order of their keys.
#[derive(Debug)]
pub struct Texts {
    lines: Vec<(String, String)>,
}

impl Texts {
    fn new(all: &str) -> Self {
        let lines = all.lines().filter_map(|line| line.split_once('\t'));
        Self { lines: lines.map(|(key, text)| (key.to_owned(), text.to_owned())).collect() }
    }

    /// The text of a key. A key that has no text is shown as it is.
    pub fn text(&self, key: &str) -> String {
        let found = self.lines.binary_search_by(|(known, _)| known.as_str().cmp(key));
        found.map_or(key, |at| &self.lines[at].1).to_owned()
    }
}

/// Says where the widget's own files are: an address that ends in `/`.
#[wasm_bindgen]
pub fn home(address: String) {
    HOME.set(address);
}

/// Learns the page's texts of a language: the file `words/LANGUAGE.page.txt` beside the widget's script. False for a language
/// that the widget does not know.
#[wasm_bindgen]
pub fn teach(lang: &str, texts: &str) -> bool {
    let Some(lang) = Lang::of_tag(lang) else { return false };
    if texts_of(lang).is_none() {
        LEARNT.with_borrow_mut(|learnt| learnt.push((lang, Same::new(Texts::new(texts)))));
    }
    true
}

/// The page's texts of a language, if they are at hand.
pub fn texts_of(lang: Lang) -> Option<Same<Texts>> {
    LEARNT.with_borrow(|learnt| learnt.iter().find(|(known, _)| *known == lang).map(|(_, texts)| texts.clone()))
}

/// Where the page's texts of a language are.
pub fn address(lang: Lang) -> String {
    HOME.with_borrow(|home| format!("{home}words/{}.page.txt", lang.name()))
}

/// Brings the page's texts of a language.
pub async fn learn(lang: Lang) -> Option<Same<Texts>> {
    if texts_of(lang).is_none() {
        teach(lang.name(), &file(&address(lang)).await?);
    }
    texts_of(lang)
}

/// Brings the engine's texts of a language.
pub async fn lend(lang: Lang) -> Option<String> {
    let known = || LENT.with_borrow(|lent| lent.iter().find(|(known, _)| *known == lang).map(|(_, text)| text.clone()));
    if known().is_none() {
        let address = HOME.with_borrow(|home| format!("{home}words/{}.txt", lang.name()));
        let text = file(&address).await?;
        LENT.with_borrow_mut(|lent| lent.push((lang, text)));
    }
    known()
}

async fn file(address: &str) -> Option<String> {
    String::from_utf8(fetch(address, None, &|_, _| ()).await.ok()?.bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_found_by_its_key_and_a_key_without_one_is_shown() {
        let texts = Texts::new("a\tOne\na.meaning\tMore of one\nb\tTwo\n");
        assert_eq!((texts.text("a"), texts.text("a.meaning")), ("One".into(), "More of one".into()));
        assert_eq!((texts.text("b"), texts.text("c")), ("Two".into(), "c".into()));
    }
}
