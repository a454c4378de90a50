//! Whether the page's own sheet colour is a light or a dark one.

use fitup_view::Theme;
use web_sys::{Element, HtmlElement};
use yew::prelude::*;

/// The property a page gives the sheet its colour with.
const SHEET: &str = "--fitup-sheet";

/// Light or dark as the sheet colour that the page sets, so that what it does not set suits it; `None` = it sets none.
#[hook]
pub fn use_scheme(host: &HtmlElement) -> Option<Theme> {
    let scheme = use_state_eq(|| None);
    let set = scheme.setter();
    use_effect_with(host.clone(), move |host| set.set(of_page(host)));
    *scheme
}

fn of_page(host: &HtmlElement) -> Option<Theme> {
    let window = web_sys::window()?;
    let given = window.get_computed_style(host).ok()??.get_property_value(SHEET).ok()?;
    if given.trim().is_empty() {
        return None;
    }
    // Any way to write a colour: the browser says what it comes to.
    let probe: Element = window.document()?.create_element("i").ok()?;
    let root = host.shadow_root()?;
    root.append_child(&probe).ok()?;
    let style = wasm_bindgen::JsCast::unchecked_ref::<HtmlElement>(&probe).style();
    let colour = style
        .set_property("color", &given)
        .and_then(|()| window.get_computed_style(&probe))
        .ok()
        .flatten()
        .and_then(|computed| computed.get_property_value("color").ok());
    probe.remove();
    scheme_of(&colour?)
}

/// By the luminance of `rgb(…)`, with the weights of ITU-R BT.709.
fn scheme_of(colour: &str) -> Option<Theme> {
    let (_, channels) = colour.strip_suffix(')')?.split_once("rgb(")?;
    let channels: Vec<u32> = channels.split(',').filter_map(|channel| channel.trim().parse().ok()).collect();
    let [red, green, blue] = channels[..] else { return None };
    Some(if 2126 * red + 7152 * green + 722 * blue < 1_275_000 { Theme::Dark } else { Theme::Light })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sheet_is_light_or_dark_by_its_luminance_and_nothing_where_it_cannot_be_told() {
        assert_eq!(scheme_of("rgb(252, 246, 230)"), Some(Theme::Light));
        assert_eq!(scheme_of("rgb(20, 24, 30)"), Some(Theme::Dark));
        assert_eq!(scheme_of("rgb(0, 255, 0)"), Some(Theme::Light), "green is bright");
        assert_eq!(scheme_of("rgb(0, 0, 255)"), Some(Theme::Dark), "blue is not");
        for colour in ["rgba(0, 0, 0, 0)", "oklch(0.9 0.1 90)", "", "rgb(1, 2)", "red"] {
            assert_eq!(scheme_of(colour), None, "{colour}");
        }
    }
}
