//! The bar over the sheet: name, undo and redo, units, settings.

use fitup_view::Units;
use yew::prelude::*;

use super::icon::{Glyph, icon_button};
use super::settings::Settings;
use crate::ctx::Ctx;
use crate::state::{Action, Session};

/// The bar.
pub fn bar(ctx: &Ctx, session: &Session) -> Html {
    let units = ctx.reader.units;
    let step = |glyph: Glyph, key: &str, action: Action, can: bool| {
        let act = ctx.act.clone();
        let onclick = Callback::from(move |_| act.emit(action.clone()));
        icon_button(glyph, ctx.text(key), ctx.text(key), can, onclick)
    };
    let unit = |choice: Units, shown: &'static str, key: &str| {
        let act = ctx.act.clone();
        html! {
            <button
                type="button" aria-pressed={(units == choice).to_string()}
                onclick={move |_| act.emit(Action::MeasureIn(choice))}
            >
                <span aria-hidden="true">{ shown }</span>
                <span class="unseen">{ ctx.text(key) }</span>
            </button>
        }
    };
    html! {
        <header class="bar">
            <h1 class="bar-name">{ "Fit-up" }</h1>
            <p class="bar-catalogue">{ session.sheet.as_ref().map(|sheet| sheet.catalogue.clone()) }</p>
            <div class="bar-tools">
                { step(Glyph::Undo, "ui-undo", Action::Undo, session.history.can_undo()) }
                { step(Glyph::Redo, "ui-redo", Action::Redo, session.history.can_redo()) }
                <div class="switch" role="group" aria-label={ctx.text("ui-units")}>
                    { unit(Units::Metric, "mm", "ui-units-metric") }
                    { unit(Units::Us, "in", "ui-units-us") }
                </div>
                { away(ctx, session) }
                <Settings />
            </div>
        </header>
    }
}

/// The way to what is taken along, once there is something to take.
fn away(ctx: &Ctx, session: &Session) -> Html {
    let can = !session.history.present().is_empty();
    let open = ctx.act.reform(|_: MouseEvent| Action::TakeAway(true));
    icon_button(Glyph::Away, ctx.text("ui-take-away"), ctx.text("ui-take-away"), can, open)
}
