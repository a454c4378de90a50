//! The languages at hand. English is inside the widget; every other is a file beside its script,
//! loaded once when it is first wanted.

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
    lang == Lang::En || LEARNT.with_borrow(|learnt| learnt.iter().any(|(known, _)| *known == lang))
}

/// The words of a language; the English ones if its texts are not at hand.
pub fn words(lang: Lang, units: Units) -> Words {
    LEARNT.with_borrow(|learnt| match learnt.iter().find(|(known, _)| *known == lang) {
        Some((lang, texts)) => Words::of_texts(*lang, texts, units),
        None => Words::english(units),
    })
}

/// Brings the texts of a language; whether they are at hand now.
pub async fn learn(lang: Lang) -> bool {
    if knows(lang) {
        return true;
    }
    let address = HOME.with_borrow(|home| format!("{home}words/{}.txt", lang.tag()));
    match fetch(&address, None, &|_, _| ()).await.map(String::from_utf8) {
        Ok(Ok(texts)) => teach(lang.tag(), texts),
        _ => false,
    }
}
