//! What the widget shows once it has words: the build at hand, judged.

use std::rc::Rc;

use fitup_core::fit::{Desk, judge};
use fitup_core::item::Catalogue;
use fitup_core::search::reachable;
use fitup_words::Words;
use web_sys::HtmlElement;
use yew::prelude::*;

use crate::boundary::{self, LastWords};
use crate::ctx::Ctx;
use crate::hooks::{use_events, use_later};
use crate::same::Same;
use crate::state::{Action, Mode, Session};
use crate::views::sheet;

#[derive(Properties, Clone, PartialEq)]
pub struct ShownProps {
    /// The element, for events.
    pub host: HtmlElement,
    /// What is remembered.
    pub session: Same<Session>,
    /// Words in the reader's language and units.
    pub words: Same<Words>,
    /// The way in.
    pub mode: Mode,
    /// Makes something happen.
    pub act: Callback<Action>,
    /// Loads the catalogue again.
    pub retry: Callback<()>,
}

/// The build at hand, judged.
#[component]
pub fn Shown(props: &ShownProps) -> Html {
    let session = &props.session;
    let empty = use_memo((), |()| Desk::new(Catalogue::default()));
    let desk = Same::from(session.desk.clone().unwrap_or(empty));
    let build = Same::from(Rc::clone(session.build()));
    let answer = Same::from(use_memo((desk.clone(), build.clone()), |(desk, build)| judge(desk, build)));
    let reach = use_later(0, (desk.clone(), build.clone()), |(desk, build)| Same::new(reachable(desk, build)));

    let ctx = Ctx { words: props.words.clone(), desk, act: props.act.clone(), mode: props.mode };
    use_events(&props.host, &ctx, &build, &answer, session.trouble.as_ref());
    use_effect_with(ctx.words.clone(), |words| {
        let text = |key: &str| words.ui(key, &[]);
        let (title, body, reload) = (text("ui-failed"), text("ui-failed.meaning"), text("ui-reload"));
        boundary::prepare(LastWords { title, body, reload });
    });
    html! {
        <ContextProvider<Ctx> context={ctx.clone()}>
            { sheet(&ctx, session, &build, &answer, reach.as_ref(), &props.retry) }
        </ContextProvider<Ctx>>
    }
}
