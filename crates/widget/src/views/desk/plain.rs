//! Enters what is no length: a number that is read off, or whether something is there.

use fitup_view::{Entry, Kind, Now};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::ctx::{Ctx, use_ctx};
use crate::focus;

#[derive(Properties, PartialEq)]
pub struct NumberEntryProps {
    /// What is read.
    pub now: Now,
    /// How much was entered so far.
    pub taken: usize,
    /// Takes what is found.
    pub enter: Callback<Entry>,
}

/// A form for part numbers, a serial number or a count.
#[component]
pub fn NumberEntry(props: &NumberEntryProps) -> Html {
    let ctx = use_ctx();
    let (typed, by) = (use_node_ref(), use_node_ref());
    {
        let inputs = [typed.clone(), by.clone()];
        use_effect_with((props.now.key, props.taken), move |_| {
            let inputs = inputs.iter().filter_map(NodeRef::cast::<HtmlInputElement>);
            inputs.for_each(|input| input.set_value(""));
        });
    }
    let is_parts = props.now.kind == Kind::Numbers;
    let submitted = {
        let (typed, by, enter) = (typed.clone(), by.clone(), props.enter.clone());
        move |event: SubmitEvent| {
            event.prevent_default();
            let written = |input: &NodeRef| input.cast::<HtmlInputElement>().map(|it| it.value()).unwrap_or_default();
            let typed = written(&typed);
            enter.emit(if is_parts { Entry::Numbers { typed, by: written(&by) } } else { Entry::Number(typed) });
        }
    };
    html! {
        <form class="desk-form" onsubmit={submitted}>
            <input
                class="entry" id="desk-entry" ref={typed} autocomplete="off" maxlength="200"
                inputmode={if is_parts { "text" } else { "numeric" }} aria-label={props.now.name.clone()}
            />
            if is_parts {
                <details class="desk-more">
                    <summary>{ ctx.text("ui-read-by") }</summary>
                    <input
                        class="entry" ref={by} autocomplete="off" maxlength="60" aria-label={ctx.text("ui-read-by")}
                    />
                </details>
            }
            <div class="actions">
                <button type="submit" class="button firm">{ ctx.text("ui-measure-enter") }</button>
            </div>
        </form>
    }
}

/// Two buttons: it is there, or it is not.
pub fn presence(ctx: &Ctx, enter: &Callback<Entry>) -> Html {
    let button = |is_there: bool, key: &str| {
        let enter = enter.clone();
        let onclick = move |event: MouseEvent| {
            focus::go_on_at(&event, "desk");
            enter.emit(Entry::Presence(is_there));
        };
        html! { <button type="button" class="button" {onclick}>{ ctx.text(key) }</button> }
    };
    html! { <div class="desk-presence">{ button(true, "ui-there") }{ button(false, "ui-not-there") }</div> }
}
