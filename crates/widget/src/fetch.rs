//! Brings files over the network.

use js_sys::{Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{AbortSignal, ReadableStreamDefaultReader, RequestInit, Response};

/// The largest file that is read, in bytes; a larger one is refused before it fills the memory.
/// Twenty times the largest catalogue the project is measured with. Common sense, no source.
const LARGEST: u64 = 100 * 1024 * 1024;

/// The bytes at an address; `progress` hears how many have come, and of how many if that is known.
/// An error is the reason in the browser's words, or the status.
pub async fn fetch(
    address: &str,
    abort: Option<&AbortSignal>,
    progress: &dyn Fn(u64, Option<u64>),
) -> Result<Vec<u8>, String> {
    let window = web_sys::window().ok_or_else(String::new)?;
    let init = RequestInit::new();
    init.set_signal(abort);
    let response: Response = JsFuture::from(window.fetch_with_str_and_init(address, &init))
        .await
        .and_then(JsCast::dyn_into)
        .map_err(|error| words_of(&error))?;
    if !response.ok() {
        return Err(format!("{} {}", response.status(), response.status_text()).trim().to_owned());
    }
    let length = response.headers().get("content-length").ok().flatten().and_then(|text| text.parse().ok());
    let packed = response.headers().get("content-encoding").ok().flatten().is_some();
    // The stated length is that of the packed file, the bytes that come are unpacked.
    let length: Option<u64> = length.filter(|_| !packed);
    let Some(body) = response.body() else { return Ok(Vec::new()) };
    let reader: ReadableStreamDefaultReader = body.get_reader().unchecked_into();
    let mut bytes = Vec::new();
    loop {
        let chunk = JsFuture::from(reader.read()).await.map_err(|error| words_of(&error))?;
        let field = |name: &str| Reflect::get(&chunk, &JsValue::from_str(name)).unwrap_or_default();
        if field("done").is_truthy() {
            return Ok(bytes);
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
