//! The options of the open step: search, order, cards. A long list grows as it is scrolled.

use fitup_core::build::{Build, Step};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::search::Reachable;
use fitup_drawing::common_span;
use web_sys::{HtmlElement, HtmlInputElement, KeyboardEvent};
use yew::prelude::*;

use super::card::Card;
use super::select::{Choice, select};
use super::silhouette::card_sheet;
use crate::ctx::use_ctx;
use crate::picture::Lettering;
use crate::same::Same;
use crate::say;
use crate::state::{Action, Pick, Sort, options};

/// Options up to which there is no search: they are seen at once.
const NO_SEARCH: usize = 5;
/// Cards that are laid out at first, and that are added each time the list is scrolled to its end.
const BATCH: usize = 40;
/// Pixels before the end of the list at which the next cards are laid out: a few cards' height.
const NEAR_END: i32 = 600;

#[derive(Properties, PartialEq)]
pub struct OptionsProps {
    /// The step.
    pub step: Step,
    /// What is picked.
    pub chosen: Option<Pick>,
    /// The build.
    pub build: Same<Build>,
    /// What each option leads to.
    pub reach: Option<Same<Reachable>>,
    /// The search.
    pub search: AttrValue,
    /// The order.
    pub sort: Sort,
}

/// The options.
#[component]
pub fn Options(props: &OptionsProps) -> Html {
    let ctx = use_ctx();
    let OptionsProps { step, chosen, build, reach, search, sort } = props;
    let all = Pick::all(ctx.catalogue(), *step).len();
    // What the options of a step lead to does not hang on what is picked in it, so that the cards
    // do not jump about under the finger.
    let key = (ctx.clone(), *step, search.clone(), *sort, reach.clone());
    let picks = use_memo(key, |(ctx, step, search, sort, reach)| {
        let nothing = Reachable::default();
        let hitch = ctx.text("ui-on-hitch");
        options(&ctx.desk, reach.as_deref().unwrap_or(&nothing), *step, search, *sort, &hitch)
    });
    // Digging arms stand as high as the machine; beside them a blade to the same scale were a speck.
    let spans = use_memo((ctx.clone(), *step), |(ctx, step)| {
        let items = || Pick::all(ctx.catalogue(), *step).into_iter().filter_map(Pick::item);
        [false, true].map(|arms| {
            let alike = items().filter(|&item| is_arm(ctx.catalogue(), item) == arms);
            common_span(ctx.catalogue(), alike, &card_sheet(&Lettering(&ctx.words)))
        })
    });
    let span_of = |pick: Pick| pick.item().and_then(|item| spans[usize::from(is_arm(ctx.catalogue(), item))]);
    let shown = use_state(|| BATCH);
    {
        let shown = shown.clone();
        use_effect_with((*step, search.clone(), *sort), move |_| shown.set(BATCH));
    }
    let scrolled = {
        let (shown, all) = (shown.clone(), picks.len());
        move |event: Event| {
            let Some(list) = event.target_dyn_into::<HtmlElement>() else { return };
            if *shown < all && list.scroll_top() + list.client_height() + NEAR_END > list.scroll_height() {
                shown.set(*shown + BATCH);
            }
        }
    };
    let list = use_node_ref();
    let entered = {
        let act = ctx.act.clone();
        move |event: InputEvent| {
            if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
                act.emit(Action::Search(input.value()));
            }
        }
    };
    let orders = Sort::ALL.into_iter().map(|one| Choice {
        value: one.name().to_owned(),
        shown: ctx.text(&format!("ui-sort-{}", one.name())),
        lang: None,
        chosen: one == *sort,
    });
    let ordered = ctx.act.reform(|name: String| {
        Action::Order(Sort::ALL.into_iter().find(|sort| sort.name() == name).unwrap_or_default())
    });
    let stop = chosen.filter(|pick| picks.contains(pick)).or_else(|| picks.first().copied());
    html! {
        <>
            if all > NO_SEARCH {
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
                ref={list.clone()} onkeydown={move |event| move_focus(&event, &list)} onscroll={scrolled}
            >
                for (at, pick) in picks.iter().copied().enumerate().take(*shown) {
                    <Card
                        key={format!("{pick:?}")} {pick} chosen={Some(pick) == *chosen} stop={Some(pick) == stop}
                        on_hand={pick.item().is_some_and(|item| build.on_hand.contains(&item))}
                        verdict={reach.as_ref().and_then(|reach| reach.through(*step, pick.option)).map(|reach| reach.verdict)}
                        why={
                            reach.as_ref().and_then(|reach| reach.through(*step, pick.option))
                                .and_then(|reach| reach.reason(&ctx.desk))
                                .map(|finding| AttrValue::from(say::short(&ctx, &finding)))
                        }
                        span={span_of(pick)} place={at + 1} of={picks.len()}
                    />
                }
                if picks.is_empty() {
                    <p class="soft">{ ctx.text("ui-nothing-found") }</p>
                }
            </div>
        </>
    }
}

/// Whether an item is a digging arm.
fn is_arm(catalogue: &Catalogue, item: ItemRef) -> bool {
    matches!(item, ItemRef::Implement(id) if catalogue.implement(id).arm.is_some())
}

/// The arrow keys go from card to card; Tab leaves the list.
fn move_focus(event: &KeyboardEvent, list: &NodeRef) {
    let Some(list) = list.cast::<HtmlElement>() else { return };
    let Some(now) = event.target_dyn_into::<HtmlElement>().filter(|at| at.get_attribute("role").is_some()) else {
        return;
    };
    let next = match event.key().as_str() {
        "ArrowDown" | "ArrowRight" => now.next_element_sibling(),
        "ArrowUp" | "ArrowLeft" => now.previous_element_sibling(),
        "Home" => list.first_element_child(),
        "End" => list.last_element_child(),
        _ => return,
    };
    event.prevent_default();
    let next = next.and_then(|next| wasm_bindgen::JsCast::dyn_into::<HtmlElement>(next).ok());
    if let Some(next) = next {
        let _ = next.focus();
    }
}
