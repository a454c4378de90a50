//! The two hole patterns of a joint laid over each other.

use fitup_view::Picture;
use yew::prelude::*;

use super::room_box::RoomBox;
use crate::ctx::Ctx;
use crate::state::Action;

/// The picture.
pub fn overlay(ctx: &Ctx, picture: &Picture) -> Html {
    html! {
        <figure class="overlay">
            <RoomBox class="overlay-box" svg={picture.svg.clone()} told={ctx.act.reform(Action::Overlay)} />
            <figcaption>{ ctx.text("ui-hole-patterns") }</figcaption>
        </figure>
    }
}
