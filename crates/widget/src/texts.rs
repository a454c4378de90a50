//! The languages at hand. Each is a file beside the widget's script, loaded once when it is first
//! wanted.

use std::cell::RefCell;

use fitup_words::{Lang, Units, Words};
use wasm_bindgen::prelude::*;

use crate::fetch::fetch;

thread_local! {
    static HOME: RefCell<String> = const { RefCell::new(String::new()) };
    static LEARNT: RefCell<Vec<(Lang, String)>> = const { RefCell::new(Vec::new()) };
}

/// Says where the widget's own files are: an address that ends in `/`.
#[wasm_bindgen]
pub fn home(address: String) {
    HOME.set(address);
}

/// Learns a language from its texts: the file `words/LANGUAGE.txt` beside the widget's script.
/// False for a language that the widget does not know.
#[wasm_bindgen]
pub fn teach(lang: &str, texts: String) -> bool {
    let Some(lang) = Lang::from_tag(lang) else { return false };
    if !knows(lang) {
        LEARNT.with_borrow_mut(|learnt| learnt.push((lang, texts)));
    }
    true
}

/// Whether the texts of a language are at hand.
pub fn knows(lang: Lang) -> bool {
    LEARNT.with_borrow(|learnt| learnt.iter().any(|(known, _)| *known == lang))
}

/// The words of a language; if its texts are not at hand, those of English, or else of the first
/// language that was learnt.
pub fn words(lang: Lang, units: Units) -> Option<Words> {
    LEARNT.with_borrow(|learnt| {
        let of = |lang| learnt.iter().find(|(known, _)| *known == lang);
        let (lang, texts) = of(lang).or_else(|| of(Lang::En)).or_else(|| learnt.first())?;
        Some(Words::of_texts(*lang, texts, units))
    })
}

/// Where the texts of a language are.
pub fn address(lang: Lang) -> String {
    HOME.with_borrow(|home| format!("{home}words/{}.txt", lang.tag()))
}

/// Brings the texts of a language; whether they are at hand now.
pub async fn learn(lang: Lang) -> bool {
    if knows(lang) {
        return true;
    }
    match fetch(&address(lang), None, &|_, _| ()).await.map(String::from_utf8) {
        Ok(Ok(texts)) => teach(lang.tag(), texts),
        _ => false,
    }
}
