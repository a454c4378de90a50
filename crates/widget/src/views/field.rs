//! The drawing field: views, drawing, figures.

use fitup_view::{DrawingView, Field, Picture, Sheet, View};
use yew::prelude::*;

use super::compare::compare;
use super::desk::desk;
use super::drawing::DrawingBox;
use super::figures::figures;
use super::first::begin;
use super::identify::identify;
use super::lists::lists;
use super::sets::sets;
use super::tabs::Tabs;
use super::whole::switch::switch;
use super::whole::whole;
use crate::ctx::Ctx;
use crate::state::{Action, Session};

/// The drawing field.
pub fn field(ctx: &Ctx, session: &Session, sheet: &Sheet) -> Html {
    let sides = DrawingView::ALL.iter().map(|&side| (side, ctx.text(&format!("ui-look-{}", side.name()))));
    let look = ctx.act.reform(Action::Look);
    // With nothing chosen there is one thing to look at: what this is for.
    let is_new = !sheet.begun && session.view() == View::Fit;
    html! {
        <>
            <section
                class="field" id="drawing" tabindex="-1" aria-label={ctx.text("ui-drawing")} data-folded={session.folded.to_string()}
            >
                if is_new {
                    { begin(ctx, session) }
                } else {
                    <div class="views">
                        <Tabs shown={session.view()} />
                        if matches!(session.view(), View::Fit | View::Parts) {
                            { switch(ctx.text("ui-look-from"), sides, session.drawing(), &look) }
                        }
                    </div>
                }
                {
                    match &sheet.field {
                        Field::Drawing(picture) if is_new => {
                            let picture = Picture { missing: None, ..picture.clone() };
                            html! { <DrawingBox key="drawing" {picture} /> }
                        }
                        Field::Drawing(picture) => html! { <DrawingBox key="drawing" picture={picture.clone()} /> },
                        Field::Sets(view) => sets(ctx, session, view),
                        Field::Compare(view) => compare(ctx, session, view),
                        Field::Lists(view) => lists(ctx, session, view),
                        Field::Identify(view) => identify(ctx, session, view),
                        Field::Desk(of_build) => html! { <div key="desk">{ desk(ctx, session, of_build, 2) }</div> },
                        Field::Whole(view) => whole(ctx, session, view),
                    }
                }
            </section>
            if sheet.begun {
                { figures(ctx, sheet) }
            }
        </>
    }
}
