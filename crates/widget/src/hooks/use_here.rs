//! Where the page is, and what day it is there.

use std::rc::Rc;

use fitup_view::{Here, Reader};
use js_sys::{Date, Object, Reflect};
use web_sys::{HtmlElement, Url};
use yew::prelude::*;

use crate::state::{Address, History, Key, Memo};

/// What a build taken along says of the page: the address that links lead to, up to the build's own text, and the day.
/// `leads` is the page that the element names for it; without one it is the page itself, with what else stands in its fragment.
#[hook]
pub fn use_here(
    host: &HtmlElement,
    leads: Option<AttrValue>,
    reader: Option<Reader>,
    history: &History,
) -> Option<Here> {
    let (build, memo) = (Rc::clone(history.present()), Rc::clone(history.memo()));
    // Looked at afresh for every build: another part of the fragment, or another day, may have come since.
    let made = use_memo((host.id(), leads, reader, build, memo), |(id, leads, reader, _, memo)| {
        let window = web_sys::window()?;
        let own = window.location().href().ok()?;
        let base = window.document()?.base_uri().ok().flatten()?;
        let url = Url::new_with_base(leads.as_deref().unwrap_or(&own), &base).ok()?;
        let key = Key::of(id);
        let before = if leads.is_none() { Address::default().write(&url.hash(), &key) } else { String::new() };
        url.set_hash("");
        let between = if before.is_empty() { "" } else { "&" };
        let address = format!("{}#{before}{between}{}=", url.href().trim_end_matches('#'), key.as_str());
        let Memo { name, place, notes, .. } = (**memo).clone();
        Some(Here { address, today: today((*reader)?.lang.name()), name, place, notes })
    });
    (*made).clone()
}

fn today(lang: &str) -> String {
    let style = Object::new();
    // A field of a new object can always be set.
    let _ = Reflect::set(&style, &"dateStyle".into(), &"long".into());
    Date::new_0().to_locale_date_string(lang, &style).into()
}
