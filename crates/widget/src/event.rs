//! What the element tells the page: events with plain objects.

use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::JsValue;
use web_sys::{CustomEvent, CustomEventInit, HtmlElement};

/// The build or its answer has changed.
pub const CHANGE: &str = "fitup-change";
/// The catalogue cannot be used, or the widget has failed.
pub const ERROR: &str = "fitup-error";

/// A value as a plain object: maps become objects, what is not known becomes `null`.
pub fn plain(value: &impl Serialize) -> JsValue {
    value.serialize(&Serializer::json_compatible()).unwrap_or(JsValue::NULL)
}

/// Tells the page. The event bubbles out of shadow roots, so that one listener on the document
/// hears every element.
pub fn tell(host: &HtmlElement, name: &str, detail: &impl Serialize) {
    let init = CustomEventInit::new();
    init.set_bubbles(true);
    init.set_composed(true);
    init.set_detail(&plain(detail));
    if let Ok(event) = CustomEvent::new_with_event_init_dict(name, &init) {
        // Whether a listener prevents the default is of no interest: there is none.
        let _ = host.dispatch_event(&event);
    }
}
