//! What would help: changes to the build, each tried with one touch and undone with one.

use fitup_core::build::Build;
use fitup_core::search::{Remedy, remedies};
use yew::prelude::*;

use super::verdict::verdict_word;
use crate::ctx::use_ctx;
use crate::hooks::use_later;
use crate::same::Same;
use crate::state::{Action, Edit};

/// Remedies shown at once; the best stand first.
const SHOWN: usize = 4;
/// Milliseconds after the last change until remedies are searched: the answer is painted first.
const AFTER: u32 = 120;

#[derive(Properties, PartialEq)]
pub struct RemediesProps {
    /// The build.
    pub build: Same<Build>,
    /// Whether something is open or in the way: then that nothing helps is said, too.
    pub is_open: bool,
}

/// The remedies of the build at hand.
#[component]
pub fn Remedies(props: &RemediesProps) -> Html {
    let ctx = use_ctx();
    let all = use_state_eq(|| false);
    let found = use_later(AFTER, (ctx.desk.clone(), props.build.clone()), |(desk, build)| {
        (build.clone(), Same::new(remedies(desk, build)))
    });
    // What was found for another build is not shown for this one.
    let Some((_, found)) = found.filter(|(build, _)| *build == props.build) else { return Html::default() };
    if found.is_empty() {
        return html! {
            if props.is_open {
                <p class="details-none soft">{ ctx.text("ui-remedies-none") }</p>
            }
        };
    }
    let shown = if *all { found.len() } else { SHOWN };
    let card = |remedy: &Remedy| {
        let build = remedy.build.clone();
        let act = ctx.act.clone();
        html! {
            <>
                <div>
                    for (at, step) in ctx.words.remedy_steps(ctx.catalogue(), remedy).into_iter().enumerate() {
                        <p key={at} class="remedy-step">{ step }</p>
                    }
                    if let Some(settled) = ctx.words.remedy_settles(ctx.catalogue(), remedy) {
                        <p class="small">{ settled }</p>
                    }
                    { verdict_word(&ctx, Some(remedy.verdict)) }
                    <p class="small soft">{ ctx.words.remedy_effect(ctx.catalogue(), remedy).join(" · ") }</p>
                    if let Some(left) = ctx.words.remedy_leaves(ctx.catalogue(), remedy) {
                        <p class="small soft">{ left }</p>
                    }
                </div>
                <button
                    type="button" class="button"
                    onclick={move |_| act.emit(Action::Edit(Edit::Take(Box::new(build.clone()))))}
                >
                    { ctx.text("ui-try-remedy") }
                </button>
            </>
        }
    };
    html! {
        <section class="remedies" aria-label={ctx.text("ui-remedies")}>
            <h2>{ ctx.text("ui-remedies") }</h2>
            <ul>
                for (at, remedy) in found.iter().take(shown).enumerate() {
                    <li key={at} class="remedy">{ card(remedy) }</li>
                }
            </ul>
            if found.len() > shown {
                <button type="button" class="button bare" onclick={move |_| all.set(true)}>
                    { ctx.text_with("ui-remedies-more", &[("count", (found.len() - shown).into())]) }
                </button>
            }
        </section>
    }
}
