//! There is no engine: why, and what can be done.

use yew::prelude::*;

use crate::ctx::Ctx;
use crate::state::{Action, EngineTrouble};

/// What has happened, where the build is kept, and a button that begins again.
pub fn engine_state(ctx: &Ctx, trouble: EngineTrouble, has_sheet: bool) -> Html {
    let again = ctx.act.reform(|_: MouseEvent| Action::Retry);
    let address = web_sys::window().and_then(|window| window.location().href().ok()).unwrap_or_default();
    html! {
        <div class="trouble" role="alert">
            <h2>{ ctx.text(trouble.key()) }</h2>
            if has_sheet {
                <p>{ ctx.text("ui-engine-kept") }</p>
            }
            <p class="address"><a href={address.clone()}>{ address.clone() }</a></p>
            <button type="button" class="button" onclick={again}>{ ctx.text("ui-try-again") }</button>
        </div>
    }
}
