//! Whether the page prints, and the way to print the fit sheet alone.

use gloo::events::EventListener;
use web_sys::{CssStyleSheet, HtmlElement};
use yew::prelude::*;

/// What a page hides while the fit sheet alone is printed: everything that is neither the widget nor round it. Margins on which
/// A4 and Letter hold the same sheet.
const ALONE: &str = "@page{margin:12mm}@media print{\
    body *:not(:has(fit-up[printing])):not(fit-up[printing]){display:none!important}\
    html,body,body :has(fit-up[printing]){display:block!important;position:static!important;overflow:visible!important;\
    float:none!important;width:auto!important;max-width:none!important;height:auto!important;min-height:0!important;\
    margin:0!important;padding:0!important;border:0!important;transform:none!important;background:#fff!important}}";

/// Whether the page prints at this moment.
#[hook]
pub fn use_printing() -> bool {
    let printing = use_state_eq(|| false);
    {
        let printing = printing.setter();
        use_effect_with((), move |()| {
            let listen = |name: &'static str, now: bool| {
                let printing = printing.clone();
                web_sys::window().map(|window| EventListener::new(&window, name, move |_| printing.set(now)))
            };
            let listeners = [listen("beforeprint", true), listen("afterprint", false)];
            move || drop(listeners)
        });
    }
    *printing
}

/// Prints the fit sheet of an element and nothing else of its page.
pub fn print_alone(host: &HtmlElement) {
    let Some(window) = web_sys::window() else { return };
    let Some(sheets) = window.document().map(|document| document.adopted_style_sheets()) else { return };
    let Some(alone) = CssStyleSheet::new().ok().filter(|sheet| sheet.replace_sync(ALONE).is_ok()) else { return };
    // An attribute without a value can always be set.
    let _ = host.set_attribute("printing", "");
    sheets.push(&alone);
    let host = host.clone();
    // Not every browser waits here until the paper is out.
    EventListener::once(&window, "afterprint", move |_| {
        if let Ok(at) = u32::try_from(sheets.index_of(&alone, 0)) {
            sheets.splice_many(at, 1, &[]);
        }
        let _ = host.remove_attribute("printing");
    })
    .forget();
    let _ = window.print();
}
