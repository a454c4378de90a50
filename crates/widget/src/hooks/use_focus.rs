//! Keeps the focus in the widget: where what had it goes, or can no longer be used, it goes on at what stands round that.

use std::cell::RefCell;
use std::rc::Rc;

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::*;
use web_sys::{Element, Event, FocusOptions, HtmlElement, MutationObserver, MutationObserverInit, ShadowRoot};
use yew::prelude::*;

/// What the focus may go on at.
const PLACES: &str = "li, section, fieldset, header, dialog, main";

/// Watches over the focus.
#[hook]
pub fn use_focus(host: &HtmlElement) {
    let host = host.clone();
    use_effect_with((), move |()| {
        let watched = host.shadow_root().and_then(|root| watch(&root));
        move || {
            if let Some((observer, ..)) = &watched {
                observer.disconnect();
            }
            drop(watched);
        }
    });
}

type Watched = (MutationObserver, Closure<dyn Fn()>, EventListener);

fn watch(root: &ShadowRoot) -> Option<Watched> {
    // What has the focus, and the places round it, nearest first.
    let path = Rc::new(RefCell::new(Vec::<HtmlElement>::new()));
    let focused = {
        let path = Rc::clone(&path);
        EventListener::new(root, "focusin", move |event| *path.borrow_mut() = round(event))
    };
    let changed = {
        let root = root.clone();
        Closure::<dyn Fn()>::new(move || {
            // Nothing is held while the focus moves: it is told of at once.
            let path = path.borrow().clone();
            if let Some((had, round)) = path.split_first().filter(|(had, _)| is_lost(had, &root)) {
                go_on(round.iter().filter(|place| **place != *had), &root);
            }
        })
    };
    let observer = MutationObserver::new(changed.as_ref().unchecked_ref()).ok()?;
    let wanted = MutationObserverInit::new();
    wanted.set_child_list(true);
    wanted.set_subtree(true);
    wanted.set_attribute_filter(&js_sys::Array::of1(&"disabled".into()));
    observer.observe_with_options(root, &wanted).ok()?;
    Some((observer, changed, focused))
}

fn round(event: &Event) -> Vec<HtmlElement> {
    let mut at = event.target().and_then(|target| target.dyn_into::<HtmlElement>().ok());
    let mut round = Vec::new();
    while let Some(element) = at {
        let next = element.parent_element().and_then(|parent| parent.closest(PLACES).ok().flatten());
        round.push(element);
        at = next.and_then(|next| next.dyn_into().ok());
    }
    round
}

/// Whether nothing has the focus any more, because what had it is gone or cannot be used.
fn is_lost(had: &HtmlElement, root: &ShadowRoot) -> bool {
    let body_has = web_sys::window()
        .and_then(|window| window.document())
        .is_some_and(|document| document.active_element().is_none_or(|it| it.tag_name() == "BODY"));
    let is_gone = !had.is_connected() || Element::matches(had, ":disabled").unwrap_or_default();
    is_gone && body_has && root.active_element().is_none()
}

fn go_on<'a>(places: impl Iterator<Item = &'a HtmlElement>, root: &ShadowRoot) {
    let options = FocusOptions::new();
    options.set_prevent_scroll(true);
    for place in places.filter(|place| place.is_connected()) {
        if !place.has_attribute("tabindex") {
            // An attribute of this name can always be set.
            let _ = place.set_attribute("tabindex", "-1");
        }
        let _ = place.focus_with_options(&options);
        if root.active_element().is_some() {
            return;
        }
    }
}
