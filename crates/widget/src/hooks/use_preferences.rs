//! Keeps what the reader chose for the eyes in the page's storage, by the widget's name in the address.

use web_sys::{HtmlElement, Storage};
use yew::prelude::*;

use crate::state::{Key, Preferences};

/// What the reader chose at an earlier visit.
pub fn recall(host: &HtmlElement) -> Preferences {
    let kept = storage().and_then(|storage| storage.get_item(&name(host)).ok().flatten());
    kept.map(|kept| Preferences::read(&kept)).unwrap_or_default()
}

/// Keeps what the reader chooses.
#[hook]
pub fn use_preferences(host: HtmlElement, chosen: Preferences) {
    use_effect_with((host, chosen), |(host, chosen)| {
        let Some(storage) = storage() else { return };
        let kept = chosen.write();
        // A page that may store nothing, or no more, still works; it only forgets.
        let _ = if kept.is_empty() { storage.remove_item(&name(host)) } else { storage.set_item(&name(host), &kept) };
    });
}

/// The page's storage, where it may have one.
pub(super) fn storage() -> Option<Storage> {
    web_sys::window()?.local_storage().ok().flatten()
}

/// The name under which an element keeps what it keeps.
pub(super) fn name(host: &HtmlElement) -> String {
    format!("fit-up/{}", Key::of(&host.id()).as_str())
}
