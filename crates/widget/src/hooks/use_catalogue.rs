//! Loads the catalogue and says how far it has come.

use std::cell::Cell;
use std::rc::Rc;

use fitup_catalogue::{Code, Reading, read_bytes};
use fitup_core::fit::Desk;
use js_sys::{Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{AbortController, ReadableStreamDefaultReader, RequestInit, Response};
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::state::{Action, Trouble};

/// The largest file that is read, in bytes; a larger one is refused before it fills the memory.
/// Twenty times the largest catalogue the project is measured with. Common sense, no source.
const LARGEST: u64 = 100 * 1024 * 1024;

/// Loads the catalogue at `address` whenever it or `attempt` changes.
#[hook]
pub fn use_catalogue(address: Option<AttrValue>, attempt: u32, act: Callback<Action>) {
    use_effect_with((address, attempt), move |(address, _)| {
        let abort = AbortController::new().ok();
        let wanted = Rc::new(Cell::new(true));
        match address.clone().filter(|address| !address.is_empty()) {
            None => act.emit(Action::Failed(Trouble::NoAddress)),
            Some(address) => {
                act.emit(Action::Loading);
                let signal = abort.clone();
                let wanted = Rc::clone(&wanted);
                let act = act.clone();
                spawn_local(async move {
                    // What comes of an address that is no longer wanted is dropped.
                    let act = Callback::from(move |action| {
                        if wanted.get() {
                            act.emit(action);
                        }
                    });
                    let action = match fetch(&address, signal.as_ref(), &act).await {
                        Ok(bytes) => outcome(&address, read_bytes(&bytes)),
                        Err(reason) => Action::Failed(Trouble::Unreachable { address: address.to_string(), reason }),
                    };
                    act.emit(action);
                });
            }
        }
        move || {
            wanted.set(false);
            if let Some(abort) = abort {
                abort.abort();
            }
        }
    });
}

fn outcome(address: &str, reading: Reading) -> Action {
    if let Some(catalogue) = reading.catalogue {
        return Action::Loaded(Rc::new(Desk::new(catalogue)));
    }
    let address = address.to_owned();
    match reading.problems.iter().find(|problem| problem.code == Code::NewerFormat) {
        Some(problem) => Action::Failed(Trouble::Newer { address, problem: problem.clone() }),
        None => Action::Failed(Trouble::Broken { address, problems: reading.problems }),
    }
}

/// The bytes at an address, telling how many have come. An error is the reason in the browser's
/// words, or the status.
async fn fetch(address: &str, abort: Option<&AbortController>, act: &Callback<Action>) -> Result<Vec<u8>, String> {
    let window = web_sys::window().ok_or_else(String::new)?;
    let init = RequestInit::new();
    init.set_signal(abort.map(AbortController::signal).as_ref());
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
        act.emit(Action::Progress(so_far, length));
    }
}

fn words_of(error: &JsValue) -> String {
    error.dyn_ref::<js_sys::Error>().map_or_else(|| format!("{error:?}"), |error| String::from(error.message()))
}
