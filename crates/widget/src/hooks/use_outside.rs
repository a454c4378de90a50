//! Notices when something else on the page is touched, or Escape is pressed.

use gloo::events::{EventListener, EventListenerOptions, EventListenerPhase};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, Element, Event, FocusEvent, HtmlElement, KeyboardEvent, Node};
use yew::prelude::*;

/// Calls `left` when the page is touched, or the focus goes, outside the node, and when Escape is pressed, as long as `watching`.
/// That Escape is the node's alone: a dialog of the page stays open. It brings the focus back to what opened the node.
#[hook]
pub fn use_outside(node: &NodeRef, opener: &NodeRef, watching: bool, left: Callback<()>) {
    let (node, opener) = (node.clone(), opener.clone());
    use_effect_with(watching, move |&watching| {
        let document = web_sys::window().and_then(|window| window.document()).filter(|_| watching);
        let listeners = document.map(|document| listen(&document, &node, &opener, &left));
        move || drop(listeners)
    });
}

fn listen(document: &Document, node: &NodeRef, opener: &NodeRef, left: &Callback<()>) -> Vec<EventListener> {
    let touched = {
        let (node, left) = (node.clone(), left.clone());
        EventListener::new(document, "pointerdown", move |event| {
            if !is_inside(event, &node) {
                left.emit(());
            }
        })
    };
    // Within a shadow root the focus moves unseen by the document.
    let focused = node.cast::<Element>().map(|element| {
        let left = left.clone();
        EventListener::new(&element.clone(), "focusout", move |event| {
            let to = event.dyn_ref::<FocusEvent>().and_then(FocusEvent::related_target);
            if to.is_some_and(|to| !element.contains(to.dyn_ref::<Node>())) {
                left.emit(());
            }
        })
    });
    let options = EventListenerOptions { phase: EventListenerPhase::Capture, passive: false };
    let (opener, left) = (opener.clone(), left.clone());
    let escape = EventListener::new_with_options(document, "keydown", options, move |event| {
        if event.dyn_ref::<KeyboardEvent>().is_some_and(|event| event.key() == "Escape") {
            event.prevent_default();
            event.stop_propagation();
            left.emit(());
            // An element that is there can take the focus.
            let _ = opener.cast::<HtmlElement>().map(|opener| opener.focus());
        }
    });
    [touched, escape].into_iter().chain(focused).collect()
}

/// The path tells what was touched inside a shadow root, which the target does not.
fn is_inside(event: &Event, node: &NodeRef) -> bool {
    node.cast::<Element>().is_some_and(|element| event.composed_path().includes(&JsValue::from(element), 0))
}
