//! Brings files over the network.

use std::cell::RefCell;

use js_sys::{Function, Promise, Reflect, Uint8Array};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{AbortSignal, ReadableStreamDefaultReader, RequestInit, Response};

/// The largest file that is read, in bytes; a larger one is refused before it fills the memory.
/// Twenty times the largest catalogue the project is measured with. Common sense, no source.
const LARGEST: u64 = 100 * 1024 * 1024;

thread_local! {
    static EARLY: RefCell<Option<Function>> = const { RefCell::new(None) };
}

/// Says where answers are that were asked for before this program was there: a function of the address, which gives each once.
#[wasm_bindgen]
pub fn early(take: Function) {
    EARLY.set(Some(take));
}

fn taken(address: &str) -> Option<Promise> {
    let take = EARLY.with_borrow(Clone::clone)?;
    take.call1(&JsValue::NULL, &JsValue::from_str(address)).ok()?.dyn_into().ok()
}

/// What came from an address.
pub struct Fetched {
    /// The bytes.
    pub bytes: Vec<u8>,
    /// When the copy came that stands in for an answer of the network, as the service worker wrote it down.
    pub kept: Option<String>,
}

/// The bytes at an address; `progress` hears how many have come, and of how many if that is known.
/// An error is the reason in the browser's words, or the status.
pub async fn fetch(
    address: &str,
    abort: Option<&AbortSignal>,
    progress: &dyn Fn(u64, Option<u64>),
) -> Result<Fetched, String> {
    let asked = if let Some(asked) = taken(address) {
        asked
    } else {
        let init = RequestInit::new();
        init.set_signal(abort);
        web_sys::window().ok_or_else(String::new)?.fetch_with_str_and_init(address, &init)
    };
    let response: Response =
        JsFuture::from(asked).await.and_then(JsCast::dyn_into).map_err(|error| words_of(&error))?;
    if !response.ok() {
        return Err(format!("{} {}", response.status(), response.status_text()).trim().to_owned());
    }
    let length = response.headers().get("content-length").ok().flatten().and_then(|text| text.parse().ok());
    let packed = response.headers().get("content-encoding").ok().flatten().is_some();
    // The stated length is that of the packed file, the bytes that come are unpacked.
    let length: Option<u64> = length.filter(|_| !packed);
    let kept = response.headers().get("fitup-kept").ok().flatten();
    let mut bytes = Vec::new();
    let Some(body) = response.body() else { return Ok(Fetched { bytes, kept }) };
    let reader: ReadableStreamDefaultReader = body.get_reader().unchecked_into();
    loop {
        let chunk = JsFuture::from(reader.read()).await.map_err(|error| words_of(&error))?;
        let field = |name: &str| Reflect::get(&chunk, &JsValue::from_str(name)).unwrap_or_default();
        if field("done").is_truthy() {
            return Ok(Fetched { bytes, kept });
        }
        bytes.extend(field("value").unchecked_into::<Uint8Array>().to_vec());
        let so_far = bytes.len() as u64;
        if so_far > LARGEST {
            return Err(format!("> {LARGEST} bytes"));
        }
        progress(so_far, length);
    }
}

fn words_of(error: &JsValue) -> String {
    error.dyn_ref::<js_sys::Error>().map_or_else(|| format!("{error:?}"), |error| String::from(error.message()))
}
