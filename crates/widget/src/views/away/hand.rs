//! The ways out of the page: clipboard, the device's own sharing, mail, files.

use js_sys::Reflect;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{DomException, ShareData};

/// Puts a text into the clipboard; false if the browser refuses.
pub async fn copy(text: &str) -> bool {
    let Some(navigator) = navigator().filter(|navigator| has(navigator, "clipboard")) else { return false };
    JsFuture::from(navigator.clipboard().write_text(text)).await.is_ok()
}

/// Whether the device shares by itself.
pub fn can_share() -> bool {
    navigator().is_some_and(|navigator| has(&navigator, "share"))
}

/// How sharing went.
pub enum Shared {
    /// It was taken.
    Taken,
    /// The user has left it off.
    LeftOff,
    /// The browser refused.
    Refused,
}

/// Hands a link to the device.
pub async fn share(title: &str, address: &str) -> Shared {
    let Some(navigator) = navigator() else { return Shared::Refused };
    let data = ShareData::new();
    data.set_title(title);
    data.set_url(address);
    match JsFuture::from(navigator.share_with_data(&data)).await {
        Ok(_) => Shared::Taken,
        Err(error) => match error.dyn_ref::<DomException>().map(DomException::name).as_deref() {
            Some("AbortError") => Shared::LeftOff,
            _ => Shared::Refused,
        },
    }
}

/// The address that opens a message to `to` with a subject and a text.
pub fn mail(to: &str, subject: &str, text: &str) -> String {
    let [subject, text] = [subject, &text.replace('\n', "\r\n")].map(escaped);
    format!("mailto:{to}?subject={subject}&body={text}")
}

/// The address of a file that the browser saves: its content, since the policy of a page may forbid every other way.
pub fn data(sort: &str, text: &str) -> String {
    format!("data:{sort};charset=utf-8,{}", escaped(text))
}

/// Whether a text is a mail address and nothing else: what goes on behind it would become a part of the message.
pub fn is_address(text: &str) -> bool {
    let sound = |part: &str| !part.is_empty() && part.chars().all(|c| c.is_alphanumeric() || ".-_+".contains(c));
    text.split_once('@').is_some_and(|(name, place)| sound(name) && sound(place))
}

fn escaped(text: &str) -> String {
    js_sys::encode_uri_component(text).into()
}

fn navigator() -> Option<web_sys::Navigator> {
    web_sys::window().map(|window| window.navigator())
}

fn has(navigator: &web_sys::Navigator, name: &str) -> bool {
    Reflect::get(navigator, &JsValue::from_str(name)).is_ok_and(|it| it.is_truthy())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mail_address_is_one_and_nothing_more() {
        for good in ["dealer@example.com", "jobs+yard@parts.example"] {
            assert!(is_address(good), "{good}");
        }
        for bad in ["", "dealer", "@example.com", "a@b?bcc=c@d", "a@b,c@d", "a b@c", "mailto:a@b", "tel:a@b/"] {
            assert!(!is_address(bad), "{bad}");
        }
    }
}
