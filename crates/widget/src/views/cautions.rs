//! The cautions that go with the answer.

use fitup_core::fit::Answer;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::same::Same;

#[derive(Properties, PartialEq)]
pub struct CautionsProps {
    /// The answer.
    pub answer: Same<Answer>,
}

/// The cautions of the answer, the planning aid first.
#[component]
pub fn Cautions(props: &CautionsProps) -> Html {
    let ctx = use_ctx();
    let notice = &ctx.catalogue().name.notice;
    html! {
        <footer class="cautions">
            <h2>{ ctx.text("ui-cautions") }</h2>
            <dl>
                for &caution in &props.answer.cautions {
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
