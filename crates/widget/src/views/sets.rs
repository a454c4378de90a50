//! The best complete sets: what is kept, what they are ordered by, and the sets.

use fitup_view::{Edit, SetOrder, SetShown, Sets};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::select::{Choice, select};
use super::verdict::verdict_word;
use crate::ctx::Ctx;
use crate::focus;
use crate::state::{Action, Session};

/// The view.
pub fn sets(ctx: &Ctx, session: &Session, view: &Sets) -> Html {
    let orders = view.orders.iter().map(|(order, shown)| Choice {
        value: order.name().to_owned(),
        shown: shown.clone(),
        lang: None,
        chosen: *order == session.look.set_order,
    });
    let by = ctx.act.reform(|word: String| Action::SetsBy(SetOrder::named(&word).unwrap_or_default()));
    html! {
        <div class="sets" key="sets" id="sets" tabindex="-1">
            <div class="sets-tools">
                if !view.kept.is_empty() {
                    <fieldset class="sets-kept">
                        <legend>{ ctx.text("ui-sets-keep") }</legend>
                        for kept in &view.kept {
                            { keep(ctx, kept) }
                        }
                    </fieldset>
                }
                <label class="choose">
                    <span>{ ctx.text("ui-sort") }</span>
                    { select(None, orders.collect(), by) }
                </label>
            </div>
            <p class="sets-says soft" role="status">
                { view.says.clone().unwrap_or_else(|| ctx.text("ui-sets-wait")) }
            </p>
            <ol class="sets-list">
                for set in view.found.iter().flatten() {
                    <li key={set.build.clone()} class="set">{ one(ctx, session, set) }</li>
                }
            </ol>
        </div>
    }
}

fn keep(ctx: &Ctx, (step, label, is_kept): &(fitup_view::Step, String, bool)) -> Html {
    let (act, step) = (ctx.act.clone(), *step);
    let changed = move |event: Event| {
        if let Some(tick) = event.target_dyn_into::<HtmlInputElement>() {
            act.emit(Action::Keep(step, tick.checked()));
        }
    };
    html! {
        <label class="tick" key={step.name()}>
            <input type="checkbox" checked={*is_kept} onchange={changed} />
            <span>{ label.clone() }</span>
        </label>
    }
}

fn one(ctx: &Ctx, session: &Session, set: &SetShown) -> Html {
    let is_here = *set.build == **session.history.present();
    let named = html! { <span class="unseen">{ ": " }{ set.name.clone() }</span> };
    let take = {
        let (act, build) = (ctx.act.clone(), set.build.clone());
        move |event: MouseEvent| {
            focus::go_on_at(&event, "sets");
            act.emit(Action::Edit(Edit::Take(build.clone())));
        }
    };
    let pin = {
        let build = set.build.clone();
        ctx.act.reform(move |_: MouseEvent| Action::PinLink(build.clone()))
    };
    let can_pin = session.can_pin_link(&set.build) && !is_here;
    html! {
        <>
            <p class="set-head">
                { verdict_word(Some(set.verdict), set.word.clone()) }
                { set.unbeaten.clone().map(|says| html! { <span class="set-mark">{ says }</span> }) }
            </p>
            <p class="set-name">{ set.name.clone() }</p>
            <dl class="set-measures">
                for (name, value) in &set.measures {
                    <div key={name.clone()}><dt>{ name.clone() }</dt><dd>{ value.clone() }</dd></div>
                }
            </dl>
            <p class="actions">
                <button type="button" class="button" disabled={is_here} onclick={take}>
                    { ctx.text("ui-sets-take") }{ named.clone() }
                </button>
                <button type="button" class="button bare" disabled={!can_pin} onclick={pin}>
                    { ctx.text("ui-sets-compare") }{ named }
                </button>
            </p>
        </>
    }
}
