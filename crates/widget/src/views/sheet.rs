//! The sheet: drawing field, item list with title block, details.

use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_core::search::Reachable;
use yew::prelude::*;

use super::bar::Bar;
use super::cautions::Cautions;
use super::details::Details;
use super::field::Field;
use super::glance::Glance;
use super::live::Live;
use super::notices::notice;
use super::parts::Parts;
use super::steps::Steps;
use super::supply::SupplyState;
use super::title::Title;
use crate::ctx::use_ctx;
use crate::same::Same;
use crate::state::{Session, Theme, View};

#[derive(Properties, PartialEq)]
pub struct SheetProps {
    /// Everything remembered.
    pub session: Same<Session>,
    /// The build at hand.
    pub build: Same<Build>,
    /// What it comes to.
    pub answer: Same<Answer>,
    /// What each option leads to, once that is worked out.
    pub reach: Option<Same<Reachable>>,
    /// Loads the catalogue again.
    pub retry: Callback<()>,
}

/// The whole sheet.
#[component]
pub fn Sheet(props: &SheetProps) -> Html {
    let ctx = use_ctx();
    let SheetProps { session, build, answer, reach, retry } = props;
    let theme = (session.theme != Theme::System).then(|| session.theme.name());
    let ready = session.desk.is_some();
    html! {
        <div class="fitup" lang={ctx.words.reader().lang.tag()} data-theme={theme} data-mode={ctx.mode.name()}>
            <Bar
                can_undo={session.history.can_undo()} can_redo={session.history.can_redo()}
                theme={session.theme} name={AttrValue::from(ctx.catalogue().name.name.clone())}
            />
            { session.notice.as_ref().map(|told| notice(&ctx, told)) }
            <SupplyState supply={session.supply} trouble={session.trouble.clone()} {ready} {retry} />
            if ready {
                <Glance answer={answer.clone()} begun={**build != Build::default()} folded={session.folded} />
                <main class="sheet">
                    <Field
                        answer={answer.clone()} build={build.clone()} view={session.view}
                        drawing={session.drawing} folded={session.folded} reach={reach.clone()}
                    />
                    <section class="list" aria-label={ctx.text("ui-item-list")}>
                        <Steps
                            build={build.clone()} reach={reach.clone()} open={session.step}
                            search={AttrValue::from(session.search.clone())} sort={session.sort}
                        />
                        <Title answer={answer.clone()} begun={**build != Build::default()} />
                    </section>
                    <section class="details" id="details" aria-label={ctx.text("ui-details")}>
                        {
                            match session.view {
                                View::Parts => html! { <Parts answer={answer.clone()} build={build.clone()} /> },
                                _ => html! {
                                    <Details answer={answer.clone()} build={build.clone()} opened={session.opened} />
                                },
                            }
                        }
                    </section>
                </main>
                <Cautions answer={answer.clone()} />
            }
            <Live answer={answer.clone()} begun={**build != Build::default()} />
        </div>
    }
}
