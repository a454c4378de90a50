//! What the element tells the page: events with plain objects.

use js_sys::{JSON, Object, Reflect};
use wasm_bindgen::JsValue;
use web_sys::{CustomEvent, CustomEventInit, HtmlElement};

/// The build or its answer has changed.
pub const CHANGE: &str = "fitup-change";
/// The build was handed over.
pub const SHARE: &str = "fitup-share";
/// The catalogue cannot be used, or the widget has failed.
pub const ERROR: &str = "fitup-error";

/// Tells the page names and texts.
pub fn tell(host: &HtmlElement, name: &str, fields: &[(&str, &str)]) {
    send(host, name, &object(fields));
}

/// The same, and one more field that is JSON text.
pub fn tell_with(host: &HtmlElement, name: &str, fields: &[(&str, &str)], (field, json): (&str, &str)) {
    let detail = object(fields);
    set(&detail, field, &JSON::parse(json).unwrap_or_default());
    send(host, name, &detail);
}

/// Tells the page JSON text, as the value it stands for.
pub fn tell_json(host: &HtmlElement, name: &str, json: &str) {
    send(host, name, &JSON::parse(json).unwrap_or_default());
}

fn object(fields: &[(&str, &str)]) -> Object {
    let detail = Object::new();
    for (field, text) in fields {
        set(&detail, field, &JsValue::from_str(text));
    }
    detail
}

fn set(detail: &Object, field: &str, value: &JsValue) {
    // A field of a new object can always be set.
    let _ = Reflect::set(detail, &JsValue::from_str(field), value);
}

/// The event bubbles out of shadow roots, so that one listener on the document hears every element.
fn send(host: &HtmlElement, name: &str, detail: &JsValue) {
    let init = CustomEventInit::new();
    init.set_bubbles(true);
    init.set_composed(true);
    init.set_detail(detail);
    if let Ok(event) = CustomEvent::new_with_event_init_dict(name, &init) {
        // Whether a listener prevents the default is of no interest: there is none.
        let _ = host.dispatch_event(&event);
    }
}
