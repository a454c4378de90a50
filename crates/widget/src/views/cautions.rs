//! The cautions that go with the answer.

use fitup_view::Sheet;
use yew::prelude::*;

use crate::ctx::Ctx;

/// The cautions of the answer, the planning aid first, and the catalogue's own notice.
pub fn cautions(ctx: &Ctx, sheet: &Sheet) -> Html {
    html! {
        <footer class="cautions">
            <h2>{ ctx.text("ui-cautions") }</h2>
            <dl>
                for caution in &sheet.cautions {
                    <div key={caution.title.clone()}>
                        <dt>{ caution.title.clone() }</dt>
                        <dd>{ caution.body.clone() }</dd>
                    </div>
                }
            </dl>
            if !sheet.own_notice.is_empty() {
                <p>{ sheet.own_notice.clone() }</p>
            }
        </footer>
    }
}
