//! Keeps the page's address and the session in step.

use fitup_view::Mode;
use gloo::events::EventListener;
use wasm_bindgen::JsValue;
use web_sys::HtmlElement;
use yew::prelude::*;

use crate::state::{Action, Address, Key};

/// Reads the address at the start and whenever the reader goes back or forward, and writes it
/// whenever the session stands elsewhere. `given` is the link the element's attribute holds: it
/// counts at the start where the address has none, and whenever the page changes it. A kiosk leaves no steps to go back to.
#[hook]
pub fn use_address(host: HtmlElement, given: Option<AttrValue>, stands: Address, mode: Mode, act: Callback<Action>) {
    let key = use_memo(host, |host| Key::of(&host.id()));
    let begun = use_state(|| false);
    {
        let (key, act, begun) = (key.clone(), act.clone(), begun.clone());
        use_effect_with(given, move |given| {
            let mut address = Address::read(&fragment(), &key);
            if *begun || address.link.is_none() {
                address.link = given.as_ref().map(ToString::to_string);
            }
            act.emit(Action::Arrive(address));
            begun.set(true);
        });
    }
    {
        let key = key.clone();
        use_effect_with((), move |()| {
            let window = web_sys::window();
            let listener = window.map(|window| {
                EventListener::new(&window, "popstate", move |_| {
                    act.emit(Action::Arrive(Address::read(&fragment(), &key)));
                })
            });
            move || drop(listener)
        });
    }
    use_effect_with((stands, *begun), move |(stands, begun)| {
        if *begun {
            write(stands, &key, mode);
        }
    });
}

fn fragment() -> String {
    web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default()
}

/// A page that may not touch its history (a sandboxed frame) still works; it only forgets.
fn write(stands: &Address, key: &Key, mode: Mode) {
    let before = fragment();
    let after = stands.write(&before, key);
    if before.trim_start_matches('#') == after {
        return;
    }
    let Some(window) = web_sys::window() else { return };
    let location = window.location();
    let (Ok(path), Ok(search), Ok(history)) = (location.pathname(), location.search(), window.history()) else {
        return;
    };
    let hash = if after.is_empty() { String::new() } else { format!("#{after}") };
    let address = format!("{path}{search}{hash}");
    let _ = match mode {
        Mode::Kiosk => history.replace_state_with_url(&JsValue::NULL, "", Some(&address)),
        Mode::Page | Mode::Yard => history.push_state_with_url(&JsValue::NULL, "", Some(&address)),
    };
}
