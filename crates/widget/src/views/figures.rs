//! The footprint's figures with their change against the bare machine.

use fitup_view::Sheet;
use yew::prelude::*;

use crate::ctx::Ctx;

/// The figures of an answer.
pub fn figures(ctx: &Ctx, sheet: &Sheet) -> Html {
    html! {
        <dl class="figures" aria-label={ctx.text("ui-footprint")}>
            for figure in &sheet.figures {
                <div key={figure.name.clone()}>
                    <dt>{ ctx.text(&format!("ui-short-{}", figure.name)) }</dt>
                    <dd>
                        { figure.value.clone().unwrap_or_else(|| "–".to_owned()) }
                        <span class="change">{ figure.change.clone() }</span>
                    </dd>
                </div>
            }
        </dl>
    }
}
