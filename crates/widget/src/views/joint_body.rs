//! A joint opened: part numbers on both sides, hole patterns, margin, measurements.

use fitup_view::{Joint, Side};
use yew::prelude::*;

use super::desk::desk;
use super::icon::{Glyph, icon};
use super::overlay::overlay;
use crate::ctx::Ctx;
use crate::state::Session;

/// The joint's two sides and what is known of them.
pub fn joint_body(ctx: &Ctx, session: &Session, joint: &Joint) -> Html {
    let side = |side: &Side| {
        html! {
            <div class="side">
                <h4><span class="side-kind">{ side.kind.clone() }</span>{ side.label.clone() }</h4>
                if side.parts.is_empty() {
                    <p class="soft">{ ctx.text("ui-no-part-number") }</p>
                } else {
                    <p class="part-number">{ side.parts.join(", ") }</p>
                }
                <p class="small soft">{ side.port.clone() }</p>
            </div>
        }
    };
    html! {
        <>
            <div class="sides" role="group" aria-label={ctx.text("ui-part-numbers")}>
                { side(&joint.sides[0]) }
                { side(&joint.sides[1]) }
            </div>
            { joint.overlay.as_ref().map(|picture| overlay(ctx, picture)) }
            if let Some(of_joint) = &joint.desk {
                <div class="measure">
                    <h4>{ icon(Glyph::Caliper) }{ ctx.text("ui-measure") }</h4>
                    { desk(ctx, session, of_joint, 5) }
                </div>
            }
        </>
    }
}
