//! A joint opened: part numbers on both sides, hole patterns, margin, measurements.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_core::item::ItemRef;
use yew::prelude::*;

use super::measure::Measure;
use super::overlay::OverlayPicture;
use crate::ctx::Ctx;
use crate::same::Same;

/// The joint's two sides and what is known of them.
pub fn joint_body(ctx: &Ctx, index: usize, answer: &Same<Answer>, build: &Same<Build>) -> Html {
    let Some(joint) = answer.joints.get(index) else { return Html::default() };
    let side = |item: ItemRef, port: &str, parts: &[String]| {
        html! {
            <div class="side">
                <h4><span class="side-kind">{ ctx.words.kind(item) }</span>{ ctx.label(item) }</h4>
                if parts.is_empty() {
                    <p class="soft">{ ctx.text("ui-no-part-number") }</p>
                } else {
                    <p class="part-number">{ parts.join(", ") }</p>
                }
                <p class="small soft">{ port.to_owned() }</p>
            </div>
        }
    };
    html! {
        <>
            <div class="sides" role="group" aria-label={ctx.text("ui-part-numbers")}>
                { side(joint.carrier.0, &joint.carrier.1, &joint.carrier_parts) }
                { side(joint.carried.0, &joint.carried.1, &joint.carried_parts) }
            </div>
            if joint.overlay.is_some() {
                <OverlayPicture joint={index} answer={answer.clone()} />
            }
            <Measure
                sides={vec![joint.carrier.clone(), joint.carried.clone()]} build={build.clone()}
            />
        </>
    }
}
