//! One option of a step.

use fitup_core::finding::Verdict;
use web_sys::KeyboardEvent;
use yew::prelude::*;

use super::silhouette::Silhouette;
use super::verdict::verdict_word;
use crate::ctx::use_ctx;
use crate::state::{Action, Edit, Pick};

#[derive(Properties, PartialEq)]
pub struct CardProps {
    /// The option.
    pub pick: Pick,
    /// Whether it is picked.
    pub chosen: bool,
    /// Whether Tab stops here.
    pub stop: bool,
    /// Whether it is on hand.
    pub on_hand: bool,
    /// The best verdict still reachable through it.
    pub verdict: Option<Verdict>,
    /// Why nothing better is.
    pub why: Option<AttrValue>,
    /// The length in metres that fills its picture's width.
    pub span: Option<f64>,
    /// Its place in the list, from 1.
    pub place: usize,
    /// How long the list is.
    pub of: usize,
}

/// A card: silhouette to scale, label, price or "on hand", verdict and reason.
#[component]
pub fn Card(props: &CardProps) -> Html {
    let ctx = use_ctx();
    let pick = props.pick;
    let take = {
        let act = ctx.act.clone();
        Callback::from(move |()| act.emit(Action::Edit(Edit::Choose(pick))))
    };
    let onkeydown = {
        let take = take.clone();
        move |event: KeyboardEvent| {
            if matches!(event.key().as_str(), "Enter" | " ") {
                event.prevent_default();
                take.emit(());
            }
        }
    };
    let price = match pick.item().map(|item| ctx.catalogue().body(item)) {
        None => String::new(),
        Some(_) if props.on_hand => ctx.text("ui-on-hand"),
        Some(body) => body.price.map_or_else(|| ctx.text("ui-price-on-request"), |price| ctx.price(price)),
    };
    html! {
        <div
            class="card" role="option" aria-selected={props.chosen.to_string()}
            tabindex={if props.stop { "0" } else { "-1" }}
            aria-posinset={props.place.to_string()} aria-setsize={props.of.to_string()}
            onclick={move |_| take.emit(())} {onkeydown}
        >
            <Silhouette item={pick.item()} span={props.span} />
            <div class="card-text">
                <div class="card-top">
                    <span class="card-name">{ ctx.pick_label(pick) }</span>
                    <span class="card-price">{ price }</span>
                </div>
                { verdict_word(&ctx, props.verdict) }
                <p class="card-why">{ props.why.clone() }</p>
            </div>
        </div>
    }
}
