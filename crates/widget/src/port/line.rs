//! The line to one engine, as the page's script gives it: `www/line.js`.

use std::cell::RefCell;

use js_sys::{Function, Uint8Array};
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    /// A line to one engine.
    pub type Line;

    /// Teaches it a language.
    #[wasm_bindgen(method)]
    pub fn teach(this: &Line, lang: &str, texts: &str);

    /// Has it read a catalogue; the bytes stay the page's.
    #[wasm_bindgen(method)]
    pub fn read(this: &Line, bytes: &Uint8Array);

    /// Asks it; the bytes go over.
    #[wasm_bindgen(method)]
    pub fn ask(this: &Line, bytes: &Uint8Array);

    /// Ends it.
    #[wasm_bindgen(method)]
    pub fn end(this: &Line);
}

thread_local! {
    static OPEN: RefCell<Option<Function>> = const { RefCell::new(None) };
}

/// Says how a line to an engine is opened: a function that takes what hears and gives a line.
#[wasm_bindgen]
pub fn engines(open: Function) {
    OPEN.set(Some(open));
}

/// Opens a line; `hear` is called with the kind of what comes and with what comes.
pub fn open(hear: &Closure<dyn Fn(String, JsValue)>) -> Option<Line> {
    let open = OPEN.with_borrow(Clone::clone)?;
    open.call1(&JsValue::NULL, hear.as_ref()).ok().map(JsCast::unchecked_into)
}
