//! The page's texts in the language wanted, once they are there.

use std::cell::Cell;
use std::rc::Rc;

use fitup_view::Lang;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::same::Same;
use crate::state::Action;
use crate::texts::{Texts, learn, texts_of};

/// The texts in a language. `None` until the first language is there; while another is on its
/// way, the texts before. If a language cannot be loaded, the session is told.
#[hook]
pub fn use_texts(lang: Lang, act: Callback<Action>) -> Option<(Lang, Same<Texts>)> {
    let spoken = use_state_eq(|| texts_of(lang).map(|texts| (lang, texts)));
    {
        let spoken = spoken.setter();
        use_effect_with(lang, move |&lang| {
            let wanted = Rc::new(Cell::new(true));
            if let Some(texts) = texts_of(lang) {
                spoken.set(Some((lang, texts)));
            } else {
                let wanted = Rc::clone(&wanted);
                spawn_local(async move {
                    let learnt = learn(lang).await;
                    match (wanted.get(), learnt) {
                        (false, _) => {}
                        (true, Some(texts)) => spoken.set(Some((lang, texts))),
                        (true, None) => act.emit(Action::Unspoken(lang)),
                    }
                });
            }
            move || wanted.set(false)
        });
    }
    (*spoken).clone()
}
