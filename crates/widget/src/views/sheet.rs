//! The sheet: drawing field, item list with title block, details.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::bar::bar;
use super::cautions::cautions;
use super::details::details;
use super::field::field;
use super::glance::glance;
use super::live::live;
use super::notices::notice;
use super::parts::parts;
use super::steps::steps;
use super::supply::SupplyState;
use super::title::title;
use crate::ctx::Ctx;
use crate::same::Same;
use crate::state::{Session, Theme, View};

/// The whole sheet: what each option leads to comes once that is worked out; `retry` loads the
/// catalogue again.
pub fn sheet(
    ctx: &Ctx,
    session: &Session,
    build: &Same<Build>,
    answer: &Same<Answer>,
    reach: Option<&Same<Reachable>>,
    retry: &Callback<()>,
) -> Html {
    let theme = (session.theme != Theme::System).then(|| session.theme.name());
    let ready = session.desk.is_some();
    let begun = **build != Build::default();
    html! {
        <div class="fitup" lang={ctx.words.reader().lang.tag()} data-theme={theme} data-mode={ctx.mode.name()}>
            { bar(ctx, session) }
            { session.notice.as_ref().map(|told| notice(ctx, told)) }
            <SupplyState supply={session.supply} trouble={session.trouble.clone()} {ready} {retry} />
            if ready {
                { glance(ctx, answer, begun, session.folded) }
                <main class="sheet">
                    { field(ctx, session, answer, build, reach) }
                    <section class="list" aria-label={ctx.text("ui-item-list")}>
                        { steps(ctx, session, build, reach) }
                        { title(ctx, answer, begun) }
                    </section>
                    <section class="details" id="details" aria-label={ctx.text("ui-details")}>
                        {
                            match session.view {
                                View::Parts => parts(ctx, answer),
                                _ => details(ctx, answer, build, session.opened),
                            }
                        }
                    </section>
                </main>
                { cautions(ctx, answer) }
            }
            { live(ctx, answer, begun) }
        </div>
    }
}
