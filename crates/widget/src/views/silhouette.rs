//! An item's outline at card size, to one scale with those it stands among.

use fitup_core::item::ItemRef;
use fitup_drawing::{Sheet, Shown, silhouette};
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::picture::{self, Lettering};

/// Width and height of a card's picture in millimetres of the sheet.
pub const CARD: (f64, f64) = (28.0, 19.0);

#[derive(Properties, PartialEq)]
pub struct SilhouetteProps {
    /// The item; `None` = the bare hitch.
    pub item: Option<ItemRef>,
    /// The length in metres that fills the width.
    pub span: Option<f64>,
}

/// The silhouette. The card says what it is; to a screen reader it says nothing.
#[component]
pub fn Silhouette(props: &SilhouetteProps) -> Html {
    let ctx = use_ctx();
    let drawn = use_memo((ctx, props.item, props.span), |(ctx, item, span)| {
        let lettering = Lettering(&ctx.words);
        let sheet = card_sheet(&lettering);
        item.map(|item| picture::svg(&silhouette(ctx.catalogue(), item, *span, &sheet), ""))
    });
    html! { <div class="card-shape" aria-hidden="true">{ (*drawn).clone() }</div> }
}

/// The sheet of a card's picture.
pub fn card_sheet<'a>(lettering: &'a Lettering<'a>) -> Sheet<'a> {
    Sheet { dimensions: Shown::No, markers: Shown::No, ..Sheet::new(CARD.0, CARD.1, lettering) }
}
