//! An item's outline at card size.

use fitup_core::item::ItemRef;
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct SilhouetteProps {
    /// The item; `None` = the bare hitch.
    pub item: Option<ItemRef>,
}

/// The silhouette.
#[component]
pub fn Silhouette(_props: &SilhouetteProps) -> Html {
    html! { <span class="card-shape"></span> }
}
