//! The words in the language wanted, once they are there.

use std::cell::Cell;
use std::rc::Rc;

use fitup_words::{Lang, Units, Words};
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::same::Same;
use crate::state::Action;
use crate::texts;

/// The words in a language. `None` until the first language is there; while another is on its
/// way, the words before. A language that is not to be had is told to the session.
#[hook]
pub fn use_words(lang: Lang, units: Units, act: Callback<Action>) -> Option<Same<Words>> {
    let spoken = use_state_eq(|| texts::knows(lang).then_some(lang));
    {
        let spoken = spoken.setter();
        use_effect_with(lang, move |&lang| {
            let wanted = Rc::new(Cell::new(true));
            if texts::knows(lang) {
                spoken.set(Some(lang));
            } else {
                let wanted = Rc::clone(&wanted);
                spawn_local(async move {
                    let learnt = texts::learn(lang).await;
                    match (wanted.get(), learnt) {
                        (false, _) => {}
                        (true, true) => spoken.set(Some(lang)),
                        (true, false) => act.emit(Action::Unspoken(lang)),
                    }
                });
            }
            move || wanted.set(false)
        });
    }
    let words = use_memo((*spoken, units), |&(spoken, units)| texts::words(spoken?, units).map(Same::new));
    (*words).clone()
}
