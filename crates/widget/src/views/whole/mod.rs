//! A view of the finished machine as a whole: its drawing, its controls, its figures.

mod choose;
mod facts;
mod slider;
pub mod switch;

use fitup_view::Whole;
use yew::prelude::*;

use super::drawing::DrawingBox;
use super::verdict::verdict_word;
use crate::ctx::Ctx;
use crate::state::{Action, Session};
use choose::choose;
use facts::facts;
use slider::slider;
use switch::switch;

/// The view.
pub fn whole(ctx: &Ctx, session: &Session, view: &Whole) -> Html {
    let way = ctx.act.reform(Action::Way);
    let has_controls = view.chooser.is_some() || !view.sliders.is_empty();
    html! {
        <div class="whole" key="whole">
            if let Some((verdict, word, line)) = view.answer.clone() {
                <p class="whole-answer">{ verdict_word(Some(verdict), word) }<span>{ line }</span></p>
            }
            <DrawingBox picture={view.picture.clone()} tall={view.tall} />
            if has_controls || !view.facts.is_empty() {
                <div class="controls">
                    { view.chooser.as_ref().map(|of| choose(ctx, of)) }
                    for of in &view.switches {
                        { switch(of.name.clone(), of.ways.clone(), of.taken, &way) }
                    }
                    for of in &view.sliders {
                        { slider(ctx, of, session.held(of.sets)) }
                    }
                </div>
            }
            if !view.facts.is_empty() {
                { facts(&view.facts) }
            }
            { view.aside.clone().map(|said| html! { <p class="aside small soft">{ said }</p> }) }
        </div>
    }
}
