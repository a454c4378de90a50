//! What would help: changes to the build, each tried with one touch and undone with one.

use std::rc::Rc;

use fitup_view::{Edit, Remedies, Remedy};
use yew::prelude::*;

use super::verdict::verdict_word;
use crate::ctx::use_ctx;
use crate::focus;
use crate::state::Action;

#[derive(Properties, PartialEq)]
pub struct RemedyListProps {
    /// The remedies of the build at hand, once they are there.
    pub remedies: Option<Rc<Remedies>>,
    /// Whether something is open or in the way: then that nothing helps is said, too.
    pub is_open: bool,
}

/// The remedies of the build at hand.
#[component]
pub fn RemedyList(props: &RemedyListProps) -> Html {
    let ctx = use_ctx();
    let all = use_state_eq(|| false);
    let Some(told) = &props.remedies else { return Html::default() };
    if told.found.is_empty() {
        let said = told.none.clone().filter(|_| props.is_open);
        return said.map(|said| html! { <p class="details-none soft">{ said }</p> }).unwrap_or_default();
    }
    let show_all = {
        let all = all.clone();
        move |event: MouseEvent| {
            focus::go_on_at(&event, "remedies");
            all.set(true);
        }
    };
    let shown = if *all { told.found.len() } else { told.at_once as usize };
    let card = |remedy: &Remedy| {
        let build = remedy.build.clone();
        let act = ctx.act.clone();
        html! {
            <>
                <div>
                    for (at, step) in remedy.steps.iter().enumerate() {
                        <p key={at} class="remedy-step">{ step.clone() }</p>
                    }
                    if let Some(settled) = remedy.settles.clone() {
                        <p class="small">{ settled }</p>
                    }
                    { verdict_word(Some(remedy.verdict), remedy.word.clone()) }
                    <p class="small soft">{ remedy.effect.clone() }</p>
                    if let Some(left) = remedy.leaves.clone() {
                        <p class="small soft">{ left }</p>
                    }
                </div>
                <button
                    type="button" class="button"
                    onclick={move |event: MouseEvent| {
                        // The remedies go with the build that they were for.
                        focus::go_on_at(&event, "details");
                        act.emit(Action::Edit(Edit::Take(build.clone())));
                    }}
                >
                    { ctx.text("ui-try-remedy") }
                </button>
            </>
        }
    };
    html! {
        <section class="remedies" id="remedies" tabindex="-1" aria-label={ctx.text("ui-remedies")}>
            <h2>{ ctx.text("ui-remedies") }</h2>
            <ul>
                for (at, remedy) in told.found.iter().take(shown).enumerate() {
                    <li key={at} class="remedy">{ card(remedy) }</li>
                }
            </ul>
            if let Some(more) = told.more.clone().filter(|_| !*all) {
                <button type="button" class="button bare" onclick={show_all}>{ more }</button>
            }
        </section>
    }
}
