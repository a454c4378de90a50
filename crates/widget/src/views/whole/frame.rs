//! What every view of the whole machine looks like: its drawing, its controls, its figures.

use yew::prelude::*;

use super::facts::{Figure, facts};
use crate::ctx::Ctx;

/// A view in parts.
pub struct Frame {
    /// The drawing, once there is room for it.
    pub drawn: Option<Html>,
    /// Whether the drawing is as high as it is wide.
    pub tall: bool,
    /// What can be moved.
    pub controls: Html,
    /// What comes of it.
    pub figures: Vec<Figure>,
    /// A caution below.
    pub aside: Option<String>,
}

/// The view; `node` is the drawing's box.
pub fn frame(node: &NodeRef, view: Frame) -> Html {
    html! {
        <div class="whole">
            <div class={if view.tall { "drawing-box tall" } else { "drawing-box" }} ref={node.clone()}>{ view.drawn }</div>
            <div class="controls">{ view.controls }</div>
            { facts(view.figures) }
            { view.aside.map(|said| html! { <p class="aside small soft">{ said }</p> }) }
        </div>
    }
}

/// The view while there is nothing to draw: what is missing, and what can be chosen.
pub fn bare(ctx: &Ctx, node: &NodeRef, missing: &str, controls: Option<Html>) -> Html {
    html! {
        <div class="whole">
            <div class="drawing-box" ref={node.clone()}><p class="drawing-none">{ ctx.text(missing) }</p></div>
            { controls.map(|controls| html! { <div class="controls">{ controls }</div> }) }
        </div>
    }
}
