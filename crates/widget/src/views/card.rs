//! One option of a step.

use fitup_view::{Card, Edit, Step};
use web_sys::{Event, KeyboardEvent};
use yew::prelude::*;

use super::verdict::reached_word;
use crate::ctx::{svg, use_ctx};
use crate::focus;
use crate::state::Action;

#[derive(Properties, PartialEq)]
pub struct CardProps {
    /// The step.
    pub step: Step,
    /// The option.
    pub card: Card,
    /// Whether Tab stops here.
    pub stop: bool,
    /// Its place in the list, from 1.
    pub place: usize,
    /// How long the list is.
    pub of: u32,
    /// The step that is open to answer after this one.
    pub next: Option<Step>,
}

/// A card: silhouette to scale, label, price or "on hand", verdict and reason.
#[component(OptionCard)]
pub fn option_card(props: &CardProps) -> Html {
    let ctx = use_ctx();
    let card = &props.card;
    let take = {
        let (act, step, next, id) = (ctx.act.clone(), props.step, props.next, card.id.clone());
        Callback::from(move |event: Event| {
            act.emit(Action::Edit(Edit::Choose(step, id.clone())));
            // Where the list fills the screen a pick closes it and leads on, with the drawing in view.
            if focus::is_narrow(&event) {
                focus::go_on_at(&event, &format!("step-{}", next.unwrap_or(step).name()));
                focus::bring(&event, "drawing");
                act.emit(Action::OpenStep(next));
            }
        })
    };
    let onkeydown = {
        let take = take.clone();
        move |event: KeyboardEvent| {
            if matches!(event.key().as_str(), "Enter" | " ") {
                event.prevent_default();
                take.emit(event.into());
            }
        }
    };
    html! {
        <div
            class="card" role="option" aria-selected={card.chosen.to_string()}
            tabindex={if props.stop { "0" } else { "-1" }}
            aria-posinset={props.place.to_string()} aria-setsize={props.of.to_string()}
            onclick={move |event: MouseEvent| take.emit(event.into())} {onkeydown}
        >
            <div class="card-shape" aria-hidden="true">{ svg(&card.shape) }</div>
            <div class="card-text">
                <div class="card-top">
                    <span class="card-name">{ card.name.clone() }</span>
                    <span class="card-price">{ card.price.clone() }</span>
                </div>
                { reached_word(card.verdict, card.coloured, card.word.clone()) }
                <p class="card-why">{ card.why.clone() }</p>
            </div>
        </div>
    }
}
