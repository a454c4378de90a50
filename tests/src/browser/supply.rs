//! Another catalogue for the widget than the site serves.

use serde_json::json;

use super::{Outcome, Page};

/// Gives the element a catalogue of this name with this text, or the answer 404, and waits for
/// what the widget says of it.
///
/// # Errors
/// The widget says nothing of it within the deadline.
pub async fn supply(page: &Page, name: &str, text: Option<&str>) -> Outcome {
    page.value(&format!(
        "(() => {{ const real = window.realFetch ??= window.fetch.bind(window); \
         window.fetch = (address, more) => String(address).endsWith({name}) \
           ? Promise.resolve({text} === null ? new Response('', {{ status: 404, statusText: 'Not Found' }}) : new Response({text})) \
           : real(address, more); \
         document.querySelector('fit-up').setAttribute('catalogue', {name}); }})()",
        name = json!(name),
        text = json!(text),
    ))
    .await?;
    page.until("what is said of the catalogue", "widget.querySelector('.trouble') != null").await
}
