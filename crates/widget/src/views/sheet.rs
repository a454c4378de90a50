//! The sheet: drawing field, item list with title block, details.

use fitup_view::{Headline, Sheet, Theme, View};
use yew::prelude::*;

use super::bar::bar;
use super::cautions::cautions;
use super::details::details;
use super::engine_state::engine_state;
use super::field::field;
use super::first::first;
use super::glance::glance;
use super::live::live;
use super::notices::{copy_notice, notice, update_notice};
use super::parts::parts;
use super::steps::steps;
use super::supply::SupplyState;
use super::title::title;
use crate::ctx::Ctx;
use crate::state::Session;

/// The whole sheet; until the engine has said something, what can be said without it. `retry` loads the catalogue again, `update`
/// takes the new version that is ready; `over` lies over everything.
pub fn sheet(ctx: &Ctx, session: &Session, retry: &Callback<()>, update: Option<&Callback<()>>, over: Html) -> Html {
    let theme = (ctx.theme != Theme::System).then(|| ctx.theme.name());
    // One text for the title block, the bar and the live region.
    let told = session.headline.as_ref();
    let body = session.sheet.as_ref().filter(|_| session.usable);
    html! {
        <div class="fitup" lang={ctx.reader.lang.name()} data-theme={theme} data-mode={ctx.mode.name()}>
            { bar(ctx, session) }
            <div class="above">
                { session.notice.as_ref().map(|told| notice(ctx, told)) }
                { update.map(|take| update_notice(ctx, take)) }
                { session.kept_copy.as_ref().map(|time| copy_notice(ctx, time, retry)) }
                { session.no_engine.map(|trouble| engine_state(ctx, trouble, body.is_some())) }
                <SupplyState
                    supply={session.supply} trouble={session.trouble.clone()} problems={session.problems.clone()}
                    ready={session.usable} {retry}
                />
            </div>
            <div class="body">
                {
                    match body {
                        Some(sheet) => shown(ctx, session, sheet, told),
                        None => first(ctx, session),
                    }
                }
            </div>
            { live(told) }
            { over }
        </div>
    }
}

/// What the engine has said, on its sheet.
fn shown(ctx: &Ctx, session: &Session, sheet: &Sheet, told: Option<&Headline>) -> Html {
    html! {
        <>
            if sheet.begun {
                { glance(ctx, sheet, told, session.folded) }
            }
            <main class="sheet">
                { field(ctx, session, sheet) }
                <section class="list" aria-label={ctx.text("ui-item-list")}>
                    { steps(ctx, session, sheet) }
                    { title(ctx, sheet, told) }
                </section>
                <section class="details" id="details" tabindex="-1" aria-label={ctx.text("ui-details")}>
                    {
                        match (&sheet.parts, session.view()) {
                            (Some(table), View::Parts) => parts(ctx, table),
                            _ => details(ctx, session, sheet),
                        }
                    }
                </section>
            </main>
            { cautions(ctx, sheet) }
        </>
    }
}
