//! The whole widget in one element.

use web_sys::HtmlElement;
use yew::prelude::*;

/// The element's attributes, as they stand.
#[derive(Properties, Clone, PartialEq)]
pub struct AppProps {
    /// The element, for events.
    pub host: HtmlElement,
    /// Address of the catalogue.
    #[prop_or_default]
    pub catalogue: Option<AttrValue>,
    /// `page`, `kiosk` or `yard`.
    #[prop_or_default]
    pub mode: Option<AttrValue>,
    /// Language.
    #[prop_or_default]
    pub lang: Option<AttrValue>,
    /// `metric` or `us`.
    #[prop_or_default]
    pub units: Option<AttrValue>,
    /// A build to start with.
    #[prop_or_default]
    pub build: Option<AttrValue>,
    /// The dealer's address for `mailto:`.
    #[prop_or_default]
    pub contact: Option<AttrValue>,
}

/// The widget.
#[component]
pub fn App(_props: &AppProps) -> Html {
    html! { <p>{ "Fit-up" }</p> }
}
