//! Hears that a new version of the program is ready.

use gloo::events::EventListener;
use js_sys::{Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::CustomEvent;
use yew::prelude::*;

/// Puts the new version in charge, which loads the page again; `None` as long as there is none.
#[hook]
pub fn use_update() -> Option<Callback<()>> {
    let take = use_state(|| None::<Function>);
    {
        let take = take.setter();
        use_effect_with((), move |()| {
            let listener = web_sys::window().map(|window| {
                EventListener::new(&window, "fitup-update", move |event| {
                    let detail = event.dyn_ref::<CustomEvent>().map(CustomEvent::detail).unwrap_or_default();
                    let given = Reflect::get(&detail, &JsValue::from_str("take")).unwrap_or_default();
                    take.set(given.dyn_into().ok());
                })
            });
            move || drop(listener)
        });
    }
    let take = (*take).clone()?;
    Some(Callback::from(move |()| {
        // What the page's script does with it is its own affair.
        let _ = take.call0(&JsValue::NULL);
    }))
}
