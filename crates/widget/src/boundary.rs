//! The one panic boundary: whatever fails, the page gets a message and an event, never a dead
//! widget without a word.

use std::cell::RefCell;
use std::panic;
use std::sync::Once;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::*;
use web_sys::{Element, HtmlElement};

use crate::event;

/// What is said when the widget fails, in the reader's language, put ready while all is well.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LastWords {
    /// What has happened.
    pub title: String,
    /// What to do.
    pub body: String,
    /// The button that loads the page again.
    pub reload: String,
}

thread_local! {
    static STANDING: RefCell<Vec<(HtmlElement, Element)>> = const { RefCell::new(Vec::new()) };
    static LAST_WORDS: RefCell<LastWords> = RefCell::new(LastWords::default());
}

static SET: Once = Once::new();

/// Puts the words ready.
pub fn prepare(words: LastWords) {
    LAST_WORDS.with_borrow_mut(|last| *last = words);
}

/// Guards an element and the slot it shows itself in.
pub fn guard(host: HtmlElement, slot: Element) {
    SET.call_once(|| {
        let before = panic::take_hook();
        panic::set_hook(Box::new(move |info| {
            before(info);
            fail(&info.to_string());
        }));
    });
    STANDING.with_borrow_mut(|standing| standing.push((host, slot)));
}

/// Guards it no longer.
pub fn release(host: &HtmlElement) {
    STANDING.with_borrow_mut(|standing| standing.retain(|(known, _)| known != host));
}

/// Shows the last words in every element. The state of the failed code cannot be trusted, so only functions of the page itself
/// are called here, and none that could fail again.
fn fail(reason: &str) {
    web_sys::console::error_1(&JsValue::from_str(reason));
    let standing = STANDING.with(|standing| standing.try_borrow_mut().map(|mut all| std::mem::take(&mut *all)));
    let words = LAST_WORDS.with(|words| words.try_borrow().map(|words| words.clone())).unwrap_or_default();
    for (host, slot) in standing.unwrap_or_default() {
        // A panic while this is shown is not met again: the list is empty by now.
        let _ = show(&slot, &words);
        event::tell(&host, event::ERROR, &[("kind", "failed"), ("reason", reason)]);
    }
}

fn show(slot: &Element, words: &LastWords) -> Result<(), JsValue> {
    let document = slot.owner_document().ok_or(JsValue::NULL)?;
    let new = |name: &str, class: &str, text: &str| -> Result<Element, JsValue> {
        let element = document.create_element(name)?;
        element.set_attribute("class", class)?;
        element.set_text_content(Some(text));
        Ok(element)
    };
    let outer = new("div", "fitup failed", "")?;
    let inner = new("div", "trouble", "")?;
    inner.set_attribute("role", "alert")?;
    inner.append_child(new("h3", "", &words.title)?.as_ref())?;
    inner.append_child(new("p", "", &words.body)?.as_ref())?;
    let button = new("button", "button firm", &words.reload)?;
    let reload = Closure::once_into_js(|| {
        if let Some(window) = web_sys::window() {
            let _ = window.location().reload();
        }
    });
    button.add_event_listener_with_callback("click", reload.unchecked_ref())?;
    inner.append_child(button.as_ref())?;
    outer.append_child(inner.as_ref())?;
    slot.set_text_content(None);
    slot.append_child(outer.as_ref())?;
    Ok(())
}
