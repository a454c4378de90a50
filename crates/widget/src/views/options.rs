//! The options of the open step: search, order, cards. A long list grows as it is scrolled.

use std::rc::Rc;

use fitup_view::{Options, Sort, Step};
use web_sys::{HtmlElement, HtmlInputElement};
use yew::prelude::*;

use super::card::OptionCard;
use super::select::{Choice, select};
use crate::ctx::use_ctx;
use crate::focus;
use crate::state::Action;

/// Options up to which there is no search: they are seen at once.
const NO_SEARCH: u32 = 5;
/// Pixels before the end of the list at which the next cards are laid out: a few cards' height.
const NEAR_END: i32 = 600;

#[derive(Properties, PartialEq)]
pub struct OptionListProps {
    /// The step.
    pub step: Step,
    /// Its options, once they are there.
    pub options: Option<Rc<Options>>,
    /// The search.
    pub search: AttrValue,
    /// The order.
    pub sort: Sort,
    /// The step that is open to answer after this one.
    pub next: Option<Step>,
}

/// The options.
#[component(OptionList)]
pub fn option_list(props: &OptionListProps) -> Html {
    let ctx = use_ctx();
    let OptionListProps { step, options, search, sort, next } = props;
    let list = use_node_ref();
    let Some(options) = options.clone().filter(|options| options.step == *step) else { return Html::default() };
    let laid_out = u32::try_from(options.cards.len()).unwrap_or(u32::MAX);
    let scrolled = {
        let (act, more) = (ctx.act.clone(), laid_out < options.found);
        move |event: Event| {
            let Some(list) = event.target_dyn_into::<HtmlElement>() else { return };
            if more && list.scroll_top() + list.client_height() + NEAR_END > list.scroll_height() {
                act.emit(Action::More);
            }
        }
    };
    let entered = {
        let act = ctx.act.clone();
        move |event: InputEvent| {
            if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
                act.emit(Action::Search(input.value()));
            }
        }
    };
    let orders = Sort::ALL.iter().copied().map(|one| Choice {
        value: one.name().to_owned(),
        shown: ctx.text(&format!("ui-sort-{}", one.name())),
        lang: None,
        chosen: one == *sort,
    });
    let ordered = ctx.act.reform(|name: String| Action::Order(Sort::named(&name).unwrap_or_default()));
    let stop = options.cards.iter().position(|card| card.chosen).unwrap_or_default();
    html! {
        <>
            if options.all > NO_SEARCH {
                <div class="options-tools">
                    <input
                        class="entry" type="search" value={search.clone()} oninput={entered}
                        placeholder={ctx.text("ui-search")} aria-label={ctx.text("ui-search")}
                    />
                    { select(Some(ctx.text("ui-sort")), orders.collect(), ordered) }
                </div>
            }
            <div
                class="options" role="listbox" aria-label={ctx.text(&format!("ui-step-{}", step.name()))}
                ref={list.clone()} onkeydown={move |event| focus::along(&event, &list)} onscroll={scrolled}
            >
                for (at, card) in options.cards.iter().enumerate() {
                    <OptionCard
                        key={card.id.clone().unwrap_or_default()} step={*step} card={card.clone()} stop={at == stop}
                        place={at + 1} of={options.found} next={*next}
                    />
                }
                if options.cards.is_empty() {
                    <p class="soft">{ ctx.text("ui-nothing-found") }</p>
                }
            </div>
        </>
    }
}
