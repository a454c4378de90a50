//! Asks whether somebody is still there, before everything is cleared for the next visitor.

use yew::prelude::*;

use crate::ctx::use_ctx;

#[derive(Properties, PartialEq)]
pub struct IdleProps {
    /// Somebody is there.
    pub stay: Callback<()>,
}

/// Covers the sheet; a touch anywhere goes on.
#[component]
pub fn Idle(props: &IdleProps) -> Html {
    let ctx = use_ctx();
    let button = use_node_ref();
    use_effect_with(button.clone(), |button| {
        if let Some(button) = button.cast::<web_sys::HtmlElement>() {
            let _ = button.focus();
        }
    });
    let stay = props.stay.reform(|_: PointerEvent| ());
    let pressed = props.stay.reform(|_: MouseEvent| ());
    html! {
        <div class="idle" role="alertdialog" aria-modal="true" aria-labelledby="idle" aria-describedby="idle-says" onpointerdown={stay}>
            <div class="idle-card">
                <h2 id="idle">{ ctx.text("ui-idle") }</h2>
                <p id="idle-says">{ ctx.text("ui-idle-says") }</p>
                <div class="idle-left" aria-hidden="true"><div></div></div>
                <button type="button" class="button firm" ref={button} onclick={pressed}>{ ctx.text("ui-idle-stay") }</button>
            </div>
        </div>
    }
}
