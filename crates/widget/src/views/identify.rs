//! Which unit it could be: what connects it, what was found on it, and the candidates.

use fitup_view::{Candidate, Edit, Entry, Identify, Taken};
use yew::prelude::*;

use super::desk::{heading, laid_out};
use super::select::{Choice, select};
use crate::ctx::{Ctx, svg};
use crate::focus;
use crate::state::{Action, Session};

/// The view.
pub fn identify(ctx: &Ctx, session: &Session, view: &Identify) -> Html {
    let kinds = view.kinds.iter().map(|(word, called)| Choice {
        value: word.clone(),
        shown: called.clone(),
        lang: None,
        chosen: *word == view.kind,
    });
    let connects = ctx.act.reform(|word: String| Action::Connects((!word.is_empty()).then_some(word)));
    let enter = view.desk.now.as_ref().map(|now| {
        let (at, kind) = (now.at.clone(), now.kind);
        ctx.act.reform(move |found: Entry| Action::Observe(at.clone(), kind, found))
    });
    let forget = ctx.act.reform(|taken: Taken| Action::Unobserve(taken.at, taken.kind));
    html! {
        <div class="identify" key="identify">
            <div class="identify-head">
                <p>{ ctx.text("ui-identify-says") }</p>
                <label class="choose">
                    <span>{ ctx.text("ui-identify-kind") }</span>
                    { select(None, kinds.collect(), connects) }
                </label>
            </div>
            { laid_out(ctx, session, &view.desk, 2, enter, &forget, candidates(ctx, view)) }
        </div>
    }
}

fn candidates(ctx: &Ctx, view: &Identify) -> Html {
    html! {
        <section class="desk-list" aria-live="polite">
            { heading(2, ctx.text("ui-candidates")) }
            <ul class="candidates">
                for candidate in &view.candidates {
                    <li key={format!("{}/{}", candidate.item, candidate.port)} class="candidate">
                        { shown(ctx, candidate) }
                    </li>
                }
            </ul>
            { view.says.clone().map(|says| html! { <p class="soft">{ says }</p> }) }
            if !view.next.is_empty() {
                <div class="candidates-next">
                    { heading(2, ctx.text("ui-look-next")) }
                    for (at, next) in view.next.iter().enumerate() {
                        <p key={at}>{ next.clone() }</p>
                    }
                </div>
            }
        </section>
    }
}

fn shown(ctx: &Ctx, candidate: &Candidate) -> Html {
    let take = candidate.step.map(|_| {
        let (act, item, port) = (ctx.act.clone(), candidate.item.clone(), candidate.port.clone());
        move |event: MouseEvent| {
            // The view goes with the unit that was looked for.
            focus::go_on_at(&event, "details");
            act.emit(Action::Recognise(Edit::Recognise { item: item.clone(), port: port.clone() }));
        }
    });
    html! {
        <>
            <div class="card-shape" aria-hidden="true">{ svg(&candidate.shape) }</div>
            <div>
                <p class="candidate-name">{ candidate.name.clone() }</p>
                for (at, says) in candidate.says.iter().enumerate() {
                    <p key={at} class="small soft">{ says.clone() }</p>
                }
            </div>
            if let Some(take) = take {
                <button type="button" class="button" onclick={take}>
                    { ctx.text("ui-this-is-it") }
                    <span class="unseen">{ ": " }{ candidate.name.clone() }</span>
                </button>
            }
        </>
    }
}
