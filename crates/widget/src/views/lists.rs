//! Two parts lists beside each other: where they come from, and what they come to.

use fitup_view::{Assembly, ListFrom, Lists, Mode};
use wasm_bindgen_futures::JsFuture;
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::platform::spawn_local;
use yew::prelude::*;

use super::select::{Choice, select};
use crate::ctx::Ctx;
use crate::state::{Action, Notice, Session};

/// The largest file that is read, bytes: many times a list of the most lines that are compared.
const LARGEST: f64 = 4e6;

/// The view.
pub fn lists(ctx: &Ctx, session: &Session, view: &Lists) -> Html {
    html! {
        <div class="lists" key="lists">
            <div class="lists-from">
                for (at, from) in session.look.lists.iter().enumerate() {
                    { side(ctx, view, at, from) }
                }
            </div>
            <section aria-live="polite">
                { view.says.clone().map(|says| html! { <p class="soft">{ says }</p> }) }
                <ul class="assemblies">
                    for one in &view.assemblies {
                        <li key={one.says.clone()} class={classes!("assembly", (!one.is_same).then_some("differs"))}>
                            { assembly(one) }
                        </li>
                    }
                </ul>
            </section>
        </div>
    }
}

/// One of the two lists.
fn side(ctx: &Ctx, view: &Lists, at: usize, from: &ListFrom) -> Html {
    let name = ctx.text(["ui-lists-first", "ui-lists-second"][at]);
    let own = Choice {
        value: String::new(),
        shown: ctx.text(if ctx.mode == Mode::Kiosk { "ui-lists-choose" } else { "ui-lists-own" }),
        lang: None,
        chosen: from.item.is_empty(),
    };
    let listed = view.items.iter().map(|(id, label)| Choice {
        value: id.clone(),
        shown: label.clone(),
        lang: None,
        chosen: *id == from.item,
    });
    let text = from.text.clone();
    let pick = ctx.act.reform(move |item: String| Action::List(at, ListFrom { item, text: text.clone() }));
    let (read, faults) = view.read.get(at).cloned().unwrap_or_default();
    html! {
        <fieldset class="lists-side" key={at}>
            <legend>{ name.clone() }</legend>
            { select(Some(name.clone()), std::iter::once(own).chain(listed).collect(), pick) }
            if from.item.is_empty() && ctx.mode != Mode::Kiosk {
                { typed(ctx, at, &name, from) }
            }
            { read.map(|read| html! { <p class="small soft">{ read }</p> }) }
            for (at, fault) in faults.into_iter().enumerate() {
                <p key={at} class="small lists-fault">{ fault }</p>
            }
        </fieldset>
    }
}

/// A list that is typed, pasted or opened.
fn typed(ctx: &Ctx, at: usize, name: &str, from: &ListFrom) -> Html {
    let type_in = {
        let ctx = ctx.clone();
        move |event: InputEvent| {
            if let Some(area) = event.target_dyn_into::<HtmlTextAreaElement>() {
                ctx.act(Action::List(at, text(area.value())));
            }
        }
    };
    html! {
        <>
            <textarea
                class="entry" rows="6" spellcheck="false" aria-label={name.to_owned()} value={from.text.clone()}
                placeholder={ctx.text("ui-lists-paste")} oninput={type_in}
            />
            <label class="button bare lists-file">
                <input class="unseen" type="file" accept=".csv,.txt,text/csv,text/plain" onchange={opened(ctx, at)} />
                { ctx.text("ui-lists-file") }<span class="unseen">{ ": " }{ name.to_owned() }</span>
            </label>
        </>
    }
}

const fn text(text: String) -> ListFrom {
    ListFrom { item: String::new(), text }
}

/// Takes in the file that was chosen.
fn opened(ctx: &Ctx, at: usize) -> Callback<Event> {
    let ctx = ctx.clone();
    Callback::from(move |event: Event| {
        let Some(input) = event.target_dyn_into::<HtmlInputElement>() else { return };
        let file = input.files().and_then(|files| files.get(0));
        // The same file chosen once more is to be read once more.
        input.set_value("");
        let ctx = ctx.clone();
        spawn_local(async move {
            let Some(file) = file else { return };
            let is_small = file.size() <= LARGEST;
            let read =
                if is_small { JsFuture::from(file.text()).await.ok().and_then(|read| read.as_string()) } else { None };
            ctx.act(read.map_or(Action::Tell(Some(Notice::NoList)), |read| Action::List(at, text(read))));
        });
    })
}

fn assembly(one: &Assembly) -> Html {
    html! {
        <>
            <p class="assembly-says">{ one.says.clone() }</p>
            { one.follows.clone().map(|says| html! { <p>{ says }</p> }) }
            if !one.lines.is_empty() {
                <ul class="small">
                    for (at, line) in one.lines.iter().enumerate() {
                        <li key={at}>{ line.clone() }</li>
                    }
                </ul>
            }
        </>
    }
}
