//! The two hole patterns of a joint laid over each other.

use fitup_core::fit::Answer;
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::same::Same;

#[derive(Properties, PartialEq)]
pub struct OverlayPictureProps {
    /// Which joint of the answer.
    pub joint: usize,
    /// The answer.
    pub answer: Same<Answer>,
}

/// The picture.
#[component]
pub fn OverlayPicture(props: &OverlayPictureProps) -> Html {
    let ctx = use_ctx();
    let Some(_overlay) = props.answer.joints.get(props.joint).and_then(|joint| joint.overlay.as_ref()) else {
        return Html::default();
    };
    html! { <figure class="overlay"><figcaption>{ ctx.text("ui-hole-patterns") }</figcaption></figure> }
}
