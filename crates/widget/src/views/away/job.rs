//! What is written to the build, and the builds kept beside it.

use std::rc::Rc;

use fitup_view::Edit;
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

use crate::ctx::Ctx;
use crate::focus;
use crate::state::{Action, Kept, Memo};

/// Name, place, notes, other builds. What is entered is one step back.
pub fn job(ctx: &Ctx, memo: &Rc<Memo>) -> Html {
    let write = |set: fn(&mut Memo, String)| {
        let (act, memo) = (ctx.act.clone(), Rc::clone(memo));
        move |typed: String| {
            let mut memo = (*memo).clone();
            set(&mut memo, typed);
            act.emit(Action::Write(memo));
        }
    };
    let line = |key: &str, value: &str, set: fn(&mut Memo, String)| {
        let write = write(set);
        let entered =
            move |event: Event| event.target_dyn_into::<HtmlInputElement>().iter().for_each(|it| write(it.value()));
        html! {
            <label>
                <span>{ ctx.text(key) }</span>
                <input class="entry" value={value.to_owned()} maxlength="200" autocomplete="off" onchange={entered} />
            </label>
        }
    };
    let write_notes = write(|memo, typed| memo.notes = typed);
    let noted = move |event: Event| {
        event.target_dyn_into::<HtmlTextAreaElement>().iter().for_each(|it| write_notes(it.value()));
    };
    html! {
        <fieldset class="away-job">
            <legend>{ ctx.text("ui-job") }</legend>
            { line("ui-job-name", &memo.name, |memo, typed| memo.name = typed) }
            { line("ui-job-place", &memo.place, |memo, typed| memo.place = typed) }
            <label class="away-notes">
                <span>{ ctx.text("ui-job-notes") }</span>
                <textarea class="entry" rows="3" maxlength="5000" value={memo.notes.clone()} onchange={noted} />
            </label>
            { kept(ctx, &memo.kept) }
        </fieldset>
    }
}

/// The builds kept beside the one at hand, each to be opened or taken out.
fn kept(ctx: &Ctx, all: &[Kept]) -> Html {
    let keep = ctx.act.reform(|_: MouseEvent| Action::KeepBuild);
    let row = |at: usize, kept: &Kept| {
        let link = kept.build.to_string();
        let out = {
            let act = ctx.act.clone();
            move |event: MouseEvent| {
                focus::go_on_at(&event, "away-kept");
                act.emit(Action::DropBuild(at));
            }
        };
        html! {
            <li key={link.clone()}>
                <button type="button" class="button bare" onclick={ctx.on(move || Edit::Take(link.clone()))}>
                    { kept.title.clone() }
                </button>
                <button
                    type="button" class="button bare" onclick={out}
                    aria-label={format!("{}: {}", ctx.text("ui-take-out"), kept.title)}
                >
                    { ctx.text("ui-take-out") }
                </button>
            </li>
        }
    };
    html! {
        <div class="away-kept" id="away-kept" tabindex="-1">
            if !all.is_empty() {
                <p class="small soft">{ ctx.text("ui-job-kept") }</p>
                <ul>
                    for (at, one) in all.iter().enumerate() {
                        { row(at, one) }
                    }
                </ul>
            }
            <button type="button" class="button" onclick={keep}>{ ctx.text("ui-job-keep") }</button>
        </div>
    }
}
