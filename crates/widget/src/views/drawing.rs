//! The drawing of the build, to scale.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::same::Same;
use crate::state::DrawingView;

#[derive(Properties, PartialEq)]
pub struct DrawingProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
    /// How the machine is looked at.
    pub drawing: DrawingView,
}

/// The drawing, or what to do to get one.
#[component]
pub fn Drawing(props: &DrawingProps) -> Html {
    let ctx = use_ctx();
    if props.answer.stack.placed.is_empty() {
        return html! {
            <div class="drawing" id="drawing"><p class="drawing-none">{ ctx.text("ui-drawing-none") }</p></div>
        };
    }
    html! { <div class="drawing" id="drawing"></div> }
}
