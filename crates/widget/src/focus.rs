//! Where the keyboard goes on when what was touched is about to go.

use web_sys::{Element, Event, FocusOptions, HtmlElement, KeyboardEvent};
use yew::{NodeRef, TargetCast};

/// Goes on at the element with this id in the sheet that was touched, without scrolling to it.
pub fn go_on_at(event: &Event, id: &str) {
    go(event, id, false);
}

/// Goes on at the element with this id in the sheet that was touched, and brings it into sight.
pub fn show(event: &Event, id: &str) {
    go(event, id, true);
}

fn go(event: &Event, id: &str, into_sight: bool) {
    let Some(next) = in_sheet(event, id) else { return };
    let options = FocusOptions::new();
    options.set_prevent_scroll(true);
    let _ = next.focus_with_options(&options);
    if into_sight {
        next.scroll_into_view();
    }
}

/// Brings the element with this id into sight; the keyboard stays where it is.
pub fn bring(event: &Event, id: &str) {
    if let Some(at) = in_sheet(event, id) {
        at.scroll_into_view();
    }
}

/// Whether the sheet that was touched is so narrow that everything stands below each other: as in the style sheet.
pub fn is_narrow(event: &Event) -> bool {
    sheet_of(event).is_some_and(|sheet| sheet.client_width() < SIDE_BY_SIDE)
}

/// Pixels from which drawing and choices stand side by side: 68 rem.
const SIDE_BY_SIDE: i32 = 68 * 16;

fn sheet_of(event: &Event) -> Option<Element> {
    event.target_dyn_into::<Element>().and_then(|at| at.closest(".fitup").ok().flatten())
}

fn in_sheet(event: &Event, id: &str) -> Option<HtmlElement> {
    let found = sheet_of(event)?.query_selector(&format!("#{id}")).ok().flatten()?;
    wasm_bindgen::JsCast::dyn_into::<HtmlElement>(found).ok()
}

/// The arrow keys go from card to card; Tab leaves the list.
pub fn along(event: &KeyboardEvent, list: &NodeRef) {
    let Some(list) = list.cast::<HtmlElement>() else { return };
    let Some(now) = event.target_dyn_into::<HtmlElement>().filter(|at| at.get_attribute("role").is_some()) else {
        return;
    };
    let next = match event.key().as_str() {
        "ArrowDown" | "ArrowRight" => now.next_element_sibling(),
        "ArrowUp" | "ArrowLeft" => now.previous_element_sibling(),
        "Home" => list.first_element_child(),
        "End" => list.last_element_child(),
        _ => return,
    };
    event.prevent_default();
    let next = next.and_then(|next| wasm_bindgen::JsCast::dyn_into::<HtmlElement>(next).ok());
    if let Some(next) = next {
        let _ = next.focus();
    }
}
