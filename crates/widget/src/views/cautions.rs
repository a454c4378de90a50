//! The cautions that go with the answer.

use fitup_core::fit::Answer;
use yew::prelude::*;

use crate::ctx::Ctx;

/// The cautions of the answer, the planning aid first.
pub fn cautions(ctx: &Ctx, answer: &Answer) -> Html {
    let notice = &ctx.catalogue().name.notice;
    html! {
        <footer class="cautions">
            <h2>{ ctx.text("ui-cautions") }</h2>
            <dl>
                for &caution in &answer.cautions {
                    <div key={format!("{caution:?}")}>
                        <dt>{ ctx.words.caution_title(caution) }</dt>
                        <dd>{ ctx.words.caution(caution) }</dd>
                    </div>
                }
            </dl>
            if !notice.is_empty() {
                <p>{ notice.clone() }</p>
            }
        </footer>
    }
}
