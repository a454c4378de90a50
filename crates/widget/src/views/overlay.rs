//! The two hole patterns of a joint laid over each other.

use fitup_core::fit::Answer;
use fitup_drawing::{Sheet, holes};
use yew::prelude::*;

use crate::ctx::use_ctx;
use crate::hooks::use_room;
use crate::picture::{self, Lettering, PIXELS_PER_MM};
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
    let node = use_node_ref();
    let room = use_room(&node);
    let title = ctx.text("ui-hole-patterns");
    let overlay = props.answer.joints.get(props.joint).and_then(|joint| joint.overlay.as_ref());
    let drawn = overlay.zip(room).map(|(overlay, (width, height))| {
        let lettering = Lettering(&ctx.words);
        let sheet = Sheet::new(f64::from(width) / PIXELS_PER_MM, f64::from(height) / PIXELS_PER_MM, &lettering);
        picture::svg(&holes(overlay, &sheet), &title)
    });
    html! {
        <figure class="overlay">
            <div class="overlay-box" ref={node}>{ drawn }</div>
            <figcaption>{ title }</figcaption>
        </figure>
    }
}
