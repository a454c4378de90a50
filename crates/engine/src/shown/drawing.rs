//! The machine from the side or from above.

use fitup_core::build::Build;
use fitup_core::fit::{Answer, stack};
use fitup_core::search::{Reach, Reachable};
use fitup_drawing::{Subject, plan, side};
use fitup_view::{DrawingView, Look, Picture};

use super::ctx::Ctx;
use super::picture::{Lettering, drawn, sheet_of, titled};

/// The drawing. As long as nothing stands it is what could come of it, in pale lines; the words beside it say so.
pub fn drawing(ctx: Ctx, build: &Build, answer: &Answer, look: &Look, reach: Option<&Reachable>) -> Picture {
    let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
    let draw = match look.drawing {
        DrawingView::Side => side,
        DrawingView::Plan => plan,
    };
    if !answer.stack.placed.is_empty() {
        return drawn(ctx, answer, look.room, |sheet| Some(draw(&subject, Some(answer), None, sheet)));
    }
    let nothing = ctx.text("ui-drawing-none");
    let ghost = look.room.zip(reach.and_then(best)).map(|(room, best)| {
        let stack = stack(ctx.desk, &best.build);
        let lettering = Lettering(ctx.words);
        let ghost = Subject::new(ctx.catalogue(), &best.build, &stack);
        titled(&draw(&subject, None, Some(&ghost), &sheet_of(room, &lettering)), &nothing)
    });
    Picture { missing: Some(nothing.clone()), ..ghost.unwrap_or_default() }
}

/// The best that can be reached from nothing, with a frame if there is one: it shows the most.
fn best(reachable: &Reachable) -> Option<&Reach> {
    let framed = reachable.carrying.iter().skip(1).flatten();
    framed.chain(reachable.machines.iter().flatten()).min_by_key(|reach| reach.verdict)
}
