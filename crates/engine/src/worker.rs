//! The engine of a page: a worker's script, or where workers are forbidden the page's own, hands it bytes and gets bytes.

use std::panic;
use std::sync::Once;

use fitup_view::{Reply, VERSION, read, write};
use wasm_bindgen::prelude::*;

use crate::Engine;

#[wasm_bindgen]
extern "C" {
    /// Set by the script that holds the engine, which tells the page why it ends.
    #[wasm_bindgen(js_namespace = globalThis, js_name = onEnginePanic, catch)]
    fn on_engine_panic(reason: &str) -> Result<(), JsValue>;
}

static SET: Once = Once::new();

/// The engine behind bytes.
#[wasm_bindgen(js_name = Engine)]
pub struct WorkerEngine(Engine);

#[wasm_bindgen(js_class = Engine)]
impl WorkerEngine {
    /// An engine that knows neither language nor catalogue.
    #[wasm_bindgen(constructor)]
    #[expect(clippy::new_without_default, reason = "it is for JavaScript")]
    pub fn new() -> Self {
        SET.call_once(|| {
            panic::set_hook(Box::new(|info| {
                // Where nobody listens the trap that follows still says that it is over.
                let _ = on_engine_panic(&info.to_string());
            }));
        });
        Self(Engine::default())
    }

    /// What page and engine have to have in common.
    pub fn version() -> String {
        VERSION.to_owned()
    }

    /// Learns a language from its texts.
    pub fn teach(&mut self, lang: &str, texts: String) -> bool {
        self.0.teach(lang, texts)
    }

    /// Reads a catalogue; the bytes of what came of it.
    pub fn read(&mut self, bytes: &[u8]) -> Vec<u8> {
        write(&self.0.read(bytes))
    }

    /// Takes a request up; the bytes of the first part of its answer.
    pub fn ask(&mut self, bytes: &[u8]) -> Option<Vec<u8>> {
        told(self.0.ask(read(bytes)?))
    }

    /// The bytes of the next part; nothing once all is said.
    pub fn step(&mut self) -> Option<Vec<u8>> {
        told(self.0.step())
    }
}

fn told(reply: Option<Reply>) -> Option<Vec<u8>> {
    reply.map(|reply| write(&reply))
}
